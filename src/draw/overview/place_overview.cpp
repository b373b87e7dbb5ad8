#include <optional>
#include <string>
#include <utility>

#include "draw/overview/overview.h"
#include "draw/sheets/composer.h"
#include "draw/sheets/view_table.h"

namespace tillwright {
namespace {

// The drawer goes beside the piece at the scale `least` or larger, else alone.
void PutOverviews(Composer& composer, std::size_t from, double least) {
  const Bank& bank = composer.bank();
  composer.PutAlone(
      from, {{composer.SharedSheet(2, 1)}, {composer.SharedSheet(1, 1)}}, [&](const Scale& s) {
        return As(ViewKind::kOverview, BankOverview(bank, s, composer.shown(), composer.metrics()));
      });
  const std::optional<std::size_t> drawer = composer.DrawerOfPlan();
  if (!drawer) return;
  const auto apart = [&](const Scale& s) {
    return As(ViewKind::kOverview,
              DrawerExploded(bank, *drawer, s, composer.shown(), composer.metrics()));
  };
  if (composer.PutOnLast(least, apart)) return;
  const double modest = ModestScale(bank.units).paper_per_mm;
  composer.PutAlone(from, {{composer.SharedSheet(1, 1), modest}}, apart);
}

}  // namespace

// Beside the last details if there is room for both there, else on paper of their own.
void PlaceOverviews(Composer& composer) {
  const double modest = ModestScale(composer.bank().units).paper_per_mm;
  std::vector<SheetPlan>& plans = composer.plans();
  const std::vector<std::string> details{std::string(Facts(ViewKind::kDetails).caption)};
  if (!plans.empty() && plans.back().captions() == details) {
    const std::size_t last = plans.size() - 1;
    SheetPlan before = plans.back();
    PutOverviews(composer, last, 0.6 * modest);
    if (plans.size() == last + 1) return;
    plans.resize(last, before);
    plans.push_back(std::move(before));
  }
  PutOverviews(composer, plans.size(), modest / 2);
}

}  // namespace tillwright
