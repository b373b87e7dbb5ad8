// What strips say: marks with their distances, captions.
#ifndef TILLWRIGHT_DRAW_STICK_STRIP_TEXT_H_
#define TILLWRIGHT_DRAW_STICK_STRIP_TEXT_H_

#include <string>
#include <vector>

#include "draw/stick/strip.h"
#include "sheet/rich_text.h"

namespace tillwright {

inline constexpr double kMarkCap = 2.0;     // mm, of marks
inline constexpr double kCaptionCap = 1.8;  // of captions

// "12 15/32", "316.7 mm" or "12 15/32 in = 316.71 mm", as the style asks.
[[nodiscard]] std::string DistanceText(Length distance, const StripStyle& style);
// The same with its unit, for sentences.
[[nodiscard]] std::string DistanceWithUnit(Length distance, const StripStyle& style);
// The unit that rulers count in.
[[nodiscard]] Unit RulerUnit(const StripStyle& style);

// The label of a mark, from the start of its text at (0, 0), half a cap height above the baseline.
[[nodiscard]] Label MarkLabel(const Stick& stick, const StickMark& mark, const StripStyle& style,
                              double max_width, const TextMetrics& metrics);

// "front D1–D4  6 3/8".
[[nodiscard]] std::string BodyText(const StickSpan& span, const StripStyle& style);

// "BOX".
[[nodiscard]] std::string LaneWord(StickLane lane);

// "BOX 1/2 · Heights D1–D4": what a piece belongs to; bold, before the other lines at its foot.
[[nodiscard]] std::string LaneTitle(const Strip& strip);

inline constexpr double kFootText = 8.2;    // mm of balloon before the words at the foot
inline constexpr double kBesideJoint = 11;  // left free on both sides of the words at a joint

// Lines beyond the datum's end of a piece; at a joint; and beyond the last piece's other end.
[[nodiscard]] std::vector<std::string> FootLines(const Strip& strip, int piece,
                                                 const StripStyle& style,
                                                 const TextMetrics& metrics);
[[nodiscard]] std::vector<std::string> JointLines(const Strip& strip, int piece,
                                                  const StripStyle& style,
                                                  const TextMetrics& metrics);
[[nodiscard]] std::vector<std::string> TotalLines(const Strip& strip, const StripStyle& style,
                                                  const TextMetrics& metrics);

// A, B … Z, AA, AB …: names of the pieces of a strip. Without I and O, which look like figures, and
// J and Q, which reach below the others.
[[nodiscard]] std::string PieceLetter(int piece);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_STRIP_TEXT_H_
