// Whose keys win: a drawer's own, the bank's, or the default (model, section on slides).
#include "spec/box_rules.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "support/specs.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using testing::L;

// A bank's keys and one drawer's own, both as the inside of an object.
Spec Read(const std::string& bank, const std::string& drawer, const char* units = "in") {
  return testing::MustRead(R"({"units": ")" + std::string(units) +
                           R"(", "opening": {"width": "15 in", "height": "24 in", "depth": "21 in"},
    )" + bank + (bank.empty() ? "" : ",") + R"("drawers": [{}, {)" + drawer + "}]}");
}

BoxRules OwnRules(const Spec& spec) { return DrawerRules(spec, spec.overrides.at(0)); }

struct Row {
  const char* bank;
  const char* drawer;
  const char* about;
  Entry<Length> BoxRules::* rule;
  const char* wanted;  // empty: nothing is said
};

TEST(BoxRules, TheDrawersKeysWinThenTheBanksThenTheDefaults) {
  constexpr const char* kOwnDepth = R"("box": {"depth": 9})";  // so that there are own keys at all
  for (const Row& row : {
           // Defaults by slide type.
           Row{"", kOwnDepth, "side-mount", &BoxRules::clearance, "1/2"},
           Row{"", kOwnDepth, "side-mount", &BoxRules::clear_below, "1/4"},
           Row{"", kOwnDepth, "side-mount", &BoxRules::clear_above, "1/2"},
           Row{"", kOwnDepth, "side-mount", &BoxRules::behind, "1/2"},
           Row{"", kOwnDepth, "side-mount", &BoxRules::up, "1/4"},
           Row{"", kOwnDepth, "side-mount", &BoxRules::line, "7/8"},
           Row{R"("slides": {"type": "undermount"})", kOwnDepth, "under", &BoxRules::deduct,
               "42 mm"},
           Row{R"("slides": {"type": "undermount"})", kOwnDepth, "", &BoxRules::side_max, "16 mm"},
           Row{R"("slides": {"type": "undermount"})", kOwnDepth, "", &BoxRules::clear_below,
               "9/16"},
           Row{R"("slides": {"type": "undermount"})", kOwnDepth, "", &BoxRules::clear_above, "1/4"},
           Row{R"("slides": {"type": "undermount"})", kOwnDepth, "", &BoxRules::behind, "3/4"},
           Row{R"("slides": {"type": "undermount"})", kOwnDepth, "", &BoxRules::up, "1/2"},
           Row{R"("slides": {"type": "center-mount"})", kOwnDepth, "", &BoxRules::clearance, "1/8"},
           Row{R"("slides": {"type": "center-mount"})", kOwnDepth, "", &BoxRules::clear_above,
               "1/4"},
           Row{R"("slides": {"type": "wood-runner"})", kOwnDepth, "", &BoxRules::clearance, "1/32"},
           Row{R"("slides": {"type": "wood-runner"})", kOwnDepth, "", &BoxRules::clear_below, "0"},
           Row{R"("slides": {"type": "wood-runner"})", kOwnDepth, "", &BoxRules::clear_above,
               "1/8"},
           // The bank's key, the drawer's key.
           Row{R"("slides": {"clearance": "0.55"})", kOwnDepth, "bank", &BoxRules::clearance,
               "0.55"},
           Row{R"("slides": {"clearance": "0.55"})", R"("slides": {"clearance": "5/8"})", "own",
               &BoxRules::clearance, "5/8"},
           Row{R"("box": {"side": {"thickness": "5/8"}})", kOwnDepth, "", &BoxRules::side, "5/8"},
           Row{R"("box": {"side": {"thickness": "5/8"}})",
               R"("box": {"side": {"material": "oak"}})", "merged at every depth", &BoxRules::side,
               "5/8"},
           Row{R"("box": {"bottom": {"thickness": "3/8", "up": 1}})",
               R"("box": {"bottom": {"thickness": "1/2"}})", "", &BoxRules::up, "1"},
           Row{R"("slides": {"length": 18})", kOwnDepth, "", &BoxRules::slide_length, "18"},
           Row{R"("slides": {"length": 18})", R"("slides": {"length": "auto"})", "auto again",
               &BoxRules::slide_length, ""},
           // Another slide type: none of the bank's slides, clear_below, clear_above, bottom.up.
           Row{R"("slides": {"length": 18})", R"("slides": {"type": "undermount"})", "",
               &BoxRules::slide_length, ""},
           Row{R"("slides": {"behind": 2})", R"("slides": {"type": "undermount"})", "",
               &BoxRules::behind, "3/4"},
           Row{R"("slides": {"line": 2})", R"("slides": {"type": "undermount"})", "",
               &BoxRules::line, "0"},
           Row{R"("slides": {"clearance": 2})", R"("slides": {"type": "wood-runner"})", "",
               &BoxRules::clearance, "1/32"},
           Row{R"("box": {"clear_below": 2})", R"("slides": {"type": "undermount"})", "",
               &BoxRules::clear_below, "9/16"},
           Row{R"("box": {"clear_above": 2})", R"("slides": {"type": "undermount"})", "",
               &BoxRules::clear_above, "1/4"},
           Row{R"("box": {"bottom": {"up": 2}})", R"("slides": {"type": "undermount"})", "",
               &BoxRules::up, "1/2"},
           Row{R"("box": {"bottom": {"thickness": 2}})", R"("slides": {"type": "undermount"})",
               "other keys stay", &BoxRules::bottom, "2"},
           // The same type typed again changes nothing.
           Row{R"("box": {"clear_below": 2})", R"("slides": {"type": "side-mount"})", "",
               &BoxRules::clear_below, "2"},
           Row{R"("slides": {"type": "undermount", "behind": 2})",
               R"("slides": {"type": "undermount"})", "", &BoxRules::behind, "2"},
           // Another joint or fit drops what it does not have, and nothing else.
           Row{R"("box": {"corner": {"joint": "rabbet", "depth": "3/8"}})",
               R"("box": {"corner": {"joint": "dado"}})", "", &BoxRules::joint_depth, "3/8"},
           Row{R"("box": {"corner": {"joint": "rabbet", "depth": "3/8"}})",
               R"("box": {"corner": {"joint": "butt"}})", "", &BoxRules::joint_depth, ""},
           Row{R"("box": {"corner": {"joint": "half-blind-dovetail", "lap": "3/16"}})",
               R"("box": {"corner": {"joint": "finger"}})", "", &BoxRules::lap, ""},
           Row{R"("box": {"corner": {"back_setback": 1}})",
               R"("box": {"corner": {"joint": "dado"}})", "", &BoxRules::back_setback, "1"},
           Row{R"("box": {"corner": {"back_setback": 1}})",
               R"("box": {"corner": {"joint": "through-dovetail"}})", "", &BoxRules::back_setback,
               ""},
           Row{R"("box": {"bottom": {"depth": "3/8"}})", R"("box": {"bottom": {"fit": "rabbet"}})",
               "", &BoxRules::groove, "3/8"},
           // Stock heights of its own replace the bank's height; given together, height wins.
           Row{R"("box": {"height": 4})", R"("box": {"heights": [3, 5]})", "", &BoxRules::height,
               ""},
           Row{R"("box": {"heights": [3, 5]})", R"("box": {"height": 4})", "", &BoxRules::height,
               "4"},
           Row{R"("box": {"height": 4})", R"("box": {"heights": [3], "height": 2})", "",
               &BoxRules::height, "2"},
           Row{R"("box": {"depth": 12})", R"("box": {"height": 4})", "", &BoxRules::depth, "12"},
       }) {
    SCOPED_TRACE(std::string(row.bank) + " with " + row.drawer + " " + row.about);
    const Spec spec = Read(row.bank, row.drawer);
    const Entry<Length> entry = OwnRules(spec).*row.rule;
    if (*row.wanted == '\0') {
      EXPECT_FALSE(entry.typed) << FormatInches(entry.value);
    } else {
      EXPECT_EQ(FormatMillimeters(entry.value), FormatMillimeters(L(row.wanted)));
    }
  }
}

