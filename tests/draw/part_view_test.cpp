// Part sheets: clean layout, true numbers, nothing left out, drawn to scale.
#include <gtest/gtest.h>

#include <algorithm>

#include "draw/part/part_sheets.h"
#include "draw/part_cases.h"
#include "stock/part_seats.h"
#include "support/files.h"
#include "support/specs.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

View Draw(const Bank& bank, const PartKind& kind, const Scale& scale) {
  return PartView(bank, kind, scale, ViewOptions(), DrawingFontMetrics());
}

// From full size down to what hides every cut.
constexpr Scale kScales[] = {{1.0, "1:1"}, {0.25, "1:4"}, {0.1, "1:10"}, {0.02, "1:50"}};

TEST(PartViewTest, LayoutIsCleanAndNumbersAreTrue) {
  const std::uint32_t seed = TestSeed();
  SCOPED_TRACE("seed " + std::to_string(seed));
  for (const BankCase& c : AllBanks(seed)) {
    SCOPED_TRACE(c.name);
    for (const PartKind& kind : PartKinds(c.bank)) {
      for (const Scale& scale : kScales) {
        const View view = Draw(c.bank, kind, scale);
        EXPECT_EQ(FaultsOf(c.bank, view), "") << view.name << " at " << scale.name;
      }
    }
  }
}

TEST(PartViewTest, EverySizeAndCutIsDimensioned) {
  for (const BankCase& c : ConstructionBanks()) {
    SCOPED_TRACE(c.name);
    for (const PartKind& kind : PartKinds(c.bank)) {
      const Part& part = c.bank.parts[kind.parts[0]];
      const View view = Draw(c.bank, kind, kScales[1]);
      const std::set<std::string> paths = PathsOn(view);
      const std::string id = "part." + PartId(c.bank, part) + ".";
      for (const char* size : {"length", "width", "thickness"}) {
        EXPECT_TRUE(paths.contains(id + size)) << id << size;
      }
      for (std::size_t i = 0; i < part.cuts.size(); ++i) {
        const std::string cut = id + "cut." + std::to_string(i + 1) + ".";
        EXPECT_TRUE(paths.contains(cut + "width")) << cut;
        EXPECT_TRUE(paths.contains(cut + "depth")) << cut;
        EXPECT_EQ(paths.contains(cut + "offset"), !part.cuts[i].offset.IsZero()) << cut;
      }
      const std::vector<Seat> seats = SeatsIn(c.bank, part);
      for (std::size_t i = 0; i < seats.size(); ++i) {
        const std::string seat = id + "seat." + std::to_string(i + 1) + ".";
        for (const char* size : {"offset", "width", "depth"}) {
          EXPECT_EQ(paths.contains(seat + size), !seats[i].other_face) << seat << size;
        }
      }
    }
  }
}

TEST(PartViewTest, EveryPullHoleIsDimensioned) {
  const Bank bank = MustSolve(R"({"opening": {"width": "40", "height": "24", "depth": "20"},
      "fronts": {"pull": {"centers": "3 3/4", "down": "2"}}, "drawers": [{}]})")
                        .bank;
  const std::set<std::string> paths = PathsOn(Draw(bank, PartKinds(bank)[0], kScales[1]));
  for (const char* path : {"D1.front.pull.1.left", "D1.front.pull.1.next", "D1.front.pull.2.next",
                           "D1.front.pull.3.next", "D1.front.pull.1.above"}) {
    EXPECT_TRUE(paths.contains(path)) << path;
  }
}

TEST(PartViewTest, KeySizesOnlyWhenAsked) {
  const Bank bank = MustSolve(R"({"opening": {"width": "16", "height": "24", "depth": "20"},
      "box": {"corner": {"joint": "rabbet"}}, "drawers": [{}]})")
                        .bank;
  for (const PartKind& kind : PartKinds(bank)) {
    ViewOptions few;
    few.all_dimensions = false;
    const View view = PartView(bank, kind, kScales[1], few, DrawingFontMetrics());
    for (const std::string& path : PathsOn(view)) {
      EXPECT_EQ(path.find(".cut."), std::string::npos) << path;
    }
    EXPECT_EQ(FaultsOf(bank, view), "");
  }
}

// The face as drawn is the part's size at the scale, and all that is drawn lies in the view's box.
TEST(PartViewTest, IsDrawnToScale) {
  for (const BankCase& c : CuratedBanks()) {
    SCOPED_TRACE(c.name);
    for (const PartKind& kind : PartKinds(c.bank)) {
      const Part& part = c.bank.parts[kind.parts[0]];
      for (const Scale& scale : kScales) {
        const View view = Draw(c.bank, kind, scale);
        const double a = ToMillimeters(part.length) * scale.paper_per_mm;
        const double b = ToMillimeters(part.width) * scale.paper_per_mm;
        const double right = view.outline.Width();
        const double up = view.outline.Height();
        EXPECT_NEAR(std::max(right, up), std::max(a, b), 1e-9) << view.name;
        EXPECT_NEAR(std::min(right, up), std::min(a, b), 1e-9) << view.name;
        PaperBox all = EmptyBox();
        for (const SheetGroup& group : view.groups) {
          all = Join(all, Bounds(group));
          EXPECT_TRUE(group.id.starts_with(view.name)) << group.id;
        }
        EXPECT_NEAR(all.left, view.box.left, 1e-9);
        EXPECT_NEAR(all.top, view.box.top, 1e-9);
        EXPECT_NEAR(all.right, view.box.right, 1e-9);
        EXPECT_NEAR(all.bottom, view.box.bottom, 1e-9);
      }
    }
  }
}

// Names of views are names of files: no two alike.
TEST(PartViewTest, NamesDiffer) {
  for (const BankCase& c : CuratedBanks()) {
    std::set<std::string> names;
    for (const PartKind& kind : PartKinds(c.bank)) {
      EXPECT_TRUE(names.insert(Draw(c.bank, kind, kScales[1]).name).second) << c.name;
    }
  }
}

}  // namespace
}  // namespace tillwright::testing
