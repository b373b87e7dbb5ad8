#include "nest/searcher.h"

#include <algorithm>
#include <cmath>

namespace tillwright::nest {
namespace {

std::uint32_t MeanRemoved(const Problem& problem) {
  std::int64_t parts = 0;
  for (const Part& part : problem.parts) parts += part.count;
  return parts <= 100 ? 8 : parts <= 300 ? 6 : 4;
}

}  // namespace

Searcher::Searcher(const Problem& problem, std::uint64_t seed, std::size_t history)
    : random_(seed),
      bench_(problem),
      refill_(bench_, random_),
      history_(history),
      mean_removed_(MeanRemoved(problem)) {}

void Searcher::Start(const Packing& packing) {
  bench_.Start(packing);
  best_ = packing;
  best_cost_ = bench_.cost();
}

void Searcher::Aim(std::int64_t goal) {
  goal_ = goal;
  while (bench_.cost() >= goal_) bench_.RemoveSomething(random_, true);
  bench_.Mark();
  current_ = Now();
  std::ranges::fill(history_, current_);
}

void Searcher::Run(std::int64_t work, std::int64_t bound) {
  for (bench_.work = 0; bench_.work < work && best_cost_ > bound;) {
    RuinAndRecreate();
    if (bench_.missing_area() == 0) {
      Keep();
      Aim(best_cost_);
      continue;
    }
    if (!Accept()) bench_.Undo();
    bench_.Mark();
  }
}

void Searcher::Tidy(std::int64_t work) {
  Aim(bench_.cost() + 1);
  Cost best = current_;
  for (bench_.work = 0; bench_.work < work;) {
    RuinAndRecreate();
    if (bench_.missing_area() == 0 && !best.NoWorseThan(Now())) {
      best = Now();
      Keep();
    }
    if (!Accept()) bench_.Undo();
    bench_.Mark();
  }
}

// Keeps a whole packing: the goal is met.
void Searcher::Keep() {
  best_cost_ = bench_.cost();
  best_ = bench_.ToPacking();
}

Searcher::Cost Searcher::Now() const {
  const double spare = static_cast<double>(goal_ - bench_.cost());
  return {bench_.missing_area(), bench_.worth() + spare * std::sqrt(std::sqrt(spare))};
}

bool Searcher::Accept() {
  const Cost now = Now();
  Cost& old = history_[turn_];
  turn_ = (turn_ + 1) % history_.size();
  const bool accept = now.NoWorseThan(old) || now.NoWorseThan(current_);
  if (accept) current_ = now;
  if (!old.NoWorseThan(current_)) old = current_;
  return accept;
}

// Random nodes are taken out, or while the goal is exceeded whole sheets. A round that finds
// nothing to do counts as well, so that every search comes to its end.
void Searcher::RuinAndRecreate() {
  constexpr std::int64_t kIdleRound = 64;
  const std::int64_t before = bench_.work;
  const std::uint32_t n = 1 + random_.Below(2 * mean_removed_ - 1);
  for (std::uint32_t i = 0; i < n; ++i) bench_.RemoveSomething(random_, bench_.cost() >= goal_);
  bench_.ClearUp();
  refill_.Run(goal_);
  if (bench_.work == before) bench_.work += kIdleRound;
}

}  // namespace tillwright::nest
