// The page of a shop packet: safe text, whole tables, the steps a bank needs.
#include "write/packet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/specs.h"
#include "write/html.h"
#include "write/work_steps.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;
using testing::MustSolve;
using ::testing::Not;

std::vector<std::string> TitlesOf(const char* spec) {
  std::vector<std::string> titles;
  for (const WorkStep& step : WorkSteps(MustSolve(spec).bank)) titles.push_back(step.title);
  return titles;
}

TEST(Html, EscapesWhatAPageWouldTakeForItself) {
  EXPECT_EQ(HtmlText("a<b & \"c\">\x1b[31m"), "a&lt;b &amp; &quot;c&quot;&gt; [31m");
  EXPECT_EQ(HtmlLink("left side, D1 50%.svg"), "left%20side%2C%20D1%2050%25.svg");
}

TEST(Html, ATableLeavesEmptyColumnsOut) {
  TextTable table({{"", false}, {"name", false}, {"size"}});
  table.Row({"D1", "", "3 1/2"});
  table.Row({"D2", "", "4"});
  EXPECT_EQ(HtmlTable(table),
            "<div class=\"wide\"><table>\n<thead><tr><th></th><th class=\"n\">size</th></tr>"
            "</thead>\n<tbody>\n"
            "<tr><th>D1</th><td class=\"n\">3 1/2</td></tr>\n"
            "<tr><th>D2</th><td class=\"n\">4</td></tr>\n"
            "</tbody>\n</table></div>\n");
}

// On a phone the cells of a wide table stand below each other, each with the name of its column.
TEST(Html, TheCellsOfAWideTableNameTheirColumns) {
  TextTable table({{"part", false}, {"pcs"}, {"length"}, {"cut \"a\"", false}});
  table.Row({"side", "2", "3 1/2", "x"});
  EXPECT_EQ(HtmlTable(table),
            "<div class=\"wide\"><table class=\"stack\">\n<thead><tr><th>part</th>"
            "<th class=\"n\">pcs</th><th class=\"n\">length</th><th>cut &quot;a&quot;</th></tr>"
            "</thead>\n<tbody>\n<tr><th>side</th><td class=\"n\" data-head=\"pcs\">2</td>"
            "<td class=\"n\" data-head=\"length\">3 1/2</td>"
            "<td data-head=\"cut &quot;a&quot;\">x</td></tr>\n</tbody>\n</table></div>\n");
}

TEST(Steps, AnOpeningNeedsNoStepsOfACase) {
  const std::vector<std::string> titles =
      TitlesOf(R"({"opening": {"width": 15, "height": 20, "depth": 20}, "drawers": [{}, {}]})");
  EXPECT_THAT(titles, Not(::testing::Contains(HasSubstr("case parts"))));
  EXPECT_EQ(titles.front(), "Measure the site and the stock");
  EXPECT_EQ(titles.back(), "Finish and anchor");
}

TEST(Steps, ACaseWithDadosIsCutJointedAndPutTogetherInThatOrder) {
  EXPECT_THAT(TitlesOf(R"({"case": {"width": 16, "height": 24, "depth": 20,
                                    "joint": {"type": "dado"}}, "drawers": [{}, {}]})"),
              ::testing::IsSupersetOf({"Cut the case parts", "Cut the case joinery",
                                       "Assemble the case", "Lay out and mount the slides"}));
}

TEST(Steps, EachStepSaysWhatToDoAndEveryMachineHasItsCaution) {
  const Bank bank = MustSolve(R"({"case": {"width": 16, "height": 24, "depth": 20},
      "fronts": {"material": "black cherry"}, "drawers": [{}, {}]})")
                        .bank;
  for (const WorkStep& step : WorkSteps(bank)) {
    EXPECT_FALSE(step.lines.empty()) << step.title;
    if (step.title.starts_with("Cut")) {
      EXPECT_FALSE(step.cautions.empty()) << step.title;
    }
  }
}

TEST(Packet, HoldsNamesAsTextAndEverySizeOfTheTables) {
  const auto [spec, bank] = MustSolve(
      R"({"title": "<script>alert(1)</script>", "opening": {"width": "15 3/8", "height": 20,
          "depth": 20}, "drawers": [{"name": "A & B"}, {}]})");
  const std::vector<Finding> findings = CheckBank(spec, bank);
  std::vector<PacketSection> sections(1);
  sections[0].id = "sizes";
  sections[0].heading = "Sizes";
  sections[0].tables = BankTables(bank);
  sections[0].files = {{"a b.pdf", "to print"}};
  const std::string page = PacketPage(bank, findings, sections, "svg{}");
  EXPECT_THAT(page, Not(HasSubstr("<script")));
  EXPECT_THAT(page, HasSubstr("&lt;script&gt;"));
  EXPECT_THAT(page, HasSubstr("A &amp; B"));
  EXPECT_THAT(page, HasSubstr("href=\"a%20b.pdf\""));
  EXPECT_THAT(page, HasSubstr("<section id=\"sizes\">"));
  for (const BankTable& table : sections[0].tables) {
    for (const auto& row : table.table.rows()) {
      for (const std::string& cell : row) EXPECT_THAT(page, HasSubstr(HtmlText(cell)));
    }
  }
}

TEST(Packet, SaysNotToCutWhileACheckFails) {
  const auto [spec, bank] = MustSolve(
      R"({"opening": {"width": 15, "height": 20, "depth": 20},
          "drawers": [{"exact": 10}, {"exact": 11}]})");
  const std::vector<Finding> findings = CheckBank(spec, bank);
  ASSERT_TRUE(tillwright::HasFailure(findings));
  EXPECT_THAT(PacketPage(bank, findings, {}, ""), HasSubstr("Do not cut yet"));
}

}  // namespace
}  // namespace tillwright
