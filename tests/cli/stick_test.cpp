// The command stick: files, options, what is refused.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "cli/stick_options.h"
#include "support/memory_files.h"

namespace tillwright {
namespace {

using testing::Call;
using testing::Called;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using testing::MemoryFiles;
using ::testing::Not;
using ::testing::StartsWith;

class StickCommandTest : public ::testing::Test {
 protected:
  void SetUp() override {
    files_.held["a.json"] =
        R"({"opening": {"width": "15 3/8", "height": "24 3/4", "depth": "21 3/4"},
            "fronts": {"pull": {}}, "drawers": [{}, {}]})";
    // Fronts of exact sizes that do not fill the opening: solved, and a check fails.
    files_.held["unclosed.json"] =
        R"({"opening": {"width": "15 3/8", "height": "24 3/4", "depth": "21 3/4"},
            "drawers": [{"exact": 12}, {"exact": 12}]})";
  }
  Called Do(std::vector<std::string> args) {
    args.insert(args.begin(), {"stick", "a.json"});
    return Call(args, files_);
  }

  MemoryFiles files_;
};

TEST_F(StickCommandTest, WritesOnePdf) {
  const Called called = Do({"-o", "sticks.pdf"});
  EXPECT_EQ(called.status, 0) << called.err;
  EXPECT_EQ(called.err, "wrote sticks.pdf\n");
  EXPECT_THAT(files_.held["sticks.pdf"], StartsWith("%PDF"));
}

TEST_F(StickCommandTest, WritesToStandardOutput) {
  const Called called = Do({"-o", "-"});
  EXPECT_EQ(called.status, 0);
  EXPECT_THAT(called.out, StartsWith("%PDF"));
  EXPECT_THAT(called.err, IsEmpty());
}

TEST_F(StickCommandTest, WritesAnSvgForEachStick) {
  EXPECT_EQ(Do({"-o", "out", "--format", "svg"}).status, 0);
  for (const char* name : {"heights", "widths", "depths", "templates"}) {
    EXPECT_THAT(files_.held["out/" + std::string(name) + ".svg"], HasSubstr("<svg")) << name;
  }
  EXPECT_EQ(Do({"-o", "pages", "--format", "svg", "--paper", "letter"}).status, 0);
  EXPECT_THAT(files_.held["pages/sticks-1.svg"], HasSubstr("<svg"));
  EXPECT_EQ(Do({"-o", "-", "--format", "svg"}).status, 2);
}

TEST_F(StickCommandTest, TheSameBytesEveryTime) {
  EXPECT_EQ(Do({"-o", "one.pdf"}).status, 0);
  EXPECT_EQ(Do({"-o", "two.pdf"}).status, 0);
  EXPECT_TRUE(files_.held["one.pdf"] == files_.held["two.pdf"]);
}

TEST_F(StickCommandTest, AFailingCheckIsTold) {
  const Called called = Call({"stick", "unclosed.json", "-o", "sticks.pdf"}, files_);
  EXPECT_EQ(called.status, 1);
  EXPECT_THAT(files_.held["sticks.pdf"], StartsWith("%PDF")) << "the output is complete";
}

TEST_F(StickCommandTest, NeverOverTheSpec) {
  const std::string before = files_.held["a.json"];
  EXPECT_EQ(Do({"-o", "a.json"}).status, 2);
  EXPECT_EQ(files_.held["a.json"], before);
}

TEST_F(StickCommandTest, EveryOptionDoesSomething) {
  ASSERT_EQ(Do({"-o", "plain.pdf"}).status, 0);
  for (const std::vector<std::string>& option : std::vector<std::vector<std::string>>{
           {"--paper", "a4"},
           {"--paper", "roll"},
           {"--paper", "ROLL", "--roll-width", "24in"},
           {"--paper", "roll", "--max-length", "400"},
           {"--margin", "15"},
           {"--correct", "x=150:149.6"},
           {"--correct", "y=6in:6.01in"},
           {"--correct=x=150:149.6,y=150:150.3"},
           {"--mark", "case"},
           {"--mark", "box,front"},
           {"--mark", "datum-up"},
           {"--mark", "mirror"},
           {"--mark", "mm"},
           {"--mark", "both"},
           {"--mark", "screws"},
           {"--mark", "box", "--mark", "front,mm"},
           {"--screws", "2in:64"},
           {"--templates", "without"},
           {"--templates", "only"},
       }) {
    std::vector<std::string> args = option;
    args.insert(args.begin(), {"-o", "other.pdf"});
    const Called called = Do(args);
    EXPECT_EQ(called.status, 0) << option[0] << " " << called.err;
    EXPECT_FALSE(files_.held["plain.pdf"] == files_.held["other.pdf"]) << option[0];
  }
}

TEST_F(StickCommandTest, WhatCannotBeIsRefused) {
  struct Row {
    std::vector<std::string> args;
    const char* words;
  };
  for (const Row& row : {
           Row{{"--paper", "foolscap"}, "foolscap"},
           Row{{"--margin", "50"}, "not between 0 and 40 mm"},
           Row{{"--margin", "wide"}, "wide"},
           Row{{"--roll-width", "1in"}, "not between 80 and 5080 mm"},
           Row{{"--max-length", "6 m"}, "not between 200 and 5080 mm"},
           Row{{"--correct", "z=1:1"}, "names no axis"},
           Row{{"--correct", "x=150"}, "needs two lengths"},
           Row{{"--correct", "x=150:0"}, "above zero"},
           Row{{"--correct", "x=150:140"}, "off by more than 3 %"},
           Row{{"--screws", "37:1"}, "closer than 5 mm"},
           Row{{"--screws", "37"}, "needs two lengths"},
           Row{{"--mark", "upside-down"}, "upside-down"},
           Row{{"--templates", "some"}, "some"},
           Row{{"--format", "png"}, "png"},
       }) {
    std::vector<std::string> args = row.args;
    args.insert(args.begin(), {"-o", "refused.pdf"});
    const Called called = Do(args);
    EXPECT_EQ(called.status, 2) << row.args[0] << " " << row.args[1];
    EXPECT_THAT(called.err, HasSubstr(row.words));
    EXPECT_FALSE(files_.held.contains("refused.pdf"));
  }
  EXPECT_EQ(Do({}).status, 2) << "-o must be given";
}

TEST_F(StickCommandTest, EveryWordOfMarkIsExplained) {
  const Called help = Call({"stick", "--help"}, files_);
  for (const std::string_view word : StickMarkWords()) EXPECT_THAT(help.out, HasSubstr(word));
}

}  // namespace
}  // namespace tillwright
