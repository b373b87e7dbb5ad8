// Every command, run in this process on files in memory.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "support/memory_files.h"
#include "tillwright/read.h"
#include "tillwright/version.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using testing::Call;
using testing::Called;
using testing::MemoryFiles;
using Json = nlohmann::json;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::StartsWith;

constexpr const char* kSound = R"({
  "opening": { "width": "15 3/8", "height": "24 3/4", "depth": "21 3/4" },
  "drawers": [ {}, {}, {} ]
})";
// Fronts of exact sizes that do not fill the opening: solved, and a check fails.
constexpr const char* kUnclosed = R"({
  "opening": { "width": "15 3/8", "height": "24 3/4", "depth": "21 3/4" },
  "drawers": [ { "exact": 12 }, { "exact": 12 } ]
})";
constexpr const char* kWrong = R"({ "opening": { "width": "15 1/0", "height": 24, "depth": 21 },
  "drawers": [ {} ] })";
// Reads well, and cannot be solved.
constexpr const char* kUnsolvable = R"({ "opening": { "width": 15, "height": 24, "depth": 5 },
  "drawers": [ {} ] })";

class Commands : public ::testing::Test {
 protected:
  void SetUp() override {
    files_.held = {{"a.json", kSound},
                   {"unclosed.json", kUnclosed},
                   {"wrong.json", kWrong},
                   {"unsolvable.json", kUnsolvable}};
  }
  Called Do(const std::vector<std::string>& args, Console console = {}) {
    return Call(args, files_, console);
  }
  // Nothing but the specs is there.
  void ExpectNothingWritten() { EXPECT_EQ(files_.held.size(), 4U); }

  MemoryFiles files_;
};

TEST_F(Commands, SizePrintsTablesAndLeavesMessagesAlone) {
  const Called size = Do({"size", "a.json"});
  EXPECT_EQ(size.status, 0);
  EXPECT_THAT(size.out, HasSubstr("Opening  15 3/8 wide"));
  EXPECT_THAT(size.err, IsEmpty());
}

TEST_F(Commands, CheckPrintsTheGapTable) {
  const Called check = Do({"check", "a.json"});
  EXPECT_EQ(check.status, 0);
  EXPECT_THAT(check.out, HasSubstr("planned"));
  EXPECT_THAT(check.out, HasSubstr("D3 to D2"));
  EXPECT_THAT(check.err, IsEmpty());
  EXPECT_EQ(Do({"check", "unclosed.json"}).status, 1);
  EXPECT_EQ(Do({"check", "wrong.json"}).status, 3);
  EXPECT_EQ(Do({"check", "unsolvable.json"}).status, 3);
}

// The same result as size gives, and more.
TEST_F(Commands, CheckWithJsonAddsToTheResultOfSize) {
  const Json size = Json::parse(Do({"size", "a.json", "--json"}).out);
  const Json check = Json::parse(Do({"check", "a.json", "--json"}).out);
  for (const char* key : {"format", "opening", "drawers", "parts", "units", "ok"}) {
    EXPECT_EQ(check[key], size[key]) << key;
  }
  for (const char* key : {"gaps", "overlaps"}) {
    ASSERT_EQ(check[key].size(), size[key].size());
    for (std::size_t i = 0; i < size[key].size(); ++i) {
      EXPECT_EQ(check[key][i]["size_mm"], size[key][i]["size_mm"]);
      for (const char* more : {"worst", "rss", "contributors", "verdict"}) {
        EXPECT_TRUE(check[key][i].contains(more)) << key << " " << more;
      }
    }
  }
  for (std::size_t i = 0; i < size["checks"].size(); ++i) {
    EXPECT_EQ(check["checks"][i], size["checks"][i]);
  }
  EXPECT_GT(check["checks"].size(), size["checks"].size());
  EXPECT_EQ(check["chance"], 1);
}

TEST_F(Commands, CheckWritesTheFittingSheet) {
  const Called check = Do({"check", "a.json", "--sheet", "out"});
  EXPECT_EQ(check.status, 0) << check.err;
  EXPECT_THAT(check.out, HasSubstr("D3 to D2"));
  EXPECT_THAT(files_.held["out/fitting.svg"], StartsWith("<?xml"));
  EXPECT_THAT(files_.held["out/fitting.pdf"], StartsWith("%PDF"));
  EXPECT_THAT(check.err, HasSubstr("wrote out/fitting.pdf"));
}

