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

// The two parts as a run, side by side or one over another.
struct RunPair : Pair {
  explicit RunPair(bool across) {
    job.runs = {{.parts = {0, 0}, .across = across}};
    if (across) plan.layouts[0].pieces[1] = Piece(0, 0, 30, 40, 30);
    if (across) plan.layouts[0].pieces[2] = Piece(0, 0, -3, 40, 30);
    job.stock[0].across = Mm(63);
    for (const std::size_t i : {1U, 2U}) {
      plan.layouts[0].pieces[i].rect.y += across ? Mm(3) : Mm(0);
      plan.layouts[0].pieces[i].run = 0;
      plan.layouts[0].pieces[i].place = static_cast<std::int32_t>(i) - 1;
    }
    plan.layouts[0].pieces[0].rect = {Mm(0), Mm(0), Mm(100), Mm(63)};
  }
};

TEST(LayoutCheck, PassesARunInOrder) {
  for (const bool across : {false, true}) {
    RunPair pair(across);
    EXPECT_THAT(FaultsOf(pair.job, pair.plan), IsEmpty()) << across;
    pair.job.runs[0].spare = Mm(60);
    EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("outside"))) << across;
  }
}

TEST(LayoutCheck, FindsARunOutOfOrder) {
  for (const bool across : {false, true}) {
    RunPair pair(across);
    std::swap(pair.plan.layouts[0].pieces[1].place, pair.Second().place);
    EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("no neighbours")));
    pair.Second().place = pair.plan.layouts[0].pieces[1].place;
    EXPECT_THAT(FaultsOf(pair.job, pair.plan), ::testing::Contains(HasSubstr("without order")));
  }
}

TEST(LayoutCheck, FindsARunThatIsNotOnePiece) {
  RunPair pair(false);
  pair.Second().rect.x += Mm(1);
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("no neighbours")));
  pair.Second().run = -1;
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("in pieces")));
}

TEST(LayoutCheck, FindsARunOnTwoSheetsAndOneTurned) {
  RunPair pair(false);
  pair.plan.layouts.push_back(pair.plan.layouts[0]);
  pair.plan.layouts[0].pieces.pop_back();
  pair.plan.layouts[1].pieces.erase(pair.plan.layouts[1].pieces.begin() + 1);
  EXPECT_THAT(FaultsOf(pair.job, pair.plan), ElementsAre(HasSubstr("two sheets")));
  pair = RunPair(false);
  pair.job.parts[0].across = Mm(40);
  pair.job.parts[0].may_turn = true;
  for (const std::size_t i : {1U, 2U}) {
    pair.plan.layouts[0].pieces[i].rect.height = Mm(40);
    pair.plan.layouts[0].pieces[i].turned = true;
  }
  EXPECT_THAT(FaultsOf(pair.job, pair.plan),
              ElementsAre(HasSubstr("run turned"), HasSubstr("run turned")));
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
