#include <array>
#include <optional>
#include <utility>

#include "draw/sheets/composer.h"
#include "draw/sheets/sheets_fit.h"
#include "draw/sheets/view_table.h"
#include "draw/views.h"

namespace tillwright {

// Beside it there is room for the table and for details, if it fits so.
void PlacePlan(Composer& composer) {
  const std::optional<std::size_t> drawer = composer.DrawerOfPlan();
  if (!drawer) return;
  const auto make = [&](const Scale& scale) {
    Views views;
    views.push_back(As(ViewKind::kPlan, PlanSection(composer.bank(), *drawer, scale,
                                                    composer.shown(), composer.metrics())));
    views.back().name = "plan";  // there is but one
    composer.AddMarks(views.back(), ViewKind::kPlan);
    return views;
  };
  std::array<Room, 1> room{composer.WholeSheet(Orientation::kLandscape)};
  constexpr double kTable = 66;
  room[0].width -= kTable;
  std::optional<Fitted> plan = LargestFitting(composer.Scales(), room, make);
  if (!plan) plan = LargestFitting(composer.Scales(), composer.Sheets(), make);
  if (!plan) return composer.ReportTooLarge("plan");
  composer.NoteMarks(plan->views.front(), ViewKind::kPlan);
  composer.Put(std::move(plan->views), plan->orientation);
}

}  // namespace tillwright
