// Views and sheets as a whole: which there are, on what paper, at what scale.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "draw/section/side_plane.h"
#include "draw/view_cases.h"
#include "sheet/sheet_packer.h"
#include "support/every.h"
#include "support/specs.h"
#include "tillwright/draw.h"
#include "tillwright/render.h"

namespace tillwright::testing {
namespace {

const char* const kPedestal =
    R"({"opening": {"width": "15 3/8", "height": "24 3/4", "depth": "21 3/4"}, "drawers": [{}, {}, {}]})";

Drawings Draw(const Bank& bank, const DrawOptions& options) {
  return DrawBank(bank, options, DrawingFontMetrics());
}

std::vector<std::string> NamesOf(const std::vector<Sheet>& sheets) {
  std::vector<std::string> names;
  for (const Sheet& sheet : sheets) names.push_back(sheet.name);
  return names;
}

bool HasText(const Sheet& sheet, const std::string& text) {
  return std::any_of(sheet.groups.begin(), sheet.groups.end(), [&](const SheetGroup& group) {
    return std::any_of(group.primitives.begin(), group.primitives.end(), [&](const Primitive& p) {
      const Label* label = std::get_if<Label>(&p);
      return label != nullptr && label->plain == text;
    });
  });
}

TEST(SheetsTest, NamesAreUniqueAndSheetsNumbered) {
  for (const BankCase& c : CuratedBanks()) {
    const Drawings drawings = Draw(c.bank, {});
    std::set<std::string> names;
    for (const std::string& name : NamesOf(drawings.views)) {
      EXPECT_TRUE(names.insert(name).second) << c.name << ": " << name << " twice";
    }
    for (const char* name : {"front", "side", "plan"}) EXPECT_TRUE(names.contains(name)) << c.name;
    for (std::size_t i = 0; i < drawings.sheets.size(); ++i) {
      const std::string n = std::to_string(i + 1);
      EXPECT_EQ(drawings.sheets[i].name, "sheet-" + n);
      EXPECT_TRUE(HasText(drawings.sheets[i], n + " / " + std::to_string(drawings.sheets.size())));
    }
  }
}

// What the sheets hold is what the views hold.
TEST(SheetsTest, EveryViewIsOnOneSheet) {
  for (const BankCase& c : CuratedBanks()) {
    const Drawings drawings = Draw(c.bank, {});
    for (const Sheet& view : drawings.views) {
      std::size_t found = 0;
      for (const Sheet& sheet : drawings.sheets) {
        found += static_cast<std::size_t>(std::count_if(
            sheet.groups.begin(), sheet.groups.end(),
            [&](const SheetGroup& group) { return group.id == view.name && group.depth == 0; }));
      }
      EXPECT_EQ(found, 1U) << c.name << ": " << view.name;
    }
  }
}

TEST(SheetsTest, ElevationAndSectionShareSheetScaleAndHeights) {
  const Bank bank = MustSolve(kPedestal).bank;
  DrawOptions options;
  options.views = {ViewKind::kFront, ViewKind::kSide};
  const Drawings drawings = Draw(bank, options);
  const Sheet& sheet = drawings.sheets.front();
  const auto box = [&](const std::string& id) {
    const auto at = std::find_if(sheet.groups.begin(), sheet.groups.end(),
                                 [&](const SheetGroup& group) { return group.id == id; });
    EXPECT_NE(at, sheet.groups.end()) << id;
    return Bounds(*at);
  };
  // The fronts' faces have the same heights; strokes differ by less than 0.3 mm.
  for (const char* id : {"D1", "D2", "D3"}) {
    const PaperBox front = box(std::string("front-") + id);
    const PaperBox side = box(std::string("side-") + id);
    EXPECT_NEAR(front.top, side.top, 0.3);
    EXPECT_NEAR(front.bottom, side.bottom, 0.3);
    EXPECT_LT(front.right, side.left);
  }
}

TEST(SheetsTest, PaperFollowsUnitsAndOptions) {
  const Bank inch = MustSolve(kPedestal).bank;
  const Bank metric =
      MustSolve(
          R"({"units": "mm", "opening": {"width": 400, "height": 600, "depth": 550}, "drawers": [{}, {}]})")
          .bank;
  const auto size = [](const Sheet& sheet) {
    return std::pair{std::min(sheet.width, sheet.height), std::max(sheet.width, sheet.height)};
  };
  EXPECT_EQ(size(Draw(inch, {}).sheets.front()), (std::pair{8.5 * 25.4, 11 * 25.4}));
  EXPECT_EQ(size(Draw(metric, {}).sheets.front()), (std::pair{210.0, 297.0}));
  DrawOptions options;
  options.paper = Paper::kA3;
  EXPECT_EQ(size(Draw(inch, options).sheets.front()), (std::pair{297.0, 420.0}));
  options.paper = Paper::kTabloid;
  EXPECT_EQ(size(Draw(metric, options).sheets.front()), (std::pair{11 * 25.4, 17 * 25.4}));
}

TEST(SheetsTest, ViewsArePicked) {
  const Bank bank = MustSolve(kPedestal).bank;
  DrawOptions options;
  options.views = {ViewKind::kSide};
  EXPECT_EQ(NamesOf(Draw(bank, options).views), std::vector<std::string>{"side"});
  options.views = {ViewKind::kPlan};
  EXPECT_EQ(NamesOf(Draw(bank, options).views), std::vector<std::string>{"plan"});
  for (const ViewKind kind : Every<ViewKind>()) {
    options.views = {kind};
    EXPECT_FALSE(Draw(bank, options).views.empty()) << Word(kind);
  }
}

TEST(SheetsTest, ScaleIsTakenOrRefused) {
  const Bank bank = MustSolve(kPedestal).bank;
  DrawOptions options;
  options.views = {ViewKind::kFront, ViewKind::kSide};
  options.scale = "1:10";
  EXPECT_TRUE(HasText(Draw(bank, options).views.front(), "SCALE 1:10"));
  options.scale = "1:1";
  const Drawings refused = Draw(bank, options);
  EXPECT_TRUE(refused.sheets.empty());
  EXPECT_NE(refused.fault.find("1:1"), std::string::npos) << refused.fault;
  for (const char* good : {"1:1", "1:8", "2:1", "1:10000", "3:4"}) EXPECT_TRUE(IsScale(good));
  for (const char* bad :
       {"", "1", "1:", ":8", "1:0", "0:1", "1/8", "1:10001", "-1:2", "1:8 ", "a:b"}) {
    EXPECT_FALSE(IsScale(bad)) << bad;
  }
}

TEST(SheetsTest, DateOnlyWhenGiven) {
  const Bank bank = MustSolve(kPedestal).bank;
  DrawOptions options;
  EXPECT_FALSE(HasText(Draw(bank, options).sheets.front(), "DATE"));
  options.date = "14 March 2026";
  EXPECT_TRUE(HasText(Draw(bank, options).sheets.front(), "14 March 2026"));
}

TEST(SheetsTest, SameBankSameDrawings) {
  const Bank bank = MustSolve(kPedestal).bank;
  const Drawings a = Draw(bank, {});
  const Drawings b = Draw(bank, {});
  ASSERT_EQ(a.sheets.size(), b.sheets.size());
  for (std::size_t i = 0; i < a.sheets.size(); ++i) EXPECT_EQ(Dump(a.sheets[i]), Dump(b.sheets[i]));
}

TEST(SectionPlaneTest, KeepsClearOfPartitionsAndGaps) {
  const Bank bank = MustSolve(R"({"opening": {"width": "40", "height": "20", "depth": "20"},
    "layout": {"columns": [{"drawer": {}}, {"drawer": {}}]}})")
                        .bank;
  const SectionPlane plane = ChooseSectionPlane(bank);
  ASSERT_EQ(plane.spaces.size(), 1U);
  const Rect& front = bank.spaces[plane.spaces.front()].front.rect;
  EXPECT_LT(front.x, plane.x);
  EXPECT_LT(plane.x, front.Right());
  for (const Divider& member : bank.dividers) {
    EXPECT_FALSE(member.rect.x <= plane.x && plane.x <= member.rect.Right());
  }
}

TEST(SheetPackerTest, PlacesNeverOverlapNorLeaveTheSpace) {
  Random random(7);
  for (int round = 0; round < 200; ++round) {
    const PaperBox space{10, 10, 260, 190};
    SheetPacker packer(space, 6);
    std::vector<PaperBox> placed;
    for (int i = 0; i < 12; ++i) {
      const double width = random.Int(5, 120);
      const double height = random.Int(5, 90);
      const auto at = packer.Place(width, height);
      if (!at) continue;
      const PaperBox box{at->x, at->y, at->x + width, at->y + height};
      EXPECT_GE(box.left, space.left);
      EXPECT_GE(box.top, space.top);
      EXPECT_LE(box.right, space.right);
      EXPECT_LE(box.bottom, space.bottom);
      for (const PaperBox& other : placed) EXPECT_FALSE(Overlaps(Grow(box, 5.9), other));
      placed.push_back(box);
    }
    EXPECT_FALSE(placed.empty());
  }
  EXPECT_FALSE(SheetPacker({0, 0, 10, 10}, 1).Place(10.1, 5).has_value());
}

TEST(SheetPackerTest, PlacesAllInSomeOrderOrSaysThatItCannot) {
  const PaperBox space{0, 0, 100, 100};
  const std::vector<PaperBox> boxes{{0, 0, 40, 40}, {0, 0, 30, 100}, {0, 0, 60, 30}};
  for (const PackOrder order : kPackOrders) {
    const auto corners = SheetPacker(space, 5).PlaceAll(boxes, order);
    ASSERT_TRUE(corners.has_value());
    ASSERT_EQ(corners->size(), boxes.size());
    std::vector<PaperBox> placed;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      const PaperPoint at = (*corners)[i];
      const PaperBox box{at.x, at.y, at.x + boxes[i].Width(), at.y + boxes[i].Height()};
      EXPECT_LE(box.right, space.right);
      EXPECT_LE(box.bottom, space.bottom);
      for (const PaperBox& other : placed) EXPECT_FALSE(Overlaps(Grow(box, 4.9), other));
      placed.push_back(box);
    }
    const std::vector<PaperBox> too_many(4, PaperBox{0, 0, 50, 50});
    EXPECT_FALSE(SheetPacker(space, 5).PlaceAll(too_many, order).has_value());
  }
}

}  // namespace
}  // namespace tillwright::testing
