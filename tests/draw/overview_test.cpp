// Overviews: clean layout, and the nearer part always over the farther.
#include "draw/overview/overview.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

#include "draw/overview/overview_parts.h"
#include "draw/part_cases.h"
#include "sheet/axonometric.h"
#include "support/files.h"
#include "support/specs.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

constexpr Scale kScales[] = {{0.25, "1:4"}, {0.125, "1:8"}, {0.02, "1:50"}};

TEST(OverviewTest, BankLayoutIsClean) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  for (const BankCase& c : AllBanks(seed)) {
    SCOPED_TRACE(c.name);
    for (const Scale& scale : kScales) {
      const View view = BankOverview(c.bank, scale, ViewOptions(), DrawingFontMetrics());
      EXPECT_EQ(FaultsOf(c.bank, view), "") << scale.name;
    }
  }
}

TEST(OverviewTest, DrawerLayoutIsCleanAndNumbersAreTrue) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  for (const BankCase& c : AllBanks(seed)) {
    SCOPED_TRACE(c.name);
    for (std::size_t i = 0; i < c.bank.spaces.size() && i < 4; ++i) {
      if (!c.bank.spaces[i].HasBox()) continue;
      for (const Scale& scale : kScales) {
        const View view = DrawerExploded(c.bank, i, scale, ViewOptions(), DrawingFontMetrics());
        EXPECT_EQ(FaultsOf(c.bank, view), "") << view.name << " at " << scale.name;
      }
    }
  }
}

// Every part of a drawer that is in sight is named with its sizes.
TEST(OverviewTest, EveryPartOfADrawerIsNamed) {
  for (const BankCase& c : ConstructionBanks()) {
    SCOPED_TRACE(c.name);
    const View view = DrawerExploded(c.bank, 0, kScales[0], ViewOptions(), DrawingFontMetrics());
    const std::set<std::string> paths = PathsOn(view);
    for (const char* part : {"front", "box_front", "side", "bottom", "box_back"}) {
      const std::string id = std::string("part.D1.") + part + ".length";
      EXPECT_TRUE(paths.contains(id)) << id;
    }
  }
}

// Every drawer and blank of the curated specs is named, on its front or beside the picture.
TEST(OverviewTest, EveryFrontIsNamed) {
  for (const BankCase& c : CuratedBanks()) {
    SCOPED_TRACE(c.name);
    const View view = BankOverview(c.bank, kScales[1], ViewOptions(), DrawingFontMetrics());
    std::set<std::string> words;
    for (const SheetGroup& group : view.groups) {
      for (const Primitive& primitive : group.primitives) {
        const Label* label = std::get_if<Label>(&primitive);
        if (label != nullptr) words.insert(label->plain.substr(0, label->plain.find(' ')));
      }
    }
    for (const Space& space : c.bank.spaces) {
      EXPECT_EQ(words.contains(ToText(space.id)), space.HasFront()) << ToText(space.id);
    }
  }
}

bool Overlap(const Cuboid& a, const Cuboid& b) {
  return a.at.x < b.Right() && b.at.x < a.Right() && a.at.y < b.Top() && b.at.y < a.Top() &&
         a.at.z < b.Rear() && b.at.z < a.Rear();
}

// Parts of a drawer that is glued up, and of the case, share no space, so that one can hide
// another.
TEST(OverviewSolidsTest, ShareNoSpace) {
  for (const BankCase& c : ConstructionBanks()) {
    SCOPED_TRACE(c.name);
    const Assembly assembly = Assemble(c.bank);
    std::vector<SolidPart> solids = CaseSolids(assembly);
    for (std::size_t i = 0; i < c.bank.spaces.size(); ++i) {
      if (c.bank.spaces[i].HasBox()) {
        for (const SolidPart& part : GluedSolids(assembly, i)) solids.push_back(part);
      } else if (c.bank.spaces[i].HasFront()) {
        solids.push_back(FrontSolid(assembly, i));
      }
    }
    for (std::size_t i = 0; i < solids.size(); ++i) {
      EXPECT_GT(solids[i].box.width, Length());
      EXPECT_GT(solids[i].box.height, Length());
      EXPECT_GT(solids[i].box.depth, Length());
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_FALSE(Overlap(solids[i].box, solids[j].box))
            << ToText(solids[i].piece->role) << " and " << ToText(solids[j].piece->role);
      }
    }
  }
}

// The true sizes of the parts, however they lie.
TEST(OverviewSolidsTest, HaveThePartsSizes) {
  const Bank bank = MustSolve(R"({"opening": {"width": "16", "height": "24", "depth": "21"},
      "box": {"corner": {"joint": "half-blind-dovetail", "lap": "1/8"}}, "drawers": [{}]})")
                        .bank;
  const Assembly assembly = Assemble(bank);
  const std::vector<SolidPart> solids = DrawerSolids(assembly, 0);
  EXPECT_EQ(solids.size(), 6U);
  for (const SolidPart& solid : solids) {
    const auto part = std::ranges::find(bank.parts, solid.piece->role, &Part::role);
    ASSERT_NE(part, bank.parts.end());
    std::array have{solid.box.width, solid.box.height, solid.box.depth};
    std::array want{part->length, part->width, part->thickness};
    std::ranges::sort(have);
    std::ranges::sort(want);
    EXPECT_EQ(have, want) << ToText(solid.piece->role);
  }
}

