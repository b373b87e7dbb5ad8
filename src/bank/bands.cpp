#include "bank/bands.h"

#include "spec/materials.h"

namespace tillwright {
namespace {

bool IsAskedFor(const EdgeBandSpec& band, PartGroup group) {
  if (group == PartGroup::kFront) return band.fronts.value;
  return group == PartGroup::kBox ? band.boxes.value : band.casework.value;
}

}  // namespace

SeenEdge BandedEdge(const EdgeBandSpec& band, const Part& part, bool framed) {
  const PartRoleFacts& facts = Facts(part.role);
  if (!band.typed || IsSolidWood(part.material) || !IsAskedFor(band, facts.group)) {
    return SeenEdge::kNone;
  }
  return framed && facts.seen == SeenEdge::kFront ? SeenEdge::kNone : facts.seen;
}

}  // namespace tillwright
