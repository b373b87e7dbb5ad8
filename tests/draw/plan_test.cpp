// Plan sections: joints cut as the model makes them, sizes told as solved and drawn to scale.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "draw/plan/plan_faces.h"
#include "draw/plan_cases.h"
#include "draw/view_numbers.h"
#include "draw/views.h"
#include "support/files.h"
#include "support/layout_faults.h"
#include "support/specs.h"
#include "tillwright/dimensions.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

// The largest scale at which the plan is at most `width` by `height` mm.
View Fitting(const Bank& bank, std::size_t space, double width, double height) {
  View view;
  const double deep = ToMillimeters(bank.spaces[space].box.depth);
  for (const Scale& scale : ScaleSeries(bank.units)) {
    if (deep * scale.paper_per_mm > height) continue;  // sure not to fit
    view = PlanSection(bank, space, scale, ViewOptions(), DrawingFontMetrics());
    if (view.box.Width() <= width && view.box.Height() <= height) break;
  }
  return view;
}

Faces FacesOf(const Bank& bank, std::size_t space) {
  return PlanFaces(bank, PlanScopeOf(bank, space, Length::Millimeters(40)));
}

std::vector<CutFace> OwnedBy(const Faces& faces, FaceOwner owner) {
  std::vector<CutFace> owned;
  std::ranges::copy_if(faces.cut, std::back_inserter(owned),
                       [&](const CutFace& face) { return face.owner == owner; });
  return owned;
}

// What every plan must keep.
void ExpectSound(const Bank& bank, const View& view) {
  const Sheet sheet = SheetOf(view);
  EXPECT_EQ(DescribeFaults(FindLayoutFaults(sheet, DrawingFontMetrics())), "");
  const PaperBox covered = Bounds(sheet);
  EXPECT_GE(covered.left, 1.99);
  EXPECT_LE(covered.bottom, sheet.height - 1.99);
  int sizes = 0;
  for (const SheetGroup& group : view.groups) {
    for (const Primitive& primitive : group.primitives) {
      const Label* label = std::get_if<Label>(&primitive);
      if (label == nullptr || label->path.empty()) continue;
      EXPECT_EQ(FaultOf(bank, *label), "");
    }
    for (const Label* label : SizesIn(group)) {
      const std::optional<Length> value = DimensionValue(bank, label->path);
      ASSERT_TRUE(value.has_value()) << label->path;
      const double drawn = std::abs(view.map.Size(*value));
      EXPECT_TRUE(HasEndsApart(group, drawn)) << label->path << " = " << label->plain;
      ++sizes;
    }
  }
  EXPECT_GE(sizes, 6);
}

TEST(PlanSectionTest, EveryConstructionIsSoundOnALetterSheet) {
  bool last = false;  // the last and the first drawer in turns
  for (const BankCase& c : EveryConstruction()) {
    SCOPED_TRACE(c.name);
    const std::vector<std::size_t> drawers = DrawersOf(c.bank);
    ASSERT_FALSE(drawers.empty());
    last = !last;
    ExpectSound(c.bank, Fitting(c.bank, last ? drawers.back() : drawers.front(), 190, 240));
  }
}

TEST(PlanSectionTest, CuratedBanksAreSoundAtEveryScaleThatFitsALargeSheet) {
  for (const BankCase& c : CuratedBanks()) {
    SCOPED_TRACE(c.name);
    for (const std::size_t drawer : DrawersOf(c.bank)) {
      for (const double height : {150.0, 280.0, 600.0}) {
        SCOPED_TRACE(ToText(c.bank.spaces[drawer].id));
        ExpectSound(c.bank, Fitting(c.bank, drawer, 1.4 * height, height));
      }
    }
  }
}

TEST(PlanSectionTest, HardBanksAreSound) {
  for (const BankCase& c : HardBanks()) {
    SCOPED_TRACE(c.name);
    const std::vector<std::size_t> drawers = DrawersOf(c.bank);
    if (!drawers.empty()) ExpectSound(c.bank, Fitting(c.bank, drawers.back(), 250, 180));
  }
}

TEST(PlanSectionTest, RandomBanksAreSound) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  for (const BankCase& c : RandomBanks(seed, 40)) {
    SCOPED_TRACE(c.name);
    const std::vector<std::size_t> drawers = DrawersOf(c.bank);
    if (!drawers.empty()) ExpectSound(c.bank, Fitting(c.bank, drawers.front(), 250, 180));
  }
}

// --- The cut itself, exact -----------------------------------------------------------------------

TEST(PlanFacesTest, NoWoodIsWhereOtherWoodIs) {
  for (const BankCase& c : EveryConstruction()) {
    SCOPED_TRACE(c.name);
    for (const std::size_t drawer : DrawersOf(c.bank)) {
      for (const auto& [middle, count] : CoverOf(FacesOf(c.bank, drawer).cut)) {
        ASSERT_LE(count, 1) << "at " << middle.a << ", " << middle.b << " mm";
      }
    }
  }
}

