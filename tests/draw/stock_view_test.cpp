// The drawings of stock layouts: nothing on top of anything else, no small lettering, every part
// labeled, every cut numbered, every number the reckoned one; for all specs and random jobs, on
// every paper.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "draw/sheets/sheets.h"
#include "draw/stock/layout_panels.h"
#include "draw/stock/stock_labels.h"
#include "draw/stock/stock_names.h"
#include "stock/layout_runs.h"
#include "support/every.h"
#include "support/files.h"
#include "support/layout_faults.h"
#include "support/specs.h"
#include "tillwright/length_text.h"
#include "tillwright/render.h"
#include "tillwright/stock_draw.h"

namespace tillwright::testing {
namespace {

struct StockCase {
  std::string name;
  StockPlan plan;
};

const std::vector<StockCase>& CuratedStock() {
  static const std::vector<StockCase> all = [] {
    std::vector<StockCase> out;
    for (const std::filesystem::path& path : CuratedSpecs()) {
      const Spec spec = MustRead(ReadFile(path));
      Outcome<Bank> bank = SolveBank(spec);
      if (!bank.ok()) continue;
      const StockSource source{&spec, &bank.value()};
      out.push_back({path.stem(), PlanStock({&source, 1})});
      const bool type = path.stem() == "type-drawer-bank";
      if (!type && path.stem() != "press-bench-pedestal") continue;
      bank.value().match = type ? FrontMatch::kRow : FrontMatch::kStack;
      out.push_back({path.stem().string() + " matched", PlanStock({&source, 1})});
    }
    return out;
  }();
  return all;
}

// Jobs of any kind: up to 300 parts, from strips to panels, on sheets and on boards.
class RandomJob {
 public:
  explicit RandomJob(std::uint32_t seed) : random_(seed) {}

  StockPlan Make() {
    StockPlan plan;
    plan.units = Chance(50) ? Unit::kInch : Unit::kMillimeter;
    plan.title = "Random job";
    plan.groups.push_back(Group(false));
    plan.groups.push_back(Group(true));
    return plan;
  }

 private:
  int Int(int low, int high) { return random_.Int(low, high); }
  bool Chance(int percent) { return random_.Chance(percent); }
  Length Size(int low, int high) {
    return HalfBelow(Int(2 * low, 2 * high) * Length::Millimeters(1));
  }

  StockGroup Group(bool solid) {
    StockGroup group;
    group.solid = solid;
    group.thickness = group.rough = Length::Millimeters(18);
    group.material = solid ? "hard maple" : "birch plywood";
    group.job.kerf = Chance(80) ? Length::Millimeters(3) : Length();
    group.job.work = 20'000;
    const Length across = Length::Millimeters(solid ? Int(100, 300) : 1220);
    group.job.stock.push_back({.label = "", .along = Length::Millimeters(2440), .across = across});
    if (!solid && Chance(70)) group.job.stock.back().trim = Length::Millimeters(6);
    group.begins.emplace_back();
    Parts(group, ToWholeMillimeters(across) - 12);
    group.plan = Nest(group.job);
    return group;
  }

  static int ToWholeMillimeters(Length length) { return static_cast<int>(ToMillimeters(length)); }

  // Strips, small parts, panels, or all of them.
  void Parts(StockGroup& group, int across) {
    const int kind = Int(0, 3);
    const int least = kind == 0 ? 9 : kind == 1 ? 25 : 80;
    const int most = kind == 0 ? 40 : kind == 1 ? 120 : across;
    for (int left = Int(1, 150), n = 1; left > 0; ++n) {
      const int count = std::min(left, Int(1, kind == 2 ? 8 : 40));
      left -= count;
      NestPart part{.label = "p", .along = Size(kind == 0 ? 200 : 30, kind == 1 ? 200 : 2000)};
      part.across = Size(std::min(least, across - 1), std::min(most, across));
      part.count = count;
      part.may_turn = !group.solid && Chance(50);
      group.parts.push_back({.label = "box side D" + std::to_string(n),
                             .length = part.along,
                             .width = part.across,
                             .count = count});
      group.job.parts.push_back(std::move(part));
    }
  }

