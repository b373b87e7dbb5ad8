#include <algorithm>
#include <string>

#include "check/figures.h"
#include "draw/fitting/fitting.h"
#include "sheet/rich_text.h"
#include "sheet/view_tools.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr double kRow = 5.4;   // mm, from row to row
constexpr double kLine = 4.4;  // mm, from line to line of one row
constexpr double kCap = 1.9;   // mm
constexpr double kHead = 1.5;  // mm
constexpr double kPad = 1.2;   // mm, beside a text

struct Column {
  std::string head;
  double width;
};

class FittingTableDrawing {
 public:
  FittingTableDrawing(const Spec& spec, const Bank& bank, const GapCheck& check, double height,
                      const TextMetrics& metrics)
      : spec_(spec), bank_(bank), check_(check), height_(height), metrics_(metrics) {
    columns_ = {{"NO.", 12}, {"BETWEEN", 33}, {"PLANNED", 16}, {"MIN \u2013 MAX", 31}};
    if (!spec.spacers.empty()) columns_.push_back({"SPACERS", 31});
    columns_.push_back({"MEASURED", 19});
  }

  std::vector<View> Draw() {
    for (std::size_t i = 0; i < check_.stacks.size();) {
      const std::size_t last = LastAlike(i);
      Row(i, last);
      i = last + 1;
    }
    for (View& view : views_) view.box = view.outline = Bounds(view.groups.front());
    views_.push_back(Blanks());
    return std::move(views_);
  }

 private:
  double Width() const {
    double width = 0;
    for (const Column& column : columns_) width += column.width;
    return width;
  }
  SheetGroup& Group() { return views_.back().groups.front(); }
  void Line(double from, double to, Pen pen) {
    Group().primitives.push_back(LineOf({from, y_}, {to, y_}, pen));
  }
  void Text(const std::string& text, double x, double y, double cap = kCap) {
    Group().primitives.emplace_back(MakeLabel(metrics_, text, {.cap_height = cap}, {x, y}, {}));
  }

  void NewColumn() {
    View& view = views_.emplace_back();
    view.name = views_.size() == 1 ? "gaps" : "gaps-" + std::to_string(views_.size());
    view.title = "GAPS";
    view.scale.name = "";
    AddViewGroup(view, "table", "Gaps in the order they are set", 0);
    const LabelStyle style{
        .cap_height = 2.5, .weight = TextWeight::kBold, .level = TextLevel::kBaseline};
    Group().primitives.emplace_back(MakePlainLabel(
        metrics_, views_.size() == 1 ? "GAPS, FROM THE BOTTOM UP" : "GAPS, CONTINUED", style,
        {0, 3}));
    y_ = 7;
    double x = 0;
    for (const Column& column : columns_) {
      Group().primitives.emplace_back(MakePlainLabel(
          metrics_, column.head,
          {.cap_height = kHead, .level = TextLevel::kBaseline, .max_width = column.width - 1},
          {x, y_}));
      x += column.width;
    }
    y_ += 1.2;
    Line(0, Width(), Pen::kCell);
  }

  // Gaps that lie one after another along an edge and are alike in every figure share a row; gaps
  // between fronts above one another do so only in a bank with very many.
  std::size_t LastAlike(std::size_t first) const {
    constexpr std::size_t kMany = 24;
    const StackUp& one = check_.stacks[first];
    if (one.axis == Axis::kY && !one.is_overlap && check_.stacks.size() < kMany) return first;
    std::size_t last = first;
    while (last + 1 < check_.stacks.size() && Alike(one, check_.stacks[last + 1])) ++last;
    return last;
  }

  bool Alike(const StackUp& a, const StackUp& b) const {
    if (a.is_overlap != b.is_overlap || a.axis != b.axis || a.nominal != b.nominal ||
        a.spread != b.spread) {
      return false;
    }
    const auto i = static_cast<std::size_t>(a.index);
    const auto j = static_cast<std::size_t>(b.index);
    if (a.is_overlap) return bank_.overlaps[i].edge == bank_.overlaps[j].edge;
    return bank_.gaps[i].at == bank_.gaps[j].at;
  }

  std::string NumberText(std::size_t first, std::size_t last) const {
    return std::to_string(first + 1) + (last > first ? "\u2013" + std::to_string(last + 1) : "");
  }

  // What several in a row are between: "opening.left to D4 … D1".
  std::string SubjectText(std::size_t first, std::size_t last) const {
    const StackUp& one = check_.stacks[first];
    const StackUp& other = check_.stacks[last];
    if (first == last) return SubjectOf(bank_, one);
    const auto i = static_cast<std::size_t>(one.index);
    const auto j = static_cast<std::size_t>(other.index);
    const auto both = [](const std::string& a, const std::string& b) {
      return a == b ? a : a + " \u2026 " + b;
    };
    if (one.is_overlap) {
      const auto id = [&](const Overlap& overlap) {
        return ToText(bank_.spaces[static_cast<std::size_t>(overlap.space)].id);
      };
      return both(id(bank_.overlaps[i]), id(bank_.overlaps[j])) + " " +
             std::string(Word(bank_.overlaps[i].edge));
    }
    const Gap& a = bank_.gaps[i];
    const Gap& b = bank_.gaps[j];
    return both(ToText(bank_, a.from), ToText(bank_, b.from)) + " to " +
           both(ToText(bank_, a.to), ToText(bank_, b.to));
  }

