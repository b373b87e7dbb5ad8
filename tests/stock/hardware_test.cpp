// The hardware list, counted by hand. Counts are common practice, no source.
#include <gtest/gtest.h>

#include "spec/trade_sizes.h"
#include "stock/hardware_rules.h"
#include "support/specs.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

using testing::L;
using testing::MustSolve;
using testing::Solved;

std::vector<HardwareLine> Of(const std::string& text) {
  const Solved solved = MustSolve(text);
  return HardwareList(solved.spec, solved.bank);
}

const HardwareLine* Find(const std::vector<HardwareLine>& lines, std::string_view what) {
  for (const HardwareLine& line : lines) {
    if (line.what == what) return &line;
  }
  return nullptr;
}

std::int64_t Amount(const std::vector<HardwareLine>& lines, std::string_view what) {
  const HardwareLine* line = Find(lines, what);
  return line == nullptr ? 0 : line->amount;
}

std::string Spec(const std::string& rest) {
  return R"({"case": {"width": "20", "height": "24", "depth": "22"}, "drawers": [{}, {}])" + rest +
         "}";
}

struct AlongCase {
  const char* length;
  const char* pitch;
  int count;
};

// 2 in from each edge; 22 in: 18 in between, three steps of 6.
TEST(HardwareRules, CountAlong) {
  for (const AlongCase& c :
       {AlongCase{"22", "6", 4}, AlongCase{"22 1/64", "6", 5}, AlongCase{"10", "6", 2},
        AlongCase{"10 1/64", "6", 3}, AlongCase{"4", "6", 2}, AlongCase{"1", "6", 2},
        AlongCase{"12", "4", 3}}) {
    EXPECT_EQ(hardware::CountAlong(L(c.length), L(c.pitch), L("2")), c.count) << c.length;
  }
}

TEST(HardwareRules, ScrewsOfTheTrade) {
  EXPECT_EQ(LongestScrew(L("1 1/8"), Unit::kInch), L("1"));
  EXPECT_EQ(LongestScrew(L("1 1/4"), Unit::kInch), L("1 1/4"));
  EXPECT_EQ(LongestScrew(L("1/4"), Unit::kInch), Length());
  EXPECT_EQ(LongestScrew(L("34 mm"), Unit::kMillimeter), L("30 mm"));
  EXPECT_EQ(ShortestScrew(L("3/4"), Unit::kInch), L("3/4"));
  EXPECT_EQ(ShortestScrew(L("18 mm"), Unit::kMillimeter), L("20 mm"));
}

TEST(HardwareRules, GlueByArea) {
  // 1 m x 1 m: 200 ml.
  EXPECT_EQ(hardware::GlueMicrolitres(L("1 m"), L("1 m")), 200'000);
  EXPECT_EQ(hardware::GlueMicrolitres(L("100 mm"), L("10 mm")), 200);
}

// Two drawers on 20 in side-mount slides: 2 pairs, 4 screws in each of 8 members.
TEST(Hardware, SlidesInPairsAndTheirScrews) {
  const auto lines = Of(Spec(R"(, "screws": {"slide": "7/16"})"));
  const HardwareLine* slide = Find(lines, "side-mount slide");
  ASSERT_NE(slide, nullptr);
  EXPECT_EQ(slide->amount, 2);
  EXPECT_EQ(slide->unit, HardwareUnit::kPairs);
  EXPECT_EQ(slide->length, L("20"));
  EXPECT_EQ(slide->use, "D1, D2");
  const HardwareLine* screw = Find(lines, "slide screw");
  ASSERT_NE(screw, nullptr);
  EXPECT_EQ(screw->amount, 32);
  EXPECT_EQ(screw->length, L("7/16"));
  EXPECT_FALSE(screw->suggested);
}

TEST(Hardware, ShorterSlidesTakeFewerScrewsAndASuggestedLength) {
  const auto lines = Of(Spec(R"(, "slides": {"length": "18"})"));
  EXPECT_EQ(Amount(lines, "slide screw"), 24);
  // Shorter than a side of 1/2 in.
  EXPECT_EQ(Find(lines, "slide screw")->length, L("3/8"));
  EXPECT_TRUE(Find(lines, "slide screw")->suggested);
}

TEST(Hardware, OtherSlides) {
  const auto center = Of(Spec(R"(, "slides": {"type": "center-mount", "length": "18"})"));
  EXPECT_EQ(Find(center, "center-mount slide")->unit, HardwareUnit::kPieces);
  EXPECT_EQ(Amount(center, "center-mount slide"), 2);
  EXPECT_EQ(Amount(center, "slide screw"), 12);
  const auto runner = Of(Spec(R"(, "slides": {"type": "wood-runner"})"));
  for (const HardwareLine& line : runner) EXPECT_NE(line.kind, HardwareKind::kSlide);
  EXPECT_EQ(Amount(runner, "slide screw"), 0);
}

// Front 3/4 + end 1/2 less 1/8 of wood ahead: 1 in is the longest of the trade.
TEST(Hardware, FrontScrewsStayInTheWood) {
  const auto lines = Of(Spec(""));
  EXPECT_EQ(Amount(lines, "front screw"), 8);
  EXPECT_EQ(Find(lines, "front screw")->length, L("1"));
}

TEST(Hardware, WideFrontsTakeSix) {
  const auto lines = Of(R"({"opening": {"width": "30", "height": "12", "depth": "22"},
                            "drawers": [{}]})");
  EXPECT_EQ(Amount(lines, "front screw"), 6);
}

