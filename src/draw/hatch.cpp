#include "draw/hatch.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace tillwright {
namespace {

constexpr double kShortest = 0.05;  // mm; shorter strokes are dots and are left out

// A stretch of a segment, as fractions of it in [0, 1].
struct Span {
  double from = 0;
  double to = 1;
};
using Spans = std::vector<Span>;

PaperPoint Along(const PaperSegment& s, double t) {
  if (t <= 0) return s.from;
  if (t >= 1) return s.to;
  return {s.from.x + t * (s.to.x - s.from.x), s.from.y + t * (s.to.y - s.from.y)};
}

double LengthOf(const PaperSegment& s) { return std::hypot(s.to.x - s.from.x, s.to.y - s.from.y); }

// The stretch inside a disc; empty (to <= from) if there is none.
Span InDisc(const PaperDisc& disc, const PaperSegment& s) {
  const double dx = s.to.x - s.from.x;
  const double dy = s.to.y - s.from.y;
  const double fx = s.from.x - disc.centre.x;
  const double fy = s.from.y - disc.centre.y;
  const double a = dx * dx + dy * dy;
  const double b = fx * dx + fy * dy;
  const double c = fx * fx + fy * fy - disc.radius * disc.radius;
  const double root = b * b - a * c;
  if (a <= 0 || root <= 0) return {0, 0};
  const double reach = std::sqrt(root);
  return {std::max((-b - reach) / a, 0.0), std::min((-b + reach) / a, 1.0)};
}

// Narrows `span` to low <= start + t * step <= high.
void Narrow(Span& span, double start, double step, double low, double high) {
  if (std::abs(step) < 1e-12) {
    if (start <= low || start >= high) span.to = span.from;
    return;
  }
  const double t0 = (low - start) / step;
  const double t1 = (high - start) / step;
  span.from = std::max(span.from, std::min(t0, t1));
  span.to = std::min(span.to, std::max(t0, t1));
}

Span InBox(const PaperBox& box, const PaperSegment& s) {
  Span span;
  Narrow(span, s.from.x, s.to.x - s.from.x, box.left, box.right);
  Narrow(span, s.from.y, s.to.y - s.from.y, box.top, box.bottom);
  return span;
}

void KeepOnly(Spans& spans, Span window) {
  Spans kept;
  for (const Span& span : spans) {
    const Span cut{std::max(span.from, window.from), std::min(span.to, window.to)};
    if (cut.from < cut.to) kept.push_back(cut);
  }
  spans = std::move(kept);
}

void Remove(Spans& spans, Span hole) {
  if (hole.to <= hole.from) return;
  Spans kept;
  for (const Span& span : spans) {
    const double before = std::min(span.to, hole.from);
    const double after = std::max(span.from, hole.to);
    if (span.from < before) kept.push_back({span.from, before});
    if (after < span.to) kept.push_back({after, span.to});
  }
  spans = std::move(kept);
}

// Where the infinite line of `s` crosses the rings, as sorted fractions of `s`.
std::vector<double> Crossings(const HatchArea& area, const PaperSegment& s) {
  const double dx = s.to.x - s.from.x;
  const double dy = s.to.y - s.from.y;
  const double square = dx * dx + dy * dy;
  std::vector<double> out;
  for (const PaperRing& ring : area.rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const PaperPoint p = ring[i];
      const PaperPoint q = ring[(i + 1) % ring.size()];
      const double side_p = dx * (p.y - s.from.y) - dy * (p.x - s.from.x);
      const double side_q = dx * (q.y - s.from.y) - dy * (q.x - s.from.x);
      if ((side_p <= 0) == (side_q <= 0)) continue;
      const double share = side_p / (side_p - side_q);
      const double x = p.x + share * (q.x - p.x) - s.from.x;
      const double y = p.y + share * (q.y - p.y) - s.from.y;
      out.push_back((x * dx + y * dy) / square);
    }
  }
  std::sort(out.begin(), out.end());
  return out;
}

Spans SpansInArea(const HatchArea& area, const PaperSegment& s) {
  Spans spans;
  const std::vector<double> crossings = Crossings(area, s);
  for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
    const Span span{std::max(crossings[i], 0.0), std::min(crossings[i + 1], 1.0)};
    if (span.from < span.to) spans.push_back(span);
  }
  if (spans.empty()) return spans;
  if (area.window) KeepOnly(spans, InDisc(*area.window, s));
  for (const PaperBox& hole : area.box_holes) Remove(spans, InBox(hole, s));
  for (const PaperDisc& hole : area.disc_holes) Remove(spans, InDisc(hole, s));
  return spans;
}

