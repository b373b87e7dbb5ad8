// What the tests of sticks share: sums of dimensions worked out, pages checked.
#ifndef TILLWRIGHT_TESTS_DRAW_STICK_CASES_H_
#define TILLWRIGHT_TESTS_DRAW_STICK_CASES_H_

#include <optional>
#include <string>
#include <vector>

#include "tillwright/stick.h"

namespace tillwright::testing {

// Curated, hard and random banks' sticks, with the options, must have pages without faults, every
// mark named once on a piece that covers it, and pieces that follow on each other.
void ExpectGoodSticks(const std::string& name, const Bank& bank, const StickOptions& options);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_DRAW_STICK_CASES_H_