  Random random_;
};

std::vector<StockCase> RandomStock(int count) {
  std::vector<StockCase> all;
  const std::uint32_t seed = TestSeed();
  for (int i = 0; i < count; ++i) {
    const std::uint32_t own = seed + static_cast<std::uint32_t>(i);
    all.push_back({"TILLWRIGHT_TEST_SEED=" + std::to_string(own), RandomJob(own).Make()});
  }
  return all;
}

const Label* LabelOf(const Primitive& primitive) { return std::get_if<Label>(&primitive); }

bool IsOf(const SheetGroup& group, std::string_view id) {
  return group.id.ends_with("-" + std::string(id));
}

// Captions are the only lettering below the height of all other.
bool HoldsCaptions(const SheetGroup& group) {
  return IsOf(group, "title") || !group.id.starts_with("stock-");
}

void ExpectLettering(const Sheet& sheet) {
  for (const SheetGroup& group : sheet.groups) {
    for (const Primitive& primitive : group.primitives) {
      const Label* label = LabelOf(primitive);
      if (label == nullptr) continue;
      EXPECT_GE(label->cap_height, HoldsCaptions(group) ? 1.5 : 2.5)
          << group.id << ": " << label->plain;
    }
  }
}

void ExpectGoodSheets(const StockCase& stock, Paper paper) {
  SCOPED_TRACE(stock.name + " on " + std::string(Word(paper)));
  DrawOptions options;
  options.paper = paper;
  const Drawings drawings = DrawStock(stock.plan, options, DrawingFontMetrics());
  EXPECT_EQ(drawings.fault, "");
  for (const Sheet& sheet : drawings.sheets) {
    const auto faults = FindLayoutFaults(sheet, DrawingFontMetrics());
    EXPECT_TRUE(faults.empty()) << sheet.name << "\n" << DescribeFaults(faults);
    ExpectLettering(sheet);
  }
}

TEST(StockDrawing, HasNoLayoutFaultsAndNoSmallLettering) {
  ASSERT_GE(CuratedStock().size(), 5U);
  for (const StockCase& stock : CuratedStock()) {
    for (const Paper paper : Every<Paper>()) ExpectGoodSheets(stock, paper);
  }
}

// Each job on another paper, which the seed chooses: all jobs on all of them would take minutes.
TEST(StockDrawing, HasNoLayoutFaultsWhateverTheJob) {
  const auto papers = Every<Paper>();
  std::size_t at = TestSeed();
  for (const StockCase& stock : RandomStock(2)) {
    ExpectGoodSheets(stock, papers[at++ % papers.size()]);
  }
}

// What the pictures of one layout say together.
struct Said {
  std::map<std::string, int> cuts;
  std::map<std::string, int> letters;  // the first word of each label of a part
  std::map<std::string, int> sizes;    // of offcuts
  std::vector<std::string> explained;  // rows of keys and labels of parts
};

// "P1": of a piece that is drawn by itself.
bool NamesPiece(const std::string& text) {
  return text.size() > 1 && text[0] == 'P' && text[1] >= '1' && text[1] <= '9';
}

Said SaidBy(const std::vector<View>& views) {
  Said said;
  for (const View& view : views) {
    for (const SheetGroup& group : view.groups) {
      for (const Primitive& primitive : group.primitives) {
        const Label* label = LabelOf(primitive);
        if (label == nullptr) continue;
        const std::string& text = label->plain;
        if (IsOf(group, "cuts")) ++said.cuts[text];
        if (IsOf(group, "parts")) ++said.letters[text.substr(0, text.find(' '))];
        if (IsOf(group, "letters") && !NamesPiece(text))
          ++(text.find(' ') == text.npos ? said.letters : said.sizes)[text];
        if (IsOf(group, "offcuts")) {
          ++said.sizes[text.starts_with("offcut ") ? text.substr(7) : text];
        }
        if (IsOf(group, "key") || IsOf(group, "parts")) said.explained.push_back(text);
      }
    }
  }
  return said;
}

std::string SizeText(const StockPlan& plan, Length a, Length b) {
  return FormatLength(a, plan.units) + " × " + FormatLength(b, plan.units);
}

// Every part under its letter, every offcut worth keeping with its size, every cut once, and in a
// key or a part itself what every letter stands for, with the sizes that were reckoned.
void ExpectAllIsSaid(const StockPlan& plan, const StockGroup& group, const NestLayout& layout) {
  const PaperBox space = SpaceOn(Paper::kA4, Orientation::kLandscape);
  const LayoutViews drawn =
      DrawLayout(plan, group, layout, {"SHEET", "wood"}, 1, space, DrawingFontMetrics());
  ASSERT_EQ(drawn.fault, "");
  const Said said = SaidBy(drawn.views);
  std::map<std::string, int> cuts;
  for (std::size_t i = 1; i <= CutsOf(layout).size(); ++i) cuts[std::to_string(i)] = 1;
  EXPECT_EQ(said.cuts, cuts);
  const StockNames names(plan, group, layout);
  std::map<std::string, int> letters;
  std::map<std::string, int> offcuts;
  int parts = 0;
  bool runs = false;
  for (const NestPiece& piece : layout.pieces) {
    parts += piece.kind == NestPieceKind::kPart;
    runs = runs || piece.run >= 0;
    if (piece.kind == NestPieceKind::kPart) ++letters[names.LetterOf(piece.part)];
    if (piece.kind != NestPieceKind::kOffcut || !StockNames::IsUseful(piece)) continue;
    ++offcuts[SizeText(plan, piece.rect.width, piece.rect.height)];
  }
  int labels = 0;
  for (const auto& [letter, count] : said.letters) labels += count;
  EXPECT_EQ(labels, parts);
  if (!runs) {
    EXPECT_EQ(said.letters, letters);  // in runs, a front is named by itself
  }
  for (const auto& [size, count] : offcuts) {
    EXPECT_GE(said.sizes.contains(size) ? said.sizes.at(size) : 0, count) << size;
  }
  for (const NestPiece& piece : layout.pieces) {
    if (piece.kind != NestPieceKind::kPart) continue;
    const auto at = static_cast<std::size_t>(piece.part);
    const NestPart& part = group.job.parts[at];
    const std::string size = SizeText(plan, part.along, part.across);
    EXPECT_TRUE(std::ranges::any_of(said.explained,
                                    [&](const std::string& text) {
                                      return text.starts_with(names.LetterOf(piece.part) + " ") &&
                                             text.find(size) != text.npos &&
                                             text.find(group.parts[at].label) != text.npos;
                                    }))
        << names.LetterOf(piece.part) << " " << size;
  }
}

void ExpectAllIsSaid(const StockCase& stock) {
  for (const StockGroup& group : stock.plan.groups) {
    for (const LayoutRun& run : LayoutRuns(group)) {
      SCOPED_TRACE(stock.name + ", layout " + std::to_string(run.front() + 1));
      ExpectAllIsSaid(stock.plan, group, group.plan.layouts[run.front()]);
    }
  }
}

TEST(StockDrawing, LabelsEveryPartNumbersEveryCutAndExplainsEveryLetter) {
  for (const StockCase& stock : CuratedStock()) ExpectAllIsSaid(stock);
  for (const StockCase& stock : RandomStock(2)) ExpectAllIsSaid(stock);
}

LayoutViews ViewsOf(const StockCase& stock, const StockGroup& group, const NestLayout& layout) {
  const PaperBox space = SpaceOn(Paper::kLetter, Orientation::kLandscape);
  return DrawLayout(stock.plan, group, layout, {"SHEET", "wood"}, 1, space, DrawingFontMetrics());
}

// Of each run: a row of the key that names its fronts, each of them named where it lies, and the
// piece that they are cut from outlined with an arrow along it where there is room for one.
TEST(StockDrawing, NamesTheFrontsOfEveryRunAndTheirOrder) {
  std::size_t runs = 0;
  std::size_t arrows = 0;
  for (const StockCase& stock : CuratedStock()) {
    for (const StockGroup& group : stock.plan.groups) {
      for (const NestLayout& layout : group.plan.layouts) {
        const LayoutViews drawn = ViewsOf(stock, group, layout);
        std::string said = "\n";
        for (const std::string& text : SaidBy(drawn.views).explained) said += text + "\n";
        std::size_t outlines = 0;
        for (const View& view : drawn.views) {
          for (const SheetGroup& g : view.groups) {
            if (!IsOf(g, "runs")) continue;
            for (const Primitive& p : g.primitives) {
              const Polyline* line = std::get_if<Polyline>(&p);
              outlines += line != nullptr && line->closed;
              arrows += std::holds_alternative<Arrowhead>(p);
            }
          }
        }
        std::size_t pieces = 0;
        for (const NestPiece& piece : layout.pieces) {
          if (piece.run < 0 || piece.kind == NestPieceKind::kPart) continue;
          const StockRun& run = group.runs[static_cast<std::size_t>(piece.run)];
          EXPECT_NE(said.find("\n" + run.label + "  " + FrontsOf(run)), std::string::npos) << said;
          for (const std::string& front : run.fronts) {
            EXPECT_NE(said.find(front), std::string::npos) << front << " in" << said;
          }
          pieces += run.fronts.size() > 1;
        }
        EXPECT_EQ(outlines, pieces) << stock.name;
        runs += pieces;
      }
    }
  }
  EXPECT_GE(runs, 8U);
  EXPECT_GE(arrows, 1U);
}

// Layouts that are alike are drawn once, and every layout is drawn.
TEST(StockDrawing, DrawsEveryLayoutOnce) {
  for (const StockCase& stock : CuratedStock()) {
    for (const StockGroup& group : stock.plan.groups) {
      std::vector<std::size_t> all;
      for (const LayoutRun& run : LayoutRuns(group)) all.insert(all.end(), run.begin(), run.end());
      std::ranges::sort(all);
      ASSERT_EQ(all.size(), group.plan.layouts.size()) << stock.name;
      for (std::size_t i = 0; i < all.size(); ++i) EXPECT_EQ(all[i], i);
    }
  }
}

TEST(StockDrawing, SaysHowOftenALayoutIsCut) {
  StockPlan plan;
  StockGroup& group = plan.groups.emplace_back();
  group.thickness = group.rough = Length::Inches(3, 4);
  group.parts.push_back({.label = "shelf",
                         .length = Length::Inches(90, 1),
                         .width = Length::Inches(44, 1),
                         .count = 3});
  group.job.parts.push_back({.label = "shelf",
                             .along = Length::Inches(90, 1),
                             .across = Length::Inches(44, 1),
                             .count = 3});
  group.job.stock.push_back(
      {.label = "", .along = Length::Inches(96, 1), .across = Length::Inches(48, 1)});
  group.begins.emplace_back();
  group.plan = Nest(group.job);
  ASSERT_EQ(group.plan.layouts.size(), 3U);
  const Drawings drawings = DrawStock(plan, {}, DrawingFontMetrics());
  ASSERT_EQ(drawings.views.size(), 1U);
  EXPECT_NE(drawings.views[0].title.find("SHEETS 1–3 OF 3 (× 3)"), std::string::npos)
      << drawings.views[0].title;
}

}  // namespace
}  // namespace tillwright::testing
