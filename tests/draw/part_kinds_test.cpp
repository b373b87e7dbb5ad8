// Which parts are alike, and which have a left and a right.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "draw/part/part_sheet_notes.h"
#include "draw/part/part_sheets.h"
#include "draw/part_cases.h"
#include "stock/part_seats.h"
#include "stock/part_shape.h"
#include "support/files.h"
#include "support/specs.h"
#include "tillwright/dimensions.h"

namespace tillwright::testing {
namespace {

// The kind of the part with this id.
PartKind KindOf(const Bank& bank, const std::string& id) {
  for (const PartKind& kind : PartKinds(bank)) {
    for (const std::size_t part : kind.parts) {
      if (PartId(bank, bank.parts[part]) == id) return kind;
    }
  }
  ADD_FAILURE() << "no part " << id;
  return {};
}

std::string Spec(const std::string& rest) {
  return R"({"case": {"width": "20", "height": "24", "depth": "22"}, )" + rest + "}";
}

TEST(PartKindsTest, EveryPartIsInExactlyOneKind) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  for (const BankCase& c : AllBanks(seed)) {
    SCOPED_TRACE(c.name);
    std::map<std::size_t, int> seen;
    int count = 0;
    std::size_t first = 0;
    for (const PartKind& kind : PartKinds(c.bank)) {
      ASSERT_FALSE(kind.parts.empty());
      EXPECT_TRUE(std::ranges::is_sorted(kind.parts));
      EXPECT_GE(kind.parts.front(), first);
      first = kind.parts.front();
      int pieces = 0;
      for (const std::size_t part : kind.parts) {
        ++seen[part];
        pieces += c.bank.parts.at(part).count;
      }
      EXPECT_EQ(kind.count, pieces);
      count += pieces;
    }
    EXPECT_EQ(seen.size(), c.bank.parts.size());
    for (const auto& [part, times] : seen) EXPECT_EQ(times, 1) << part;
    int expected = 0;
    for (const Part& part : c.bank.parts) expected += part.count;
    EXPECT_EQ(count, expected);
  }
}

TEST(PartKindsTest, PartsOfAKindAreAlikeAndKindsDiffer) {
  for (const BankCase& c : ConstructionBanks()) {
    SCOPED_TRACE(c.name);
    const auto same = [&](std::size_t i, std::size_t j) {
      const Part& a = c.bank.parts[i];
      const Part& b = c.bank.parts[j];
      const auto cut = [](const Cut& x, const Cut& y) {
        return x.kind == y.kind && x.from == y.from && x.offset == y.offset && x.width == y.width &&
               x.depth == y.depth;
      };
      const auto seat = [](const Seat& x, const Seat& y) {
        return x.other_face == y.other_face && x.offset == y.offset && x.width == y.width;
      };
      return a.role == b.role && a.length == b.length && a.width == b.width &&
             a.thickness == b.thickness && a.grain == b.grain && a.material == b.material &&
             std::ranges::equal(a.cuts, b.cuts, cut) &&
             std::ranges::equal(SeatsIn(c.bank, a), SeatsIn(c.bank, b), seat);
    };
    const std::vector<PartKind> kinds = PartKinds(c.bank);
    for (std::size_t i = 0; i < kinds.size(); ++i) {
      for (const std::size_t part : kinds[i].parts) EXPECT_TRUE(same(part, kinds[i].parts[0]));
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_FALSE(same(kinds[i].parts[0], kinds[j].parts[0])) << i << " and " << j;
      }
    }
  }
}

struct HandCase {
  const char* name;
  const char* rest;
  const char* part;
  int count;
  int mirrored;
  const char* words;
};

