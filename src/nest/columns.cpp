#include "nest/columns.h"

#include <algorithm>
#include <utility>

#include "tillwright/length.h"

namespace tillwright::nest {
namespace {

constexpr std::size_t kMostParts = 250;       // rows of the linear program
constexpr std::int64_t kMostPoints = 20'000;  // raster points of one side
constexpr std::int64_t kMostCells = 4'000'000;
constexpr double kPull = 0.7;

std::int64_t CeilDiv(Int128 a, Int128 b) { return static_cast<std::int64_t>((a + b - 1) / b); }

}  // namespace

std::vector<std::int32_t> DemandsOf(const Problem& problem) {
  std::vector<std::int32_t> demands;
  for (const Part& part : problem.parts) demands.push_back(part.count);
  return demands;
}

std::optional<Pricer> Pricer::For(const Problem& problem, std::int64_t work) {
  if (problem.parts.empty() || problem.parts.size() > kMostParts) return std::nullopt;
  const auto xs = static_cast<std::int64_t>(RasterPoints(problem, false).size());
  const auto ys = static_cast<std::int64_t>(RasterPoints(problem, true).size());
  Pricer pricer;
  if (IsOneDimensional(problem)) {
    if (xs * static_cast<std::int64_t>(problem.parts.size()) > kMostCells) return std::nullopt;
    pricer.boards_.emplace(problem);
  } else {
    if (xs * ys > kMostCells || std::max(xs, ys) > kMostPoints) return std::nullopt;
    pricer.sheets_.emplace(problem);
  }
  if (pricer.Steps() * 20 > work) return std::nullopt;  // too few looks to be of use
  return pricer;
}

// For each part a sheet of nothing else: the sheet that takes most for its cost.
std::vector<Pattern> Columns::First(const std::vector<std::int32_t>& demands) const {
  std::vector<Pattern> first;
  for (std::size_t i = 0; i < problem_.parts.size(); ++i) {
    const Part& part = problem_.parts[i];
    Pattern best{0, std::vector<std::int32_t>(problem_.parts.size())};
    double rate = 0;
    for (std::size_t s = 0; s < problem_.stock.size(); ++s) {
      const Stock& stock = problem_.stock[s];
      const auto fill = [&](std::int32_t w, std::int32_t h) {
        return (stock.width / w) * (stock.height / h);
      };
      std::int32_t n = fill(part.width, part.height);
      if (part.turn) n = std::max(n, fill(part.height, part.width));
      if (n > 1) n = std::max(1, std::min(n, demands[i]));
      if (n / CostOf(static_cast<std::int32_t>(s)) <= rate) continue;
      rate = n / CostOf(static_cast<std::int32_t>(s));
      best.stock = static_cast<std::int32_t>(s);
      best.counts[i] = n;
    }
    first.push_back(std::move(best));
  }
  return first;
}

CoverLp Columns::Solve(const std::vector<std::int32_t>& demands) {
  const std::vector<Pattern> first = First(demands);
  std::vector<double> costs;
  for (const Pattern& pattern : first) costs.push_back(CostOf(pattern.stock));
  center_.clear();
  center_bound_ = 0;
  CoverLp lp({demands.begin(), demands.end()}, first, costs);
  while (work_ > 0 && bound_ < enough_) {
    if (lp.EnterSlack() || EnterKnown(lp, demands) || EnterNew(lp, demands)) {
      work_ -= static_cast<std::int64_t>(demands.size() * demands.size());
      continue;
    }
    break;
  }
  return lp;
}

Columns::Known Columns::ToKnown(Pattern pattern) {
  Known known{std::move(pattern), {}};
  for (std::size_t i = 0; i < known.pattern.counts.size(); ++i) {
    if (known.pattern.counts[i] > 0) known.parts.push_back(i);
  }
  return known;
}

bool Columns::WithinDemands(const Known& known, const std::vector<std::int32_t>& demands) {
  return std::ranges::all_of(known.parts,
                             [&](std::size_t i) { return known.pattern.counts[i] <= demands[i]; });
}

// The known pattern that is worth most for its cost, of those within the demands.
bool Columns::EnterKnown(CoverLp& lp, const std::vector<std::int32_t>& demands) {
  const Pattern* best = nullptr;
  double most = 1 + 1e-7;
  for (const Known& known : known_) {
    const std::vector<std::int32_t>& counts = known.pattern.counts;
    double worth = 0;
    for (const std::size_t i : known.parts) worth += lp.duals()[i] * counts[i];
    worth /= CostOf(known.pattern.stock);
    work_ -= static_cast<std::int64_t>(known.parts.size());
    if (worth <= most || !WithinDemands(known, demands)) continue;
    most = worth;
    best = &known.pattern;
  }
  return best != nullptr && lp.Enter(*best, CostOf(best->stock));
}

// Prices between the duals and those of the best bound so far, which settles sooner (Wentges 1997);
// when nothing comes of it, at the duals themselves.
bool Columns::EnterNew(CoverLp& lp, const std::vector<std::int32_t>& demands) {
  if (center_.size() == demands.size()) {
    std::vector<double> prices(demands.size());
    for (std::size_t i = 0; i < prices.size(); ++i) {
      prices[i] = kPull * center_[i] + (1 - kPull) * lp.duals()[i];
    }
    if (EnterPriced(lp, demands, prices)) return true;
  }
  return EnterPriced(lp, demands, lp.duals());
}

bool Columns::EnterPriced(CoverLp& lp, const std::vector<std::int32_t>& demands,
                          const std::vector<double>& prices) {
  std::vector<std::int32_t> values;
  for (const double price : prices) {
    values.push_back(static_cast<std::int32_t>(std::clamp(price, 0.0, 1.0) * scale_ + 0.5));
  }
  pricer_.Solve(values, demands);
  work_ -= pricer_.Steps();
  TakeBound(values, demands, prices);
  std::size_t best = 0;
  double most = 0;
  for (std::size_t s = 0; s < problem_.stock.size(); ++s) {
    const double worth = static_cast<double>(pricer_.Value(problem_.stock[s])) /
                         CostOf(static_cast<std::int32_t>(s));
    if (worth > most) best = s;
    most = std::max(most, worth);
  }
  Pattern pattern{static_cast<std::int32_t>(best), pricer_.Counts(problem_.stock[best])};
  if (!lp.Enter(pattern, CostOf(pattern.stock))) return false;
  known_.push_back(ToKnown(std::move(pattern)));
  return true;
}

// No sheet is worth more than V at these values, so the parts' worth / V sheets are needed; with
// several sheets, at the cost of the one that is worth most for it.
void Columns::TakeBound(const std::vector<std::int32_t>& values,
                        const std::vector<std::int32_t>& demands,
                        const std::vector<double>& prices) {
  Int128 worth = 0;
  for (std::size_t i = 0; i < values.size(); ++i) worth += Int128{values[i]} * demands[i];
  std::int64_t least = -1;
  double rate = 0;
  for (const Stock& stock : problem_.stock) {
    const std::int64_t value = pricer_.Value(stock);
    if (value == 0) continue;
    const std::int64_t cost = CeilDiv(worth * stock.cost, value);
    if (least < 0 || cost < least) least = cost;
    rate = std::max(rate, static_cast<double>(value) / static_cast<double>(stock.cost));
  }
  bound_ = std::max(bound_, least);
  if (rate <= 0 || static_cast<double>(worth) / rate <= center_bound_) return;
  center_bound_ = static_cast<double>(worth) / rate;
  center_ = prices;
}

std::int64_t PatternCostBound(const Problem& problem, std::int64_t enough, std::int64_t work) {
  std::optional<Pricer> pricer = Pricer::For(problem, work);
  if (!pricer) return 0;
  Columns columns(problem, *pricer, work);
  columns.StopAt(enough);
  (void)columns.Solve(DemandsOf(problem));
  return columns.bound();
}

}  // namespace tillwright::nest
