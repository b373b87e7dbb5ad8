#include "tillwright/nest.h"

#include <algorithm>
#include <utility>

#include "nest/bounds.h"
#include "nest/columns.h"
#include "nest/cover_bound.h"
#include "nest/dive.h"
#include "nest/exchange.h"
#include "nest/fences.h"
#include "nest/fitting.h"
#include "nest/greedy.h"
#include "nest/knapsack.h"
#include "nest/offcuts.h"
#include "nest/runs.h"
#include "nest/search.h"
#include "nest/units.h"

namespace tillwright {
namespace {

using nest::Bounds;
using nest::Integers;
using nest::Packing;
using nest::Problem;

// Shares of the job's work. One look of the search costs about as much as eight steps of a dynamic
// program.
constexpr std::int64_t kQuickShare = 12;  // a quick search first: most jobs need no more
constexpr std::int64_t kBoundSteps = 4;   // steps of the bound's programs for each unit of work
constexpr std::int64_t kBoardSteps = 9;   // the same for boards, where they make the layout too
constexpr std::int64_t kTidyShare = 10;   // to leave large offcuts once the sheets are fewest
constexpr std::int64_t kMostTidyWork = 3'000'000;
constexpr std::int64_t kPartTidyWork = 30'000;
constexpr std::int64_t kFittingShare = 2;
constexpr std::int64_t kBoardShare = 20;  // what is left of the search for boards

class Nester {
 public:
  explicit Nester(const NestJob& job) : job_(job), integers_(nest::ToIntegers(job)) {}

  NestPlan Run() {
    bounds_ = nest::BoundsOf(integers_.smaller);
    packing_ = nest::GreedyPacking(problem(), bounds_.cost);
    if (Whole(packing_) && !packing_.sheets.empty()) {
      Improve();
      Tidy();
    }
    NestPlan plan = nest::ToPlan(job_, integers_, packing_);
    plan.bound = bounds_.sheets;
    const std::int64_t cost = packing_.Cost(problem());
    plan.price_bound = nest::PriceOf(integers_, bounds_.cost);
    plan.percent_bound = cost > 0 ? std::min<std::int64_t>(100, 100 * bounds_.cost / cost) : 0;
    plan.proven = std::ranges::all_of(plan.missing, [](std::int64_t n) { return n == 0; }) &&
                  (cost <= bounds_.cost || (plan.price_bound && Paid(plan) <= *plan.price_bound));
    return plan;
  }

 private:
  [[nodiscard]] std::int64_t Paid(const NestPlan& plan) const {
    std::int64_t paid = 0;
    for (const NestLayout& layout : plan.layouts) {
      const NestStock& stock = job_.stock[static_cast<std::size_t>(layout.stock)];
      if (!stock.on_hand) paid += stock.price.value_or(0);
    }
    return paid;
  }

  [[nodiscard]] const Problem& problem() const { return integers_.problem; }
  [[nodiscard]] bool Whole(const Packing& packing) const {
    return packing.MissingArea(problem()) == 0;
  }

  // The sheets are fewest: now large offcuts, then few settings of the fence.
  void Tidy() {
    std::int64_t parts = 0;
    for (const nest::Part& part : problem().parts) parts += part.count;
    const std::int64_t work =
        std::min({job_.work / kTidyShare, kMostTidyWork, parts * kPartTidyWork});
    packing_ = nest::Tidied(problem(), std::move(packing_), work);
    if (nest::IsOneDimensional(problem())) return;
    packing_ = nest::WithFewerSettings(problem(), std::move(packing_), Kerf(), work);
  }

  // In whole units, not less.
  [[nodiscard]] std::int32_t Kerf() const {
    const std::int64_t unit = integers_.unit.picometers();
    return static_cast<std::int32_t>((job_.kerf.picometers() + unit - 1) / unit);
  }

  void Improve() {
    if (nest::IsOneDimensional(problem())) {
      return ImproveBoards();
    }
    const std::int64_t quick = job_.work / kQuickShare;
    Search(quick);
    if (packing_.Cost(problem()) <= bounds_.cost) return;
    RaiseBound(nest::PatternCostBound(integers_.smaller, packing_.Cost(problem()),
                                      job_.work * kBoundSteps));
    Search(job_.work - quick);
  }

