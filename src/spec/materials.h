// What a material's name tells: solid wood or a panel.
#ifndef TILLWRIGHT_SPEC_MATERIALS_H_
#define TILLWRIGHT_SPEC_MATERIALS_H_

#include <string_view>

namespace tillwright {

// True when the name holds a wood of the species table and no panel word ("plywood", "MDF" …).
// "birch plywood" is a panel, "yellow birch" is solid, "" and "unobtainium" are not known as solid.
[[nodiscard]] bool IsSolidWood(std::string_view material);

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_MATERIALS_H_
