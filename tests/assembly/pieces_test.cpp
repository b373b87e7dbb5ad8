// Each physical piece once, where the solved sizes say, with every cut of its part.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "assembly/assembly_cases.h"
#include "tillwright/assembly.h"

namespace tillwright {
namespace {

using ::testing::ElementsAre;
using testing::L;
using testing::MustSolve;

std::array<Length, 3> Sorted(std::array<Length, 3> sizes) {
  std::ranges::sort(sizes);
  return sizes;
}

// The piece's block holds the part's sizes, each along the axis that SizeAxes() tells.
void ExpectSizes(const Part& part, const PlacedPart& piece) {
  const Block& b = piece.block;
  EXPECT_EQ(Sorted({b.width, b.height, b.depth}),
            Sorted({part.length, part.width, part.thickness}));
  const std::array<JobAxis, 3> axes = SizeAxes(piece, part);
  EXPECT_EQ(ExtentOf(b, axes[0]).Size(), part.length);
  EXPECT_EQ(ExtentOf(b, axes[1]).Size(), part.width);
  EXPECT_EQ(ExtentOf(b, axes[2]).Size(), part.thickness);
  if (part.grain == Grain::kVertical) {
    EXPECT_EQ(axes[0], JobAxis::kY);
  }
}

// Right, up and into are three axes; seen as they are, but for right-hand pieces, which are
// mirrored.
void ExpectFrame(const PlacedPart& piece) {
  const PartFrame& f = piece.frame;
  const std::set<JobAxis> axes{f.right.axis, f.up.axis, f.into.axis};
  ASSERT_EQ(axes.size(), 3U);
  const std::array order{f.right.axis, f.up.axis, f.into.axis};
  int turns = (f.right.against ? 1 : 0) + (f.up.against ? 1 : 0) + (f.into.against ? 1 : 0);
  for (std::size_t i = 0; i < 3; ++i) {
    for (std::size_t j = i + 1; j < 3; ++j) turns += order[i] > order[j] ? 1 : 0;
  }
  // x to the right, y up and z away from whoever looks are seen as they are.
  EXPECT_EQ(turns % 2 == 1, piece.mirrored);
}

// Cuts are as wide and as deep as the part's list says, inside the piece, and begin at its surface
// on the side they are cut from.
void ExpectCut(const Part& part, const PlacedPart& piece, const PlacedCut& cut) {
  const Extent into = ExtentOf(cut.block, cut.into.axis);
  const Extent whole = ExtentOf(piece.block, cut.into.axis);
  EXPECT_EQ(cut.into.against ? into.high : into.low, cut.into.against ? whole.high : whole.low);
  for (const JobAxis axis : kJobAxes) {
    EXPECT_GE(ExtentOf(cut.block, axis).low, ExtentOf(piece.block, axis).low);
    EXPECT_LE(ExtentOf(cut.block, axis).high, ExtentOf(piece.block, axis).high);
  }
  if (cut.source != CutSource::kPartCuts) {
    EXPECT_EQ(into.Size(), cut.depth);
    return;
  }
  const Cut& listed = part.cuts.at(cut.index);
  EXPECT_EQ(cut.purpose, listed.purpose);
  EXPECT_EQ(cut.kind, listed.kind);
  EXPECT_EQ(into.Size(), Min(listed.depth, whole.Size()));
  const JobAxis along = cut.run == CutRun::kEdge      ? piece.frame.into.axis
                        : cut.run == CutRun::kUpright ? piece.frame.right.axis
                                                      : piece.frame.up.axis;
  EXPECT_EQ(ExtentOf(cut.block, along).Size(), listed.width);
}

std::size_t PlacesOf(const Cut& cut) {
  return (cut.from == CutFrom::kEachEnd ? 2U : 1U) * (cut.face == CutOn::kBothFaces ? 2U : 1U);
}

void ExpectPieces(const Bank& bank) {
  const Assembly assembly = Assemble(bank);
  std::size_t count = 0;
  std::size_t owned = 0;
  for (std::size_t i = 0; i < bank.parts.size(); ++i) {
    const Part& part = bank.parts[i];
    SCOPED_TRACE(PartId(bank, part));
    const auto pieces = assembly.OfPart(i);
    ASSERT_EQ(pieces.size(), static_cast<std::size_t>(part.count));
    std::size_t cuts = 0;
    for (const Cut& cut : part.cuts) cuts += PlacesOf(cut);
    for (const PlacedPart& piece : pieces) {
      ++count;
      EXPECT_EQ(piece.part, i);
      EXPECT_EQ(piece.role, part.role);
      const auto listed = std::ranges::count(piece.cuts, CutSource::kPartCuts, &PlacedCut::source);
      EXPECT_EQ(static_cast<std::size_t>(listed), cuts);
      ExpectSizes(part, piece);
      ExpectFrame(piece);
      for (const PlacedCut& cut : piece.cuts) ExpectCut(part, piece, cut);
      const auto own = assembly.OfOwner(piece.owner);
      owned += static_cast<std::size_t>(
          std::ranges::count(own, static_cast<std::size_t>(&piece - assembly.pieces().data())));
    }
  }
  EXPECT_EQ(assembly.pieces().size(), count);
  EXPECT_EQ(owned, count) << "each piece once in its owner's list";
}

TEST(Pieces, OfEveryCuratedSpec) {
  testing::ForCuratedSpecs([](const Bank& bank) { ExpectPieces(bank); });
}
TEST(Pieces, OfRandomCasesAndBanks) {
  EXPECT_GE(testing::ForRandomBanks(300, [](const Bank& bank) { ExpectPieces(bank); }), 150);
}

// No role of a part and no purpose of a cut is without a place: the last of each counts them.
TEST(Pieces, OfEveryRoleAndCutsOfEveryPurpose) {
  std::set<PartRole> roles;
  std::set<CutPurpose> purposes;
  const auto see = [&](const Bank& bank) {
    const Assembly assembly = Assemble(bank);
    for (const PlacedPart& piece : assembly.pieces()) {
      roles.insert(piece.role);
      for (const PlacedCut& cut : piece.cuts) purposes.insert(cut.purpose);
    }
  };
  testing::ForCuratedSpecs(see);
  testing::ForRandomBanks(200, see);
  EXPECT_EQ(roles.size(), static_cast<std::size_t>(PartRole::kWorktop) + 1);
  EXPECT_EQ(purposes.size(), static_cast<std::size_t>(CutPurpose::kPull) + 1);
}

// What enters other pieces is left out of the clear block, and nothing else: no two clear blocks of
// one owner share a place.
TEST(Pieces, ClearBlocksShareNoPlace) {
  const auto see = [](const Bank& bank) {
    const Assembly assembly = Assemble(bank);
    for (const PlacedPart& a : assembly.pieces()) {
      for (const JobAxis axis : kJobAxes) {
        EXPECT_GE(ExtentOf(a.clear, axis).low, ExtentOf(a.block, axis).low);
        EXPECT_LE(ExtentOf(a.clear, axis).high, ExtentOf(a.block, axis).high);
      }
      for (const PlacedPart& b : assembly.pieces()) {
        if (&a == &b || a.body != b.body || !(a.owner == b.owner)) continue;
        const bool meet = std::ranges::all_of(kJobAxes, [&](JobAxis axis) {
          const Extent one = ExtentOf(a.clear, axis);
          const Extent other = ExtentOf(b.clear, axis);
          return one.low < other.high && other.low < one.high;
        });
        EXPECT_FALSE(meet) << ToText(a.role) << " and " << ToText(b.role);
      }
    }
  };
  testing::ForCuratedSpecs(see);
  EXPECT_GE(testing::ForRandomBanks(100, see), 50);
}

// Each of Bank::pieces is the block of one placed piece.
TEST(Pieces, AreThoseOfTheSolver) {
  const int solved = testing::ForRandomBanks(200, [](const Bank& bank) {
    const Assembly assembly = Assemble(bank);
    std::size_t at = 0;
    for (const PlacedPart& piece : assembly.pieces()) {
      if (at == bank.pieces.size() || bank.pieces[at].role != piece.role) continue;
      const CasePiece& listed = bank.pieces[at++];
      EXPECT_EQ(ExtentOf(listed.block, JobAxis::kX), ExtentOf(piece.block, JobAxis::kX));
      EXPECT_EQ(ExtentOf(listed.block, JobAxis::kZ), ExtentOf(piece.block, JobAxis::kZ));
      EXPECT_EQ(listed.space, bank.parts[piece.part].space);
      EXPECT_EQ(listed.divider, bank.parts[piece.part].divider);
    }
    EXPECT_EQ(at, bank.pieces.size());
  });
  EXPECT_GE(solved, 100);
}

const char* const kOneDrawer = R"({"opening": {"width": "20", "height": "8", "depth": "22"},
  "fronts": {"style": "inset", "thickness": "3/4", "gap": "1/8", "edge": "1/8"},
  "slides": {"type": "side-mount", "length": "18"},
  "box": {"side": {"thickness": "1/2"}, "corner": {"joint": "rabbet", "depth": "1/4"},
    "bottom": {"fit": "groove", "thickness": "1/4", "depth": "1/4", "up": "3/8",
      "play": "1/32"}},
  "layout": {"rows": [{"drawer": {}}]}})";