PaperBox BoundsOf(const HatchArea& area) {
  PaperBox box = EmptyBox();
  for (const PaperRing& ring : area.rings) {
    for (const PaperPoint& p : ring) box = Join(box, {p.x, p.y, p.x, p.y});
  }
  if (area.window) {
    const PaperPoint c = area.window->centre;
    const PaperBox window = Grow({c.x, c.y, c.x, c.y}, area.window->radius);
    box = {std::max(box.left, window.left), std::max(box.top, window.top),
           std::min(box.right, window.right), std::min(box.bottom, window.bottom)};
  }
  return box;
}

void AddClipped(HatchLines& out, const HatchArea& area, const PaperSegment& s, double shortest) {
  for (const PaperSegment& piece : ClipToArea(area, s)) {
    if (LengthOf(piece) >= shortest) out.segments.push_back(piece);
  }
}

// The unit vector of an angle, exact for multiples of 45 degrees.
PaperPoint Direction(double angle) {
  const double eighths = angle / 45;
  const long long whole = std::llround(eighths);
  if (std::abs(eighths - static_cast<double>(whole)) < 1e-12) {
    constexpr double kHalf = std::numbers::sqrt2 / 2;
    constexpr double kX[] = {1, kHalf, 0, -kHalf, -1, -kHalf, 0, kHalf};
    const auto index = static_cast<std::size_t>(((whole % 8) + 8) % 8);
    return {kX[index], -kX[(index + 6) % 8]};
  }
  return OnCircle({0, 0}, 1, angle);
}

double Dot(PaperPoint a, PaperPoint b) { return a.x * b.x + a.y * b.y; }

// Low and high of the box's corners in a direction.
Span Reach(const PaperBox& box, PaperPoint direction) {
  const double a = Dot({box.left, box.top}, direction);
  const double b = Dot({box.right, box.top}, direction);
  const double c = Dot({box.right, box.bottom}, direction);
  const double d = Dot({box.left, box.bottom}, direction);
  return {std::min({a, b, c, d}), std::max({a, b, c, d})};
}

// Calls draw(segment) for every line of the family that meets the box.
template <class Draw>
void ForEachLine(const PaperBox& box, double angle, double spacing, Draw draw) {
  const PaperPoint along = Direction(angle);
  const PaperPoint across{-along.y, along.x};
  const Span reach_across = Reach(box, across);
  const Span reach_along = Reach(box, along);
  const auto first = static_cast<long long>(std::ceil(reach_across.from / spacing));
  const auto last = static_cast<long long>(std::floor(reach_across.to / spacing));
  for (long long k = first; k <= last; ++k) {
    const double distance = static_cast<double>(k) * spacing;
    const PaperPoint foot{across.x * distance, across.y * distance};
    const double from = reach_along.from - 1;
    const double to = reach_along.to + 1;
    draw(PaperSegment{{foot.x + along.x * from, foot.y + along.y * from},
                      {foot.x + along.x * to, foot.y + along.y * to}});
  }
}

// A fixed scatter in [0, 1) for a pair of whole numbers: a few rounds of a multiply-xor mixer.
double Scatter(long long a, long long b) {
  auto x = static_cast<std::uint64_t>(a) * 0x9e3779b97f4a7c15U + static_cast<std::uint64_t>(b);
  for (int round = 0; round < 2; ++round) {
    x ^= x >> 31U;
    x *= 0xbf58476d1ce4e5b9U;
  }
  x ^= x >> 29U;
  return static_cast<double>(x >> 11U) / 9007199254740992.0;  // 2^53
}

constexpr double kChord = 1.2;  // mm: curved strokes are made of chords, 0.01 mm off at r = 20

// One growth ring.
void AddRing(HatchLines& out, const HatchArea& area, const PaperBox& box, PaperPoint heart,
             double radius) {
  const int steps = std::max(12, static_cast<int>(2 * std::numbers::pi * radius / kChord));
  PaperPoint before = OnCircle(heart, radius, 0);
  for (int i = 1; i <= steps; ++i) {
    const PaperPoint next = OnCircle(heart, radius, 360.0 * i / steps);
    const PaperBox chord{std::min(before.x, next.x), std::min(before.y, next.y),
                         std::max(before.x, next.x), std::max(before.y, next.y)};
    if (Overlaps(Grow(chord, 0.01), box)) AddClipped(out, area, {before, next}, 0);
    before = next;
  }
}

