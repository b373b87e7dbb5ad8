// Fronts and boxes alike. Values worked by hand in the comments.
#include <gtest/gtest.h>

#include <algorithm>

#include "support/bank_values.h"

namespace tillwright {
namespace {

using testing::ExpectValues;
using testing::L;
using testing::MustFail;
using testing::MustSolve;
using testing::NameOf;
using testing::Random;
using testing::SolveCase;
using testing::Solved;

std::string Inset(const std::string& width, const std::string& height, const std::string& rest) {
  return R"({"opening": {"width": ")" + width + R"(", "height": ")" + height +
         R"(", "depth": 22}, "fronts": {"style": "inset", "edge": "1/16"}, )" + rest + "}";
}

class AlikeTable : public ::testing::TestWithParam<SolveCase> {};
TEST_P(AlikeTable, GivesTheValuesWorkedByHand) { ExpectValues(GetParam()); }

const std::vector<SolveCase>& Cases() {
  static const std::vector<SolveCase> cases{
      // 20 1/16 - 1/8 - 4 x 1/8 = 19 7/16 = 622/32: 124/32 each, 2/32 left over at the bottom.
      // Cells
      // of 4 in, the lowest 4 1/16; boxes 3/4 lower, the lowest as the others.
      {"Rows",
       Inset("20", "20 1/16", R"("graduate": {"alike": true}, "drawers": [{}, {}, {}, {}, {}])"),
       {{"D1.front.height", "3 7/8"},
        {"D5.front.height", "3 7/8"},
        {"D5.front.y", "1/8"},
        {"D5.cell.height", "4 1/16"},
        {"D4.box.height", "3 1/4"},
        {"D5.box.height", "3 1/4"},
        {"D5.box.inside_height", "2 3/4"},
        {"D5.box.y", "1/4"}}},
      // A child of exact size is not made alike: 19 7/16 - 4 = 15 7/16 = 494/32: 123 each, 2 left
      // over.
      {"ExactChildrenKeepTheirs",
       Inset("20", "20 1/16",
             R"("graduate": {"alike": true}, "drawers": [{"exact": 4}, {}, {}, {}, {}])"),
       {{"D1.front.height", "4"},
        {"D2.front.height", "3 27/32"},
        {"D5.front.height", "3 27/32"},
        {"D5.front.y", "1/8"},
        {"D1.box.height", "3 3/8"},
        {"D2.box.height", "3 7/32"}}},
      // Overlay 3/8: 20 3/4 - 1/4 = 20 1/2 = 656/32: 218 each, 1/32 left over at either side. Cells
      // 6
      // 5/32, 6 3/16, 6 5/32; ends 2 in shorter, the middle one's as the others'.
      {"Columns",
       R"({"opening": {"width": 20, "height": 10, "depth": 22}, "fronts": {"overlay": "3/8"},
        "layout": {"columns": [{"drawer": {}}, {"drawer": {}}, {"drawer": {}}],
        "graduate": {"alike": true}}})",
       {{"D1.front.width", "6 13/16"},
        {"D2.front.width", "6 13/16"},
        {"D2.cell.width", "6 3/16"},
        {"D2.box_front.length", "4 5/32"},
        {"D2.box.width", "5 5/32"},
        {"D2.bottom.length", "19 7/16"},
        {"D2.box.x", "7 27/64"}}},
      // Overlay fronts 5/8 over the edges: the outer boxes are 11/16 lower than the others, which
      // is
      // more than can be packed out: each is as high as its cell makes it.
      {"FarApartTheyStay",
       R"({"opening": {"width": 20, "height": 20, "depth": 22}, "graduate": {"alike": true},
        "drawers": [{}, {}, {}, {}, {}]})",
       {{"D1.front.height", "4 1/8"},
        {"D5.front.y", "-1/2"},
        {"D1.box.height", "2 13/16"},
        {"D2.box.height", "3 1/2"},
        {"D5.box.height", "2 15/16"}}},
      // A drawer made otherwise is not of their kind: its own height stays.
      {"OnlyBoxesOfOneMake",
       Inset("20", "20 1/16", R"("graduate": {"alike": true},
         "drawers": [{}, {}, {}, {}, {"box": {"corner": {"joint": "rabbet"}}}])"),
       {{"D4.box.height", "3 1/4"}, {"D5.box.height", "3 5/16"}}},
      // A node that is a child is as high as the drawers; its own drawers are not made alike.
      {"NodesShareTheSize",
       Inset("20", "20 1/16", R"("layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]},
         {"drawer": {}}], "divider": "none", "graduate": {"alike": true}})"),
       // 20 1/16 - 1/8 - 1/8 = 19 13/16 = 634/32: 317 each.
       {{"D1.front.height", "9 29/32"}, {"D3.front.height", "9 29/32"}}},
  };
  return cases;
}
INSTANTIATE_TEST_SUITE_P(Alike, AlikeTable, ::testing::ValuesIn(Cases()), NameOf);

