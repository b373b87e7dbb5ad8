// Stack-ups: against fronts laid out in coordinates, every corner of their tolerances, and
// published examples of tolerance stacks.
#include "check/stack.h"

#include <gtest/gtest.h>

#include <cmath>

#include "check/advice.h"
#include "support/files.h"
#include "support/gap_checks.h"
#include "support/random_spec.h"

namespace tillwright {
namespace {

using testing::Checked;
using testing::L;
using testing::MustCheck;
using testing::MustRead;
using testing::Random;
using Kind = Contributor::Kind;

Contributor Part(double inches, double tolerance, int halves) {
  Contributor part;
  part.halves = halves;
  part.nominal = HalfLength::Of(Length::Picometers(std::llround(inches * 25.4e9)));
  part.tolerance = Length::Picometers(std::llround(tolerance * 25.4e9));
  return part;
}

// A published example: parts of 2.000 +/- .005, 1.500 +/- .003 and .500 +/- .002 in a housing of
// 4.020 +/- .005 leave a gap of .020, at worst .005 to .035, by root-sum-square +/- .00794, .012 to
// .028 (ficientdesign.com, "tolerance stack-up analysis").
TEST(StackUps, APublishedStackComesOut) {
  StackUp stack;
  stack.contributors = {Part(4.020, .005, 2), Part(2.000, .005, -2), Part(1.500, .003, -2),
                        Part(.500, .002, -2)};
  SumUp(stack);
  EXPECT_NEAR(PlannedValue(stack.contributors).Millimeters() / 25.4, .020, 1e-12);
  EXPECT_NEAR(stack.spread.Millimeters() / 25.4, .015, 1e-12);
  EXPECT_NEAR(stack.rss_mm / 25.4, .00794, .000005);
}

// Ten parts of +/- .1: at worst +/- 1.0, by root-sum-square +/- .316 (a page of the same kind).
TEST(StackUps, TenPartsAlikeComeOut) {
  StackUp stack;
  stack.contributors.assign(10, Part(1, .1, 2));
  SumUp(stack);
  EXPECT_NEAR(stack.spread.Millimeters() / 25.4, 1.0, 1e-12);
  EXPECT_NEAR(stack.rss_mm / 25.4, .316, .0005);
}

// --- Against fronts laid out one by one ----------------------------------------------------------

std::string Inset(const std::string& keys, int drawers = 3) {
  std::string text = R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "fronts": {"style": "inset"}, "drawers": [{})";
  for (int i = 1; i < drawers; ++i) text += ", {}";
  return text + "]" + (keys.empty() ? "" : ", " + keys) + "}";
}

// Sizes and places of the fronts of a plain inset list, bottom front first, in picometers; every
// one may be off. Gaps are then read off the edges.
struct LaidOut {
  std::vector<double> sizes, centers, spacers;
  double opening = 0;

  explicit LaidOut(const Bank& bank) : opening(Pm(bank.opening_height)) {
    double edge = 0;
    for (auto space = bank.spaces.rbegin(); space != bank.spaces.rend(); ++space) {
      const Rect& r = space->front.rect;
      sizes.push_back(Pm(r.height));
      centers.push_back(Pm(r.y) + Pm(r.height) / 2);
      spacers.push_back(Pm(r.y) - edge);
      edge = Pm(r.Top());
    }
  }
  static double Pm(Length length) { return static_cast<double>(length.picometers()); }

