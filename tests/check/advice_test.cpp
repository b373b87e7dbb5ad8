// Every failing verdict says what to change; the changed spec is solved again and passes.
#include "check/advice.h"

#include <gtest/gtest.h>

#include "support/files.h"
#include "support/gap_checks.h"
#include "support/random_spec.h"

namespace tillwright {
namespace {

using testing::Checked;
using testing::MustCheck;
using testing::MustRead;
using testing::Random;

// The codes that this check answers for; a failing box or joint is another check's.
bool IsOurs(CheckCode code) {
  return code == CheckCode::kClosure || code == CheckCode::kGap || code == CheckCode::kMeet ||
         (code >= CheckCode::kGapTolerance && code <= CheckCode::kRefit);
}

std::vector<Finding> Failing(const Checked& c) {
  std::vector<Finding> failing;
  for (const std::vector<Finding>& list : {CheckBank(c.spec, c.bank), c.check.findings}) {
    for (const Finding& finding : list) {
      if (finding.level == Level::kFail && IsOurs(finding.code)) failing.push_back(finding);
    }
  }
  return failing;
}

void ExpectAdvicePasses(const Checked& c, const std::string& what) {
  ASSERT_FALSE(c.check.advice.empty()) << what << ": no advice";
  const Checked after = MustCheck(Applied(c.spec, c.bank, c.check.advice));
  std::string advice;
  for (const SpecChange& change : c.check.advice) advice += "  " + change.text + "\n";
  for (const Finding& finding : Failing(after)) {
    ADD_FAILURE() << what << "\nafter\n"
                  << advice << ToText(finding.code) << " " << finding.subject << ": "
                  << finding.message;
  }
}

struct Case {
  const char* name;
  const char* keys;
  CheckCode code;
  const char* advice;  // must stand in the failing message
};

TEST(Advice, OfEveryCodeIsSaidAndWorks) {
  for (
      const Case& row : {
          Case{
              "damp summer",
              R"("fronts": {"style": "inset", "material": "oak"}, "season": {"made": 6, "humid": 13})",
              CheckCode::kGapSeason, "fronts.cut: quarter"},
          Case{"fronts made too dry",
               R"("fronts": {"gap": "1/16", "material": "cherry"}, "season": {})",
               CheckCode::kGapSeason, "gap: "},
          Case{
              "a season beyond all limits",
              R"("fronts": {"style": "inset", "material": "beech"}, "season": {"made": 9, "dry": 3, "humid": 18})",
              CheckCode::kGapSeason, "fronts.cut: quarter"},
          Case{"a lower opening",
               R"("fronts": {"style": "inset"}, "measured": {"height": {"left": "23 3/4"}})",
               CheckCode::kGapMeasured, "opening.height: 23 3/4 in"},
          Case{"a front cut too high",
               R"("fronts": {"style": "inset"}, "measured": {"fronts": {"D1": {"height": "8"}}})",
               CheckCode::kGapMeasured, "D1.exact: 8 in"},
          Case{"a front cut too wide",
               R"("fronts": {"style": "inset"}, "measured": {"fronts": {"D1": {"width": 17}}})",
               CheckCode::kGapMeasured, "measured sizes of D1"},
          Case{
              "out of square",
              R"("fronts": {"style": "inset", "edge": "1/16"}, "tolerance": {"cut": 0, "place": 0, "opening": 0},
                   "measured": {"diagonals": {"rising": "29", "falling": "28 5/8"}})",
              CheckCode::kGapTaper, "fronts.edge.left: "},
          Case{"an edge uncovered", R"("fronts": {"overlay": "1/32"})", CheckCode::kCover,
               "fronts.overlay.top: "},
          Case{"limits that cross", R"("limits": {"least": "1/4", "greatest": "1/8"})",
               CheckCode::kLimitsCross, "limits.greatest: "},
          Case{"a box made too wide", R"("measured": {"boxes": {"D2": {"width": 16}}})",
               CheckCode::kBoxMeasured, "measured sizes of D2"},
          Case{"too shallow", R"("measured": {"depth": "20 1/4"})", CheckCode::kDepthMeasured,
               "opening.depth: 20 1/4 in"},
      }) {
    const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 22},
        "drawers": [{}, {}, {}], )" +
                                std::string(row.keys) + "}");
    bool said = false;
    for (const Finding& finding : c.check.findings) {
      said = said || (finding.code == row.code && finding.level == Level::kFail &&
                      finding.message.find(row.advice) != std::string::npos);
    }
    EXPECT_TRUE(said) << row.name;
    if (!said) {
      for (const Finding& f : c.check.findings) {
        if (f.level == Level::kFail) ADD_FAILURE() << ToText(f.code) << " " << f.message;
      }
    }
    ExpectAdvicePasses(c, row.name);
  }
}

