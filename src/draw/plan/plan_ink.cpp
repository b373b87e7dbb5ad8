#include "draw/plan/plan_ink.h"

#include <algorithm>
#include <utility>

#include "sheet/view_tools.h"

namespace tillwright {
namespace {

// All in mm on paper, but for the scale.
constexpr double kThinnest = 1.0;    // thinner faces are filled, not hatched
constexpr double kPly = 0.85;        // least thickness of a ply that is drawn
constexpr double kFreeText = 0.9;    // between hatch and texts
constexpr double kFreeStrip = 0.5;   // between hatch and hidden lines
constexpr double kLineScale = 0.11;  // of the scale: from here hidden lines stand apart

PaperBox BoundsOf(const PaperRing& ring) {
  PaperBox box = EmptyBox();
  for (const PaperPoint& p : ring) box = Join(box, {p.x, p.y, p.x, p.y});
  return box;
}

PaperBox BoundsOf(PaperPoint a, PaperPoint b) {
  return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

PaperBox BoundsOf(const PaperDisc& disc) {
  return Grow(BoundsOf(disc.center, disc.center), disc.radius);
}

// An odd number of plies, none thinner than can be drawn; what real plywood has is not known here.
int PliesIn(double thickness) {
  const int most = std::clamp(static_cast<int>(thickness / kPly), 3, 9);
  return most % 2 == 0 ? most - 1 : most;
}

class FaceDrawing {
 public:
  FaceDrawing(SheetGroup& out, const PaperMap& map, const FaceInk& ink)
      : out_(out), map_(map), ink_(ink) {
    for (const PaperBox& hole : ink.holes) free_.push_back(Grow(hole, kFreeText));
  }

  // Keeps a strip along a hidden line free of hatch: dashes among strokes are lost.
  void KeepFree(const FaceLine& line) {
    if (line.pen != Pen::kHidden || !IsDrawn()) return;
    free_.push_back(Grow(BoundsOf(map_.At(line.from.a, line.from.b), map_.At(line.to.a, line.to.b)),
                         kFreeStrip));
  }

  void Face(const CutFace& face) {
    PaperRing ring;
    ring.reserve(face.outline.size());
    for (const FacePoint& p : face.outline) ring.push_back(map_.At(p.a, p.b));
    if (ink_.window && !Overlaps(BoundsOf(ring), BoundsOf(*ink_.window))) return;
    Fill(face, ring);
    if (face.look != FaceLook::kBeyond && face.open == 0) {
      WholeOutline(face, ring);
    } else {
      OpenOutline(face, ring);
    }
  }

  void Line(const FaceLine& line) {
    if (!IsDrawn()) return;
    const PaperSegment whole{map_.At(line.from.a, line.from.b), map_.At(line.to.a, line.to.b)};
    Stroke(whole, line.pen == Pen::kCut ? ink_.cut : line.pen, line.pen != Pen::kCut);
  }

 private:
  [[nodiscard]] bool IsDrawn() const { return map_.scale.paper_per_mm >= kLineScale; }

  void Stroke(PaperSegment segment, Pen pen, bool keeps_clear) {
    std::vector<PaperSegment> pieces{segment};
    if (ink_.window) pieces = ClipToDisc(*ink_.window, segment);
    for (const PaperSegment& piece : pieces) {
      const Polyline line = LineOf(piece.from, piece.to, pen);
      if (keeps_clear) {
        AddBroken(out_, line, ink_.holes);
      } else {
        out_.primitives.push_back(line);
      }
    }
  }

  void WholeOutline(const CutFace& face, const PaperRing& ring) {
    if (face.owner == FaceOwner::kFront && ink_.inset_fronts && !ink_.window) {
      out_.primitives.push_back(InsetOutline(BoundsOf(ring), ink_.cut));
      return;
    }
    const Polyline outline{ring, true, ink_.cut, Tone::kNone};
    if (!ink_.window) {
      out_.primitives.push_back(outline);
      return;
    }
    for (Polyline& piece : ClipToDisc(*ink_.window, outline)) {
      out_.primitives.push_back(std::move(piece));
    }
  }

  void OpenOutline(const CutFace& face, const PaperRing& ring) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      if ((face.open >> i & 1U) != 0) continue;
      Stroke({ring[i], ring[(i + 1) % ring.size()]}, ink_.cut, false);
    }
  }

  void Fill(const CutFace& face, const PaperRing& ring) {
    const PaperBox box = BoundsOf(ring);
    const double thickness = std::min(box.Width(), box.Height());
    if (thickness < kThinnest && !ink_.window) {
      out_.primitives.push_back(Polyline{ring, true, Pen::kNone, Tone::kShade});
      return;
    }
    HatchArea area = AreaOf(ring);
    area.window = ink_.window;
    for (const PaperBox& hole : free_) {
      if (Overlaps(hole, box)) area.box_holes.push_back(hole);
    }
    HatchLines lines = Hatch(face, area, box);
    if (!lines.segments.empty()) out_.primitives.push_back(std::move(lines));
  }

  [[nodiscard]] HatchLines Hatch(const CutFace& face, const HatchArea& area,
                                 const PaperBox& box) const {
    const bool detail = ink_.window.has_value();
    const double angle = face.turned ? -45 : 45;
    const double grain = detail ? 1.8 : 1.1;
    switch (face.look) {
      case FaceLook::kEndGrain:
        if (!detail) return HatchAtAngle(area, angle, 1.3, ink_.hatch);
        // The heart of the log lies off the end of the piece, so that rings cross it in arcs.
        return HatchEndGrain(area, {box.left - 14, box.bottom + 22}, 2.0, ink_.hatch);
      case FaceLook::kGrainA:
        return HatchLongGrain(area, PaperAxis::kHorizontal, grain, ink_.hatch);
      case FaceLook::kGrainB:
        return HatchLongGrain(area, PaperAxis::kVertical, grain, ink_.hatch);
      case FaceLook::kPliesA:
        return HatchPlies(area, PaperAxis::kHorizontal, PliesIn(box.Width()), ink_.hatch);
      case FaceLook::kPliesB:
        return HatchPlies(area, PaperAxis::kVertical, PliesIn(box.Height()), ink_.hatch);
      case FaceLook::kPlain:
        return HatchAtAngle(area, angle, detail ? 2.0 : 1.3, ink_.hatch);
      case FaceLook::kBeyond:
        break;
    }
    return HatchAtAngle(area, 60, 1.0, ink_.hatch);
  }

  SheetGroup& out_;
  const PaperMap& map_;
  const FaceInk& ink_;
  std::vector<PaperBox> free_;  // of hatch
};

}  // namespace

void DrawFaces(SheetGroup& out, const Faces& faces, FaceOwner owner, const PaperMap& map,
               const FaceInk& ink) {
  FaceDrawing drawing(out, map, ink);
  for (const FaceLine& line : faces.lines) drawing.KeepFree(line);
  for (const CutFace& face : faces.cut) {
    if (face.owner == owner) drawing.Face(face);
  }
  for (const FaceLine& line : faces.lines) {
    if (line.owner == owner) drawing.Line(line);
  }
}

}  // namespace tillwright
