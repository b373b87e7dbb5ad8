// Solved sizes in line: how exact places and the paths of what lies between them become tiers of
// dimensions beside a view.
#ifndef TILLWRIGHT_SHEET_SIZE_CHAIN_H_
#define TILLWRIGHT_SHEET_SIZE_CHAIN_H_

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "sheet/dimension.h"
#include "sheet/scale.h"
#include "tillwright/length_text.h"

namespace tillwright {

// One place, and the path of what lies between it and the next; empty for nothing.
struct SizeStop {
  Length at;
  std::string path{};
  bool against = false;  // it runs the other way: shown with a minus
};

// Sizes in line, exact: places along an axis, ascending, and the paths of the dimensions between
// them (empty: not dimensioned).
struct SizeChain {
  std::vector<Length> places;
  std::vector<std::string> paths;  // one less than places
  std::vector<bool> against;       // of each path: shown with a minus

  [[nodiscard]] bool empty() const { return paths.empty(); }
  // Adds the stretch from `from` to `to`. What lies between the last place and `from` is left
  // without a dimension. Stretches of nothing, and those that begin before the last place, are left
  // out: their dimensions stand elsewhere.
  void Add(Length from, Length to, std::string path, bool runs_against = false);

  // Stops in ascending order. Stretches without length lose their dimension, and stops out of order
  // (a front that stops short of an edge) end the chain's neighborhood there.
  [[nodiscard]] static SizeChain Through(std::vector<SizeStop> stops);
};

// The chain on paper; `paper` gives the place of a length along it.
[[nodiscard]] DimensionChain TierOf(const SizeChain& chain,
                                    const std::function<double(Length)>& paper, Unit unit);

// Adds the chain as the next tier of a stack beside a view with this map, if any of it is
// dimensioned.
void AddTier(DimensionStack& stack, const SizeChain& chain, const PaperMap& map, Unit unit);

// How far moved texts may go past the ends of their chain, in mm, and which sizes may be left out
// where they find no room even so: those whose paths hold one of the words.
struct TierRoom {
  std::span<const std::string_view> lesser{};
  double whole = 14;  // of all sizes
  double rest = 14;   // without the lesser ones
};
// The same, the lesser sizes left out or the whole chain where there is no room for the texts.
void AddTierWithRoom(DimensionStack& stack, SizeChain chain, const PaperMap& map, Unit unit,
                     const TierRoom& room, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_SIZE_CHAIN_H_