TEST_F(Commands, CheckNeverWritesASheetOverTheSpec) {
  files_.held["out/fitting.pdf"] = kSound;
  EXPECT_EQ(Do({"check", "out/fitting.pdf", "--sheet", "out"}).status, 2);
  files_.write_problem = "full";
  EXPECT_EQ(Do({"check", "a.json", "--sheet", "out"}).status, 4);
}

TEST_F(Commands, SizeWithJsonPrintsTheResult) {
  const Called size = Do({"size", "a.json", "--json"});
  EXPECT_EQ(size.status, 0);
  EXPECT_EQ(Json::parse(size.out)["format"], "tillwright-result/1");
  EXPECT_EQ(Do({"--json", "size", "a.json"}).status, 2) << "--json belongs to the commands";
  EXPECT_EQ(Do({"size", "--json", "a.json"}).out, size.out) << "options may stand anywhere";
}

TEST_F(Commands, AFailingCheckGivesOneAndTheWholeResult) {
  const Called tables = Do({"size", "unclosed.json"});
  EXPECT_EQ(tables.status, 1);
  EXPECT_THAT(tables.out, HasSubstr("closure"));
  const Called json = Do({"size", "unclosed.json", "--json"});
  EXPECT_EQ(json.status, 1);
  EXPECT_EQ(Json::parse(json.out)["ok"], false);
  EXPECT_EQ(Json::parse(json.out)["drawers"].size(), 2U);
}

TEST_F(Commands, AWrongSpecGivesThreeAndNothingElse) {
  for (const char* spec : {"wrong.json", "unsolvable.json"}) {
    for (const std::vector<std::string>& args : {
             std::vector<std::string>{"size", spec},
             std::vector<std::string>{"size", spec, "-o", "out.txt"},
             std::vector<std::string>{"draw", spec, "-o", "out"},
             std::vector<std::string>{"why", spec, "D1.box.width"},
         }) {
      const Called called = Do(args);
      EXPECT_EQ(called.status, 3);
      EXPECT_THAT(called.out, IsEmpty());
      EXPECT_THAT(called.err, StartsWith(std::string(spec) + ":"));
      ExpectNothingWritten();
    }
  }
}

TEST_F(Commands, WithJsonTheErrorsAreJsonOnStandardOutput) {
  struct Row {
    std::vector<std::string> args;
    int status;
    const char* code;
  };
  for (const Row& row : {
           Row{{"size", "wrong.json", "--json"}, 3, "length-syntax"},
           Row{{"size", "unsolvable.json", "--json"}, 3, "no-slide"},
           Row{{"draw", "wrong.json", "-o", "out", "--json"}, 3, "length-syntax"},
           Row{{"why", "wrong.json", "D1.box.width", "--json"}, 3, "length-syntax"},
           Row{{"why", "a.json", "D9.box.width", "--json"}, 2, "unknown-path"},
           Row{{"size", "none.json", "--json"}, 4, "file-read"},
           Row{{"size", "--json"}, 2, "usage"},
           Row{{"slize", "--json"}, 2, "usage"},
           Row{{"size", "a.json", "--json", "--fromat"}, 2, "usage"},
           Row{{"draw", "a.json", "-o", "-", "--json"}, 2, "usage"},
           Row{{"size", "a.json", "-o", "a.json", "--json"}, 2, "file-write"},
       }) {
    const Called called = Do(row.args);
    EXPECT_EQ(called.status, row.status) << called.out;
    EXPECT_THAT(called.err, IsEmpty());
    const Json errors = Json::parse(called.out)["errors"];
    ASSERT_EQ(errors.size(), 1U) << called.out;
    EXPECT_EQ(errors[0]["code"], row.code);
    EXPECT_FALSE(errors[0]["message"].get<std::string>().empty());
    EXPECT_TRUE(errors[0].contains("hint"));
    for (const char* key : {"file", "line", "column", "path"}) {
      EXPECT_TRUE(errors[0]["where"].contains(key)) << key;
    }
  }
  const Called wrong = Do({"size", "wrong.json", "--json"});
  const Json where = Json::parse(wrong.out)["errors"][0]["where"];
  EXPECT_EQ(where["file"], "wrong.json");
  EXPECT_EQ(where["line"], 1);
  EXPECT_EQ(where["path"], "/opening/width");
}

