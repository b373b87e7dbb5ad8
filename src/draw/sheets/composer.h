// Everything that is drawn of a bank on its way to sheets, and what the views of it share: the room
// there is, the scales, the marks of details.
#ifndef TILLWRIGHT_DRAW_SHEETS_COMPOSER_H_
#define TILLWRIGHT_DRAW_SHEETS_COMPOSER_H_

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "draw/detail/details.h"
#include "draw/sheets/sheets.h"
#include "draw/views.h"
#include "sheet/view_tools.h"
#include "tillwright/draw.h"

namespace tillwright {

// Rooms for a view, the largest scale to try there, and the scale that needs no larger room.
struct RoomTry {
  Rooms rooms;
  double most = 1;
  double enough = 0;
};

class Composer {
 public:
  Composer(const Bank& bank, const DrawOptions& options, const TextMetrics& metrics);

  // Every view that is wanted, in the order of their table.
  Drawings Draw();

  [[nodiscard]] const Bank& bank() const { return bank_; }
  [[nodiscard]] const ViewOptions& shown() const { return shown_; }
  [[nodiscard]] const TextMetrics& metrics() const { return metrics_; }
  [[nodiscard]] bool Wants(ViewKind kind) const;
  // The drawer whose corner is drawn in detail, or the highest that section A-A cuts.
  [[nodiscard]] std::optional<std::size_t> DrawerOfPlan() const;

  // The scale that was asked for, or the whole series.
  [[nodiscard]] std::span<const Scale> Scales() const;
  [[nodiscard]] Room WholeSheet(Orientation turn) const;
  // A sheet either way up.
  [[nodiscard]] std::array<Room, 2> Sheets() const;
  // A wide sheet divided so many times along both sides.
  [[nodiscard]] Rooms SharedSheet(int across, int down) const;

  // Views that stand together: on the first sheet with room, counted from `from`, else on a new
  // one.
  void Put(Views views, Orientation turn, std::size_t from = 0);
  // One view, in the first rooms that allow a scale that is enough, else in those that allow the
  // largest.
  void PutAlone(std::size_t from, const std::vector<RoomTry>& tries, const ViewMaker& make_view);
  // One view at the largest scale at which the last sheet has room for it, `least` or more.
  bool PutOnLast(double least, const ViewMaker& make_view);
  void ReportTooLarge(std::string_view what);
  std::vector<SheetPlan>& plans() { return plans_; }

  // The details that no view has shown large enough so far.
  [[nodiscard]] const std::vector<DetailChoice>& details() const { return details_; }
  // Marks on a view of this kind those details that its scale hides.
  void AddMarks(View& view, ViewKind kind) const;
  // Remembers which details the view refers to. Without their view, all of them are drawn.
  void NoteMarks(const View& view, ViewKind kind);

  // The paths of the sizes that elevation and section show.
  PathSet& shown_paths() { return paths_; }

 private:
  const Bank& bank_;
  const DrawOptions& options_;
  const TextMetrics& metrics_;
  Paper paper_;
  ViewOptions shown_;
  std::optional<Scale> asked_;
  std::vector<DetailChoice> details_;
  PathSet paths_;
  std::vector<SheetPlan> plans_;
  std::string fault_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_COMPOSER_H_
