// Everything that is drawn of a bank, view by view and sheet by sheet.
#include <algorithm>
#include <array>
#include <charconv>

#include "draw/part_sheets.h"
#include "draw/sheets.h"
#include "draw/sheets_table.h"
#include "draw/side_plane.h"
#include "draw/view_tools.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, 6> kViews{"front",   "side",  "plan",
                                                 "details", "parts", "overview"};
constexpr std::array<std::string_view, 4> kPapers{"A4", "A3", "Letter", "Tabloid"};
constexpr std::array kPaperKinds{Paper::kA4, Paper::kA3, Paper::kLetter, Paper::kTabloid};

constexpr double kPairGap = 10;  // mm between elevation and section

// A whole number from 1 to 10000, or 0.
int ScaleNumber(std::string_view text) {
  int number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  const bool whole = error == std::errc() && end == text.data() + text.size();
  return whole && number >= 1 && number <= 10000 ? number : 0;
}

// The scale that a text names. `text` must outlive it.
std::optional<Scale> ParseScale(std::string_view text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos) return std::nullopt;
  const int paper = ScaleNumber(text.substr(0, colon));
  const int piece = ScaleNumber(text.substr(colon + 1));
  if (paper == 0 || piece == 0) return std::nullopt;
  return Scale{static_cast<double>(paper) / piece, text};
}

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
    Elevation();
    if (fault_.empty()) Plan();
    if (fault_.empty()) Parts();
    Drawings out;
    out.fault = fault_;
    if (!fault_.empty()) return out;
    for (std::size_t i = 0; i < plans_.size(); ++i) {
      for (const View& view : plans_[i].views()) out.views.push_back(OwnPage(view, Title()));
      out.sheets.push_back(plans_[i].Finished(BlockOf(i), "sheet-" + std::to_string(i + 1), metrics_));
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
    return options_.views.empty() || std::ranges::find(options_.views, view) != options_.views.end();
  }

  std::string Title() const { return bank_.title.empty() ? "Drawer bank" : bank_.title; }

  // The scale that was asked for, or the whole series.
  std::span<const Scale> Scales() const {
    return asked_.empty() ? ScaleSeries(bank_.units) : std::span<const Scale>(asked_);
  }

  // --- Scales that fit --------------------------------------------------------------------------

  using Views = std::vector<View>;
  struct Fitted {
    Views views;
    Orientation orientation = Orientation::kLandscape;
  };

  static PaperBox Covered(const Views& views) {
    PaperBox box = EmptyBox();
    for (const View& view : views) box = Join(box, view.box);
    return box;
  }
  static PaperBox Outline(const Views& views) {
    PaperBox box = EmptyBox();
    for (const View& view : views) box = Join(box, view.outline);
    return box;
  }

  static bool FitsIn(const PaperBox& box, const PaperBox& space) {
    return box.Width() <= space.Width() && box.Height() <= space.Height();
  }

  // Builds at scales from the largest down until the views fit one of the spaces. What the piece
  // itself measures at one scale tells which larger ones need not be tried.
  template <class Make>
  std::optional<Fitted> Largest(std::span<const Scale> scales, Make make,
                                std::initializer_list<Orientation> turns, double share) const {
    double per_scale_width = 0;
    double per_scale_height = 0;
    for (const Scale& scale : scales) {
      const PaperBox least{0, 0, per_scale_width * scale.paper_per_mm,
                           per_scale_height * scale.paper_per_mm};
      const auto may_fit = [&](Orientation turn) { return FitsIn(least, SpaceFor(turn, share)); };
      if (std::ranges::none_of(turns, may_fit)) continue;
      Views views = make(scale);
      const PaperBox box = Covered(views);
      for (const Orientation turn : turns) {
        if (FitsIn(box, SpaceFor(turn, share))) return Fitted{std::move(views), turn};
      }
      const PaperBox outline = Outline(views);
      per_scale_width = outline.Width() / scale.paper_per_mm;
      per_scale_height = outline.Height() / scale.paper_per_mm;
    }
    return std::nullopt;
  }

  // The space for views on a sheet, or a share of it along both sides.
  PaperBox SpaceFor(Orientation turn, double share) const {
    PaperBox space = SpaceOn(paper_, turn);
    if (share >= 1) return space;
    space.right = space.left + (space.Width() - 8) * share;
    space.bottom = space.top + (space.Height() - 8) * share;
    return space;
  }

  void ReportTooLarge(std::string_view what) {
    fault_ = "at " + options_.scale + " the " + std::string(what) + " does not fit " +
             std::string(SizeOf(paper_, Orientation::kLandscape).name) + " paper";
  }

  // --- Elevation and section --------------------------------------------------------------------

  Views PairAt(const Scale& scale) const {
    Views views;
    if (Wants("front")) views.push_back(FrontElevation(bank_, scale, shown_, metrics_));
    if (!Wants("side")) return views;
    View side = SideSection(bank_, scale, shown_, metrics_);
    if (!views.empty()) {
      Shift(side, views.front().box.right + kPairGap - side.box.left,
            views.front().datum_y - side.datum_y);
      AlignTitles(views.front(), side);
    }
    views.push_back(std::move(side));
    return views;
  }

  // The titles of both views on one line, the lower of the two.
  static void AlignTitles(View& a, View& b) {
    const double low = std::max(a.box.bottom, b.box.bottom);
    for (View* view : {&a, &b}) {
      Shift(view->groups.back(), 0, low - view->box.bottom);
      view->box.bottom = low;
    }
  }

  void Elevation() {
    if (!Wants("front") && !Wants("side")) return;
    std::optional<Fitted> pair =
        Largest(Scales(), [this](const Scale& s) { return PairAt(s); },
                {Orientation::kLandscape, Orientation::kPortrait}, 1);
    if (!pair) return ReportTooLarge(Wants("front") ? "front elevation" : "section");
    scale_ = pair->views.front().scale;
    PathSet paths;
    for (const View& view : pair->views) CollectPaths(view.groups, paths);
    plans_.emplace_back(paper_, pair->orientation);
    plans_.back().Place(pair->views, KindOfPair());
    if (options_.all_sizes && Wants("front")) Tables(paths, pair->orientation);
  }

  std::string KindOfPair() const {
    if (!Wants("side")) return "front elevation";
    return Wants("front") ? "front elevation, section A\u2013A" : "section A\u2013A";
  }

  void Tables(const PathSet& paths, Orientation turn) {
    const double height = SpaceOn(paper_, turn).Height();
    for (View& view : TableViews(TableOf(bank_, paths), height, metrics_)) {
      Put({std::move(view)}, "sizes", turn);
    }
  }

  // On the first sheet with room, else on a new one.
  void Put(Views views, const std::string& kind, Orientation turn, std::size_t from = 0) {
    for (std::size_t i = from; i < plans_.size(); ++i) {
      if (plans_[i].Place(views, kind)) return;
    }
    plans_.emplace_back(paper_, turn);
    if (!plans_.back().Place(views, kind)) fault_ = "a view of the " + kind + " does not fit the paper";
  }

  // --- The other views --------------------------------------------------------------------------

  void Plan() {
    if (!Wants("plan")) return;
    const SectionPlane plane = ChooseSectionPlane(bank_);
    const auto drawer = std::ranges::find_if(
        plane.spaces, [&](std::size_t i) { return bank_.spaces[i].HasBox(); });
    if (drawer == plane.spaces.end()) return;
    std::optional<Fitted> plan = Largest(
        Scales(), [&](const Scale& s) { return Views{PlanSection(bank_, *drawer, s, shown_, metrics_)}; },
        {Orientation::kLandscape, Orientation::kPortrait}, 1);
    if (!plan) return ReportTooLarge("plan");
    Put(std::move(plan->views), "plan", plan->orientation);
  }

  void Parts() {
    if (!Wants("parts")) return;
    const std::size_t from = plans_.size();
    for (const PartKind& kind : PartKinds(bank_)) {
      const auto make = [&](const Scale& s) { return Views{PartView(bank_, kind, s, shown_, metrics_)}; };
      const std::span<const Scale> series = ScaleSeries(bank_.units);
      std::optional<Fitted> part = Largest(series, make, {Orientation::kLandscape}, 0.5);
      if (!part) part = Largest(series, make, {Orientation::kLandscape}, 1);
      if (!part) part = Fitted{make(series.back()), Orientation::kLandscape};
      Put(std::move(part->views), "parts", Orientation::kLandscape, from);
    }
  }

  // --- Title blocks -----------------------------------------------------------------------------

  TitleBlock BlockOf(std::size_t i) const {
    TitleBlock block;
    block.title = Title();
    block.view = Joined(plans_[i].kinds());
    block.view[0] = static_cast<char>(block.view[0] - 'a' + 'A');
    block.scale = ScalesOn(plans_[i]);
    block.units = bank_.units == Unit::kInch ? "inch" : "millimeter";
    block.material = Materials();
    block.date = options_.date;
    block.sheet = static_cast<int>(i) + 1;
    block.sheets = static_cast<int>(plans_.size());
    block.projection = Projection::kThirdAngle;
    return block;
  }

  static std::string Joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) {
      if (!text.empty()) text += ", ";
      text += word;
    }
    return text;
  }

  static std::string ScalesOn(const SheetPlan& plan) {
    std::vector<std::string> names;
    for (const View& view : plan.views()) {
      std::string name(view.scale.name);
      if (!name.empty() && std::ranges::find(names, name) == names.end()) names.push_back(name);
    }
    return names.size() > 3 ? "as noted" : Joined(names);
  }

  // The fronts' materials, as far as they are told.
  std::string Materials() const {
    std::vector<std::string> names;
    for (const Space& space : bank_.spaces) {
      const std::string& name = space.front.material;
      if (!space.HasFront() || name.empty() || names.size() > 3) continue;
      if (std::ranges::find(names, name) == names.end()) names.push_back(name);
    }
    return names.empty() ? std::string() : "Fronts " + Joined(names);
  }

  const Bank& bank_;
  const DrawOptions& options_;
  const TextMetrics& metrics_;
  Paper paper_;
  ViewOptions shown_;
  std::vector<Scale> asked_;
  Scale scale_;
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
