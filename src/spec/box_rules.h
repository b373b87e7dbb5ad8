// BoxRules: what holds for one drawer's box and slides, once its own keys are merged over the
// bank's and the defaults filled in.
//
// A drawer's own keys win key by key. A drawer that changes the slide type inherits none of the
// bank's `slides` keys and not its clear_below, clear_above and bottom.up; one that changes the
// bottom's fit or the corner's joint drops the inherited keys its own choice does not have. A key
// typed beside a choice that does not have it is an error.
#ifndef TILLWRIGHT_SPEC_BOX_RULES_H_
#define TILLWRIGHT_SPEC_BOX_RULES_H_

#include "tillwright/spec.h"

namespace tillwright {

struct BoxRules {
  SlideType slide = SlideType::kSideMount;
  Entry<Length> clearance, deduct, side_max, behind, line;
  Entry<Length> slide_length;                          // not typed: the longest that fits
  const std::vector<Entry<Length>>* series = nullptr;  // null: the unit's series, or any (runners)

  Entry<Length> side, end;  // end not typed: as the sides
  CornerJoint joint = CornerJoint::kButt;
  Entry<Length> joint_depth, lap;  // not typed: from the stock
  Entry<Length> back_setback;
  BottomFit fit = BottomFit::kGroove;
  Entry<Length> bottom, groove, up, play;
  bool open_back = false;
  Entry<Length> clear_below, clear_above;
  Entry<Length> height, depth;                          // not typed: from the cell, from the slide
  const std::vector<Entry<Length>>* heights = nullptr;  // stock heights; null: any
  const std::string* side_material = nullptr;
  const std::string* end_material = nullptr;
  const std::string* bottom_material = nullptr;
  const std::string* rating = nullptr;  // of the slides, as typed
};

// The bank's rules. The result points into `spec`.
[[nodiscard]] BoxRules BankRules(const Spec& spec);

// A drawer's rules. The result points into `spec` and `own`.
[[nodiscard]] BoxRules DrawerRules(const Spec& spec, const OverrideSpec& own);

// Whether two drawers ask for the same sizes of slide and box, typed or not.
[[nodiscard]] bool SameSizes(const BoxRules& a, const BoxRules& b);

// Reports keys that their own choice does not have, over the bank and every drawer of its own.
void CheckApplicable(const Spec& spec, Diagnostics& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_BOX_RULES_H_
