#include "draw/sheets/composer.h"

#include <algorithm>
#include <utility>

#include "draw/section/side_plane.h"
#include "draw/sheets/sheets_fit.h"
#include "draw/sheets/sheets_marks.h"
#include "draw/sheets/sheets_title.h"
#include "draw/sheets/view_table.h"

namespace tillwright {
namespace {

double ScaleOf(const Fitted& fitted) { return fitted.views.front().scale.paper_per_mm; }

Views Alone(View view) {
  Views views;
  views.push_back(std::move(view));
  return views;
}

}  // namespace

Composer::Composer(const Bank& bank, const DrawOptions& options, const TextMetrics& metrics)
    : bank_(bank),
      options_(options),
      metrics_(metrics),
      paper_(options.paper.value_or(UsualPaper(bank.units))),
      asked_(ParseScale(options.scale)) {
  shown_.hidden_boxes = options.hidden_boxes;
  shown_.all_dimensions = options.all_sizes;
  if (Wants(ViewKind::kDetails)) details_ = ChooseDetails(bank);
}

Drawings Composer::Draw() {
  for (std::size_t i = 0; i < Words<ViewKind>().size(); ++i) {
    const auto kind = static_cast<ViewKind>(i);
    if (Wants(kind) && fault_.empty()) Facts(kind).place(*this);
  }
  Drawings out;
  out.fault = fault_;
  if (!fault_.empty()) return out;
  for (std::size_t i = 0; i < plans_.size(); ++i) {
    for (const View& view : plans_[i].views()) {
      if (view.on_page) out.on_page.push_back(out.views.size());
      out.views.push_back(OwnPage(view, TitleOf(bank_)));
    }
    TitleBlock block = TitleOf(bank_, plans_[i]);
    block.date = options_.date;
    block.sheet = static_cast<int>(i) + 1;
    block.sheets = static_cast<int>(plans_.size());
    out.sheets.push_back(plans_[i].Finished(block, "sheet-" + std::to_string(i + 1), metrics_));
  }
  return out;
}

bool Composer::Wants(ViewKind kind) const {
  const std::vector<ViewKind>& asked = options_.views;
  if (std::ranges::find(asked, kind) != asked.end()) return true;
  if (kind == ViewKind::kSizes) return options_.all_sizes && Wants(ViewKind::kFront);
  return asked.empty();
}

std::optional<std::size_t> Composer::DrawerOfPlan() const {
  for (const DetailChoice& choice : details_) {
    if (choice.parent == ViewKind::kPlan && bank_.spaces[choice.space].HasBox()) {
      return choice.space;
    }
  }
  for (const std::size_t i : ChooseSectionPlane(bank_).spaces) {
    if (bank_.spaces[i].HasBox()) return i;
  }
  return std::nullopt;
}

// --- Room ---------------------------------------------------------------------------------------

std::span<const Scale> Composer::Scales() const {
  return asked_ ? std::span<const Scale>(&*asked_, 1) : ScaleSeries(bank_.units);
}

Room Composer::WholeSheet(Orientation turn) const {
  const PaperBox space = SpaceOn(paper_, turn);
  return {turn, space.Width(), space.Height()};
}

std::array<Room, 2> Composer::Sheets() const {
  return {WholeSheet(Orientation::kLandscape), WholeSheet(Orientation::kPortrait)};
}

Rooms Composer::SharedSheet(int across, int down) const {
  Room room = WholeSheet(Orientation::kLandscape);
  room.width = (room.width - kBetweenViews * (across - 1)) / across;
  room.height = (room.height - kBetweenViews * (down - 1)) / down;
  return {room};
}

// --- Placing ------------------------------------------------------------------------------------

void Composer::ReportTooLarge(std::string_view what) {
  fault_ = "at " + options_.scale + " the " + std::string(what) + " does not fit " +
           std::string(SizeOf(paper_, Orientation::kLandscape).name) + " paper";
}

void Composer::Put(Views views, Orientation turn, std::size_t from) {
  for (std::size_t i = from; i < plans_.size(); ++i) {
    if (plans_[i].Place(views)) return;
  }
  // Only the last: to try all would take long, and what was found there would seldom be worth it.
  if (plans_.size() > from && plans_.back().PlaceByMoving(views)) return;
  plans_.emplace_back(paper_, turn);
  if (!plans_.back().Place(views) && fault_.empty()) {
    fault_ = "a view of the " + CaptionOf(views) + " does not fit the paper";
  }
}

void Composer::PutAlone(std::size_t from, const std::vector<RoomTry>& tries,
                        const ViewMaker& make_view) {
  const auto make = [&](const Scale& scale) { return Alone(make_view(scale)); };
  const std::span<const Scale> series = ScaleSeries(bank_.units);
  std::optional<Fitted> best;
  for (const RoomTry& next : tries) {
    const auto at =
        std::ranges::find_if(series, [&](const Scale& s) { return s.paper_per_mm <= next.most; });
    auto found = LargestFitting({at, series.end()}, next.rooms, make);
    if (found && (!best || ScaleOf(*found) > ScaleOf(*best))) best = std::move(found);
    if (best && ScaleOf(*best) >= next.enough) break;
  }
  if (!best) best = Fitted{make(series.back()), Orientation::kLandscape};
  Put(std::move(best->views), best->orientation, from);
}

bool Composer::PutOnLast(double least, const ViewMaker& make_view) {
  PieceSize size;
  const Rooms sheet = SharedSheet(1, 1);
  for (const Scale& scale : ScaleSeries(bank_.units)) {
    if (scale.paper_per_mm < least) break;
    if (!size.MayFit(scale, sheet)) continue;
    Views views = Alone(make_view(scale));
    size.Learn(views, scale);
    SheetPlan& last = plans_.back();
    if (last.Place(views) || last.PlaceByMoving(views)) return true;
  }
  return false;
}

// --- Marks of details ---------------------------------------------------------------------------

void Composer::AddMarks(View& view, ViewKind kind) const {
  for (const DetailChoice& choice : details_) {
    if (choice.parent != kind || !NeedsDetail(choice, view.scale)) continue;
    AddMark(view, MarkOf(choice, view), metrics_);
  }
}

void Composer::NoteMarks(const View& view, ViewKind kind) {
  std::erase_if(details_, [&](const DetailChoice& choice) {
    return choice.parent == kind && std::ranges::none_of(view.groups, [&](const SheetGroup& group) {
             return group.id == view.name + "-mark-" + choice.letter;
           });
  });
}

bool IsScale(std::string_view text) { return ParseScale(text).has_value(); }

Drawings DrawBank(const Bank& bank, const DrawOptions& options, const TextMetrics& metrics) {
  return Composer(bank, options, metrics).Draw();
}

}  // namespace tillwright