TEST(Alike, IsRefusedBesideWhatMakesFrontsDiffer) {
  for (
      const char* keys :
      {R"("graduate": {"alike": true}, "drawers": [{"weight": 2}, {}])",
       R"("graduate": {"alike": true}, "drawers": [{"min": 4}, {}])",
       R"("graduate": {"alike": true}, "drawers": [{}, {"max": 9}])",
       R"("graduate": {"scheme": "geometric", "ratio": 1.2, "alike": true}, "drawers": [{}, {}])"}) {
    const Diagnostics d = MustFail(Inset("20", "20", keys));
    ASSERT_EQ(d.size(), 1U) << keys;
    EXPECT_EQ(d[0].code, DiagnosticCode::kConflict) << keys;
  }
}

TEST(Alike, TwoSizesWithoutItAreNotedWithTheRemainderItWouldLeave) {
  const auto notes = [](const std::string& graduate) {
    std::vector<Length> found;
    const Solved s =
        MustSolve(Inset("20", "20 1/16", graduate + R"("drawers": [{}, {}, {}, {}, {}])"));
    for (const SolveNote& note : s.bank.notes) {
      if (note.kind == SolveNote::Kind::kTwoSizes) found.push_back(note.amount);
    }
    return found;
  };
  EXPECT_EQ(notes(""), std::vector{L("1/16")});
  EXPECT_TRUE(notes(R"("graduate": {"alike": true}, )").empty());
  EXPECT_TRUE(
      notes(R"("round": "1/16", "graduate": {"scheme": "arithmetic", "step": 0}, )").empty());
}

// Whatever is asked: one size, the remainder less than an increment for each, and boxes of one
// height or further apart than 1/16 in.
TEST(Alike, HoldsForRandomRows) {
  const std::uint32_t seed = std::random_device{}();
  Random random(seed);
  for (int i = 0; i < 200; ++i) {
    const int n = random.Int(2, 9);
    std::string list = "{}";
    for (int k = 1; k < n; ++k) list += ", {}";
    const std::string height = std::to_string(random.Int(n * 300, n * 700)) + "/64";
    const Bank bank =
        MustSolve(Inset("20", height, R"("graduate": {"alike": true}, "drawers": [)" + list + "]"))
            .bank;
    Length lowest = bank.spaces[0].box.height;
    Length highest = lowest;
    for (const Space& space : bank.spaces) {
      EXPECT_EQ(space.front.rect.height, bank.spaces[0].front.rect.height) << "seed " << seed;
      lowest = Min(lowest, space.box.height);
      highest = Max(highest, space.box.height);
    }
    const Length remainder = bank.spaces.back().front.rect.y - L("1/16");
    EXPECT_GE(remainder, Length()) << "seed " << seed;
    EXPECT_LT(remainder, n * bank.round) << "seed " << seed;
    EXPECT_TRUE(lowest == highest || highest - lowest > L("1/16")) << "seed " << seed;
  }
}

}  // namespace
}  // namespace tillwright
