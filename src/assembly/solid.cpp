#include "tillwright/assembly.h"

namespace tillwright {
namespace {

void SetExtent(Block& block, JobAxis axis, Extent extent) {
  switch (axis) {
    case JobAxis::kX:
      block.x = extent.low;
      block.width = extent.Size();
      return;
    case JobAxis::kY:
      block.y = extent.low;
      block.height = extent.Size();
      return;
    case JobAxis::kZ:
      block.z = extent.low;
      block.depth = extent.Size();
      return;
  }
}

// Adds what `away` leaves of a block: slabs on both sides of it, axis by axis.
void Subtract(Block block, const Block& away, std::vector<Block>& out) {
  for (const JobAxis axis : kJobAxes) {
    const Extent own = ExtentOf(block, axis);
    const Extent gone = ExtentOf(away, axis);
    if (gone.low >= own.high || gone.high <= own.low || gone.low >= gone.high) {
      return out.push_back(block);
    }
  }
  for (const JobAxis axis : kJobAxes) {
    const Extent own = ExtentOf(block, axis);
    const Extent gone = ExtentOf(away, axis);
    const auto keep = [&](Extent part) {
      if (part.low >= part.high) return;
      Block slab = block;
      SetExtent(slab, axis, part);
      out.push_back(slab);
    };
    keep({own.low, gone.low});
    keep({gone.high, own.high});
    SetExtent(block, axis, {Max(own.low, gone.low), Min(own.high, gone.high)});
  }
}

}  // namespace

Extent ExtentOf(const Block& block, JobAxis axis) {
  switch (axis) {
    case JobAxis::kX:
      return {block.x, block.x + block.width};
    case JobAxis::kY:
      return {block.y, block.y + block.height};
    case JobAxis::kZ:
      break;
  }
  return {block.z, block.z + block.depth};
}

Block InJob(const PlacedPart& piece, Extent right, Extent up, Extent into) {
  Block block = piece.block;
  const auto set = [&](JobWay way, Extent own) {
    const Extent whole = ExtentOf(piece.block, way.axis);
    SetExtent(block, way.axis,
              way.against ? Extent{whole.high - own.high, whole.high - own.low}
                          : Extent{whole.low + own.low, whole.low + own.high});
  };
  set(piece.frame.right, right);
  set(piece.frame.up, up);
  set(piece.frame.into, into);
  return block;
}

Length RightSize(const PlacedPart& piece) {
  return ExtentOf(piece.block, piece.frame.right.axis).Size();
}

Length UpSize(const PlacedPart& piece) { return ExtentOf(piece.block, piece.frame.up.axis).Size(); }

Length Thickness(const PlacedPart& piece) {
  return ExtentOf(piece.block, piece.frame.into.axis).Size();
}

std::array<JobAxis, 3> SizeAxes(const PlacedPart& piece, const Part& part) {
  const PartFrame& f = piece.frame;
  if (RightSize(piece) == part.length) return {f.right.axis, f.up.axis, f.into.axis};
  return {f.up.axis, f.right.axis, f.into.axis};
}

std::vector<Block> SolidOf(const PlacedPart& piece, JointBands bands) {
  std::vector<Block> solid{piece.block};
  for (const PlacedCut& cut : piece.cuts) {
    if (cut.partly && bands == JointBands::kKeep) continue;
    std::vector<Block> left;
    for (const Block& block : solid) Subtract(block, cut.block, left);
    solid = std::move(left);
  }
  return solid;
}

}  // namespace tillwright
