// Dxf: a drawing exchange file as AutoCAD R12 (AC1009) had it, which laser and router programs
// read.
//
// R12 cannot name its unit: 1 unit is 1 mm here, and a comment at the top says so. Lengths are
// exact decimals. Texts are ASCII, everything else as \U+nnnn; control characters are left out,
// since a line break would begin a new group. Layers are listed as they are used.
#ifndef TILLWRIGHT_WRITE_DXF_H_
#define TILLWRIGHT_WRITE_DXF_H_

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/length.h"

namespace tillwright {

struct DxfPoint {
  Length x, y;
};

class Dxf {
 public:
  // A layer's color is an index of R12's: 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 7 black.
  void Layer(std::string_view name, int color);

  // On a layer that Layer() has named.
  void Polygon(std::string_view layer, const std::vector<DxfPoint>& corners);
  void Circle(std::string_view layer, DxfPoint center, Length radius);
  void Text(std::string_view layer, DxfPoint lower_left, Length height, std::string_view text);

  // The file; CRLF line ends. REQUIRES: something was drawn.
  [[nodiscard]] std::string Take(std::string_view comment) const;

 private:
  void Code(int code, std::string_view value);
  void Code(int code, Length value);
  void Point(int code, DxfPoint point);
  void Seen(DxfPoint point);

  std::vector<std::pair<std::string, int>> layers_;
  std::string entities_;
  DxfPoint low_, high_;
  bool empty_ = true;
};

// The text as DXF has it.
[[nodiscard]] std::string DxfText(std::string_view text);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_DXF_H_