// The paper runs down: depths go up and to the right at half scale, by 42 degrees.
TEST(AxonometryTest, PlacesByHand) {
  const Axonometry view(Scale{0.5, "1:2"});
  const PaperPoint up = view.At({{}, Length::Millimeters(100), {}});
  EXPECT_NEAR(up.x, 0, 1e-12);
  EXPECT_NEAR(up.y, -50, 1e-12);
  const PaperPoint right = view.At({Length::Millimeters(100), {}, {}});
  EXPECT_NEAR(std::hypot(right.x, right.y), 50, 1e-9);
  EXPECT_NEAR(std::atan2(right.y, right.x) * 180 / 3.14159265358979, 7, 1e-9);
  const PaperPoint back = view.At({{}, {}, Length::Millimeters(100)});
  EXPECT_NEAR(std::hypot(back.x, back.y), 25, 1e-9);
  EXPECT_NEAR(std::atan2(-back.y, back.x) * 180 / 3.14159265358979, 42, 1e-9);
}

// A line of sight: everything on it lies at one point of the paper. Toward the eye, z falls by 1.
struct Sight {
  double x, y;
};
Sight LineOfSight(const Axonometry& view) {
  const Length one = Length::Millimeters(1000);
  const PaperPoint px = view.At({one, {}, {}});
  const PaperPoint py = view.At({{}, one, {}});
  const PaperPoint pz = view.At({{}, {}, one});
  const double x = pz.x / px.x;
  return {x, (pz.y - x * px.y) / py.y};
}

// How near the eye the line of sight through a place meets a box: -z; empty when it misses.
std::optional<double> Meets(const Cuboid& box, const Sight& d, double x0, double y0) {
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  const auto narrow = [&](double start, double step, Length from, Length to) {
    const double a = (ToMillimeters(from) - start) / step;
    const double b = (ToMillimeters(to) - start) / step;
    low = std::max(low, std::min(a, b));
    high = std::min(high, std::max(a, b));
  };
  // The line is (x0 + x t, y0 + y t, -t): toward the eye as t grows.
  narrow(x0, d.x, box.at.x, box.Right());
  narrow(y0, d.y, box.at.y, box.Top());
  narrow(0, -1, box.at.z, box.Rear());
  if (high - low < 1e-6) return std::nullopt;
  return high;
}

// Boxes that share no space, some touching, in a lattice of random cuts.
std::vector<Cuboid> RandomBoxes(Random& random) {
  std::vector<Cuboid> boxes;
  for (int tries = 0; tries < 60; ++tries) {
    const auto length = [&](int low, int high) {
      return Length::Millimeters(random.Int(low, high));
    };
    Cuboid box;
    box.at = {length(0, 30), length(0, 30), length(0, 30)};
    box.width = length(1, 14);
    box.height = length(1, 14);
    box.depth = length(1, 14);
    if (std::ranges::none_of(boxes, [&](const Cuboid& other) { return Overlap(box, other); })) {
      boxes.push_back(box);
    }
  }
  return boxes;
}

// What is drawn last at a place is what the eye meets first.
void ExpectTrueOrder(const std::vector<Cuboid>& boxes, const Axonometry& view) {
  const std::vector<std::size_t> order = DepthOrder(boxes, view);
  ASSERT_EQ(order.size(), boxes.size());
  const Sight d = LineOfSight(view);
  int met = 0;
  for (double x = -20.25; x < 60; x += 1.5) {
    for (double y = -20.25; y < 60; y += 1.5) {
      std::optional<double> nearest;
      std::size_t expected = 0;
      std::size_t drawn = boxes.size();
      for (const std::size_t i : order) {
        const std::optional<double> at = Meets(boxes[i], d, x, y);
        if (!at) continue;
        drawn = i;
        if (!nearest || *at > *nearest) {
          nearest = at;
          expected = i;
        }
      }
      if (!nearest) continue;
      ++met;
      EXPECT_EQ(drawn, expected) << "at " << x << ", " << y;
    }
  }
  EXPECT_GT(met, 20);
}