TEST(BoxRules, MetricSpecsTakeMetricDefaults) {
  const Spec spec = Read("", R"("box": {"depth": "9 in"})", "mm");
  const BoxRules rules = OwnRules(spec);
  EXPECT_EQ(rules.clearance.value, L("12.7 mm"));
  EXPECT_EQ(rules.clear_below.value, L("6 mm"));
  EXPECT_EQ(rules.clear_above.value, L("13 mm"));
  EXPECT_EQ(rules.behind.value, L("13 mm"));
  EXPECT_EQ(rules.side.value, L("12 mm"));
  EXPECT_EQ(rules.bottom.value, L("6 mm"));
  EXPECT_EQ(rules.groove.value, L("6 mm"));
  EXPECT_EQ(rules.play.value, L("0.8 mm"));
  EXPECT_EQ(rules.up.value, L("6 mm"));
  EXPECT_EQ(rules.line.value, L("22 mm"));
}

TEST(BoxRules, SeriesAndStockHeightsAreTheDrawersElseTheBanks) {
  const auto series = [](const char* bank, const char* drawer) {
    const Spec spec = Read(bank, drawer);
    const BoxRules rules = OwnRules(spec);
    return rules.series == nullptr ? std::string("none") : FormatInches(rules.series->at(0).value);
  };
  constexpr const char* kBank = R"("slides": {"lengths": [14, 16]})";
  EXPECT_EQ(series("", R"("box": {"depth": 9})"), "none");
  EXPECT_EQ(series(kBank, R"("box": {"depth": 9})"), "14");
  EXPECT_EQ(series(kBank, R"("slides": {"lengths": [9]})"), "9");
  EXPECT_EQ(series(kBank, R"("slides": {"type": "undermount"})"), "none");
  const Spec spec = Read(R"("box": {"heights": [3, 5]})", R"("box": {"depth": 9})");
  ASSERT_NE(OwnRules(spec).heights, nullptr);
  EXPECT_EQ(OwnRules(spec).heights->size(), 2U);
}

