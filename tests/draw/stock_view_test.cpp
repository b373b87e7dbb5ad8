// The drawings of stock layouts: nothing on top of anything else, every part labelled, every cut
// numbered, every number the reckoned one.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "draw/layout_faults.h"
#include "draw/view_cases.h"
#include "support/files.h"
#include "support/specs.h"
#include "tillwright/length_text.h"
#include "tillwright/render.h"
#include "tillwright/stock_draw.h"

namespace tillwright::testing {
namespace {

std::vector<std::string> TextsOf(const Sheet& sheet, const std::string& group) {
  std::vector<std::string> texts;
  for (const SheetGroup& g : sheet.groups) {
    if (!g.id.ends_with("-" + group)) continue;
    for (const Primitive& p : g.primitives) {
      if (const Label* label = std::get_if<Label>(&p)) texts.push_back(label->plain);
    }
  }
  return texts;
}

struct Drawn {
  std::string name;
  StockPlan plan;
  Drawings drawings;
};

const std::vector<Drawn>& CuratedStock() {
  static const std::vector<Drawn> all = [] {
    std::vector<Drawn> out;
    for (const std::filesystem::path& path : CuratedSpecs()) {
      const Spec spec = MustRead(ReadFile(path));
      const Outcome<Bank> bank = SolveBank(spec);
      if (!bank.ok()) continue;
      const StockSource source{&spec, &bank.value()};
      StockPlan plan = PlanStock({&source, 1});
      Drawings drawings = DrawStock(plan, {}, DrawingFontMetrics());
      out.push_back({path.stem(), std::move(plan), std::move(drawings)});
    }
    return out;
  }();
  return all;
}

TEST(StockDrawing, HasNoLayoutFaults) {
  ASSERT_GE(CuratedStock().size(), 5U);
  for (const Drawn& drawn : CuratedStock()) {
    EXPECT_EQ(drawn.drawings.fault, "") << drawn.name;
    EXPECT_FALSE(drawn.drawings.sheets.empty()) << drawn.name;
    for (const Sheet& sheet : drawn.drawings.sheets) {
      const auto faults = FindLayoutFaults(sheet, DrawingFontMetrics());
      EXPECT_TRUE(faults.empty()) << drawn.name << " " << sheet.name << "\n"
                                  << DescribeFaults(faults);
    }
  }
}

// A view a layout; as many labels in it as parts, as many numbers as cuts.
TEST(StockDrawing, LabelsEveryPartAndNumbersEveryCut) {
  for (const Drawn& drawn : CuratedStock()) {
    std::size_t view = 0;
    for (const StockGroup& group : drawn.plan.groups) {
      for (const NestLayout& layout : group.plan.layouts) {
        ASSERT_LT(view, drawn.drawings.views.size());
        const Sheet& sheet = drawn.drawings.views[view++];
        SCOPED_TRACE(drawn.name + " " + sheet.name);
        const auto parts =
            std::ranges::count(layout.pieces, NestPieceKind::kPart, &NestPiece::kind);
        EXPECT_EQ(TextsOf(sheet, "parts").size(), static_cast<std::size_t>(parts));
        std::vector<std::string> numbers;
        for (std::size_t i = 1; i <= CutsOf(layout).size(); ++i)
          numbers.push_back(std::to_string(i));
        EXPECT_EQ(TextsOf(sheet, "cuts"), numbers);
      }
    }
    EXPECT_EQ(view, drawn.drawings.views.size());
  }
}

// The letter of a part stands for the sizes that were reckoned, turned or not.
TEST(StockDrawing, ExplainsEveryLetterWithTheReckonedSizes) {
  for (const Drawn& drawn : CuratedStock()) {
    std::size_t view = 0;
    for (const StockGroup& group : drawn.plan.groups) {
      for (const NestLayout& layout : group.plan.layouts) {
        const Sheet& sheet = drawn.drawings.views[view++];
        SCOPED_TRACE(drawn.name + " " + sheet.name);
        std::set<std::int32_t> kinds;
        for (const NestPiece& piece : layout.pieces) {
          if (piece.kind == NestPieceKind::kPart) kinds.insert(piece.part);
        }
        const std::vector<std::string> rows = TextsOf(sheet, "legend");
        ASSERT_EQ(rows.size(), kinds.size());
        std::size_t row = 0;
        for (const std::int32_t kind : kinds) {
          const NestPart& part = group.job.parts[static_cast<std::size_t>(kind)];
          const std::string size = FormatLength(part.along, drawn.plan.units) + " × " +
                                   FormatLength(part.across, drawn.plan.units);
          EXPECT_NE(rows[row].find(size), std::string::npos) << rows[row] << " and " << size;
          ++row;
        }
      }
    }
  }
}

}  // namespace
}  // namespace tillwright::testing
