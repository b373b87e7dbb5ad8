#include "stock/part_shape.h"

#include <algorithm>
#include <tuple>

namespace tillwright {
namespace {

using BandKey = std::tuple<bool, Length, Length, Length, bool, bool>;

std::vector<BandKey> Keys(const PartShape& shape, bool mirrored) {
  std::vector<BandKey> keys;
  for (const PlacedCut& band : shape.bands) {
    const bool turn = mirrored && band.IsUpright();
    keys.emplace_back(band.IsUpright(), turn ? shape.right - band.high : band.low,
                      turn ? shape.right - band.low : band.high, band.depth, band.partly,
                      band.behind);
  }
  std::ranges::sort(keys);
  return keys;
}

void AddBand(const PlacedCut& cut, PartShape& shape) {
  const bool hidden_seat = cut.source == CutSource::kSeats && cut.behind;
  if (IsBand(cut) && !hidden_seat) shape.bands.push_back(cut);
}

}  // namespace

PartShape ShapeOf(const Part& part, const PlacedPart& piece) {
  PartShape shape;
  shape.right = RightSize(piece);
  shape.up = UpSize(piece);
  shape.thickness = part.thickness;
  shape.notch = part.notch;
  const bool along = shape.right == part.length;
  shape.right_name = along ? "length" : "width";
  shape.up_name = along ? "width" : "length";
  for (const PlacedCut& cut : piece.cuts) {
    AddBand(cut, shape);
    if (cut.run != CutRun::kBore) continue;
    shape.holes.push_back({cut.block.x - piece.block.x, cut.block.y - piece.block.y});
  }
  return shape;
}

bool IsHanded(const PartShape& shape) {
  return !shape.notch.IsNone() || Keys(shape, false) != Keys(shape, true);
}

}  // namespace tillwright
