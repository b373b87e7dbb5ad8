// The ruler of a strip: graduations from the datum on its far edge.
#ifndef TILLWRIGHT_DRAW_STICK_RULER_H_
#define TILLWRIGHT_DRAW_STICK_RULER_H_

#include "draw/stick/strip_map.h"
#include "tillwright/length_text.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

struct Ruler {
  Unit unit = Unit::kInch;
  double edge = 0;       // u of the base line; graduations run from it to the working edge
  Length from, to;       // distances from the datum
  double clear_low = 0;  // mm without numerals at both ends
  double clear_high = 0;
};

// Graduated in 1/8, 1/4, 1/2 and 1 in, or in 1, 5 and 10 mm, with numerals at whole inches
// and every 10 mm.
void AddRuler(SheetGroup& out, const Ruler& ruler, const StripMap& map, const TextMetrics& metrics);

// Width from the base line to the end of the widest numeral.
[[nodiscard]] double RulerWidth(Unit unit, Length from, Length to, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_RULER_H_
