// The key to the sticks: what the cut list calls a part, and between which marks its sizes lie.
#ifndef TILLWRIGHT_DRAW_STICK_KEY_H_
#define TILLWRIGHT_DRAW_STICK_KEY_H_

#include <vector>

#include "draw/stick/templates.h"

namespace tillwright {

// A table in as many blocks as the room asks for; one line a size where it is narrow. Parts none of
// whose sizes are marked are left out.
[[nodiscard]] std::vector<Template> KeyOf(const StickSheets& sticks, const StripStyle& style,
                                          const PieceRoom& room, const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_KEY_H_
