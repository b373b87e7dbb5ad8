#include "sheet/title_block.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "sheet/annotation.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr double kBand = 18;         // mm, height of a full band of cells
constexpr double kWideEnough = 240;  // mm inside the border for a single band
constexpr double kCheckWidth = 62;   // mm, cell of the print-check bars
constexpr double kPad = 1.4;         // mm inside cells
constexpr double kCaptionCap = 1.5;
constexpr double kSpaceToViews = 4;  // mm between the block and the views

struct Cell {
  std::string caption;
  std::string value;
  bool bold = false;
  double cap_height = 2.5;
};

// Up to two cells above each other.
struct Column {
  std::vector<Cell> cells;
  double width = 0;    // mm; flexible columns: least
  double stretch = 0;  // share of the width left over; 0: fixed
};

void AddCell(Column& column, std::string caption, const std::string& value, bool bold) {
  if (!value.empty()) column.cells.push_back({std::move(caption), value, bold, 2.5});
}

Column ColumnOf(double width, double stretch) { return {{}, width, stretch}; }

std::string SheetNumber(const TitleBlock& block) {
  return std::to_string(block.sheet) + " / " + std::to_string(block.sheets);
}

Column NamesColumn(const TitleBlock& block) {
  Column names = ColumnOf(40, 3);
  AddCell(names, "PROJECT", block.project, false);
  AddCell(names, "TITLE", block.title, true);
  return names;
}

Column ViewColumn(const TitleBlock& block) {
  Column views = ColumnOf(30, 2);
  AddCell(views, "VIEW", block.view, false);
  AddCell(views, "MATERIAL", block.material, false);
  return views;
}

Column DateColumn(const TitleBlock& block) {
  Column dates = ColumnOf(30, 0);
  AddCell(dates, "DATE", block.date, false);
  AddCell(dates, "DRAWN", block.drawn, false);
  return dates;
}

Column ScaleColumn(const TitleBlock& block) {
  Column scales = ColumnOf(32, 0);
  AddCell(scales, "SCALE", block.scale, false);
  AddCell(scales, "UNITS", block.units, false);
  return scales;
}

Column SheetColumn(const TitleBlock& block, std::string_view paper) {
  Column sheets = ColumnOf(22, 0);
  sheets.cells.push_back({"SHEET", SheetNumber(block), true, 3.2});
  AddCell(sheets, "SIZE", std::string(paper), false);
  return sheets;
}

// Draws a band of cells.
class Band {
 public:
  Band(SheetGroup& out, const PaperBox& box, const TextMetrics& metrics)
      : out_(out), box_(box), metrics_(metrics) {}

  // Columns without cells take no room; what is left over goes to those that stretch, or to the
  // last when none does.
  void Draw(std::vector<Column> columns) {
    columns.erase(std::remove_if(columns.begin(), columns.end(),
                                 [](const Column& c) { return c.cells.empty(); }),
                  columns.end());
    Stretch(columns);
    double left = box_.left;
    for (const Column& column : columns) {
      DrawColumn(column, left);
      left += column.width;
    }
  }

 private:
  void Stretch(std::vector<Column>& columns) const {
    if (columns.empty()) return;
    double left_over = box_.Width();
    double shares = 0;
    for (const Column& c : columns) {
      left_over -= c.width;
      shares += c.stretch;
    }
    if (shares <= 0) columns.back().width += left_over;
    for (Column& c : columns) {
      if (shares > 0) c.width += left_over * c.stretch / shares;
    }
  }

  void DrawColumn(const Column& column, double left) {
    if (left > box_.left) {
      out_.primitives.emplace_back(LineOf({left, box_.top}, {left, box_.bottom}, Pen::kCell));
    }
    const double height = box_.Height() / static_cast<double>(column.cells.size());
    for (std::size_t i = 0; i < column.cells.size(); ++i) {
      const double top = box_.top + height * static_cast<double>(i);
      if (i > 0) {
        out_.primitives.emplace_back(LineOf({left, top}, {left + column.width, top}, Pen::kCell));
      }
      DrawCell(column.cells[i], {left, top, left + column.width, top + height});
    }
  }

