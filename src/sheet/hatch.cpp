#include "sheet/hatch.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

#include "sheet/hatch_clip.h"

namespace tillwright {
namespace {

constexpr double kShortest = 0.05;  // mm; shorter strokes are dots and are left out

PaperBox BoundsOf(const HatchArea& area) {
  PaperBox box = EmptyBox();
  for (const PaperRing& ring : area.rings) {
    for (const PaperPoint& p : ring) box = Join(box, {p.x, p.y, p.x, p.y});
  }
  if (area.window) {
    const PaperPoint c = area.window->center;
    const PaperBox window = Grow({c.x, c.y, c.x, c.y}, area.window->radius);
    box = {std::max(box.left, window.left), std::max(box.top, window.top),
           std::min(box.right, window.right), std::min(box.bottom, window.bottom)};
  }
  return box;
}

double LengthOf(const PaperSegment& s) { return std::hypot(s.to.x - s.from.x, s.to.y - s.from.y); }

void AddClipped(HatchLines& out, AreaClip& clip, const PaperSegment& s, double shortest) {
  clip.Clip(s, [&](const PaperSegment& piece) {
    if (shortest <= 0 || LengthOf(piece) >= shortest) out.segments.push_back(piece);
  });
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

PaperBox BoxOf(const PaperSegment& s) {
  return {std::min(s.from.x, s.to.x), std::min(s.from.y, s.to.y), std::max(s.from.x, s.to.x),
          std::max(s.from.y, s.to.y)};
}

// Draws growth rings in chords. Arcs are halved and only what may meet the area is followed: of a
// large ring round a small piece that is next to nothing.
class RingHatch {
 public:
  RingHatch(HatchLines& out, AreaClip& clip, const PaperBox& box, PaperDisc ring)
      : out_(out),
        clip_(clip),
        box_(Grow(box, 0.01)),
        ring_(ring),
        steps_(std::max(12, static_cast<int>(2 * std::numbers::pi * ring.radius / kChord))) {}

  void Draw() {
    constexpr int kParts = 6;
    for (int part = 0; part < kParts; ++part) {
      const int first = steps_ * part / kParts;
      const int last = steps_ * (part + 1) / kParts;
      Follow(first, last, {Place(first), Place(last)});
    }
  }

 private:
  [[nodiscard]] PaperPoint Place(int step) const {
    return OnCircle(ring_.center, ring_.radius, 360.0 * step / steps_);
  }

  // The arc from one step to another, `chord` between its ends.
  void Follow(int first, int last, const PaperSegment& chord) {
    const double rise = ring_.radius * (1 - std::cos(std::numbers::pi * (last - first) / steps_));
    if (!Overlaps(Grow(BoxOf(chord), rise), box_)) return;
    if (last - first == 1) return AddClipped(out_, clip_, chord, 0);
    const int middle = (first + last) / 2;
    const PaperPoint place = Place(middle);
    Follow(first, middle, {chord.from, place});
    Follow(middle, last, {place, chord.to});
  }

  HatchLines& out_;
  AreaClip& clip_;
  const PaperBox box_;
  const PaperDisc ring_;
  const int steps_;
};

// A point of grain line k: `t` along the grain, shifted across by slow waves.
PaperPoint OnGrainLine(PaperAxis grain, double spacing, long long k, double t) {
  const double phase = 2 * std::numbers::pi * Scatter(k, 1);
  const double sway = 0.16 * std::sin(t / 5.3 + phase) + 0.10 * std::sin(t / 2.1 + 2 * phase);
  const double across =
      spacing * (static_cast<double>(k) + 0.6 * (Scatter(k, 2) - 0.5) + 0.8 * sway);
  return grain == PaperAxis::kHorizontal ? PaperPoint{t, across} : PaperPoint{across, t};
}

// One grain line with its breaks between `low` and `high`.
void AddGrainLine(HatchLines& out, AreaClip& clip, PaperAxis grain, double spacing, long long k,
                  Span reach) {
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
      AddClipped(out, clip, {before, next}, 0);
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

HatchLines HatchAtAngle(const HatchArea& area, double angle, double spacing, Pen pen) {
  HatchLines out{{}, pen};
  const PaperBox box = BoundsOf(area);
  if (IsEmpty(box)) return out;
  AreaClip clip(area);
  ForEachLine(box, angle, spacing,
              [&](const PaperSegment& line) { AddClipped(out, clip, line, kShortest); });
  return out;
}

HatchLines HatchPlies(const HatchArea& area, PaperAxis across, int plies, Pen pen) {
  constexpr double kSpacing = 0.9;  // mm between the strokes of a hatched layer
  HatchLines out{{}, pen};
  HatchArea whole = area;
  whole.window.reset();
  const PaperBox box = BoundsOf(whole);
  if (IsEmpty(box)) return out;
  AreaClip clip(area);
  for (int i = 0; i + 1 < plies; ++i) {
    AddClipped(out, clip, FarSide(Ply(box, across, i, plies), across), kShortest);
  }
  for (int i = 1; i < plies; i += 2) {
    const PaperBox ply = Ply(box, across, i, plies);
    ForEachLine(ply, 45, kSpacing, [&](const PaperSegment& line) {
      const Span span = InBox(ply, line);
      if (span.from >= span.to) return;
      AddClipped(out, clip, {Along(line, span.from), Along(line, span.to)}, kShortest);
    });
  }
  return out;
}

HatchLines HatchEndGrain(const HatchArea& area, PaperPoint heart, double spacing, Pen pen) {
  HatchLines out{{}, pen};
  const PaperBox box = BoundsOf(area);
  if (IsEmpty(box)) return out;
  AreaClip clip(area);
  const double dx = std::max({box.left - heart.x, heart.x - box.right, 0.0});
  const double dy = std::max({box.top - heart.y, heart.y - box.bottom, 0.0});
  const double far_x = std::max(std::abs(box.left - heart.x), std::abs(box.right - heart.x));
  const double far_y = std::max(std::abs(box.top - heart.y), std::abs(box.bottom - heart.y));
  const auto first = static_cast<long long>(std::hypot(dx, dy) / spacing);
  const auto last = static_cast<long long>(std::hypot(far_x, far_y) / spacing) + 1;
  for (long long k = std::max(first, 1LL); k <= last; ++k) {
    const double radius = spacing * (static_cast<double>(k) + 0.5 * (Scatter(k, 7) - 0.5));
    RingHatch(out, clip, box, {heart, radius}).Draw();
  }
  return out;
}

HatchLines HatchLongGrain(const HatchArea& area, PaperAxis grain, double spacing, Pen pen) {
  HatchLines out{{}, pen};
  const PaperBox box = BoundsOf(area);
  if (IsEmpty(box)) return out;
  AreaClip clip(area);
  const bool level = grain == PaperAxis::kHorizontal;
  const Span across = level ? Span{box.top, box.bottom} : Span{box.left, box.right};
  const Span along = level ? Span{box.left, box.right} : Span{box.top, box.bottom};
  const auto last = static_cast<long long>(std::ceil(across.to / spacing)) + 1;
  for (auto k = static_cast<long long>(std::floor(across.from / spacing)) - 1; k <= last; ++k) {
    AddGrainLine(out, clip, grain, spacing, k, along);
  }
  return out;
}

}  // namespace tillwright
