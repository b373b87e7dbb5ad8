#include "draw/part/part_sheet_faces.h"

#include <algorithm>
#include <functional>

#include "sheet/annotation.h"
#include "sheet/hatch.h"

namespace tillwright {
namespace {

constexpr double kHatchSpacing = 1.2;  // mm
constexpr double kHoleRadius = 0.7;    // mm: a hole's size is its bolt's, which no spec gives
constexpr double kThinnest = 1.0;      // mm on paper: thinner sections are shaded, not hatched

struct Range {
  Length low, high;
};

// What is left of [0, whole] without the ranges.
std::vector<Range> Without(Length whole, std::vector<Range> taken) {
  std::ranges::sort(taken, {}, &Range::low);
  std::vector<Range> left;
  Length from;
  for (const Range& range : taken) {
    if (range.low > from) left.push_back({from, Min(range.low, whole)});
    from = Max(from, range.high);
  }
  if (from < whole) left.push_back({from, whole});
  return left;
}

// The stretches of a band's edge at `at` that no deeper cut takes away.
std::vector<Range> EdgeStretches(const PartShape& shape, const PlacedCut& band, Length at) {
  const Length whole = band.IsUpright() ? shape.up : shape.right;
  std::vector<Range> taken;
  for (const PlacedCut& other : shape.bands) {
    if (&other == &band || other.partly || other.behind || other.depth < band.depth) continue;
    if (other.IsUpright() != band.IsUpright()) {
      taken.push_back({other.low, other.high});
    } else if (other.low < at && at < other.high) {
      return {};
    }
  }
  return Without(whole, std::move(taken));
}

Rect BandRect(const PartShape& shape, const PlacedCut& band) {
  const Length size = band.high - band.low;
  return band.IsUpright() ? Rect{band.low, Length(), size, shape.up}
                          : Rect{Length(), band.low, shape.right, size};
}

void AddBandEdge(SheetGroup& out, const PartShape& shape, const PlacedCut& band, Length at,
                 const PaperMap& map) {
  const Length limit = band.IsUpright() ? shape.right : shape.up;
  if (at <= Length() || at >= limit) return;
  const Pen pen = band.behind ? Pen::kHidden : Pen::kThin;
  for (const Range& range : EdgeStretches(shape, band, at)) {
    const PaperPoint from = band.IsUpright() ? map.At(at, range.low) : map.At(range.low, at);
    const PaperPoint to = band.IsUpright() ? map.At(at, range.high) : map.At(range.high, at);
    out.primitives.emplace_back(LineOf(from, to, pen));
  }
}

// How deep the cuts in one direction and face go, as steps along the side they cross.
struct Step {
  Length low, high, depth;
};
std::vector<Step> Profile(const PartShape& shape, bool upright, bool behind) {
  const Length whole = upright ? shape.right : shape.up;
  std::vector<Length> places{Length(), whole};
  const auto counts = [&](const PlacedCut& b) {
    return b.IsUpright() == upright && b.behind == behind && !b.partly;
  };
  for (const PlacedCut& band : shape.bands) {
    if (!counts(band)) continue;
    for (const Length at : {band.low, band.high}) {
      if (at > Length() && at < whole) places.push_back(at);
    }
  }
  std::ranges::sort(places);
  std::vector<Step> steps;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    if (places[i] == places[i + 1]) continue;
    Length depth;
    for (const PlacedCut& band : shape.bands) {
      const bool covers = counts(band) && band.low <= places[i] && places[i + 1] <= band.high;
      if (covers) depth = Max(depth, Min(band.depth, shape.thickness));
    }
    steps.push_back({places[i], places[i + 1], depth});
  }
  return steps;
}

// The outline of what the cuts in one direction leave; `at` places (along, depth) on paper.
PaperRing ProfileRing(const PartShape& shape, bool upright,
                      const std::function<PaperPoint(Length, Length)>& at) {
  PaperRing ring;
  for (const Step& step : Profile(shape, upright, false)) {
    ring.push_back(at(step.low, step.depth));
    ring.push_back(at(step.high, step.depth));
  }
  const std::vector<Step> back = Profile(shape, upright, true);
  for (auto step = back.rbegin(); step != back.rend(); ++step) {
    ring.push_back(at(step->high, shape.thickness - step->depth));
    ring.push_back(at(step->low, shape.thickness - step->depth));
  }
  return ring;
}

// The joint of one end, seen on the edge: hatched as far as it goes in, dashed where wood is left.
void AddJointEdge(SheetGroup& out, const PartShape& shape, const PlacedCut& band,
                  const PaperMap& map) {
  const Length depth = Min(band.depth, shape.thickness);
  const PaperBox box = map.Box({band.low, Length(), band.high - band.low, depth});
  out.primitives.emplace_back(HatchAtAngle(AreaOf(box), 45, kHatchSpacing, Pen::kHatch));
  const Length line = band.from_far ? band.low : band.high;
  out.primitives.emplace_back(LineOf(map.At(line, Length()), map.At(line, depth), Pen::kThin));
  if (depth == shape.thickness) return;
  out.primitives.emplace_back(
      LineOf(map.At(band.low, depth), map.At(band.high, depth), Pen::kThin));
}

// A stretch of paper.
struct Span {
  double low = 0;
  double high = 0;
};

// The widest stretch of `whole` that none of the others touches; the last of equals.
Span WidestFree(Span whole, std::vector<Span> taken) {
  std::ranges::sort(taken, {}, &Span::low);
  taken.push_back({whole.high, whole.high});
  Span best{whole.low, whole.low};
  double from = whole.low;
  for (const Span& span : taken) {
    if (span.low - from >= best.high - best.low) best = {from, span.low};
    from = std::max(from, span.high);
  }
  return best;
}

}  // namespace

