// What the views of a bank share: chains of solved sizes, lines that keep clear of texts, titles.
#ifndef TILLWRIGHT_SHEET_VIEW_TOOLS_H_
#define TILLWRIGHT_SHEET_VIEW_TOOLS_H_

#include <span>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "sheet/dimension.h"
#include "sheet/hatch.h"
#include "sheet/view.h"

namespace tillwright {

// Sizes in line, exact: places along an axis, ascending, and the paths of the dimensions between
// them (empty: not dimensioned).
struct SizeChain {
  std::vector<Length> places;
  std::vector<std::string> paths;  // one less than places

  [[nodiscard]] bool empty() const { return paths.empty(); }
  // Adds the stretch from `from` to `to`. What lies between the last place and `from` is left
  // without a dimension. Stretches of nothing, and those that begin before the last place, are left
  // out: their dimensions stand elsewhere.
  void Add(Length from, Length to, std::string path);
};

// Takes away dimensions whose paths hold `part`.
void DropPaths(SizeChain& chain, std::string_view part);

// The chain as a tier beside a view (`map`: from the chain's axis to paper; up means beside, where
// paper runs the other way).
[[nodiscard]] DimensionChain TierOf(const SizeChain& chain, const PaperMap& map, bool upright,
                                    Unit unit);

// True when the texts of a tier find room: those too wide for their segments stand in a column or
// row that may be longer than the chain by `spare` mm. A single text always does.
[[nodiscard]] bool HasRoomFor(const DimensionChain& tier, bool upright, double spare,
                              const TextMetrics& metrics);

// The measured boxes of all labels.
[[nodiscard]] std::vector<PaperBox> LabelBoxes(std::span<const SheetGroup> groups);

// Draws the line, broken where it would come within 0.6 mm of a box.
void AddBroken(SheetGroup& out, const Polyline& line, std::span<const PaperBox> boxes);

// Every path that a label of the groups carries.
using PathSet = std::unordered_set<std::string>;
void CollectPaths(std::span<const SheetGroup> groups, PathSet& paths);

// Title, scale and scale bar below what is drawn so far, from `left` on; then the view's box.
void FinishView(View& view, double left, Unit unit, const TextMetrics& metrics);

// A group of the view; ids begin with the view's name.
SheetGroup& AddViewGroup(View& view, std::string_view id, std::string title, int depth);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_VIEW_TOOLS_H_
