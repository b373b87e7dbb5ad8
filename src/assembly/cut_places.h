// What is cut into a piece, where it stands.
#ifndef TILLWRIGHT_ASSEMBLY_CUT_PLACES_H_
#define TILLWRIGHT_ASSEMBLY_CUT_PLACES_H_

#include "tillwright/assembly.h"

namespace tillwright {

// Fills the piece's cuts. REQUIRES: its block and frame are set, `seats` are those in its part.
void PlaceCuts(const Bank& bank, const Part& part, const std::vector<Seat>& seats,
               PlacedPart& piece);

}  // namespace tillwright

#endif  // TILLWRIGHT_ASSEMBLY_CUT_PLACES_H_
