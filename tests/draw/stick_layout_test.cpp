// Pages of sticks: nothing overlaps, nothing is dropped.
#include <gtest/gtest.h>

#include "draw/stick_cases.h"
#include "draw/view_cases.h"
#include "support/files.h"

namespace tillwright::testing {
namespace {

TEST(StickLayoutTest, CuratedSpecs) {
  for (const BankCase& c : CuratedBanks()) ExpectGoodSticks(c.name, c.bank, {});
}

TEST(StickLayoutTest, CuratedSpecsOnEveryPaper) {
  for (const BankCase& c : CuratedBanks()) {
    for (const std::string_view paper : StickPaperNames()) {
      StickOptions options;
      options.paper = paper;
      ExpectGoodSticks(c.name + " on " + options.paper, c.bank, options);
    }
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
    if (c.name == "hall") options.paper = "roll";
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

}  // namespace
}  // namespace tillwright::testing