// A point of grain line k: `t` along the grain, shifted across by slow waves.
PaperPoint OnGrainLine(PaperAxis grain, double spacing, long long k, double t) {
  const double phase = 2 * std::numbers::pi * Scatter(k, 1);
  const double sway = 0.16 * std::sin(t / 5.3 + phase) + 0.10 * std::sin(t / 2.1 + 2 * phase);
  const double across =
      spacing * (static_cast<double>(k) + 0.6 * (Scatter(k, 2) - 0.5) + 0.8 * sway);
  return grain == PaperAxis::kHorizontal ? PaperPoint{t, across} : PaperPoint{across, t};
}

// One grain line with its breaks between `low` and `high`.
void AddGrainLine(HatchLines& out, const HatchArea& area, PaperAxis grain, double spacing,
                  long long k, Span reach) {
  constexpr double kPeriod = 19;  // mm from one break to the next, on average
  const auto first = static_cast<long long>(std::floor(reach.from / kPeriod)) - 1;
  const auto last = static_cast<long long>(std::ceil(reach.to / kPeriod));
  for (long long dash = first; dash <= last; ++dash) {
    const double start = kPeriod * (static_cast<double>(dash) + 0.7 * Scatter(k, 2 * dash + 100));
    const double length = kPeriod * (0.45 + 0.4 * Scatter(k, 2 * dash + 101));
    const int steps = static_cast<int>(length / kChord) + 1;
    PaperPoint before = OnGrainLine(grain, spacing, k, start);
    for (int i = 1; i <= steps; ++i) {
      const PaperPoint next = OnGrainLine(grain, spacing, k, start + length * i / steps);
      AddClipped(out, area, {before, next}, 0);
      before = next;
    }
  }
}

PaperBox Ply(const PaperBox& box, PaperAxis across, int ply, int plies) {
  const double from = static_cast<double>(ply) / plies;
  const double to = static_cast<double>(ply + 1) / plies;
  if (across == PaperAxis::kHorizontal) {
    return {box.left + from * box.Width(), box.top, box.left + to * box.Width(), box.bottom};
  }
  return {box.left, box.top + from * box.Height(), box.right, box.top + to * box.Height()};
}

PaperSegment FarSide(const PaperBox& ply, PaperAxis across) {
  if (across == PaperAxis::kHorizontal) {
    return {{ply.right, ply.top}, {ply.right, ply.bottom}};
  }
  return {{ply.left, ply.bottom}, {ply.right, ply.bottom}};
}

bool Same(PaperPoint a, PaperPoint b) {
  return std::abs(a.x - b.x) < 1e-9 && std::abs(a.y - b.y) < 1e-9;
}

// Joins segments that follow each other into open polylines.
std::vector<Polyline> Thread(const std::vector<PaperSegment>& segments, Pen pen) {
  std::vector<Polyline> out;
  for (const PaperSegment& s : segments) {
    if (out.empty() || !Same(out.back().points.back(), s.from)) {
      out.push_back({{s.from}, false, pen, Tone::kNone});
    }
    out.back().points.push_back(s.to);
  }
  return out;
}

// Closes the seam where a ring was cut open at its first corner.
void CloseSeam(std::vector<Polyline>& pieces) {
  if (pieces.size() < 2) return;
  Polyline& first = pieces.front();
  Polyline& last = pieces.back();
  if (!Same(last.points.back(), first.points.front())) return;
  last.points.insert(last.points.end(), first.points.begin() + 1, first.points.end());
  first = std::move(last);
  pieces.pop_back();
}

}  // namespace

HatchArea AreaOf(const PaperBox& box) {
  return AreaOf(PaperRing{
      {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}});
}

HatchArea AreaOf(PaperRing ring) {
  HatchArea area;
  area.rings.push_back(std::move(ring));
  return area;
}

std::vector<PaperSegment> ClipToArea(const HatchArea& area, PaperSegment segment) {
  std::vector<PaperSegment> out;
  for (const Span& span : SpansInArea(area, segment)) {
    out.push_back({Along(segment, span.from), Along(segment, span.to)});
  }
  return out;
}

