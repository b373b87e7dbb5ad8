// What views share: lines that keep clear of texts, titles, groups.
#ifndef TILLWRIGHT_SHEET_VIEW_TOOLS_H_
#define TILLWRIGHT_SHEET_VIEW_TOOLS_H_

#include <span>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "sheet/hatch.h"
#include "sheet/view.h"

namespace tillwright {

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