// Parts cut and set within their tolerances seldom all lie at the worst of them together.
TEST(Advice, AWorstCaseOutsideIsAWarningWithItsChance) {
  for (const char* keys : {R"("fronts": {"style": "inset", "edge": "1/16"})",
                           R"("setting": "centred", "fronts": {"gap": "3/64"})",
                           R"("fronts": {"style": "inset"}, "tolerance": {"cut": "1/8"})"}) {
    const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 22},
        "drawers": [{}, {}, {}], )" +
                                std::string(keys) + "}");
    EXPECT_TRUE(Failing(c).empty()) << keys;
    EXPECT_TRUE(c.check.advice.empty()) << keys;
    EXPECT_TRUE(std::ranges::any_of(c.check.findings, [](const Finding& f) {
      return f.code == CheckCode::kGapTolerance && f.level == Level::kWarn &&
             f.message.find(" % of cases") != std::string::npos;
    })) << keys;
  }
}

// By hand: left gap 1/16, right 1/16; cut 1/64 counts half, place 1/64 whole, the opening 1/32 on
// the right: sigma = sqrt(1/128^2 + 1/64^2 + 1/32^2) / 3 = 0.01196 in, to the least 1/32 it
// is 2.614 of it: 99.55 % (a table of the normal distribution, from memory).
TEST(Advice, TheChanceIsOfTheOneGap) {
  const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 22},
      "drawers": [{}], "fronts": {"style": "inset", "edge": "1/16"}})");
  const auto found = std::ranges::find_if(c.check.findings, [](const Finding& f) {
    return f.code == CheckCode::kGapTolerance && f.subject == "D1 to opening.right";
  });
  ASSERT_NE(found, c.check.findings.end());
  EXPECT_NE(found->message.find("in 99.6 % of cases; an inset front is planed to fit"),
            std::string::npos)
      << found->message;
}

TEST(Advice, TheEdgesLeftAndRightStayAlike) {
  const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 22},
      "fronts": {"style": "inset", "edge": "1/16"}, "drawers": [{}, {}],
      "measured": {"width": [{"at": 0, "size": "15 31/32"}]}})");
  std::vector<Length> left;
  std::vector<Length> right;
  for (const SpecChange& change : c.check.advice) {
    if (change.key != SpecChange::Key::kEdge) continue;
    if (change.edge == Edge::kLeft) left.push_back(change.to);
    if (change.edge == Edge::kRight) right.push_back(change.to);
  }
  EXPECT_EQ(left, right);
}

TEST(Advice, SizesThatDoNotCloseAreMadeToClose) {
  const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 22},
      "fronts": {"gap": "1/64"}, "drawers": [{"exact": 7}, {"exact": 8}, {"exact": 9}]})");
  ExpectAdvicePasses(c, "all exact, and the gap too small");
}

TEST(Advice, ThereIsNoneWhenNothingFails) {
  const Checked c =
      MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 22}, "drawers": [{}, {}]})");
  EXPECT_TRUE(c.check.advice.empty());
  EXPECT_TRUE(Failing(c).empty());
}

// Random layouts with random troubles: wherever a verdict fails, its advice passes.
TEST(Advice, OfRandomTroublesWorks) {
  const std::uint32_t seed = testing::TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  Random random(seed);
  int failing = 0;
  for (std::uint32_t i = 0; i < 300; ++i) {
    Spec spec = MustRead(testing::RandomSpec(seed + i, Unit::kInch).Text());
    if (!SolveBank(spec).ok()) continue;
    const auto length = [&](int low, int high) {
      return Entry<Length>(Length::Inches(random.Int(low, high), 128), Place{});
    };
    spec.setting = Entry<Setting>(random.Chance(50) ? Setting::kSpaced : Setting::kCenterd);
    if (random.Chance(50)) spec.tolerance.cut = length(0, 4);
    if (random.Chance(50)) spec.tolerance.place = length(0, 4);
    if (random.Chance(40)) {
      spec.fronts.material = Entry<std::string>("cherry");
      spec.season.typed = true;
    }
    if (random.Chance(30)) {
      const Bank bank = SolveBank(spec).value();
      spec.measured.typed = true;
      spec.measured.height_left =
          Entry<Length>(bank.opening_height + Length::Inches(random.Int(-16, 16), 64), Place{});
    }
    const Checked c = MustCheck(spec);
    if (Failing(c).empty()) continue;
    ++failing;
    ExpectAdvicePasses(c, "spec " + std::to_string(i));
  }
  EXPECT_GT(failing, 50);
}

}  // namespace
}  // namespace tillwright