TEST_F(Commands, WhyTellsHowADimensionCameAbout) {
  const Called why = Do({"why", "a.json", "D2.box.width"});
  EXPECT_EQ(why.status, 0);
  EXPECT_THAT(why.out, StartsWith("D2.box.width = "));
  EXPECT_THAT(why.out, HasSubstr("given at a.json:2:"));
  EXPECT_EQ(Do({"why", "a.json", "D2.box.width_mm"}).out, why.out);
  const Called unknown = Do({"why", "a.json", "D2.box.widht"});
  EXPECT_EQ(unknown.status, 2);
  EXPECT_THAT(unknown.out, IsEmpty());
  EXPECT_THAT(unknown.err, HasSubstr("D2.box.width"));
}

TEST_F(Commands, NewPrintsASpecThatSolvesAndPassesItsChecks) {
  const Called made = Do({"new"});
  EXPECT_EQ(made.status, 0);
  EXPECT_EQ(made.out, StarterSpec());
  files_.held["-"] = made.out;
  EXPECT_EQ(Do({"size", "-"}).status, 0);
  EXPECT_EQ(Do({"new", "-o", "new.json"}).status, 0);
  EXPECT_EQ(files_.held["new.json"], StarterSpec());
}

TEST_F(Commands, SchemaPrintsTheSchema) {
  EXPECT_EQ(Do({"schema"}).out, SpecSchema());
  EXPECT_EQ(Do({"schema", "-o", "-"}).out, SpecSchema());
  const Called to_file = Do({"schema", "--output", "s.json"});
  EXPECT_EQ(to_file.status, 0);
  EXPECT_THAT(to_file.out, IsEmpty());
  EXPECT_EQ(to_file.err, "wrote s.json\n");
  EXPECT_EQ(files_.held["s.json"], SpecSchema());
}

TEST_F(Commands, DrawWritesItsFilesIntoTheFolder) {
  const Called draw = Do({"draw", "a.json", "-o", "out"});
  EXPECT_EQ(draw.status, 0) << draw.err;
  EXPECT_THAT(draw.out, IsEmpty());
  EXPECT_GT(files_.held.size(), 4U);
  for (const auto& [path, bytes] : files_.held) {
    if (path.ends_with(".json")) continue;
    EXPECT_THAT(path, StartsWith("out/"));
    EXPECT_THAT(path, ::testing::EndsWith(".svg"));
    EXPECT_THAT(bytes, HasSubstr("<svg"));
    EXPECT_THAT(draw.err, HasSubstr("wrote " + path + "\n"));
  }
}

TEST_F(Commands, DrawMakesOnePdfOrPreviewsWhenAsked) {
  EXPECT_EQ(Do({"draw", "a.json", "-o", "out", "--format", "pdf"}).status, 0);
  ASSERT_EQ(files_.held.size(), 5U);
  EXPECT_THAT(files_.held.rbegin()->second.empty() ? "" : files_.held["out/drawings.pdf"],
              StartsWith("%PDF-"));
  EXPECT_EQ(Do({"draw", "unclosed.json", "-o", "out2", "--format", "pdf"}).status, 1);
  const Called standard_output = Do({"draw", "a.json", "-o", "-"});
  EXPECT_EQ(standard_output.status, 2);
  EXPECT_THAT(standard_output.err, HasSubstr("name a folder"));
  EXPECT_EQ(Do({"draw", "a.json"}).status, 2) << "-o must be given";
  EXPECT_EQ(Do({"draw", "a.json", "-o", "out", "--format", "dwg"}).status, 2);
}

// --- Files ---------------------------------------------------------------------------------------

