#include "nest/packing.h"

#include <utility>

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

namespace {

void CutBoard(const Problem& problem, const Pattern& pattern, Packing& packing) {
  const Stock& stock = problem.stock[static_cast<std::size_t>(pattern.stock)];
  Tree tree(stock.width, stock.height);
  std::int32_t leftover = 0;
  for (std::size_t i = 0; i < problem.parts.size(); ++i) {
    const Part& part = problem.parts[i];
    for (std::int32_t n = 0; n < pattern.counts[i] && packing.missing[i] > 0; ++n) {
      const Laid laid{static_cast<std::int32_t>(i), part.width, part.height, false};
      leftover = tree.Insert(leftover, laid, kColumns)[0];
      --packing.missing[i];
    }
  }
  if (!tree.IsEmpty()) packing.sheets.push_back({pattern.stock, std::move(tree)});
}

}  // namespace

Packing BoardsCutBy(const Problem& problem, const std::vector<Pattern>& patterns) {
  Packing packing;
  std::vector<std::int32_t> on_hand;
  for (const Part& part : problem.parts) packing.missing.push_back(part.count);
  for (const Stock& stock : problem.stock) on_hand.push_back(stock.count);
  for (const Pattern& pattern : patterns) {
    std::int32_t& left = on_hand[static_cast<std::size_t>(pattern.stock)];
    if (left == 0) continue;
    if (left > 0) --left;
    CutBoard(problem, pattern, packing);
  }
  return packing;
}

}  // namespace tillwright::nest
