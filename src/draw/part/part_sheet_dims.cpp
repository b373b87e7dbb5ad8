#include "draw/part/part_sheet_dims.h"

#include <algorithm>

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
  std::ranges::sort(tier, [&](const SizeMark& a, const SizeMark& b) {
    return std::min(paper(a.low), paper(a.high)) < std::min(paper(b.low), paper(b.high));
  });
  DimensionChain chain;
  const SizeMark* before = nullptr;
  for (const SizeMark& mark : tier) {
    const bool rising = paper(mark.high) > paper(mark.low);
    const Length from = rising ? mark.low : mark.high;
    const bool joined = before != nullptr && from == (rising ? before->high : before->low);
    if (!joined) {
      if (before != nullptr) chain.texts.emplace_back();  // a stretch without a size
      chain.stations.push_back(paper(from));
    }
    chain.stations.push_back(paper(rising ? mark.high : mark.low));
    chain.texts.push_back({FormatLength(mark.high - mark.low, unit), mark.path});
    before = &mark;
  }
  return chain;
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
