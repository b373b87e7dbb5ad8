#include "draw/sheets/view_table.h"

#include <array>
#include <cstddef>
#include <utility>

#include "draw/detail/details.h"
#include "draw/overview/overview.h"
#include "draw/part/part_sheets.h"
#include "draw/sheets/sheets_table.h"
#include "draw/views.h"

namespace tillwright {
namespace {

constexpr std::array<ViewRow, 7> kRows{{
    {"front", "elevation", true, PlaceElevation},
    {"side", "section A\u2013A", true, PlaceSection},
    {"plan", "plan", false, PlacePlan},
    {"sizes", "sizes", false, PlaceSizes},
    {"details", "details", false, PlaceDetails},
    {"overview", "overview", true, PlaceOverviews},
    {"parts", "parts", false, PlaceParts},
}};

template <std::size_t n, class Row>
constexpr std::array<std::string_view, n> WordsOf(const std::array<Row, n>& rows,
                                                  std::string_view Row::*word) {
  std::array<std::string_view, n> words;
  for (std::size_t i = 0; i < n; ++i) words[i] = rows[i].*word;
  return words;
}
constexpr auto kViewWords = WordsOf(kRows, &ViewRow::word);
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

const ViewRow& RowOf(ViewKind kind) { return kRows[static_cast<std::size_t>(kind)]; }

View As(ViewKind kind, View view) {
  view.caption = RowOf(kind).caption;
  view.on_page = RowOf(kind).on_page;
  return view;
}

}  // namespace tillwright
