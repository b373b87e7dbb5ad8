// What an upright section plane from front to back cuts: for the details that belong to the side
// section. Axes: a is z, b is y.
#ifndef TILLWRIGHT_DRAW_DETAIL_DETAIL_FACES_H_
#define TILLWRIGHT_DRAW_DETAIL_DETAIL_FACES_H_

#include "draw/plan/plan_faces.h"

namespace tillwright {

// Everything the plane at `x` cuts, as far as it comes within the window (in the plane's axes).
// `stub`: drawn of what an opening is an opening in, when its case is not given.
struct FaceWindow {
  Length left, low, right, high;
};
[[nodiscard]] Faces SideFaces(const Bank& bank, Length x, const FaceWindow& window, Length stub);

// Places of a box's bottom in an end of the box.
struct BottomPlace {
  Length wood;                 // lower edge of the sides
  Length low, high;            // faces of the panel
  Length front, rear;          // edges of the panel
  Length end_front, end_rear;  // inner faces of front end and back end
};
[[nodiscard]] BottomPlace BottomPlaceOf(const Box& box);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_DETAIL_DETAIL_FACES_H_
