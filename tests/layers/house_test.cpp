// How the house is kept: no long files or functions, no cycle of includes, and what differs from
// kind to kind told in the tables of kinds. The figures are printed, and fail above what has been
// reached.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "layers/source_text.h"
#include "support/files.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using ::testing::ElementsAre;
using testing::FunctionLines;
using ::testing::IsEmpty;

// The files of include/ and src/ by their paths.
const std::map<std::string, std::string>& Sources() {
  static const std::map<std::string, std::string> kSources = [] {
    std::map<std::string, std::string> sources;
    for (const char* folder : {"include", "src"}) {
      for (const auto& entry : fs::recursive_directory_iterator(testing::SourcePath(folder))) {
        const fs::path extension = entry.path().extension();
        if (extension != ".h" && extension != ".cpp") continue;
        const fs::path path = entry.path().lexically_relative(testing::SourcePath("."));
        sources[path.generic_string()] = testing::ReadFile(entry.path());
      }
    }
    return sources;
  }();
  return kSources;
}

int LinesOf(std::string_view text) { return static_cast<int>(std::ranges::count(text, '\n')); }

// --- Sizes --------------------------------------------------------------------------------------

constexpr int kMostLinesOfFile = 400;
constexpr int kMostLinesOfFunction = 50;
constexpr int kNinetiethOfFunctions = 18;

TEST(House, FilesAreShort) {
  int sum = 0;
  std::string longest;
  int most = 0;
  for (const auto& [path, text] : Sources()) {
    const int lines = LinesOf(text);
    sum += lines;
    if (lines > most) longest = path;
    most = std::max(most, lines);
    if (path.starts_with("src/")) {
      EXPECT_LE(lines, kMostLinesOfFile) << path;
    }
  }
  std::printf("%zu files of src and include, %d lines; the longest %s, %d\n", Sources().size(), sum,
              longest.c_str(), most);
  ASSERT_GT(Sources().size(), 200U) << "the walk found too few files";
}

TEST(House, FunctionsAreShort) {
  std::vector<int> lines;
  std::string longest;
  for (const auto& [path, text] : Sources()) {
    for (const FunctionLines& function : testing::FunctionsIn(text)) {
      const std::string where = path + ":" + std::to_string(function.first) + " " + function.head;
      EXPECT_LE(function.lines, kMostLinesOfFunction) << where;
      if (lines.empty() || function.lines > std::ranges::max(lines)) longest = where;
      lines.push_back(function.lines);
    }
  }
  ASSERT_GT(lines.size(), 2000U) << "the walk found too few functions";
  std::ranges::sort(lines);
  const int ninetieth = lines[lines.size() * 9 / 10];
  std::printf("%zu functions, median %d lines, 90th percentile %d; the longest %d, %s\n",
              lines.size(), lines[lines.size() / 2], ninetieth, lines.back(), longest.c_str());
  EXPECT_LE(ninetieth, kNinetiethOfFunctions);
}

TEST(House, FunctionsAreReadWithTheirLines) {
  const auto lines = [](std::string_view text) {
    std::vector<int> out;
    for (const FunctionLines& f : testing::FunctionsIn(text)) out.push_back(f.lines);
    return out;
  };
  EXPECT_THAT(lines("int Two() {\n}\nint One() { return 1; }\nint Declared();\n"),
              ElementsAre(2, 1));
  EXPECT_THAT(lines("namespace a {\nclass B : C {\n public:\n  B(int c)\n      : c_{c}, d_(1) {\n"
                    "    if (c) {\n    }\n  }\n  int e_{2};\n};\n}\n"),
              ElementsAre(5));
  EXPECT_THAT(lines("template <class T = int>\nauto F(T t) -> T\n{\n  return [&] { return t; }();\n"
                    "}\nstruct S {\n  bool operator==(S) const {\n  }\n};\n"),
              ElementsAre(5, 2));
  EXPECT_THAT(lines("const auto kLambda = [](int) {\n};\nconst int kTable[] = {\n  F({1}),\n};\n"),
              ElementsAre(2));
  EXPECT_THAT(
      lines("enum class E { kA };\n// void Not() {\n#define X() {\nconst char* k = \"f() {\";"
            "\nconst auto kRaw = R\"(g() {\n)\";\nchar c = '{';\nvoid F() {\n}\n"),
      ElementsAre(2));
}

// --- Includes -----------------------------------------------------------------------------------

using Graph = std::map<std::string, std::set<std::string>>;

// A way round from a node to itself; empty where there is none.
class CycleFinder {
 public:
  explicit CycleFinder(const Graph& graph) : graph_(graph) {}

  std::vector<std::string> Find() {
    for (const auto& [node, next] : graph_) {
      if (Visit(node)) return way_;
    }
    return {};
  }

