// Scanning the text of a length into an exact fraction of picometers.
#ifndef TILLWRIGHT_LENGTH_LENGTH_SCAN_H_
#define TILLWRIGHT_LENGTH_LENGTH_SCAN_H_

#include <string_view>

#include "tillwright/length_text.h"

namespace tillwright {

// When `ok`, the text says numerator/denominator pm, with denominator in [1, 1e18] and the
// magnitude below 1e36, so that products with 100 m in picometers (1e14 · 1e18) stay in 128 bits.
struct ScannedLength {
  bool ok = false;
  Int128 numerator = 0;
  Int128 denominator = 1;
  Unit unit = Unit::kInch;  // what it was typed in: feet count as inches, meters as millimeters
  LengthFault fault;
};

[[nodiscard]] ScannedLength ScanLength(std::string_view text, Unit unit);

}  // namespace tillwright

#endif  // TILLWRIGHT_LENGTH_LENGTH_SCAN_H_
