// Drawing scales: the standard series, and how a solved place becomes a place on paper.
#ifndef TILLWRIGHT_SHEET_SCALE_H_
#define TILLWRIGHT_SHEET_SCALE_H_

#include <optional>
#include <span>
#include <string_view>

#include "tillwright/length.h"
#include "tillwright/length_text.h"
#include "tillwright/sheet.h"

namespace tillwright {

struct Scale {
  double paper_per_mm = 1;  // paper millimeters a millimeter of the piece
  std::string_view name = "1:1";
};

// Reductions from 1:1 down, largest first: 1:1 1:2 1:4 1:8 … for inches (architects' rules),
// 1:1 1:2 1:5 1:10 … for millimeters (ISO 5455); both from memory. Fits anything up to 100 m.
[[nodiscard]] std::span<const Scale> ScaleSeries(Unit unit);

// The scale of the series below which small joinery is hard to read: 1:8, or 1:10 (common practice,
// no source).
[[nodiscard]] const Scale& ModestScale(Unit unit);

// The scale that a text such as "1:8" names, of whole numbers from 1 to 10000. `text` must outlive
// it.
[[nodiscard]] std::optional<Scale> ParseScale(std::string_view text);

// Maps a place of a view (right and up from the view's zero, exact) to paper.
struct PaperMap {
  PaperPoint zero;  // where the view's zero lies on paper
  Scale scale;

  [[nodiscard]] double Size(Length length) const {
    return ToMillimeters(length) * scale.paper_per_mm;
  }
  [[nodiscard]] double X(Length x) const { return zero.x + Size(x); }
  [[nodiscard]] double Y(Length y) const { return zero.y - Size(y); }
  [[nodiscard]] PaperPoint At(Length x, Length y) const { return {X(x), Y(y)}; }
  [[nodiscard]] PaperBox Box(const Rect& r) const {
    return {X(r.x), Y(r.Top()), X(r.Right()), Y(r.y)};
  }
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_SCALE_H_
