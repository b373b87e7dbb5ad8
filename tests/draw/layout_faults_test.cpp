#include "support/layout_faults.h"

#include <gtest/gtest.h>

#include <limits>
#include <ostream>
#include <string>

#include "sheet/rich_text.h"

namespace tillwright {
namespace {

// The box of the label under test is [50, 58.5] x [48.75, 51.25] with FixedTextMetrics.
Label GoodLabel(const TextMetrics& metrics) {
  return MakeLabel(metrics, "1234", LabelStyle(), {50, 50}, "case.width");
}

Sheet SheetWith(const Primitive& planted) {
  Sheet sheet{.width = 100, .height = 100, .name = "s", .frame = {10, 10, 90, 90}};
  SheetGroup& group = AddGroup(sheet, "planted", "Planted", 0);
  const FixedTextMetrics metrics;
  group.primitives.push_back(GoodLabel(metrics));
  group.primitives.push_back(planted);
  return sheet;
}

Label At(double x, double y, const char* text = "8") {
  return MakeLabel(FixedTextMetrics(), text, LabelStyle(), {x, y}, "");
}

Label Unmade(const char* text) {
  Label label = At(20, 20);
  label.text = {{TextRun::Kind::kPlain, text, ""}};
  return label;
}

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInf = std::numeric_limits<double>::infinity();

struct FaultCase {
  const char* name;
  Primitive planted;
  LayoutFaultKind kind;
};
void PrintTo(const FaultCase& c, std::ostream* out) { *out << c.name; }

class PlantedFault : public testing::TestWithParam<FaultCase> {};

TEST_P(PlantedFault, IsFoundAndNothingElse) {
  const auto faults = FindLayoutFaults(SheetWith(GetParam().planted), FixedTextMetrics());
  ASSERT_EQ(faults.size(), 1U) << DescribeFaults(faults);
  EXPECT_EQ(faults[0].kind, GetParam().kind) << DescribeFaults(faults);
  EXPECT_EQ(faults[0].group, "planted");
}

using enum LayoutFaultKind;
INSTANTIATE_TEST_SUITE_P(
    Kinds, PlantedFault,
    testing::Values(
        FaultCase{"NanLine", LineOf({kNan, 1}, {2, 2}, Pen::kThin), kNotFinite},
        FaultCase{"InfiniteCircle", Circle{{20, 20}, kInf, Pen::kThin, {}}, kNotFinite},
        FaultCase{"NanArc", Arc{{20, 20}, 2, kNan, 9, Pen::kThin}, kNotFinite},
        FaultCase{"NanArrow", Arrowhead{{20, 20}, kNan, 2}, kNotFinite},
        FaultCase{"NanTick", Tick{{20, kNan}, 2, Pen::kTick}, kNotFinite},
        FaultCase{"NanHatch", HatchLines{{{{1, 1}, {kNan, 2}}}, Pen::kHatch}, kNotFinite},
        FaultCase{"NanLabel", At(kNan, 20), kNotFinite},
        FaultCase{"LineOffPage", LineOf({20, 20}, {100.1, 20}, Pen::kThin), kOutsidePage},
        FaultCase{"StrokeOffPage", LineOf({20, 0.05}, {30, 0.05}, Pen::kFrame), kOutsidePage},
        FaultCase{"CircleOffPage", Circle{{20, 20}, 21, Pen::kThin, {}}, kOutsidePage},
        FaultCase{"LabelOffFrame", At(89, 20), kOutsideFrame},
        FaultCase{"LabelTooClose", At(59.1, 50), kLabelsTouch},
        FaultCase{"LabelBelowTooClose", At(51, 53.1), kLabelsTouch},
        FaultCase{"LineThrough", LineOf({40, 50}, {70, 50}, Pen::kThin), kLineOnLabel},
        FaultCase{"SlantThrough", LineOf({48, 46}, {60, 54}, Pen::kThin), kLineOnLabel},
        FaultCase{"LineInside", LineOf({52, 50}, {53, 50}, Pen::kThin), kLineOnLabel},
        FaultCase{"LineClose", LineOf({40, 51.5}, {70, 51.5}, Pen::kThin), kLineOnLabel},
        FaultCase{"ThickLineClose", LineOf({40, 51.7}, {70, 51.7}, Pen::kGround), kLineOnLabel},
        FaultCase{"CornerClose", LineOf({58.6, 51.5}, {60, 53}, Pen::kThin), kLineOnLabel},
        FaultCase{"CircleThrough", Circle{{54, 50}, 3, Pen::kThin, {}}, kLineOnLabel},
        FaultCase{"ArcThrough", Arc{{54, 50}, 1.2, 60, 60, Pen::kThin}, kLineOnLabel},
        FaultCase{"FilledAround", BoxFill({45, 45, 65, 55}, Tone::kShade), kLineOnLabel},
        FaultCase{"FilledBeside", BoxFill({58.6, 45, 65, 55}, Tone::kInk), kLineOnLabel},
        FaultCase{"DotOn", Circle{{54, 50}, 0.5, Pen::kNone, Tone::kInk}, kLineOnLabel},
        FaultCase{"PaperOver", BoxFill({45, 45, 65, 55}, Tone::kPaper), kLineOnLabel},
        FaultCase{"ArrowOn", Arrowhead{{54, 50}, 0, 2}, kLineOnLabel},
        FaultCase{"TickOn", Tick{{58.6, 50}, 2.4, Pen::kTick}, kLineOnLabel},
        FaultCase{"HatchOn", HatchLines{{{{40, 40}, {45, 40}}, {{50, 40}, {55, 60}}}, Pen::kHatch},
                  kLineOnLabel},
        FaultCase{"MissingGlyph", Unmade("引"), kMissingGlyph},
        FaultCase{"BadUtf8", Unmade("\xff"), kMissingGlyph}),
    [](const auto& each) { return std::string(each.param.name); });

struct CleanCase {
  const char* name;
  Primitive planted;
};
void PrintTo(const CleanCase& c, std::ostream* out) { *out << c.name; }

class CleanSheet : public testing::TestWithParam<CleanCase> {};

TEST_P(CleanSheet, HasNoFaults) {
  const auto faults = FindLayoutFaults(SheetWith(GetParam().planted), FixedTextMetrics());
  EXPECT_TRUE(faults.empty()) << DescribeFaults(faults);
}

INSTANTIATE_TEST_SUITE_P(
    Cases, CleanSheet,
    testing::Values(CleanCase{"LabelFarEnough", At(59.25, 50)},
                    CleanCase{"LineFarEnough", LineOf({40, 51.6}, {70, 51.6}, Pen::kThin)},
                    CleanCase{"LinePastTheEnd", LineOf({58.9, 50}, {70, 50}, Pen::kThin)},
                    CleanCase{"CircleAround", Circle{{54.25, 50}, 6, Pen::kCallout, {}}},
                    CleanCase{"ArcElsewhere", Arc{{54, 50}, 3, 0, 10, Pen::kNone}},
                    CleanCase{"ArcOnTheOtherSide", Arc{{50, 54.25}, 5.2, 200, 140, Pen::kThin}},
                    CleanCase{"EmptyLabel", At(54, 50, "")},
                    CleanCase{"LineToTheEdge", LineOf({1, 1}, {99, 1}, Pen::kThin)}),
    [](const auto& each) { return std::string(each.param.name); });

TEST(PaperFill, BehindALabelIsNoFault) {
  Sheet sheet = SheetWith(At(20, 20));
  auto& primitives = sheet.groups[0].primitives;
  primitives.insert(primitives.begin(), Circle{{54.25, 50}, 6, Pen::kCallout, Tone::kPaper});
  EXPECT_TRUE(FindLayoutFaults(sheet, FixedTextMetrics()).empty());
}

// A line through the label, drawn first, and a paper fill over it.
std::vector<LayoutFault> FaultsOver(const Primitive& fill) {
  Sheet sheet = SheetWith(At(20, 20));
  auto& primitives = sheet.groups[0].primitives;
  primitives.insert(primitives.begin(), fill);
  primitives.insert(primitives.begin(), LineOf({40, 50}, {70, 50}, Pen::kThin));
  return FindLayoutFaults(sheet, FixedTextMetrics());
}

TEST(PaperFill, HidesWhatWasDrawnBefore) {
  EXPECT_TRUE(FaultsOver(BoxFill({49, 48, 60, 52}, Tone::kPaper)).empty());
  EXPECT_TRUE(FaultsOver(Circle{{54.25, 50}, 6, Pen::kCallout, Tone::kPaper}).empty());
}

TEST(PaperFill, HidesNothingWhenItIsTooSmallOrNotPaper) {
  EXPECT_EQ(FaultsOver(BoxFill({50.2, 48, 60, 52}, Tone::kPaper)).size(), 1U);
  EXPECT_EQ(FaultsOver(Circle{{54.25, 50}, 4.5, Pen::kNone, Tone::kPaper}).size(), 1U);
  EXPECT_EQ(FaultsOver(BoxFill({49, 48, 60, 52}, Tone::kNone)).size(), 1U);
}

TEST(DescribeFaults, NamesTheLabelAndThePlace) {
  const auto faults =
      FindLayoutFaults(SheetWith(LineOf({40, 50}, {70, 50}, Pen::kThin)), FixedTextMetrics());
  EXPECT_EQ(DescribeFaults(faults),
            "planted: line of \"planted\" runs into \"1234\" at 54.25, 50\n");
}

}  // namespace
}  // namespace tillwright
