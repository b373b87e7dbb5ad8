// The chains of dimensions around a plan section.
#ifndef TILLWRIGHT_DRAW_PLAN_PLAN_SIZES_H_
#define TILLWRIGHT_DRAW_PLAN_PLAN_SIZES_H_

#include <cstdint>

#include "draw/plan/plan_faces.h"
#include "sheet/scale.h"
#include "tillwright/bank.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

enum class PlanDetail : std::uint8_t { kAll, kKey };

// A plan as it lies on paper.
struct PlanOnPaper {
  const Bank& bank;
  const PlanScope& scope;
  PaperMap map;
  PaperBox inside;   // of the box
  PaperBox outline;  // of all that is drawn
  PlanDetail detail = PlanDetail::kAll;
  bool sized_inside = true;  // the inside sizes stand inside the box
};

// True for a side that is drawn to its end.
[[nodiscard]] bool IsBounded(const PlanSide& side);

// Below: the front and what it covers or clears. Above: box, clearances, opening and case. Right:
// depths. Left: the slide.
void AddPlanSizes(SheetGroup& out, const PlanOnPaper& plan, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PLAN_PLAN_SIZES_H_