void AddFace(SheetGroup& out, const PartShape& shape, const PaperMap& map) {
  const PaperBox box = map.Box({Length(), Length(), shape.right, shape.up});
  for (const PlacedCut& band : shape.bands) {
    if (!band.partly) continue;
    const HatchArea area = AreaOf(map.Box(BandRect(shape, band)));
    out.primitives.emplace_back(HatchAtAngle(area, 45, kHatchSpacing, Pen::kHatch));
  }
  for (const PlacedCut& band : shape.bands) {
    if (band.twin) continue;  // as in the drawn face
    AddBandEdge(out, shape, band, band.low, map);
    AddBandEdge(out, shape, band, band.high, map);
  }
  if (shape.notch.IsNone()) {
    out.primitives.emplace_back(BoxOutline(box, Pen::kOutline));
  } else {
    const Length zero;
    const Notch& n = shape.notch;
    out.primitives.emplace_back(
        Polyline{{map.At(n.width, zero), map.At(shape.right, zero), map.At(shape.right, shape.up),
                  map.At(zero, shape.up), map.At(zero, n.height), map.At(n.width, n.height)},
                 true,
                 Pen::kOutline,
                 Tone::kNone});
  }
  for (const PullHole& hole : shape.holes) {
    const PaperPoint center = map.At(hole.x, hole.y);
    out.primitives.emplace_back(Circle{center, kHoleRadius, Pen::kThin, Tone::kNone});
    AddCenterMark(out, center, kHoleRadius);
  }
}

PaperBox FreeFace(const PartShape& shape, const PaperMap& map) {
  constexpr double kReach = kHoleRadius + 2.5;  // of a hole's cross, and some air
  const PaperBox box = map.Box({Length(), Length(), shape.right, shape.up});
  std::vector<Span> across;
  std::vector<Span> down;
  for (const PlacedCut& band : shape.bands) {
    const PaperBox cut = map.Box(BandRect(shape, band));
    if (band.IsUpright()) {
      across.push_back({cut.left, cut.right});
    } else {
      down.push_back({cut.top, cut.bottom});
    }
  }
  if (!shape.notch.IsNone()) down.push_back({map.Y(shape.notch.height), box.bottom});
  for (const PullHole& hole : shape.holes) {
    down.push_back({map.Y(hole.y) - kReach, map.Y(hole.y) + kReach});
  }
  const Span x = WidestFree({box.left, box.right}, std::move(across));
  const Span y = WidestFree({box.top, box.bottom}, std::move(down));
  return {x.low, y.low, x.high, y.high};
}

void AddSection(SheetGroup& out, const PartShape& shape, const PaperMap& map) {
  const PaperRing ring =
      ProfileRing(shape, false, [&](Length along, Length depth) { return map.At(depth, along); });
  Polyline outline{ring, true, Pen::kCut, Tone::kNone};
  if (map.Size(shape.thickness) < kThinnest) {
    outline.fill = Tone::kShade;
    outline.pen = Pen::kThin;
  } else {
    out.primitives.emplace_back(HatchAtAngle(AreaOf(ring), 45, kHatchSpacing, Pen::kHatch));
  }
  out.primitives.emplace_back(std::move(outline));
}

void AddUpperEdge(SheetGroup& out, const PartShape& shape, const PaperMap& map) {
  for (const PlacedCut& band : shape.bands) {
    if (band.partly) AddJointEdge(out, shape, band, map);
    // A step along the upper edge shows as a line.
    const bool step = !band.partly && !band.behind && !band.IsUpright() && band.high >= shape.up;
    if (!step || band.depth >= shape.thickness) continue;
    out.primitives.emplace_back(
        LineOf(map.At(Length(), band.depth), map.At(shape.right, band.depth), Pen::kThin));
  }
  out.primitives.emplace_back(Polyline{
      ProfileRing(shape, true, [&](Length along, Length depth) { return map.At(along, depth); }),
      true, Pen::kOutline, Tone::kNone});
}

void AddFaceMark(SheetGroup& out, PaperPoint at, double height) {
  constexpr int kSteps = 40;
  constexpr double kFrom = -1.15;  // the short tail
  constexpr double kTo = 1.5;      // the long one, down to the edge
  Polyline loop{{}, false, Pen::kSymbol, Tone::kNone};
  for (int i = 0; i <= kSteps; ++i) {
    const double u = kFrom + (kTo - kFrom) * i / kSteps;
    // The curve of Tschirnhausen, on its side: one loop, two tails.
    loop.points.push_back({at.x + (u * u * u - u) * height * 0.42 - height * 0.79,
                           at.y - height * (1 - u * u / (kTo * kTo))});
  }
  out.primitives.emplace_back(std::move(loop));
}

}  // namespace tillwright
