// The cautions that go with every result: one wording, wherever it is shown.
#ifndef TILLWRIGHT_WRITE_CAUTIONS_H_
#define TILLWRIGHT_WRITE_CAUTIONS_H_

#include <array>
#include <string_view>

namespace tillwright {

inline constexpr std::array<std::string_view, 4> kCautions{
    "Measure your own stock, slides and opening before you cut; a slide's own sheet wins.",
    "Guards and riving knife on, push sticks for narrow parts, small parts held in a jig; mind "
    "kickback and dust.",
    "Furniture with drawers tips: anchor it to the wall, keep heavy things low, keep children from "
    "climbing it.",
    "Figures are for planning. Local codes and licensed practice come first.",
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_CAUTIONS_H_
