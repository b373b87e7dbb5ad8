#include "nest/packing.h"

namespace tillwright::nest {

std::int64_t Packing::Cost(const Problem& problem) const {
  std::int64_t cost = 0;
  for (const SheetInWork& sheet : sheets) {
    if (sheet.stock != kNone) cost += problem.stock[static_cast<std::size_t>(sheet.stock)].cost;
  }
  return cost;
}

std::int32_t Packing::Sheets() const {
  std::int32_t n = 0;
  for (const SheetInWork& sheet : sheets) n += sheet.stock == kNone ? 0 : 1;
  return n;
}

std::int64_t Packing::MissingArea(const Problem& problem) const {
  std::int64_t area = 0;
  for (std::size_t i = 0; i < problem.parts.size(); ++i) {
    area += problem.parts[i].Area() * missing[i];
  }
  return area;
}

}  // namespace tillwright::nest
