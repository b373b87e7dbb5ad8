// Seats: the dadoes in which dividers and partitions sit, seen from the
// parts that take them.
#ifndef TILLWRIGHT_STOCK_PART_SEATS_H_
#define TILLWRIGHT_STOCK_PART_SEATS_H_

#include <optional>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"

namespace tillwright {

struct Seat {
  int member = 0;  // index into Bank::dividers
  bool other_face =
      false;  // a divider's lower, a partition's left face; of a case side the right one's
  bool upright = false;  // across a part that lies; else across one that stands
  Length offset;         // from the part's lower or left end to the near side
  Length width, depth;
};

// The seats in a part, those of the face that is drawn first, each face's from the lower or left
// end. None where the case has butt joints, or there is no case.
[[nodiscard]] std::vector<Seat> SeatsIn(const Bank& bank, const Part& part);

// The face it is cut into, as lists call it: "left side", "upper face", "inside".
[[nodiscard]] std::string_view SeatFace(PartRole role, const Seat& seat);

// True when the other face has the same seats as the one that is drawn.
[[nodiscard]] bool BothFacesAlike(const std::vector<Seat>& seats);

// "1.offset", "2.width", "3.depth": the seats counted from 1; empty when there is no such.
[[nodiscard]] std::optional<Length> SeatValue(const Bank& bank, const Part& part,
                                              std::string_view name);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_PART_SEATS_H_
