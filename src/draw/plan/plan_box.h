// What a horizontal cut shows of a box and its slides beyond the parts it cuts.
//
// Of dovetails and fingers the model fixes the depth, not the number: the plane is taken through a
// tail (a finger of the side), the pins below it are hidden lines.
#ifndef TILLWRIGHT_DRAW_PLAN_PLAN_BOX_H_
#define TILLWRIGHT_DRAW_PLAN_PLAN_BOX_H_

#include "draw/plan/plan_faces.h"

namespace tillwright {

void AddPlanBoxLines(Faces& faces, const Box& box);

// Slides of the drawer: beside the box, or as hidden lines under it. Of undermount and center-mount
// slides and of wood runners the model has the length and the room they need but not how wide they
// are: that width is drawn so that one knows them again, and is never dimensioned.
void AddPlanSlides(Faces& faces, const Space& space);

// How far hidden lines of the slides reach into the box beyond its side's inner face.
[[nodiscard]] Length RunnerReach(const Box& box);
// Half the width of a slide drawn on the center.
[[nodiscard]] Length CenterHalf(const Box& box);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PLAN_PLAN_BOX_H_
