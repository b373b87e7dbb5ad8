#include "tillwright/sheet.h"

#include <gtest/gtest.h>

#include <ostream>
#include <set>
#include <string>

namespace tillwright {
namespace {

struct NumberCase {
  const char* name;
  double mm;
  const char* text;
};
void PrintTo(const NumberCase& c, std::ostream* out) { *out << c.name; }

class AppendPaperTest : public testing::TestWithParam<NumberCase> {};

TEST_P(AppendPaperTest, WritesThousandthsWithoutTrailingZeros) {
  std::string out = "x";
  AppendPaper(out, GetParam().mm);
  EXPECT_EQ(out, std::string("x") + GetParam().text);
}

INSTANTIATE_TEST_SUITE_P(
    Numbers, AppendPaperTest,
    testing::Values(NumberCase{"Zero", 0, "0"}, NumberCase{"NegativeZero", -0.0, "0"},
                    NumberCase{"TinyNegative", -0.0004, "0"}, NumberCase{"Whole", 12, "12"},
                    NumberCase{"Hundred", 100, "100"}, NumberCase{"Half", 12.5, "12.5"},
                    NumberCase{"Negative", -0.125, "-0.125"},
                    NumberCase{"LeadingZeros", 3.004, "3.004"}, NumberCase{"Tenth", 0.1, "0.1"},
                    NumberCase{"Hundredth", 0.01, "0.01"},
                    NumberCase{"HalvesAwayFromZero", 1.0625 / 1000 * 1000 + 0.0, "1.063"},
                    NumberCase{"Carries", 9.9996, "10"}, NumberCase{"Large", 5080000, "5080000"}),
    [](const auto& each) { return std::string(each.param.name); });

TEST(Pens, HaveDistinctNamesAndWidthsOfTheSeries) {
  std::set<std::string_view> names;
  const std::set<int> series{0, 13, 18, 25, 35, 50, 70};
  for (int i = 0; i < kPenCount; ++i) {
    const PenStyle& style = StyleOf(static_cast<Pen>(i));
    EXPECT_TRUE(names.insert(style.name).second) << style.name;
    EXPECT_TRUE(series.count(static_cast<int>(style.width * 100 + 0.5)) == 1) << style.name;
    EXPECT_EQ(style.dashes.size() % 2, 0U) << style.name;
  }
  EXPECT_EQ(StyleOf(Pen::kTrimLine).name, "trim-line") << "kPenCount is stale";
}

TEST(InsetOutline, KeepsItsStrokeInsideTheTrueEdge) {
  const PaperBox box{10, 10, 30, 20};
  const PaperBox covered = Bounds(Primitive(InsetOutline(box, Pen::kFront)));
  EXPECT_DOUBLE_EQ(covered.left, box.left);
  EXPECT_DOUBLE_EQ(covered.bottom, box.bottom);
}

TEST(BoundsOfSheet, IncludeStrokesAndTheBulgeOfArcs) {
  const PaperBox circle = Bounds(Primitive(Circle{{50, 50}, 10, Pen::kGround, Tone::kNone}));
  EXPECT_DOUBLE_EQ(circle.left, 39.75);
  const PaperBox arc = Bounds(Primitive(Arc{{50, 50}, 10, 45, 90, Pen::kGround}));
  EXPECT_NEAR(arc.top, 39.75, 1e-9) << "the top of the arc is a quarter point, not an end";
  EXPECT_GT(arc.left, 42);
  EXPECT_TRUE(IsEmpty(Bounds(SheetGroup{})));
}

TEST(Angles, GrowCounterClockwiseAsSeen) {
  const PaperPoint up = OnCircle({10, 10}, 5, 90);
  EXPECT_NEAR(up.x, 10, 1e-12);
  EXPECT_NEAR(up.y, 5, 1e-12);
}

TEST(Tick, LeansToTheRight) {
  const PaperSegment s = TickSegment({{10, 10}, 2, Pen::kTick});
  EXPECT_LT(s.from.x, s.to.x);
  EXPECT_GT(s.from.y, s.to.y);
}

TEST(DumpSheet, ShowsEveryPrimitive) {
  Sheet sheet{.width = 100, .height = 50, .title = "Shelf", .name = "shelf"};
  SheetGroup& outer = AddGroup(sheet, "view", "View", 0);
  outer.primitives = {LineOf({1, 2}, {3, 4.5}, Pen::kHidden),
                      BoxFill({0, 0, 1, 1}, Tone::kShade),
                      Circle{{5, 5}, 2, Pen::kOutline, Tone::kPaper},
                      Arc{{5, 5}, 2, 0, 90, Pen::kMoved},
                      Arrowhead{{9, 9}, 180, 2.5},
                      Tick{{7, 7}, 2.4, Pen::kTick},
                      HatchLines{{{{0, 0}, {1, 1}}}, Pen::kHatch}};
  AddGroup(sheet, "front", "Front 1", 1);
  EXPECT_EQ(Dump(sheet),
            "sheet 100 x 50 \"Shelf\"\n"
            "group view \"View\"\n"
            "  polyline hidden 1,2 3,4.5\n"
            "  polygon none shade 0,0 1,0 1,1 0,1\n"
            "  circle outline paper 5,5 2\n"
            "  arc moved 5,5 2 0 90\n"
            "  arrowhead 9,9 180 2.5\n"
            "  tick tick 7,7 2.4\n"
            "  hatch hatch 0,0 - 1,1\n"
            "  group front \"Front 1\"\n");
}

TEST(ShiftGroup, MovesEverythingAndKeepsShapes) {
  Sheet sheet{.width = 100, .height = 50};
  SheetGroup& group = AddGroup(sheet, "g", "G", 0);
  Label label;
  label.text = {{TextRun::Kind::kPlain, "8", ""}};
  label.box = {1, 1, 2, 2};
  group.primitives = {LineOf({1, 2}, {3, 4}, Pen::kThin),
                      Circle{{5, 5}, 2, Pen::kThin, {}},
                      Arc{{5, 5}, 2, 0, 90, Pen::kThin},
                      Arrowhead{{9, 9}, 180, 2.5},
                      Tick{{7, 7}, 2.4, Pen::kThin},
                      HatchLines{{{{0, 0}, {1, 1}}}, Pen::kHatch},
                      label};
  const PaperBox before = Bounds(group);
  Shift(group, 10, -20);
  const PaperBox after = Bounds(group);
  EXPECT_DOUBLE_EQ(after.left, before.left + 10);
  EXPECT_DOUBLE_EQ(after.bottom, before.bottom - 20);
  EXPECT_DOUBLE_EQ(after.Width(), before.Width());
}

}  // namespace
}  // namespace tillwright
