// The drawings of stock layouts: nothing on top of anything else, every part labelled, every cut
// numbered, every number the reckoned one.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
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

std::string Joined(const std::vector<std::string>& texts) {
  std::string all;
  for (const std::string& text : texts) all += "\n" + text;
  return all;
}

// The pieces of a layout that runs of fronts are cut from.
std::vector<const NestPiece*> PiecesOfRuns(const NestLayout& layout) {
  std::vector<const NestPiece*> pieces;
  for (const NestPiece& piece : layout.pieces) {
    if (piece.run >= 0 && piece.kind != NestPieceKind::kPart) pieces.push_back(&piece);
  }
  return pieces;
}

struct Drawn {
  std::string name;
  StockPlan plan;
  Drawings drawings;
};

void AddDrawn(std::string name, const Spec& spec, const Bank& bank, std::vector<Drawn>& out) {
  const StockSource source{&spec, &bank};
  StockPlan plan = PlanStock({&source, 1});
  Drawings drawings = DrawStock(plan, {}, DrawingFontMetrics());
  out.push_back({std::move(name), std::move(plan), std::move(drawings)});
}

// Every curated spec as it is, and two more with their fronts matched.
const std::vector<Drawn>& CuratedStock() {
  static const std::vector<Drawn> all = [] {
    std::vector<Drawn> out;
    for (const std::filesystem::path& path : CuratedSpecs()) {
      const Spec spec = MustRead(ReadFile(path));
      Outcome<Bank> bank = SolveBank(spec);
      if (!bank.ok()) continue;
      AddDrawn(path.stem(), spec, bank.value(), out);
      const bool type = path.stem() == "type-drawer-bank";
      if (!type && path.stem() != "press-bench-pedestal") continue;
      bank.value().match = type ? FrontMatch::kRow : FrontMatch::kStack;
      AddDrawn(path.stem().string() + " matched", spec, bank.value(), out);
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

// Of each run: a row below that names its fronts, and each of them named where it lies.
TEST(StockDrawing, NamesTheFrontsOfEveryRun) {
  std::size_t runs = 0;
  for (const Drawn& drawn : CuratedStock()) {
    std::size_t view = 0;
    for (const StockGroup& group : drawn.plan.groups) {
      for (const NestLayout& layout : group.plan.layouts) {
        const Sheet& sheet = drawn.drawings.views[view++];
        SCOPED_TRACE(drawn.name + " " + sheet.name);
        const std::string labels = Joined(TextsOf(sheet, "parts"));
        const std::string rows = Joined(TextsOf(sheet, "legend"));
        for (const NestPiece* piece : PiecesOfRuns(layout)) {
          const StockRun& run = group.runs[static_cast<std::size_t>(piece->run)];
          EXPECT_NE(rows.find("\n" + run.label + "  " + FrontsOf(run)), std::string::npos) << rows;
          for (const std::string& front : run.fronts) {
            EXPECT_NE(labels.find(front), std::string::npos) << labels;
          }
          ++runs;
        }
      }
    }
  }
  EXPECT_GE(runs, 8U);
}

PaperBox BoxOf(const Polyline& line) {
  PaperBox box{line.points[0].x, line.points[0].y, line.points[0].x, line.points[0].y};
  for (const PaperPoint p : line.points) {
    box = {std::min(box.left, p.x), std::min(box.top, p.y), std::max(box.right, p.x),
           std::max(box.bottom, p.y)};
  }
  return box;
}

// Each piece is outlined whole, and an arrow leads from its first front to its last where there is
// room for one beside the names.
TEST(StockDrawing, AnArrowLeadsAlongEveryRun) {
  std::size_t arrows = 0;
  for (const Drawn& drawn : CuratedStock()) {
    std::size_t view = 0;
    for (const StockGroup& group : drawn.plan.groups) {
      for (const NestLayout& layout : group.plan.layouts) {
        const Sheet& sheet = drawn.drawings.views[view++];
        SCOPED_TRACE(drawn.name + " " + sheet.name);
        std::vector<PaperBox> outlines;
        std::vector<double> heads;
        for (const SheetGroup& g : sheet.groups) {
          if (!g.id.ends_with("-runs")) continue;
          for (const Primitive& p : g.primitives) {
            const Polyline* line = std::get_if<Polyline>(&p);
            if (line != nullptr && line->closed) outlines.push_back(BoxOf(*line));
            const Arrowhead* head = std::get_if<Arrowhead>(&p);
            if (head != nullptr) heads.push_back(std::round(head->direction));
          }
        }
        const std::vector<const NestPiece*> pieces = PiecesOfRuns(layout);
        ASSERT_EQ(outlines.size(), pieces.size());
        std::vector<double> wanted;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
          const bool across = group.runs[static_cast<std::size_t>(pieces[i]->run)].across;
          const double beside = across ? outlines[i].Width() : outlines[i].Height();
          if (beside >= 9) wanted.push_back(across ? -90 : 0);
        }
        EXPECT_EQ(heads, wanted);
        arrows += heads.size();
      }
    }
  }
  EXPECT_GE(arrows, 2U);
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
        ASSERT_EQ(rows.size(), kinds.size() + PiecesOfRuns(layout).size());
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