  std::string Range(const StackUp& stack) const {
    const double nominal = ToMillimeters(stack.nominal);
    const double spread = stack.spread.Millimeters();
    if (stack.spread.halves == 0) return AboutText(nominal, bank_.units);
    return AboutText(nominal - spread, bank_.units) + " \u2013 " +
           AboutText(nominal + spread, bank_.units);
  }

  std::string Pieces(const StackUp& stack) const {
    if (!stack.shims) return {};
    std::string text;
    for (const Shim& shim : stack.shims->pieces) {
      text += (text.empty() ? "" : " + ") + std::to_string(shim.count) + " \u00d7 " +
              SpacerName(spec_.spacers[static_cast<std::size_t>(shim.spacer)], bank_.units);
    }
    return text.empty() ? "none" : text;
  }

  void Row(std::size_t first, std::size_t last_alike) {
    const StackUp& stack = check_.stacks[first];
    std::vector<std::string> cells{NumberText(first, last_alike), SubjectText(first, last_alike),
                                   AboutText(ToMillimeters(stack.nominal), bank_.units),
                                   Range(stack)};
    if (!spec_.spacers.empty()) cells.push_back(Pieces(stack));
    std::vector<std::vector<std::string>> lines;
    std::size_t most = 1;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      lines.push_back(WrapText(metrics_, cells[i], {.cap_height = kCap}, columns_[i].width - kPad));
      most = std::max(most, lines.back().size());
    }
    const double tall = kRow + kLine * static_cast<double>(most - 1);
    if (views_.empty() || y_ + tall > height_) NewColumn();
    double x = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      for (std::size_t n = 0; n < lines[i].size(); ++n) {
        Text(lines[i][n], x, y_ + kRow / 2 + kLine * static_cast<double>(n));
      }
      x += columns_[i].width;
    }
    y_ += tall;
    Line(x, x + columns_.back().width, Pen::kOutline);  // to write on
    Line(0, x - kPad, Pen::kHatch);
  }

  // --- What else is measured ---------------------------------------------------------------------

  View Blanks() {
    View view;
    view.name = "blanks";
    view.title = "MEASURE";
    view.scale.name = "";
    SheetGroup& group = AddViewGroup(view, "table", "What to measure", 0);
    const LabelStyle bold{
        .cap_height = 2.5, .weight = TextWeight::kBold, .level = TextLevel::kBaseline};
    group.primitives.emplace_back(
        MakePlainLabel(metrics_, "MEASURE BEFORE YOU FIT THE FRONTS", bold, {0, 3}));
    double y = 8.5;
    for (const char* what :
         {"Width at the bottom", "Width at the middle", "Width at the top", "Height at the left",
          "Height at the right", "Diagonal rising", "Diagonal falling"}) {
      group.primitives.emplace_back(MakePlainLabel(
          metrics_, what, {.cap_height = kCap, .level = TextLevel::kBaseline}, {0, y}));
      group.primitives.push_back(LineOf({32, y + 0.8}, {58, y + 0.8}, Pen::kOutline));
      y += 5.2;
    }
    Said(group, y);
    view.box = view.outline = Bounds(group);
    return view;
  }

  // How the opening leans, and the shims behind the slides, when it was measured.
  void Said(SheetGroup& group, double y) {
    std::vector<std::string> lines;
    if (check_.lean && !check_.lean->IsZero()) {
      const Length lean = *check_.lean;
      lines.push_back("Leans " + AboutText(ToMillimeters(Max(lean, -lean)), bank_.units) +
                      (lean > Length() ? " to the right" : " to the left"));
    }
    for (const MeasuredCell& cell : check_.cells) {
      if (lines.size() > 7) break;  // the table of the check has them all
      constexpr Length kSeen = Length::Picometers(200'000'000);  // 0.2 mm
      if (cell.shim_left < kSeen && cell.shim_right < kSeen) continue;
      lines.push_back(ToText(bank_.spaces[static_cast<std::size_t>(cell.space)].id) +
                      ": shims behind slides " +
                      AboutText(ToMillimeters(cell.shim_left), bank_.units) + ", " +
                      AboutText(ToMillimeters(cell.shim_right), bank_.units));
    }
    for (const std::string& line : lines) {
      group.primitives.emplace_back(MakeLabel(
          metrics_, line, {.cap_height = kCap, .level = TextLevel::kBaseline}, {0, y}, {}));
      y += 5;
    }
  }

  const Spec& spec_;
  const Bank& bank_;
  const GapCheck& check_;
  double height_;
  const TextMetrics& metrics_;
  std::vector<Column> columns_;
  std::vector<View> views_;
  double y_ = 0;
};

}  // namespace

std::vector<View> FittingTable(const Spec& spec, const Bank& bank, const GapCheck& check,
                               double height, const TextMetrics& metrics) {
  return FittingTableDrawing(spec, bank, check, height, metrics).Draw();
}

}  // namespace tillwright