  void DrawCell(const Cell& cell, const PaperBox& box) {
    LabelStyle style;
    style.level = TextLevel::kBaseline;
    style.cap_height = kCaptionCap;
    style.max_width = box.Width() - 2 * kPad;
    const double x = box.left + kPad;
    out_.primitives.emplace_back(
        MakePlainLabel(metrics_, cell.caption, style, {x, box.top + 1.2 + kCaptionCap}));
    style.cap_height = cell.cap_height;
    if (cell.bold) style.weight = TextWeight::kBold;
    const double middle = (box.top + 1.2 + kCaptionCap + box.bottom) / 2;
    const double baseline = middle + cell.cap_height / 2 + 0.1;
    // A material or scale may hold fractions; names and numbers of sheets never do.
    if (cell.caption == "MATERIAL" || cell.caption == "SCALE") {
      out_.primitives.emplace_back(MakeLabel(metrics_, cell.value, style, {x, baseline}, ""));
      return;
    }
    const std::vector<std::string> lines = LinesOf(cell, style, box);
    const double pitch = 1.7 * cell.cap_height;
    double y = baseline - pitch * static_cast<double>(lines.size() - 1) / 2;
    for (const std::string& line : lines) {
      out_.primitives.emplace_back(MakePlainLabel(metrics_, line, style, {x, y}));
      y += pitch;
    }
  }

  // In two lines where one is too short and the cell is high enough.
  std::vector<std::string> LinesOf(const Cell& cell, LabelStyle style, const PaperBox& box) const {
    if (box.Height() < kCaptionCap + 4.6 * cell.cap_height) return {cell.value};
    const double width = std::exchange(style.max_width, 0);
    std::vector<std::string> lines = WrapText(metrics_, cell.value, style, width);
    if (lines.size() < 2) return {cell.value};
    for (; lines.size() > 2; lines.erase(lines.begin() + 2)) lines[1] += ' ' + lines[2];
    return lines;
  }

  SheetGroup& out_;
  PaperBox box_;
  const TextMetrics& metrics_;
};

void AddPrintCheck(SheetGroup& out, const PaperBox& cell, const TextMetrics& metrics) {
  LabelStyle style;
  style.level = TextLevel::kBaseline;
  style.cap_height = kCaptionCap;
  style.max_width = cell.Width() - 2 * kPad;
  out.primitives.emplace_back(
      MakePlainLabel(metrics, "PRINT CHECK: print at 100 %, measure both bars", style,
                     {cell.left + kPad, cell.top + 1.2 + kCaptionCap}));
  const double x = cell.left + 2.2;
  const double space = (cell.Height() - 4.5) / 2;
  const double first = cell.top + 3.4 + space;
  AddCheckBar(out,
              {{x, first}, PaperAxis::kHorizontal, CheckUnit::kMillimeter, 50, false, "50 mm", 1.5},
              metrics);
  AddCheckBar(
      out,
      {{x, first + space - 0.4}, PaperAxis::kHorizontal, CheckUnit::kInch, 2, false, "2 in", 1.5},
      metrics);
}

void AddProjectionCell(SheetGroup& out, const PaperBox& cell, Projection projection,
                       const TextMetrics& metrics) {
  LabelStyle style;
  style.level = TextLevel::kBaseline;
  style.cap_height = kCaptionCap;
  out.primitives.emplace_back(MakePlainLabel(metrics, "PROJECTION", style,
                                             {cell.left + kPad, cell.top + 1.2 + kCaptionCap}));
  AddProjectionSymbol(out, {cell.Center().x, (cell.top + 3.4 + cell.bottom) / 2}, projection);
}

void AddBorder(SheetGroup& out, const Sheet& sheet) {
  const PaperBox frame = sheet.frame;
  constexpr double kMark = 4;  // mm, centering marks outside the frame
  out.primitives.emplace_back(BoxOutline(frame, Pen::kFrame));
  const PaperPoint middle = frame.Center();
  const auto mark = [&out](PaperPoint a, PaperPoint b) {
    out.primitives.emplace_back(LineOf(a, b, Pen::kFrame));
  };
  mark({middle.x, frame.top - kMark}, {middle.x, frame.top});
  mark({middle.x, frame.bottom}, {middle.x, frame.bottom + kMark});
  mark({frame.left - kMark, middle.y}, {frame.left, middle.y});
  mark({frame.right, middle.y}, {frame.right + kMark, middle.y});
}

bool HasOneBand(const Sheet& sheet) { return sheet.frame.Width() >= kWideEnough; }

double BlockHeight(const Sheet& sheet) { return HasOneBand(sheet) ? kBand : 2 * kBand; }

