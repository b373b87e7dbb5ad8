#include "tillwright/words.h"

#include <array>

namespace tillwright {
namespace {

using namespace std::string_view_literals;

constexpr std::array kUnit{"in"sv, "mm"sv};
constexpr std::array kFrontStyle{"overlay"sv, "inset"sv};
constexpr std::array kGrain{"horizontal"sv, "vertical"sv, "none"sv};
constexpr std::array kSlideType{"side-mount"sv, "undermount"sv, "center-mount"sv, "wood-runner"sv};
constexpr std::array kCornerJoint{
    "butt"sv, "rabbet"sv, "dado"sv, "half-blind-dovetail"sv, "through-dovetail"sv, "finger"sv};
constexpr std::array kBottomFit{"groove"sv, "rabbet"sv, "applied"sv};
constexpr std::array kGraduation{"equal"sv, "shares"sv, "arithmetic"sv, "geometric"sv};
constexpr std::array kCaseJoint{"butt"sv, "dado"sv, "rabbet"sv, "tongue-and-dado"sv};
constexpr std::array kCaseFixing{"pocket-screws"sv, "dowels"sv, "glue"sv};
constexpr std::array kBackFit{"rabbet"sv, "groove"sv, "applied"sv, "none"sv};
constexpr std::array kSetting{"spaced"sv, "centred"sv};
constexpr std::array kSawnCut{"flat"sv, "quarter"sv};
constexpr std::array kHeld{"middle"sv, "bottom"sv};
constexpr std::array kFrontMatch{"none"sv, "row"sv, "stack"sv};
constexpr std::array kEdge{"top"sv, "bottom"sv, "left"sv, "right"sv};

}  // namespace

template <>
std::span<const std::string_view> Words<Unit>() {
  return kUnit;
}
template <>
std::span<const std::string_view> Words<FrontStyle>() {
  return kFrontStyle;
}
template <>
std::span<const std::string_view> Words<Grain>() {
  return kGrain;
}
template <>
std::span<const std::string_view> Words<SlideType>() {
  return kSlideType;
}
template <>
std::span<const std::string_view> Words<CornerJoint>() {
  return kCornerJoint;
}
template <>
std::span<const std::string_view> Words<BottomFit>() {
  return kBottomFit;
}
template <>
std::span<const std::string_view> Words<Graduation>() {
  return kGraduation;
}
template <>
std::span<const std::string_view> Words<CaseJoint>() {
  return kCaseJoint;
}
template <>
std::span<const std::string_view> Words<CaseFixing>() {
  return kCaseFixing;
}
template <>
std::span<const std::string_view> Words<BackFit>() {
  return kBackFit;
}
template <>
std::span<const std::string_view> Words<Setting>() {
  return kSetting;
}
template <>
std::span<const std::string_view> Words<SawnCut>() {
  return kSawnCut;
}
template <>
std::span<const std::string_view> Words<Held>() {
  return kHeld;
}
template <>
std::span<const std::string_view> Words<FrontMatch>() {
  return kFrontMatch;
}
template <>
std::span<const std::string_view> Words<Edge>() {
  return kEdge;
}

}  // namespace tillwright
