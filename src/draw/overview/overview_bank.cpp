#include <algorithm>
#include <cmath>

#include "bank/part_roles.h"
#include "draw/overview/overview.h"
#include "draw/overview/overview_parts.h"
#include "sheet/annotation.h"
#include "sheet/rich_text.h"
#include "sheet/solid_ink.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

// Banks of more drawers are drawn shut: nothing could be told apart, and ordering takes long.
constexpr std::size_t kMostOpen = 150;

// The shares of the shortest box's depth, in thousandths, that the highest and the lowest drawer
// stand out.
constexpr std::int64_t kLeastOut = 180;
constexpr std::int64_t kMostOut = 620;

struct Ink {
  Cuboid box;
  Pen pen = Pen::kThin;
  int space = -1;  // the front of Bank::spaces[space]
  std::string id, title;
};

class BankDrawing {
 public:
  BankDrawing(const Bank& bank, const Scale& scale, const TextMetrics& metrics)
      : bank_(bank),
        assembly_(Assemble(bank)),
        scale_(scale),
        metrics_(metrics),
        axes_(scale),
        picture_(axes_) {}

  View Draw() {
    view_.name = "overview";
    view_.title = "OVERVIEW";
    view_.scale = scale_;
    view_.map = {{0, 0}, scale_};
    view_.datum_y = 0;
    MeasureOut();
    Collect();
    // What stands out of the case hides what is inside, whatever their order within: cut at z = 0.
    AddLayer(inside_, true);
    if (!bank_.casework) AddOpening();
    AddLayer(outside_, false);
    view_.outline = picture_.Covered();
    AddNames();
    AddTitle();
    view_.box = Bounds(std::span(view_.groups));
    return std::move(view_);
  }

 private:
  SheetGroup& Group(const std::string& id, std::string title, int depth) {
    return AddViewGroup(view_, id, std::move(title), depth);
  }

  void MeasureOut() {
    open_ = bank_.spaces.size() <= kMostOpen;
    for (const Space& space : bank_.spaces) {
      if (!space.HasBox()) continue;
      const bool first = shortest_.IsZero();
      shortest_ = first ? space.box.depth : Min(shortest_, space.box.depth);
      top_ = first ? space.front.rect.Top() : Max(top_, space.front.rect.Top());
      low_ = first ? space.front.rect.Top() : Min(low_, space.front.rect.Top());
    }
  }

  // How far a drawer stands out: the lower its upper edge, the further, so that all boxes are seen.
  Length OutOf(const Space& space) const {
    if (!open_) return {};
    constexpr std::int64_t kSteps = 1000;
    const std::int64_t range = (top_ - low_).picometers();
    const std::int64_t down = (top_ - space.front.rect.Top()).picometers();
    const std::int64_t share = range == 0 ? kSteps / 2 : down / (range / kSteps + 1);
    const std::int64_t out = kLeastOut + (kMostOut - kLeastOut) * share / kSteps;
    return PartBelow(shortest_, 1000) * out;
  }

  // --- Solids -----------------------------------------------------------------------------------

