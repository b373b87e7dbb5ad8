// The gap that overlay fronts keep to a worktop that closes the case.
#include <gtest/gtest.h>

#include <algorithm>

#include "support/specs.h"

namespace tillwright {
namespace {

using testing::L;
using testing::MustSolve;
using testing::Random;
using testing::Solved;

std::string Case(const std::string& keys, const std::string& rest) {
  return R"({"case": {"width": 18, "height": 30, "depth": 22)" + keys + "}, " + rest + "}";
}

// The gaps to the worktop, as "D1 1/8 in".
std::vector<std::string> ToWorktop(const Bank& bank) {
  std::vector<std::string> found;
  for (const Gap& gap : bank.gaps) {
    if (ToText(bank, gap.to) != "worktop") continue;
    EXPECT_EQ(gap.axis, Axis::kY);
    found.push_back(ToText(bank, gap.from) + " " + FormatWithUnit(gap.size, bank.units));
  }
  return found;
}

struct Row {
  const char* name;
  std::string spec;
  std::vector<std::string> gaps;
};
void PrintTo(const Row& row, std::ostream* out) { *out << row.name; }

class WorktopGap : public ::testing::TestWithParam<Row> {};
TEST_P(WorktopGap, IsListed) {
  EXPECT_EQ(ToWorktop(MustSolve(GetParam().spec).bank), GetParam().gaps);
}

const char* kNone = R"(, "top": "none")";
const char* kTwo = R"("drawers": [{}, {}])";
INSTANTIATE_TEST_SUITE_P(
    Rows, WorktopGap,
    ::testing::Values(
        Row{"Default", Case(kNone, kTwo), {"D1 1/8 in"}},
        Row{"ByTheGapOfTheFronts",
            Case(kNone, R"("fronts": {"gap": "3/32"}, "drawers": [{}, {}])"),
            {"D1 3/32 in"}},
        // The gap of a node is between its own children.
        Row{"NotByTheGapOfANode",
            Case(kNone, R"("gap": "3/32", "drawers": [{}, {}])"),
            {"D1 1/8 in"}},
        Row{"OneOverlay",
            Case(kNone, R"("fronts": {"overlay": "1/2"}, "drawers": [{}, {}])"),
            {"D1 1/8 in"}},
        Row{"Typed",
            Case(kNone, R"("fronts": {"overlay": {"top": "-1/4"}}, "drawers": [{}, {}])"),
            {"D1 1/4 in"}},
        Row{"TypedZero",
            Case(kNone, R"("fronts": {"overlay": {"top": 0}}, "drawers": [{}, {}])"),
            {"D1 0 in"}},
        Row{"Flush",
            Case(kNone, R"("fronts": {"overlay": "flush"}, "drawers": [{}, {}])"),
            {"D1 0 in"}},
        Row{"Reveal",
            Case(kNone, R"("fronts": {"overlay": {"reveal": "3/16"}}, "drawers": [{}, {}])"),
            {"D1 3/16 in"}},
        Row{"EveryFrontUnderIt",
            Case(kNone, R"("layout": {"rows": [{"columns": [{"drawer": {}}, {"open": {}},
              {"blank": {}}]}, {"drawer": {}}]})"),
            {"D1 1/8 in", "B1 1/8 in"}},
        // 29 1/8 + 5/8 = 29 3/4, and 1/8 with the last gap: 29 7/8 = 755.65 + 3.175 mm, 23 pitches
        // of 32 mm are 736; 22.825 left over, half of it at the top.
        Row{"OnAGrid",
            Case(kNone, R"("grid": "32 mm", "drawers": [{}, {}])"),
            {"D1 \u2248 37/64 in"}},
        Row{"NotWithATop", Case("", kTwo), {}},
        Row{"NotUnderATopRail", Case(R"(, "top": "none", "face_frame": {})", kTwo), {}}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(WorktopGap, TakesThePlaceOfAnOverlay) {
  const Bank bank = MustSolve(Case(kNone, kTwo)).bank;
  EXPECT_TRUE(
      std::ranges::none_of(bank.overlaps, [](const Overlap& o) { return o.edge == Edge::kTop; }));
  EXPECT_EQ(bank.overlaps.size(), 5U);  // one at the bottom, two at each side
}

TEST(WorktopGap, InsetFrontsKeepTheirEdge) {
  const Bank bank = MustSolve(Case(kNone, R"("fronts": {"style": "inset"}, "drawers": [{}])")).bank;
  EXPECT_TRUE(ToWorktop(bank).empty());
  EXPECT_TRUE(std::ranges::any_of(bank.gaps, [&](const Gap& gap) {
    return ToText(bank, gap.to) == "opening.top" && gap.size == L("1/8");
  }));
}

// The fronts, the gaps between them and the one under the worktop fill the height.
TEST(WorktopGap, ClosesTheHeight) {
  const std::uint32_t seed = std::random_device{}();
  Random random(seed);
  for (int i = 0; i < 100; ++i) {
    const int n = random.Int(1, 7);
    std::string list = "{}";
    for (int k = 1; k < n; ++k) list += ", {}";
    const std::string gap = std::to_string(random.Int(1, 12)) + "/64";
    const Bank bank =
        MustSolve(Case(kNone, R"("fronts": {"gap": ")" + gap + R"("}, "drawers": [)" + list + "]"))
            .bank;
    Length sum;
    for (const Space& space : bank.spaces) sum += space.front.rect.height;
    for (const Gap& g : bank.gaps) sum += g.size;
    EXPECT_EQ(sum + bank.spaces.back().front.rect.y, bank.opening_height) << "seed " << seed;
    EXPECT_EQ(bank.gaps.back().size, L(gap.c_str())) << "seed " << seed;
  }
}

}  // namespace
}  // namespace tillwright
