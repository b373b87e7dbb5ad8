// The joints of the case in a plane parallel to its front: x to the right, y up.
#ifndef TILLWRIGHT_DRAW_BANK_CASE_JOINTS_H_
#define TILLWRIGHT_DRAW_BANK_CASE_JOINTS_H_

#include <string_view>
#include <vector>

#include "draw/plan/plan_faces.h"
#include "sheet/scale.h"
#include "tillwright/bank.h"
#include "tillwright/sheet.h"

namespace tillwright {

// A channel in the inner face of a side, from its lower to its upper edge.
struct JointSeat {
  Length low, high;
};
// Of the bottom. REQUIRES: no butt joints.
[[nodiscard]] JointSeat BottomSeat(const CaseBuild& c);

// "CASE DADO"
[[nodiscard]] std::string_view CaseJointTitle(CaseJoint joint);

// Left side and bottom, cut where they meet.
[[nodiscard]] Faces CornerJointFaces(const Bank& bank);

// A divider or partition with what enters its neighbors; behind a face frame, and with butt
// joints, as far as it is seen in the opening.
[[nodiscard]] Polyline MemberOutline(const Bank& bank, const Divider& member, const PaperMap& map,
                                     Pen pen);

// The front edges of sides, bottom and top. REQUIRES: no face frame.
void AddCaseEdges(SheetGroup& out, const Bank& bank, const PaperMap& map);

// The edges of the opening, the sides' broken where dividers enter them.
void AddOpeningEdges(SheetGroup& out, const Bank& bank, const PaperMap& map);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_BANK_CASE_JOINTS_H_
