// What README.md and specs/README.md say is held to the program.
#include <gmock/gmock.h>

#include "samples/repository.h"
#include "support/files.h"
#include "tillwright/check.h"
#include "tillwright/diagnostic.h"
#include "tillwright/keys.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using testing::LinesOf;
using testing::ReadFile;
using testing::RepositoryFiles;
using testing::RunLine;
using testing::SourcePath;
using testing::Told;

// The lines of a document's fenced blocks that begin with `fence`.
std::vector<std::string> Blocks(const std::string& document, const std::string& fence) {
  std::vector<std::string> blocks;
  bool inside = false;
  bool wanted = false;
  for (const std::string& line : LinesOf(document)) {
    if (line.starts_with("```")) {
      inside = !inside;
      wanted = inside && line == fence;
      if (wanted) blocks.emplace_back();
    } else if (wanted) {
      blocks.back() += line + "\n";
    }
  }
  EXPECT_FALSE(inside) << "a block is left open";
  return blocks;
}

// The program's command lines in a document's blocks, without its name.
std::vector<std::string> Commands(const std::string& document) {
  std::vector<std::string> commands;
  for (const char* fence : {"```", "```sh"}) {
    for (const std::string& block : Blocks(document, fence)) {
      for (std::string line : LinesOf(block)) {
        const std::string name = "tillwright ";
        while (!line.empty()) {
          const std::size_t end = std::min(line.find(" && "), line.size());
          std::string command = line.substr(0, end);
          line.erase(0, std::min(end + 4, line.size()));
          if (command.starts_with("build/")) command.erase(0, 6);
          if (command.starts_with(name)) commands.push_back(command.substr(name.size()));
        }
      }
    }
  }
  return commands;
}

TEST(Documents, TheCommandsTheyShowRun) {
  for (const char* name : {"README.md", "specs/README.md"}) {
    RepositoryFiles files;  // one for all: what a command writes a later one may read
    const std::vector<std::string> commands = Commands(ReadFile(SourcePath(name)));
    ASSERT_FALSE(commands.empty()) << name;
    for (const std::string& command : commands) {
      const Told told = RunLine(command, files);
      EXPECT_EQ(told.status, ExitStatus::kOk) << name << ": " << command << "\n" << told.err;
    }
  }
}

// Whole specs stand in ```json, and parts of one in ```jsonc.
TEST(Documents, TheSpecsTheyShowAreSized) {
  for (const char* name : {"README.md", "specs/README.md"}) {
    const std::vector<std::string> blocks = Blocks(ReadFile(SourcePath(name)), "```json");
    ASSERT_FALSE(blocks.empty()) << name;
    for (const std::string& block : blocks) {
      RepositoryFiles files;
      files.written["shown.json"] = block;
      const Told told = RunLine("size shown.json", files);
      EXPECT_EQ(told.status, ExitStatus::kOk) << name << ":\n" << block << told.err;
    }
  }
}

// The excerpt in the README is what the program says of a spec with those two lines.
TEST(Documents, TheMessageTheReadmeShowsIsReal) {
  const std::string readme = ReadFile(SourcePath("README.md"));
  std::string third;
  std::string fourth;
  for (const std::string& line : LinesOf(readme)) {
    if (line.starts_with("   3 | ")) third = line.substr(7);
    if (line.starts_with("   4 | ")) fourth = line.substr(7);
  }
  ASSERT_FALSE(third.empty() || fourth.empty());
  RepositoryFiles files;
  files.written["bank.json"] =
      "{\n  \"opening\": { \"width\": 15, \"height\": 24, \"depth\": 21 },\n" + third + "\n" +
      fourth + "\n}\n";
  const Told told = RunLine("size bank.json", files);
  EXPECT_EQ(told.status, ExitStatus::kSpec);
  EXPECT_THAT(readme, HasSubstr("```\n" + told.err + "```\n"));
}

TEST(Documents, TheFilesTheyPointToAreThere) {
  for (const char* name : {"README.md", "specs/README.md", "DEVELOPERS.md"}) {
    const std::string text = ReadFile(SourcePath(name));
    for (std::size_t at = 0; (at = text.find("](", at)) != std::string::npos; ++at) {
      const std::string target = text.substr(at + 2, text.find(')', at) - at - 2);
      if (target.starts_with("#") || target.starts_with("http")) continue;
      EXPECT_TRUE(fs::exists(SourcePath(name).parent_path() / target)) << name << ": " << target;
    }
  }
}

