// Elevation and section side by side, at one scale and on one floor.
#include <algorithm>
#include <optional>
#include <utility>

#include "draw/sheets/composer.h"
#include "draw/sheets/sheets_fit.h"
#include "draw/sheets/view_table.h"
#include "draw/views.h"

namespace tillwright {
namespace {

bool IsTitle(const View& view, const SheetGroup& group) { return group.id == view.name + "-title"; }

double TitleTop(const View& view) {
  for (const SheetGroup& group : view.groups) {
    if (IsTitle(view, group)) return Bounds(group).top;
  }
  return view.box.bottom;
}

// The titles of both views on one line, the lower of the two.
void AlignTitles(View& a, View& b) {
  const double low = std::max(TitleTop(a), TitleTop(b));
  for (View* view : {&a, &b}) {
    const double drop = low - TitleTop(*view);
    for (SheetGroup& group : view->groups) {
      if (IsTitle(*view, group)) Shift(group, 0, drop);
    }
    view->box.bottom += drop;
  }
}

View SideAt(const Composer& composer, const Scale& scale) {
  View side = As(ViewKind::kSide,
                 SideSection(composer.bank(), scale, composer.shown(), composer.metrics()));
  composer.AddMarks(side, ViewKind::kSide);
  return side;
}

// The elevation, with the section beside it if there is one.
Views PairAt(const Composer& composer, const Scale& scale, bool heights, std::optional<View> side) {
  ViewOptions shown = composer.shown();
  shown.heights = heights;
  Views views;
  views.push_back(
      As(ViewKind::kFront, FrontElevation(composer.bank(), scale, shown, composer.metrics())));
  View& front = views.front();
  composer.AddMarks(front, ViewKind::kFront);
  if (!side) return views;
  Shift(*side, front.box.right + kBetweenViews - side->box.left, front.datum_y - side->datum_y);
  AlignTitles(front, *side);
  views.push_back(*std::move(side));
  return views;
}

// Heights beside the elevation are left out where that allows a larger scale.
std::optional<Fitted> LargestPair(const Composer& composer) {
  const std::array<Room, 2> rooms = composer.Sheets();
  PieceSize size;
  for (const Scale& scale : composer.Scales()) {
    if (!size.MayFit(scale, rooms)) continue;
    std::optional<View> side;
    if (composer.Wants(ViewKind::kSide)) side = SideAt(composer, scale);
    for (const bool heights : {true, false}) {
      Views views = PairAt(composer, scale, heights, side);
      size.Learn(views, scale);
      if (auto pair = FitInto(rooms, std::move(views))) return pair;
    }
  }
  return std::nullopt;
}

void Put(Composer& composer, Fitted fitted) {
  for (const View& view : fitted.views) CollectPaths(view.groups, composer.shown_paths());
  composer.Put(std::move(fitted.views), fitted.orientation);
}

}  // namespace

void PlaceElevation(Composer& composer) {
  std::optional<Fitted> pair = LargestPair(composer);
  if (!pair) return composer.ReportTooLarge("front elevation");
  composer.NoteMarks(pair->views.front(), ViewKind::kFront);
  if (pair->views.size() > 1) composer.NoteMarks(pair->views.back(), ViewKind::kSide);
  Put(composer, *std::move(pair));
}

void PlaceSection(Composer& composer) {
  if (composer.Wants(ViewKind::kFront)) return;  // it stands beside the elevation
  const auto make = [&](const Scale& scale) { return Views{SideAt(composer, scale)}; };
  std::optional<Fitted> side = LargestFitting(composer.Scales(), composer.Sheets(), make);
  if (!side) return composer.ReportTooLarge("section");
  composer.NoteMarks(side->views.front(), ViewKind::kSide);
  Put(composer, *std::move(side));
}

}  // namespace tillwright
