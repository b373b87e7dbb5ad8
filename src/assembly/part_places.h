// Where the pieces of a part stand.
#ifndef TILLWRIGHT_ASSEMBLY_PART_PLACES_H_
#define TILLWRIGHT_ASSEMBLY_PART_PLACES_H_

#include "tillwright/assembly.h"

namespace tillwright {

// The block of a part that is none of Bank::pieces. `right`: of a pair the right-hand piece.
[[nodiscard]] Block PlaceOf(const Bank& bank, const Part& part, bool right);

// What of such a block doesn't enter other pieces.
[[nodiscard]] Block ClearOf(const Bank& bank, const Part& part, const Block& block);

}  // namespace tillwright

#endif  // TILLWRIGHT_ASSEMBLY_PART_PLACES_H_
