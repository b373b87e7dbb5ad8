// The engine over the open instances (tests/nest/instances) and small jobs of its own.
#include "tillwright/nest.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <sstream>

#include "nest/instances.h"
#include "nest/layout_check.h"
#include "support/files.h"

namespace tillwright::testing {
namespace {

using ::testing::IsEmpty;

Length Mm(std::int64_t n) { return Length::Millimeters(n); }

std::string Instance(const std::string& name) {
  return ReadFile(SourcePath("tests/nest/instances/" + name));
}

struct Known {
  std::string file;
  Turning turning = Turning::kAsGiven;
  std::int64_t best = 0;
};

std::vector<std::string> Cells(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream in(line);
  for (std::string cell; std::getline(in, cell, ',');) cells.push_back(cell);
  return cells;
}

// The rows of best-known.csv: file, mode, three bounds, the best number of sheets known.
std::vector<Known> BestKnown() {
  std::vector<Known> known;
  std::istringstream in(Instance("best-known.csv"));
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    const std::vector<std::string> cells = Cells(line);
    known.push_back({cells.at(0), cells.at(1) == "O" ? Turning::kNone : Turning::kAll,
                     std::stoll(cells.at(5))});
  }
  return known;
}

TEST(Nest, LaysEveryOpenInstanceOutSoundlyAndNeverClaimsMoreThanIsKnown) {
  const std::vector<Known> all = BestKnown();
  ASSERT_EQ(all.size(), 89U);
  for (const Known& known : all) {
    SCOPED_TRACE(known.file);
    NestJob job = ReadInstance(Instance(known.file), known.turning);
    job.work = 50'000;
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
    EXPECT_THAT(plan.missing, ::testing::Each(0));
    EXPECT_LE(plan.bound, known.best);
    EXPECT_LE(plan.bound, static_cast<std::int64_t>(plan.layouts.size()));
    if (plan.proven) {
      EXPECT_EQ(static_cast<std::int64_t>(plan.layouts.size()), known.best);
    }
  }
}

TEST(Nest, GivesTheSamePlanForTheSameJob) {
  NestJob job = ReadInstance(Instance("bins/c05_100_01.txt"), Turning::kAll);
  job.work = 300'000;
  const NestPlan one = Nest(job);
  const NestPlan two = Nest(job);
  ASSERT_EQ(one.layouts.size(), two.layouts.size());
  for (std::size_t i = 0; i < one.layouts.size(); ++i) {
    ASSERT_EQ(one.layouts[i].pieces.size(), two.layouts[i].pieces.size());
    for (std::size_t j = 0; j < one.layouts[i].pieces.size(); ++j) {
      EXPECT_EQ(one.layouts[i].pieces[j].rect, two.layouts[i].pieces[j].rect);
    }
  }
}

// A kerf is needed between neighbors, not at the edges: 3 x 100 + 2 x 3 = 306.
TEST(Nest, KeepsAKerfBetweenNeighborsOnly) {
  NestJob job{.parts = {{.label = "a", .along = Mm(100), .across = Mm(50), .count = 3}},
              .stock = {{.label = "s", .along = Mm(306), .across = Mm(50)}},
              .kerf = Mm(3)};
  EXPECT_EQ(Nest(job).layouts.size(), 1U);
  job.stock[0].along -= Length::Picometers(1);
  const NestPlan plan = Nest(job);
  EXPECT_EQ(plan.layouts.size(), 2U);
  EXPECT_TRUE(plan.proven);
  EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
}

// Sizes with no common measure worth counting in: parts in picometers beside inches.
TEST(Nest, TakesSizesOfAnyFineness) {
  NestJob job{.parts = {{.label = "a",
                         .along = Length::Picometers(300'000'000'001),
                         .across = Length::Inches(7, 64),
                         .count = 4},
                        {.label = "b", .along = Length::Inches(5), .across = Length::Inches(3)}},
              .stock = {{.label = "s", .along = Mm(700), .across = Mm(400)}},
              .kerf = Length::Inches(1, 8)};
  const NestPlan plan = Nest(job);
  EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
  EXPECT_EQ(plan.layouts.size(), 1U);
}

TEST(Nest, SaysWhichPartsFitNoSheet) {
  const NestJob job{.parts = {{.label = "long", .along = Mm(900), .across = Mm(50), .count = 2},
                              {.label = "short", .along = Mm(90), .across = Mm(50)}},
                    .stock = {{.label = "s", .along = Mm(600), .across = Mm(1000)}},
                    .kerf = Mm(3)};
  const NestPlan plan = Nest(job);
  EXPECT_THAT(plan.missing, ::testing::ElementsAre(2, 0));
  EXPECT_FALSE(plan.proven);
}

// A part so fine that sizes are rounded to be counted still fits the board it fills.
TEST(Nest, LaysPartsThatFillABoardWhateverTheFineness) {
  NestJob job{
      .parts = {{.label = "a", .along = Mm(900), .across = Mm(100), .count = 3},
                {.label = "b", .along = Length::Picometers(123'456'789'012), .across = Mm(100)}},
      .stock = {{.label = "s", .along = Mm(2440), .across = Mm(100)}},
      .kerf = Mm(3)};
  NestPlan plan = Nest(job);
  EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
  EXPECT_EQ(plan.layouts.size(), 2U);
  job.parts[0].along = Mm(2440);
  plan = Nest(job);
  EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
  EXPECT_EQ(plan.layouts.size(), 4U);
}

// One kind of part: what is left beside whole numbers of it is an offcut all the same.
TEST(Nest, KeepsTheOffcutBesideEqualParts) {
  const NestJob job{.parts = {{.label = "a", .along = Mm(700), .across = Mm(700)}},
                    .stock = {{.label = "s", .along = Mm(2440), .across = Mm(1220)}},
                    .kerf = Mm(3)};
  const NestPlan plan = Nest(job);
  ASSERT_EQ(plan.layouts.size(), 1U);
  const std::int32_t offcut = LargestOffcut(plan.layouts[0]);
  ASSERT_GE(offcut, 0);
  const Rect& rect = plan.layouts[0].pieces[static_cast<std::size_t>(offcut)].rect;
  EXPECT_EQ(rect.width, Mm(1737));  // 2440 - 700 - 3
  EXPECT_EQ(rect.height, Mm(1220));
}

// The hardest of the open boards: each board is filled to the brim.
TEST(Nest, FillsBoardsToTheBrim) {
  for (const char* const name : {"trip1d_40", "trip1d_15", "planted1d_10"}) {
    SCOPED_TRACE(name);
    const NestPlan plan =
        Nest(ReadInstance(Instance("boards/" + std::string(name) + ".txt"), Turning::kAsGiven));
    EXPECT_TRUE(plan.proven);
  }
}

// The boards made for this project: best-boards.csv has the fewest, which are proven.
TEST(Nest, CutsTheOpenBoardsWithinOneOfTheFewest) {
  std::istringstream in(Instance("best-boards.csv"));
  std::string line;
  std::getline(in, line);
  std::int64_t over = 0;
  while (std::getline(in, line)) {
    const std::vector<std::string> cells = Cells(line);
    SCOPED_TRACE(cells.at(0));
    NestJob job = ReadInstance(Instance(cells.at(0)), Turning::kAsGiven);
    job.work = 3'000'000;
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
    EXPECT_LE(plan.bound, std::stoll(cells.at(4)));
    over += static_cast<std::int64_t>(plan.layouts.size()) - std::stoll(cells.at(4));
  }
  EXPECT_LE(over, 4);  // with a twentieth of the work that the program spends
}

// A half sheet on hand is used before a whole one is bought, and prices decide where they are
// given.
TEST(Nest, PrefersWhatIsOnHandAndWhatCostsLess) {
  NestJob job{.parts = {{.label = "a", .along = Mm(1000), .across = Mm(1000)}},
              .stock = {{.label = "whole", .along = Mm(2440), .across = Mm(1220)},
                        {.label = "half", .along = Mm(1220), .across = Mm(1220), .on_hand = true}}};
  job.stock[1].count = 1;
  EXPECT_EQ(Nest(job).layouts.at(0).stock, 1);
  job.stock[1].on_hand = false;
  job.stock[0].price = 4000;
  job.stock[1].price = 4500;
  const NestPlan plan = Nest(job);
  EXPECT_EQ(plan.layouts.at(0).stock, 0);
  EXPECT_TRUE(plan.proven);
}

// Parts whose sizes have a common measure of 8 mm (with the kerf) on a sheet that is no multiple of
// it: what is over belongs to the offcuts, and no cut takes it off them.
TEST(Nest, ListsNoCutThatFreesAnOffcutFromWaste) {
  NestJob job{.parts = {{.label = "a", .along = Mm(733), .across = Mm(597)}},
              .stock = {{.label = "s", .along = Mm(2440), .across = Mm(1220), .trim = Mm(6)}},
              .kerf = Mm(3)};
  const NestPlan plan = Nest(job);
  ASSERT_EQ(plan.layouts.size(), 1U);
  EXPECT_EQ(CutsOf(plan.layouts[0]).size(), 2U);
  std::vector<Rect> offcuts;
  for (const NestPiece& piece : plan.layouts[0].pieces) {
    if (piece.kind == NestPieceKind::kOffcut) offcuts.push_back(piece.rect);
  }
  // 2440 - 12 - 733 - 3 and 1220 - 12 - 597 - 3.
  EXPECT_THAT(offcuts, ::testing::UnorderedElementsAre(Rect{Mm(742), Mm(6), Mm(1692), Mm(1208)},
                                                       Rect{Mm(6), Mm(606), Mm(733), Mm(608)}));
}

// A sheet that is half a millimeter more than its part: the part keeps its size.
TEST(Nest, LeavesAPartThatFillsItsSheetItsOwnSize) {
  const NestJob job{.parts = {{.label = "a", .along = Mm(100), .across = Mm(50)}},
                    .stock = {{.label = "s",
                               .along = Mm(100) + Length::Picometers(500'000'000),
                               .across = Mm(50)}},
                    .kerf = Mm(3)};
  const NestPlan plan = Nest(job);
  EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
  EXPECT_THAT(plan.missing, ::testing::ElementsAre(0));
}

// What is said of a layout is what was proved of it.
TEST(Nest, SaysInWhichWayALayoutCannotBeBettered) {
  NestJob job{.parts = {{.label = "a", .along = Mm(100), .across = Mm(100), .count = 2}},
              .stock = {{.label = "s", .along = Mm(250), .across = Mm(100)}}};
  NestPlan plan{.layouts = {{}, {}}, .missing = {0}, .bound = 2, .proven = true};
  EXPECT_EQ(NestWords(job, plan, "sheet"),
            "2 sheets; no layout with edge-to-edge cuts can use fewer (proved)");
  plan.proven = false;
  plan.bound = 1;
  EXPECT_EQ(NestWords(job, plan, "board"), "2 boards; may be improvable; lower limit 1");
  job.stock.push_back(job.stock[0]);
  plan.bound = 2;
  plan.percent_bound = 91;
  EXPECT_EQ(NestWords(job, plan, "sheet"),
            "2 sheets; may be improvable; lower limit 91 % of the area these take");
  plan.proven = true;
  EXPECT_EQ(NestWords(job, plan, "sheet"),
            "2 sheets; no layout with edge-to-edge cuts can use less (proved)");
  job.stock[1].price = 100;
  EXPECT_EQ(NestWords(job, plan, "sheet"),
            "2 sheets; no layout with edge-to-edge cuts can cost less (proved)");
}

// A sheet of 100 takes one part of 60, and so does the offcut that is there: three of four parts
// are bought a sheet each, though two sheets and the offcut have area enough.
TEST(Nest, ProvesWhatAnOrderCostsBesideWhatIsOnHand) {
  NestJob job{.parts = {{.label = "a", .along = Mm(60), .across = Mm(100), .count = 4}},
              .stock = {{.label = "s", .along = Mm(100), .across = Mm(100), .price = 1000},
                        {.label = "o", .along = Mm(60), .across = Mm(100), .on_hand = true}}};
  job.stock[1].count = 1;
  const NestPlan plan = Nest(job);
  EXPECT_EQ(plan.layouts.size(), 4U);
  EXPECT_EQ(plan.price_bound, 3000);
  EXPECT_TRUE(plan.proven);
}

// Every part is cut free: each cut lies between two pieces or before waste, and there are as many
// as it takes. 2 x 2 parts on a sheet that is larger both ways: two rips or crosscuts, then two for
// each.
TEST(Nest, NumbersEveryCutFromTheLargestPieceDown) {
  const NestJob job{.parts = {{.label = "a", .along = Mm(400), .across = Mm(300), .count = 4}},
                    .stock = {{.label = "s", .along = Mm(1000), .across = Mm(606)}},
                    .kerf = Mm(3)};
  const NestPlan plan = Nest(job);
  ASSERT_EQ(plan.layouts.size(), 1U);
  const std::vector<NestCut> cuts = CutsOf(plan.layouts[0]);
  EXPECT_EQ(cuts.front().piece, 0);
  for (const NestCut& cut : cuts) {
    EXPECT_EQ(cut.size, cut.across ? Mm(400) : Mm(300));
    EXPECT_FALSE(cut.small);
  }
  EXPECT_GE(cuts.size(), 5U);
  EXPECT_GE(LargestOffcut(plan.layouts[0]), 0);
}

}  // namespace
}  // namespace tillwright::testing