constexpr HandCase kHands[] = {
    {"both ends alike", R"("drawers": [{}], "box": {"corner": {"joint": "rabbet"}})", "D1.side", 2,
     0, "2 pieces, left and right identical"},
    {"box back set in",
     R"("drawers": [{}], "box": {"corner": {"joint": "dado", "back_setback": "1/2"}})", "D1.side",
     2, 1, "2 pieces: 1 as drawn (left), 1 mirrored (right)"},
    {"three drawers alike",
     R"("drawers": [{"exact": "6"}, {"exact": "6"}, {"exact": "6"}, {}],
        "fronts": {"style": "inset"},
        "box": {"height": "3", "corner": {"joint": "dado", "back_setback": "1/2"}})",
     "D1.side", 8, 4, "8 pieces: 4 as drawn (left), 4 mirrored (right)"},
    {"rabbeted back", R"("drawers": [{}])", "case.side", 2, 1,
     "2 pieces: 1 as drawn (left), 1 mirrored (right)"},
    {"one front", R"("drawers": [{}])", "D1.front", 1, 0, "1 piece"},
};

TEST(PartKindsTest, LeftAndRightAreToldApart) {
  for (const HandCase& c : kHands) {
    SCOPED_TRACE(c.name);
    const Bank bank = MustSolve(Spec(c.rest)).bank;
    const PartKind kind = KindOf(bank, c.part);
    EXPECT_EQ(kind.count, c.count);
    EXPECT_EQ(kind.mirrored, c.mirrored);
    EXPECT_EQ(PartKindCount(bank, kind), c.words);
  }
}

TEST(PartKindsTest, PullsTellFrontsApart) {
  const Bank bank = MustSolve(Spec(R"("fronts": {"style": "inset", "pull": {"centers": "3"}},
      "drawers": [{"exact": "5"}, {"exact": "5", "front": {"pull": "none"}}, {"exact": "5"}, {}])"))
                        .bank;
  EXPECT_EQ(PartKindIds(bank, KindOf(bank, "D1.front")), "D1, D3");
  EXPECT_EQ(PartKindIds(bank, KindOf(bank, "D2.front")), "D2");
}

TEST(PartKindsTest, IdsRunTogether) {
  std::string drawers;
  for (int i = 0; i < 7; ++i) drawers += i == 3 ? R"(, {"exact": "2"})" : R"(, {"exact": "3"})";
  const Bank bank =
      MustSolve(Spec(R"("fronts": {"style": "inset"}, "box": {"height": "1"}, "drawers": [)" +
                     drawers.substr(2) + "]"))
          .bank;
  EXPECT_EQ(PartKindIds(bank, KindOf(bank, "D1.front")), "D1\u2013D3, D5\u2013D7");
  EXPECT_EQ(PartKindIds(bank, KindOf(bank, "D4.front")), "D4");
  EXPECT_EQ(PartKindIds(bank, KindOf(bank, "case.side")), "");
}

// A case side of 24 x 22 in: dados from the lower edge, a rabbet along the rear.
TEST(PartShapeTest, CaseSideByHand) {
  const Bank bank =
      MustSolve(R"({"case": {"width": "20", "height": "24", "depth": "22", "raise": "2",
        "joint": {"type": "dado", "depth": "1/4"}, "back": {"thickness": "1/4", "lap": "3/8"}},
        "drawers": [{}]})")
          .bank;
  const std::size_t side = KindOf(bank, "case.side").parts[0];
  const PartShape shape = ShapeOf(bank.parts[side], PiecesOf(bank, side)[0]);
  EXPECT_EQ(shape.right, L("22"));
  EXPECT_EQ(shape.up, L("24"));
  ASSERT_EQ(shape.bands.size(), 3U);
  EXPECT_FALSE(shape.bands[0].IsUpright());
  EXPECT_EQ(shape.bands[0].low, L("2"));
  EXPECT_EQ(shape.bands[0].high, L("2 3/4"));
  EXPECT_EQ(shape.bands[1].low, L("23 1/4"));
  EXPECT_EQ(shape.bands[1].high, L("24"));
  EXPECT_TRUE(shape.bands[2].IsUpright());
  EXPECT_EQ(shape.bands[2].low, L("21 3/4"));
  EXPECT_EQ(shape.bands[2].high, L("22"));
  EXPECT_EQ(shape.bands[2].depth, L("3/8"));
}

