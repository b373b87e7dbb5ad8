// Fronts that are matched: which stand in one run, and what the piece they are cut from measures.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "stock/matched.h"

namespace tillwright {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using testing::L;
using testing::Matched;
using testing::MustSolve;
using testing::Row;
using testing::RunsOf;
using ::testing::SizeIs;
using testing::Solved;

// The runs of a spec by their fronts: "D1–D3".
std::vector<std::string> FrontsIn(const Solved& solved) {
  std::vector<std::string> fronts;
  for (const FrontRun& run : RunsOf(solved)) fronts.push_back(FrontsOf(solved.bank, run));
  return fronts;
}

TEST(FrontRuns, AreTheFrontsOfARowOrOfAStack) {
  EXPECT_THAT(FrontsIn(Matched("client-dresser.json", FrontMatch::kRow)), ElementsAre("D1–D3"));
  EXPECT_THAT(FrontsIn(Matched("leather-cabinet.json", FrontMatch::kStack)), ElementsAre("D1–D3"));
  EXPECT_THAT(FrontsIn(Matched("leather-cabinet.json", FrontMatch::kRow)), IsEmpty());
  EXPECT_THAT(FrontsIn(Matched("client-dresser.json", FrontMatch::kNone)), IsEmpty());
}

// Four columns of six, inset between members.
TEST(FrontRuns, RunOnAcrossPartitionsAndDividers) {
  EXPECT_THAT(FrontsIn(Matched("type-drawer-bank.json", FrontMatch::kRow)),
              ElementsAre("D1, D7, D13, D19", "D2, D8, D14, D20", "D3, D9, D15, D21",
                          "D4, D10, D16, D22", "D5, D11, D17, D23", "D6, D12, D18, D24"));
  EXPECT_THAT(FrontsIn(Matched("type-drawer-bank.json", FrontMatch::kStack)),
              ElementsAre("D1–D6", "D7–D12", "D13–D18", "D19–D24"));
}

TEST(FrontRuns, EndAtOpenSpacesAndWhereAFrontDiffers) {
  const auto row = [](const std::string& leaves) {
    return FrontsIn(MustSolve(Row(R"("match": "row")", leaves)));
  };
  EXPECT_THAT(row(R"({"drawer": {}}, {"blank": {}}, {"drawer": {}})"), ElementsAre("D1, B1, D2"));
  EXPECT_THAT(
      row(R"({"drawer": {}}, {"drawer": {}}, {"open": {}}, {"drawer": {}}, {"drawer": {}})"),
      ElementsAre("D1, D2", "D3, D4"));
  EXPECT_THAT(row(R"({"drawer": {}}, {"drawer": {"front": {"thickness": "7/8"}}}, {"drawer": {}})"),
              IsEmpty());
  EXPECT_THAT(row(R"({"drawer": {}}, {"drawer": {}}, {"drawer": {"front": {"grain": "none"}}})"),
              ElementsAre("D1, D2"));
  EXPECT_THAT(row(R"({"drawer": {}}, {"drawer": {}},
                     {"drawer": {"front": {"material": "walnut plywood"}}})"),
              ElementsAre("D1, D2"));
}

TEST(FrontRuns, NeedAGrain) {
  const Diagnostics diagnostics =
      testing::MustFail(Row(R"("match": "row", "grain": "none")", R"({"drawer": {}})"));
  ASSERT_THAT(diagnostics, SizeIs(1));
  EXPECT_EQ(diagnostics[0].code, DiagnosticCode::kNotApplicable);
}

bool AreAlike(const Front& a, const Front& b) {
  return a.grain == b.grain && a.grain != Grain::kNone && a.material == b.material &&
         a.thickness == b.thickness;
}

// Whether b is the next front after a in a row, or in a stack, by their places alone.
bool IsNext(const Bank& bank, const Space& a, const Space& b, bool row) {
  const Rect& p = a.front.rect;
  const Rect& q = b.front.rect;
  const bool line = row ? p.y == q.y && p.height == q.height && q.x >= p.Right()
                        : p.x == q.x && p.width == q.width && p.y >= q.Top();
  if (!line || !AreAlike(a.front, b.front)) return false;
  const Rect between = row ? Rect{p.Right(), p.y, q.x - p.Right(), p.height}
                           : Rect{p.x, q.Top(), p.width, p.y - q.Top()};
  return std::ranges::none_of(bank.spaces, [&](const Space& space) {
    const Rect& r = space.HasFront() ? space.front.rect : space.region;
    return r.x < between.Right() && between.x < r.Right() && r.y < between.Top() &&
           between.y < r.Top();
  });
}

using Pairs = std::set<std::pair<int, int>>;

Pairs PairsByPlace(const Bank& bank, bool row) {
  Pairs pairs;
  for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
    for (std::size_t j = 0; j < bank.spaces.size(); ++j) {
      const Space& a = bank.spaces[i];
      const Space& b = bank.spaces[j];
      if (i == j || !a.HasFront() || !b.HasFront() || !IsNext(bank, a, b, row)) continue;
      pairs.emplace(static_cast<int>(i), static_cast<int>(j));
    }
  }
  return pairs;
}