  // Bottom gap first, the top gap last.
  std::vector<double> Gaps(Setting setting) const {
    std::vector<double> gaps;
    double edge = 0;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      const double lower =
          setting == Setting::kSpaced ? edge + spacers[i] : centers[i] - sizes[i] / 2;
      gaps.push_back(lower - edge);
      edge = lower + sizes[i];
    }
    gaps.push_back(opening - edge);
    return gaps;
  }
};

// What a contributor stands for, off by `by`.
void Disturb(LaidOut& laid, const Bank& bank, const Contributor& c, std::size_t gap, double by) {
  const auto front = [&] { return bank.spaces.size() - 1 - static_cast<std::size_t>(c.space); };
  switch (c.kind) {
    case Kind::kOpening:
      laid.opening += by;
      return;
    case Kind::kSize:
      laid.sizes[front()] += by;
      return;
    case Kind::kPlace:
      laid.centers[front()] += by;
      return;
    case Kind::kSpacer:
      laid.spacers[gap] += by;
      return;
    case Kind::kEdge:
    case Kind::kMovement:
      break;
  }
  FAIL() << "nothing of a plain stack";
}

TEST(StackUps, EveryContributorMovesItsGapByItsCoefficient) {
  for (const Setting setting : {Setting::kSpaced, Setting::kCenterd}) {
    const Checked c =
        MustCheck(Inset(setting == Setting::kSpaced ? "" : R"("setting": "centred")", 5));
    const std::vector<double> before = LaidOut(c.bank).Gaps(setting);
    int moved = 0;
    std::size_t gap = 0;
    for (const StackUp& stack : c.check.stacks) {
      if (stack.axis != Axis::kY) continue;
      std::size_t spacers = 0;  // of a top gap's list: the top spacer first
      for (const Contributor& part : stack.contributors) {
        LaidOut laid(c.bank);
        const std::size_t spacer = gap < laid.sizes.size() ? gap : laid.sizes.size() - 1 - spacers;
        if (part.kind == Kind::kSpacer) ++spacers;
        Disturb(laid, c.bank, part, spacer, 1e6);
        EXPECT_NEAR(laid.Gaps(setting)[gap] - before[gap], part.halves / 2.0 * 1e6, 1e-2)
            << SubjectOf(c.bank, stack) << ": " << ContributorName(c.bank, stack, part);
        ++moved;
      }
      // And nothing that is not on the list moves it.
      LaidOut opening(c.bank);
      opening.opening += 1e6;
      const bool top = gap + 1 == before.size();
      EXPECT_NEAR(opening.Gaps(setting)[gap] - before[gap], top ? 1e6 : 0, 1e-2);
      ++gap;
    }
    EXPECT_EQ(gap, 6U);
    EXPECT_GE(moved, 16);
  }
}

// Every corner of the tolerances: the list's own sum at each, and the least and greatest of all.
TEST(StackUps, TheWorstCaseIsTheWorstOfAllCorners) {
  for (const char* keys : {"", R"("setting": "centred")",
                           R"("tolerance": {"cut": "1/512", "place": 0, "opening": "0.7 mm"})"}) {
    const Checked c = MustCheck(Inset(keys));
    for (const StackUp& stack : c.check.stacks) {
      const std::size_t n = stack.contributors.size();
      ASSERT_LE(n, 12U);
      HalfLength least = HalfLength::Of(stack.nominal);
      HalfLength greatest = least;
      for (unsigned corner = 0; corner < (1U << n); ++corner) {
        std::vector<Contributor> list = stack.contributors;
        for (std::size_t i = 0; i < n; ++i) {
          list[i].measured = (corner >> i & 1U) != 0 ? list[i].tolerance : -list[i].tolerance;
        }
        least = std::min(least, MeasuredValue(list));
        greatest = std::max(greatest, MeasuredValue(list));
      }
      EXPECT_EQ(least, HalfLength::Of(stack.nominal) - stack.spread);
      EXPECT_EQ(greatest, HalfLength::Of(stack.nominal) + stack.spread);
    }
  }
}

// The list is the gap: its planned sum is what was solved, on any layout.
TEST(StackUps, TheListAddsUpToTheSolvedGap) {
  const auto seed = testing::TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  int stacks = 0;
  for (std::uint32_t i = 0; i < 200; ++i) {
    Spec spec =
        MustRead(testing::RandomSpec(static_cast<std::uint32_t>(seed) + i, Unit::kInch).Text());
    if (!SolveBank(spec).ok()) continue;
    for (const Setting setting : {Setting::kSpaced, Setting::kCenterd}) {
      spec.setting = Entry<Setting>(setting);
      const Bank bank = SolveBank(spec).value();
      GapCheck check;
      ASSERT_TRUE(ReckonGaps(spec, bank, RealOpening(spec, bank), check));
      ASSERT_EQ(check.stacks.size(), bank.gaps.size() + bank.overlaps.size());
      for (const StackUp& stack : check.stacks) {
        ++stacks;
        EXPECT_EQ(PlannedValue(stack.contributors), HalfLength::Of(stack.nominal))
            << SubjectOf(bank, stack);
      }
    }
  }
  EXPECT_GT(stacks, 1000);
}

// --- Worked by hand ------------------------------------------------------------------------------

struct Worked {
  const char* keys;
  const char* subject;
  double spread, squares;  // in 64ths of an inch, and those squared
};

// Tolerances 1/64 (cut), 1/64 (place), 1/32 (opening) by default.
TEST(StackUps, SpreadsAreAsWorkedByHand) {
  const std::string centered = R"("setting": "centred")";
  for (const Worked& row : {
           Worked{"", "opening.bottom to D3", 0, 0},
           Worked{"", "D3 to D2", 0, 0},
           Worked{"", "D1 to opening.top", 3 + 2, 3 + 4},  // three fronts and the opening
           Worked{"", "opening.left to D2", .5 + 1, .25 + 1},
           Worked{"", "D2 to opening.right", .5 + 1 + 2, .25 + 1 + 4},
           Worked{centered.c_str(), "opening.bottom to D3", .5 + 1, .25 + 1},
           Worked{centered.c_str(), "D3 to D2", 2 * .5 + 2 * 1, 2 * .25 + 2 * 1},
           Worked{centered.c_str(), "D1 to opening.top", .5 + 1 + 2, .25 + 1 + 4},
       }) {
    const Checked c = MustCheck(Inset(row.keys));
    const StackUp& stack = c.Stack(row.subject);
    EXPECT_DOUBLE_EQ(stack.spread.Millimeters() / 25.4 * 64, row.spread) << row.subject;
    EXPECT_NEAR(std::pow(stack.rss_mm / 25.4 * 64, 2), row.squares, 1e-9) << row.subject;
  }
}

// Overlay fronts: the bottom edge is set, the top one takes up what the fronts are off by; a member
// is a fixed edge for inset fronts, and the stack over it has an opening of its own.
TEST(StackUps, OverlapsAndMembersAreEdgesToo) {
  const Checked overlay = MustCheck(
      R"({"opening": {"width": 16, "height": 24, "depth": 20}, "drawers": [{}, {}, {}, {}]})");
  EXPECT_EQ(overlay.Stack("D4 bottom").spread, HalfLength{});
  EXPECT_EQ(overlay.Stack("D1 top").spread, HalfLength::Of(L("6/64")));
  EXPECT_EQ(overlay.Stack("D1 right").spread.Below(), L("7/128"));
  const Checked members = MustCheck(Inset(R"("divider": "3/4")"));
  EXPECT_EQ(members.Stack("H1 to D1").spread, HalfLength{});
  EXPECT_EQ(members.Stack("D2 to H1").spread, HalfLength::Of(L("3/64")));
  EXPECT_EQ(members.Stack("D1 to opening.top").spread, HalfLength::Of(L("3/64")));
}

// A front over an open space stands, through it, on what is below; one over columns on the longer.
TEST(StackUps, StacksGoOnThroughOpenSpacesAndUnderColumns) {
  const Checked open = MustCheck(R"({"opening": {"width": 16, "height": 30, "depth": 20},
      "layout": {"rows": [{"drawer": {}}, {"open": {}}, {"drawer": {}}]}})");
  EXPECT_EQ(open.Stack("D1 top").spread, HalfLength::Of(L("4/64")));
  const Checked columns = MustCheck(R"({"opening": {"width": 32, "height": 30, "depth": 20},
      "layout": {"rows": [{"drawer": {}}, {"columns": [{"drawer": {}},
                 {"rows": [{"drawer": {}}, {"drawer": {}}]}]}]}})");
  EXPECT_EQ(columns.Stack("D1 top").spread, HalfLength::Of(L("5/64")));
  EXPECT_EQ(columns.Stack("D2 to D1").spread, HalfLength{});
}

