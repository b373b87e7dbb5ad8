// The axes of dimensions on one side of an object: `along` the sizes, `out` away from the object.
#ifndef TILLWRIGHT_SHEET_DIMENSION_FRAME_H_
#define TILLWRIGHT_SHEET_DIMENSION_FRAME_H_

#include <string>

#include "sheet/dimension.h"
#include "sheet/rich_text.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// A label's needs: how much of the line it takes and how far it reaches across, mm.
struct LabelNeed {
  double along = 0;
  double across = 0;
};

class DimensionFrame {
 public:
  // `edge`: x (left, right) or y (above, below) where `out` is 0.
  DimensionFrame(PaperSide side, double edge) : side_(side), edge_(edge) {}

  // True beside a view: sizes run down the paper.
  [[nodiscard]] bool IsVertical() const {
    return side_ == PaperSide::kLeft || side_ == PaperSide::kRight;
  }
  [[nodiscard]] PaperPoint At(double along, double out) const;
  // The `out` of an x or y on paper.
  [[nodiscard]] double OutOf(double cross) const { return (cross - edge_) * Sign(); }
  // Directions in degrees: outward, and toward growing `along`.
  [[nodiscard]] double OutwardAngle() const;
  [[nodiscard]] double ForwardAngle() const { return IsVertical() ? 270 : 0; }

  // Between texts in a column or row: side by side they need more, or they read as one.
  [[nodiscard]] double SpreadClearance(const DimensionStyle& style) const {
    return IsVertical() ? style.clearance : 2 * style.clearance;
  }

  [[nodiscard]] LabelNeed NeedOf(const TextMetrics& metrics, const std::string& text,
                                 double cap_height) const;
  // A label centered on the point.
  [[nodiscard]] Label Centerd(const TextMetrics& metrics, const DimensionText& text,
                              double cap_height, double along, double out) const;
  // A label whose near side is at `out`, centered along.
  [[nodiscard]] Label Outside(const TextMetrics& metrics, const DimensionText& text,
                              double cap_height, double along, double out) const;

 private:
  [[nodiscard]] double Sign() const {
    return side_ == PaperSide::kLeft || side_ == PaperSide::kAbove ? -1 : 1;
  }

  PaperSide side_;
  double edge_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_DIMENSION_FRAME_H_
