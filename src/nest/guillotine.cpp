#include "nest/guillotine.h"

#include <algorithm>

#include "tillwright/diagnostic.h"

namespace tillwright::nest {
namespace {

std::int32_t Largest(const Problem& problem, bool across) {
  std::int32_t most = 0;
  for (const Stock& stock : problem.stock) {
    most = std::max(most, across ? stock.height : stock.width);
  }
  return most;
}

// The index of the largest point not above a size. REQUIRES: the first point is zero.
std::size_t IndexOf(const std::vector<std::int32_t>& points, std::int32_t size) {
  return static_cast<std::size_t>(std::ranges::upper_bound(points, size) - points.begin()) - 1;
}

// For every point i and every point j not above half of it, the index of what remains.
std::vector<std::uint32_t> Rests(const std::vector<std::int32_t>& points) {
  std::vector<std::uint32_t> rests(points.size() * points.size());
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (std::size_t j = 1; j < points.size() && 2 * points[j] <= points[i]; ++j) {
      rests[i * points.size() + j] =
          static_cast<std::uint32_t>(IndexOf(points, points[i] - points[j]));
    }
  }
  return rests;
}

std::int64_t Splits(const std::vector<std::int32_t>& points) {
  std::int64_t n = 0;
  for (const std::int32_t point : points)
    n += static_cast<std::int64_t>(IndexOf(points, point / 2));
  return n;
}

}  // namespace

std::vector<std::int32_t> RasterPoints(const Problem& problem, bool across) {
  const std::int32_t most = Largest(problem, across);
  std::vector<char> reached(static_cast<std::size_t>(most) + 1);
  reached[0] = 1;
  for (std::int32_t at = 0; at <= most; ++at) {
    if (reached[static_cast<std::size_t>(at)] == 0) continue;
    for (const Part& part : problem.parts) {
      for (const std::int32_t side : {part.width, part.height}) {
        if (!part.turn && side != (across ? part.height : part.width)) continue;
        if (side <= most - at) reached[static_cast<std::size_t>(at + side)] = 1;
      }
    }
  }
  std::vector<std::int32_t> points;
  for (std::int32_t at = 0; at <= most; ++at) {
    if (reached[static_cast<std::size_t>(at)] != 0) points.push_back(at);
  }
  return points;
}

Guillotine::Guillotine(const Problem& problem)
    : problem_(problem),
      xs_(RasterPoints(problem, false)),
      ys_(RasterPoints(problem, true)),
      x_rest_(Rests(xs_)),
      y_rest_(Rests(ys_)),
      best_(xs_.size() * ys_.size()) {
  steps_ = Splits(xs_) * static_cast<std::int64_t>(ys_.size()) +
           Splits(ys_) * static_cast<std::int64_t>(xs_.size());
}

std::size_t Guillotine::XAt(std::int32_t width) const { return IndexOf(xs_, width); }
std::size_t Guillotine::YAt(std::int32_t height) const { return IndexOf(ys_, height); }

void Guillotine::PlaceParts(const std::vector<std::int32_t>& values) {
  std::ranges::fill(best_, 0);
  for (std::size_t i = 0; i < problem_.parts.size(); ++i) {
    const Part& part = problem_.parts[i];
    const auto place = [&](std::int32_t width, std::int32_t height) {
      if (width > xs_.back() || height > ys_.back()) return;
      std::int32_t& cell = Column(XAt(width))[YAt(height)];
      cell = std::max(cell, values[i]);
    };
    place(part.width, part.height);
    if (part.turn) place(part.height, part.width);
  }
}

void Guillotine::Solve(const std::vector<std::int32_t>& values) {
  values_ = values;
  PlaceParts(values);
  for (std::size_t x = 1; x < xs_.size(); ++x) {
    CutColumns(x);
    CutRows(x);
  }
}

// What a narrower piece holds, or two pieces side by side.
void Guillotine::CutColumns(std::size_t x) {
  std::int32_t* const out = Column(x);
  const std::int32_t* const narrower = Column(x - 1);
  const std::size_t n = ys_.size();
  for (std::size_t y = 0; y < n; ++y) out[y] = std::max(out[y], narrower[y]);
  for (std::size_t left = 1; left < x && 2 * xs_[left] <= xs_[x]; ++left) {
    const std::int32_t* const a = Column(left);
    const std::int32_t* const b = Column(x_rest_[x * xs_.size() + left]);
    for (std::size_t y = 0; y < n; ++y) out[y] = std::max(out[y], a[y] + b[y]);
  }
}

// What a lower piece holds, or two pieces one over the other.
void Guillotine::CutRows(std::size_t x) {
  std::int32_t* const out = Column(x);
  const std::size_t n = ys_.size();
  for (std::size_t y = 1; y < n; ++y) {
    std::int32_t best = std::max(out[y], out[y - 1]);
    const std::uint32_t* const rest = y_rest_.data() + y * n;
    for (std::size_t low = 1; low < y && 2 * ys_[low] <= ys_[y]; ++low) {
      best = std::max(best, out[low] + out[rest[low]]);
    }
    out[y] = best;
  }
}

std::int32_t Guillotine::Value(const Stock& sheet) const {
  return Column(XAt(sheet.width))[YAt(sheet.height)];
}

std::vector<std::int32_t> Guillotine::Counts(const Stock& sheet) const {
  std::vector<std::int32_t> counts(problem_.parts.size());
  Count(XAt(sheet.width), YAt(sheet.height), counts);
  return counts;
}

// Follows the best values back: the decisions are few, so they are found again, not kept.
void Guillotine::Count(std::size_t x, std::size_t y, std::vector<std::int32_t>& counts) const {
  const std::int32_t value = Column(x)[y];
  if (value == 0) return;
  if (Column(x - 1)[y] == value) return Count(x - 1, y, counts);
  if (Column(x)[y - 1] == value) return Count(x, y - 1, counts);
  for (std::size_t i = 0; i < problem_.parts.size(); ++i) {
    const Part& part = problem_.parts[i];
    const bool straight = part.width == xs_[x] && part.height == ys_[y];
    const bool turned = part.turn && part.height == xs_[x] && part.width == ys_[y];
    if (values_[i] != value || (!straight && !turned)) continue;
    ++counts[i];
    return;
  }
  if (!CountColumns(x, y, counts) && !CountRows(x, y, counts)) Bug("a value without a layout");
}

bool Guillotine::CountColumns(std::size_t x, std::size_t y,
                              std::vector<std::int32_t>& counts) const {
  for (std::size_t left = 1; left < x && 2 * xs_[left] <= xs_[x]; ++left) {
    const std::size_t rest = x_rest_[x * xs_.size() + left];
    if (Column(left)[y] + Column(rest)[y] != Column(x)[y]) continue;
    Count(left, y, counts);
    Count(rest, y, counts);
    return true;
  }
  return false;
}

bool Guillotine::CountRows(std::size_t x, std::size_t y, std::vector<std::int32_t>& counts) const {
  for (std::size_t low = 1; low < y && 2 * ys_[low] <= ys_[y]; ++low) {
    const std::size_t rest = y_rest_[y * ys_.size() + low];
    if (Column(x)[low] + Column(x)[rest] != Column(x)[y]) continue;
    Count(x, low, counts);
    Count(x, rest, counts);
    return true;
  }
  return false;
}

}  // namespace tillwright::nest
