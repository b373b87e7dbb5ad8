#include "draw/part/part_sheet_dims.h"

#include <algorithm>

#include "sheet/size_chain.h"

namespace tillwright {
namespace {

using Marks = std::vector<SizeMark>;

// One mark for every different stretch, with all its paths.
Marks Merged(Marks marks) {
  std::ranges::stable_sort(marks, [](const SizeMark& a, const SizeMark& b) {
    const Length la = a.high - a.low;
    const Length lb = b.high - b.low;
    return la != lb ? la < lb : a.low < b.low;
  });
  Marks out;
  for (SizeMark& mark : marks) {
    if (mark.high <= mark.low) continue;
    const bool same = !out.empty() && out.back().low == mark.low && out.back().high == mark.high;
    if (!same) {
      out.push_back(std::move(mark));
    } else if (!mark.path.empty()) {
      if (!out.back().path.empty()) out.back().path += ' ';
      out.back().path += mark.path;
    }
  }
  return out;
}

bool Overlap(const SizeMark& a, const SizeMark& b) { return a.low < b.high && b.low < a.high; }

// The shortest first, each in the innermost tier that has room for it.
std::vector<Marks> Tiers(Marks marks) {
  std::vector<Marks> tiers;
  for (SizeMark& mark : marks) {
    const auto tier = std::ranges::find_if(tiers, [&](const Marks& other) {
      return std::ranges::none_of(other, [&](const SizeMark& m) { return Overlap(m, mark); });
    });
    if (tier == tiers.end()) {
      tiers.push_back({std::move(mark)});
    } else {
      tier->push_back(std::move(mark));
    }
  }
  return tiers;
}

DimensionChain ChainOf(Marks tier, Unit unit, const std::function<double(Length)>& paper) {
  std::ranges::sort(tier, {}, &SizeMark::low);
  SizeChain chain;
  for (SizeMark& mark : tier) chain.Add(mark.low, mark.high, std::move(mark.path));
  return TierOf(chain, paper, unit);
}

}  // namespace

std::vector<DimensionChain> ChainsOf(std::vector<SizeMark> marks, Unit unit,
                                     const std::function<double(Length)>& paper) {
  std::vector<DimensionChain> chains;
  for (Marks& tier : Tiers(Merged(std::move(marks)))) {
    chains.push_back(ChainOf(std::move(tier), unit, paper));
  }
  return chains;
}

}  // namespace tillwright
