#include "tillwright/words.h"

#include <algorithm>
#include <array>

#include "spec/kinds.h"

namespace tillwright {
namespace {

using namespace std::string_view_literals;

template <class Row, std::size_t kRows>
consteval std::array<std::string_view, kRows> WordsOf(const std::array<Row, kRows>& rows) {
  std::array<std::string_view, kRows> words;
  std::ranges::transform(rows, words.begin(), &Row::word);
  return words;
}

constexpr std::array kUnit{"in"sv, "mm"sv};
constexpr std::array kFrontStyle{"overlay"sv, "inset"sv};
constexpr std::array kGrain{"horizontal"sv, "vertical"sv, "none"sv};
constexpr auto kSlideType = WordsOf(kSlideTypes);
constexpr auto kCornerJoint = WordsOf(kCornerJoints);
constexpr auto kBottomFit = WordsOf(kBottomFits);
constexpr std::array kGraduation{"equal"sv, "shares"sv, "arithmetic"sv, "geometric"sv};
constexpr auto kCaseJoint = WordsOf(kCaseJoints);
constexpr std::array kCaseFixing{"pocket-screws"sv, "dowels"sv, "glue"sv};
constexpr auto kBackFit = WordsOf(kBackFits);
constexpr std::array kOpenRails{"front"sv, "both"sv};
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
std::span<const std::string_view> Words<OpenRails>() {
  return kOpenRails;
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
