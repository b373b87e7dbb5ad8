#include "sheet/hatch_clip.h"

#include <cmath>

namespace tillwright {
namespace {

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

PaperPoint Along(const PaperSegment& s, double t) {
  if (t <= 0) return s.from;
  if (t >= 1) return s.to;
  return {s.from.x + t * (s.to.x - s.from.x), s.from.y + t * (s.to.y - s.from.y)};
}

Span InDisc(const PaperDisc& disc, const PaperSegment& s) {
  const double dx = s.to.x - s.from.x;
  const double dy = s.to.y - s.from.y;
  const double fx = s.from.x - disc.center.x;
  const double fy = s.from.y - disc.center.y;
  const double a = dx * dx + dy * dy;
  const double b = fx * dx + fy * dy;
  const double c = fx * fx + fy * fy - disc.radius * disc.radius;
  const double root = b * b - a * c;
  if (a <= 0 || root <= 0) return {0, 0};
  const double reach = std::sqrt(root);
  return {std::max((-b - reach) / a, 0.0), std::min((-b + reach) / a, 1.0)};
}

Span InBox(const PaperBox& box, const PaperSegment& s) {
  Span span;
  Narrow(span, s.from.x, s.to.x - s.from.x, box.left, box.right);
  Narrow(span, s.from.y, s.to.y - s.from.y, box.top, box.bottom);
  return span;
}

void AreaClip::FindCrossings(const PaperSegment& s) {
  crossings_.clear();
  for (const PaperRing& ring : area_.rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      AddCrossing(s, ring[i], ring[i + 1 < ring.size() ? i + 1 : 0]);
    }
  }
  std::sort(crossings_.begin(), crossings_.end());
}

void AreaClip::AddCrossing(const PaperSegment& s, PaperPoint p, PaperPoint q) {
  const double dx = s.to.x - s.from.x;
  const double dy = s.to.y - s.from.y;
  const double side_p = dx * (p.y - s.from.y) - dy * (p.x - s.from.x);
  const double side_q = dx * (q.y - s.from.y) - dy * (q.x - s.from.x);
  if ((side_p <= 0) == (side_q <= 0)) return;
  const double share = side_p / (side_p - side_q);
  const double x = p.x + share * (q.x - p.x) - s.from.x;
  const double y = p.y + share * (q.y - p.y) - s.from.y;
  crossings_.push_back((x * dx + y * dy) / (dx * dx + dy * dy));
}

void AreaClip::KeepOnly(Span window) {
  for (Span& span : spans_) {
    span = {std::max(span.from, window.from), std::min(span.to, window.to)};
  }
  std::erase_if(spans_, [](const Span& span) { return span.from >= span.to; });
}

void AreaClip::Remove(Span hole) {
  if (hole.to <= hole.from) return;
  kept_.clear();
  for (const Span& span : spans_) {
    const double before = std::min(span.to, hole.from);
    const double after = std::max(span.from, hole.to);
    if (span.from < before) kept_.push_back({span.from, before});
    if (after < span.to) kept_.push_back({after, span.to});
  }
  spans_.swap(kept_);
}

std::vector<PaperSegment> ClipToArea(const HatchArea& area, PaperSegment segment) {
  std::vector<PaperSegment> out;
  AreaClip(area).Clip(segment, [&](const PaperSegment& piece) { out.push_back(piece); });
  return out;
}

std::vector<PaperSegment> ClipToDisc(const PaperDisc& disc, PaperSegment segment) {
  const Span span = InDisc(disc, segment);
  if (span.to <= span.from) return {};
  return {{Along(segment, span.from), Along(segment, span.to)}};
}

std::vector<Polyline> ClipToDisc(const PaperDisc& disc, const Polyline& polyline) {
  const auto inside = [&disc](PaperPoint p) {
    return std::hypot(p.x - disc.center.x, p.y - disc.center.y) <= disc.radius;
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