TEST(BoxRules, MaterialsFollowTheSameRuleAndEndsFollowTheSides) {
  const Spec spec = Read(R"("box": {"side": {"material": "poplar"}, "bottom": {"material": "MDF"}})",
                         R"("box": {"bottom": {"material": "oak plywood"}})");
  const BoxRules bank = BankRules(spec);
  EXPECT_EQ(*bank.side_material, "poplar");
  EXPECT_EQ(*bank.end_material, "poplar");
  EXPECT_EQ(*bank.bottom_material, "MDF");
  const BoxRules own = OwnRules(spec);
  EXPECT_EQ(*own.side_material, "poplar");
  EXPECT_EQ(*own.bottom_material, "oak plywood");
  EXPECT_FALSE(own.end.typed) << "as thick as the sides, whichever those are";
}

// --- Keys that their own choice does not have ---------------------------------------------------

std::vector<std::string> Refused(const std::string& bank, const std::string& drawer) {
  const std::string text =
      R"({"opening": {"width": 15, "height": 24, "depth": 21}, )" + bank +
      (bank.empty() ? "" : ",") + R"("drawers": [{}, {)" + drawer + "}]}";
  std::vector<std::string> said;
  const Outcome<Spec> read = ReadSpec(text);  // which asks CheckApplicable
  for (const Diagnostic& d : read.diagnostics()) {
    EXPECT_EQ(d.code, DiagnosticCode::kNotApplicable);
    EXPECT_FALSE(d.hint.empty());
    said.push_back(d.message);
  }
  return said;
}

TEST(BoxRules, AKeyTypedBesideAChoiceThatDoesNotHaveItIsAnError) {
  EXPECT_THAT(Refused(R"("slides": {"deduct": 1})", ""),
              ElementsAre("\"deduct\" does not belong to \"side-mount\""));
  EXPECT_THAT(Refused(R"("slides": {"type": "undermount", "clearance": 1})", ""),
              ElementsAre("\"clearance\" does not belong to \"undermount\""));
  EXPECT_THAT(Refused(R"("slides": {"type": "wood-runner", "side_max": 1})", ""),
              ElementsAre("\"side_max\" does not belong to \"wood-runner\""));
  EXPECT_THAT(Refused("", R"("slides": {"type": "undermount", "clearance": 1})"),
              ElementsAre("\"clearance\" does not belong to \"undermount\""));
  EXPECT_THAT(Refused("", R"("box": {"corner": {"depth": 1}})"),
              ElementsAre("\"depth\" does not belong to \"butt\""));
  EXPECT_THAT(Refused(R"("box": {"corner": {"joint": "finger", "back_setback": 1, "lap": 1}})", ""),
              ElementsAre("\"lap\" does not belong to \"finger\"",
                          "\"back_setback\" does not belong to \"finger\""));
  EXPECT_THAT(Refused(R"("box": {"bottom": {"fit": "rabbet", "up": 1, "open_back": true}})", ""),
              ElementsAre("\"up\" does not belong to \"rabbet bottom\"",
                          "\"open_back\" does not belong to \"rabbet bottom\""));
  EXPECT_THAT(Refused(R"("box": {"bottom": {"fit": "applied", "depth": 1, "play": 0}})", ""),
              ElementsAre("\"depth\" does not belong to \"applied bottom\"",
                          "\"play\" does not belong to \"applied bottom\""));
}

TEST(BoxRules, AnInheritedKeyThatTheDrawersChoiceDoesNotHaveIsDroppedInSilence) {
  EXPECT_THAT(Refused(R"("slides": {"clearance": 1})", R"("slides": {"type": "undermount"})"),
              IsEmpty());
  EXPECT_THAT(Refused(R"("box": {"bottom": {"up": 1, "open_back": true}})",
                      R"("box": {"bottom": {"fit": "applied"}})"),
              IsEmpty());
  EXPECT_THAT(Refused(R"("box": {"corner": {"joint": "rabbet", "depth": 1}})",
                      R"("box": {"corner": {"joint": "finger"}})"),
              IsEmpty());
}

}  // namespace
}  // namespace tillwright
