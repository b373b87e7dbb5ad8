// The fitting sheet: nothing touches, every gap has its row and blank, and what is black is wrong.
#include "draw/fitting/fitting.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/files.h"
#include "support/gap_checks.h"
#include "support/layout_faults.h"
#include "support/random_spec.h"
#include "tillwright/draw.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

std::vector<Sheet> SheetsOf(const Checked& c) {
  return DrawFittingSheet(c.spec, c.bank, c.check, DrawingFontMetrics());
}

void ExpectNoFaults(const std::vector<Sheet>& sheets, const std::string& name) {
  for (const Sheet& sheet : sheets) {
    const std::vector<LayoutFault> faults = FindLayoutFaults(sheet, DrawingFontMetrics());
    EXPECT_TRUE(faults.empty()) << name << ", " << sheet.name << ":\n" << DescribeFaults(faults);
  }
}

std::vector<std::string> LabelsOf(const std::vector<SheetGroup>& groups) {
  std::vector<std::string> texts;
  for (const SheetGroup& group : groups) {
    for (const Primitive& primitive : group.primitives) {
      if (const Label* label = std::get_if<Label>(&primitive)) texts.push_back(label->plain);
    }
  }
  return texts;
}

bool Holds(const std::vector<std::string>& texts, const std::string& text) {
  return std::ranges::find(texts, text) != texts.end();
}

std::vector<std::string> CuratedTexts() {
  std::vector<std::string> texts;
  for (const auto& path : FilesIn(SourcePath("specs"), ".json")) {
    if (path.filename() != "schema.json") texts.push_back(ReadFile(path));
  }
  EXPECT_FALSE(texts.empty());
  return texts;
}

TEST(FittingSheet, OfEveryCuratedSpecIsOnePageWithoutAFault) {
  for (const std::string& text : CuratedTexts()) {
    const Checked c = MustCheck(text);
    const std::vector<Sheet> sheets = SheetsOf(c);
    EXPECT_EQ(sheets.size(), 1U) << c.bank.title;
    ExpectNoFaults(sheets, c.bank.title);
  }
}

TEST(FittingSheet, OfRandomBanksHasNoFault) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  int drawn = 0;
  for (std::uint32_t i = 0; i < 40; ++i) {
    Spec spec = MustRead(RandomSpec(seed + i, i % 2 == 0 ? Unit::kInch : Unit::kMillimeter).Text());
    if (!SolveBank(spec).ok()) continue;
    spec.season.typed = i % 3 == 0;
    spec.fronts.material = Entry<std::string>("cherry");
    if (i % 4 == 0) {
      SpacerSpec& card = spec.spacers.emplace_back();
      card.name = Entry<std::string>("playing card from the second best pack");
      card.thickness = Entry<Length>(L("0.3 mm"));
      card.count = Entry<int>(9);
    }
    ExpectNoFaults(SheetsOf(MustCheck(spec)), "spec " + std::to_string(seed + i));
    ++drawn;
  }
  EXPECT_GT(drawn, 10);
}

TEST(FittingSheet, OfABankWithVeryManyGapsGoesOn) {
  std::string text = R"({"opening": {"width": "96", "height": "96", "depth": 20},
      "fronts": {"style": "inset"}, "layout": {"columns": [)";
  for (int i = 0; i < 9; ++i) {
    text += std::string(i == 0 ? "" : ", ") + R"({"rows": [)";
    for (int k = 0; k <= i + 6; ++k) text += std::string(k == 0 ? "" : ", ") + R"({"drawer": {}})";
    text += "]}";
  }
  const Checked c = MustCheck(text + "]}}");
  const std::vector<Sheet> sheets = SheetsOf(c);
  EXPECT_GT(sheets.size(), 1U);
  ExpectNoFaults(sheets, "many gaps");
}

constexpr const char* kInset = R"({"opening": {"width": 16, "height": 24, "depth": 20},
    "fronts": {"style": "inset", "material": "oak"}, "drawers": [{}, {}],
    "season": {"made": 6, "dry": 6, "humid": 13}, "spacers": [{"name": "card", "thickness": "0.3 mm", "count": 12}]})";