  void ImproveBoards() {
    if (problem().stock.size() > 1) {
      RoundBoards();
      return Search(job_.work / kBoardShare);
    }
    Fit();
    Exchange(job_.work);
    const std::int64_t before = bounds_.cost;
    RoundBoards();
    if (bounds_.cost > before) Fit();
    Exchange(2 * job_.work);
  }

  // Takes a packing cut by these patterns if it is whole and costs less; tells whether.
  bool Take(const std::vector<nest::Pattern>& patterns) {
    Packing boards = nest::BoardsCutBy(problem(), patterns);
    if (!Whole(boards) || boards.Cost(problem()) >= packing_.Cost(problem())) return false;
    packing_ = std::move(boards);
    return true;
  }

  void Fit() {
    if (packing_.Cost(problem()) <= bounds_.cost) return;
    Take(nest::FittedBoards(problem(), bounds_.cost / problem().stock.front().cost,
                            job_.work / kFittingShare));
  }

  // Looks for a packing that meets the bound; when none is found, for one of a board less, again
  // and again.
  void Exchange(std::int64_t steps) {
    const std::int64_t least = bounds_.cost / problem().stock.front().cost;
    if (packing_.Sheets() <= least) return;
    if (Take(nest::ExchangedBoards(problem(), least, steps))) return;
    while (packing_.Sheets() > least + 1 &&
           Take(nest::ExchangedBoards(problem(), packing_.Sheets() - 1, steps / 2))) {
    }
  }

  void Search(std::int64_t work) {
    packing_ = nest::Search(problem(), std::move(packing_), {bounds_.cost, work});
  }

  void RoundBoards() {
    if (packing_.Cost(problem()) <= bounds_.cost) return;
    const nest::Rounded rounded =
        nest::RoundedPatterns(problem(), bounds_.cost, job_.work * kBoardSteps);
    Take(rounded.boards);
    RaiseBound(nest::PatternCostBound(integers_.smaller, packing_.Cost(problem()), job_.work));
  }

  void RaiseBound(std::int64_t cost) {
    bounds_.cost = std::max(bounds_.cost, nest::WholeSheetsCost(problem(), cost));
    if (problem().stock.size() > 1) return;
    const std::int64_t one = problem().stock.front().cost;
    bounds_.sheets = std::max(bounds_.sheets, (cost + one - 1) / one);
  }

  const NestJob& job_;
  Integers integers_;
  Bounds bounds_;
  Packing packing_;
};

}  // namespace

NestPlan Nest(const NestJob& job) {
  if (job.runs.empty()) return nest::WithOffcutsWhole(Nester(job).Run());
  const NestJob whole = nest::WithRunsWhole(job);
  return nest::WithRunsCut(job, nest::WithOffcutsWhole(Nester(whole).Run()));
}

namespace {

// What is known of layouts that take less.
std::string Bettered(const NestJob& job, const NestPlan& plan) {
  const bool one_size = job.stock.size() == 1;
  if (!plan.proven) {
    const std::string text = "may be improvable; lower limit ";
    if (one_size) return text + std::to_string(plan.bound);
    if (plan.price_bound) return text + PriceText(*plan.price_bound);
    return text + std::to_string(plan.percent_bound) + " % of the area these take";
  }
  const bool priced = std::ranges::any_of(
      job.stock, [](const NestStock& stock) { return !stock.on_hand && stock.price.has_value(); });
  const std::string kept = job.runs.empty() ? "" : "that keeps the runs whole ";
  const std::string less = one_size ? "use fewer" : priced ? "cost less" : "use less";
  return "no layout with edge-to-edge cuts " + kept + "can " + less + " (proved)";
}

}  // namespace

std::string PriceText(std::int64_t coins) {
  const std::string cents = std::to_string(coins % 100);
  return std::to_string(coins / 100) + (cents.size() < 2 ? ".0" : ".") + cents;
}

std::string NestWords(const NestJob& job, const NestPlan& plan, std::string_view noun) {
  const auto counted = [&](std::int64_t n) {
    return std::to_string(n) + " " + std::string(noun) + (n == 1 ? "" : "s");
  };
  const std::string text = counted(static_cast<std::int64_t>(plan.layouts.size()));
  std::int64_t missing = 0;
  for (const std::int64_t n : plan.missing) missing += n;
  if (missing > 0) {
    return text + "; " + std::to_string(missing) + (missing == 1 ? " part does" : " parts do") +
           " not fit";
  }
  if (plan.layouts.empty()) return text;
  return text + "; " + Bettered(job, plan);
}

}  // namespace tillwright
