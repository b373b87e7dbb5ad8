// Column generation: the linear program over all ways to cut a sheet, and its proven bound.
#ifndef TILLWRIGHT_NEST_COLUMNS_H_
#define TILLWRIGHT_NEST_COLUMNS_H_

#include <cstdint>
#include <limits>
#include <optional>
#include <vector>

#include "nest/cover_lp.h"
#include "nest/guillotine.h"
#include "nest/knapsack.h"
#include "nest/problem.h"

namespace tillwright::nest {

// What cutting patterns can do at best (Gilmore & Gomory 1961, 1965). `work` limits the steps of
// the dynamic programs; the bound holds at any moment (Farley 1990), and is reckoned in integers;
// one of `enough` ends the work. Zero when the problem is too fine for a program of this size.
[[nodiscard]] std::int64_t PatternCostBound(const Problem& problem, std::int64_t enough,
                                            std::int64_t work);

[[nodiscard]] std::vector<std::int32_t> DemandsOf(const Problem& problem);

// Either dynamic program, behind one face.
class Pricer {
 public:
  // None when the programs would take too much room, or too many steps to be of use.
  static std::optional<Pricer> For(const Problem& problem, std::int64_t work);

  [[nodiscard]] std::int64_t Steps() const { return boards_ ? boards_->Steps() : sheets_->Steps(); }
  void Solve(const std::vector<std::int32_t>& values, const std::vector<std::int32_t>& limits) {
    if (boards_) boards_->Solve(values, limits);
    if (sheets_) sheets_->Solve(values);
  }
  [[nodiscard]] std::int32_t Value(const Stock& sheet) const {
    return boards_ ? boards_->Value(sheet) : sheets_->Value(sheet);
  }
  [[nodiscard]] std::vector<std::int32_t> Counts(const Stock& sheet) const {
    return boards_ ? boards_->Counts(sheet) : sheets_->Counts(sheet);
  }

 private:
  std::optional<Knapsack> boards_;
  std::optional<Guillotine> sheets_;
};

// The linear program of some demands, and the patterns found so far.
class Columns {
 public:
  Columns(const Problem& problem, Pricer& pricer, std::int64_t work)
      : problem_(problem), pricer_(pricer), work_(work) {
    for (const Stock& stock : problem.stock) dearest_ = std::max(dearest_, stock.cost);
    scale_ = std::min(kMostScale, static_cast<double>(1 << 30) / MostParts());
  }

  // Solves for these demands. REQUIRES: at least one is not zero.
  CoverLp Solve(const std::vector<std::int32_t>& demands);

  // Takes work off for something else done beside it.
  void Spend(std::int64_t work) { work_ -= work; }

  // A bound of this much is enough.
  void StopAt(std::int64_t bound) { enough_ = bound; }
  [[nodiscard]] std::int64_t bound() const { return bound_; }
  [[nodiscard]] double dearest() const { return static_cast<double>(dearest_); }
  [[nodiscard]] bool OutOfWork() const { return work_ <= 0; }
  [[nodiscard]] double CostOf(std::int32_t stock) const {
    return static_cast<double>(problem_.stock[static_cast<std::size_t>(stock)].cost) /
           static_cast<double>(dearest_);
  }

 private:
  // A pattern, and where it is not zero, so that pricing it is quick.
  struct Known {
    Pattern pattern;
    std::vector<std::size_t> parts;
  };
  static Known ToKnown(Pattern pattern);
  static bool WithinDemands(const Known& known, const std::vector<std::int32_t>& demands);

  static constexpr double kMostScale = 1e6;  // duals in integers, of a sheet's cost

  // Not fewer parts than any sheet holds.
  [[nodiscard]] double MostParts() const {
    std::int64_t sheet = 1;
    std::int64_t part = std::int64_t{1} << 62;
    for (const Stock& stock : problem_.stock) sheet = std::max(sheet, stock.Area());
    for (const Part& p : problem_.parts) part = std::min(part, p.Area());
    return static_cast<double>(sheet / part + 1);
  }
  std::vector<Pattern> First(const std::vector<std::int32_t>& demands) const;
  bool EnterKnown(CoverLp& lp, const std::vector<std::int32_t>& demands);
  bool EnterNew(CoverLp& lp, const std::vector<std::int32_t>& demands);
  bool EnterPriced(CoverLp& lp, const std::vector<std::int32_t>& demands,
                   const std::vector<double>& prices);
  void TakeBound(const std::vector<std::int32_t>& values, const std::vector<std::int32_t>& demands,
                 const std::vector<double>& prices);

  const Problem& problem_;
  Pricer& pricer_;
  std::int64_t work_;
  std::int64_t dearest_ = 1;
  double scale_ = kMostScale;
  std::int64_t bound_ = 0;
  std::int64_t enough_ = std::numeric_limits<std::int64_t>::max();
  std::vector<Known> known_;
  std::vector<double> center_;  // the prices of the best bound for the demands at hand
  double center_bound_ = 0;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_COLUMNS_H_
