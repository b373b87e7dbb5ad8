// The three pictures of a part on its sheet: the face, the section to its right, the upper edge
// above.
#ifndef TILLWRIGHT_DRAW_PART_PART_SHEET_FACES_H_
#define TILLWRIGHT_DRAW_PART_PART_SHEET_FACES_H_

#include <vector>

#include "sheet/scale.h"
#include "stock/part_shape.h"
#include "tillwright/sheet.h"

namespace tillwright {

// The face with the edges of its cuts, joints hatched, holes crossed. An edge is left out where
// another cut, at least as deep, takes it away.
void AddFace(SheetGroup& out, const PartShape& shape, const PaperMap& map);

// Where the face has room for texts: clear of cuts and holes.
[[nodiscard]] PaperBox FreeFace(const PartShape& shape, const PaperMap& map);

// The part cut across its middle, seen from the right; its face to the left, at `map`'s zero.
void AddSection(SheetGroup& out, const PartShape& shape, const PaperMap& map);

// The upper edge seen from above; its face below, at `map`'s zero.
void AddUpperEdge(SheetGroup& out, const PartShape& shape, const PaperMap& map);

// The face mark of joiners: a loop whose tails run to the edge below it. `at` is on that edge.
void AddFaceMark(SheetGroup& out, PaperPoint at, double height);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PART_PART_SHEET_FACES_H_
