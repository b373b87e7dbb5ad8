// The tables for the shop: never wider than a page, nothing that steers a terminal.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "support/files.h"
#include "support/specs.h"
#include "text/utf8_width.h"
#include "tillwright/check.h"
#include "tillwright/write.h"
#include "write/text_table.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;

constexpr std::uint32_t kFirstSeed = 40'000;

std::string TablesOf(const Spec& spec, const Bank& bank, TextStyle style = {}) {
  return ResultTables(bank, CheckBank(spec, bank), style);
}

void ExpectNarrow(const std::string& tables) {
  for (std::size_t at = 0; at < tables.size();) {
    const std::size_t end = tables.find('\n', at);
    ASSERT_NE(end, std::string::npos) << "the last line does not end";
    const std::string line = tables.substr(at, end - at);
    ASSERT_LE(CharacterCount(line), kTableWidth) << line;
    ASSERT_FALSE(line.ends_with(' ')) << line;
    at = end + 1;
  }
}

TEST(ResultTables, AreAtMostAHundredColumnsWide) {
  int solved = 0;
  for (const std::string& text : testing::RandomSpecs(kFirstSeed, 300)) {
    const Outcome<Spec> spec = ReadSpec(text);
    if (!spec.ok()) continue;
    const Outcome<Bank> bank = SolveBank(spec.value());
    if (!bank.ok()) continue;
    SCOPED_TRACE(text);
    ExpectNarrow(TablesOf(spec.value(), bank.value()));
    ++solved;
  }
  EXPECT_GT(solved, 150) << "too few of the random specs solve to say much";
}

TEST(ResultTables, NamesMaterialsAndTitlesOfAnyLengthAndKindFit) {
  const std::string name =
      "A very long label \\u001b[2J\\u0007 with \\u009b31m \\u202e and \xe2\x89\x88" +
      std::string(300, 'w');
  const testing::Solved solved = testing::MustSolve(
      R"({"title": ")" + name + R"(", "opening": {"width": 15, "height": 24, "depth": 21},
          "fronts": {"material": ")" +
      name + R"("},
          "box": {"side": {"material": ")" +
      name + R"("}, "bottom": {"material": ")" + name + R"("}}, "drawers": [{"name": ")" + name +
      R"("}, {}]})");
  const std::string tables = TablesOf(solved.spec, solved.bank);
  ExpectNarrow(tables);
  for (const char* evil : {"\x1b", "\x07", "\xc2\x9b", "\xe2\x80\xae"}) {
    EXPECT_EQ(tables.find(evil), std::string::npos);
  }
}

TEST(ResultTables, HoldTheSizesInTheMakersUnits) {
  const std::string rest = R"(, "drawers": [{"name": "Threads"}, {}]})";
  const testing::Solved inches =
      testing::MustSolve(R"({"opening": {"width": "15 3/8", "height": 24, "depth": 21})" + rest);
  EXPECT_THAT(TablesOf(inches.spec, inches.bank),
              HasSubstr("Opening  15 3/8 wide, 24 high, 21 deep"));
  EXPECT_THAT(TablesOf(inches.spec, inches.bank), HasSubstr("Threads"));
  const testing::Solved metric = testing::MustSolve(
      R"({"units": "mm", "opening": {"width": 390.5, "height": 600, "depth": 530})" + rest);
  EXPECT_THAT(TablesOf(metric.spec, metric.bank),
              HasSubstr("Opening  390.5 wide, 600 high, 530 deep"));
}

TEST(ResultTables, ColorOnlyAddsEscapes) {
  const testing::Solved solved = testing::MustSolve(
      R"({"opening": {"width": "15 3/8", "height": 24, "depth": 21}, "drawers": [{}, {}]})");
  const std::string plain = TablesOf(solved.spec, solved.bank);
  std::string colored = TablesOf(solved.spec, solved.bank, {true});
  EXPECT_NE(plain, colored);
  for (std::size_t at = 0; (at = colored.find('\x1b', at)) != std::string::npos;) {
    colored.erase(at, colored.find('m', at) - at + 1);
  }
  EXPECT_EQ(plain, colored);
}

TEST(TextTable, WrapsWhatGivesAndLeavesOutEmptyColumns) {
  TextTable table({{"id", false}, {"empty", false}, {"text", false, true}, {"n"}});
  table.Row({"a", "", std::string(80, 'x') + " " + std::string(80, 'y'), "1"});
  table.Row({"b", "", "short", "22"});
  const std::string text = table.ToText();
  ExpectNarrow(text);
  EXPECT_EQ(text.find("empty"), std::string::npos);
  EXPECT_NE(text.find(std::string(80, 'x')), std::string::npos);
  EXPECT_NE(text.find(std::string(80, 'y')), std::string::npos);
}

TEST(TextTable, GoesOnBelowWhenThereIsNoRoomForAllColumns) {
  TextTable table({{"id", false}, {"a"}, {"b"}, {"c"}, {"d"}});
  const auto wide = [](char c) { return std::string(40, c); };
  table.Row({"D1", wide('1'), wide('2'), wide('3'), wide('4')});
  EXPECT_EQ(table.ToText(), "  id" + std::string(41, ' ') + "a" + std::string(41, ' ') + "b\n" +
                                "  D1  " + wide('1') + "  " + wide('2') + "\n" + "\n" + "  id" +
                                std::string(41, ' ') + "c" + std::string(41, ' ') + "d\n" +
                                "  D1  " + wide('3') + "  " + wide('4') + "\n");
}

// Six fronts that cover too much of an edge of 3/4 in at fourteen places.
TEST(ResultTables, FailuresOfOneCauseAreOneWithAList) {
  const testing::Solved s = testing::MustSolve(
      R"({"case": {"width": 20, "height": 40, "depth": 24}, "fronts": {"overlay": "7/8"},
      "drawers": [{}, {}, {}, {}, {}, {}]})");
  const std::string tables = TablesOf(s.spec, s.bank);
  EXPECT_THAT(tables, HasSubstr(", 1 failure\n"));
  EXPECT_THAT(tables, HasSubstr("D1 left, D2 left"));
}

TEST(Printable, LeavesTextAndTakesControlsAway) {
  EXPECT_EQ(Printable("15 3/8 \xe2\x89\x88 \xf0\x9f\x98\x80 \xc3\xa9"),
            "15 3/8 \xe2\x89\x88 \xf0\x9f\x98\x80 \xc3\xa9");
  EXPECT_EQ(Printable("a\x1b[2Jb\tc\nd\x7f"), "a [2Jb c d ");
  EXPECT_EQ(Printable("\xc2\x9b|\xe2\x80\xae|\xe2\x80\xa8|\xe2\x81\xa6"), " | | | ");
  EXPECT_EQ(Printable("\x9b|\xff|\xc3"), "\uFFFD|\uFFFD|\uFFFD");
}

TEST(Width, CountsAndShortensInCharacters) {
  EXPECT_EQ(CharacterCount("\xe2\x89\x88 3"), 3U);
  EXPECT_EQ(Shortened("\xc3\xa9\xc3\xa9\xc3\xa9\xc3\xa9", 4), "\xc3\xa9\xc3\xa9\xc3\xa9\xc3\xa9");
  EXPECT_EQ(Shortened("\xc3\xa9\xc3\xa9\xc3\xa9\xc3\xa9\xc3\xa9", 4),
            "\xc3\xa9\xc3\xa9\xc3\xa9\u2026");
}

}  // namespace
}  // namespace tillwright