// A front over very many columns of very many fronts each: refused, not remembered.
TEST(StackUps, MoreThanCanBeKeptIsRefused) {
  std::string text = R"({"opening": {"width": "90 m", "height": "90 m", "depth": 20},
      "setting": "spaced", "layout": {"rows": [{"columns": [)";
  for (int i = 0; i < 1500; ++i) text += std::string(i == 0 ? "" : ", ") + R"({"blank": {}})";
  text += "]}";
  for (int i = 0; i < 1500; ++i) text += R"(, {"blank": {}})";
  const testing::Solved s = testing::MustSolve(text + "]}}");
  const Outcome<GapCheck> check = CheckGaps(s.spec, s.bank);
  ASSERT_FALSE(check.ok());
  EXPECT_EQ(check.diagnostics()[0].code, DiagnosticCode::kTooBig);
}

// --- Seasons -------------------------------------------------------------------------------------

// One flat-sawn white fir front of 232 mm, as in the Wood Handbook's example: from 8 to 11 % it
// gains 1.705 mm. Held in the middle half of that goes each way; held at the bottom all goes up.
TEST(Seasons, AFrontMovesAsTheHandbooksBoardDoes) {
  const auto fir = [](const std::string& more) {
    return MustCheck(R"({"units": "mm", "opening": {"width": 400, "height": 238, "depth": 520},
        "season": {"made": 8, "dry": 8, "humid": 11}, "drawers": [{}],
        "fronts": {"style": "inset", "material": "white fir")" +
                     more + "}}");
  };
  const Checked middle = fir("");
  ASSERT_EQ(middle.bank.spaces[0].front.rect.height, L("232 mm"));
  EXPECT_NEAR(3 - middle.Stack("D1 to opening.top").humid_mm, 1.705 / 2, .0003);
  EXPECT_NEAR(3 - middle.Stack("opening.bottom to D1").humid_mm, 1.705 / 2, .0003);
  EXPECT_NEAR(middle.Stack("D1 to opening.top").dry_mm, 3, 1e-9);
  EXPECT_NEAR(middle.Stack("opening.left to D1").humid_mm, 3, 1e-9);  // along the grain
  // Made today, 0.8 mm are to be left in the humid season.
  EXPECT_NEAR(middle.Stack("D1 to opening.top").least_to_leave_mm, .8 + 1.705 / 2, .0003);
  const Checked bottom = fir(R"(, "held": "bottom")");
  EXPECT_NEAR(3 - bottom.Stack("D1 to opening.top").humid_mm, 1.705, .0005);
  EXPECT_NEAR(bottom.Stack("opening.bottom to D1").humid_mm, 3, 1e-9);
  const Checked upright = fir(R"(, "grain": "vertical", "cut": "quarter")");
  EXPECT_NEAR(upright.Stack("D1 to opening.top").humid_mm, 3, 1e-9);
  EXPECT_NEAR(3 - upright.Stack("D1 to opening.right").humid_mm, 394 * .00112 * 3 / 2, 1e-6);
}

TEST(Seasons, PanelsStayAndOverlapsGrow) {
  const Checked panel = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "fronts": {"material": "cherry plywood"}, "season": {}, "drawers": [{}, {}]})");
  for (const StackUp& stack : panel.check.stacks) {
    EXPECT_EQ(stack.humid_mm, ToMillimeters(stack.nominal));
  }
  const Checked solid = MustCheck(R"({"opening": {"width": 16, "height": 24, "depth": 20},
      "fronts": {"material": "cherry"}, "season": {}, "drawers": [{}, {}]})");
  const StackUp& top = solid.Stack("D1 top");
  EXPECT_GT(top.humid_mm, ToMillimeters(top.nominal));
  EXPECT_LT(top.dry_mm, ToMillimeters(top.nominal));
  EXPECT_LT(solid.Stack("D2 to D1").humid_mm, ToMillimeters(L("1/8")));
}

