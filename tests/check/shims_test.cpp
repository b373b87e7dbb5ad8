// The choice of spacers against every set there is.
#include "check/shims.h"

#include <gtest/gtest.h>

#include "support/files.h"
#include "support/specs.h"

namespace tillwright {
namespace {

using testing::L;
using testing::Random;

SpacerSpec Spacer(Length thickness, int count) {
  SpacerSpec spacer;
  spacer.thickness = Entry<Length>(thickness);
  spacer.count = Entry<int>(count);
  return spacer;
}

struct Best {
  Length off = kMaxTyped;
  int pieces = 0;
};

// Every count of every kind.
void TryAll(const std::vector<SpacerSpec>& spacers, std::size_t at, Length sum, int pieces,
            Length wanted, Best& best) {
  if (at == spacers.size()) {
    const Length off = Max(sum - wanted, wanted - sum);
    if (off < best.off || (off == best.off && pieces < best.pieces)) best = {off, pieces};
    return;
  }
  for (int n = 0; n <= spacers[at].count.value; ++n) {
    TryAll(spacers, at + 1, sum + n * spacers[at].thickness.value, pieces + n, wanted, best);
  }
}

TEST(Shims, AreTheNearestAndFewestOfAllSets) {
  const auto seed = testing::TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  Random random(seed);
  for (int round = 0; round < 300; ++round) {
    std::vector<SpacerSpec> spacers;
    const int kinds = random.Int(1, 5);
    for (int i = 0; i < kinds; ++i) {
      const bool inch = random.Chance(50);
      const Length thickness = inch ? Length::Inches(random.Int(1, 40), 128)
                                    : Length::Picometers(random.Int(1, 60) * 50'000'000LL);
      spacers.push_back(Spacer(thickness, random.Int(1, 4)));
    }
    const Length wanted = Length::Picometers(random.Int(0, 6000) * 1'000'000LL);
    Best best;
    TryAll(spacers, 0, Length(), 0, wanted, best);
    const ShimSet set = ShimChoice(spacers, wanted).Nearest(wanted);
    Length sum;
    int pieces = 0;
    for (const Shim& shim : set.pieces) {
      const SpacerSpec& spacer = spacers[static_cast<std::size_t>(shim.spacer)];
      ASSERT_LE(shim.count, spacer.count.value);
      sum += shim.count * spacer.thickness.value;
      pieces += shim.count;
    }
    EXPECT_EQ(set.error, sum - wanted);
    EXPECT_EQ(Max(set.error, -set.error), best.off);
    EXPECT_EQ(pieces, best.pieces);
  }
}

TEST(Shims, OneTableServesEveryGap) {
  const std::vector<SpacerSpec> spacers{Spacer(L("0.3 mm"), 20), Spacer(L("1/16"), 2),
                                        Spacer(L("1/8"), 1)};
  const ShimChoice choice(spacers, L("1/4"));
  for (int i = 0; i <= 32; ++i) {
    const Length wanted = Length::Inches(i, 128);
    Best best;
    TryAll(spacers, 0, Length(), 0, wanted, best);
    EXPECT_EQ(Max(choice.Nearest(wanted).error, -choice.Nearest(wanted).error), best.off) << i;
  }
}

TEST(Shims, OfTwoSetsEquallyNearTheThinnerIsTaken) {
  const ShimChoice choice({Spacer(L("1 mm"), 1), Spacer(L("3 mm"), 1)}, L("4 mm"));
  EXPECT_EQ(choice.Nearest(L("2 mm")).error, L("-1 mm"));
}

TEST(Shims, NothingIsNearestToNoGap) {
  const ShimChoice choice({Spacer(L("1 mm"), 3)}, Length());
  EXPECT_TRUE(choice.Nearest(Length()).pieces.empty());
  EXPECT_TRUE(choice.Nearest(-L("1 mm")).pieces.empty());
}

// A hundred odd thicknesses, a thousand of each, still end; what is found is near.
TEST(Shims, AnUnreasonableBoxOfSpacersIsBounded) {
  std::vector<SpacerSpec> spacers;
  for (int i = 0; i < 100; ++i) {
    spacers.push_back(Spacer(Length::Picometers(100'000'007 + i * 7'777'777LL), 1000));
  }
  const ShimChoice choice(spacers, L("5 mm"));
  const Length error = choice.Nearest(L("4.321987654 mm")).error;
  EXPECT_LT(Max(error, -error), L("0.01 mm"));
}

}  // namespace
}  // namespace tillwright
