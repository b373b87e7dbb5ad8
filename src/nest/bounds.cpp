#include "nest/bounds.h"

#include <algorithm>
#include <set>
#include <vector>

#include "nest/cover_bound.h"

namespace tillwright::nest {
namespace {

// The value of every part's two sides under one dual-feasible function, and of the sheet's side.
struct Scaled {
  std::vector<std::int64_t> straight;  // the side that lies along this axis as the part is given
  std::vector<std::int64_t> turned;    // the other side, laid along this axis
  std::int64_t whole = 0;
};

// f0: a side longer than C - k counts as C, one shorter than k as nothing.
std::int64_t F0(std::int64_t x, std::int64_t c, std::int64_t k) {
  return x > c - k ? c : x < k ? 0 : x;
}
// f2: pieces of k in the side, or the sheet's less those in what the side leaves.
std::int64_t F2(std::int64_t x, std::int64_t c, std::int64_t k) {
  if (2 * x > c) return 2 * (c / k - (c - x) / k);
  return 2 * x == c ? c / k : 2 * (x / k);
}

template <class F>
Scaled Scale(const Problem& problem, bool across, std::int64_t c, F f) {
  Scaled scaled;
  for (const Part& part : problem.parts) {
    const std::int64_t a = across ? part.height : part.width;
    const std::int64_t b = across ? part.width : part.height;
    scaled.straight.push_back(a <= c ? f(a) : -1);
    scaled.turned.push_back(part.turn && b <= c ? f(b) : -1);
  }
  scaled.whole = f(c);
  return scaled;
}

constexpr std::size_t kMostThresholds = 60;

std::vector<std::int64_t> Thresholds(const Problem& problem, bool across, std::int64_t c) {
  std::set<std::int64_t> all;
  for (const Part& part : problem.parts) {
    for (const std::int64_t side : {part.width, part.height}) {
      if (!part.turn && side != (across ? part.height : part.width)) continue;
      if (2 * side <= c) all.insert(side);
      if (side < c && 2 * (c - side) <= c) all.insert(c - side);
      if (side < c && 2 * (c - side + 1) <= c) all.insert(c - side + 1);
    }
  }
  std::vector<std::int64_t> out(all.begin(), all.end());
  if (out.size() <= kMostThresholds) return out;
  std::vector<std::int64_t> some;
  for (std::size_t i = 0; i < kMostThresholds; ++i) {
    some.push_back(out[i * out.size() / kMostThresholds]);
  }
  return some;
}

std::vector<Scaled> Functions(const Problem& problem, bool across) {
  const Stock& sheet = problem.stock.front();
  const std::int64_t c = across ? sheet.height : sheet.width;
  std::vector<Scaled> all{Scale(problem, across, c, [](std::int64_t x) { return x; })};
  for (const std::int64_t k : Thresholds(problem, across, c)) {
    all.push_back(Scale(problem, across, c, [&](std::int64_t x) { return F0(x, c, k); }));
    all.push_back(Scale(problem, across, c, [&](std::int64_t x) { return F2(x, c, k); }));
  }
  return all;
}

std::int64_t CeilDiv(std::int64_t a, std::int64_t b) { return (a + b - 1) / b; }

// Every part in both its positions fills squares twice as many as there are sheets: so on a square
// sheet a part that may turn counts the mean of the two, elsewhere the lesser.
std::int64_t SheetsFor(const Problem& problem, const Scaled& x, const Scaled& y) {
  const Stock& sheet = problem.stock.front();
  const bool square = sheet.width == sheet.height;
  std::int64_t twice = 0;
  std::int64_t twice_square = 0;
  for (std::size_t i = 0; i < problem.parts.size(); ++i) {
    const Part& part = problem.parts[i];
    const bool straight = x.straight[i] >= 0 && y.straight[i] >= 0;
    const bool turned = x.turned[i] >= 0 && y.turned[i] >= 0;
    const std::int64_t a = straight ? x.straight[i] * y.straight[i] : 0;
    const std::int64_t b = turned ? x.turned[i] * y.turned[i] : a;
    const std::int64_t least = straight ? std::min(a, b) : b;
    twice += 2 * least * part.count;
    twice_square += (turned ? a + b : 2 * a) * part.count;
  }
  bool all_turn = true;
  for (const Part& part : problem.parts)
    all_turn = all_turn && (part.turn || part.width == part.height);
  const std::int64_t most = square && all_turn ? std::max(twice, twice_square) : twice;
  return CeilDiv(most, 2 * x.whole * y.whole);
}

std::int64_t SheetsBound(const Problem& problem) {
  const std::vector<Scaled> along = Functions(problem, false);
  const std::vector<Scaled> across = Functions(problem, true);
  std::int64_t best = 0;
  for (const Scaled& x : along) {
    for (const Scaled& y : across) best = std::max(best, SheetsFor(problem, x, y));
  }
  return best;
}

}  // namespace

Bounds BoundsOf(const Problem& problem) {
  if (problem.parts.empty()) return {};
  if (problem.stock.size() == 1) {
    const std::int64_t sheets = SheetsBound(problem);
    return {sheets, sheets * problem.stock.front().cost};
  }
  Problem one{problem.parts, {problem.stock.front()}, problem.stages};
  for (const Stock& stock : problem.stock) {
    one.stock.front().width = std::max(one.stock.front().width, stock.width);
    one.stock.front().height = std::max(one.stock.front().height, stock.height);
  }
  return {SheetsBound(one), AreaCostBound(problem)};
}

}  // namespace tillwright::nest
