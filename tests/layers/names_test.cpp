// Every class that the linker can see has a name of its own. Two classes of one name in two files
// are no error to compiler or linker, which then take the members of either: C++20 [basic.def.odr].
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "support/files.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

// The name that a line defines at the left margin, as this house writes it; empty for none.
std::string_view Defined(std::string_view line) {
  for (const std::string_view key : {"enum class ", "class ", "struct ", "union "}) {
    if (!line.starts_with(key) || line.find('{') == line.npos) continue;
    line.remove_prefix(key.size());
    const std::size_t end = line.find_first_of(" :{<");
    const bool specialised = end < line.size() && line[end] == '<';
    return specialised ? std::string_view() : line.substr(0, end);
  }
  return {};
}

// Every class of a file with its namespaces, those without a name left out: no other file sees
// them.
std::vector<std::string> Classes(std::string_view text) {
  std::vector<std::string> names;
  std::vector<std::string> within;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string_view line = text.substr(at, end - at);
    at = end + 1;
    if (line.starts_with("}  // namespace") && !within.empty()) within.pop_back();
    if (line.starts_with("namespace ") && line.ends_with('{')) {
      within.emplace_back(line.substr(10, line.size() - 11));
      continue;
    }
    const std::string_view name = Defined(line);
    if (name.empty() || std::ranges::count(within, "") > 0) continue;
    std::string whole;
    for (const std::string& space : within) whole += space.substr(0, space.find(' ')) + "::";
    names.push_back(whole + std::string(name));
  }
  return names;
}

TEST(Names, EachClassHasItsOwn) {
  std::map<std::string, std::vector<std::string>> files;
  for (const char* folder : {"include", "src"}) {
    for (const auto& entry : fs::recursive_directory_iterator(testing::SourcePath(folder))) {
      const fs::path extension = entry.path().extension();
      if (extension != ".h" && extension != ".cpp") continue;
      for (std::string& name : Classes(testing::ReadFile(entry.path()))) {
        files[std::move(name)].push_back(entry.path().filename());
      }
    }
  }
  ASSERT_GT(files.size(), 200U) << "the walk found too few classes";
  for (const auto& [name, homes] : files) {
    EXPECT_EQ(homes.size(), 1U) << name << " is defined in " << ::testing::PrintToString(homes);
  }
}

TEST(Names, AreReadWithTheirNamespaces) {
  EXPECT_THAT(Classes("namespace tillwright {\nstruct Later;\nclass Box {\n  struct Inner {};\n};\n"
                      "namespace {\nstruct Hidden {\n};\n}  // namespace\n"
                      "namespace nest {\nstruct Cut {\n};\n}  // namespace nest\n"
                      "enum class Way : int { kUp };\n}  // namespace tillwright\n"),
              ElementsAre("tillwright::Box", "tillwright::nest::Cut", "tillwright::Way"));
  EXPECT_THAT(Classes("template <>\nstruct hash<Length> {\n"), IsEmpty());
}

}  // namespace
}  // namespace tillwright