// Print check on the left, projection on the right when wanted, columns between.
void AddCheckedBand(SheetGroup& out, PaperBox band, Projection projection,
                    std::vector<Column> columns, const TextMetrics& metrics) {
  AddPrintCheck(out, {band.left, band.top, band.left + kCheckWidth, band.bottom}, metrics);
  band.left += kCheckWidth;
  out.primitives.emplace_back(LineOf({band.left, band.top}, {band.left, band.bottom}, Pen::kCell));
  if (projection != Projection::kNone) {
    constexpr double kWidth = 21;
    band.right -= kWidth;
    AddProjectionCell(out, {band.right, band.top, band.right + kWidth, band.bottom}, projection,
                      metrics);
    out.primitives.emplace_back(
        LineOf({band.right, band.top}, {band.right, band.bottom}, Pen::kCell));
  }
  Band(out, band, metrics).Draw(std::move(columns));
}

void AddBlock(SheetGroup& out, const Sheet& sheet, std::string_view paper, const TitleBlock& block,
              const TextMetrics& metrics) {
  PaperBox box = sheet.frame;
  box.top = box.bottom - BlockHeight(sheet);
  out.primitives.emplace_back(LineOf({box.left, box.top}, {box.right, box.top}, Pen::kFrame));
  if (HasOneBand(sheet)) {
    AddCheckedBand(out, box, block.projection,
                   {NamesColumn(block), ViewColumn(block), DateColumn(block), ScaleColumn(block),
                    SheetColumn(block, paper)},
                   metrics);
    return;
  }
  const double middle = box.top + kBand;
  out.primitives.emplace_back(LineOf({box.left, middle}, {box.right, middle}, Pen::kCell));
  Band(out, {box.left, box.top, box.right, middle}, metrics)
      .Draw({NamesColumn(block), ViewColumn(block), SheetColumn(block, paper)});
  Column scales = ScaleColumn(block);
  scales.stretch = 1;
  AddCheckedBand(out, {box.left, middle, box.right, box.bottom}, block.projection,
                 {DateColumn(block), scales}, metrics);
}

}  // namespace

Sheet MakeSheet(Paper paper, Orientation orientation, std::string name, std::string title) {
  const PaperSize size = SizeOf(paper, orientation);
  Sheet sheet;
  sheet.width = size.width;
  sheet.height = size.height;
  sheet.name = std::move(name);
  sheet.title = std::move(title);
  sheet.frame = Grow({0, 0, size.width, size.height}, -kBorderMargin);
  return sheet;
}

PaperBox DrawingSpace(const Sheet& sheet) {
  PaperBox space = Grow(sheet.frame, -kSpaceToViews);
  space.bottom = sheet.frame.bottom - BlockHeight(sheet) - kSpaceToViews;
  return space;
}

PaperBox AddBorderAndTitle(Sheet& sheet, std::string_view paper_name, const TitleBlock& block,
                           const TextMetrics& metrics) {
  SheetGroup& border = AddGroup(sheet, "border", "Border", 0);
  AddBorder(border, sheet);
  SheetGroup& title = AddGroup(sheet, "title-block", "Title block", 0);
  AddBlock(title, sheet, paper_name, block, metrics);
  return DrawingSpace(sheet);
}

void AddProjectionSymbol(SheetGroup& out, PaperPoint center, Projection projection) {
  if (projection == Projection::kNone) return;
  constexpr double kSmall = 1.5;  // radii of the cone's ends
  constexpr double kLarge = 3;
  // Third angle: the end view of the cone stands on the side of its small end, here the left.
  const double sign = projection == Projection::kThirdAngle ? -1 : 1;
  const PaperPoint rings{center.x + sign * 3.7, center.y};
  const double near_x = center.x - sign * 0.9;
  const double far_x = center.x - sign * 6.4;
  const bool small_near = projection == Projection::kThirdAngle;
  const double near = small_near ? kSmall : kLarge;
  const double far = small_near ? kLarge : kSmall;
  out.primitives.emplace_back(Circle{rings, kSmall, Pen::kSymbol, Tone::kNone});
  out.primitives.emplace_back(Circle{rings, kLarge, Pen::kSymbol, Tone::kNone});
  out.primitives.emplace_back(Polyline{{{near_x, center.y - near},
                                        {far_x, center.y - far},
                                        {far_x, center.y + far},
                                        {near_x, center.y + near}},
                                       true,
                                       Pen::kSymbol,
                                       Tone::kNone});
  AddCenterLine(out, {rings.x - kLarge, center.y}, {rings.x + kLarge, center.y}, 0.6);
  AddCenterLine(out, {rings.x, center.y - kLarge}, {rings.x, center.y + kLarge}, 0.6);
  AddCenterLine(out, {near_x, center.y}, {far_x, center.y}, 0.6);
}

}  // namespace tillwright