// Exact sizes that do not close may put fronts into one another.
bool IsClosed(const Bank& bank) {
  return std::ranges::none_of(bank.notes, [](const SolveNote& note) {
    return note.kind == SolveNote::Kind::kDoesNotClose;
  });
}

// Banks drawn at random: every two neighbors that a maker would match, and no others.
TEST(FrontRuns, OfRandomBanksHoldAllNeighborsThatMatch) {
  std::size_t found = 0;
  for (const std::string& text : testing::RandomSpecs(testing::TestSeed(), 150)) {
    const Outcome<Spec> spec = ReadSpec(text);
    if (!spec.ok()) continue;
    Outcome<Bank> solved = SolveBank(spec.value());
    if (!solved.ok() || !IsClosed(solved.value())) continue;
    SCOPED_TRACE(text);
    for (const FrontMatch match : {FrontMatch::kRow, FrontMatch::kStack}) {
      Bank& bank = solved.value();
      bank.match = match;
      Pairs pairs;
      for (const FrontRun& run : RunsOf({spec.value(), bank})) {
        ASSERT_GE(run.parts.size(), 2U);
        for (std::size_t i = 1; i < run.parts.size(); ++i) {
          pairs.emplace(bank.parts[run.parts[i - 1]].space, bank.parts[run.parts[i]].space);
        }
      }
      EXPECT_EQ(pairs, PairsByPlace(bank, match == FrontMatch::kRow));
      found += pairs.size();
    }
  }
  EXPECT_GT(found, 50U);
}

// Solid wood: three fronts of 13 7/8 x 5, two kerfs of 1/8, the allowance of 1 by 1/4 in once.
TEST(FrontRuns, SizesOfASolidPieceByHand) {
  const std::vector<FrontRun> runs = RunsOf(Matched("client-dresser.json", FrontMatch::kRow));
  ASSERT_THAT(runs, SizeIs(1));
  EXPECT_EQ(runs[0].label, "R1");
  EXPECT_FALSE(runs[0].across);
  EXPECT_EQ(runs[0].length, L("42 7/8"));
  EXPECT_EQ(runs[0].width, L("5 1/4"));
  // D4 and D5 over one another: 6 1/32 + 7 9/32 + 1/8 + 1/4; 41 7/8 + 1 long.
  const std::vector<FrontRun> stack = RunsOf(Matched("client-dresser.json", FrontMatch::kStack));
  ASSERT_THAT(stack, SizeIs(1));
  EXPECT_TRUE(stack[0].across);
  EXPECT_EQ(stack[0].length, L("42 7/8"));
  EXPECT_EQ(stack[0].width, L("13 11/16"));
}

// Plywood, the grain upright: 157 + 253 + 317 and two kerfs of 3 mm, 597 wide.
TEST(FrontRuns, SizesOfASheetPieceByHand) {
  const std::vector<FrontRun> runs = RunsOf(Matched("leather-cabinet.json", FrontMatch::kStack));
  ASSERT_THAT(runs, SizeIs(1));
  EXPECT_FALSE(runs[0].across);
  EXPECT_EQ(runs[0].length, Length::Millimeters(733));
  EXPECT_EQ(runs[0].width, Length::Millimeters(597));
}

}  // namespace
}  // namespace tillwright
