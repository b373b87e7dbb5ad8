// Details: what is chosen, drawn true, told as solved, and where the marks go.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "draw/bank/case_joints.h"
#include "draw/detail/detail_faces.h"
#include "draw/detail/details.h"
#include "draw/plan_cases.h"
#include "draw/view_numbers.h"
#include "support/files.h"
#include "support/layout_faults.h"
#include "support/specs.h"
#include "tillwright/dimensions.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

void ExpectSound(const Bank& bank, const DetailChoice& choice) {
  SCOPED_TRACE(choice.letter + " " + choice.title);
  const View view = DetailView(bank, choice, DrawingFontMetrics());
  EXPECT_EQ(DescribeFaults(FindLayoutFaults(SheetOf(view), DrawingFontMetrics())), "");
  const PaperBox parts = Bounds(GroupOf(view, "parts"));
  EXPECT_LE(std::max(parts.Width(), parts.Height()), 2 * choice.radius + 1);
  const SheetGroup& dimensions = GroupOf(view, "dimensions");
  for (const Primitive& primitive : dimensions.primitives) {
    const Label* label = std::get_if<Label>(&primitive);
    if (label == nullptr || label->path.empty()) continue;
    EXPECT_EQ(FaultOf(bank, *label), "");
  }
  const std::vector<const Label*> sizes = SizesIn(dimensions);
  EXPECT_GE(sizes.size(), 1U);
  for (const Label* label : sizes) {
    const std::optional<Length> value = DimensionValue(bank, label->path);
    ASSERT_TRUE(value.has_value()) << label->path;
    const double drawn = std::abs(ToMillimeters(*value)) * choice.scale.paper_per_mm;
    EXPECT_TRUE(HasEndsApart(dimensions, drawn)) << label->path << " = " << label->plain;
  }
}

void ExpectAllSound(const BankCase& c) {
  SCOPED_TRACE(c.name);
  for (const DetailChoice& choice : ChooseDetails(c.bank)) ExpectSound(c.bank, choice);
}

TEST(DetailViewTest, EveryConstructionIsSound) {
  for (const BankCase& c : EveryConstruction()) ExpectAllSound(c);
}

TEST(DetailViewTest, CuratedBanksAreSound) {
  for (const BankCase& c : CuratedBanks()) ExpectAllSound(c);
}

TEST(DetailViewTest, HardBanksAreSound) {
  for (const BankCase& c : HardBanks()) ExpectAllSound(c);
}

TEST(DetailViewTest, RandomBanksAreSound) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  for (const BankCase& c : RandomBanks(seed, 40)) ExpectAllSound(c);
}

// --- True size -----------------------------------------------------------------------------------

constexpr const char* kCase = R"({
  "case": {"width": 18, "height": 24, "depth": 22, "back": {"fit": "rabbet", "lap": "3/8"}},
  "box": {"corner": {"joint": "rabbet", "depth": "1/4"}, "bottom": {"up": "1/2"}},
  "drawers": [{}, {}]})";

const DetailChoice* Find(const std::vector<DetailChoice>& choices, DetailKind kind) {
  const auto at =
      std::ranges::find_if(choices, [&](const DetailChoice& c) { return c.kind == kind; });
  return at == choices.end() ? nullptr : &*at;
}

// Every straight edge of the parts, as (x, y) pairs.
std::vector<PaperSegment> EdgesOf(const View& view) {
  std::vector<PaperSegment> edges;
  for (const Primitive& primitive : GroupOf(view, "parts").primitives) {
    const Polyline* line = std::get_if<Polyline>(&primitive);
    if (line == nullptr || line->pen != Pen::kDetailCut) continue;
    for (std::size_t i = 0; i + (line->closed ? 0 : 1) < line->points.size(); ++i) {
      edges.push_back({line->points[i], line->points[(i + 1) % line->points.size()]});
    }
  }
  return edges;
}

bool HasLevelEdge(const std::vector<PaperSegment>& edges, double y) {
  return std::ranges::any_of(edges, [&](const PaperSegment& e) {
    return std::abs(e.from.y - y) < 1e-9 && std::abs(e.to.y - y) < 1e-9;
  });
}
bool HasUprightEdge(const std::vector<PaperSegment>& edges, double x) {
  return std::ranges::any_of(edges, [&](const PaperSegment& e) {
    return std::abs(e.from.x - x) < 1e-9 && std::abs(e.to.x - x) < 1e-9;
  });
}

