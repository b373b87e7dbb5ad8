// Everything that is drawn of a bank, view by view and sheet by sheet.
#include <algorithm>
#include <array>

#include "draw/detail/details.h"
#include "draw/overview/overview.h"
#include "draw/part/part_sheets.h"
#include "draw/section/side_plane.h"
#include "draw/sheets/sheets.h"
#include "draw/sheets/sheets_fit.h"
#include "draw/sheets/sheets_marks.h"
#include "draw/sheets/sheets_table.h"
#include "draw/sheets/sheets_title.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, 6> kViews{"front",   "side",  "plan",
                                                 "details", "parts", "overview"};
constexpr std::array<std::string_view, 4> kPapers{"A4", "A3", "Letter", "Tabloid"};
constexpr std::array kPaperKinds{Paper::kA4, Paper::kA3, Paper::kLetter, Paper::kTabloid};

class BankDrawing {
 public:
  BankDrawing(const Bank& bank, const DrawOptions& options, const TextMetrics& metrics)
      : bank_(bank), options_(options), metrics_(metrics), paper_(PaperOf()) {
    shown_.hidden_boxes = options.hidden_boxes;
    shown_.all_dimensions = options.all_sizes;
    if (const std::optional<Scale> scale = ParseScale(options.scale)) {
      asked_ = {*scale};
    }
  }

  Drawings Draw() {
    if (Wants("details")) details_ = ChooseDetails(bank_);
    Elevation();
    if (fault_.empty()) Plan();
    if (fault_.empty()) Tables();
    if (fault_.empty()) Details();
    if (fault_.empty()) Overview();
    if (fault_.empty()) Parts();
    Drawings out;
    out.fault = fault_;
    if (!fault_.empty()) return out;
    for (std::size_t i = 0; i < plans_.size(); ++i) {
      for (const View& view : plans_[i].views()) out.views.push_back(OwnPage(view, TitleOf(bank_)));
      TitleBlock block = TitleOf(bank_, plans_[i]);
      block.date = options_.date;
      block.sheet = static_cast<int>(i) + 1;
      block.sheets = static_cast<int>(plans_.size());
      out.sheets.push_back(plans_[i].Finished(block, "sheet-" + std::to_string(i + 1), metrics_));
    }
    return out;
  }

 private:
  Paper PaperOf() const {
    const auto at = std::ranges::find(kPapers, options_.paper);
    if (at != kPapers.end()) return kPaperKinds[static_cast<std::size_t>(at - kPapers.begin())];
    return bank_.units == Unit::kInch ? Paper::kLetter : Paper::kA4;
  }

  bool Wants(std::string_view view) const {
    return options_.views.empty() ||
           std::ranges::find(options_.views, view) != options_.views.end();
  }

  // The scale that was asked for, or the whole series.
  std::span<const Scale> Scales() const {
    return asked_.empty() ? ScaleSeries(bank_.units) : std::span<const Scale>(asked_);
  }

  // --- Room -------------------------------------------------------------------------------------

  Room WholeSheet(Orientation turn) const {
    const PaperBox space = SpaceOn(paper_, turn);
    return {turn, space.Width(), space.Height()};
  }

  // A sheet either way up.
  std::array<Room, 2> Sheets() const {
    return {WholeSheet(Orientation::kLandscape), WholeSheet(Orientation::kPortrait)};
  }

  // A wide sheet divided so many times along both sides.
  Rooms SharedSheet(int across, int down) const {
    Room room = WholeSheet(Orientation::kLandscape);
    room.width = (room.width - kBetweenViews * (across - 1)) / across;
    room.height = (room.height - kBetweenViews * (down - 1)) / down;
    return {room};
  }

  void ReportTooLarge(std::string_view what) {
    fault_ = "at " + options_.scale + " the " + std::string(what) + " does not fit " +
             std::string(SizeOf(paper_, Orientation::kLandscape).name) + " paper";
  }

  // On the first sheet with room, counted from `from`, else on a new one.
  void Put(Views views, const std::string& kind, Orientation turn, std::size_t from = 0) {
    for (std::size_t i = from; i < plans_.size(); ++i) {
      if (plans_[i].Place(views, kind)) return;
    }
    // Only the last: to try all would take long, and what was found there would seldom be worth it.
    if (plans_.size() > from && plans_.back().PlaceByMoving(views, kind)) return;
    plans_.emplace_back(paper_, turn);
    if (!plans_.back().Place(views, kind) && fault_.empty()) {
      fault_ = "a view of the " + kind + " does not fit the paper";
    }
  }

  // --- Elevation and section --------------------------------------------------------------------

  View SideAt(const Scale& scale) const {
    View side = SideSection(bank_, scale, shown_, metrics_);
    AddMarks(side, DetailParent::kSide);
    return side;
  }

