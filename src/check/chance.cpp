#include "check/chance.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numeric>
#include <tuple>

#include "check/random.h"

namespace tillwright {
namespace {

constexpr std::uint64_t kSeed = 1950;
// Thrown until the standard error is this small, or so many normal numbers are used up.
constexpr double kErrorWanted = 0.0005;
constexpr std::size_t kMostNumbers = 1'500'000;
constexpr int kFewestSamples = 200;
constexpr int kBatch = 1000;

using Kind = Contributor::Kind;

struct Term {
  int variable;
  double sigma;  // coefficient times standard deviation, mm
};
struct RandomGap {
  double nominal = 0;
  double high = std::numeric_limits<double>::infinity();
  std::vector<Term> terms;
  int group = 0;  // after grouping: a gap it shares contributors with, or itself
};

class Reckoner {
 public:
  explicit Reckoner(const GapCheck& check) : check_(check), low_(ToMillimeters(check.least)) {}

  Chance Run() {
    for (const StackUp& stack : check_.stacks) {
      if (!stack.is_overlap) Take(stack);
    }
    Chance chance;
    std::vector<const RandomGap*> together;
    Group();
    for (const RandomGap& gap : gaps_) {
      if (sharers_[static_cast<std::size_t>(gap.group)] > 1) {
        together.push_back(&gap);
      } else {
        chance.value *= ChanceWithin(gap.nominal, SigmaOf(gap), low_, gap.high);
      }
    }
    if (!together.empty() && chance.value > 0) Simulate(together, chance);
    return chance;
  }

 private:
  // Two contributors are the same thing when kind, axis, front and edge are.
  using Identity = std::tuple<Kind, Axis, int, GapEnd::Kind, int>;

  int VariableOf(const StackUp& stack, const Contributor& c) {
    const Identity id{c.kind, stack.axis, c.space, c.edge.kind, c.edge.index};
    return variables_.try_emplace(id, static_cast<int>(variables_.size())).first->second;
  }

  void Take(const StackUp& stack) {
    RandomGap& gap = gaps_.emplace_back();
    gap.nominal = ToMillimeters(stack.nominal);
    if (stack.greatest) gap.high = ToMillimeters(*stack.greatest);
    for (const Contributor& c : stack.contributors) {
      if (c.tolerance.IsZero()) continue;
      gap.terms.push_back({VariableOf(stack, c), c.halves / 2.0 * ToMillimeters(c.tolerance) / 3});
    }
  }

  static double SigmaOf(const RandomGap& gap) {
    double squares = 0;
    for (const Term& term : gap.terms) squares += term.sigma * term.sigma;
    return std::sqrt(squares);
  }

  int Root(int gap) const {
    while (parent_[static_cast<std::size_t>(gap)] != gap) {
      gap = parent_[static_cast<std::size_t>(gap)];
    }
    return gap;
  }

  void Group() {
    parent_.resize(gaps_.size());
    std::iota(parent_.begin(), parent_.end(), 0);
    std::vector<int> first_user(variables_.size(), -1);
    for (std::size_t i = 0; i < gaps_.size(); ++i) {
      for (const Term& term : gaps_[i].terms) {
        int& first = first_user[static_cast<std::size_t>(term.variable)];
        const int here = Root(static_cast<int>(i));
        if (first < 0) first = here;
        const int there = Root(first);
        // The lower index leads, and paths stay short: every user hangs on the first one's root.
        parent_[static_cast<std::size_t>(std::max(here, there))] = std::min(here, there);
      }
    }
    sharers_.assign(gaps_.size(), 0);
    for (std::size_t i = 0; i < gaps_.size(); ++i) {
      gaps_[i].group = Root(static_cast<int>(i));
      ++sharers_[static_cast<std::size_t>(gaps_[i].group)];
    }
  }

  void Simulate(const std::vector<const RandomGap*>& together, Chance& chance) {
    Twister random(kSeed);
    drawn_.resize(variables_.size());
    drawn_in_.assign(variables_.size(), -1);
    std::size_t numbers = 0;
    for (const RandomGap* gap : together) numbers += gap->terms.size();
    const auto most = static_cast<int>(kMostNumbers / std::max<std::size_t>(numbers, 1));
    const int batch = std::min(kBatch, std::max(most, kFewestSamples));
    const double exact = chance.value;
    int kept = 0;
    do {
      for (int i = 0; i < batch; ++i) kept += Keeps(together, chance.samples++, random) ? 1 : 0;
      const double n = chance.samples;
      const double share = kept / n;
      const double variance = std::max(share * (1 - share), 1 / n);  // no miss is not certainty
      chance.error = exact * std::sqrt(variance / n);
      chance.value = exact * share;
    } while (chance.error > kErrorWanted && chance.samples + batch <= most);
  }

  // One throw: whether every gap keeps its limits.
  bool Keeps(const std::vector<const RandomGap*>& together, int sample, Twister& random) {
    return std::ranges::all_of(together, [&](const RandomGap* gap) {
      double value = gap->nominal;
      for (const Term& term : gap->terms) {
        const auto at = static_cast<std::size_t>(term.variable);
        if (drawn_in_[at] != sample) {
          drawn_in_[at] = sample;
          drawn_[at] = random.Normal();
        }
        value += term.sigma * drawn_[at];
      }
      return value >= low_ && value <= gap->high;
    });
  }

  const GapCheck& check_;
  double low_;
  std::map<Identity, int> variables_;
  std::vector<RandomGap> gaps_;
  std::vector<int> parent_;
  std::vector<int> sharers_;
  std::vector<double> drawn_;
  std::vector<int> drawn_in_;  // the sample that each was drawn for
};

double Below(double x, double sigma) { return 0.5 * std::erfc(-x / (sigma * std::sqrt(2.0))); }

}  // namespace

double ChanceWithin(double mean, double sigma, double low, double high) {
  if (high < low) return 0;  // limits that cross: nothing lies within them
  if (sigma <= 0) return mean >= low && mean <= high ? 1 : 0;
  // From whichever side keeps the digits.
  if (low > mean) return Below(mean - low, sigma) - Below(mean - high, sigma);
  return Below(high - mean, sigma) - Below(low - mean, sigma);
}

Chance ChanceOfAll(const GapCheck& check) { return Reckoner(check).Run(); }

}  // namespace tillwright
