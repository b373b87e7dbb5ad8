// How many of what a joint takes, and how long. All common practice, no source: a slide's own sheet
// and the maker's habits win.
#ifndef TILLWRIGHT_STOCK_HARDWARE_RULES_H_
#define TILLWRIGHT_STOCK_HARDWARE_RULES_H_

#include <cstdint>

#include "spec/defaults.h"

namespace tillwright::hardware {

using defaults::In;
using defaults::Mm;

inline constexpr Default kLongSlide{In(20), Mm(500)};  // from here on one screw more a member
inline constexpr int kSlideScrews = 3;                 // in each member
inline constexpr Default kWideFront{In(24), Mm(610)};  // above, six screws
inline constexpr int kFrontScrews = 4;
inline constexpr Default kWoodAhead{In(1, 8), Mm(3)};  // ahead of a front screw's point
inline constexpr Default kScrewPitch{In(6), Mm(150)};  // in a joint of the case, and of the back
inline constexpr Default kDowelPitch{In(4), Mm(100)};
inline constexpr Default kFromEdge{In(2), Mm(50)};      // of the first in a joint
inline constexpr Default kCornerPitch{In(2), Mm(50)};   // in a butt corner of a box
inline constexpr Default kBottomPitch{In(4), Mm(100)};  // of screws under a box
inline constexpr Default kIntoWood{In(1, 2), Mm(12)};   // of a screw through a thin panel
inline constexpr int kFrameFixings = 2;                 // at each end of a face frame's rails
inline constexpr int kBlockScrews = 3;                  // in each block behind a stile
inline constexpr std::int64_t kSpareBand = 10;          // percent

// How many stand in a joint `length` long: the first and the last kFromEdge in, none farther apart
// than `pitch`, two at least. REQUIRES: pitch > 0.
[[nodiscard]] int CountAlong(Length length, Length pitch, Length from_edge);

// A dowel for stock of this thickness: its diameter and its length.
struct Dowel {
  Length diameter, length;
};
[[nodiscard]] Dowel DowelFor(Length stock, Unit unit);

// Millilitres of glue for a joined face, at 200 g and so about 200 ml to the square meter.
// An estimate. In thousandths of a millilitre, so that sums do not depend on their order.
[[nodiscard]] std::int64_t GlueMicrolitres(Length a, Length b);

}  // namespace tillwright::hardware

#endif  // TILLWRIGHT_STOCK_HARDWARE_RULES_H_