// From the definition: side-mount slides take 1/2 in on each side, so the box is 19 in wide from
// x = 1/2 to 19 1/2; a front of 3/4 in stands before it.
TEST(Pieces, ADrawerBoxByHand) {
  const Bank bank = MustSolve(kOneDrawer).bank;
  const Assembly assembly = Assemble(bank);
  const PartOwner d1{PartOwner::Kind::kSpace, 0};
  const PlacedPart* side = assembly.Find(PartRole::kBoxSide, d1);
  ASSERT_NE(side, nullptr);
  EXPECT_EQ(ExtentOf(side->block, JobAxis::kX), (Extent{L("1/2"), L("1")}));
  EXPECT_EQ(ExtentOf(side->block, JobAxis::kZ), (Extent{L("3/4"), L("18 3/4")}));
  const PlacedPart* end = assembly.Find(PartRole::kBoxFront, d1);
  EXPECT_EQ(ExtentOf(end->block, JobAxis::kX), (Extent{L("3/4"), L("19 1/4")})) << "1/4 into both";
  EXPECT_EQ(ExtentOf(assembly.Find(PartRole::kBoxBack, d1)->block, JobAxis::kZ),
            (Extent{L("18 1/4"), L("18 3/4")}));
  // Room for the bottom: 18 + 2 · 1/4 wide and 17 + 2 · 1/4 deep, less 1/32 at each edge.
  const PlacedPart* bottom = assembly.Find(PartRole::kBoxBottom, d1);
  EXPECT_EQ(ExtentOf(bottom->block, JobAxis::kX), (Extent{L("25/32"), L("19 7/32")}));
  EXPECT_EQ(ExtentOf(bottom->block, JobAxis::kZ), (Extent{L("1 1/32"), L("18 15/32")}));
  // The groove of the left side is cut towards the left, that of the right one towards the right.
  const auto sides = assembly.OfPart(side->part);
  ASSERT_EQ(sides.size(), 2U);
  std::vector<JobWay> ways;
  for (const PlacedPart& piece : sides) {
    const auto groove = std::ranges::find(piece.cuts, CutPurpose::kBoxBottom, &PlacedCut::purpose);
    ASSERT_NE(groove, piece.cuts.end());
    ways.push_back(groove->into);
  }
  EXPECT_THAT(ways, ElementsAre(JobWay{JobAxis::kX, true}, JobWay{JobAxis::kX, false}));
}

