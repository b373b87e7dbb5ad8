// The curated specs pass, and output-samples/ holds what they give, byte for byte, and no more.
#include <gmock/gmock.h>

#include <set>

#include "samples/repository.h"
#include "support/files.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using testing::CuratedSpecs;
using testing::LinesOf;
using testing::ReadFile;
using testing::Replaced;
using testing::RepositoryFiles;
using testing::RunLine;
using testing::SourcePath;
using testing::Told;

constexpr const char* kRemake = "; remake them with: cmake --build build --target samples";

std::vector<std::string> SampleCommands() {
  std::vector<std::string> commands;
  for (const std::string& line : LinesOf(ReadFile(SourcePath("src/cmake/sample_commands.txt")))) {
    if (!line.empty() && line[0] != '#') commands.push_back(line);
  }
  return commands;
}

// Everything the sample commands give for one spec.
void Make(const fs::path& spec, RepositoryFiles& files) {
  for (const std::string& command : SampleCommands()) {
    const std::string file = "specs/" + spec.filename().string();
    const std::string line =
        Replaced(Replaced(command, "{spec}", file), "{name}", spec.stem().string());
    const Told told = RunLine(line, files);
    EXPECT_EQ(told.status, ExitStatus::kOk) << line << "\n" << told.out << told.err;
  }
}

TEST(Samples, EveryOneIsWhatItsSpecGivesToday) {
  ASSERT_FALSE(CuratedSpecs().empty());
  ASSERT_FALSE(SampleCommands().empty());
  RepositoryFiles files;
  for (const fs::path& spec : CuratedSpecs()) Make(spec, files);
  ASSERT_GE(files.written.size(), CuratedSpecs().size() * SampleCommands().size());
  for (const auto& [path, bytes] : files.written) {
    ASSERT_TRUE(fs::exists(SourcePath(path))) << path << " is missing" << kRemake;
    EXPECT_TRUE(ReadFile(SourcePath(path)) == bytes) << path << " is stale" << kRemake;
  }
  std::set<std::string> there;
  for (const auto& entry : fs::recursive_directory_iterator(SourcePath("output-samples"))) {
    if (entry.is_regular_file()) there.insert(fs::relative(entry.path(), SourcePath("")).string());
  }
  for (const std::string& path : there) {
    EXPECT_TRUE(files.written.contains(path)) << path << " comes from no spec: take it out";
  }
}

TEST(Samples, TheSchemaIsWhatTheProgramPrints) {
  RepositoryFiles files;
  const Told told = RunLine("schema", files);
  EXPECT_EQ(told.status, ExitStatus::kOk);
  EXPECT_TRUE(ReadFile(SourcePath("specs/schema.json")) == told.out)
      << "specs/schema.json is stale" << kRemake;
}

TEST(Samples, TablesFitOneHundredColumns) {
  for (const fs::path& spec : CuratedSpecs()) {
    for (const char* end : {".txt", "/check.txt"}) {
      const fs::path table = SourcePath("output-samples") / (spec.stem().string() + end);
      for (const std::string& line : LinesOf(ReadFile(table))) {
        const auto characters = std::ranges::count_if(
            line, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
        EXPECT_LE(characters, 100) << table << ": " << line;
        EXPECT_EQ(line.find("\u2026"), std::string::npos) << "something is cut off: " << line;
      }
    }
  }
}

// Together the specs are to show every choice there is.
TEST(Samples, TheSpecsUseEveryKindOfSlideJointBottomAndGraduation) {
  std::string all;
  for (const fs::path& spec : CuratedSpecs()) all += ReadFile(spec);
  for (const char* word :
       {"side-mount", "undermount", "center-mount", "wood-runner", "butt", "rabbet", "dado",
        "half-blind-dovetail", "through-dovetail", "finger", "groove", "applied", "shares",
        "arithmetic", "geometric", "flush", "inset", "none", "mm"}) {
    EXPECT_NE(all.find("\"" + std::string(word) + "\""), std::string::npos) << word;
  }
  for (const char* key :
       {"case", "opening", "layout", "blank", "open", "reveal", "heights", "open_back", "grid",
        "back_setback", "season", "tolerance", "limits", "measured", "spacers", "screws", "load",
        "contents", "exact", "min", "weight", "pull"}) {
    EXPECT_NE(all.find("\"" + std::string(key) + "\":"), std::string::npos) << key;
  }
}

}  // namespace
}  // namespace tillwright
