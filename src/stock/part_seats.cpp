#include "stock/part_seats.h"

#include <algorithm>

#include "bank/part_roles.h"
#include "spec/kinds.h"

namespace tillwright {

std::string_view SeatFace(PartRole role, const Seat& seat) {
  return seat.other_face ? Facts(role).other_seats : Facts(role).seats;
}

bool BothFacesAlike(const std::vector<Seat>& seats) {
  const auto middle = std::ranges::find(seats, true, &Seat::other_face);
  return std::equal(seats.begin(), middle, middle, seats.end(), [](const Seat& a, const Seat& b) {
    return a.offset == b.offset && a.width == b.width;
  });
}

}  // namespace tillwright
