#include "draw/sheets/view_table.h"

#include <array>
#include <cstddef>
#include <utility>

#include "draw/detail/details.h"
#include "draw/overview/overview.h"
#include "draw/part/part_sheets.h"
#include "draw/sheets/sheets_table.h"
#include "draw/views.h"
#include "spec/kind_table.h"

namespace tillwright {
namespace {

constexpr std::array<ViewFacts, 7> kRows{{
    {ViewKind::kFront, "front", "elevation", true, PlaceElevation},
    {ViewKind::kSide, "side", "section A\u2013A", true, PlaceSection},
    {ViewKind::kPlan, "plan", "plan", false, PlacePlan},
    {ViewKind::kSizes, "sizes", "sizes", false, PlaceSizes},
    {ViewKind::kDetails, "details", "details", false, PlaceDetails},
    {ViewKind::kOverview, "overview", "overview", true, PlaceOverviews},
    {ViewKind::kParts, "parts", "parts", false, PlaceParts},
}};

static_assert(InOrder(kRows));

template <std::size_t n, class Row>
constexpr std::array<std::string_view, n> WordsOf(const std::array<Row, n>& rows,
                                                  std::string_view Row::*word) {
  std::array<std::string_view, n> words;
  for (std::size_t i = 0; i < n; ++i) words[i] = rows[i].*word;
  return words;
}
constexpr auto kViewWords = WordsOf(kRows, &ViewFacts::word);
constexpr auto kPaperWords = WordsOf(kPapers, &PaperSize::name);

}  // namespace

template <>
std::span<const std::string_view> Words<ViewKind>() {
  return kViewWords;
}
template <>
std::span<const std::string_view> Words<Paper>() {
  return kPaperWords;
}

const ViewFacts& Facts(ViewKind kind) { return kRows[static_cast<std::size_t>(kind)]; }

View As(ViewKind kind, View view) {
  view.caption = Facts(kind).caption;
  view.on_page = Facts(kind).on_page;
  return view;
}

}  // namespace tillwright
