// Any words as a command line, on files in memory: no crash, a status of the contract, errors as
// JSON that another parser takes.
#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <string>

#include "support/memory_files.h"
#include "tillwright/write.h"

namespace {

void Demand(bool holds) {
  if (!holds) std::abort();
}

// The words between line ends.
std::vector<std::string> Words(const std::string& text) {
  std::vector<std::string> words;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    words.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return words;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::vector<std::string> args = Words(std::string(data, data + size));
  // Drawing takes long and has tests of its own.
  for (const char* command : {"draw", "stick"}) {
    if (std::ranges::find(args, command) != args.end()) return 0;
  }
  tillwright::testing::MemoryFiles files;
  files.held["a.json"] = tillwright::StarterSpec();
  files.held["wrong.json"] = "{\"opening\": 7,}";
  const tillwright::testing::Called called = tillwright::testing::Call(args, files);
  Demand(called.status >= 0 && called.status <= 4);
  Demand(files.held["a.json"] == tillwright::StarterSpec() || called.status == 0);
  // After "--" there are no options.
  const auto end = std::ranges::find(args, "--");
  const bool asked = std::find(args.begin(), end, "--json") != end;
  if (asked && called.status >= 2) Demand(nlohmann::json::accept(called.out));
  for (const char c : called.err) Demand(c == '\n' || static_cast<unsigned char>(c) >= 0x20);
  return 0;
}