// One row a gap, but for those along one edge that are alike.
TEST(FittingSheet, EveryGapHasItsRowItsRangeAndABlank) {
  const Checked c = MustCheck(kInset);
  const std::vector<View> views = FittingTable(c.spec, c.bank, c.check, 200, DrawingFontMetrics());
  ASSERT_EQ(views.size(), 2U);
  const std::vector<std::string> texts = LabelsOf(views[0].groups);
  for (const char* text : {"1", "2", "3", "4\u20135", "6\u20137", "D2 to D1", "D1 to opening.top",
                           "1/16 \u2013 3/16", "1/8"}) {
    EXPECT_TRUE(Holds(texts, text)) << text;
  }
  // 1/8 in is 3.175 mm: eleven cards of 0.3 mm come to 3.3, ten to 3.0: eleven are nearer.
  EXPECT_TRUE(Holds(texts, "11 \u00d7 card"));
  const auto blanks = std::ranges::count_if(views[0].groups[0].primitives, [](const Primitive& p) {
    const Polyline* line = std::get_if<Polyline>(&p);
    return line != nullptr && line->pen == Pen::kOutline;
  });
  EXPECT_EQ(blanks, 5);
  EXPECT_TRUE(Holds(LabelsOf(views[1].groups), "Diagonal rising"));
}

TEST(FittingSheet, FrontsAreHungFromTheBottomUpThenFromTheLeft) {
  const Checked c = MustCheck(R"({"opening": {"width": 32, "height": 24, "depth": 20},
      "layout": {"rows": [{"drawer": {}}, {"columns": [{"drawer": {}}, {"drawer": {}}]}]}})");
  EXPECT_EQ(HangingOrder(c.bank), (std::vector<int>{1, 2, 0}));
  const View view =
      FittingElevation(c.bank, c.check, ScaleSeries(Unit::kInch)[3], DrawingFontMetrics());
  for (const char* text : {"D1", "D2", "D3", "fit 1st", "fit 2nd", "fit 3rd", "1", "2"}) {
    EXPECT_TRUE(Holds(LabelsOf(view.groups), text)) << text;
  }
}

int BlackIn(const SheetGroup& group) {
  return static_cast<int>(std::ranges::count_if(group.primitives, [](const Primitive& p) {
    const Polyline* shape = std::get_if<Polyline>(&p);
    return shape != nullptr && shape->fill == Tone::kInk;
  }));
}

// A damp summer closes the gaps of oak fronts: black in that panel alone, as many as fail.
TEST(Evenness, WhatIsOutsideItsLimitsIsBlack) {
  const Checked c = MustCheck(kInset);
  const View view = EvennessView(c.bank, c.check, {}, DrawingFontMetrics());
  ASSERT_EQ(view.groups.size(), 5U);  // four panels and the caption
  int closed = 0;
  for (const StackUp& stack : c.check.stacks) {
    closed += stack.humid_mm < ToMillimeters(c.check.least) ? 1 : 0;
  }
  EXPECT_GT(closed, 0);
  EXPECT_EQ(BlackIn(view.groups[0]), 0);
  EXPECT_EQ(BlackIn(view.groups[1]), 0);
  EXPECT_EQ(BlackIn(view.groups[2]), closed);
  EXPECT_EQ(BlackIn(view.groups[3]), 0);
}

// A gap is drawn as many times as wide as the caption says.
TEST(Evenness, GapsAreExaggeratedAsSaid) {
  const Checked c = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "drawers": [{}, {}]})");
  const View view = EvennessView(c.bank, c.check, {}, DrawingFontMetrics());
  ASSERT_EQ(view.groups.size(), 3U);
  std::vector<PaperBox> fronts;
  for (const Primitive& p : view.groups[0].primitives) {
    const Polyline* shape = std::get_if<Polyline>(&p);
    if (shape != nullptr && shape->fill == Tone::kShade) fronts.push_back(Bounds(p));
  }
  ASSERT_EQ(fronts.size(), 2U);
  const double small = fronts[0].Width() / ToMillimeters(c.bank.spaces[0].front.rect.width);
  const std::vector<std::string> caption = LabelsOf({view.groups[2]});
  const double times = (fronts[1].top - fronts[0].bottom) / small / 3.175;
  EXPECT_NEAR(times, std::round(times), 1e-6);
  EXPECT_NE(caption.at(0).find("drawn " + std::to_string(std::lround(times)) + " times"),
            std::string::npos)
      << caption.at(0);
}

}  // namespace
}  // namespace tillwright::testing
