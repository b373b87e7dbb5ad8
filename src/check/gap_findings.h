// What the gap check finds, in words.
#ifndef TILLWRIGHT_CHECK_GAP_FINDINGS_H_
#define TILLWRIGHT_CHECK_GAP_FINDINGS_H_

#include "check/real_opening.h"
#include "tillwright/gap_check.h"

namespace tillwright {

// The least and greatest that a gap becomes, each state by itself, and the states in which it is
// outside its limits.
struct Envelope {
  double low = 0, high = 0;                // mm, over every state
  double likely_low = 0, likely_high = 0;  // the same, root-sum-square in place of the worst case
  bool tolerance_worst = false;            // the worst case of the tolerances
  bool season = false, measured = false, taper = false;
};
[[nodiscard]] Envelope EnvelopeOf(const GapCheck& check, const StackUp& stack);

// Fills in check.findings and the verdict of every stack.
void FindGaps(const Spec& spec, const Bank& bank, const RealOpening& real, GapCheck& check);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_GAP_FINDINGS_H_
