// How often a saw's fence must be set to cut a packing, and fewer settings for the same sheets.
//
// Every piece that is cut free needs the fence (or the stop) set to its size. Of the pieces that a
// whole is cut into the last needs no cut: what is left over, or else the piece whose size the job
// uses least.
#ifndef TILLWRIGHT_NEST_FENCES_H_
#define TILLWRIGHT_NEST_FENCES_H_

#include <compare>
#include <cstdint>
#include <vector>

#include "nest/packing.h"

namespace tillwright::nest {

// The sizes that a packing's pieces have along the direction in which they are cut free.
class PieceSizes {
 public:
  explicit PieceSizes(const std::vector<const Tree*>& trees);

  [[nodiscard]] std::int64_t size() const { return static_cast<std::int64_t>(sizes_.size()); }
  [[nodiscard]] bool Has(std::int32_t size) const { return Uses(size) > 0; }
  // The child of a node that needs no cut. REQUIRES: the node has children.
  [[nodiscard]] std::int32_t LastOf(const Tree& tree, const Node& node) const;

 private:
  [[nodiscard]] std::int64_t Uses(std::int32_t size) const;

  std::vector<std::int32_t> sizes_;  // rising, as often as used
};

[[nodiscard]] std::vector<const Tree*> TreesOf(const Packing& packing);

// Fewer settings are better, then fewer over the sheets one by one, then more sheets that are
// ripped along their length first.
struct Fences {
  std::int64_t settings = 0;
  std::int64_t sheet_settings = 0;
  std::int64_t crosscut_first = 0;

  friend auto operator<=>(const Fences&, const Fences&) = default;
};
// `sizes`: of these trees.
[[nodiscard]] Fences FencesOf(const std::vector<const Tree*>& trees, const PieceSizes& sizes);

// A packing of no more sheets and cost, with no smaller a largest leftover and no more settings.
// `kerf` is what the saw takes of every leftover, in the problem's unit, rounded up.
[[nodiscard]] Packing WithFewerSettings(const Problem& problem, Packing packing, std::int32_t kerf,
                                        std::int64_t work);

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_FENCES_H_
