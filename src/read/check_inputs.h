// Reading the inputs of the gap check: tolerances, limits, season, what was measured, spacers.
#ifndef TILLWRIGHT_READ_CHECK_INPUTS_H_
#define TILLWRIGHT_READ_CHECK_INPUTS_H_

#include "read/object_reader.h"

namespace tillwright {

void ReadCheckInputs(ObjectReader& top, Spec& spec);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_CHECK_INPUTS_H_
