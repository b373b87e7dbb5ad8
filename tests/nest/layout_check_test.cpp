// The checker itself: a planted fault of every kind is found, a sound layout passes.
#include "nest/layout_check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace tillwright::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

Length Mm(std::int64_t n) { return Length::Millimeters(n); }

NestPiece Piece(std::int32_t part, std::int64_t x, std::int64_t y, std::int64_t w, std::int64_t h) {
  NestPiece piece;
  piece.kind = NestPieceKind::kPart;
  piece.part = part;
  piece.rect = {Mm(x), Mm(y), Mm(w), Mm(h)};
  piece.parent = 0;
  return piece;
}

NestPiece Root(std::int64_t w, std::int64_t h) {
  NestPiece root;
  root.kind = NestPieceKind::kColumns;
  root.rect = {Length(), Length(), Mm(w), Mm(h)};
  return root;
}

// Two parts of 40 x 30 with a kerf of 3 on a sheet of 100 x 60.
struct Pair {
  NestJob job{.parts = {{.label = "a", .along = Mm(40), .across = Mm(30), .count = 2}},
              .stock = {{.label = "s", .along = Mm(100), .across = Mm(60)}},
              .kerf = Mm(3)};
  NestPlan plan{
      .layouts = {{.stock = 0,
                   .pieces = {Root(100, 60), Piece(0, 0, 0, 40, 30), Piece(0, 43, 0, 40, 30)}}},
      .missing = {0}};

  NestPiece& Second() { return plan.layouts[0].pieces[2]; }
};

TEST(LayoutCheck, PassesASoundLayout) {
  const Pair pair;
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), IsEmpty());
  EXPECT_EQ(StagesOf(pair.plan.layouts[0], Mm(3)), 2);
}

TEST(LayoutCheck, FindsAKerfThatIsMissing) {
  Pair pair;
  pair.Second().rect.x = Mm(42);
  EXPECT_THAT(FaultsOf(pair.job, pair.plan),
              ElementsAre(HasSubstr("without a kerf"), HasSubstr("edge to edge")));
}

TEST(LayoutCheck, FindsAPartOutsideItsSheet) {
  Pair pair;
  pair.Second().rect.x = Mm(61);
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("outside")));
  pair.Second().rect.x = Mm(60);
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), IsEmpty());
  pair.job.stock[0].trim = Mm(5);
  EXPECT_EQ(FaultsOf(pair.job, pair.plan).size(), 2U);
}

TEST(LayoutCheck, FindsATurnAgainstTheGrain) {
  Pair pair;
  pair.Second() = Piece(0, 43, 0, 30, 40);
  pair.Second().turned = true;
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("grain")));
  pair.job.parts[0].may_turn = true;
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), IsEmpty());
}

TEST(LayoutCheck, FindsAWrongSizeACountAndASheetTooMany) {
  Pair pair;
  pair.Second().rect.width = Mm(39);
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("another size")));
  pair.Second().rect.width = Mm(40);
  pair.job.parts[0].count = 3;
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("lies 2 times")));
  pair.plan.missing[0] = 1;
  pair.job.stock[0].count = 0;
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("more sheets")));
}

// Five parts around a pinwheel: no cut passes right across.
TEST(LayoutCheck, FindsAPinwheel) {
  NestLayout layout;
  layout.pieces = {Root(30, 30),
                   Piece(0, 0, 0, 20, 10),
                   Piece(0, 20, 0, 10, 20),
                   Piece(0, 10, 20, 20, 10),
                   Piece(0, 0, 10, 10, 20),
                   Piece(0, 10, 10, 10, 10)};
  EXPECT_EQ(StagesOf(layout, Length()), -1);
  layout.pieces.pop_back();
  EXPECT_EQ(StagesOf(layout, Length()), -1);
  layout.pieces.pop_back();
  EXPECT_EQ(StagesOf(layout, Length()), 3);
}

}  // namespace
}  // namespace tillwright::testing