TEST(DetailViewTest, GapIsTrueOnPaper) {
  const Bank bank = MustSolve(kCase).bank;
  const std::vector<DetailChoice> choices = ChooseDetails(bank);
  const DetailChoice* gap = Find(choices, DetailKind::kGap);
  ASSERT_NE(gap, nullptr);
  ASSERT_EQ(gap->scale.name, "1:1");
  const View view = DetailView(bank, *gap, DrawingFontMetrics());
  const std::vector<PaperSegment> edges = EdgesOf(view);
  const double upper = view.map.Y(bank.spaces[0].front.rect.y);
  EXPECT_TRUE(HasLevelEdge(edges, upper));
  EXPECT_TRUE(HasLevelEdge(edges, upper + 25.4 / 8));  // the gap, 1/8 in
  const double back = view.map.X(Length());
  EXPECT_TRUE(HasUprightEdge(edges, back - 0.75 * 25.4));
  EXPECT_TRUE(HasUprightEdge(edges, back + 0.5 * 25.4));
}

TEST(DetailViewTest, GrooveStandsUpAsSolved) {
  const Bank bank = MustSolve(kCase).bank;
  const std::vector<DetailChoice> choices = ChooseDetails(bank);
  const DetailChoice* bottom = Find(choices, DetailKind::kBottom);
  ASSERT_NE(bottom, nullptr);
  EXPECT_EQ(bottom->applies_to, "ALL DRAWERS");
  const View view = DetailView(bank, *bottom, DrawingFontMetrics());
  const std::vector<PaperSegment> edges = EdgesOf(view);
  const double lower = view.map.Y(bank.spaces[bottom->space].box.y);
  for (const double above : {0.0, 0.5 * 25.4, 0.75 * 25.4}) {
    EXPECT_TRUE(HasLevelEdge(edges, lower - above)) << above;
  }
}

TEST(DetailViewTest, BackRabbetIsTrue) {
  const Bank bank = MustSolve(kCase).bank;
  const std::vector<DetailChoice> choices = ChooseDetails(bank);
  const DetailChoice* back = Find(choices, DetailKind::kBack);
  ASSERT_NE(back, nullptr);
  const View view = DetailView(bank, *back, DrawingFontMetrics());
  const std::vector<PaperSegment> edges = EdgesOf(view);
  const double scale = back->scale.paper_per_mm;
  EXPECT_TRUE(HasUprightEdge(edges, view.map.X(Length())));
  EXPECT_TRUE(HasUprightEdge(edges, view.map.X(Length()) - 3.0 / 8 * 25.4 * scale));
  EXPECT_TRUE(HasLevelEdge(edges, view.map.Y(L("21 3/4"))));
}

Bank CaseJoined(const std::string& joint, const std::string& raise) {
  return MustSolve(R"({"case": {"width": 18, "height": 24, "depth": 22, "raise": ")" + raise +
                   R"(", "joint": {"type": ")" + joint + R"("}}, "drawers": [{}, {}]})")
      .bank;
}

// A tongue 1/4 thick along the bottom's upper face, 1/4 into a side of 3/4; the shoulder below it
// stands against the side.
TEST(DetailViewTest, TongueAndGrooveAreTrue) {
  const Bank bank = CaseJoined("tongue-and-dado", "2");
  const std::vector<DetailChoice> choices = ChooseDetails(bank);
  const DetailChoice* joint = Find(choices, DetailKind::kJoint);
  ASSERT_NE(joint, nullptr);
  ASSERT_EQ(joint->scale.name, "1:1");
  const View view = DetailView(bank, *joint, DrawingFontMetrics());
  const std::vector<PaperSegment> edges = EdgesOf(view);
  const double inner = view.map.X(Length());  // the side's inner face is the opening's edge
  for (const double left : {0.0, 0.25 * 25.4, 0.75 * 25.4}) {
    EXPECT_TRUE(HasUprightEdge(edges, inner - left)) << left;
  }
  const double upper = view.map.Y(Length());
  for (const double below : {0.0, 0.25 * 25.4, 0.75 * 25.4}) {
    EXPECT_TRUE(HasLevelEdge(edges, upper + below)) << below;
  }
}

TEST(DetailFacesTest, SideAndBottomMeetWithoutOverlap) {
  for (const char* joint : {"dado", "rabbet", "tongue-and-dado"}) {
    for (const char* raise : {"0", "2"}) {
      for (const auto& [middle, count] : CoverOf(CornerJointFaces(CaseJoined(joint, raise)).cut)) {
        ASSERT_LE(count, 1) << joint << " at " << middle.a << ", " << middle.b << " mm";
      }
    }
  }
}

TEST(DetailFacesTest, NoWoodIsWhereOtherWoodIs) {
  for (const BankCase& c : EveryConstruction()) {
    SCOPED_TRACE(c.name);
    const Length far = Length::Millimeters(5000);
    const Length x = c.bank.spaces[0].cell.x + Length::Millimeters(60);
    const Faces faces = SideFaces(c.bank, x, {-far, -far, far, far}, Length::Millimeters(10));
    for (const auto& [middle, count] : CoverOf(faces.cut)) {
      ASSERT_LE(count, 1) << "at " << middle.a << ", " << middle.b << " mm";
    }
  }
}

