#include "sheet/view_tools.h"

#include <algorithm>
#include <array>

#include "sheet/annotation.h"
#include "sheet/rich_text.h"

namespace tillwright {

std::vector<PaperBox> LabelBoxes(std::span<const SheetGroup> groups) {
  std::vector<PaperBox> boxes;
  for (const SheetGroup& group : groups) {
    for (const Primitive& primitive : group.primitives) {
      if (const Label* label = std::get_if<Label>(&primitive)) boxes.push_back(label->box);
    }
  }
  return boxes;
}

namespace {

bool IsNear(const PaperBox& box, const PaperSegment& s) {
  return box.right >= std::min(s.from.x, s.to.x) && box.left <= std::max(s.from.x, s.to.x) &&
         box.bottom >= std::min(s.from.y, s.to.y) && box.top <= std::max(s.from.y, s.to.y);
}

}  // namespace

void AddBroken(SheetGroup& out, const Polyline& line, std::span<const PaperBox> boxes) {
  constexpr double kClear = 0.6;
  bool whole = true;
  std::vector<Polyline> pieces;
  for (std::size_t i = 0; i + (line.closed ? 0 : 1) < line.points.size(); ++i) {
    const PaperSegment side{line.points[i], line.points[(i + 1) % line.points.size()]};
    HatchArea area =
        AreaOf(Grow({std::min(side.from.x, side.to.x), std::min(side.from.y, side.to.y),
                     std::max(side.from.x, side.to.x), std::max(side.from.y, side.to.y)},
                    1));
    for (const PaperBox& box : boxes) {
      const PaperBox hole = Grow(box, kClear + StyleOf(line.pen).width / 2);
      if (IsNear(hole, side)) area.box_holes.push_back(hole);
    }
    if (area.box_holes.empty()) {
      pieces.push_back(LineOf(side.from, side.to, line.pen));
      continue;
    }
    whole = false;
    for (const PaperSegment& piece : ClipToArea(area, side)) {
      pieces.push_back(LineOf(piece.from, piece.to, line.pen));
    }
  }
  if (whole) {
    out.primitives.push_back(line);
  } else {
    std::ranges::move(pieces, std::back_inserter(out.primitives));
  }
}

void CollectPaths(std::span<const SheetGroup> groups, PathSet& paths) {
  for (const SheetGroup& group : groups) {
    for (const Primitive& primitive : group.primitives) {
      const Label* label = std::get_if<Label>(&primitive);
      if (label == nullptr || label->path.empty()) continue;
      std::string_view rest = label->path;
      while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(' '), rest.size());
        paths.emplace(rest.substr(0, end));
        rest.remove_prefix(std::min(end + 1, rest.size()));
      }
    }
  }
}

namespace {

// A scale bar of two fields, each a round number that is 8 mm or more on paper.
ScaleBar BarOf(PaperPoint at, const Scale& scale, Unit unit) {
  constexpr std::array kInches{0.5, 1.0, 3.0, 6.0, 12.0, 24.0, 60.0, 120.0, 240.0, 600.0, 1200.0};
  constexpr std::array kMillimeters{10.0,   20.0,   50.0,   100.0,   200.0,  500.0,
                                    1000.0, 2000.0, 5000.0, 10000.0, 20000.0};
  const bool inch = unit == Unit::kInch;
  const std::span<const double> series = inch ? std::span<const double>(kInches) : kMillimeters;
  const double unit_mm = inch ? 25.4 : 1;
  double field = series.back();
  for (const double size : series) {
    if (size * unit_mm * scale.paper_per_mm < 8) continue;
    field = size;
    break;
  }
  ScaleBar bar{.at = at, .field = field * unit_mm * scale.paper_per_mm, .fields = 2};
  const auto text = [&](int n) {
    return field < 1 ? (n == 1 ? std::string("1/2") : std::string("1"))
                     : std::to_string(n * static_cast<int>(field));
  };
  bar.labels = {"0", text(1), text(2)};
  bar.unit = inch ? "in" : "mm";
  return bar;
}

}  // namespace

void FinishView(View& view, double left, Unit unit, const TextMetrics& metrics) {
  const PaperBox covered = Bounds(std::span(view.groups));
  SheetGroup& group = AddViewGroup(view, "title", view.title, 0);
  std::string caption = "SCALE ";
  caption += view.scale.name;
  const double base = covered.bottom + 8;
  const PaperBox title =
      AddViewTitle(group, {.at = {left, base}, .title = view.title, .caption = caption}, metrics);
  // Beside the title where the view is as wide, else below it.
  ScaleBar bar = BarOf({title.right + 8, base - 1.6}, view.scale, unit);
  constexpr double kUnitRoom = 6;
  if (bar.at.x + 2 * bar.field + kUnitRoom > covered.right) bar.at = {left, title.bottom + 2.4};
  AddScaleBar(group, bar, metrics);
  view.box = Join(covered, Bounds(group));
}

SheetGroup& AddViewGroup(View& view, std::string_view id, std::string title, int depth) {
  std::string full = view.name;
  full += '-';
  full += id;
  view.groups.push_back({std::move(full), std::move(title), "", depth, {}});
  return view.groups.back();
}

}  // namespace tillwright
