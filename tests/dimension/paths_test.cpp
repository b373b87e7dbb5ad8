// The paths of labels against the solved bank.
#include <gtest/gtest.h>

#include "support/specs.h"
#include "tillwright/dimensions.h"
#include "tillwright/words.h"

namespace tillwright::testing {
namespace {

const char* const kChest = R"({
  "case": {"width": "30", "height": "28", "depth": "22", "raise": "2",
           "back": {"fit": "groove", "inset": "1/2", "depth": "1/4"}, "joint": {"type": "dado"}},
  "fronts": {"style": "overlay", "gap": "1/8", "pull": {"centers": "3"}},
  "box": {"corner": {"joint": "rabbet", "depth": "1/4"}},
  "layout": {"rows": [{"columns": [{"drawer": {}}, {"drawer": {}}]}, {"drawer": {}}, {"blank": {}}]}
})";

struct PathCase {
  const char* path;
  const char* value;
};

// Worked by hand: opening 28 1/2 x 24 1/2 (28 - 2 - 2 x 3/4).
constexpr PathCase kCases[] = {
    {"opening.width", "28 1/2"},
    {"opening.height", "24 1/2"},
    {"opening.depth", "21 1/4"},
    {"case.width", "30"},
    {"case.raise", "2"},
    {"case.base", "2 3/4"},
    {"case.back.thickness", "1/4"},
    {"case.back.inset", "1/2"},
    {"case.back.depth", "1/4"},
    {"case.back_allowance", "3/4"},
    {"case.joint.depth", "1/4"},
    {"overlay.top", "5/8"},
    {"overlap.D1.top", "5/8"},
    {"reveal.D1.top", "1/8"},
    {"gap.D3.D1", "1/8"},
    {"gap.D1.D2", "1/8"},
    {"D3.front.thickness", "3/4"},
    {"D3.front.width", "29 3/4"},
    {"D3.front.x", "-5/8"},
    {"D3.front.pull.1.next", "3"},
    {"D3.front.pull.1.left", "5 15/16"},
    {"D3.front.pull.2.right", "20 13/16"},
    {"D3.side.thickness", "1/2"},
    {"D3.groove.depth", "1/4"},
    {"D3.groove.up", "1/4"},
    {"D3.corner.depth", "1/4"},
    {"D3.bottom.play", "1/32"},
    {"D3.slide.length", "20"},
    {"D3.box.depth", "20"},
    {"D3.clear.behind", "1 1/4"},
    {"D3.clear.left", "1/2"},
    {"V1.thickness", "3/4"},
    {"part.D3.side.length", "20"},
    {"part.D3.side.cut.1.depth", "1/4"},
    {"part.D3.side.cut.1.left", "1/4"},
    {"part.case.side.length", "28"},
    {"case.side.width", "22"},
};

TEST(DimensionPathsTest, KnownValues) {
  const Bank bank = MustSolve(kChest).bank;
  for (const PathCase& c : kCases) {
    const std::optional<Length> value = DimensionValue(bank, c.path);
    ASSERT_TRUE(value.has_value()) << c.path;
    EXPECT_EQ(*value, L(c.value)) << c.path << " is " << FormatInches(*value);
  }
}

TEST(DimensionPathsTest, UnknownPaths) {
  const Bank bank = MustSolve(kChest).bank;
  for (const char* path :
       {"", "opening", "opening.breadth", "D9.front.width", "D0.front.width", "D3", "D3.",
        "D3.front.pull.5.left", "D3.front.pull.4.next", "B1.box.width", "H9.thickness", "gap.D1.D3",
        "overlap.D3.top", "part.D3.side.cut.9.depth", "part.D9.side.length", "floor.nothing",
        "case.nothing", "D99999999999999999999.front.width"}) {
    EXPECT_FALSE(DimensionValue(bank, path).has_value()) << path;
  }
}

// What belongs together adds up.
TEST(DimensionPathsTest, Sums) {
  const Bank bank = MustSolve(kChest).bank;
  const auto value = [&](const std::string& path) {
    const std::optional<Length> found = DimensionValue(bank, path);
    EXPECT_TRUE(found.has_value()) << path;
    return found.value_or(Length());
  };
  for (const Space& space : bank.spaces) {
    const std::string id = ToText(space.id);
    EXPECT_EQ(value("floor." + id + ".front.y"), space.front.rect.y + value("case.base"));
    EXPECT_EQ(value(id + ".front.y") + value(id + ".front.height"), value(id + ".front.top"));
    if (!space.HasBox()) continue;
    EXPECT_EQ(value(id + ".clear.below") + value(id + ".box.height") + value(id + ".clear.above"),
              value(id + ".cell.height"));
    EXPECT_EQ(value(id + ".clear.left") + value(id + ".box.width") + value(id + ".clear.right"),
              value(id + ".cell.width"));
    EXPECT_EQ(value(id + ".box.z") + value(id + ".box.depth") + value(id + ".clear.behind"),
              value("opening.depth"));
    EXPECT_EQ(value(id + ".front.pull.1.left") + value(id + ".front.pull.1.next") +
                  value(id + ".front.pull.2.right"),
              value(id + ".front.width"));
  }
}

// Every gap, overlap and part has a path of its own.
TEST(DimensionPathsTest, EveryGapAndPart) {
  const Bank bank = MustSolve(kChest).bank;
  ASSERT_FALSE(bank.gaps.empty());
  for (const Gap& gap : bank.gaps) EXPECT_EQ(DimensionValue(bank, GapPath(bank, gap)), gap.size);
  ASSERT_FALSE(bank.parts.empty());
  for (const Part& part : bank.parts) {
    const std::string id = "part." + PartId(bank, part);
    EXPECT_EQ(DimensionValue(bank, id + ".length"), part.length);
    EXPECT_EQ(DimensionValue(bank, id + ".width"), part.width);
    EXPECT_EQ(DimensionValue(bank, id + ".thickness"), part.thickness);
    for (std::size_t i = 0; i < part.cuts.size(); ++i) {
      const std::string cut = id + ".cut." + std::to_string(i + 1);
      EXPECT_EQ(DimensionValue(bank, cut + ".offset"), part.cuts[i].offset);
      EXPECT_EQ(DimensionValue(bank, cut + ".width"), part.cuts[i].width);
      EXPECT_EQ(DimensionValue(bank, cut + ".depth"), part.cuts[i].depth);
    }
  }
}

}  // namespace
}  // namespace tillwright::testing
