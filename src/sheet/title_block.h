// Papers, borders and title blocks.
//
// The border stands 10 mm from the edge of the paper, which desktop printers reach; ISO 5457 asks
// for 20 mm on the binding side [M], which a workshop sheet does not need. The title block is a
// strip along the bottom with cells of a caption and a value, after the fields of ISO 7200 [M] that
// a workshop needs; fields that are not given leave no empty cell behind.
#ifndef TILLWRIGHT_SHEET_TITLE_BLOCK_H_
#define TILLWRIGHT_SHEET_TITLE_BLOCK_H_

#include <cstdint>
#include <string>
#include <string_view>

#include "tillwright/paper.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

inline constexpr double kBorderMargin = 10;  // mm from the paper's edge

enum class Projection : std::uint8_t { kNone, kFirstAngle, kThirdAngle };

struct TitleBlock {
  std::string project{};   // may be empty
  std::string title{};     // of the piece
  std::string view{};      // what this sheet shows
  std::string scale{};     // "1:8, details 1:1"
  std::string units{};     // "inches"
  std::string material{};  // may be empty
  std::string date{};      // shown only when given
  std::string drawn{};     // shown only when given
  int sheet = 1;
  int sheets = 1;
  Projection projection = Projection::kNone;
};

// A sheet of this paper with nothing on it but its size, name, title and frame.
[[nodiscard]] Sheet MakeSheet(Paper paper, Orientation orientation, std::string name,
                              std::string title);

// Adds border, centering marks, print-check bars (50 mm and 2 in) and title block as groups of the
// sheet. Returns the space left for views: inside the border, above the block.
PaperBox AddBorderAndTitle(Sheet& sheet, std::string_view paper_name, const TitleBlock& block,
                           const TextMetrics& metrics);

// The space AddBorderAndTitle would leave, without drawing: for choosing a scale.
[[nodiscard]] PaperBox DrawingSpace(const Sheet& sheet);

// The two views of a truncated cone in first or third angle, 14 x 7 mm around `center`.
void AddProjectionSymbol(SheetGroup& out, PaperPoint center, Projection projection);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_TITLE_BLOCK_H_
