#include "stock/part_seats.h"

#include <algorithm>
#include <charconv>

#include "bank/part_roles.h"

namespace tillwright {
std::string_view SeatKind(const Bank& bank) {
  return bank.casework && bank.casework->joint == CaseJoint::kGroove ? "groove" : "dado";
}

std::string_view SeatFace(PartRole role, const Seat& seat) {
  return seat.other_face ? Facts(role).other_seats : Facts(role).seats;
}

bool BothFacesAlike(const std::vector<Seat>& seats) {
  const auto middle = std::ranges::find(seats, true, &Seat::other_face);
  return std::equal(seats.begin(), middle, middle, seats.end(), [](const Seat& a, const Seat& b) {
    return a.offset == b.offset && a.width == b.width;
  });
}

std::optional<Length> SeatValue(const Bank& bank, const Part& part, std::string_view name) {
  std::size_t number = 0;
  const auto [end, error] = std::from_chars(name.data(), name.data() + name.size(), number);
  if (error != std::errc() || number == 0) return std::nullopt;
  name.remove_prefix(static_cast<std::size_t>(end - name.data()));
  const std::vector<Seat> seats = SeatsIn(bank, part);
  if (number > seats.size()) return std::nullopt;
  const Seat& seat = seats[number - 1];
  if (name == ".offset") return seat.offset;
  if (name == ".width") return seat.width;
  if (name == ".depth") return seat.depth;
  return std::nullopt;
}

}  // namespace tillwright
