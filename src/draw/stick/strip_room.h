// Where things go on a strip, in mm from its working edge and from its ends.
#ifndef TILLWRIGHT_DRAW_STICK_STRIP_ROOM_H_
#define TILLWRIGHT_DRAW_STICK_STRIP_ROOM_H_

#include <vector>

#include "draw/stick/strip.h"

namespace tillwright {

inline constexpr double kHairline = 10;      // length of a mark
inline constexpr double kLeaderTo = 13.4;    // leaders end here
inline constexpr double kLabelsFrom = 14.1;  // labels begin here
inline constexpr double kLabelSpace = 0.9;   // between labels
inline constexpr double kEndSpace = 0.7;     // labels from the ends of a strip
inline constexpr double kJointSpace = 4.2;   // from a joint: register marks stand there
inline constexpr double kOverlap = 12;       // beyond a joint
inline constexpr double kRulerTick = 4.6;    // the longest graduation
inline constexpr double kNumeralCap = 1.7;

// Labels of a piece stay between, measured along it from its lower end.
struct LabelRange {
  double low = 0;
  double high = 0;
};
[[nodiscard]] LabelRange RangeOf(const Strip& strip, int piece, const StripStyle& style);

// Marks that are named on this piece, by their places in Strip::marks: a mark on a joint belongs to
// the piece beyond it.
[[nodiscard]] std::vector<std::size_t> MarksOn(const Strip& strip, int piece);

// Beyond the datum's end of a piece: captions. Beyond the other: overlap, or captions.
[[nodiscard]] double FootHeight(const Strip& strip, int piece);
[[nodiscard]] double HeadHeight(const Strip& strip, int piece);

// Ruler, numerals and the space before them.
[[nodiscard]] double RulerZone(const Strip& strip, const StripStyle& style,
                               const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_STRIP_ROOM_H_
