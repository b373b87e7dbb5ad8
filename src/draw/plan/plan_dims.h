// Dimensions whose texts come from the solved bank by path and whose places from exact lengths.
#ifndef TILLWRIGHT_DRAW_PLAN_PLAN_DIMS_H_
#define TILLWRIGHT_DRAW_PLAN_PLAN_DIMS_H_

#include <string>
#include <string_view>
#include <vector>

#include "sheet/dimension.h"
#include "sheet/scale.h"
#include "tillwright/bank.h"
#include "tillwright/sheet.h"

namespace tillwright {

// The value of a path as it is shown; nothing when there is no such dimension.
[[nodiscard]] DimensionText TextOf(const Bank& bank, const std::string& path);

// One station of a chain, and the path of what lies between it and the next; empty for nothing.
struct DimensionStop {
  Length at;
  std::string path{};
};

// A chain beside (along b) or above and below (along a) a view. Stops are given in ascending order
// along the view's axis; stretches without length lose their text, and stops out of order (a front
// that stops short of an edge) end the chain's neighborhood there.
[[nodiscard]] DimensionChain ChainOf(const Bank& bank, const PaperMap& map, PaperSide side,
                                     std::vector<DimensionStop> stops);

// Adds a chain as the next tier if any of it is dimensioned.
void AddTier(DimensionStack& stack, DimensionChain chain);

// A leader with lines of text, each with the path of what it shows.
struct NoteLine {
  std::string text{};
  std::string path{};
};
struct PathNote {
  PaperPoint tip{};
  PaperPoint elbow{};
  bool dot = false;
  bool text_left = false;
  std::vector<NoteLine> lines{};
};
PaperBox AddPathNote(SheetGroup& out, const PathNote& note, const TextMetrics& metrics);

// "LAP 1/8" with the path of the number; no text when there is no such dimension.
[[nodiscard]] NoteLine NumberNote(const Bank& bank, std::string_view before,
                                  const std::string& path, std::string_view after = "");

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PLAN_PLAN_DIMS_H_
