// The best way to cut one sheet when any number of each part may be taken: the exact dynamic
// program over cuts from edge to edge (Gilmore & Gomory 1966; Beasley 1985), in as many stages as
// it takes.
#ifndef TILLWRIGHT_NEST_GUILLOTINE_H_
#define TILLWRIGHT_NEST_GUILLOTINE_H_

#include <cstdint>
#include <vector>

#include "nest/problem.h"

namespace tillwright::nest {

// Widths that side-by-side parts can add up to: nothing is gained by a cut anywhere else.
[[nodiscard]] std::vector<std::int32_t> RasterPoints(const Problem& problem, bool across);

class Guillotine {
 public:
  explicit Guillotine(const Problem& problem);

  // How many steps one call of Solve takes.
  [[nodiscard]] std::int64_t Steps() const { return steps_; }

  // REQUIRES: a value of zero or more for every part; a sheet full of them within 32 bits.
  void Solve(const std::vector<std::int32_t>& values);

  // The value of the best layout of a sheet, and how many of each part are in it.
  [[nodiscard]] std::int32_t Value(const Stock& sheet) const;
  [[nodiscard]] std::vector<std::int32_t> Counts(const Stock& sheet) const;

 private:
  [[nodiscard]] std::int32_t* Column(std::size_t x) { return best_.data() + x * ys_.size(); }
  [[nodiscard]] const std::int32_t* Column(std::size_t x) const {
    return best_.data() + x * ys_.size();
  }
  [[nodiscard]] std::size_t XAt(std::int32_t width) const;
  [[nodiscard]] std::size_t YAt(std::int32_t height) const;
  void PlaceParts(const std::vector<std::int32_t>& values);
  void CutColumns(std::size_t x);
  void CutRows(std::size_t x);
  void Count(std::size_t x, std::size_t y, std::vector<std::int32_t>& counts) const;
  bool CountColumns(std::size_t x, std::size_t y, std::vector<std::int32_t>& counts) const;
  bool CountRows(std::size_t x, std::size_t y, std::vector<std::int32_t>& counts) const;

  const Problem& problem_;
  std::vector<std::int32_t> xs_;
  std::vector<std::int32_t> ys_;
  // What remains of x[i] beside x[j], as an index; likewise for y.
  std::vector<std::uint32_t> x_rest_;
  std::vector<std::uint32_t> y_rest_;
  std::vector<std::int32_t> best_;  // the best value of a piece of each raster size, by columns
  std::vector<std::int32_t> values_;
  std::int64_t steps_ = 0;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_GUILLOTINE_H_
