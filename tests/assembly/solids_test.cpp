// What is left of the pieces: as much as the cuts leave, and no two in one place.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "assembly/assembly_cases.h"
#include "tillwright/assembly.h"

namespace tillwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using testing::MustSolve;
using ::testing::UnorderedElementsAre;

double VolumeOf(const Block& b) {
  return ToMillimeters(b.width) * ToMillimeters(b.height) * ToMillimeters(b.depth);
}

// Where two extents lie over one another; not above low: nowhere.
Extent Shared(Extent a, Extent b) { return {Max(a.low, b.low), Min(a.high, b.high)}; }

// Shoulders are halves: what fills a channel may be an odd picometer thicker than it is wide.
bool Overlap(const Block& a, const Block& b) {
  return std::ranges::all_of(kJobAxes, [&](JobAxis axis) {
    return Shared(ExtentOf(a, axis), ExtentOf(b, axis)).Size() > Length::Picometers(1);
  });
}

std::string NameOf(const Bank& bank, const PlacedPart& piece) {
  return PartId(bank, bank.parts[piece.part]);
}

bool Meet(const std::vector<Block>& a, const std::vector<Block>& b) {
  return std::ranges::any_of(a, [&](const Block& one) {
    return std::ranges::any_of(b, [&](const Block& other) { return Overlap(one, other); });
  });
}

// Members that enter one part from both its faces, deeper than it is thick: the maker's own choice.
bool BackToBack(const Bank& bank, const PlacedPart& a, const PlacedPart& b) {
  if (a.role != b.role || a.owner.kind != PartOwner::Kind::kMember) return false;
  const Rect& one = bank.dividers[static_cast<std::size_t>(a.owner.index)].rect;
  const Rect& other = bank.dividers[static_cast<std::size_t>(b.owner.index)].rect;
  const bool stand = a.role == PartRole::kPartition;
  const Length between = stand ? Max(one.y, other.y) - Min(one.Top(), other.Top())
                               : Max(one.x, other.x) - Min(one.Right(), other.Right());
  return Length() < between && between < 2 * bank.casework->joint_depth;
}

// The pairs of pieces that share a place: "D1.side and D1.bottom".
std::vector<std::string> Meetings(const Bank& bank, std::span<const PlacedPart> pieces,
                                  bool cuts_too) {
  std::vector<std::vector<Block>> solids;
  for (const PlacedPart& piece : pieces) {
    solids.push_back(cuts_too ? SolidOf(piece, JointBands::kTakeAway)
                              : std::vector<Block>{piece.block});
  }
  std::vector<std::string> met;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    for (std::size_t j = i + 1; j < pieces.size(); ++j) {
      if (!Overlap(pieces[i].block, pieces[j].block) || !Meet(solids[i], solids[j])) continue;
      if (BackToBack(bank, pieces[i], pieces[j])) continue;
      met.push_back(NameOf(bank, pieces[i]) + " and " + NameOf(bank, pieces[j]));
    }
  }
  return met;
}

// Blocks of a solid lie within the piece, apart from one another, and hold what it had less its
// cuts, each counted once.
void ExpectSolid(const PlacedPart& piece) {
  const std::vector<Block> solid = SolidOf(piece, JointBands::kKeep);
  double left = 0;
  double away = 0;
  for (const Block& block : solid) left += VolumeOf(block);
  for (const PlacedCut& cut : piece.cuts) {
    if (!cut.partly) away += VolumeOf(cut.block);
  }
  const double whole = VolumeOf(piece.block);
  EXPECT_LE(left, whole * (1 + 1e-12));
  EXPECT_GE(left, (whole - away) * (1 - 1e-12)) << "cuts may cross";
  for (std::size_t i = 0; i < solid.size(); ++i) {
    for (std::size_t j = i + 1; j < solid.size(); ++j) EXPECT_FALSE(Overlap(solid[i], solid[j]));
  }
}

TEST(Solids, OfEveryCuratedSpec) {
  testing::ForCuratedSpecs([](const Bank& bank) {
    const Assembly assembly = Assemble(bank);
    EXPECT_THAT(Meetings(bank, assembly.pieces(), true), IsEmpty());
    for (const PlacedPart& piece : assembly.pieces()) ExpectSolid(piece);
  });
}

TEST(Solids, OfRandomCasesAndBanks) {
  const int solved = testing::ForRandomBanks(300, [](const Bank& bank) {
    const Assembly assembly = Assemble(bank);
    EXPECT_THAT(Meetings(bank, assembly.pieces(), true), IsEmpty());
    for (const PlacedPart& piece : assembly.pieces()) ExpectSolid(piece);
  });
  EXPECT_GE(solved, 150);
}

// The blocks of a part's pieces are as many and as large as its list says.
TEST(Solids, HoldWhatThePartsListSays) {
  const int solved = testing::ForRandomBanks(100, [](const Bank& bank) {
    const Assembly assembly = Assemble(bank);
    for (std::size_t i = 0; i < bank.parts.size(); ++i) {
      const Part& part = bank.parts[i];
      double placed = 0;
      for (const PlacedPart& piece : assembly.OfPart(i)) placed += VolumeOf(piece.block);
      const double listed = part.count * ToMillimeters(part.length) * ToMillimeters(part.width) *
                            ToMillimeters(part.thickness);
      EXPECT_NEAR(placed, listed, 1e-9 * listed) << PartId(bank, part);
    }
  });
  EXPECT_GE(solved, 50);
}

const char* const kDrawer = R"({"case": {"width": "20", "height": "12", "depth": "22",
  "joint": {"type": "dado", "depth": "1/4"}}, "layout": {"rows": [{"drawer": {}}]}})";

// Joints are where blocks meet and solids don't: the bottom in its four grooves, the case's bottom
// and top in both sides, its back in the sides' rabbets.
TEST(Solids, MeetOnlyInJoints) {
  const Bank bank = MustSolve(kDrawer).bank;
  const Assembly assembly = Assemble(bank);
  EXPECT_THAT(Meetings(bank, assembly.pieces(), true), IsEmpty());
  EXPECT_THAT(Meetings(bank, assembly.pieces(), false),
              UnorderedElementsAre("D1.side and D1.bottom", "D1.side and D1.bottom",
                                   "D1.box_front and D1.bottom", "D1.box_back and D1.bottom",
                                   "case.side and case.bottom", "case.side and case.bottom",
                                   "case.side and case.top", "case.side and case.top",
                                   "case.side and case.back", "case.side and case.back"));
}

// A wrong place would be found: more than its play aside, the bottom stands in the sides' wood.
TEST(Solids, NoticeAPieceThatIsMoved) {
  const Bank bank = MustSolve(kDrawer).bank;
  const Assembly assembly = Assemble(bank);
  std::vector<PlacedPart> pieces(assembly.pieces().begin(), assembly.pieces().end());
  const auto bottom = std::ranges::find(pieces, PartRole::kBoxBottom, &PlacedPart::role);
  ASSERT_NE(bottom, pieces.end());
  bottom->block.x += Length::Millimeters(3);
  EXPECT_THAT(Meetings(bank, pieces, true), ElementsAre("D1.side and D1.bottom"));
}

}  // namespace
}  // namespace tillwright