TEST(PlanFacesTest, SidesAndEndsFillTheBoxFromItsOuterFacesToItsInnerOnes) {
  for (const BankCase& c : EveryConstruction()) {
    SCOPED_TRACE(c.name);
    const Space& space = c.bank.spaces[DrawersOf(c.bank).front()];
    const Box& box = space.box;
    // The plane misses the pins: nothing stands in their places but the ends' laps.
    const double left = ToMillimeters(box.x);
    const double right = ToMillimeters(box.x + box.width);
    const double front = ToMillimeters(box.z);
    const double rear = ToMillimeters(box.z + box.depth);
    const double t = ToMillimeters(box.build.side);
    const double e = ToMillimeters(box.build.end);
    const double setback = ToMillimeters(box.build.back_setback);
    const Faces faces = FacesOf(c.bank, DrawersOf(c.bank).front());
    for (const auto& [m, count] : CoverOf(OwnedBy(faces, FaceOwner::kBox))) {
      const bool inside =
          m.a > left + t && m.a < right - t && m.b > front + e && m.b < rear - e - setback;
      const bool behind = m.a > left + t && m.a < right - t && m.b > rear - setback;
      ASSERT_EQ(count, inside || behind ? 0 : 1) << "at " << m.a << ", " << m.b << " mm";
      ASSERT_TRUE(m.a > left && m.a < right && m.b > front && m.b < rear);
    }
  }
}

struct JointCase {
  const char* name;
  const char* corner;
  std::vector<FacePoint> side;  // the left side, from the box's left front corner
};

class JointTest : public ::testing::TestWithParam<JointCase> {};

// A box 20 in deep of 1/2 in sides: every corner of the left side where the trade's rules put it.
TEST_P(JointTest, LeftSideIsCutAsTheRulesSay) {
  const std::string text =
      R"({"opening": {"width": 18, "height": 6, "depth": 21},
          "box": {"side": {"thickness": "1/2"}, "corner": )" +
      std::string(GetParam().corner) + R"(}, "drawers": [{}]})";
  const Bank bank = MustSolve(text).bank;
  const Box& box = bank.spaces.at(0).box;
  ASSERT_EQ(box.depth, L("20"));
  const std::vector<CutFace> wood = OwnedBy(FacesOf(bank, 0), FaceOwner::kBox);
  ASSERT_FALSE(wood.empty());
  std::vector<FacePoint> expected = GetParam().side;
  ASSERT_EQ(wood[0].outline.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(wood[0].outline[i].a, box.x + expected[i].a) << "corner " << i;
    EXPECT_EQ(wood[0].outline[i].b, box.z + expected[i].b) << "corner " << i;
  }
}

FacePoint P(const char* a, const char* b) { return {L(a), L(b)}; }

INSTANTIATE_TEST_SUITE_P(
    Joints, JointTest,
    ::testing::Values(
        JointCase{"butt",
                  R"({"joint": "butt"})",
                  {P("0", "0"), P("1/2", "0"), P("1/2", "20"), P("0", "20")}},
        JointCase{"rabbet",
                  R"({"joint": "rabbet", "depth": "5/16"})",
                  {P("0", "0"), P("3/16", "0"), P("3/16", "1/2"), P("1/2", "1/2"),
                   P("1/2", "19 1/2"), P("3/16", "19 1/2"), P("3/16", "20"), P("0", "20")}},
        JointCase{"dado_set_in",
                  R"({"joint": "dado", "depth": "1/4", "back_setback": "3/4"})",
                  {P("0", "0"), P("1/4", "0"), P("1/4", "1/2"), P("1/2", "1/2"), P("1/2", "18 3/4"),
                   P("1/4", "18 3/4"), P("1/4", "19 1/4"), P("1/2", "19 1/4"), P("1/2", "20"),
                   P("0", "20")}},
        JointCase{"half_blind",
                  R"({"joint": "half-blind-dovetail", "lap": "1/8"})",
                  {P("0", "1/8"), P("1/2", "1/8"), P("1/2", "19 7/8"), P("0", "19 7/8")}},
        JointCase{"through",
                  R"({"joint": "through-dovetail"})",
                  {P("0", "0"), P("1/2", "0"), P("1/2", "20"), P("0", "20")}}),
    [](const auto& tested) { return std::string(tested.param.name); });

TEST(PlanFacesTest, BackStandsInItsRabbetWithPlayAtBothEnds) {
  const Bank bank = MustSolve(
                        R"({"case": {"width": 24, "height": 8, "depth": 22,
          "back": {"fit": "rabbet", "thickness": "1/4", "lap": "3/8", "play": "1/32"}},
          "drawers": [{}]})")
                        .bank;
  const std::vector<CutFace> wood = OwnedBy(FacesOf(bank, 0), FaceOwner::kCase);
  ASSERT_EQ(wood.size(), 3U);
  EXPECT_EQ(wood[0].outline[3].a, -L("3/8"));
  EXPECT_EQ(wood[0].outline[3].b, L("21 3/4"));
  const std::vector<FacePoint>& back = wood[2].outline;
  EXPECT_EQ(back[0].a, -L("3/8") + L("1/32"));
  EXPECT_EQ(back[1].a, L("22 1/2") + L("3/8") - L("1/32"));
  EXPECT_EQ(back[0].b, L("21 3/4"));
  EXPECT_EQ(back[2].b, L("22"));
}

