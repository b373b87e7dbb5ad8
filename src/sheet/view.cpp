#include "sheet/view.h"

namespace tillwright {

void Shift(View& view, double dx, double dy) {
  for (SheetGroup& group : view.groups) Shift(group, dx, dy);
  for (PaperBox* box : {&view.box, &view.outline}) {
    box->left += dx;
    box->right += dx;
    box->top += dy;
    box->bottom += dy;
  }
  view.datum_y += dy;
  view.map.zero.x += dx;
  view.map.zero.y += dy;
}

}  // namespace tillwright
