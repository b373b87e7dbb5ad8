// How wood takes up moisture and how it moves with it. Estimates: boards differ.
#ifndef TILLWRIGHT_SPEC_MOISTURE_H_
#define TILLWRIGHT_SPEC_MOISTURE_H_

#include <string_view>

#include "tillwright/spec.h"

namespace tillwright {

// Moisture content in % that wood comes to rest at in air of this temperature and relative humidity
// (%): USDA Forest Products Laboratory, Wood Handbook, GTR-282, eq. 4-5 with the constants for
// degrees Celsius. Its table runs from 30 to 270 F and 5 to 95 %; temperatures beyond are taken as
// the nearest within.
[[nodiscard]] double EquilibriumMoisture(double celsius, double humidity_percent);

// The moisture a spec gives, in percent or by the climate.
[[nodiscard]] double MoisturePercent(const MoistureSpec& moisture);

// Moisture of interior woodwork where none is given: 8 % over most of the United States, 6 % in the
// dry southwest, 11 % in the humid south (Wood Handbook, figure 13-1, as quoted by others).
struct SeasonMoisture {
  double made = 8, dry = 6, humid = 11;
};
[[nodiscard]] SeasonMoisture MoistureOf(const SeasonSpec& season);

// How much of its size across the grain a board gains per % of moisture (eq. 13-2); zero for panels
// and for what is not known to be solid wood.
[[nodiscard]] double ChangePerPercent(std::string_view material, SawnCut cut);

// So great a share of a length, to the picometer.
[[nodiscard]] Length ShareOf(Length length, double share);

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_MOISTURE_H_
