// The kinds that a spec chooses among, one row a kind: all that differs from kind to kind and that
// no size decides. Words stand in the spec, captions on drawings.
#ifndef TILLWRIGHT_SPEC_KINDS_H_
#define TILLWRIGHT_SPEC_KINDS_H_

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

#include "spec/defaults.h"
#include "spec/kind_table.h"
#include "tillwright/spec.h"

namespace tillwright {

// --- Slides -------------------------------------------------------------------------------------

// What makes a box's width of its cell's: `clearance` at each side, or less `deduct` its inside.
enum class WidthRule : std::uint8_t { kClearance, kInside };
enum class SlidePlace : std::uint8_t { kBeside, kUnder, kUnderMiddle };  // of the box
enum class SoldAs : std::uint8_t { kPair, kPiece, kNot };  // what is not bought is made to length

struct SlideFacts {
  SlideType kind;
  std::string_view word, caption;
  WidthRule width = WidthRule::kClearance;
  SlidePlace place = SlidePlace::kBeside;
  SoldAs sold = SoldAs::kPair;
  bool beside = true;          // needs something at both sides of its cell
  bool beneath = false;        // needs something beneath its cell
  bool screwed = false;        // to the case's sides, at its line
  bool exact = false;          // no more than its clearance, or its balls run out
  bool bottom_set_up = false;  // runs under the bottom, between the box's sides
  // The defaults of its keys, and of the box's.
  Default clearance{}, behind{}, line{}, below{}, above{}, up{};
  defaults::Series inches = defaults::kInchSeries;  // the lengths it is sold in
};

// By SlideType. All common practice, no source.
inline constexpr std::array kSlideTypes{
    SlideFacts{.kind = SlideType::kSideMount,
               .word = "side-mount",
               .caption = "SIDE-MOUNT SLIDE",
               .screwed = true,
               .exact = true,
               .clearance = defaults::Same(defaults::TenthMm(127)),
               .behind = {defaults::In(1, 2), defaults::Mm(13)},
               .line = {defaults::In(7, 8), defaults::Mm(22)},
               .below = {defaults::In(1, 4), defaults::Mm(6)},
               .above = {defaults::In(1, 2), defaults::Mm(13)},
               .up = {defaults::In(1, 4), defaults::Mm(6)}},
    SlideFacts{.kind = SlideType::kUndermount,
               .word = "undermount",
               .caption = "UNDERMOUNT SLIDE",
               .width = WidthRule::kInside,
               .place = SlidePlace::kUnder,
               .screwed = true,
               .bottom_set_up = true,
               .behind = {defaults::In(3, 4), defaults::Mm(19)},
               .below = {defaults::In(9, 16), defaults::Mm(14)},
               .above = {defaults::In(1, 4), defaults::Mm(7)},
               .up = {defaults::In(1, 2), defaults::Mm(13)},
               .inches = defaults::kUndermountInchSeries},
    SlideFacts{.kind = SlideType::kCenterMount,
               .word = "center-mount",
               .caption = "CENTER-MOUNT SLIDE",
               .place = SlidePlace::kUnderMiddle,
               .sold = SoldAs::kPiece,
               .beside = false,
               .beneath = true,
               .clearance = {defaults::In(1, 8), defaults::Mm(3)},
               .behind = {defaults::In(1, 2), defaults::Mm(13)},
               .below = {defaults::In(1, 4), defaults::Mm(6)},
               .above = {defaults::In(1, 4), defaults::Mm(6)},
               .up = {defaults::In(1, 2), defaults::Mm(13)}},
    SlideFacts{.kind = SlideType::kWoodRunner,
               .word = "wood-runner",
               .caption = "WOOD RUNNER",
               .place = SlidePlace::kUnder,
               .sold = SoldAs::kNot,
               .beneath = true,
               .clearance = {defaults::In(1, 32), defaults::Mm(1)},
               .behind = {defaults::In(1, 2), defaults::Mm(13)},
               .above = {defaults::In(1, 8), defaults::Mm(3)},
               .up = {defaults::In(1, 4), defaults::Mm(6)}},
};
static_assert(InOrder(kSlideTypes));
[[nodiscard]] constexpr const SlideFacts& Facts(SlideType kind) {
  return kSlideTypes[static_cast<std::size_t>(kind)];
}

// --- Corner joints of the boxes -----------------------------------------------------------------

struct CornerFacts {
  CornerJoint kind;
  std::string_view word, caption;
  std::optional<CutKind> cut{};  // in the sides
  bool tailed = false;           // the ends are cut too, and as long as the box is wide
  bool depth = false;            // has the key: how deep the ends stand in the sides
  bool lap = false;              // has the key: what stays uncut of the ends' outer faces
  bool setback = true;           // has the key: the back end may stand in
};

// By CornerJoint.
inline constexpr std::array kCornerJoints{
    CornerFacts{.kind = CornerJoint::kButt, .word = "butt", .caption = "BUTT JOINT"},
    CornerFacts{.kind = CornerJoint::kRabbet,
                .word = "rabbet",
                .caption = "RABBET JOINT",
                .cut = CutKind::kRabbet,
                .depth = true},
    CornerFacts{.kind = CornerJoint::kDado,
                .word = "dado",
                .caption = "DADO JOINT",
                .cut = CutKind::kDado,
                .depth = true},
    CornerFacts{.kind = CornerJoint::kHalfBlindDovetail,
                .word = "half-blind-dovetail",
                .caption = "HALF-BLIND DOVETAIL",
                .cut = CutKind::kHalfBlindDovetail,
                .tailed = true,
                .lap = true,
                .setback = false},
    CornerFacts{.kind = CornerJoint::kThroughDovetail,
                .word = "through-dovetail",
                .caption = "THROUGH DOVETAIL",
                .cut = CutKind::kThroughDovetail,
                .tailed = true,
                .setback = false},
    CornerFacts{.kind = CornerJoint::kFinger,
                .word = "finger",
                .caption = "FINGER JOINT",
                .cut = CutKind::kFinger,
                .tailed = true,
                .setback = false},
};
static_assert(InOrder(kCornerJoints));
[[nodiscard]] constexpr const CornerFacts& Facts(CornerJoint kind) {
  return kCornerJoints[static_cast<std::size_t>(kind)];
}

// --- Bottoms of the boxes -----------------------------------------------------------------------

struct BottomFacts {
  BottomFit kind;
  std::string_view word, caption;
  std::optional<CutKind> cut{};  // in the sides and ends; with it the keys `depth` and `play`
  bool set_up = false;           // above the lower edge, and free to move: `up` and `open_back`
};

// By BottomFit.
inline constexpr std::array kBottomFits{
    BottomFacts{.kind = BottomFit::kGroove,
                .word = "groove",
                .caption = "BOTTOM IN GROOVE",
                .cut = CutKind::kGroove,
                .set_up = true},
    BottomFacts{.kind = BottomFit::kRabbet,
                .word = "rabbet",
                .caption = "BOTTOM IN RABBET",
                .cut = CutKind::kRabbet},
    BottomFacts{.kind = BottomFit::kApplied, .word = "applied", .caption = "BOTTOM APPLIED BELOW"},
};
static_assert(InOrder(kBottomFits));
[[nodiscard]] constexpr const BottomFacts& Facts(BottomFit kind) {
  return kBottomFits[static_cast<std::size_t>(kind)];
}

// --- Joints of the case -------------------------------------------------------------------------

struct CaseJointFacts {
  CaseJoint kind;
  std::string_view word, caption;
  std::optional<CutKind> cut{};      // across what takes a member; with it the key `depth`
  std::optional<CutKind> end_cut{};  // the same at the very end of a side
  bool at_end = false;               // as deep as a rabbet may be
  bool tongue = false;               // members have tongues, and the key
  std::string_view what{};           // the cut, as checks call it
};

// By CaseJoint.
inline constexpr std::array kCaseJoints{
    CaseJointFacts{.kind = CaseJoint::kButt, .word = "butt", .caption = "CASE BUTT JOINT"},
    CaseJointFacts{.kind = CaseJoint::kDado,
                   .word = "dado",
                   .caption = "CASE DADO",
                   .cut = CutKind::kDado,
                   .end_cut = CutKind::kRabbet,
                   .what = "a dado"},
    CaseJointFacts{.kind = CaseJoint::kRabbet,
                   .word = "rabbet",
                   .caption = "CASE RABBET",
                   .cut = CutKind::kDado,
                   .end_cut = CutKind::kRabbet,
                   .at_end = true,
                   .what = "a rabbet"},
    CaseJointFacts{.kind = CaseJoint::kGroove,
                   .word = "tongue-and-dado",
                   .caption = "CASE TONGUE AND DADO",
                   .cut = CutKind::kDado,
                   .end_cut = CutKind::kDado,
                   .tongue = true,
                   .what = "a dado for a tongue"},
};
static_assert(InOrder(kCaseJoints));
[[nodiscard]] constexpr const CaseJointFacts& Facts(CaseJoint kind) {
  return kCaseJoints[static_cast<std::size_t>(kind)];
}

// --- Backs of the case --------------------------------------------------------------------------

struct BackFacts {
  BackFit kind;
  std::string_view word, caption{};
  std::optional<CutKind> cut{};  // in the sides; with it the key `play`
  bool there = true;
  bool lap = false;      // has the key: how far it goes into the sides
  bool inset = false;    // has the keys: how far in from the rear, and how deep in the sides
  bool behind = false;   // the case: against the rear edges of all its parts
  bool screwed = false;  // all round
};

// By BackFit.
inline constexpr std::array kBackFits{
    BackFacts{.kind = BackFit::kRabbet,
              .word = "rabbet",
              .caption = "BACK RABBET",
              .cut = CutKind::kRabbet,
              .lap = true,
              .screwed = true},
    BackFacts{.kind = BackFit::kGroove,
              .word = "groove",
              .caption = "BACK GROOVE",
              .cut = CutKind::kGroove,
              .inset = true},
    BackFacts{.kind = BackFit::kApplied, .word = "applied", .behind = true, .screwed = true},
    BackFacts{.kind = BackFit::kNone, .word = "none", .there = false},
};
static_assert(InOrder(kBackFits));
[[nodiscard]] constexpr const BackFacts& Facts(BackFit kind) {
  return kBackFits[static_cast<std::size_t>(kind)];
}

}  // namespace tillwright

#endif  // TILLWRIGHT_SPEC_KINDS_H_
