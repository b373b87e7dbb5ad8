// Apportioning a length among children, exactly.
//
// Given a length to share, the shop increment q, and for each child its bounds and weight, gives
// every child a size so that
//   (1) the sizes of the flexible children add up to floor_q of what `exact` children leave;
//   (2) each is a whole multiple of q, within its bounds (min rounded up to q, max down to q);
//   (3) each is its ideal size rounded down to q, or one increment more, the increments going to
//   the
//       largest remainders and among equals to the later child.
// Ideal sizes are clamp(lambda * weight, min, max), or clamp(mu + i * step, min, max), with the one
// lambda or mu that makes them add up. Rational weights are handled exactly in integers of whatever
// length they need; only the ratio found for geometric graduation with `first` is a double.
#ifndef TILLWRIGHT_SOLVE_APPORTION_H_
#define TILLWRIGHT_SOLVE_APPORTION_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

struct ApportionChild {
  Length exact;  // meaningful when is_exact
  bool is_exact = false;
  bool has_min = false, has_max = false;
  Length min, max;  // as typed
  Rational weight;  // equal scheme
  Place min_place, max_place;
};

struct ApportionScheme {
  Graduation scheme = Graduation::kEqual;
  std::vector<Rational> shares;  // one for every child
  bool has_first = false;
  Length first;        // arithmetic and geometric with `first`
  Length step;         // arithmetic with `step`
  Rational ratio;      // geometric with `ratio`
  bool alike = false;  // equal: all of one size, what is over goes to the remainder
};

struct Share {
  Length size;          // what the child gets
  Length base;          // its ideal rounded down to q (flexible children)
  bool extra = false;   // one increment more than base
  double ideal_mm = 0;  // its ideal size, for explanations only
};

struct Apportioned {
  std::vector<Share> shares;  // one a child; empty after an error
  Length remainder;           // what is left of the length; negative when all-exact sizes exceed it
  bool all_exact = false;
  bool first_moved = false;  // bounds moved the first size of arithmetic with `first`

  // After an error: what went wrong.
  enum class Fault : std::uint8_t {
    kNone,
    kTooLong,   // exact or least sizes exceed the length by `amount`
    kTooShort,  // greatest sizes fall short of it by `amount`
    kZero,      // child `child` would get nothing
    kCrossed,   // child `child` has min above max once rounded
    kNoRatio,   // no ratio makes the sizes add up with this `first`
    kTooFine    // the weights have too many digits to be handled
  } fault = Fault::kNone;
  Length amount;
  int child = -1;
};

// REQUIRES: increment > 0; shares.size() == children.size() for the shares scheme.
[[nodiscard]] Apportioned Apportion(Length length, Length increment,
                                    const std::vector<ApportionChild>& children,
                                    const ApportionScheme& scheme);

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_APPORTION_H_