// --- specs/README.md ----------------------------------------------------------------------------

std::string Reference() { return ReadFile(SourcePath("specs/README.md")); }

// The part of the reference under a heading, up to the next one of any level.
std::string Section(const std::string& heading) {
  const std::string text = Reference();
  const std::size_t at = text.find("\n" + heading + "\n");
  if (at == std::string::npos) return {};
  const std::size_t end = text.find("\n#", at + heading.size() + 1);
  return text.substr(at, end == std::string::npos ? end : end - at);
}

TEST(Reference, TellsEveryKeyOfEveryObject) {
  for (const ObjectRow& object : SpecObjects()) {
    const std::string section = Section("### " + std::string(object.name));
    EXPECT_FALSE(section.empty()) << "no heading \"### " << object.name << "\"";
    for (const KeyRow& key : object.keys) {
      const std::string row = "| `" + std::string(key.key) + "` |";
      EXPECT_THAT(section, HasSubstr(row)) << object.name;
    }
  }
}

// Every row of a key says its default as the table of keys has it.
TEST(Reference, TellsTheDefaultsOfTheTableOfKeys) {
  for (const ObjectRow& object : SpecObjects()) {
    for (const std::string& line : LinesOf(Section("### " + std::string(object.name)))) {
      for (const KeyRow& key : object.keys) {
        if (!line.starts_with("| `" + std::string(key.key) + "` |")) continue;
        const std::string fallback = key.fallback.Text();
        EXPECT_TRUE(line.ends_with("| " + fallback + (fallback.empty() ? "|" : " |")))
            << object.name << ": " << line;
      }
    }
  }
}

template <class E>
void ExpectWords() {
  for (const std::string_view word : Words<E>()) {
    EXPECT_THAT(Reference(), HasSubstr("`" + std::string(word) + "`"));
  }
}

TEST(Reference, TellsEveryChoice) {
  ExpectWords<Unit>();
  ExpectWords<FrontStyle>();
  ExpectWords<Grain>();
  ExpectWords<SlideType>();
  ExpectWords<CornerJoint>();
  ExpectWords<BottomFit>();
  ExpectWords<Graduation>();
  ExpectWords<CaseJoint>();
  ExpectWords<CaseFixing>();
  ExpectWords<BackFit>();
  ExpectWords<Setting>();
  ExpectWords<SawnCut>();
  ExpectWords<Held>();
  ExpectWords<FrontMatch>();
}

TEST(Reference, TellsEveryCheckAndEveryDiagnostic) {
  const std::string text = Reference();
  for (const CheckRow& row : kChecks) {
    EXPECT_THAT(text, HasSubstr("| `" + std::string(row.word) + "` |"));
  }
  for (const DiagnosticCode code : AllCodes()) {
    EXPECT_THAT(text, HasSubstr("| `" + std::string(CodeText(code)) + "` | " +
                                std::string(CodeMeaning(code)) + " |"));
  }
}

// Every key that any sample's result has.
TEST(Reference, TellsEveryKeyOfTheResult) {
  const std::string text = Reference();
  std::size_t count = 0;
  for (const fs::path& spec : testing::CuratedSpecs()) {
    RepositoryFiles files;
    const std::string name = "specs/" + spec.filename().string();
    // The check gives all that size gives, and more.
    const Told told = RunLine("check " + name + " --json", files);
    for (std::size_t at = 0; (at = told.out.find("\":", at)) != std::string::npos; ++at) {
      const std::size_t begin = told.out.rfind('"', at - 1);
      const std::string key = told.out.substr(begin + 1, at - begin - 1);
      // A quotation mark inside a message is no end of a key.
      if (key.empty() || key.ends_with('\\')) continue;
      ++count;
      EXPECT_THAT(text, HasSubstr("`" + key + "`")) << spec;
    }
  }
  EXPECT_GT(count, 1000U);
}

}  // namespace
}  // namespace tillwright