TEST_F(Commands, AFileThatCannotBeReadOrWrittenGivesFour) {
  const Called missing = Do({"size", "none.json"});
  EXPECT_EQ(missing.status, 4);
  EXPECT_THAT(missing.err, StartsWith("none.json: error: cannot be read: No such file"));
  files_.write_problem = "No space left on device";
  for (const std::vector<std::string>& args : {
           std::vector<std::string>{"size", "a.json", "-o", "t.txt"},
           std::vector<std::string>{"new", "-o", "t.txt"},
           std::vector<std::string>{"schema", "-o", "t.txt"},
           std::vector<std::string>{"draw", "a.json", "-o", "out", "--format", "pdf"},
       }) {
    const Called called = Do(args);
    EXPECT_EQ(called.status, 4);
    EXPECT_THAT(called.out, IsEmpty());
    EXPECT_THAT(called.err, HasSubstr("No space left on device"));
    EXPECT_THAT(called.err, Not(HasSubstr("wrote")));
  }
}

TEST_F(Commands, TheOutputIsNeverTheSpec) {
  const Called called = Do({"size", "a.json", "-o", "a.json"});
  EXPECT_EQ(called.status, 2);
  EXPECT_EQ(files_.held["a.json"], kSound);
  files_.held["out/drawings.pdf"] = kSound;
  EXPECT_EQ(Do({"draw", "out/drawings.pdf", "-o", "out", "--format", "pdf"}).status, 2);
  EXPECT_EQ(files_.held["out/drawings.pdf"], kSound);
}

TEST_F(Commands, ASpecFromStandardInputIsNamedSo) {
  files_.held["-"] = kWrong;
  EXPECT_THAT(Do({"size", "-"}).err, StartsWith("<stdin>:1:"));
  files_.held["-"] = kSound;
  EXPECT_EQ(Do({"size", "-", "-o", "-"}).out, Do({"size", "a.json"}).out);
}

TEST_F(Commands, ATerminalForStandardInputIsAMistakeNotAWait) {
  Console console;
  console.in_is_terminal = true;
  files_.held["-"] = kSound;
  const Called called = Do({"size", "-"}, console);
  EXPECT_EQ(called.status, 2);
  EXPECT_THAT(called.err, HasSubstr("terminal"));
  EXPECT_EQ(Do({"size", "a.json"}, console).status, 0);
}

TEST_F(Commands, ASpecThatIsTooBigIsRefused) {
  files_.held["big.json"] = std::string(kMaxSpecBytes + 100, ' ');
  const Called called = Do({"size", "big.json"});
  EXPECT_EQ(called.status, 3);
  EXPECT_THAT(called.err, HasSubstr("[too-big]"));
}

// --- Color -------------------------------------------------------------------------------------

TEST_F(Commands, ColorFollowsTheTerminalTheEnvironmentAndTheOption) {
  struct Row {
    const char* option;  // empty: none
    bool terminal;
    bool no_color;
    bool colored;
  };
  for (const Row& row : {
           Row{"", false, false, false},
           Row{"", true, false, true},
           Row{"", true, true, false},
           Row{"auto", true, false, true},
           Row{"always", false, false, true},
           Row{"always", true, true, true},
           Row{"never", true, false, false},
       }) {
    Console console;
    console.out_is_terminal = row.terminal;
    console.err_is_terminal = row.terminal;
    console.no_color = row.no_color;
    for (const char* spec : {"a.json", "wrong.json"}) {
      std::vector<std::string> args{"size", spec};
      if (*row.option != '\0') args.insert(args.end(), {"--color", row.option});
      const Called called = Do(args, console);
      EXPECT_EQ((called.out + called.err).find('\x1b') != std::string::npos, row.colored)
          << row.option << row.terminal << row.no_color << spec;
    }
  }
  Console only_messages;  // each stream for itself
  only_messages.err_is_terminal = true;
  EXPECT_THAT(Do({"size", "a.json"}, only_messages).out, Not(HasSubstr("\x1b")));
  EXPECT_THAT(Do({"size", "wrong.json"}, only_messages).err, HasSubstr("\x1b"));
  Console terminal;
  terminal.out_is_terminal = true;
  EXPECT_EQ(Do({"size", "a.json", "-o", "t.txt"}, terminal).status, 0);
  EXPECT_THAT(files_.held["t.txt"], Not(HasSubstr("\x1b"))) << "a file is no terminal";
  EXPECT_THAT(Do({"size", "a.json", "--json"}, terminal).out, Not(HasSubstr("\x1b")));
}

