// The woods furniture is made of, and how much each moves with its moisture.
#ifndef TILLWRIGHT_SPEC_SPECIES_H_
#define TILLWRIGHT_SPEC_SPECIES_H_

#include <span>
#include <string_view>

namespace tillwright {

// One wood: its dimensional change coefficients per % of moisture, good from 6 to 14 % moisture, and
// its total shrinkage from green to oven-dry in %, from which the coefficients can be reckoned again
// (USDA Forest Products Laboratory, Wood Handbook, GTR-190 and GTR-282: table 13-5, table 4-3).
struct Species {
  std::string_view label;    // as the handbook has it
  std::string_view word;     // the word that names it
  std::string_view kinds;    // words that tell it from its kin, separated by blanks; may be empty
  double radial;             // C_R: across a quarter-sawn board
  double tangential;         // C_T: across a flat-sawn board
  double shrinkage_radial, shrinkage_tangential;  // %; zero where the handbook has no one figure
  bool extractives;          // eq. 13-3 with a fibre saturation point of 22 %, not 30 %
};

// Every wood. Where one word names several, the one that moves most flat-sawn comes first.
[[nodiscard]] std::span<const Species> AllSpecies();

// The wood a material's name tells, whatever else it says; nullptr when it names none, and when it
// names a panel ("birch plywood"). "maple" is the maple that moves most; "soft maple" is told apart.
[[nodiscard]] const Species* SpeciesOf(std::string_view material);

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_SPECIES_H_
