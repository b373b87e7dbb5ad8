// Fewer settings of the fence for the same sheets: what a workshop saves must cost nothing else.
#include "nest/fences.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>
#include <set>

#include "nest/greedy.h"
#include "nest/instances.h"
#include "nest/layout_check.h"
#include "nest/units.h"
#include "support/files.h"

namespace tillwright::testing {
namespace {

Length Mm(std::int64_t n) { return Length::Millimeters(n); }

std::size_t SettingsOf(const NestPlan& plan) {
  std::set<Length> settings;
  for (const NestLayout& layout : plan.layouts) {
    for (const NestCut& cut : CutsOf(layout)) settings.insert(cut.size);
  }
  return settings.size();
}

Int128 LargestOf(const NestPlan& plan) {
  Int128 most = 0;
  for (const NestLayout& layout : plan.layouts) {
    const std::int32_t at = LargestOffcut(layout);
    if (at < 0) continue;
    const Rect& rect = layout.pieces[static_cast<std::size_t>(at)].rect;
    const Int128 area = Int128{rect.width.picometers()} * rect.height.picometers();
    if (area > most) most = area;
  }
  return most;
}

// Takes the step on a packing of one pass, holds what must not change, and returns how many
// settings it saved.
std::size_t Saved(const NestJob& job, std::int64_t work) {
  const nest::Integers integers = nest::ToIntegers(job);
  const nest::Packing before = nest::GreedyPacking(integers.problem, 0);
  const auto kerf = static_cast<std::int32_t>(job.kerf.picometers() / integers.unit.picometers());
  const nest::Packing after = nest::WithFewerSettings(integers.problem, before, kerf + 1, work);
  const NestPlan old_plan = nest::ToPlan(job, integers, before);
  const NestPlan plan = nest::ToPlan(job, integers, after);
  EXPECT_THAT(FaultsOf(job, plan), ::testing::IsEmpty());
  EXPECT_EQ(plan.missing, old_plan.missing);
  EXPECT_EQ(plan.layouts.size(), old_plan.layouts.size());
  EXPECT_LE(after.Cost(integers.problem), before.Cost(integers.problem));
  EXPECT_TRUE(LargestOf(plan) >= LargestOf(old_plan));
  EXPECT_LE(SettingsOf(plan), SettingsOf(old_plan));
  return SettingsOf(old_plan) - SettingsOf(plan);
}

TEST(Fences, AreSetLessOftenForTheSameSheetsAndOffcut) {
  std::size_t saved = 0;
  for (const char* const name : {"real_012", "real_030", "real_060", "planted_04", "multi_040"}) {
    SCOPED_TRACE(name);
    saved +=
        Saved(ReadInstance(
                  ReadFile(SourcePath("tests/nest/instances/shop/" + std::string(name) + ".txt")),
                  Turning::kAsGiven),
              600'000);
  }
  EXPECT_GE(saved, 4U);
}

TEST(Fences, AreNeverSetMoreOftenWhateverTheJob) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  std::mt19937 random(seed);
  const auto pick = [&](int from, int to) {
    return std::uniform_int_distribution<int>(from, to)(random);
  };
  for (int run = 0; run < 20; ++run) {
    NestJob job{.parts = {}, .stock = {}, .kerf = Length::Picometers(pick(0, 4) * 800'000'000LL)};
    for (int i = pick(1, 12); i > 0; --i) {
      job.parts.push_back({.label = {},
                           .along = Mm(pick(40, 900)),
                           .across = Mm(pick(40, 500)),
                           .count = pick(1, 3),
                           .may_turn = pick(0, 1) == 1});
    }
    job.stock.push_back({.label = {}, .along = Mm(1220), .across = Mm(1220), .trim = Mm(5)});
    job.stock.push_back({.label = {}, .along = Mm(2440), .across = Mm(1220)});
    job.stages = pick(0, 1) * pick(3, 5);
    const nest::Integers integers = nest::ToIntegers(job);
    if (nest::GreedyPacking(integers.problem, 0).MissingArea(integers.problem) > 0) continue;
    (void)Saved(job, 100'000);
  }
}

// Three parts side by side fill the sheet: two must be cut free, and the one of another width is
// the one that needs no cut.
TEST(Fences, LeaveThePieceOfASizeOfItsOwnForLast) {
  const NestJob job{.parts = {{.label = "a", .along = Mm(500), .across = Mm(600)},
                              {.label = "b", .along = Mm(200), .across = Mm(600), .count = 2}},
                    .stock = {{.label = "s", .along = Mm(906), .across = Mm(600)}},
                    .kerf = Mm(3)};
  const NestPlan plan = Nest(job);
  ASSERT_EQ(plan.layouts.size(), 1U);
  for (const NestCut& cut : CutsOf(plan.layouts[0])) EXPECT_EQ(cut.size, Mm(200));
  EXPECT_THAT(FaultsOf(job, plan), ::testing::IsEmpty());
}

}  // namespace
}  // namespace tillwright::testing