// --- The command line ---------------------------------------------------------------------------

TEST_F(Commands, NoArgumentsGiveAShortHelpAsAMistake) {
  const Called called = Do({});
  EXPECT_EQ(called.status, 2);
  EXPECT_THAT(called.out, IsEmpty());
  EXPECT_THAT(called.err, HasSubstr("tillwright new -o bank.json"));
}

TEST_F(Commands, HelpIsThereAtTheTopAndInEachCommand) {
  for (const char* flag : {"--help", "-h"}) {
    const Called top = Do({flag});
    EXPECT_EQ(top.status, 0);
    EXPECT_THAT(top.err, IsEmpty());
    for (const char* command : {"size", "draw", "stick", "why", "new", "schema"}) {
      EXPECT_THAT(top.out, HasSubstr(command));
      const Called help = Do({command, flag});
      EXPECT_EQ(help.status, 0) << command;
      EXPECT_THAT(help.out, HasSubstr("Example: tillwright " + std::string(command)));
      EXPECT_THAT(help.err, IsEmpty());
    }
    EXPECT_EQ(Do({"size", "a.json", flag}).status, 0) << "at the end of anything";
    EXPECT_THAT(Do({"size", "a.json", flag}).out, HasSubstr("Example: tillwright size"));
  }
  EXPECT_THAT(Do({"--help"}).out, HasSubstr("Exit status: 0"));
}

TEST_F(Commands, VersionIsTheProjects) {
  const Called version = Do({"--version"});
  EXPECT_EQ(version.status, 0);
  EXPECT_EQ(version.out, "tillwright " + std::string(kVersion) + "\n");
}

TEST_F(Commands, AMistypedWordGetsTheNearestAndIsNotActedOn) {
  struct Row {
    std::vector<std::string> args;
    const char* suggestion;  // empty: none
  };
  for (const Row& row : {
           Row{{"slize", "a.json"}, "size"},
           Row{{"SIZE", "a.json"}, "size"},
           Row{{"scheme"}, "schema"},
           Row{{"size", "a.json", "--jsno"}, "--json"},
           Row{{"draw", "a.json", "-o", "out", "--fromat=pdf"}, "--format"},
           Row{{"--versoin"}, "--version"},
           Row{{"size", "a.json", "--colour", "never"}, "--color"},
           Row{{"xyzzy"}, ""},
           Row{{"size"}, ""},
           Row{{"size", "a.json", "b.json"}, ""},
           Row{{"why", "a.json"}, ""},
           Row{{"size", "a.json", "--color", "sometimes"}, ""},
           Row{{"size", "a.json", "-o"}, ""},
           Row{{"siz"}, "size"},
       }) {
    const Called called = Do(row.args);
    EXPECT_EQ(called.status, 2) << row.args[0];
    EXPECT_THAT(called.out, IsEmpty());
    EXPECT_THAT(called.err, StartsWith("error: "));
    EXPECT_THAT(called.err, HasSubstr("--help"));
    const std::string asked = "did you mean \"" + std::string(row.suggestion) + "\"?";
    if (*row.suggestion == '\0') {
      EXPECT_THAT(called.err, Not(HasSubstr("did you mean")));
    } else {
      EXPECT_THAT(called.err, HasSubstr(asked));
    }
    ExpectNothingWritten();
  }
}

TEST_F(Commands, WordsOfTheCommandLineCannotSteerATerminal) {
  for (const std::vector<std::string>& args : {
           std::vector<std::string>{"\x1b[2J"},
           std::vector<std::string>{"size", "\x1b[2J.json"},
           std::vector<std::string>{"size", "a.json", "--\x1b[2J"},
           std::vector<std::string>{"why", "a.json", "\x1b[2J"},
           std::vector<std::string>{"size", "a.json", "-o", "\x1b[2J.txt"},
       }) {
    const Called called = Do(args);
    EXPECT_THAT(called.out + called.err, Not(HasSubstr("\x1b")));
  }
}

}  // namespace
}  // namespace tillwright