// Rounding to 1/8 in takes more from the bottom than its play: the rest is shared by both edges.
// Under
// an open back it all lies at the front.
TEST(Pieces, ABottomWithRoomToSpareIsCentered) {
  std::string text = kOneDrawer;
  text.insert(1, R"("round": "1/8", )");
  const Bank bank = MustSolve(text).bank;
  const PartOwner d1{PartOwner::Kind::kSpace, 0};
  const Block closed = Assemble(bank).Find(PartRole::kBoxBottom, d1)->block;
  // 18 7/16 and 17 7/16, down to eighths: 1/16 in left at each edge.
  EXPECT_EQ(ExtentOf(closed, JobAxis::kX), (Extent{L("13/16"), L("19 3/16")}));
  EXPECT_EQ(ExtentOf(closed, JobAxis::kZ), (Extent{L("1 1/16"), L("18 7/16")}));
  text.replace(text.find(R"("up")"), 4, R"("open_back": true, "up")");
  const Bank open = MustSolve(text).bank;
  // 17 + 1/4 + 1/2 − 1/32, down to eighths 17 5/8: its play at the front and 1/16 more.
  const Block under = Assemble(open).Find(PartRole::kBoxBottom, d1)->block;
  EXPECT_EQ(ExtentOf(under, JobAxis::kZ), (Extent{L("1 1/8"), L("18 3/4")}));
}

const char* const kCaseWithBack = R"({"round": "1/8", "case": {"width": "20", "height": "30",
  "depth": "24", "side": "3/4", "raise": "2",
  "back": {"fit": "rabbet", "thickness": "1/4", "lap": "3/8", "play": "1/32"}},
  "layout": {"rows": [{"drawer": {}}]}})";

// 18 1/2 + 2 · 3/8 − 2 · 1/32 is 19 3/16, down to eighths 19 1/8: 1/16 in left on both sides of it.
TEST(Pieces, ACaseBackIsCenteredAndStandsOnItsPlay) {
  const Bank bank = MustSolve(kCaseWithBack).bank;
  const Assembly assembly = Assemble(bank);
  ASSERT_NE(assembly.Find(PartRole::kCaseBack, {}), nullptr);
  const Block block = assembly.Find(PartRole::kCaseBack, {})->block;
  EXPECT_EQ(ExtentOf(block, JobAxis::kX), (Extent{L("-5/16"), L("18 13/16")}));
  EXPECT_EQ(block.y, L("1/32") - L("3/4")) << "from the bottom's lower face";
  EXPECT_EQ(block.z, L("23 3/4"));
}

}  // namespace
}  // namespace tillwright
