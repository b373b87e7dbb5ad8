// Ink: puts the faces of a section plane on paper, whole or as far as a circle shows them.
#ifndef TILLWRIGHT_DRAW_PLAN_PLAN_INK_H_
#define TILLWRIGHT_DRAW_PLAN_PLAN_INK_H_

#include <optional>
#include <vector>

#include "draw/plan/plan_faces.h"
#include "sheet/hatch.h"
#include "sheet/scale.h"
#include "tillwright/sheet.h"

namespace tillwright {

struct FaceInk {
  Pen cut = Pen::kCut;
  Pen hatch = Pen::kHatch;
  bool inset_fronts = true;           // stroked inside their edge, so that gaps stay white
  std::optional<PaperDisc> window{};  // of a detail
  std::vector<PaperBox> holes{};      // texts on the drawing: hatch and thin lines keep clear
};

// Draws what one owner has. Lines closer to each other than the eye can part are left out, and cut
// faces too thin to hatch are filled.
void DrawFaces(SheetGroup& out, const Faces& faces, FaceOwner owner, const PaperMap& map,
               const FaceInk& ink);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PLAN_PLAN_INK_H_
