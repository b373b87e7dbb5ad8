#include <algorithm>
#include <cstddef>

#include "tillwright/assembly.h"

namespace tillwright {
namespace {

// The axes of a plane, to the right and up.
struct PlaneAxes {
  JobAxis u, v;
};
PlaneAxes AxesAcross(JobAxis across) {
  switch (across) {
    case JobAxis::kX:
      return {JobAxis::kZ, JobAxis::kY};
    case JobAxis::kY:
      return {JobAxis::kX, JobAxis::kZ};
    case JobAxis::kZ:
      break;
  }
  return {JobAxis::kX, JobAxis::kY};
}

bool Meets(const Block& block, JobAxis across, Length at) {
  const Extent extent = ExtentOf(block, across);
  return extent.low < at && at < extent.high;
}

void SortOnce(std::vector<Length>& places) {
  std::ranges::sort(places);
  places.erase(std::unique(places.begin(), places.end()), places.end());
}

// The rectangle of a piece without those of its cuts, as cells of the grid that all their edges
// make.
class CellGrid {
 public:
  CellGrid(const Block& whole, const std::vector<Block>& cuts, PlaneAxes axes) {
    const Extent wide = ExtentOf(whole, axes.u);
    const Extent high = ExtentOf(whole, axes.v);
    us_ = {wide.low, wide.high};
    vs_ = {high.low, high.high};
    for (const Block& cut : cuts) {
      AddPlaces(us_, ExtentOf(cut, axes.u), wide);
      AddPlaces(vs_, ExtentOf(cut, axes.v), high);
    }
    SortOnce(us_);
    SortOnce(vs_);
    filled_.assign((us_.size() - 1) * (vs_.size() - 1), true);
    for (const Block& cut : cuts) Clear(ExtentOf(cut, axes.u), ExtentOf(cut, axes.v));
  }

  std::vector<PlaneRing> Rings() {
    std::vector<PlaneRing> rings;
    // Each ring has a lowest edge that runs to the right (of a hole: above it, to the left).
    for (int v = 0; v < Rows(); ++v) {
      for (int u = 0; u < Columns(); ++u) {
        if (Filled(u, v) && !Filled(u, v - 1) && !IsSeen(u, v)) rings.push_back(Walk(u, v));
      }
    }
    return rings;
  }

 private:
  static void AddPlaces(std::vector<Length>& places, Extent extent, Extent within) {
    for (const Length at : {extent.low, extent.high}) {
      if (within.low < at && at < within.high) places.push_back(at);
    }
  }

  void Clear(Extent u, Extent v) {
    const auto from = std::ranges::lower_bound(us_, u.low) - us_.begin();
    for (std::ptrdiff_t j = std::ranges::lower_bound(vs_, v.low) - vs_.begin(); j < Rows(); ++j) {
      if (vs_[static_cast<std::size_t>(j)] >= v.high) return;
      for (std::ptrdiff_t i = from; i < Columns(); ++i) {
        if (us_[static_cast<std::size_t>(i)] >= u.high) break;
        filled_[static_cast<std::size_t>(j * Columns() + i)] = false;
      }
    }
  }

  [[nodiscard]] int Columns() const { return static_cast<int>(us_.size()) - 1; }
  [[nodiscard]] int Rows() const { return static_cast<int>(vs_.size()) - 1; }
  [[nodiscard]] bool Filled(int u, int v) const {
    return u >= 0 && v >= 0 && u < Columns() && v < Rows() &&
           filled_[static_cast<std::size_t>(v * Columns() + u)];
  }
  [[nodiscard]] bool IsSeen(int u, int v) const {
    return std::ranges::find(seen_, v * Columns() + u) != seen_.end();
  }

  // Along the boundary from the lower left corner of a cell whose lower edge is one, the wood on
  // the left.
  PlaneRing Walk(int u, int v) {
    constexpr std::array kU{1, 0, -1, 0};  // right, up, left, down
    constexpr std::array kV{0, 1, 0, -1};
    PlaneRing ring;
    const int start_u = u;
    const int start_v = v;
    std::size_t way = 0;
    std::size_t before = 4;
    do {
      if (way == 0) seen_.push_back(v * Columns() + u);
      if (way != before) {
        ring.push_back({us_[static_cast<std::size_t>(u)], vs_[static_cast<std::size_t>(v)]});
      }
      before = way;
      u += kU[way];
      v += kV[way];
      way = NextWay(u, v, way);
    } while (u != start_u || v != start_v || way != 0);
    if (before == 0) ring.erase(ring.begin());  // it began within an edge
    return ring;
  }

  // At a corner of the grid: to the left where wood ends ahead of it, else on, else to the right.
  [[nodiscard]] std::size_t NextWay(int u, int v, std::size_t way) const {
    // The cells ahead to the left and to the right of each way.
    constexpr std::array kLeftU{0, -1, -1, 0};
    constexpr std::array kLeftV{0, 0, -1, -1};
    const std::size_t right = (way + 3) % 4;
    const bool left_ahead = Filled(u + kLeftU[way], v + kLeftV[way]);
    const bool right_ahead = Filled(u + kLeftU[right], v + kLeftV[right]);
    if (!left_ahead) return (way + 1) % 4;
    return right_ahead ? right : way;
  }

  std::vector<Length> us_, vs_;
  std::vector<bool> filled_;
  std::vector<int> seen_;  // cells whose lower edge is in a ring
};

}  // namespace

std::vector<PlaneRing> CutByPlane(const PlacedPart& piece, JobAxis across, Length at,
                                  JointBands bands) {
  if (!Meets(piece.block, across, at)) return {};
  std::vector<Block> cuts;
  for (const PlacedCut& cut : piece.cuts) {
    const bool kept = cut.partly && bands == JointBands::kKeep;
    if (!kept && Meets(cut.block, across, at)) cuts.push_back(cut.block);
  }
  return CellGrid(piece.block, cuts, AxesAcross(across)).Rings();
}

}  // namespace tillwright
