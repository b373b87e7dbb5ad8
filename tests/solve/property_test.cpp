// What must hold of every bank, over random specs. A failure names the seed.
#include <gtest/gtest.h>

#include <map>

#include "support/random_spec.h"
#include "tillwright/check.h"

namespace tillwright {
namespace {

using testing::L;
using testing::MustRead;
using testing::RandomSpec;

constexpr std::uint32_t kFirstSeed = 5000;
constexpr std::uint32_t kSeeds = 600;

// Runs `check` on every random spec that solves; at least half must.
template <class F>
void ForEachBank(F check) {
  std::uint32_t solved = 0;
  for (std::uint32_t seed = kFirstSeed; seed < kFirstSeed + kSeeds; ++seed) {
    const Spec spec = MustRead(RandomSpec(seed, Unit::kInch).Text());
    const Outcome<Bank> bank = SolveBank(spec);
    if (!bank.ok()) continue;
    ++solved;
    SCOPED_TRACE("seed " + std::to_string(seed));
    check(spec, bank.value());
    if (::testing::Test::HasFailure()) return;
  }
  EXPECT_GT(solved, kSeeds / 2);
}

bool Meet(const Rect& a, const Rect& b) {
  return a.x < b.Right() && b.x < a.Right() && a.y < b.Top() && b.y < a.Top();
}

TEST(BankProperty, FrontsNeverOverlapAndStayInTheirRegion) {
  ForEachBank([](const Spec&, const Bank& bank) {
    for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
      for (std::size_t j = i + 1; j < bank.spaces.size(); ++j) {
        EXPECT_FALSE(Meet(bank.spaces[i].region, bank.spaces[j].region)) << i << " " << j;
      }
    }
  });
}

// Walking up through one column of fronts, gaps and members, everything adds up to the opening with
// what covers its edges: each gap begins where one front ends and ends where the next begins.
TEST(BankProperty, FrontsAndGapsCloseExactly) {
  ForEachBank([](const Spec&, const Bank& bank) {
    for (const Gap& gap : bank.gaps) {
      const bool up = gap.axis == Axis::kY;
      const auto low = [&](const Rect& r) { return up ? r.y : r.x; };
      const auto high = [&](const Rect& r) { return up ? r.Top() : r.Right(); };
      const auto rect = [&](const GapEnd& end) {
        return end.kind == GapEnd::Kind::kSpace
                   ? bank.spaces[static_cast<std::size_t>(end.index)].front.rect
                   : bank.dividers[static_cast<std::size_t>(end.index)].rect;
      };
      const Length from = gap.from.kind == GapEnd::Kind::kOpening ? Length() : high(rect(gap.from));
      const Length to = gap.to.kind == GapEnd::Kind::kOpening
                            ? (up ? bank.opening_height : bank.opening_width)
                            : low(rect(gap.to));
      EXPECT_EQ(from + gap.size, to);
      EXPECT_EQ(gap.at, from);
    }
    for (const Overlap& overlap : bank.overlaps) {
      const Rect& r = bank.spaces[static_cast<std::size_t>(overlap.space)].front.rect;
      switch (overlap.edge) {
        case Edge::kTop:
          EXPECT_EQ(bank.opening_height + overlap.size, r.Top());
          break;
        case Edge::kBottom:
          EXPECT_EQ(-overlap.size, r.y);
          break;
        case Edge::kLeft:
          EXPECT_EQ(-overlap.size, r.x);
          break;
        case Edge::kRight:
          EXPECT_EQ(bank.opening_width + overlap.size, r.Right());
          break;
      }
    }
  });
}

// Every front but for remainders meets its region: the whole face of the bank is fronts, gaps,
// members and remainders shorter than an increment.
TEST(BankProperty, SizesAreWholeIncrements) {
  ForEachBank([](const Spec&, const Bank& bank) {
    for (const Space& space : bank.spaces) {
      EXPECT_EQ(FloorTo(space.region.width, bank.round), space.region.width);
      EXPECT_EQ(FloorTo(space.region.height, bank.round), space.region.height);
      if (!space.HasBox()) continue;
      EXPECT_EQ(FloorTo(space.box.end_length, bank.round), space.box.end_length);
      EXPECT_EQ(FloorTo(space.box.height, bank.round), space.box.height);
    }
  });
}

TEST(BankProperty, BoxesLieWithinTheirCells) {
  ForEachBank([](const Spec&, const Bank& bank) {
    for (const Space& space : bank.spaces) {
      if (!space.HasBox()) continue;
      const Rect& cell = space.cell;
      const Box& box = space.box;
      EXPECT_GE(box.y, cell.y);
      EXPECT_LE(box.y + box.height, cell.Top());
      if (space.slide.type == SlideType::kUndermount) continue;  // by its inside width
      EXPECT_GE(box.x, cell.x);
      EXPECT_LE(box.x + box.width, cell.Right());
      const Length spare = cell.width - box.width - 2 * space.slide.clearance;
      EXPECT_GE(spare, Length());
      EXPECT_LT(spare, bank.round);
    }
  });
}

TEST(BankProperty, CellsNeverOverlapOneAnotherOrAMember) {
  ForEachBank([](const Spec&, const Bank& bank) {
    for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
      for (std::size_t j = i + 1; j < bank.spaces.size(); ++j) {
        EXPECT_FALSE(Meet(bank.spaces[i].cell, bank.spaces[j].cell));
      }
      for (const Divider& divider : bank.dividers) {
        EXPECT_FALSE(Meet(bank.spaces[i].cell, divider.rect));
      }
    }
  });
}

