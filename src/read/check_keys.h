// The keys of what the gap check goes by; keys.cpp has the rest.
#ifndef TILLWRIGHT_READ_CHECK_KEYS_H_
#define TILLWRIGHT_READ_CHECK_KEYS_H_

#include <array>

#include "read/key_target.h"

namespace tillwright {

inline constexpr std::array kToleranceKeys{
    KeyRow{"cut", "length-or-zero", "How accurately a front is cut, plus or minus.",
           defaults::kCutTolerance, kInto<&ToleranceSpec::cut>},
    KeyRow{"place", "length-or-zero", "How accurately a front is set, plus or minus.",
           defaults::kPlaceTolerance, kInto<&ToleranceSpec::place>},
    KeyRow{"opening", "length-or-zero", "How accurate the opening is, plus or minus.",
           defaults::kOpeningTolerance, kInto<&ToleranceSpec::opening>},
};

inline constexpr std::array kLimitsKeys{
    KeyRow{"least", "length-or-zero", "The minimum any gap may become.", defaults::kLeastGap,
           kInto<&LimitsSpec::least>},
    KeyRow{"greatest", "length-or-zero", "The maximum any gap may become.", defaults::kGreatestGap,
           kInto<&LimitsSpec::greatest>},
};

inline constexpr std::array kSeasonKeys{
    KeyRow{"made", "moisture", "Moisture when the fronts are made.", "8"},
    KeyRow{"dry", "moisture", "Moisture in the dry season.", "6"},
    KeyRow{"humid", "moisture", "Moisture in the humid season.", "11"},
};

inline constexpr std::array kClimateKeys{
    KeyRow{"temperature", "text", "Of the room, such as \"70 F\" or \"21 C\".", kNone, KeyTarget{},
           kRequired},
    KeyRow{"humidity", "percent", "Relative humidity in percent.", kNone, KeyTarget{}, kRequired},
};

inline constexpr std::array kMeasuredKeys{
    KeyRow{"width", "list:width-at", "Widths of the opening at several heights.", kNone},
    KeyRow{"height", "measured-height", "Heights of the opening at its sides.", kNone},
    KeyRow{"diagonals", "diagonals", "Both diagonals of the opening.", kNone},
    KeyRow{"depth", "length", "Depth of the opening.", kNone, kInto<&MeasuredSpec::depth>},
    KeyRow{"fronts", "measured-parts", "Fronts already cut, by drawer.", kNone},
    KeyRow{"boxes", "measured-parts", "Boxes already made, by drawer.", kNone},
};

inline constexpr std::array kWidthAtKeys{
    KeyRow{"at", "length-or-zero", "Height above the opening's bottom.", kNone,
           kInto<&MeasuredAt::at>, kRequired},
    KeyRow{"size", "length", "Width there.", kNone, kInto<&MeasuredAt::size>, kRequired},
};

inline constexpr std::array kMeasuredHeightKeys{
    KeyRow{"left", "length", "At the left side.", kNone, kInto<&MeasuredSpec::height_left>},
    KeyRow{"right", "length", "At the right side.", kNone, kInto<&MeasuredSpec::height_right>},
};

inline constexpr std::array kDiagonalsKeys{
    KeyRow{"rising", "length", "From the lower left corner to the upper right.", kNone,
           kInto<&MeasuredSpec::rising>},
    KeyRow{"falling", "length", "From the upper left corner to the lower right.", kNone,
           kInto<&MeasuredSpec::falling>},
};

inline constexpr std::array kMeasuredPartKeys{
    KeyRow{"width", "length", "As measured.", kNone, kInto<&MeasuredPart::width>},
    KeyRow{"height", "length", "As measured.", kNone, kInto<&MeasuredPart::height>},
    KeyRow{"depth", "length", "As measured.", kNone, kInto<&MeasuredPart::depth>},
};

inline constexpr std::array kSpacerKeys{
    KeyRow{"name", "text", "What it is.", kNone, kInto<&SpacerSpec::name>},
    KeyRow{"thickness", "length", "Thickness of one.", kNone, kInto<&SpacerSpec::thickness>,
           kRequired},
    KeyRow{"count", "count", "How many there are.", "1", kInto<&SpacerSpec::count>},
};

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_CHECK_KEYS_H_
