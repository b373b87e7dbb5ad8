// Which edges of a part get a band.
#ifndef TILLWRIGHT_BANK_BANDS_H_
#define TILLWRIGHT_BANK_BANDS_H_

#include "bank/part_roles.h"

namespace tillwright {

// Of sheet stock, the edges that are seen, where the spec asks for bands on what the part belongs
// to. A face frame hides the front edges.
[[nodiscard]] SeenEdge BandedEdge(const EdgeBandSpec& band, const Part& part, bool framed);

}  // namespace tillwright

#endif  // TILLWRIGHT_BANK_BANDS_H_
