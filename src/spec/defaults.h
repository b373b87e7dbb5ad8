// The defaults of a spec: what holds when a maker says nothing. Every one is common practice of the
// trade, no source; each can be overridden in the spec. specs/README.md lists them.
#ifndef TILLWRIGHT_SPEC_DEFAULTS_H_
#define TILLWRIGHT_SPEC_DEFAULTS_H_

#include <array>

#include "tillwright/spec.h"

namespace tillwright {

// A default as it reads in each unit; the two are trade sizes, not conversions of one another.
struct Default {
  Length inch;
  Length metric;

  [[nodiscard]] constexpr Length In(Unit unit) const { return unit == Unit::kInch ? inch : metric; }
};

// What the maker typed, else the default.
[[nodiscard]] inline Length LengthOr(const Entry<Length>& entry, const Default& fallback,
                                     Unit unit) {
  return entry.typed ? entry.value : fallback.In(unit);
}

namespace defaults {

constexpr Length In(std::int64_t num, std::int64_t den = 1) { return Length::Inches(num, den); }
constexpr Length TenthMm(std::int64_t tenths) {
  return Length::Picometers(tenths * (Length::kPerMillimeter / 10));
}
constexpr Length Mm(std::int64_t n) { return Length::Millimeters(n); }
constexpr Default Same(Length both) { return {both, both}; }

inline constexpr Default kRound{In(1, 32), TenthMm(5)};
inline constexpr Default kFrontThickness{In(3, 4), Mm(19)};
inline constexpr Default kGap{In(1, 8), Mm(3)};
inline constexpr Default kOverlay{In(5, 8), Mm(16)};
inline constexpr Default kEdge{In(1, 8), Mm(3)};
inline constexpr Default kTwoPulls{In(24), Mm(610)};     // fronts wider than this have two pulls
inline constexpr Default kCaseStock{In(3, 4), Mm(18)};   // sides, bottom, top, dividers, partitions
inline constexpr Default kLeastTongue{In(1, 8), Mm(3)};  // thinner ones break off
inline constexpr Default kBackThickness{In(1, 4), Mm(6)};
inline constexpr Default kBackInset{In(1, 2), Mm(12)};
// Boxes that are to be alike and differ by no more than this are all made as the smallest.
inline constexpr Default kAlikeWithin{In(1, 16), TenthMm(15)};
inline constexpr Default kBoxSide{In(1, 2), Mm(12)};
inline constexpr Default kBottomThickness{In(1, 4), Mm(6)};
inline constexpr Default kGrooveDepth{In(1, 4), Mm(6)};
inline constexpr Default kPlay{In(1, 32), TenthMm(8)};
inline constexpr Default kStretcher{In(4), Mm(100)};
inline constexpr Default kKickHeight{In(4), Mm(100)};
inline constexpr Default kKickSetback{In(3), Mm(75)};
inline constexpr Default kFootHeight{In(4), Mm(100)};
inline constexpr Default kSixFeet{In(36), Mm(900)};  // cases wider than this stand on six feet
inline constexpr Default kFrameThickness{In(3, 4), Mm(19)};
inline constexpr Default kFrameWidth{In(3, 2), Mm(38)};  // stiles and rails
inline constexpr Default kBlocking{In(3), Mm(75)};
inline constexpr Default kWebRail{In(5, 2), Mm(60)};
inline constexpr Default kWebTenon{In(3, 8), Mm(10)};
inline constexpr Default kJointing{In(1, 16), TenthMm(15)};
inline constexpr Default kAllowanceLength{In(1), Mm(25)};  // solid wood, rough
inline constexpr Default kAllowanceWidth{In(1, 4), Mm(6)};
// Sheets and boards as they are commonly sold, and what a table saw takes.
inline constexpr Default kKerf{In(1, 8), Mm(3)};
inline constexpr Default kTrim{In(1, 4), Mm(6)};
inline constexpr Default kSheetLength{In(96), Mm(2440)};
inline constexpr Default kSheetWidth{In(48), Mm(1220)};
inline constexpr Default kBoardLength{In(96), Mm(2400)};
inline constexpr Default kBoardWidth{In(6), Mm(150)};
inline constexpr Default kPlaning{In(1, 4), Mm(6)};    // boards are thicker by so much or more
inline constexpr Default kBoardStep{In(1, 4), Mm(5)};  // in steps of this
inline constexpr Default kLeastGap{In(1, 32), TenthMm(8)};
inline constexpr Default kGreatestGap{In(3, 16), TenthMm(48)};
// How true a maker works, plus or minus.
inline constexpr Default kCutTolerance{In(1, 64), TenthMm(4)};
inline constexpr Default kPlaceTolerance{In(1, 64), TenthMm(4)};
inline constexpr Default kOpeningTolerance{In(1, 32), TenthMm(8)};

// Undermount slides; kinds.h has what each type of slide has of its own.
inline constexpr Default kDeduct = Same(Mm(42));
inline constexpr Default kSideMax = Same(Mm(16));

// The lengths slides are sold in: 10, 12 … 28 in, undermount ones 9, 12 … 21 in; all 250, 300 … 700
// mm.
struct Series {
  Length first, step;
  int count;
};
inline constexpr Series kInchSeries{In(10), In(2), 10};
inline constexpr Series kUndermountInchSeries{In(9), In(3), 5};
inline constexpr Series kMetricSeries{Mm(250), Mm(50), 10};

}  // namespace defaults
}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_DEFAULTS_H_
