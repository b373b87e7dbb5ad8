// What templates share: a canvas in true distances, chains of dimensions, words below.
#ifndef TILLWRIGHT_DRAW_STICK_TEMPLATE_TOOLS_H_
#define TILLWRIGHT_DRAW_STICK_TEMPLATE_TOOLS_H_

#include <string>
#include <vector>

#include "draw/stick/templates.h"
#include "sheet/dimension.h"
#include "tillwright/length.h"

namespace tillwright {

// Distances from the template's reference corner: across to the right, down the page.
class TemplateCanvas {
 public:
  TemplateCanvas(const StripStyle& style, const TextMetrics& metrics)
      : style_(style), metrics_(metrics) {}

  [[nodiscard]] double X(Length x) const { return ToMillimeters(x) * style_.correction.x; }
  [[nodiscard]] double Y(Length y) const { return ToMillimeters(y) * style_.correction.y; }
  [[nodiscard]] SheetGroup& group() { return group_; }
  [[nodiscard]] const TextMetrics& metrics() const { return metrics_; }

  void Line(double x1, double y1, double x2, double y2, Pen pen);
  // A hole's center: a cross, and a circle to see it by.
  void Hole(double x, double y);

  // Sizes in line; each length has its text and its path.
  struct Size {
    Length length;
    std::string path;  // may be empty: the text stands all the same
  };
  // Along `side` of the template from `start` on, beyond `edge`.
  void Chain(PaperSide side, double start, double edge, const std::vector<Size>& sizes);

  // Title and words below what is drawn, then moved so that its corner is at (0, 0).
  [[nodiscard]] Template Finish(const std::string& id, const std::string& title,
                                const std::vector<std::string>& words, double most_width);

 private:
  const StripStyle& style_;
  const TextMetrics& metrics_;
  SheetGroup group_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_TEMPLATE_TOOLS_H_
