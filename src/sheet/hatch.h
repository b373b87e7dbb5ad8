// Hatch: what fills the cut faces of parts.
//
// Every pattern is made of strokes clipped exactly to the area, never of clip paths or tiles, which
// show nicks at their edges. Patterns are anchored to the paper, not to the area: the same area at
// the same place always gets the same strokes, and neighbors with the same angle line up. Nothing
// is random.
//
// Rules of use: 45 and -45 degrees in turns on parts that touch; spacing not under 0.7 mm nor twice
// the pen (ISO 128-3 [M]); parts thinner than about 1 mm on paper are filled with Tone::kShade.
#ifndef TILLWRIGHT_SHEET_HATCH_H_
#define TILLWRIGHT_SHEET_HATCH_H_

#include <cstdint>
#include <optional>
#include <vector>

#include "tillwright/sheet.h"

namespace tillwright {

enum class PaperAxis : std::uint8_t { kHorizontal, kVertical };

using PaperRing = std::vector<PaperPoint>;  // a closed polygon; the last point joins the first

struct PaperDisc {
  PaperPoint center{};
  double radius = 0;
};

// What is inside an odd number of rings, outside every hole and, if given, inside the window.
struct HatchArea {
  std::vector<PaperRing> rings{};
  std::vector<PaperBox> box_holes{};    // left free for text
  std::vector<PaperDisc> disc_holes{};  // left free for balloons
  std::optional<PaperDisc> window{};    // of a detail
};

[[nodiscard]] HatchArea AreaOf(const PaperBox& box);
[[nodiscard]] HatchArea AreaOf(PaperRing ring);

// Parallel lines at `angle` degrees, `spacing` mm apart. REQUIRES: spacing > 0.
[[nodiscard]] HatchLines HatchAtAngle(const HatchArea& area, double angle, double spacing, Pen pen);

// A sheet good cut across its face: `plies` layers of equal thickness from one face of the area's
// bounds to the other, parted by lines; every other layer is hatched. `across` is the direction of
// its thickness. REQUIRES: plies >= 1.
[[nodiscard]] HatchLines HatchPlies(const HatchArea& area, PaperAxis across, int plies, Pen pen);

// Solid wood cut across the grain: growth rings, arcs about `heart`, the rings closer and wider in
// turn, `spacing` mm apart on average, crossed by nothing. REQUIRES: spacing > 0.
[[nodiscard]] HatchLines HatchEndGrain(const HatchArea& area, PaperPoint heart, double spacing,
                                       Pen pen);

// Solid wood along the grain: long, slightly wavering, broken lines along `grain`, `spacing` mm
// apart on average. REQUIRES: spacing > 0.
[[nodiscard]] HatchLines HatchLongGrain(const HatchArea& area, PaperAxis grain, double spacing,
                                        Pen pen);

// The parts of a segment inside the area, in order from its start.
[[nodiscard]] std::vector<PaperSegment> ClipToArea(const HatchArea& area, PaperSegment segment);

// The parts of a segment or of a polyline's outline inside a disc or a box: for details. A closed
// polyline that lies wholly inside stays closed; otherwise each piece is an open polyline. Fills
// are dropped from cut polylines.
[[nodiscard]] std::vector<PaperSegment> ClipToDisc(const PaperDisc& disc, PaperSegment segment);
[[nodiscard]] std::vector<Polyline> ClipToDisc(const PaperDisc& disc, const Polyline& polyline);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_HATCH_H_
