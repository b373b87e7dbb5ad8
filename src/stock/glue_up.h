// Wide solid parts are glued up of boards.
#ifndef TILLWRIGHT_STOCK_GLUE_UP_H_
#define TILLWRIGHT_STOCK_GLUE_UP_H_

#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

// The boards that `glue_up` of the spec asks for to make a width; empty when one does. As few as
// do, of one width in whole increments but for the last, which takes the rest; each joint takes its
// jointing.
[[nodiscard]] std::vector<Length> BoardsFor(Length width, const GlueUpSpec& spec, const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_GLUE_UP_H_
