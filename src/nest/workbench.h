// The workbench of a search: sheets in work with their leftovers, what is missing, what it all
// costs, and a way back to how things stood at the last mark.
#ifndef TILLWRIGHT_NEST_WORKBENCH_H_
#define TILLWRIGHT_NEST_WORKBENCH_H_

#include <array>
#include <cmath>
#include <cstdint>
#include <vector>

#include "nest/lefts.h"
#include "nest/packing.h"
#include "nest/random.h"

namespace tillwright::nest {

// What a leftover of an area is worth: more when it is large in one piece. Only steers the search;
// square roots are exact to the last bit on every machine, so the same path is taken everywhere.
inline float WorthOf(float area) { return area * std::sqrt(std::sqrt(area)); }

class Workbench {
 public:
  struct Sheet {
    SheetInWork work;
    std::vector<Left> lefts;  // the leftovers that some part might fit
    double worth = 0;         // of all of them
  };

  explicit Workbench(const Problem& problem);

  void Start(const Packing& packing);
  [[nodiscard]] Packing ToPacking() const;

  // From here on Undo comes back here.
  void Mark();
  void Undo();

  // Takes a random node of a random sheet out, or all of the sheet. What was in it is missing.
  void RemoveSomething(Random& random, bool whole);
  // Puts empty sheets away, and measures those that were worked on since the mark.
  void ClearUp();
  void MeasureTouched();
  // Opens a sheet of a stock; returns its index.
  std::size_t Open(std::int32_t stock);
  // Puts a part into a leftover. Returns the leftovers that come of it, kNone for none.
  std::array<std::int32_t, 2> Place(const Left& left, const Laid& laid, std::int32_t first_cut);

  [[nodiscard]] const Problem& problem() const { return problem_; }
  [[nodiscard]] const std::vector<Sheet>& sheets() const { return sheets_; }
  [[nodiscard]] const std::vector<std::int32_t>& missing() const { return missing_; }
  [[nodiscard]] std::int64_t missing_area() const { return missing_area_; }
  [[nodiscard]] std::int64_t cost() const { return cost_; }
  [[nodiscard]] double worth() const { return worth_; }  // of all leftovers
  [[nodiscard]] bool OnHand(std::size_t stock) const { return on_hand_[stock] != 0; }
  [[nodiscard]] const Stock& StockOf(std::int32_t stock) const {
    return problem_.stock[static_cast<std::size_t>(stock)];
  }
  [[nodiscard]] const Part& PartAt(std::int32_t part) const {
    return problem_.parts[static_cast<std::size_t>(part)];
  }
  [[nodiscard]] const Tree& TreeOf(std::int32_t sheet) const {
    return sheets_[static_cast<std::size_t>(sheet)].work.tree;
  }
  // The area of a leftover, none when no part fits it; and what it is worth.
  [[nodiscard]] float UsefulArea(std::int32_t width, std::int32_t height) const {
    return ((width >= least_width_) & (height >= least_height_))
               ? static_cast<float>(width) * static_cast<float>(height)
               : 0.0F;
  }
  [[nodiscard]] float LeftWorth(std::int32_t width, std::int32_t height) const {
    return WorthOf(UsefulArea(width, height));
  }

  // Units of work spent: leftovers looked at, more or less.
  std::int64_t work = 0;

 private:
  void Touch(std::size_t sheet);
  void Close(std::size_t sheet);
  void Measure(Sheet& sheet) const;

  const Problem& problem_;
  std::int32_t least_width_ = 0;
  std::int32_t least_height_ = 0;

  std::vector<Sheet> sheets_;
  std::vector<std::int32_t> missing_;
  std::vector<std::int32_t> on_hand_;
  std::int64_t missing_area_ = 0;
  std::int64_t cost_ = 0;
  double worth_ = 0;

  std::vector<std::size_t> touched_;  // since the mark
  std::vector<Sheet> backup_;
  std::vector<std::uint32_t> stamp_;
  std::uint32_t now_ = 0;
  std::vector<std::int32_t> missing_before_;
  std::vector<std::int32_t> on_hand_before_;
  std::int64_t missing_area_before_ = 0;
  std::int64_t cost_before_ = 0;
  double worth_before_ = 0;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_WORKBENCH_H_
