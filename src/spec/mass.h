// Weights as a maker types them: "20 lb", "9 kg", 12.5. Only estimates depend on them, so doubles
// do.
#ifndef TILLWRIGHT_SPEC_MASS_H_
#define TILLWRIGHT_SPEC_MASS_H_

#include <optional>
#include <string>
#include <string_view>

#include "tillwright/length_text.h"

namespace tillwright {

inline constexpr double kKilogramsPerPound = 0.45359237;  // exact by definition

// Kilograms; without a unit pounds go with inches and kilograms with millimeters. Nothing when the
// text is no weight above zero: lb, lbs, pound(s), oz, kg and g are known.
[[nodiscard]] std::optional<double> ParseMass(std::string_view text, Unit unit);

// In the spec's kind of units, to a tenth below ten and whole above: "8.5 lb", "32 kg".
[[nodiscard]] std::string FormatMass(double kilograms, Unit unit);

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_MASS_H_