 private:
  bool Visit(const std::string& node) {
    if (done_.contains(node)) return false;
    const auto on_way = std::ranges::find(way_, node);
    if (on_way != way_.end()) {
      way_.erase(way_.begin(), on_way);
      way_.push_back(node);
      return true;
    }
    way_.push_back(node);
    if (const auto next = graph_.find(node); next != graph_.end()) {
      for (const std::string& other : next->second) {
        if (Visit(other)) return true;
      }
    }
    way_.pop_back();
    done_.insert(node);
    return false;
  }

  const Graph& graph_;
  std::vector<std::string> way_;
  std::set<std::string> done_;
};

TEST(House, NoFileIncludesItselfByAnyWay) {
  Graph files;
  for (const auto& [path, text] : Sources()) {
    for (const std::string& include : testing::OwnIncludes(text)) {
      const std::string folder = include.starts_with("tillwright/") ? "include/" : "src/";
      files[path].insert(folder + include);
    }
  }
  ASSERT_GT(files.size(), 200U);
  EXPECT_THAT(CycleFinder(files).Find(), IsEmpty());
}

TEST(House, ACycleIsFound) {
  EXPECT_THAT(CycleFinder({{"a", {"b"}}, {"b", {"c", "d"}}, {"d", {"b"}}}).Find(),
              ElementsAre("b", "d", "b"));
  EXPECT_THAT(CycleFinder({{"a", {"b", "c"}}, {"b", {"c"}}}).Find(), IsEmpty());
  EXPECT_THAT(testing::OwnIncludes("#include \"a/b.h\"\n// #include \"c.h\"\n#include <d>\n"),
              ElementsAre("a/b.h"));
}

// --- Kinds --------------------------------------------------------------------------------------

// An enumeration of kinds, the file that has its table, and how often its enumerators are named
// elsewhere in src and include: at most so often beside == or !=, or as a case, and in all.
struct KindLimit {
  std::string_view name, home;
  int compared, all;
};
constexpr std::string_view kKinds = "src/spec/kinds.h";
constexpr std::array kLimits{
    KindLimit{"SlideType", kKinds, 0, 3}, KindLimit{"CornerJoint", kKinds, 1, 3},
    KindLimit{"BottomFit", kKinds, 0, 2}, KindLimit{"BackFit", kKinds, 0, 2},
    KindLimit{"CaseJoint", kKinds, 0, 1}, KindLimit{"PartRole", "src/bank/part_roles.h", 41, 110},
};

TEST(House, KindsAreToldApartInTheirTables) {
  for (const KindLimit& limit : kLimits) {
    testing::NamedKinds sum;
    for (const auto& [path, text] : Sources()) {
      if (path == limit.home) continue;
      const testing::NamedKinds count = testing::CountKinds(text, limit.name);
      sum.compared += count.compared;
      sum.all += count.all;
      EXPECT_EQ(testing::Bare(text).find("using enum " + std::string(limit.name)),
                std::string::npos)
          << path;
    }
    std::printf("%.*s: named %d times outside its table, compared %d\n",
                static_cast<int>(limit.name.size()), limit.name.data(), sum.all, sum.compared);
    EXPECT_LE(sum.compared, limit.compared) << limit.name;
    EXPECT_LE(sum.all, limit.all) << limit.name;
  }
}

TEST(House, EachKindHasItsRow) {
  for (const KindLimit& limit : kLimits) {
    std::vector<std::string> kinds;
    for (const auto& [path, text] : Sources()) {
      const std::vector<std::string> here = testing::EnumeratorsOf(text, limit.name);
      if (!here.empty()) kinds = here;
    }
    const std::string table = testing::Bare(Sources().at(std::string(limit.home)));
    std::size_t from = 0;
    ASSERT_FALSE(kinds.empty()) << limit.name;
    for (const std::string& kind : kinds) {
      const std::string row = ".kind = " + std::string(limit.name) + "::" + kind + ",";
      from = table.find(row, from);
      ASSERT_NE(from, std::string::npos) << row << " is missing, or out of order";
    }
  }
}

TEST(House, KindsAreCounted) {
  const testing::NamedKinds count = testing::CountKinds(
      "// a == Joint::kA\nif (a == Joint::kA || Joint::kB != b) F(Joint::kC, OtherJoint::kD);\n"
      "case Joint::kE:\n\"Joint::kF\"",
      "Joint");
  EXPECT_EQ(count.compared, 3);
  EXPECT_EQ(count.all, 4);
  EXPECT_THAT(
      testing::EnumeratorsOf("enum class Joint : int { kA, kB = 4,  // kC\n  kD };", "Joint"),
      ElementsAre("kA", "kB", "kD"));
}

}  // namespace
}  // namespace tillwright
