#include <map>
#include <utility>

#include "bank/part_roles.h"
#include "stock/part_shape.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

using Numbers = std::vector<std::int64_t>;

// What is cut into a piece, and where, as whole numbers.
Numbers CutsOf(const PlacedPart& piece) {
  Numbers numbers;
  for (const PlacedCut& cut : piece.cuts) {
    for (const int trait : {static_cast<int>(cut.source), static_cast<int>(cut.kind),
                            static_cast<int>(cut.run), cut.from_far ? 1 : 0, cut.behind ? 1 : 0}) {
      numbers.push_back(trait);
    }
    numbers.push_back(cut.depth.picometers());
    for (const JobWay way : {piece.frame.right, piece.frame.up, piece.frame.into}) {
      const Extent whole = ExtentOf(piece.block, way.axis);
      const Extent own = ExtentOf(cut.block, way.axis);
      const Length from = way.against ? whole.high - own.high : own.low - whole.low;
      numbers.push_back(from.picometers());
      numbers.push_back(own.Size().picometers());
    }
  }
  return numbers;
}

// All that makes two parts alike: the left-hand piece and, where there is one, the right-hand one.
struct KindKey {
  Numbers numbers, left, right;
  std::string material;
  friend auto operator<=>(const KindKey&, const KindKey&) = default;
};

KindKey KeyOf(const Part& part, std::span<const PlacedPart> pieces) {
  const PlacedPart& left = pieces.front();
  KindKey key{
      {static_cast<int>(part.role), static_cast<int>(part.grain)}, CutsOf(left), {}, part.material};
  for (const Length size : {RightSize(left), UpSize(left), Thickness(left)}) {
    key.numbers.push_back(size.picometers());
  }
  if (Facts(part.role).in_pairs) key.right = CutsOf(pieces.back());
  return key;
}

}  // namespace

std::vector<PartKind> PartKinds(const Bank& bank) {
  std::vector<PartKind> kinds;
  std::map<KindKey, std::size_t> known;
  const Assembly assembly = Assemble(bank);
  for (std::size_t i = 0; i < bank.parts.size(); ++i) {
    const Part& part = bank.parts[i];
    const auto pieces = assembly.OfPart(i);
    KindKey key = KeyOf(part, pieces);
    const bool paired = Facts(part.role).in_pairs;
    // One of them stands at the left and one at the right.
    const bool handed =
        paired && (IsHanded(ShapeOf(part, pieces.front())) || key.left != key.right);
    const auto [at, is_new] = known.emplace(std::move(key), kinds.size());
    if (is_new) kinds.emplace_back();
    PartKind& kind = kinds[at->second];
    kind.parts.push_back(i);
    kind.count += part.count;
    if (handed) ++kind.mirrored;
  }
  return kinds;
}

}  // namespace tillwright
