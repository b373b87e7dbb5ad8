#include "sheet/annotation.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "sheet/title_block.h"
#include "support/every.h"
#include "support/layout_faults.h"
#include "tillwright/draw.h"

namespace tillwright {
namespace {

TitleBlock FullBlock() {
  TitleBlock block;
  block.project = "Bindery, north wall";
  block.title = "Paper cabinet with a name that is far too long for any title block to hold";
  block.view = "Elevation, section";
  block.scale = "1:8, details 1:1";
  block.units = "inch";
  block.material = "3/4 ash";
  block.date = "2026-03-14";
  block.drawn = "K. M.";
  block.sheet = 12;
  block.sheets = 34;
  block.projection = Projection::kThirdAngle;
  return block;
}

std::vector<std::string> Texts(const Sheet& sheet) {
  std::vector<std::string> texts;
  for (const SheetGroup& group : sheet.groups) {
    for (const Primitive& p : group.primitives) {
      if (const Label* label = std::get_if<Label>(&p)) texts.push_back(label->plain);
    }
  }
  return texts;
}

bool Has(const std::vector<std::string>& texts, const std::string& text) {
  return std::find(texts.begin(), texts.end(), text) != texts.end();
}

constexpr Orientation kWays[] = {Orientation::kLandscape, Orientation::kPortrait};

TEST(TitleBlock, HasNoFaultsOnAnyPaper) {
  const FixedTextMetrics metrics;
  for (const Paper paper : testing::Every<Paper>()) {
    for (const Orientation way : kWays) {
      Sheet sheet = MakeSheet(paper, way, "s", "S");
      const PaperBox space =
          AddBorderAndTitle(sheet, SizeOf(paper, way).name, FullBlock(), metrics);
      const auto faults = FindLayoutFaults(sheet, metrics);
      EXPECT_TRUE(faults.empty()) << SizeOf(paper, way).name << DescribeFaults(faults);
      EXPECT_GT(space.Width(), 170);
      EXPECT_GT(space.Height(), 140);
      EXPECT_DOUBLE_EQ(space.bottom, DrawingSpace(sheet).bottom);
    }
  }
}

TEST(TitleBlock, LeavesOutWhatIsNotGiven) {
  const FixedTextMetrics metrics;
  TitleBlock block;
  block.title = "Cabinet";
  block.scale = "1:8";
  Sheet sheet = MakeSheet(Paper::kA4, Orientation::kLandscape, "s", "S");
  AddBorderAndTitle(sheet, "A4", block, metrics);
  const std::vector<std::string> texts = Texts(sheet);
  for (const char* absent : {"PROJECT", "DATE", "DRAWN", "MATERIAL", "VIEW", "PROJECTION"}) {
    EXPECT_FALSE(Has(texts, absent)) << absent;
  }
  for (const char* present : {"TITLE", "Cabinet", "SCALE", "1:8", "SHEET", "1 / 1", "A4"}) {
    EXPECT_TRUE(Has(texts, present)) << present;
  }
  EXPECT_TRUE(FindLayoutFaults(sheet, metrics).empty());
}

TEST(PaperSizes, AreThoseOfTheStandards) {
  const PaperSize a4 = SizeOf(Paper::kA4, Orientation::kPortrait);
  EXPECT_DOUBLE_EQ(a4.width, 210);
  EXPECT_DOUBLE_EQ(a4.height, 297);
  const PaperSize tabloid = SizeOf(Paper::kTabloid, Orientation::kLandscape);
  EXPECT_DOUBLE_EQ(tabloid.width, 431.8);
  EXPECT_DOUBLE_EQ(tabloid.height, 279.4);
}

TEST(CheckBar, HasItsTrueLength) {
  SheetGroup group;
  AddCheckBar(group, {{20, 50}, PaperAxis::kHorizontal, CheckUnit::kInch, 2, false, "", 1.5},
              FixedTextMetrics());
  const auto& line = std::get<Polyline>(group.primitives[0]);
  EXPECT_DOUBLE_EQ(line.points[1].x - line.points[0].x, 50.8);
  const auto& marks = std::get<HatchLines>(group.primitives[1]);
  EXPECT_EQ(marks.segments.size(), 17U);
  EXPECT_DOUBLE_EQ(marks.segments.back().from.x, 70.8);
}

TEST(Annotations, StandClearOfTheirOwnLines) {
  const FixedTextMetrics metrics;
  Sheet sheet{.width = 300, .height = 200};
  SheetGroup& group = AddGroup(sheet, "g", "G", 0);
  AddLeaderNote(group, {{20, 20}, {30, 15}, LeaderEnd::kArrow, false, {"TOP 3/4", "1 PL"}, "", 2.2},
                metrics);
  AddLeaderNote(group, {{90, 20}, {80, 15}, LeaderEnd::kDot, true, {"RABBET"}, "", 2.2}, metrics);
  AddSectionMark(group, {{40, 50}, {40, 90}, 0, "A", 5}, metrics);
  AddSectionMark(group, {{60, 70}, {90, 70}, 90, "B", 5}, metrics);
  AddDetailCallout(group, {{120, 30}, 5, {140, 35}, "C"}, metrics);
  AddBalloon(group, {150, 60}, 2.5, "12", metrics);
  AddViewTitle(group, {{20, 120}, "B", "GROOVE (jj)", "SCALE 1:8 (1 1/2 = 1 ft)", 0}, metrics);
  AddScaleBar(group, {{120, 120}, 10, 4, {"0", "", "20", "", "40"}, "mm"}, metrics);
  AddCheckBar(group,
              {{200, 40}, PaperAxis::kVertical, CheckUnit::kMillimeter, 50, true, "50 mm", 1.8},
              metrics);
  AddTextBlock(group, {{220, 40}, {"1. Gaps 1/8", "2. Grain 3/4", "3. All"}, 2}, metrics);
  const auto faults = FindLayoutFaults(sheet, metrics);
  EXPECT_TRUE(faults.empty()) << DescribeFaults(faults);
}

}  // namespace
}  // namespace tillwright
