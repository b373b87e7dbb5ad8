// Checks: what a careful maker would look over before cutting, on a solved bank.
//
// Each finding has a stable code, a level, a subject, the figure and its limit, and where the limit
// comes from. Limits are common practice unless a source is named. `fail` means the piece would not
// go together or would not work; `warn` that it is weak or unwise; `note` only tells.
#ifndef TILLWRIGHT_CHECK_H_
#define TILLWRIGHT_CHECK_H_

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

enum class Level : std::uint8_t { kPass, kNote, kWarn, kFail };
[[nodiscard]] std::string_view ToText(Level level);

enum class CheckCode : std::uint8_t {
  kClosure,         // fronts and gaps fill the height and width
  kGap,             // every gap within its least and greatest
  kOverlay,         // an overlay no larger than the case edge it covers
  kMeet,            // neighbors sharing an edge do not meet
  kBare,            // no slot into the case beside a front
  kOutOfLine,       // outer edges of fronts above one another in line
  kGraduation,      // the graduation came out as asked
  kSupport,         // drawers have something to hang on or stand on
  kBoxWidth,        // the box is within its cell across
  kBoxHeight,       // … upright
  kBoxDepth,        // … from front to back
  kLeastHeight,     // the box is tall enough for its joint and bottom
  kSlideDepth,      // the slide fits the depth
  kSlideBox,        // the slide is no longer than the box
  kSlideClearance,  // a side-mount slide has its space, and not much more
  kSideThickness,   // an undermount slide takes the side's thickness
  kBottomFit,       // an undermount slide goes with the bottom's fit
  kGrooveDepth,     // a groove no deeper than half the part
  kGrooveUnder,     // as much wood under a groove as it is deep
  kGrooveJoint,     // a groove that does not show in the corner joint
  kRabbetDepth,     // a rabbet no deeper than two thirds of the part
  kTongue,          // a groove joint's tongues thick enough to hold
  kFrontScrew,      // screws through the front end stay inside the front
  kSlideScrew,      // slide screws are shorter than the side is thick
  kPocketScrew,     // pocket screws suit the stock
  kBottomSag,       // a bottom that carries its load (an estimate)
  kSlideLoad,       // slides rated for what they carry (an estimate)
  kBottomMoves,     // a solid bottom is free to move (an estimate)
  kFrontMoves,      // a solid front is free to move (an estimate)
  kBoxMoves,        // solid sides and fronts have room to swell in height (an estimate)
  kTipping,         // the case stands with its drawers open (an estimate)
  kFitHeight,       // case and feet as high as the worktop's own legs
  kFitDepth,        // fronts flush with the worktop's edge
  kCaseMovement,    // solid worktop and back may move on the case (an estimate)
  // Of the gap check (gap_check.h):
  kGapTolerance,   // cut and set as truly as said, every gap keeps its limits
  kGapSeason,      // … and in the dry and the humid season
  kGapMeasured,    // … and with the opening and the fronts as measured
  kGapTaper,       // … from end to end in an opening out of square
  kCover,          // an overlay front still covers the opening's edge
  kMoisture,       // moisture within what the coefficients are good for, and a wood to reckon with
  kLimitsCross,    // the least a gap may become is below the greatest
  kBoxMeasured,    // a box that is made fits where it goes; one that is not is told its width
  kDepthMeasured,  // the slides fit the depth as measured
  kShims,          // the spacers on hand set the gaps
  kRefit           // what is made already can be kept
};
inline constexpr CheckCode kLastOfBank = CheckCode::kCaseMovement;

