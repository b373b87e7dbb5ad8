// Pages of sticks: nothing overlaps, nothing is dropped.
#include <gtest/gtest.h>

#include "draw/stick_cases.h"
#include "draw/view_cases.h"
#include "support/every.h"
#include "support/files.h"
#include "support/specs.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

TEST(StickLayoutTest, CuratedSpecs) {
  for (const BankCase& c : CuratedBanks()) ExpectGoodSticks(c.name, c.bank, {});
}

TEST(StickLayoutTest, CuratedSpecsOnEveryPaper) {
  for (const BankCase& c : CuratedBanks()) {
    StickOptions options;
    for (const Paper paper : Every<Paper>()) {
      options.paper = paper;
      ExpectGoodSticks(c.name + " on " + std::string(Word(paper)), c.bank, options);
    }
    options.roll = true;
    ExpectGoodSticks(c.name + " on a roll", c.bank, options);
  }
}

TEST(StickLayoutTest, CuratedSpecsInEveryStyle) {
  for (const BankCase& c : CuratedBanks()) {
    StickOptions options;
    options.datum_up = true;
    options.units = StickUnits::kBoth;
    options.screws = ScrewRow();
    ExpectGoodSticks(c.name + ", datum up, both units, screws", c.bank, options);
    options = {};
    options.mirror = true;
    options.units = StickUnits::kMillimeter;
    options.lanes = {StickLane::kFront};
    options.correct_x = 1.012;
    options.correct_y = 0.985;
    ExpectGoodSticks(c.name + ", mirrored, millimetres, corrected", c.bank, options);
    options = {};
    options.units = StickUnits::kInch;
    options.margin = 20;
    options.sticks = false;
    ExpectGoodSticks(c.name + ", templates alone", c.bank, options);
  }
}

TEST(StickLayoutTest, HardCases) {
  for (const BankCase& c : HardBanks()) {
    StickOptions options;
    if (c.name == "hall") options.roll = true;
    ExpectGoodSticks(c.name, c.bank, options);
  }
}

TEST(StickLayoutTest, TwoHundredRandomSpecs) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  for (const BankCase& c : RandomBanks(seed, 200)) {
    StickOptions options;
    options.units = c.bank.spaces.size() % 3 == 0 ? StickUnits::kBoth : StickUnits::kOwn;
    if (c.bank.spaces.size() % 4 == 0) options.screws = ScrewRow();
    ExpectGoodSticks(c.name, c.bank, options);
  }
}

StickOptions RandomOptions(Random& random) {
  StickOptions options;
  options.roll = random.Chance(15);
  if (random.Chance(80)) options.paper = random.Pick<Paper>(Every<Paper>());
  if (random.Chance(50)) options.roll_width = random.Int(160, 700);
  if (random.Chance(50)) options.max_length = random.Int(300, 5080);
  options.margin = random.Int(0, 25);
  options.correct_x = random.Int(970, 1030) / 1000.0;
  options.correct_y = random.Int(970, 1030) / 1000.0;
  options.datum_up = random.Chance(40);
  options.mirror = random.Chance(40);
  options.units = random.Pick<StickUnits>(
      {StickUnits::kOwn, StickUnits::kInch, StickUnits::kMillimeter, StickUnits::kBoth});
  if (random.Chance(40)) options.lanes = {StickLane::kCase, StickLane::kBox};
  if (random.Chance(40)) options.screws = ScrewRow();
  return options;
}

TEST(StickLayoutTest, RandomOptionsOnRandomSpecs) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  Random random(seed);
  int count = 0;
  for (const BankCase& c : RandomBanks(seed + 1000000, 40)) {
    ExpectGoodSticks("options " + std::to_string(++count) + ", " + c.name, c.bank,
                     RandomOptions(random));
  }
}

TEST(StickLayoutTest, APaperThatIsTooSmallIsAFault) {
  StickOptions options;
  options.roll = true;
  options.roll_width = 80;
  options.margin = 20;
  EXPECT_NE(DrawSticks(CuratedBanks().front().bank, options, DrawingFontMetrics()).fault, "");
}

}  // namespace
}  // namespace tillwright::testing
