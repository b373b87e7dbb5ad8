// Reads the open instances: "sheet W H", "item w h demand turn", or "board L", "part l demand"; "#"
// starts a comment, where "kerf 3" names a kerf that is still to be kept.
#ifndef TILLWRIGHT_TESTS_NEST_INSTANCES_H_
#define TILLWRIGHT_TESTS_NEST_INSTANCES_H_

#include <string>
#include <string_view>

#include "tillwright/nest.h"

namespace tillwright::testing {

enum class Turning { kAsGiven, kNone, kAll };

// A count of the file becomes so many millimeters. `turning` holds for files that name no kerf: the
// academic sets, which are run both ways.
[[nodiscard]] NestJob ReadInstance(std::string_view text, Turning turning);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_NEST_INSTANCES_H_