  // The elevation with the section beside it, or what of them is wanted.
  Views PairAt(const Scale& scale, bool heights, std::optional<View> side) const {
    Views views;
    ViewOptions shown = shown_;
    shown.heights = heights;
    if (Wants("front")) {
      views.push_back(FrontElevation(bank_, scale, shown, metrics_));
      AddMarks(views.back(), DetailParent::kFront);
    }
    if (!side) return views;
    if (!views.empty()) {
      Shift(*side, views.front().box.right + kBetweenViews - side->box.left,
            views.front().datum_y - side->datum_y);
      AlignTitles(views.front(), *side);
    }
    views.push_back(*std::move(side));
    return views;
  }

  // The titles of both views on one line, the lower of the two.
  static void AlignTitles(View& a, View& b) {
    const double low = std::max(TitleTop(a), TitleTop(b));
    for (View* view : {&a, &b}) {
      const double drop = low - TitleTop(*view);
      for (SheetGroup& group : view->groups) {
        if (group.id == view->name + "-title") Shift(group, 0, drop);
      }
      view->box.bottom += drop;
    }
  }
  static double TitleTop(const View& view) {
    for (const SheetGroup& group : view.groups) {
      if (group.id == view.name + "-title") return Bounds(group).top;
    }
    return view.box.bottom;
  }

  // Heights beside the elevation are left out where that allows a larger scale.
  std::optional<Fitted> LargestPair() const {
    const std::array<Room, 2> rooms = Sheets();
    PieceSize size;
    for (const Scale& scale : Scales()) {
      if (!size.MayFit(scale, rooms)) continue;
      std::optional<View> side;
      if (Wants("side")) side = SideAt(scale);
      for (const bool heights : {true, false}) {
        Views views = PairAt(scale, heights, side);
        size.Learn(views, scale);
        if (auto pair = FitInto(rooms, std::move(views))) return pair;
      }
    }
    return std::nullopt;
  }

  void Elevation() {
    if (!Wants("front") && !Wants("side")) return;
    std::optional<Fitted> pair = LargestPair();
    if (!pair) return ReportTooLarge(Wants("front") ? "front elevation" : "section");
    for (const View& view : pair->views) {
      CollectPaths(view.groups, paths_);
      NoteMarks(view, DetailParent::kSide, "side");
      NoteMarks(view, DetailParent::kFront, "front");
    }
    Put(std::move(pair->views), KindOfPair(), pair->orientation);
  }

  std::string KindOfPair() const {
    if (!Wants("side")) return "elevation";
    return Wants("front") ? "elevation, section A\u2013A" : "section A\u2013A";
  }

  // --- The other views --------------------------------------------------------------------------

  // Beside it there is room for the table and for details.
  void Plan() {
    if (!Wants("plan")) return;
    const std::optional<std::size_t> drawer = DrawerOfPlan();
    if (!drawer) return;
    const auto make = [&](const Scale& s) {
      Views views;
      views.push_back(PlanSection(bank_, *drawer, s, shown_, metrics_));
      views.back().name = "plan";  // there is but one
      AddMarks(views.back(), DetailParent::kPlan);
      return views;
    };
    std::array<Room, 1> room{WholeSheet(Orientation::kLandscape)};
    constexpr double kTable = 66;
    room[0].width -= kTable;
    std::optional<Fitted> plan = LargestFitting(Scales(), room, make);
    if (!plan) plan = LargestFitting(Scales(), Sheets(), make);
    if (!plan) return ReportTooLarge("plan");
    NoteMarks(plan->views.front(), DetailParent::kPlan, "plan");
    Put(std::move(plan->views), "plan", plan->orientation);
  }

  // The drawer whose corner is drawn in detail, or the highest that section A-A cuts.
  std::optional<std::size_t> DrawerOfPlan() const {
    for (const DetailChoice& choice : details_) {
      if (choice.parent == DetailParent::kPlan && bank_.spaces[choice.space].HasBox()) {
        return choice.space;
      }
    }
    for (const std::size_t i : ChooseSectionPlane(bank_).spaces) {
      if (bank_.spaces[i].HasBox()) return i;
    }
    return std::nullopt;
  }

  void Tables() {
    if (!options_.all_sizes || !Wants("front")) return;
    const Room room = WholeSheet(Orientation::kLandscape);
    for (View& view : TableViews(TableOf(bank_, paths_), room.height, metrics_)) {
      Views views;
      views.push_back(std::move(view));
      Put(std::move(views), "sizes", Orientation::kLandscape);
    }
  }

  // Marks on a view those details that its scale hides.
  void AddMarks(View& view, DetailParent parent) const {
    if (!Wants("details")) return;
    for (const DetailChoice& choice : details_) {
      if (choice.parent != parent || !NeedsDetail(choice, view.scale)) continue;
      AddMark(view, MarkOf(choice, view), metrics_);
    }
  }

  // Remembers which details the view refers to. Without their view, all of them are drawn.
  void NoteMarks(const View& view, DetailParent parent, std::string_view name) {
    if (view.name != name) return;
    std::erase_if(details_, [&](const DetailChoice& choice) {
      return choice.parent == parent &&
             std::ranges::none_of(view.groups, [&](const SheetGroup& group) {
               return group.id == view.name + "-mark-" + choice.letter;
             });
    });
  }