// --- As measured ---------------------------------------------------------------------------------

TEST(MeasuredGaps, FollowTheSameCoefficients) {
  const std::string measured =
      R"("measured": {"height": {"left": "24 1/16", "right": 24}, "width": [{"at": 0, "size": "15 31/32"}],
         "fronts": {"D2": {"height": "8", "width": "15 3/4"}}})";
  const Checked spaced = MustCheck(Inset(measured));
  const Length off = L("8") - spaced.bank.spaces[1].front.rect.height;
  EXPECT_EQ(spaced.Stack("D3 to D2").measured, HalfLength::Of(L("1/8")));
  // The least height over the top front, nearest the right, is that there.
  const Length top = spaced.Stack("D1 to opening.top").measured.Below();
  const Rect& front = spaced.bank.spaces[0].front.rect;
  const Length least = L("24 1/16") - PartBelow(front.Right() * 1, 16 * 16);
  EXPECT_NEAR(ToMillimeters(top), ToMillimeters(L("1/8") + least - L("24") - off), 1e-6);
  EXPECT_EQ(spaced.Stack("D1 to opening.right").measured, HalfLength::Of(L("3/32")));
  EXPECT_EQ(spaced.Stack("opening.left to D2").measured, HalfLength::Of(L("1/8")));
  const Checked centered = MustCheck(Inset(measured + R"(, "setting": "centred")"));
  EXPECT_EQ(centered.Stack("D3 to D2").measured.halves,
            HalfLength::Of(L("1/8")).halves - off.picometers());
}

}  // namespace
}  // namespace tillwright