// --- What is chosen ------------------------------------------------------------------------------

TEST(ChooseDetailsTest, LettersRunFromBAndNeverTwice) {
  for (const BankCase& c : EveryConstruction()) {
    std::set<std::string> letters;
    const std::vector<DetailChoice> choices = ChooseDetails(c.bank);
    ASSERT_FALSE(choices.empty());
    EXPECT_EQ(choices.front().letter, "B");
    for (const DetailChoice& choice : choices) {
      EXPECT_TRUE(letters.insert(choice.letter).second) << choice.letter;
      EXPECT_EQ(choice.parent == ViewKind::kPlan,
                choice.kind == DetailKind::kCorner || choice.kind == DetailKind::kBack);
    }
  }
}

TEST(ChooseDetailsTest, OnlyWhatThereIs) {
  const auto has_back = [](const char* back) {
    const std::string text = R"({"case": {"width": 18, "height": 24, "depth": 22, "back": )" +
                             std::string(back) + R"(}, "drawers": [{}, {}]})";
    return Find(ChooseDetails(MustSolve(text).bank), DetailKind::kBack) != nullptr;
  };
  EXPECT_EQ(Find(ChooseDetails(CaseJoined("butt", "0")), DetailKind::kJoint), nullptr);
  EXPECT_TRUE(has_back(R"({"fit": "rabbet"})"));
  EXPECT_TRUE(has_back(R"({"fit": "groove"})"));
  EXPECT_FALSE(has_back(R"({"fit": "applied"})"));
  EXPECT_FALSE(has_back(R"("none")"));
  const std::vector<DetailChoice> single = ChooseDetails(
      MustSolve(R"({"opening": {"width": 18, "height": 6, "depth": 21}, "drawers": [{}]})").bank);
  EXPECT_EQ(Find(single, DetailKind::kGap), nullptr);
  EXPECT_NE(Find(single, DetailKind::kEdge), nullptr);
  EXPECT_NE(Find(single, DetailKind::kCorner), nullptr);
}

TEST(ChooseDetailsTest, TheSameConstructionOnceAndEachOtherOne) {
  const std::vector<DetailChoice> choices =
      ChooseDetails(MustSolve(R"({"opening": {"width": 18, "height": 30, "depth": 21}, "drawers": [
          {}, {"box": {"corner": {"joint": "rabbet"}}}, {},
          {"box": {"bottom": {"thickness": "1/2"}}}]})")
                        .bank);
  std::vector<std::string> corners;
  std::vector<std::string> bottoms;
  for (const DetailChoice& choice : choices) {
    if (choice.kind == DetailKind::kCorner) corners.push_back(choice.applies_to);
    if (choice.kind == DetailKind::kBottom) bottoms.push_back(choice.applies_to);
  }
  EXPECT_EQ(corners, (std::vector<std::string>{"D1, D3, D4", "D2"}));
  EXPECT_EQ(bottoms, (std::vector<std::string>{"D1\u2013D3", "D4"}));
}

TEST(ChooseDetailsTest, AViewAboveHalfSizeNeedsNoFullSizeDetail) {
  DetailChoice choice;
  EXPECT_FALSE(NeedsDetail(choice, {1, "1:1"}));
  EXPECT_TRUE(NeedsDetail(choice, {0.5, "1:2"}));
  EXPECT_TRUE(NeedsDetail(choice, {0.125, "1:8"}));
}

TEST(ChooseDetailsTest, MarksSitOnWhatTheyEnlarge) {
  const Bank bank = MustSolve(kCase).bank;
  const std::vector<DetailChoice> choices = ChooseDetails(bank);
  const DetailChoice* corner = Find(choices, DetailKind::kCorner);
  ASSERT_NE(corner, nullptr);
  View plan = PlanSection(bank, corner->space, {0.25, "1:4"}, ViewOptions(), DrawingFontMetrics());
  Shift(plan, 50, 70);
  const DetailMark mark = MarkOf(*corner, plan);
  const PaperBox box = Bounds(GroupOf(plan, "box"));
  EXPECT_EQ(mark.letter, corner->letter);
  EXPECT_NEAR(mark.center.x, box.left + 0.25 * 25.4 / 4, 0.5);
  EXPECT_NEAR(mark.center.y, box.bottom - 0.25 * 25.4 / 4, 0.5);
  EXPECT_NEAR(mark.radius, std::max(3.0, corner->radius / 4), 1e-9);
}

}  // namespace
}  // namespace tillwright::testing
