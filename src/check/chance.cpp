#include "check/chance.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <tuple>

#include "check/random.h"

namespace tillwright {
namespace {

constexpr std::uint64_t kSeed = 1950;
constexpr double kThrows = 1.2e6;  // normal numbers for the whole simulation
constexpr int kFewestSamples = 500;
constexpr int kMostSamples = 200'000;

using Kind = Contributor::Kind;

struct Term {
  int variable;
  double sigma;  // coefficient times standard deviation, mm
};
struct RandomGap {
  double nominal = 0;
  std::vector<Term> terms;
  int group = 0;  // after grouping: a gap it shares contributors with, or itself
};

class Reckoner {
 public:
  explicit Reckoner(const GapCheck& check)
      : check_(check), low_(ToMillimeters(check.least)), high_(ToMillimeters(check.greatest)) {}

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
        chance.value *= ChanceWithin(gap.nominal, SigmaOf(gap), low_, high_);
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

  void Simulate(const std::vector<const RandomGap*>& together, Chance& chance) const {
    Twister random(kSeed);
    std::vector<double> drawn(variables_.size());
    std::vector<int> drawn_in(variables_.size(), -1);  // the sample it was drawn for
    std::size_t terms = 0;
    for (const RandomGap* gap : together) terms += gap->terms.size();
    chance.samples = std::clamp(static_cast<int>(kThrows / static_cast<double>(terms)),
                                kFewestSamples, kMostSamples);
    int kept = 0;
    for (int sample = 0; sample < chance.samples; ++sample) {
      kept += std::ranges::all_of(together, [&](const RandomGap* gap) {
        double value = gap->nominal;
        for (const Term& term : gap->terms) {
          const auto at = static_cast<std::size_t>(term.variable);
          if (drawn_in[at] != sample) {
            drawn_in[at] = sample;
            drawn[at] = random.Normal();
          }
          value += term.sigma * drawn[at];
        }
        return value >= low_ && value <= high_;
      });
    }
    const double n = chance.samples;
    const double share = kept / n;
    const double variance = std::max(share * (1 - share), 1 / n);  // none missed is not certainty
    chance.error = chance.value * std::sqrt(variance / n);
    chance.value *= share;
  }

  const GapCheck& check_;
  double low_, high_;
  std::map<Identity, int> variables_;
  std::vector<RandomGap> gaps_;
  std::vector<int> parent_;
  std::vector<int> sharers_;
};

double Below(double x, double sigma) { return 0.5 * std::erfc(-x / (sigma * std::sqrt(2.0))); }

}  // namespace

double ChanceWithin(double mean, double sigma, double low, double high) {
  if (sigma <= 0) return mean >= low && mean <= high ? 1 : 0;
  // From whichever side keeps the digits.
  if (low > mean) return Below(mean - low, sigma) - Below(mean - high, sigma);
  return Below(high - mean, sigma) - Below(low - mean, sigma);
}

Chance ChanceOfAll(const GapCheck& check) { return Reckoner(check).Run(); }

}  // namespace tillwright
