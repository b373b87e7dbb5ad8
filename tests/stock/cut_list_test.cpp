// The cut list: every part once, rough sizes, bands, order.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>
#include <tuple>

#include "support/files.h"
#include "support/random_spec.h"
#include "support/specs.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

using testing::L;
using testing::MustSolve;
using testing::Solved;

std::vector<CutLine> ListOf(const Solved& solved) { return CutList(solved.spec, solved.bank); }

const CutLine& LineOf(const std::vector<CutLine>& lines, std::string_view label) {
  for (const CutLine& line : lines) {
    if (line.label == label) return line;
  }
  ADD_FAILURE() << "no line \"" << label << "\"";
  return lines.front();
}

std::string Spec(const std::string& rest) {
  return R"({"case": {"width": "20", "height": "24", "depth": "22", "material": "maple plywood"},
             "fronts": {"material": "black cherry"},
             "box": {"side": {"material": "soft maple"}, "bottom": {"material": "birch plywood"}},
             "drawers": [{}, {}])" +
         rest + "}";
}

template <class F>
void ForEachSolved(F check) {
  for (const auto& path : testing::CuratedSpecs()) {
    SCOPED_TRACE(path);
    check(MustSolve(testing::ReadFile(path)));
  }
  int solved = 0;
  for (const std::string& text : testing::RandomSpecs(testing::TestSeed(), 100)) {
    const Outcome<tillwright::Spec> spec = ReadSpec(text);
    if (!spec.ok()) continue;
    const Outcome<Bank> bank = SolveBank(spec.value());
    if (!bank.ok()) continue;
    ++solved;
    SCOPED_TRACE(text);
    check(Solved{spec.value(), bank.value()});
  }
  EXPECT_GT(solved, 30);
}

TEST(CutList, HoldsEveryPartOnceWithItsCount) {
  ForEachSolved([](const Solved& solved) {
    std::multiset<std::size_t> seen;
    for (const CutLine& line : ListOf(solved)) {
      int count = 0;
      for (const std::size_t index : line.kind.parts) {
        const Part& part = solved.bank.parts.at(index);
        seen.insert(index);
        count += part.count;
        EXPECT_EQ(std::tuple(part.length, part.width, part.thickness, part.material, part.grain),
                  std::tuple(line.length, line.width, line.thickness, line.material, line.grain));
      }
      EXPECT_EQ(count, line.kind.count);
      EXPECT_LE(line.kind.mirrored, line.kind.count);
    }
    EXPECT_EQ(seen.size(), solved.bank.parts.size());
    EXPECT_EQ(std::set<std::size_t>(seen.begin(), seen.end()).size(), seen.size());
  });
}

TEST(CutList, LabelsTellLinesApart) {
  ForEachSolved([](const Solved& solved) {
    std::set<std::string> labels;
    for (const CutLine& line : ListOf(solved)) {
      EXPECT_TRUE(labels.insert(line.label).second) << line.label;
    }
  });
}

TEST(CutList, StandsInTheOrderOfTheSaw) {
  ForEachSolved([](const Solved& solved) {
    const std::vector<CutLine> lines = ListOf(solved);
    for (std::size_t i = 1; i < lines.size(); ++i) {
      const CutLine& a = lines[i - 1];
      const CutLine& b = lines[i];
      ASSERT_LE(a.material, b.material);
      if (a.material != b.material) continue;
      ASSERT_GE(a.thickness, b.thickness);
      if (a.thickness != b.thickness) continue;
      ASSERT_GE(std::tuple(a.width, a.length), std::tuple(b.width, b.length));
    }
  });
}

// Solid wood gets 1 in along and 1/4 in across the grain; sheets none.
TEST(CutList, RoughSizesByHand) {
  const std::vector<CutLine> lines = ListOf(MustSolve(Spec("")));
  const CutLine& front = LineOf(lines, "front D1, D2");
  EXPECT_TRUE(front.solid);
  EXPECT_EQ(front.rough_length, front.length + L("1"));
  EXPECT_EQ(front.rough_width, front.width + L("1/4"));
  const CutLine& bottom = LineOf(lines, "case bottom");
  EXPECT_FALSE(bottom.solid);
  EXPECT_EQ(bottom.rough_length, bottom.length);
  EXPECT_EQ(bottom.rough_width, bottom.width);
  const std::vector<CutLine> typed =
      ListOf(MustSolve(Spec(R"(, "allowance": {"length": "2", "width": 0})")));
  EXPECT_EQ(LineOf(typed, "front D1, D2").rough_length, front.length + L("2"));
  EXPECT_EQ(LineOf(typed, "front D1, D2").rough_width, front.width);
}

TEST(CutList, MetricAllowances) {
  const Solved solved = MustSolve(R"({"units": "mm", "fronts": {"material": "teak"},
    "opening": {"width": 400, "height": 300, "depth": 500}, "drawers": [{}]})");
  const std::vector<CutLine> lines = ListOf(solved);
  EXPECT_EQ(LineOf(lines, "front D1").rough_length - LineOf(lines, "front D1").length, L("25 mm"));
  EXPECT_EQ(LineOf(lines, "front D1").rough_width - LineOf(lines, "front D1").width, L("6 mm"));
}

// Bands of 1/16 in: the front edges of the case's sheets; solid fronts get none.
TEST(CutList, BandsOnSheetsOnly) {
  const std::vector<CutLine> none = ListOf(MustSolve(Spec("")));
  for (const CutLine& line : none) EXPECT_EQ(line.banding.where, "");
  const std::vector<CutLine> lines =
      ListOf(MustSolve(Spec(R"(, "edge_band": {"thickness": "1/16", "boxes": true})")));
  const CutLine& side = LineOf(lines, "case side");
  EXPECT_EQ(side.banding.where, "front edge");
  EXPECT_EQ(side.rough_width, side.width - L("1/16"));
  EXPECT_EQ(side.rough_length, side.length);
  EXPECT_EQ(LineOf(lines, "front D1, D2").banding.where, "");
  EXPECT_EQ(LineOf(lines, "box side D1, D2").banding.where, "") << "soft maple is solid";
  EXPECT_EQ(LineOf(lines, "case back").banding.where, "");
}

TEST(CutList, BandsAllRoundSheetFronts) {
  const Solved solved = MustSolve(R"({"opening": {"width": "20", "height": "12", "depth": "22"},
    "fronts": {"material": "birch plywood"}, "edge_band": {"thickness": "1/32"}, "drawers": [{}]})");
  const CutLine line = LineOf(ListOf(solved), "front D1");
  EXPECT_EQ(line.banding.where, "all edges");
  EXPECT_EQ(line.rough_width, line.width - L("1/16"));
  EXPECT_EQ(line.rough_length, line.length - L("1/16"));
}

TEST(CutList, LeftAndRightAreToldApart) {
  const std::vector<CutLine> lines = ListOf(MustSolve(Spec("")));
  EXPECT_EQ(LineOf(lines, "case side").kind.count, 2);
  EXPECT_EQ(LineOf(lines, "case side").kind.mirrored, 1) << "the back's rabbet is at the rear";
  EXPECT_EQ(LineOf(lines, "box side D1, D2").kind.mirrored, 0);
}

}  // namespace
}  // namespace tillwright
