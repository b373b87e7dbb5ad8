#include "spec/materials.h"

#include "spec/species.h"

namespace tillwright {

bool IsSolidWood(std::string_view material) { return SpeciesOf(material) != nullptr; }

}  // namespace tillwright
