// What lists and drawings say of seats (assembly.h).
#ifndef TILLWRIGHT_STOCK_PART_SEATS_H_
#define TILLWRIGHT_STOCK_PART_SEATS_H_

#include <string_view>
#include <vector>

#include "tillwright/assembly.h"

namespace tillwright {

// The face it is cut into, as lists call it: "left side", "upper face", "inside".
[[nodiscard]] std::string_view SeatFace(PartRole role, const Seat& seat);

// True when the other face has the same seats as the one that is drawn.
[[nodiscard]] bool BothFacesAlike(const std::vector<Seat>& seats);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_PART_SEATS_H_
