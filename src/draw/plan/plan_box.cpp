#include "draw/plan/plan_box.h"

#include <utility>

#include "spec/kinds.h"

namespace tillwright {
namespace {

class PlanBoxLines {
 public:
  PlanBoxLines(Faces& faces, const Box& box)
      : faces_(faces), box_(box), build_(box.build), sum_(2 * box.x + box.width) {}

  void Add() {
    if (Facts(build_.joint).tailed) {
      for (const bool right : {false, true}) AddPins(right);
    }
    if (Facts(build_.fit).cut) AddBottomLines();
  }

 private:
  [[nodiscard]] Length Front() const { return box_.z; }
  [[nodiscard]] Length Rear() const { return box_.z + box_.depth; }
  // The front face of the back end.
  [[nodiscard]] Length BackEnd() const { return Rear() - build_.back_setback - build_.end; }

  [[nodiscard]] FacePoint Mirror(FacePoint p) const { return {sum_ - p.a, p.b}; }

  // Below the tail: the pins of both ends, as deep as the ends are thick.
  void AddPins(bool right) {
    for (const Length at : {Front() + build_.end, Rear() - build_.end}) {
      const FacePoint outer{box_.x, at};
      const FacePoint inner{box_.x + build_.side, at};
      AddLine(faces_, FaceOwner::kBox, right ? Mirror(inner) : outer, right ? Mirror(outer) : inner,
              Pen::kHidden);
    }
  }

  // The bottom of the groove (or rabbet): where the panel reaches to, but for its play. Under an
  // open back it has no rear edge of its own.
  void AddBottomLines() {
    const Length left = box_.x + build_.side - build_.groove;
    const Length low = Front() + build_.end - build_.groove;
    const Length high = BackEnd() + (build_.open_back ? build_.end : build_.groove);
    const std::vector<FacePoint> ring = RectFace(left, low, sum_ - left, high);
    for (std::size_t i = 0; i < ring.size(); ++i) {
      if (i == 2 && build_.open_back) continue;
      AddLine(faces_, FaceOwner::kBox, ring[i], ring[(i + 1) % ring.size()], Pen::kHidden);
    }
  }

  Faces& faces_;
  const Box& box_;
  const BoxBuild& build_;
  Length sum_;  // a and sum - a are mirror images
};

void AddOutline(Faces& faces, Length left, Length low, Length right, Length high, Pen pen) {
  const std::vector<FacePoint> ring = RectFace(left, low, right, high);
  for (std::size_t i = 0; i < ring.size(); ++i) {
    AddLine(faces, FaceOwner::kSlide, ring[i], ring[(i + 1) % ring.size()], pen);
  }
}

}  // namespace

void AddPlanBoxLines(Faces& faces, const Box& box) { PlanBoxLines(faces, box).Add(); }

Length RunnerReach(const Box& box) {
  return Min(Length::Millimeters(14), PartBelow(box.inside_width, 3));
}

Length CenterHalf(const Box& box) {
  return Min(Length::Millimeters(15), PartBelow(box.inside_width, 4));
}

void AddPlanSlides(Faces& faces, const Space& space) {
  const Box& box = space.box;
  const Length low = box.z;
  const Length high = box.z + space.slide.length;
  const Length right = box.x + box.width;
  const Length under = box.build.side + RunnerReach(box);
  switch (Facts(space.slide.type).place) {
    case SlidePlace::kBeside:
      for (const auto& [from, to] :
           {std::pair(space.cell.x, box.x), std::pair(right, space.cell.Right())}) {
        AddOutline(faces, from, low, to, high, Pen::kThin);
        const Length middle = from + HalfBelow(to - from);  // its two members
        AddLine(faces, FaceOwner::kSlide, {middle, low}, {middle, high}, Pen::kThin);
      }
      return;
    case SlidePlace::kUnder:
      AddOutline(faces, space.cell.x, low, box.x + under, high, Pen::kHidden);
      AddOutline(faces, right - under, low, space.cell.Right(), high, Pen::kHidden);
      return;
    case SlidePlace::kUnderMiddle:
      break;
  }
  const Length center = box.x + HalfBelow(box.width);
  const Length half = CenterHalf(box);
  AddOutline(faces, center - half, low, center + half, high, Pen::kHidden);
  AddLine(faces, FaceOwner::kSlide, {center, low}, {center, high}, Pen::kCenter);
}

}  // namespace tillwright
