// The cautions that go with every result: one wording, wherever it is shown.
#ifndef TILLWRIGHT_WRITE_CAUTIONS_H_
#define TILLWRIGHT_WRITE_CAUTIONS_H_

#include <array>
#include <string_view>

namespace tillwright {

inline constexpr std::array<std::string_view, 4> kCautions{
    "Measure your own stock, slides and opening before you cut; the slide maker's sheet comes "
    "first.",
    "Keep guards and riving knife on, use push sticks for narrow parts, hold small parts in a jig; "
    "beware of kickback; wear eye, ear and dust protection.",
    "Furniture with drawers can tip over: anchor it to the wall, keep heavy things low, keep "
    "children from climbing it.",
    "Figures are for planning. Local codes and licensed practice come first.",
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_CAUTIONS_H_