// A case of 24 x 24 in, 3/4 in stock in dados 1/4 in deep, opening 22 1/2 in: two columns, the left
// one of three rows, all inset with edges of 1/8 in.
const char* const kNested = R"({"case": {"width": "24", "height": "24", "depth": "20",
  "joint": {"type": "dado", "depth": "1/4"}}, "fronts": {"style": "inset", "edge": "1/8"},
  "layout": {"columns": [
    {"exact": "8", "divider": "3/4",
     "rows": [{"drawer": {"exact": "6"}}, {"drawer": {"exact": "7"}}, {"drawer": {}}]},
    {"drawer": {}}]}})";

const Part& PartNamed(const Bank& bank, const std::string& id) {
  return bank.parts[KindOf(bank, id).parts[0]];
}

// H1's lower side is 6 1/4 + 3/4 below the opening's top, H2's another 7 1/4 + 3/4: 15 1/2 and
// 7 1/2 above its bottom, which is 3/4 above the sides' lower ends.
TEST(SeatsTest, CaseSideByHand) {
  const Bank bank = MustSolve(kNested).bank;
  const std::vector<Seat> seats = SeatsIn(bank, PartNamed(bank, "case.side"));
  ASSERT_EQ(seats.size(), 2U);
  EXPECT_EQ(seats[0].offset, L("8 1/4"));
  EXPECT_EQ(seats[1].offset, L("16 1/4"));
  for (const Seat& seat : seats) {
    EXPECT_FALSE(seat.other_face);
    EXPECT_FALSE(seat.upright);
    EXPECT_EQ(seat.width, L("3/4"));
    EXPECT_EQ(seat.depth, L("1/4"));
  }
  EXPECT_FALSE(BothFacesAlike(seats));
  const PartKind kind = KindOf(bank, "case.side");
  EXPECT_EQ(kind.mirrored, 1);
  EXPECT_EQ(PartKindSeats(bank, kind),
            (std::vector<std::string>{"Dadoes for H1, H2", "Left side only"}));
}

// The partition takes the same dividers on its left face, 1/4 in further up for its own tenon; the
// case bottom takes the partition 8 1/4 in from the left side, and 1/4 in of it is in that side.
TEST(SeatsTest, PartitionAndBottomByHand) {
  const Bank bank = MustSolve(kNested).bank;
  const std::vector<Seat> partition = SeatsIn(bank, PartNamed(bank, "V1"));
  ASSERT_EQ(partition.size(), 2U);
  EXPECT_TRUE(partition[0].other_face);
  EXPECT_EQ(partition[0].offset, L("7 3/4"));
  EXPECT_EQ(partition[1].offset, L("15 3/4"));
  for (const char* id : {"case.bottom", "case.top"}) {
    const std::vector<Seat> across = SeatsIn(bank, PartNamed(bank, id));
    ASSERT_EQ(across.size(), 1U);
    EXPECT_TRUE(across[0].upright);
    EXPECT_EQ(across[0].offset, L("8 1/2"));
  }
  EXPECT_EQ(DimensionValue(bank, "part.case.bottom.seat.1.offset"), L("8 1/2"));
  EXPECT_EQ(DimensionValue(bank, "part.case.side.seat.2.width"), L("3/4"));
  EXPECT_FALSE(DimensionValue(bank, "part.case.side.seat.3.width").has_value());
  EXPECT_FALSE(DimensionValue(bank, "part.case.side.seat.0.width").has_value());
  EXPECT_FALSE(DimensionValue(bank, "part.case.side.seat.1.length").has_value());
}

TEST(SeatsTest, NoneInButtJoints) {
  std::string text = kNested;
  const std::string dado = R"("dado", "depth": "1/4")";
  text.replace(text.find(dado), dado.size(), "\"butt\"");
  const Bank bank = MustSolve(text).bank;
  ASSERT_FALSE(bank.dividers.empty());
  for (const Part& part : bank.parts) EXPECT_TRUE(SeatsIn(bank, part).empty());
}

}  // namespace
}  // namespace tillwright::testing
