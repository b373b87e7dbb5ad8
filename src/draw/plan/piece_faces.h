// Pieces of the assembly, cut by a plane: the faces that plans, sections and details are made of.
#ifndef TILLWRIGHT_DRAW_PLAN_PIECE_FACES_H_
#define TILLWRIGHT_DRAW_PLAN_PIECE_FACES_H_

#include <optional>

#include "draw/plan/plan_faces.h"
#include "tillwright/assembly.h"

namespace tillwright {

struct CutPlane {
  JobAxis across = JobAxis::kX;
  Length at;
  std::optional<Extent> within{};  // along the plane's a: the drawing is broken off at its ends
};

// What the plane cuts of a piece. Of tails and fingers it goes through one of the sides'.
void AddPieceFaces(Faces& faces, const Bank& bank, const PlacedPart& piece, const CutPlane& plane);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PLAN_PIECE_FACES_H_
