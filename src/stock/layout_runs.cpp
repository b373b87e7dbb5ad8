#include "stock/layout_runs.h"

#include <algorithm>

namespace tillwright {
namespace {

bool IsAlike(const NestPiece& a, const NestPiece& b) {
  return a.kind == b.kind && a.rect == b.rect && a.part == b.part && a.turned == b.turned &&
         a.parent == b.parent && a.run == b.run && a.place == b.place && a.pieces == b.pieces;
}

bool IsAlike(const NestLayout& a, const NestLayout& b) {
  return a.stock == b.stock &&
         std::ranges::equal(a.pieces, b.pieces, [](const NestPiece& one, const NestPiece& other) {
           return IsAlike(one, other);
         });
}

}  // namespace

std::vector<LayoutRun> LayoutRuns(const StockGroup& group) {
  const std::vector<NestLayout>& layouts = group.plan.layouts;
  std::vector<LayoutRun> runs;
  for (std::size_t i = 0; i < layouts.size(); ++i) {
    const auto same = std::ranges::find_if(
        runs, [&](const LayoutRun& run) { return IsAlike(layouts[run.front()], layouts[i]); });
    if (same == runs.end()) {
      runs.push_back({i});
    } else {
      same->push_back(i);
    }
  }
  return runs;
}

std::string RunNumbers(const LayoutRun& run) {
  std::string text;
  for (std::size_t i = 0; i < run.size(); ++i) {
    const std::size_t from = i;
    while (i + 1 < run.size() && run[i + 1] == run[i] + 1) ++i;
    text += (text.empty() ? "" : ", ") + std::to_string(run[from] + 1);
    if (i > from) text += (i == from + 1 ? ", " : "–") + std::to_string(run[i] + 1);
  }
  return text;
}

}  // namespace tillwright