HatchLines HatchAtAngle(const HatchArea& area, double angle, double spacing, Pen pen) {
  HatchLines out{{}, pen};
  const PaperBox box = BoundsOf(area);
  if (IsEmpty(box)) return out;
  ForEachLine(box, angle, spacing,
              [&out, &area](const PaperSegment& line) { AddClipped(out, area, line, kShortest); });
  return out;
}

HatchLines HatchPlies(const HatchArea& area, PaperAxis across, int plies, Pen pen) {
  constexpr double kSpacing = 0.9;  // mm between the strokes of a hatched layer
  HatchLines out{{}, pen};
  HatchArea whole = area;
  whole.window.reset();
  const PaperBox box = BoundsOf(whole);
  if (IsEmpty(box)) return out;
  for (int i = 0; i + 1 < plies; ++i) {
    AddClipped(out, area, FarSide(Ply(box, across, i, plies), across), kShortest);
  }
  for (int i = 1; i < plies; i += 2) {
    const PaperBox ply = Ply(box, across, i, plies);
    ForEachLine(ply, 45, kSpacing, [&](const PaperSegment& line) {
      const Span span = InBox(ply, line);
      if (span.from >= span.to) return;
      AddClipped(out, area, {Along(line, span.from), Along(line, span.to)}, kShortest);
    });
  }
  return out;
}

HatchLines HatchEndGrain(const HatchArea& area, PaperPoint heart, double spacing, Pen pen) {
  HatchLines out{{}, pen};
  const PaperBox box = BoundsOf(area);
  if (IsEmpty(box)) return out;
  const double dx = std::max({box.left - heart.x, heart.x - box.right, 0.0});
  const double dy = std::max({box.top - heart.y, heart.y - box.bottom, 0.0});
  const double far_x = std::max(std::abs(box.left - heart.x), std::abs(box.right - heart.x));
  const double far_y = std::max(std::abs(box.top - heart.y), std::abs(box.bottom - heart.y));
  const auto first = static_cast<long long>(std::hypot(dx, dy) / spacing);
  const auto last = static_cast<long long>(std::hypot(far_x, far_y) / spacing) + 1;
  for (long long k = std::max(first, 1LL); k <= last; ++k) {
    const double radius = spacing * (static_cast<double>(k) + 0.5 * (Scatter(k, 7) - 0.5));
    AddRing(out, area, box, heart, radius);
  }
  return out;
}

HatchLines HatchLongGrain(const HatchArea& area, PaperAxis grain, double spacing, Pen pen) {
  HatchLines out{{}, pen};
  const PaperBox box = BoundsOf(area);
  if (IsEmpty(box)) return out;
  const bool level = grain == PaperAxis::kHorizontal;
  const Span across = level ? Span{box.top, box.bottom} : Span{box.left, box.right};
  const Span along = level ? Span{box.left, box.right} : Span{box.top, box.bottom};
  const auto last = static_cast<long long>(std::ceil(across.to / spacing)) + 1;
  for (auto k = static_cast<long long>(std::floor(across.from / spacing)) - 1; k <= last; ++k) {
    AddGrainLine(out, area, grain, spacing, k, along);
  }
  return out;
}

std::vector<PaperSegment> ClipToDisc(const PaperDisc& disc, PaperSegment segment) {
  const Span span = InDisc(disc, segment);
  if (span.to <= span.from) return {};
  return {{Along(segment, span.from), Along(segment, span.to)}};
}

std::vector<Polyline> ClipToDisc(const PaperDisc& disc, const Polyline& polyline) {
  const auto inside = [&disc](PaperPoint p) {
    return std::hypot(p.x - disc.centre.x, p.y - disc.centre.y) <= disc.radius;
  };
  if (std::all_of(polyline.points.begin(), polyline.points.end(), inside)) return {polyline};
  std::vector<PaperSegment> kept;
  const std::size_t count = polyline.points.size();
  for (std::size_t i = 0; i + (polyline.closed ? 0 : 1) < count; ++i) {
    const PaperSegment side{polyline.points[i], polyline.points[(i + 1) % count]};
    for (const PaperSegment& piece : ClipToDisc(disc, side)) kept.push_back(piece);
  }
  std::vector<Polyline> pieces = Thread(kept, polyline.pen);
  if (polyline.closed) CloseSeam(pieces);
  return pieces;
}

}  // namespace tillwright
