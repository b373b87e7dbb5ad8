// Clipping of segments to the area of a hatch.
#ifndef TILLWRIGHT_SHEET_HATCH_CLIP_H_
#define TILLWRIGHT_SHEET_HATCH_CLIP_H_

#include <algorithm>
#include <vector>

#include "sheet/hatch.h"

namespace tillwright {

// A stretch of a segment, as fractions of it in [0, 1].
struct Span {
  double from = 0;
  double to = 1;
};

[[nodiscard]] PaperPoint Along(const PaperSegment& s, double t);

// The stretch inside a disc or a box; empty (to <= from) if there is none.
[[nodiscard]] Span InDisc(const PaperDisc& disc, const PaperSegment& s);
[[nodiscard]] Span InBox(const PaperBox& box, const PaperSegment& s);

// Clips segments to an area. Keeps its buffers from one segment to the next: a hatch has thousands.
class AreaClip {
 public:
  explicit AreaClip(const HatchArea& area) : area_(area) {}

  // Calls draw(piece) for every piece of the segment inside the area, in order.
  template <class Draw>
  void Clip(const PaperSegment& s, Draw draw) {
    FindCrossings(s);
    spans_.clear();
    for (std::size_t i = 0; i + 1 < crossings_.size(); i += 2) {
      const Span span{std::max(crossings_[i], 0.0), std::min(crossings_[i + 1], 1.0)};
      if (span.from < span.to) spans_.push_back(span);
    }
    if (spans_.empty()) return;
    if (area_.window) KeepOnly(InDisc(*area_.window, s));
    for (const PaperBox& hole : area_.box_holes) Remove(InBox(hole, s));
    for (const PaperDisc& hole : area_.disc_holes) Remove(InDisc(hole, s));
    for (const Span& span : spans_) draw(PaperSegment{Along(s, span.from), Along(s, span.to)});
  }

 private:
  // Where the infinite line of `s` crosses the rings, as sorted fractions of `s`.
  void FindCrossings(const PaperSegment& s);
  void AddCrossing(const PaperSegment& s, PaperPoint p, PaperPoint q);
  void KeepOnly(Span window);
  void Remove(Span hole);

  const HatchArea& area_;
  std::vector<double> crossings_;
  std::vector<Span> spans_;
  std::vector<Span> kept_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_HATCH_CLIP_H_