TEST(Hardware, PullsAndKnobs) {
  const auto pulls = Of(Spec(R"(, "fronts": {"pull": {"centers": "3", "count": 2}})"));
  EXPECT_EQ(Amount(pulls, "pull between centers"), 4);
  EXPECT_EQ(Find(pulls, "pull between centers")->length, L("3"));
  EXPECT_EQ(Amount(pulls, "pull screw"), 8);
  const auto knobs = Of(Spec(R"(, "fronts": {"pull": {"count": 2}})"));
  EXPECT_EQ(Amount(knobs, "knob"), 4);
  EXPECT_EQ(Amount(knobs, "pull screw"), 4);
}

// Butt joints: bottom and top, 21 3/4 in deep, four pocket screws at each of four ends.
TEST(Hardware, JointsOfTheCase) {
  const auto pocket = Of(Spec(""));
  EXPECT_EQ(Amount(pocket, "pocket screw"), 16);
  EXPECT_EQ(Find(pocket, "pocket screw")->length, L("1 1/4"));
  const auto dowels = Of(R"({"case": {"width": "20", "height": "24", "depth": "22",
    "joint": {"fixing": "dowels"}}, "drawers": [{}]})");
  // 17 3/4 in between the first and the last: five steps of at most 4 in.
  EXPECT_EQ(Amount(dowels, "dowel of 3/8 in"), 24);
  const auto glued = Of(R"({"case": {"width": "20", "height": "24", "depth": "22",
    "joint": {"type": "dado"}}, "drawers": [{}]})");
  EXPECT_EQ(Amount(glued, "pocket screw"), 0);
  EXPECT_GT(Amount(glued, "wood glue"), 0);
  EXPECT_TRUE(Find(glued, "wood glue")->estimate);
}

// A back of 19 3/16 x 23 15/16 in in a rabbet: four across and five up, twice round.
TEST(Hardware, BackScrews) {
  EXPECT_EQ(Amount(Of(Spec("")), "back screw"), 2 * (4 + 5));
  const auto grooved = Of(R"({"case": {"width": "20", "height": "24", "depth": "22",
    "back": {"fit": "groove"}}, "drawers": [{}]})");
  EXPECT_EQ(Amount(grooved, "back screw"), 0);
}

TEST(Hardware, BoxesByTheirJoints) {
  const auto butt = Of(Spec(R"(, "box": {"height": "4"})"));
  // 4 in high, 1/4 in from the edges: two steps of at most 2 in, three screws a corner.
  EXPECT_EQ(Amount(butt, "box corner screw"), 2 * 4 * 3);
  EXPECT_EQ(Find(butt, "box corner screw")->length, L("1 1/4"));
  const auto dovetails = Of(Spec(R"(, "box": {"corner": {"joint": "through-dovetail"}})"));
  EXPECT_EQ(Amount(dovetails, "box corner screw"), 0);
  EXPECT_GT(Amount(dovetails, "wood glue"), 0);
}

TEST(Hardware, BandsInMillimetersWithATenthToSpare) {
  // Fronts of sheet stock, 1000 x 280 mm less nothing: 2 x (1000 + 280) = 2560, and 256: 2900.
  const auto lines = Of(R"({"units": "mm", "opening": {"width": 968, "height": 248, "depth": 500},
    "fronts": {"material": "birch plywood"}, "edge_band": {"material": "birch tape"},
    "drawers": [{}]})");
  EXPECT_EQ(Amount(lines, "birch tape"), 2900);
  EXPECT_EQ(Find(lines, "birch tape")->unit, HardwareUnit::kMillimeters);
}

TEST(Hardware, AlwaysNamesTheAnchor) { EXPECT_EQ(Amount(Of(Spec("")), "anti-tip anchor"), 1); }

}  // namespace
}  // namespace tillwright
