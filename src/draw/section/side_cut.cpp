#include "draw/section/side_cut.h"

#include <algorithm>
#include <cmath>

#include "sheet/hatch.h"
#include "spec/materials.h"

namespace tillwright {
namespace {

constexpr double kGray = 1.0;       // mm: thinner parts are filled
constexpr double kPatterned = 4.5;  // mm: thick enough to show grain and plies
constexpr double kSpacing = 1.0;    // mm, plain hatching

bool IsPanel(std::string_view material) { return !material.empty() && !IsSolidWood(material); }

// An odd number of plies, about 0.9 mm each on paper.
int PliesIn(double thickness) {
  const int pairs = std::max(1, static_cast<int>(std::lround(thickness / 0.9)) / 2);
  return 2 * pairs + 1;
}

HatchLines PatternOf(const HatchArea& area, const PaperBox& box, const CutStock& stock) {
  const double thickness = std::min(box.Width(), box.Height());
  const bool upright = box.Width() < box.Height();
  if (thickness < kPatterned) return HatchAtAngle(area, stock.tilt, kSpacing, Pen::kHatch);
  if (IsPanel(stock.material)) {
    return HatchPlies(area, upright ? PaperAxis::kHorizontal : PaperAxis::kVertical,
                      PliesIn(thickness), Pen::kHatch);
  }
  if (!IsSolidWood(stock.material)) return HatchAtAngle(area, stock.tilt, 1.6, Pen::kHatch);
  if (stock.grain == CutGrain::kUpright) {
    return HatchLongGrain(area, PaperAxis::kVertical, 1.4, Pen::kHatch);
  }
  const double reach = 3 * thickness;
  const PaperPoint middle = box.Center();
  const PaperPoint heart =
      upright ? PaperPoint{box.right + reach, middle.y} : PaperPoint{middle.x, box.bottom + reach};
  return HatchEndGrain(area, heart, 1.4, Pen::kHatch);
}

}  // namespace

void AddCut(SheetGroup& out, const PaperBox& box, const CutStock& stock) {
  const double thickness = std::min(box.Width(), box.Height());
  const double pen = StyleOf(Pen::kCut).width;
  if (thickness < kGray) {
    Polyline shape =
        BoxOutline(box, thickness < 3 * StyleOf(Pen::kThin).width ? Pen::kNone : Pen::kThin);
    if (shape.pen == Pen::kThin) shape = InsetOutline(box, Pen::kThin);
    shape.fill = thickness < StyleOf(Pen::kThin).width ? Tone::kInk : Tone::kShade;
    out.primitives.push_back(std::move(shape));
    return;
  }
  const bool inset = stock.inset && thickness > 2 * pen;
  HatchArea area = AreaOf(inset ? Grow(box, -pen) : box);
  if (stock.hole.Width() > 0) area.box_holes.push_back(stock.hole);
  out.primitives.push_back(PatternOf(area, box, stock));
  out.primitives.push_back(inset ? InsetOutline(box, Pen::kCut) : BoxOutline(box, Pen::kCut));
}

}  // namespace tillwright
