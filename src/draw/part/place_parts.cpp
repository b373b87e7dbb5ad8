#include "draw/part/part_sheets.h"
#include "draw/sheets/composer.h"
#include "draw/sheets/view_table.h"

namespace tillwright {

// Small parts share a sheet; one that would become too small on its share gets more room.
void PlaceParts(Composer& composer) {
  const std::size_t from = composer.plans().size();
  const double modest = ModestScale(composer.bank().units).paper_per_mm;
  Rooms halves = composer.SharedSheet(2, 1);
  halves.push_back(composer.SharedSheet(1, 2).front());
  const std::vector<RoomTry> tries{{composer.SharedSheet(2, 2), 1, modest},
                                   {halves, modest, modest / 2},
                                   {composer.SharedSheet(1, 1), modest}};
  for (const PartKind& kind : PartKinds(composer.bank())) {
    composer.PutAlone(from, tries, [&](const Scale& scale) {
      return As(ViewKind::kParts,
                PartView(composer.bank(), kind, scale, composer.shown(), composer.metrics()));
    });
  }
}

}  // namespace tillwright