  void Details() {
    if (!Wants("details")) return;
    for (const DetailChoice& choice : details_) {
      Views views;
      views.push_back(DetailView(bank_, choice, metrics_));
      Put(std::move(views), "details", Orientation::kLandscape);
    }
  }

  // The whole piece, and one drawer taken apart: beside the last details if there is room for both,
  // else on paper of their own.
  void Overview() {
    if (!Wants("overview")) return;
    const double modest = ModestScale(bank_.units).paper_per_mm;
    const std::vector<std::string> details{"details"};
    if (!plans_.empty() && plans_.back().kinds() == details) {
      const std::size_t last = plans_.size() - 1;
      SheetPlan before = plans_.back();
      PutOverviews(last, 0.6 * modest);
      if (plans_.size() == last + 1) return;
      plans_.resize(last, before);
      plans_.push_back(std::move(before));
    }
    PutOverviews(plans_.size(), modest / 2);
  }

  // The drawer goes beside the piece at the scale `least` or larger, else alone.
  void PutOverviews(std::size_t from, double least) {
    PutAlone("overview", from, {{SharedSheet(2, 1)}, {SharedSheet(1, 1)}},
             [&](const Scale& s) { return BankOverview(bank_, s, shown_, metrics_); });
    const std::optional<std::size_t> drawer = DrawerOfPlan();
    if (!drawer) return;
    const auto apart = [&](const Scale& s) {
      return DrawerExploded(bank_, *drawer, s, shown_, metrics_);
    };
    if (PutOnLast("overview", least, apart)) return;
    const double modest = ModestScale(bank_.units).paper_per_mm;
    PutAlone("overview", from, {{SharedSheet(1, 1), modest}}, apart);
  }

  // One view at the largest scale at which the last sheet has room for it, `least` or more.
  template <class MakeView>
  bool PutOnLast(const std::string& kind, double least, MakeView make_view) {
    PieceSize size;
    const Rooms sheet = SharedSheet(1, 1);
    for (const Scale& scale : ScaleSeries(bank_.units)) {
      if (scale.paper_per_mm < least) break;
      if (!size.MayFit(scale, sheet)) continue;
      Views views;
      views.push_back(make_view(scale));
      size.Learn(views, scale);
      SheetPlan& last = plans_.back();
      if (last.Place(views, kind) || last.PlaceByMoving(views, kind)) return true;
    }
    return false;
  }

  // Small parts share a sheet; one that would become too small on its share gets more room.
  void Parts() {
    if (!Wants("parts")) return;
    const std::size_t from = plans_.size();
    const double modest = ModestScale(bank_.units).paper_per_mm;
    Rooms halves = SharedSheet(2, 1);
    halves.push_back(SharedSheet(1, 2).front());
    const std::vector<Try> tries{
        {SharedSheet(2, 2), 1, modest}, {halves, modest, modest / 2}, {SharedSheet(1, 1), modest}};
    for (const PartKind& kind : PartKinds(bank_)) {
      PutAlone("parts", from, tries,
               [&](const Scale& s) { return PartView(bank_, kind, s, shown_, metrics_); });
    }
  }

  // Rooms for a view, the largest scale to try there, and the scale that needs no larger room.
  struct Try {
    Rooms rooms;
    double most = 1;
    double enough = 0;
  };

  // One view, in the first rooms that allow a scale that is enough, else in those that allow the
  // largest.
  template <class MakeView>
  void PutAlone(const std::string& kind, std::size_t from, const std::vector<Try>& tries,
                MakeView make_view) {
    const auto make = [&](const Scale& scale) {
      Views views;
      views.push_back(make_view(scale));
      return views;
    };
    const std::span<const Scale> series = ScaleSeries(bank_.units);
    std::optional<Fitted> best;
    for (const Try& next : tries) {
      const auto at =
          std::ranges::find_if(series, [&](const Scale& s) { return s.paper_per_mm <= next.most; });
      auto found = LargestFitting({at, series.end()}, next.rooms, make);
      if (found && (!best || ScaleOf(*found) > ScaleOf(*best))) best = std::move(found);
      if (best && ScaleOf(*best) >= next.enough) break;
    }
    if (!best) best = Fitted{make(series.back()), Orientation::kLandscape};
    Put(std::move(best->views), kind, best->orientation, from);
  }
  static double ScaleOf(const Fitted& fitted) { return fitted.views.front().scale.paper_per_mm; }

  const Bank& bank_;
  const DrawOptions& options_;
  const TextMetrics& metrics_;
  Paper paper_;
  ViewOptions shown_;
  std::vector<Scale> asked_;
  std::vector<DetailChoice> details_;
  PathSet paths_;  // of the sizes that elevation and section show
  std::vector<SheetPlan> plans_;
  std::string fault_;
};

}  // namespace

std::span<const std::string_view> ViewNames() { return kViews; }
std::span<const std::string_view> PaperNames() { return kPapers; }

bool IsScale(std::string_view text) { return ParseScale(text).has_value(); }

Drawings DrawBank(const Bank& bank, const DrawOptions& options, const TextMetrics& metrics) {
  return BankDrawing(bank, options, metrics).Draw();
}

}  // namespace tillwright
