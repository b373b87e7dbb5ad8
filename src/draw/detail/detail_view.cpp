#include <algorithm>
#include <cmath>
#include <utility>

#include "draw/bank/case_joints.h"
#include "draw/detail/detail_dims.h"
#include "draw/detail/detail_faces.h"
#include "draw/detail/details.h"
#include "draw/plan/plan_dims.h"
#include "draw/plan/plan_faces.h"
#include "draw/plan/plan_ink.h"
#include "draw/plan/plan_words.h"
#include "draw/section/side_plane.h"
#include "draw/sheets/composer.h"
#include "draw/sheets/view_table.h"
#include "sheet/annotation.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kTitleDrop = 9.5;  // mm from the lowest dimension to the title's baseline
constexpr double kStub = 9;         // mm on paper of what an opening is an opening in

// Rounded to a micrometer.
Length OnPiece(double paper, const Scale& scale) {
  return Length::Picometers(std::llround(paper / scale.paper_per_mm * 1e3) *
                            (Length::kPerMillimeter / 1000));
}

PaperMap MapOf(const DetailChoice& choice) {
  PaperMap map{{0, 0}, choice.scale};
  map.zero = {-map.Size(choice.right), map.Size(choice.up)};
  return map;
}

Faces FacesOf(const Bank& bank, const DetailChoice& choice) {
  const Length stub = OnPiece(kStub, choice.scale);
  if (choice.parent == ViewKind::kPlan) {
    return PlanFaces(bank, PlanScopeOf(bank, choice.space, stub));
  }
  if (choice.parent == ViewKind::kFront) return CornerJointFaces(bank);
  const Length reach = OnPiece(choice.radius, choice.scale);
  const FaceWindow window{choice.right - reach, choice.up - reach, choice.right + reach,
                          choice.up + reach};
  return SideFaces(bank, ChooseSectionPlane(bank).x, window, stub);
}

void DrawInsideCircle(View& view, const Bank& bank, const DetailChoice& choice) {
  const PaperDisc disc{{0, 0}, choice.radius};
  FaceInk ink;
  ink.cut = Pen::kDetailCut;
  ink.hatch = Pen::kDetailHatch;
  ink.window = disc;
  const Faces faces = FacesOf(bank, choice);
  SheetGroup& group = AddViewGroup(view, "parts", choice.title, 0);
  for (const FaceOwner owner :
       {FaceOwner::kCase, FaceOwner::kSlide, FaceOwner::kBox, FaceOwner::kFront}) {
    DrawFaces(group, faces, owner, view.map, ink);
  }
  group.primitives.push_back(Circle{disc.center, disc.radius, Pen::kCallout, Tone::kNone});
}

std::string ScaleAndOwner(const DetailChoice& choice) {
  std::string caption = "SCALE " + std::string(choice.scale.name);
  if (!choice.applies_to.empty()) caption += ", " + choice.applies_to;
  return caption;
}

}  // namespace

View DetailView(const Bank& bank, const DetailChoice& choice, const TextMetrics& metrics) {
  View view;
  view.name = "detail-" + Lowered(choice.letter);
  view.title = choice.title;
  view.scale = choice.scale;
  view.map = MapOf(choice);
  const double r = choice.radius;
  view.outline = {-r, -r, r, r};
  DrawInsideCircle(view, bank, choice);
  SheetGroup& dimensions = AddViewGroup(view, "dimensions", "Dimensions", 0);
  AddDetailDimensions(dimensions, bank, choice, view.map, metrics);
  const PaperBox drawn = Join(view.outline, Bounds(dimensions));
  SheetGroup& title = AddViewGroup(view, "title", choice.title, 0);
  AddViewTitle(title,
               {.at = {-r, drawn.bottom + kTitleDrop},
                .letter = choice.letter,
                .title = choice.title,
                .caption = ScaleAndOwner(choice)},
               metrics);
  view.box = Bounds(std::span(view.groups));
  return view;
}

void PlaceDetails(Composer& composer) {
  for (const DetailChoice& choice : composer.details()) {
    composer.Put({As(ViewKind::kDetails, DetailView(composer.bank(), choice, composer.metrics()))},
                 Orientation::kLandscape);
  }
}

}  // namespace tillwright
