#include <map>

#include "bank/part_roles.h"
#include "stock/part_seats.h"
#include "stock/part_shape.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

// All that makes two parts alike, as whole numbers; the material beside it.
struct KindKey {
  std::vector<std::int64_t> numbers;
  std::string material;
  friend auto operator<=>(const KindKey&, const KindKey&) = default;
};

KindKey KeyOf(const Part& part, const PartShape& shape, const std::vector<Seat>& seats) {
  KindKey key{{}, part.material};
  const auto add = [&](Length length) { key.numbers.push_back(length.picometers()); };
  key.numbers.push_back(static_cast<std::int64_t>(part.role));
  key.numbers.push_back(static_cast<std::int64_t>(part.grain));
  for (const Length length : {shape.right, shape.up, shape.thickness}) add(length);
  for (const Cut& cut : part.cuts) {
    key.numbers.push_back(static_cast<std::int64_t>(cut.kind));
    key.numbers.push_back(static_cast<std::int64_t>(cut.from));
    key.numbers.push_back(static_cast<std::int64_t>(cut.face));
    for (const Length length : {cut.offset, cut.width, cut.depth}) add(length);
  }
  add(part.notch.width);
  add(part.notch.height);
  for (const Seat& seat : seats) {
    key.numbers.push_back(seat.other_face ? 1 : 0);
    for (const Length length : {seat.offset, seat.width, seat.depth}) add(length);
  }
  for (const PullHole& hole : shape.holes) {
    add(hole.x);
    add(hole.y);
  }
  return key;
}

}  // namespace

std::vector<PartKind> PartKinds(const Bank& bank) {
  std::vector<PartKind> kinds;
  std::map<KindKey, std::size_t> known;
  for (std::size_t i = 0; i < bank.parts.size(); ++i) {
    const Part& part = bank.parts[i];
    const PartShape shape = ShapeOf(bank, part);
    const std::vector<Seat> seats = SeatsIn(bank, part);
    const auto [at, is_new] = known.emplace(KeyOf(part, shape, seats), kinds.size());
    if (is_new) kinds.emplace_back();
    PartKind& kind = kinds[at->second];
    kind.parts.push_back(i);
    kind.count += part.count;
    // One of them stands at the left and one at the right.
    if (Facts(part.role).in_pairs && (IsHanded(shape) || !BothFacesAlike(seats))) ++kind.mirrored;
  }
  return kinds;
}

}  // namespace tillwright