TEST(BankProperty, InchesAndMillimetersOfTheSameSpecAgree) {
  std::uint32_t solved = 0;
  for (std::uint32_t seed = kFirstSeed; seed < kFirstSeed + kSeeds; ++seed) {
    const Outcome<Bank> inch = SolveBank(MustRead(RandomSpec(seed, Unit::kInch).Text()));
    const Outcome<Bank> metric = SolveBank(MustRead(RandomSpec(seed, Unit::kMillimeter).Text()));
    ASSERT_EQ(inch.ok(), metric.ok()) << "seed " << seed;
    if (!inch.ok()) continue;
    ++solved;
    Bank a = inch.value();
    Bank b = metric.value();
    b.units = a.units;
    ASSERT_EQ(ResultJson(a, {}), ResultJson(b, {})) << "seed " << seed;
  }
  EXPECT_GT(solved, kSeeds / 2);
}

TEST(BankProperty, TracingChangesNothing) {
  for (std::uint32_t seed = kFirstSeed; seed < kFirstSeed + 200; ++seed) {
    const Spec spec = MustRead(RandomSpec(seed, Unit::kInch).Text());
    Trace trace;
    const Outcome<Bank> plain = SolveBank(spec);
    const Outcome<Bank> traced = SolveBank(spec, trace);
    ASSERT_EQ(plain.ok(), traced.ok()) << "seed " << seed;
    if (!plain.ok()) continue;
    ASSERT_EQ(ResultJson(plain.value(), {}), ResultJson(traced.value(), {})) << "seed " << seed;
  }
}

// Parts add up to the box they make: across, ends and what the joint leaves of the sides; front to
// back, sides and laps; upright, sides and an applied bottom.
TEST(BankProperty, BoxPartsAddUpToTheBox) {
  ForEachBank([](const Spec&, const Bank& bank) {
    for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
      const Space& space = bank.spaces[i];
      if (!space.HasBox()) continue;
      std::map<PartRole, const Part*> parts;
      for (const Part& part : bank.parts) {
        if (part.space == static_cast<int>(i)) parts[part.role] = &part;
      }
      const Box& box = space.box;
      const BoxBuild& b = box.build;
      const bool corners = b.joint == CornerJoint::kButt || b.joint == CornerJoint::kRabbet ||
                           b.joint == CornerJoint::kDado;
      const Length beside = corners ? 2 * (b.side - b.joint_depth) : Length();
      EXPECT_EQ(parts.at(PartRole::kBoxFront)->length + beside, box.width);
      EXPECT_EQ(parts.at(PartRole::kBoxSide)->length + 2 * b.lap, box.depth);
      const Length applied = b.fit == BottomFit::kApplied ? b.bottom : Length();
      EXPECT_EQ(parts.at(PartRole::kBoxSide)->width + applied, box.height);
      EXPECT_EQ(box.inside_width + 2 * b.side, box.width);
      EXPECT_EQ(box.inside_depth + 2 * b.end + b.back_setback, box.depth);
    }
  });
}

}  // namespace
}  // namespace tillwright
