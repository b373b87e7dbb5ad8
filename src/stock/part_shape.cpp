#include "stock/part_shape.h"

#include <algorithm>
#include <tuple>

#include "bank/part_roles.h"
#include "stock/part_seats.h"

namespace tillwright {
namespace {

const Space& SpaceOf(const Bank& bank, const Part& part) {
  return bank.spaces[static_cast<std::size_t>(part.space)];
}

// The sides of the face as the part stands in the piece.
void SizeFace(const Bank& bank, const Part& part, PartShape& shape) {
  const PartRoleFacts& facts = Facts(part.role);
  shape.right = facts.grain == Grain::kVertical ? part.width : part.length;
  shape.up = facts.grain == Grain::kVertical ? part.length : part.width;
  if (facts.group == PartGroup::kFront) {
    const Rect& r = SpaceOf(bank, part).front.rect;
    shape.right = r.width;
    shape.up = r.height;
  } else if (part.role == PartRole::kBoxBottom) {
    const Box& box = SpaceOf(bank, part).box;
    shape.right = box.panel_width;
    shape.up = box.panel_depth;
  } else if (part.role == PartRole::kCaseBack) {
    shape.right = bank.casework->panel_width;
    shape.up = bank.casework->panel_height;
  }
}

// `stands`: the part's ends are the lower and the upper.
void AddBands(const Cut& cut, std::size_t index, bool stands, PartShape& shape) {
  if (cut.face == CutOn::kInnerEdge) return;  // on neither face
  const Length far = cut.offset + cut.width;
  const auto add = [&](bool upright, bool from_far) {
    const Length whole = upright ? shape.right : shape.up;
    CutBand band{index, upright, cut.offset, far, from_far, cut.depth, IsJoint(cut.kind)};
    if (from_far) {
      band.low = whole - far;
      band.high = whole - cut.offset;
    }
    band.behind = cut.face == CutOn::kOutside || cut.face == CutOn::kLowerFace;
    shape.bands.push_back(band);
    if (cut.face != CutOn::kBothFaces) return;
    band.behind = band.twin = true;
    shape.bands.push_back(band);
  };
  switch (cut.from) {
    case CutFrom::kLowerEdge:
      return add(false, false);
    case CutFrom::kFrontEnd:
      return add(true, false);
    case CutFrom::kBackEnd:
    case CutFrom::kRearEdge:
      return add(true, true);
    case CutFrom::kEachEnd:
      add(!stands, false);
      return add(!stands, true);
    case CutFrom::kLeftEdge:
      return add(false, true);  // seen from above, its front at the left
    case CutFrom::kUpperFace:
      return;
  }
}

// Those in the face that is drawn.
void AddSeats(const std::vector<Seat>& seats, PartShape& shape) {
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const Seat& seat = seats[i];
    if (seat.other_face) continue;
    CutBand band;
    band.cut = i;
    band.upright = seat.upright;
    band.low = seat.offset;
    band.high = seat.offset + seat.width;
    band.depth = seat.depth;
    band.seat = true;
    shape.bands.push_back(band);
  }
}

using BandKey = std::tuple<bool, Length, Length, Length, bool, bool>;

std::vector<BandKey> Keys(const PartShape& shape, bool mirrored) {
  std::vector<BandKey> keys;
  for (const CutBand& band : shape.bands) {
    const bool turn = mirrored && band.upright;
    keys.emplace_back(band.upright, turn ? shape.right - band.high : band.low,
                      turn ? shape.right - band.low : band.high, band.depth, band.joint,
                      band.behind);
  }
  std::ranges::sort(keys);
  return keys;
}

}  // namespace

bool IsJoint(CutKind kind) {
  return kind == CutKind::kHalfBlindDovetail || kind == CutKind::kThroughDovetail ||
         kind == CutKind::kFinger;
}

PartShape ShapeOf(const Bank& bank, const Part& part) {
  PartShape shape;
  SizeFace(bank, part, shape);
  shape.thickness = part.thickness;
  shape.notch = part.notch;
  const bool along = shape.right == part.length;
  shape.right_name = along ? "length" : "width";
  shape.up_name = along ? "width" : "length";
  const bool stands = Facts(part.role).grain == Grain::kVertical;
  for (std::size_t i = 0; i < part.cuts.size(); ++i) AddBands(part.cuts[i], i, stands, shape);
  AddSeats(SeatsIn(bank, part), shape);
  if (Facts(part.role).group == PartGroup::kFront) {
    const Front& front = SpaceOf(bank, part).front;
    for (const PullHole& hole : front.pulls) {
      shape.holes.push_back({hole.x - front.rect.x, hole.y - front.rect.y});
    }
  }
  return shape;
}

bool IsHanded(const PartShape& shape) {
  return !shape.notch.IsNone() || Keys(shape, false) != Keys(shape, true);
}

}  // namespace tillwright