TEST(PlanFacesTest, NeighborsAreBrokenOffAndSeenToTheirPartition) {
  const Bank bank = MustSolve(
                        R"({"case": {"width": 40, "height": 8, "depth": 22}, "layout":
          {"columns": [{"drawer": {}}, {"drawer": {}}, {"drawer": {}}]}})")
                        .bank;
  const PlanScope scope = PlanScopeOf(bank, 1, L("1"));
  EXPECT_EQ(scope.left.bound, PlanBound::kPartition);
  EXPECT_EQ(scope.right.bound, PlanBound::kPartition);
  EXPECT_EQ(scope.left.next, 0);
  EXPECT_EQ(scope.right.next, 2);
  EXPECT_EQ(scope.left.end, bank.dividers[0].rect.x - L("1"));
  const std::vector<CutFace> fronts = OwnedBy(PlanFaces(bank, scope), FaceOwner::kFront);
  ASSERT_EQ(fronts.size(), 3U);
  EXPECT_EQ(std::ranges::count_if(fronts, [](const CutFace& f) { return f.open != 0; }), 2);
}

// --- On paper ------------------------------------------------------------------------------------

TEST(PlanSectionTest, RabbetIsAsDeepOnPaperAsScaleTimesTheSolvedDepth) {
  const Bank bank = MustSolve(
                        R"({"opening": {"width": 18, "height": 6, "depth": 21},
          "box": {"corner": {"joint": "rabbet", "depth": "3/16"}}, "drawers": [{}]})")
                        .bank;
  const Scale quarter{0.25, "1:4"};
  const View view = PlanSection(bank, 0, quarter, ViewOptions(), DrawingFontMetrics());
  const SheetGroup& box = GroupOf(view, "box");
  const auto side = std::ranges::find_if(box.primitives, [](const Primitive& p) {
    const Polyline* line = std::get_if<Polyline>(&p);
    return line != nullptr && line->closed && line->points.size() == 8;
  });
  ASSERT_NE(side, box.primitives.end());
  const std::vector<PaperPoint>& ring = std::get<Polyline>(*side).points;
  EXPECT_NEAR(ring[3].x - ring[2].x, 3.0 / 16 * 25.4 / 4, 1e-9);
  EXPECT_NEAR(ring[1].y - ring[2].y, 0.5 * 25.4 / 4, 1e-9);
}

TEST(PlanSectionTest, ShiftMovesTheMapWithTheDrawing) {
  const Bank bank = CuratedBanks().front().bank;
  View view = PlanSection(bank, DrawersOf(bank).front(), {0.25, "1:4"}, ViewOptions(),
                          DrawingFontMetrics());
  const PaperBox before = Bounds(GroupOf(view, "box"));
  const double x = view.map.X(Length());
  Shift(view, 30, -4);
  EXPECT_NEAR(Bounds(GroupOf(view, "box")).left - before.left, view.map.X(Length()) - x, 1e-9);
  EXPECT_NEAR(view.map.X(Length()) - x, 30, 1e-9);
}

TEST(PlanSectionTest, KeySizesOnlyLeaveTheRestOut) {
  const Bank bank = CuratedBanks().front().bank;
  const std::size_t drawer = DrawersOf(bank).front();
  ViewOptions key;
  key.all_dimensions = false;
  const auto count = [](const View& view) {
    std::size_t n = 0;
    for (const SheetGroup& group : view.groups) n += SizesIn(group).size();
    return n;
  };
  const Scale scale{0.25, "1:4"};
  const View all = PlanSection(bank, drawer, scale, ViewOptions(), DrawingFontMetrics());
  const View few = PlanSection(bank, drawer, scale, key, DrawingFontMetrics());
  EXPECT_LT(count(few), count(all));
  EXPECT_GE(count(few), 4U);
  EXPECT_EQ(DescribeFaults(FindLayoutFaults(SheetOf(few), DrawingFontMetrics())), "");
}

TEST(PlanLookTest, StockShowsItsStructure) {
  EXPECT_EQ(LookOf("hard maple", FaceLook::kEndGrain, FaceAxis::kA), FaceLook::kEndGrain);
  EXPECT_EQ(LookOf("birch plywood", FaceLook::kEndGrain, FaceAxis::kA), FaceLook::kPliesA);
  EXPECT_EQ(LookOf("Baltic birch Ply", FaceLook::kGrainA, FaceAxis::kB), FaceLook::kPliesB);
  EXPECT_EQ(LookOf("MDF", FaceLook::kEndGrain, FaceAxis::kA), FaceLook::kPlain);
  EXPECT_EQ(LookOf("", FaceLook::kEndGrain, FaceAxis::kA), FaceLook::kPlain);
}

}  // namespace
}  // namespace tillwright::testing
