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
