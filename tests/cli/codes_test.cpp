// Every diagnostic code is one that some input really brings about.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <set>
#include <string>

#include "support/files.h"
#include "support/memory_files.h"
#include "tillwright/diagnostic.h"

namespace tillwright {
namespace {

using testing::Call;
using testing::MemoryFiles;
using Json = nlohmann::json;

// The codes that a command line gives, by its errors as JSON.
std::set<std::string> CodesOf(const std::vector<std::string>& args, MemoryFiles& files) {
  std::set<std::string> codes;
  const testing::Called called = Call(args, files);
  const Json out = Json::parse(called.out);
  if (!out.contains("errors")) return codes;  // a result whose checks fail
  for (const Json& error : out["errors"]) {
    codes.insert(error["code"].get<std::string>());
  }
  return codes;
}

TEST(Codes, EveryOneIsProducedByABrokenSpecOrAMisusedCommand) {
  MemoryFiles files;
  files.held["sound.json"] =
      R"({"opening": {"width": 15, "height": 24, "depth": 21}, "drawers": [{}]})";
  std::set<std::string> seen;
  const auto see = [&](const std::vector<std::string>& args) {
    seen.merge(CodesOf(args, files));
  };
  const auto broken = testing::FilesIn(testing::SourcePath("specs/invalid"), ".json");
  EXPECT_GT(broken.size(), 20U);
  for (const auto& path : broken) {
    files.held["broken.json"] = testing::ReadFile(path);
    const std::set<std::string> codes = CodesOf({"size", "broken.json", "--json"}, files);
    EXPECT_NE(Call({"size", "broken.json"}, files).status, 0) << path << " is not broken";
    seen.insert(codes.begin(), codes.end());
  }
  files.held["range.json"] =
      R"({"opening": {"width": "200 m", "height": 1e999, "depth": 1}, "drawers": [{}]})";
  see({"size", "range.json", "--json"});
  files.held["far.json"] = R"({"opening": {"width": "200 m", "height": 24, "depth": 21},
      "drawers": [{"weight": 0}]})";
  see({"size", "far.json", "--json"});
  see({"size", "none.json", "--json"});
  see({"size", "--json"});
  see({"why", "sound.json", "D7.box", "--json"});
  files.write_problem = "full";
  see({"size", "sound.json", "-o", "out.txt", "--json"});
  for (const DiagnosticCode code : AllCodes()) {
    EXPECT_TRUE(seen.contains(std::string(CodeText(code)))) << CodeText(code) << " is never produced";
  }
}

}  // namespace
}  // namespace tillwright