// The words of the codes, in their order. specs/README.md tells what each looks at.
struct CheckRow {
  CheckCode kind;
  std::string_view word;
};
inline constexpr std::array kChecks{
    CheckRow{CheckCode::kClosure, "closure"},
    CheckRow{CheckCode::kGap, "gap"},
    CheckRow{CheckCode::kOverlay, "overlay"},
    CheckRow{CheckCode::kMeet, "meet"},
    CheckRow{CheckCode::kBare, "bare"},
    CheckRow{CheckCode::kOutOfLine, "out-of-line"},
    CheckRow{CheckCode::kGraduation, "graduation"},
    CheckRow{CheckCode::kSupport, "support"},
    CheckRow{CheckCode::kBoxWidth, "box-width"},
    CheckRow{CheckCode::kBoxHeight, "box-height"},
    CheckRow{CheckCode::kBoxDepth, "box-depth"},
    CheckRow{CheckCode::kLeastHeight, "least-height"},
    CheckRow{CheckCode::kSlideDepth, "slide-depth"},
    CheckRow{CheckCode::kSlideBox, "slide-box"},
    CheckRow{CheckCode::kSlideClearance, "slide-clearance"},
    CheckRow{CheckCode::kSideThickness, "side-thickness"},
    CheckRow{CheckCode::kBottomFit, "bottom-fit"},
    CheckRow{CheckCode::kGrooveDepth, "groove-depth"},
    CheckRow{CheckCode::kGrooveUnder, "groove-under"},
    CheckRow{CheckCode::kGrooveJoint, "groove-joint"},
    CheckRow{CheckCode::kRabbetDepth, "rabbet-depth"},
    CheckRow{CheckCode::kTongue, "tongue"},
    CheckRow{CheckCode::kFrontScrew, "front-screw"},
    CheckRow{CheckCode::kSlideScrew, "slide-screw"},
    CheckRow{CheckCode::kPocketScrew, "pocket-screw"},
    CheckRow{CheckCode::kBottomSag, "bottom-sag"},
    CheckRow{CheckCode::kSlideLoad, "slide-load"},
    CheckRow{CheckCode::kBottomMoves, "bottom-moves"},
    CheckRow{CheckCode::kFrontMoves, "front-moves"},
    CheckRow{CheckCode::kBoxMoves, "box-moves"},
    CheckRow{CheckCode::kTipping, "tipping"},
    CheckRow{CheckCode::kFitHeight, "fit-height"},
    CheckRow{CheckCode::kFitDepth, "fit-depth"},
    CheckRow{CheckCode::kCaseMovement, "case-movement"},
    CheckRow{CheckCode::kGapTolerance, "gap-tolerance"},
    CheckRow{CheckCode::kGapSeason, "gap-season"},
    CheckRow{CheckCode::kGapMeasured, "gap-measured"},
    CheckRow{CheckCode::kGapTaper, "gap-taper"},
    CheckRow{CheckCode::kCover, "cover"},
    CheckRow{CheckCode::kMoisture, "moisture"},
    CheckRow{CheckCode::kLimitsCross, "limits"},
    CheckRow{CheckCode::kBoxMeasured, "box-measured"},
    CheckRow{CheckCode::kDepthMeasured, "depth-measured"},
    CheckRow{CheckCode::kShims, "shims"},
    CheckRow{CheckCode::kRefit, "refit"},
};
[[nodiscard]] std::string_view ToText(CheckCode code);

// A figure that is no length, and what it is held against.
struct Measure {
  double value = 0;
  std::optional<double> limit;
  std::string_view unit;  // "kg", "N m"
};

struct Finding {
  CheckCode code = CheckCode::kClosure;
  Level level = Level::kPass;
  std::string subject;  // "D2", "D2 to D1", "case", "bank"
  std::string message;  // one sentence; a failing one says what to change and by how much
  std::optional<Length> value, limit;
  std::string_view source;
  std::optional<Measure> measure{};  // of findings that are not about a length
};

// Every check on a bank, in the order of CheckCode within each subject's group.
[[nodiscard]] std::vector<Finding> CheckBank(const Spec& spec, const Bank& bank);

[[nodiscard]] bool HasFailure(const std::vector<Finding>& findings);

// The length of pocket screw that suits a stock thickness: 1 in for 1/2 in, 1-1/4 in for 3/4 in,
// 1-1/2 in for 7/8 to 1 in, 2-1/2 in for 1-1/2 in (common practice, no source). Empty outside that.
[[nodiscard]] std::optional<Length> PocketScrewFor(Length stock);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_H_
