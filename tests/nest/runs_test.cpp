// Runs of parts: out of one piece, in order, whatever else is asked of the layout.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "nest/layout_check.h"
#include "support/files.h"
#include "tillwright/nest.h"

namespace tillwright::testing {
namespace {

using ::testing::Each;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

Length Mm(std::int64_t n) { return Length::Millimeters(n); }

// 3 fronts of 400 x 150 in one run, and 2 more of the same kind that stand alone.
NestJob FiveFronts(bool across) {
  return {
      .parts = {{.label = "front", .along = Mm(400), .across = Mm(150), .count = 5}},
      .stock = {{.label = "s", .along = Mm(2440), .across = Mm(1220)}},
      .kerf = Mm(3),
      .runs = {{.parts = {0, 0, 0}, .across = across}},
      .work = 100'000,
  };
}

TEST(NestRuns, APieceIsTheSumOfItsPartsAndTheKerfsBetween) {
  NestJob job = FiveFronts(false);
  EXPECT_EQ(PieceOf(job, job.runs[0]).along, Mm(3 * 400 + 2 * 3));
  EXPECT_EQ(PieceOf(job, job.runs[0]).across, Mm(150));
  job.runs[0] = {.parts = {0, 0, 0}, .across = true, .spare = Mm(6)};
  EXPECT_EQ(PieceOf(job, job.runs[0]).along, Mm(400));
  EXPECT_EQ(PieceOf(job, job.runs[0]).across, Mm(3 * 150 + 2 * 3 + 6));
}

// The parts of a layout's first run from left to right, or from the top down.
std::vector<std::int32_t> PlacesInSight(const NestLayout& layout, bool across) {
  std::vector<NestPiece> parts;
  for (const NestPiece& piece : layout.pieces) {
    if (piece.kind == NestPieceKind::kPart && piece.run == 0) parts.push_back(piece);
  }
  std::ranges::sort(parts, {}, [&](const NestPiece& p) { return across ? -p.rect.y : p.rect.x; });
  std::vector<std::int32_t> places;
  for (const NestPiece& part : parts) places.push_back(part.place);
  return places;
}

TEST(NestRuns, LieInOrderFromTheLeftOrFromTheTop) {
  for (const bool across : {false, true}) {
    const NestJob job = FiveFronts(across);
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
    EXPECT_THAT(plan.missing, ElementsAre(0));
    ASSERT_EQ(plan.layouts.size(), 1U);
    EXPECT_TRUE(plan.proven);
    EXPECT_THAT(PlacesInSight(plan.layouts[0], across), ElementsAre(0, 1, 2));
  }
}

// 1206 mm of run fit a board of 1206 mm and not one a hair shorter, though the parts alone would.
TEST(NestRuns, NeedTheirWholeLengthInOnePiece) {
  NestJob job = FiveFronts(false);
  job.parts[0].count = 3;
  job.stock[0] = {.label = "board", .along = Mm(1206), .across = Mm(150)};
  EXPECT_THAT(Nest(job).missing, ElementsAre(0));
  job.stock[0].along -= Length::Picometers(1);
  NestPlan plan = Nest(job);
  EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
  EXPECT_THAT(plan.missing, ElementsAre(3));
  EXPECT_FALSE(plan.proven);
  job.runs.clear();
  EXPECT_THAT(Nest(job).missing, ElementsAre(0));
}

// Two runs of 1206 and four parts of 400 on boards of 1700: each run leaves room for one part, the
// parts alone would go four to a board. By hand: 4 parts - 2 beside the runs = 2, a third board.
TEST(NestRuns, TheBoundIsOneOfLayoutsThatKeepTheRuns) {
  NestJob job = FiveFronts(false);
  job.parts[0].count = 10;
  job.runs.push_back(job.runs[0]);
  job.stock[0] = {.label = "board", .along = Mm(1700), .across = Mm(150)};
  const NestPlan plan = Nest(job);
  EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
  EXPECT_EQ(plan.layouts.size(), 3U);
  EXPECT_TRUE(plan.proven);
  EXPECT_EQ(plan.bound, 3);
}

// What is spare lies beyond the last cut: it is sawn off, no part is larger for it.
TEST(NestRuns, WhatIsSpareIsLeftOver) {
  for (const bool across : {false, true}) {
    NestJob job = FiveFronts(across);
    job.parts[0].count = 3;
    job.runs[0].spare = Mm(25);
    const NestPart piece = PieceOf(job, job.runs[0]);
    job.stock[0] = {.label = "just", .along = piece.along, .across = piece.across};
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
    ASSERT_EQ(plan.layouts.size(), 1U);
    const std::vector<NestCut> cuts = CutsOf(plan.layouts[0]);
    ASSERT_EQ(cuts.size(), 3U);
    for (const NestCut& cut : cuts) {
      EXPECT_EQ(cut.across, !across);
      EXPECT_EQ(cut.size, across ? Mm(150) : Mm(400));
    }
    const NestPiece& offcut =
        plan.layouts[0].pieces[static_cast<std::size_t>(LargestOffcut(plan.layouts[0]))];
    EXPECT_EQ(across ? offcut.rect.height : offcut.rect.width, Mm(22));
  }
}

TEST(NestRuns, TheWordsSayWhatWasKept) {
  NestJob job = FiveFronts(false);
  EXPECT_EQ(NestWords(job, Nest(job), "sheet"),
            "1 sheet; no layout with edge-to-edge cuts that keeps the runs whole can use fewer "
            "(proved)");
}

class RandomJob {
 public:
  explicit RandomJob(std::mt19937_64& random) : random_(random) {}