// The place in the middle of what both hexagons cover, as (x, y) of the line of sight at z = 0;
// empty when they cover nothing together. Clips one hexagon by the sides of the other.
std::optional<Sight> CommonPlace(const Cuboid& a, const Cuboid& b, const Axonometry& view) {
  const auto hexagon = [&](const Cuboid& box) {
    const PaperRing front = view.Face(box, CuboidFace::kFront);
    const PaperRing top = view.Face(box, CuboidFace::kTop);
    const PaperRing right = view.Face(box, CuboidFace::kRight);
    return PaperRing{front[0], front[1], right[1], right[2], top[3], front[3]};
  };
  PaperRing ring = hexagon(a);
  const PaperRing by = hexagon(b);
  for (std::size_t s = 0; s < by.size(); ++s) {
    const PaperPoint p = by[s];
    const PaperPoint q = by[(s + 1) % by.size()];
    const auto inside = [&](PaperPoint at) {
      return (q.y - p.y) * (at.x - p.x) - (q.x - p.x) * (at.y - p.y);
    };
    PaperRing kept;
    for (std::size_t k = 0; k < ring.size(); ++k) {
      const PaperPoint from = ring[k];
      const PaperPoint to = ring[(k + 1) % ring.size()];
      const double f = inside(from);
      const double t = inside(to);
      if (f >= 0) kept.push_back(from);
      if ((f > 0 && t < 0) || (f < 0 && t > 0)) {
        const double share = f / (f - t);
        kept.push_back({from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share});
      }
    }
    ring = std::move(kept);
  }
  if (ring.size() < 3) return std::nullopt;
  PaperPoint middle;
  for (const PaperPoint& at : ring) {
    middle.x += at.x / static_cast<double>(ring.size());
    middle.y += at.y / static_cast<double>(ring.size());
  }
  const PaperPoint px = view.At({Length::Millimeters(1), {}, {}});
  const PaperPoint py = view.At({{}, Length::Millimeters(1), {}});
  const double x = middle.x / px.x;
  return Sight{x, (middle.y - x * px.y) / py.y};
}

// True if some boxes hide one another in a circle, which no order can draw.
bool HasCircle(const std::vector<Cuboid>& boxes, const Axonometry& view) {
  const Sight d = LineOfSight(view);
  const std::size_t n = boxes.size();
  std::vector<std::vector<bool>> before(n, std::vector<bool>(n));
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      const auto place = i == j ? std::nullopt : CommonPlace(boxes[i], boxes[j], view);
      if (!place) continue;
      const auto a = Meets(boxes[i], d, place->x, place->y);
      const auto b = Meets(boxes[j], d, place->x, place->y);
      if (a && b && *a < *b) before[i][j] = true;
    }
  }
  for (std::size_t k = 0; k < n; ++k) {
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t j = 0; before[i][k] && j < n; ++j) {
        if (before[k][j]) before[i][j] = true;
      }
    }
  }
  for (std::size_t i = 0; i < n; ++i) {
    if (before[i][i]) return true;
  }
  return false;
}

TEST(DepthOrderTest, NearerBoxesAreDrawnLater) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  Random random(seed);
  const Axonometry view(Scale{1.0, "1:1"});
  int checked = 0;
  for (int round = 0; round < 12; ++round) {
    const std::vector<Cuboid> boxes = RandomBoxes(random);
    if (HasCircle(boxes, view)) continue;
    ++checked;
    ExpectTrueOrder(boxes, view);
  }
  EXPECT_GT(checked, 0);
}

TEST(DepthOrderTest, TurnsAround) {
  const Axonometry view(Scale{1.0, "1:1"});
  const auto box = [](int x, int y, int z) {
    return Cuboid{{Length::Millimeters(x), Length::Millimeters(y), Length::Millimeters(z)},
                  Length::Millimeters(10),
                  Length::Millimeters(10),
                  Length::Millimeters(10)};
  };
  // Behind, left and below come first.
  EXPECT_EQ(DepthOrder(std::vector{box(0, 0, 0), box(0, 0, 10)}, view),
            (std::vector<std::size_t>{1, 0}));
  EXPECT_EQ(DepthOrder(std::vector{box(10, 0, 0), box(0, 0, 0)}, view),
            (std::vector<std::size_t>{1, 0}));
  EXPECT_EQ(DepthOrder(std::vector{box(0, 10, 0), box(0, 0, 0)}, view),
            (std::vector<std::size_t>{1, 0}));
}

TEST(CutAtTest, HalvesMakeTheWhole) {
  Cuboid box{{Length(), Length(), Length::Millimeters(-30)},
             Length::Millimeters(5),
             Length::Millimeters(6),
             Length::Millimeters(100)};
  const CuboidHalves halves = CutAt(box, Length());
  EXPECT_EQ(halves.front.depth, Length::Millimeters(30));
  EXPECT_EQ(halves.rear.at.z, Length());
  EXPECT_EQ(halves.rear.depth, Length::Millimeters(70));
  EXPECT_TRUE(halves.front.cut_behind);
  EXPECT_TRUE(halves.rear.cut_in_front);
  box.at.z = Length::Millimeters(1);
  EXPECT_TRUE(CutAt(box, Length()).front.depth.IsZero());
  EXPECT_FALSE(CutAt(box, Length()).rear.cut_in_front);
}

}  // namespace
}  // namespace tillwright::testing
