// Banks of every construction, and what tests of plans and details read off a drawing.
#ifndef TILLWRIGHT_TESTS_DRAW_PLAN_CASES_H_
#define TILLWRIGHT_TESTS_DRAW_PLAN_CASES_H_

#include <string>
#include <vector>

#include "draw/plan/plan_faces.h"
#include "draw/view_cases.h"
#include "sheet/view.h"

namespace tillwright::testing {

// Corner joints x bottoms x slides x front styles, with the kinds of case back, both units, a back
// end that stands in, solid and sheet stock and columns taken in turns.
std::vector<BankCase> EveryConstruction();

// Indices of the drawers.
std::vector<std::size_t> DrawersOf(const Bank& bank);

// A sheet just large enough for the view, for FindLayoutFaults.
Sheet SheetOf(View view);

// The group of a view by the end of its id; an empty one when there is none.
const SheetGroup& GroupOf(const View& view, std::string_view what);

// Every label of the groups whose text is a size and nothing else: it stands in a dimension line.
std::vector<const Label*> SizesIn(const SheetGroup& group);

// True if two ends of dimension lines (strokes or arrowheads) of the group, level with or above one
// another, are `distance` mm apart.
bool HasEndsApart(const SheetGroup& group, double distance);

// How many of the faces hold the middle of each cell of the grid that all their corners make.
// Calls see(middle, count); exact, since every edge lies on the grid.
struct CellMiddle {
  double a = 0;  // mm
  double b = 0;
};
std::vector<std::pair<CellMiddle, int>> CoverOf(const std::vector<CutFace>& faces);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_DRAW_PLAN_CASES_H_