  NestJob Make() {
    NestJob job{.parts = {},
                .stock = {{.label = "s",
                           .along = Mm(Between(800, 2500)),
                           .across = Mm(Between(500, 1300)),
                           .trim = Mm(Between(0, 8))}},
                .kerf = Mm(Between(0, 4)),
                .stages = static_cast<int>(Between(0, 3))};
    if (job.stages == 1) job.stages = 2;
    if (Between(0, 2) == 0) job.stock.push_back({"rack", Mm(1000), Mm(900), Mm(0), 1, true, {}});
    for (std::int64_t n = Between(1, 8); n > 0; --n) {
      job.parts.push_back({.label = "p",
                           .along = Mm(Between(60, 700)),
                           .across = Mm(Between(60, 450)),
                           .count = Between(0, 3),
                           .may_turn = Between(0, 1) == 1});
    }
    for (std::int64_t n = Between(1, 4); n > 0; --n) AddRun(job);
    job.work = 4'000;
    return job;
  }

 private:
  std::int64_t Between(std::int64_t least, std::int64_t most) {
    return std::uniform_int_distribution<std::int64_t>(least, most)(random_);
  }

  // Fronts of one height and their own widths, or the other way; some alike.
  void AddRun(NestJob& job) {
    NestRun run{
        .parts = {}, .across = Between(0, 1) == 1, .spare = Mm(Between(0, 1) * Between(1, 30))};
    const Length same = Mm(Between(60, 400));
    for (std::int64_t n = Between(1, 5); n > 0; --n) {
      const Length own = Mm(Between(60, 300));
      const bool again = !run.parts.empty() && Between(0, 2) == 0;
      if (!again) job.parts.push_back({"f", run.across ? same : own, run.across ? own : same, 0});
      run.parts.push_back(static_cast<std::int32_t>(job.parts.size()) - 1);
      ++job.parts.back().count;
    }
    if (Between(0, 3) == 0) ++job.parts.back().count;  // and one that stands alone
    job.runs.push_back(std::move(run));
  }

  std::mt19937_64& random_;
};

TEST(NestRuns, StayWholeAndInOrderInRandomJobs) {
  const std::uint32_t seed = TestSeed();
  std::mt19937_64 random(seed);
  std::size_t whole = 0;
  for (int i = 0; i < 60; ++i) {
    SCOPED_TRACE("job " + std::to_string(i) + ", seed " + std::to_string(seed));
    const NestJob job = RandomJob(random).Make();
    const NestPlan plan = Nest(job);
    EXPECT_THAT(FaultsOf(job, plan), IsEmpty());
    ASSERT_EQ(plan.missing.size(), job.parts.size());
    if (std::ranges::all_of(plan.missing, [](std::int64_t n) { return n == 0; })) {
      ++whole;
      EXPECT_LE(plan.bound, static_cast<std::int64_t>(plan.layouts.size()));
    }
  }
  EXPECT_GE(whole, 20U);  // else the jobs try nothing
}

// A run is a part of its whole size: the same jobs with such parts need the same sheets.
TEST(NestRuns, NeedAsMuchAsPartsOfTheirWholeSize) {
  const std::uint32_t seed = TestSeed();
  std::mt19937_64 random(seed);
  for (int i = 0; i < 25; ++i) {
    SCOPED_TRACE("job " + std::to_string(i) + ", seed " + std::to_string(seed));
    const NestJob job = RandomJob(random).Make();
    NestJob plain = job;
    plain.runs.clear();
    for (const NestRun& run : job.runs) {
      Rect whole;
      for (const std::int32_t index : run.parts) {
        NestPart& part = plain.parts[static_cast<std::size_t>(index)];
        --part.count;
        const Length kerf = whole.width.IsZero() ? Length() : job.kerf;
        whole.width = run.across ? part.along : whole.width + kerf + part.along;
        whole.height = run.across ? whole.height + kerf + part.across : part.across;
      }
      (run.across ? whole.height : whole.width) += run.spare;
      plain.parts.push_back({.label = "run", .along = whole.width, .across = whole.height});
    }
    const NestPlan kept = Nest(job);
    const NestPlan same = Nest(plain);
    EXPECT_EQ(kept.layouts.size(), same.layouts.size());
    EXPECT_EQ(kept.bound, same.bound);
    EXPECT_EQ(kept.proven, same.proven);
  }
}

}  // namespace
}  // namespace tillwright::testing