  void Collect() {
    for (const SolidPart& part : CaseSolids(assembly_)) {
      inside_.push_back({part.box, Pen::kFront, -1, "case", std::string(ToText(part.piece->role))});
    }
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Space& space = bank_.spaces[i];
      if (!space.HasFront()) continue;
      if (space.HasBox() && open_) {
        AddDrawer(space, static_cast<int>(i));
      } else {
        Put(FrontSolid(assembly_, i), Length(), space, static_cast<int>(i));
      }
    }
  }

  void AddDrawer(const Space& space, int index) {
    const Length out = OutOf(space);
    for (const SolidPart& part : GluedSolids(assembly_, static_cast<std::size_t>(index))) {
      Put(part, out, space, index);
    }
  }

  void Put(const SolidPart& part, Length out, const Space& space, int index) {
    const bool front = Facts(part.piece->role).group == PartGroup::kFront;
    const std::string id = ToText(space.id);
    Ink ink{part.box, front ? Pen::kFront : Pen::kThin, front ? index : -1,
            (front ? "front-" : "box-") + id, id + " " + std::string(ToText(part.piece->role))};
    ink.box.at.z -= out;
    const CuboidHalves halves = CutAt(ink.box, Length());
    if (!halves.rear.depth.IsZero()) {
      ink.box = halves.rear;
      inside_.push_back(ink);
    }
    if (!halves.front.depth.IsZero()) {
      ink.box = halves.front;
      outside_.push_back(ink);
    }
  }

  void AddLayer(const std::vector<Ink>& layer, bool inside) {
    std::vector<Cuboid> boxes;
    for (const Ink& ink : layer) boxes.push_back(ink.box);
    std::vector<std::size_t> order(boxes.size());
    if (open_) {
      order = DepthOrder(boxes, axes_);
    } else {
      for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    }
    for (const std::size_t i : order) {
      const Ink& ink = layer[i];
      const std::size_t place = picture_.Add(ink.box);
      if (ink.space >= 0) fronts_.push_back({ink.space, place, inside});
      AddCuboid(Group(ink.id, ink.title, 0), ink.box, axes_, ink.pen);
    }
  }

  // Without a case: the edges of the opening, as of a neighboring thing.
  void AddOpening() {
    SheetGroup& group = Group("opening", "Opening", 0);
    const Length w = bank_.opening_width;
    const Length h = bank_.opening_height;
    const Length d = bank_.opening_depth;
    Polyline rim{{axes_.At({{}, {}, {}}), axes_.At({w, {}, {}}), axes_.At({w, h, {}}),
                  axes_.At({{}, h, {}})},
                 true,
                 Pen::kMoved,
                 Tone::kNone};
    for (std::size_t i = 0; i < rim.points.size(); ++i) {
      opening_lines_.push_back({rim.points[i], rim.points[(i + 1) % rim.points.size()]});
    }
    group.primitives.emplace_back(std::move(rim));
    for (const Place3& corner : {Place3{{}, h, {}}, Place3{w, h, {}}, Place3{w, {}, {}}}) {
      group.primitives.emplace_back(
          LineOf(axes_.At(corner), axes_.At({corner.x, corner.y, d}), Pen::kMoved));
    }
    group.primitives.emplace_back(Polyline{
        {axes_.At({{}, h, d}), axes_.At({w, h, d}), axes_.At({w, {}, d})}, false, Pen::kMoved, {}});
    opening_box_ = Bounds(group);
  }

  // --- Names ------------------------------------------------------------------------------------

  struct FrontPlace {
    int space = 0;
    std::size_t box = 0;  // in the picture
    bool inside = false;  // the opening, whose rim is drawn over it
  };

  // On the fronts where they fit; else beside the picture, every so many when there are too many.
  void AddNames() {
    SheetGroup& group = Group("names", "Names of the drawers", 0);
    std::vector<FrontPlace> beside;
    for (const FrontPlace& front : fronts_) {
      if (!NameOnFront(group, front)) beside.push_back(front);
    }
    std::ranges::sort(beside, {}, &FrontPlace::space);
    std::vector<PartNote> notes;
    for (const FrontPlace& front : beside) {
      const PaperRing face = axes_.Face(picture_.boxes()[front.box], CuboidFace::kFront);
      const bool left = face[0].x + face[1].x < 2 * view_.outline.Center().x;
      const auto tip = picture_.PointInSight(front.box, left ? 0.08 : 0.92);
      if (tip) notes.push_back({*tip, LongName(front), "", "", left});
    }
    AddPartNotes(group, Thinned(std::move(notes)), Join(view_.outline, opening_box_), metrics_);
  }

  const Space& SpaceOf(const FrontPlace& front) const {
    return bank_.spaces[static_cast<std::size_t>(front.space)];
  }
  std::string LongName(const FrontPlace& front) const {
    const Space& space = SpaceOf(front);
    return space.name.empty() ? ToText(space.id) : ToText(space.id) + "  " + space.name;
  }

  // As many notes as find room beside the picture.
  std::vector<PartNote> Thinned(std::vector<PartNote> notes) {
    constexpr double kPitch = 4.2;  // mm
    const double room = std::max(view_.outline.Height() * 1.1, 70.0);
    const auto most = static_cast<std::size_t>(room / kPitch);
    std::size_t in_a_column = 0;
    for (const bool left : {false, true}) {
      const auto count = std::ranges::count(notes, left, &PartNote::left);
      in_a_column = std::max(in_a_column, static_cast<std::size_t>(count));
    }
    named_every_ = in_a_column / most + 1;
    if (named_every_ == 1) return notes;
    std::vector<PartNote> kept;
    for (std::size_t i = 0; i < notes.size(); i += named_every_) {
      kept.push_back(std::move(notes[i]));
    }
    return kept;
  }

  bool NameOnFront(SheetGroup& group, const FrontPlace& front) const {
    const Space& space = SpaceOf(front);
    const PaperPoint middle = MiddleOf(front);
    LabelStyle bold;
    bold.weight = TextWeight::kBold;
    bold.anchor = TextAnchor::kCenter;
    for (const double cap : {2.6, 2.0, 1.6}) {
      bold.cap_height = cap;
      const Label id = MakePlainLabel(metrics_, ToText(space.id), bold, middle);
      if (!picture_.HasRoom(front.box, id.box) || OnOpening(front, id.box)) continue;
      if (!NameBelow(group, front, bold)) group.primitives.emplace_back(id);
      return true;
    }
    return false;
  }

  // The id and, below it, the drawer's name, if there is one and room for both.
  bool NameBelow(SheetGroup& group, const FrontPlace& front, const LabelStyle& bold) const {
    const Space& space = SpaceOf(front);
    if (space.name.empty()) return false;
    const PaperPoint middle = MiddleOf(front);
    LabelStyle plain;
    plain.cap_height = 1.8;
    plain.anchor = TextAnchor::kCenter;
    const Label id = MakePlainLabel(metrics_, ToText(space.id), bold, {middle.x, middle.y - 2.2});
    const Label name = MakePlainLabel(metrics_, space.name, plain, {middle.x, middle.y + 2.2});
    const PaperBox both = Join(id.box, name.box);
    if (!picture_.HasRoom(front.box, both) || OnOpening(front, both)) return false;
    group.primitives.emplace_back(id);
    group.primitives.emplace_back(name);
    return true;
  }

  // Whether the rim of the opening, which is drawn over fronts inside it, comes near a label.
  bool OnOpening(const FrontPlace& front, const PaperBox& box) const {
    constexpr double kClear = 0.6;  // mm
    return front.inside && std::ranges::any_of(opening_lines_, [&](const PaperSegment& line) {
             return Crosses(line, Grow(box, kClear));
           });
  }

  // Whether a segment enters a box: what is left of it after cutting at each of the four sides.
  static bool Crosses(const PaperSegment& line, const PaperBox& box) {
    double enters = 0;
    double leaves = 1;
    const auto cut = [&](double from, double to, double low, double high) {
      const double run = to - from;
      if (std::abs(run) < 1e-9) return from >= low && from <= high;
      const double a = (low - from) / run;
      const double b = (high - from) / run;
      enters = std::max(enters, std::min(a, b));
      leaves = std::min(leaves, std::max(a, b));
      return true;
    };
    return cut(line.from.x, line.to.x, box.left, box.right) &&
           cut(line.from.y, line.to.y, box.top, box.bottom) && enters <= leaves;
  }

  PaperPoint MiddleOf(const FrontPlace& front) const {
    const PaperRing face = axes_.Face(picture_.boxes()[front.box], CuboidFace::kFront);
    return {(face[0].x + face[2].x) / 2, (face[0].y + face[2].y) / 2};
  }

  void AddTitle() {
    const PaperBox below = Bounds(std::span(view_.groups));
    std::string caption = "SCALE " + std::string(scale_.name) + ", DEPTHS HALVED";
    if (named_every_ > 1) caption += ", 1 IN " + std::to_string(named_every_) + " NAMED";
    AddViewTitle(Group("title", view_.title, 0),
                 {.at = {below.left, below.bottom + 9}, .title = view_.title, .caption = caption},
                 metrics_);
  }

  const Bank& bank_;
  Assembly assembly_;
  Scale scale_;
  const TextMetrics& metrics_;
  Axonometry axes_;
  SolidPicture picture_;
  bool open_ = true;
  Length shortest_, top_, low_;
  std::vector<Ink> inside_, outside_;
  std::vector<FrontPlace> fronts_;
  std::vector<PaperSegment> opening_lines_;
  PaperBox opening_box_ = EmptyBox();
  std::size_t named_every_ = 1;
  View view_;
};

}  // namespace

View BankOverview(const Bank& bank, const Scale& scale, const ViewOptions& /*options*/,
                  const TextMetrics& metrics) {
  return BankDrawing(bank, scale, metrics).Draw();
}

}  // namespace tillwright
