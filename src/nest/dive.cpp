#include "nest/dive.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

#include "nest/columns.h"
#include "nest/completion.h"
#include "nest/exchange.h"

namespace tillwright::nest {
namespace {

struct Cut {
  Pattern pattern;
  std::int32_t sheets = 0;
};

// Rounds a linear program: takes all whole sheets, else the pattern nearest to one, and solves
// again for what is left. Where that comes to cost more than the target, it goes back and takes the
// next nearest.
class Dive {
 public:
  Dive(const Problem& problem, Pricer& pricer, std::int64_t bound, std::int64_t work)
      : problem_(problem), columns_(problem, pricer, work), target_(bound) {}

  Rounded Run() {
    Step first{.demands = DemandsOf(problem_)};
    Solve(first);
    target_ = std::max(target_, columns_.bound());
    steps_.push_back(std::move(first));
    Rounded rounded{target_, {}};
    for (const Cut& cut : Cuts()) {
      rounded.boards.insert(rounded.boards.end(), static_cast<std::size_t>(cut.sheets),
                            cut.pattern);
    }
    return rounded;
  }

 private:
  struct Step {
    std::vector<std::int32_t> demands;
    std::vector<Cut> taken{};  // from the step before
    std::int64_t cost = 0;     // of all that has been taken
    bool solved = false;
    double whole_cost = 0;       // what the linear program comes to
    std::vector<Cut> whole{};    // what it cuts on whole sheets
    std::vector<Cut> choices{};  // what it cuts on a part of a sheet, the nearest to one last
  };
  static constexpr std::size_t kChoices = 3;
  static constexpr std::int64_t kFewParts = 80;
  static constexpr std::int64_t kCompletionSteps = 50'000;
  static constexpr std::int64_t kExchangeSteps = 1'000'000;

  // All that is cut, once a step leaves nothing over.
  std::vector<Cut> Cuts() {
    while (!steps_.empty() && !columns_.OutOfWork()) {
      Step& step = steps_.back();
      if (std::ranges::all_of(step.demands, [](std::int32_t n) { return n == 0; })) return Taken();
      if (!step.solved) Solve(step);
      const bool dear = step.whole_cost > static_cast<double>(target_) + 1e-6;
      if (step.choices.empty() || dear) {  // the fault often lies well before the end that shows it
        steps_.resize(steps_.size() / 2);
        continue;
      }
      if (Complete(step)) continue;
      const Cut choice = step.choices.back();
      step.choices.pop_back();
      Take(choice);
    }
    return {};
  }

  void Solve(Step& step) {
    step.solved = true;
    const CoverLp lp = columns_.Solve(step.demands);
    step.whole_cost = static_cast<double>(step.cost) + lp.objective() * columns_.dearest();
    std::vector<std::pair<double, Cut>> parts_of_sheets;
    lp.ForUsed([&](const Pattern& pattern, double sheets) {
      const auto whole = static_cast<std::int32_t>(std::floor(sheets + 1e-6));
      if (whole > 0) step.whole.push_back({pattern, whole});
      if (whole == 0) parts_of_sheets.push_back({sheets, {pattern, 1}});
    });
    std::ranges::stable_sort(parts_of_sheets, {}, [](const auto& p) { return p.first; });
    const std::size_t n = parts_of_sheets.size();
    for (std::size_t i = n > kChoices ? n - kChoices : 0; i < n; ++i) {
      step.choices.push_back(std::move(parts_of_sheets[i].second));
    }
    if (step.choices.empty() && !step.whole.empty()) step.choices.push_back({{}, 0});
  }

  // When few parts are left: looks for boards that take them all.
  bool Complete(const Step& step) {
    const std::int64_t left = std::accumulate(step.demands.begin(), step.demands.end(), 0);
    if (problem_.stock.size() > 1 || left > kFewParts) return false;
    const std::int64_t boards = (target_ - step.cost) / problem_.stock.front().cost;
    Step last{.demands = std::vector<std::int32_t>(step.demands.size()), .cost = target_};
    std::vector<Pattern> found =
        CompletedBoards(problem_, 0, step.demands, boards, kCompletionSteps);
    if (found.empty()) found = Exchanged(step.demands, boards);
    for (Pattern& board : found) last.taken.push_back({std::move(board), 1});
    if (last.taken.empty()) return false;
    steps_.push_back(std::move(last));
    return true;
  }

  std::vector<Pattern> Exchanged(const std::vector<std::int32_t>& demands, std::int64_t boards) {
    Problem rest = problem_;
    for (std::size_t i = 0; i < demands.size(); ++i) rest.parts[i].count = demands[i];
    columns_.Spend(kExchangeSteps);
    return ExchangedBoards(rest, boards, kExchangeSteps);
  }

  void Take(const Cut& choice) {
    Step next{
        .demands = steps_.back().demands, .taken = steps_.back().whole, .cost = steps_.back().cost};
    if (choice.sheets > 0) next.taken.push_back(choice);
    for (const Cut& cut : next.taken) {
      next.cost += problem_.stock[static_cast<std::size_t>(cut.pattern.stock)].cost * cut.sheets;
      for (std::size_t i = 0; i < next.demands.size(); ++i) {
        next.demands[i] = std::max(0, next.demands[i] - cut.pattern.counts[i] * cut.sheets);
      }
    }
    if (next.cost <= target_) steps_.push_back(std::move(next));
  }

  [[nodiscard]] std::vector<Cut> Taken() const {
    std::vector<Cut> cuts;
    for (const Step& step : steps_) cuts.insert(cuts.end(), step.taken.begin(), step.taken.end());
    return cuts;
  }

  const Problem& problem_;
  Columns columns_;
  std::int64_t target_;
  std::vector<Step> steps_;
};

}  // namespace

Rounded RoundedPatterns(const Problem& problem, std::int64_t bound, std::int64_t work) {
  std::optional<Pricer> pricer = Pricer::For(problem, work);
  if (!pricer || !IsOneDimensional(problem)) return {bound, {}};
  return Dive(problem, *pricer, bound, work).Run();
}

}  // namespace tillwright::nest
