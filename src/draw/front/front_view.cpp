// The front elevation.
#include <algorithm>
#include <cmath>
#include <map>

#include "draw/bank/case_joints.h"
#include "draw/bank/case_pieces.h"
#include "draw/front/front_labels.h"
#include "draw/front/front_sizes.h"
#include "draw/views.h"
#include "sheet/rich_text.h"
#include "sheet/view_tools.h"

namespace tillwright {
namespace {

constexpr double kLeastOverlay = 1.2;  // mm on paper; below it, hidden edges would run together

class FrontDrawing {
 public:
  FrontDrawing(const Bank& bank, const Scale& scale, const ViewOptions& options,
               const TextMetrics& metrics)
      : bank_(bank), options_(options), metrics_(metrics) {
    view_.name = "front";
    view_.title = "FRONT ELEVATION";
    view_.scale = scale;
    view_.map.scale = scale;
    view_.outline = view_.map.Box(Extent());
  }

  View Draw() {
    DrawCase(AddViewGroup(view_, "case", "Case and opening", 0));
    const std::size_t first = view_.groups.size();
    ChooseArrangements();
    for (const Space& space : bank_.spaces) DrawSpace(space);
    const std::vector<PaperBox> texts = TextBoxes(first);
    DrawBehind(texts);
    DrawCenterLine(texts);
    AddFrontSizes(view_, bank_, options_, has_unnumbered_, metrics_);
    FinishView(view_, view_.outline.left, bank_.units, metrics_);
    return std::move(view_);
  }

 private:
  const PaperMap& Map() const { return view_.map; }
  bool IsOverlay() const { return bank_.style == FrontStyle::kOverlay; }
  Rect Opening() const { return {Length(), Length(), bank_.opening_width, bank_.opening_height}; }

  // The outermost lines: the case's outer faces, the opening, and fronts beyond them.
  Rect Extent() const {
    Length left;
    Length bottom;
    Length right = bank_.opening_width;
    Length top = bank_.opening_height;
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      left = -c.side_in - c.side;
      right = left + c.width;
      bottom = -c.base - c.feet;
      top = c.height - c.base;
    }
    for (const CasePiece& piece : bank_.pieces) {
      const Rect r = FrontFaceOf(bank_, piece).rect;
      left = Min(left, r.x);
      right = Max(right, r.Right());
      top = Max(top, r.Top());
    }
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      const Rect& r = space.front.rect;
      left = Min(left, r.x);
      bottom = Min(bottom, r.y);
      right = Max(right, r.Right());
      top = Max(top, r.Top());
    }
    return {left, bottom, right - left, top - bottom};
  }

  // --- The piece --------------------------------------------------------------------------------

  void DrawCase(SheetGroup& group) const {
    if (bank_.casework) DrawCaseBody(group, *bank_.casework);
    if (IsOverlay()) return;
    AddOpeningEdges(group, bank_, Map());
    for (const Divider& member : bank_.dividers) {
      group.primitives.push_back(MemberOutline(bank_, member, Map(), Pen::kThin));
    }
  }

  // Outer faces, the edges of sides and bottom, the floor, and the worktop's underside.
  void DrawCaseBody(SheetGroup& group, const CaseBuild& c) const {
    const Length floor = -c.base;
    const Length top = floor + c.height;
    group.primitives.push_back(
        BoxOutline(Map().Box({-c.side_in - c.side, floor, c.width, c.height}), Pen::kOutline));
    if (!c.frame) AddCaseEdges(group, bank_, Map());
    AddPiecesInFront(group, bank_, Map(), metrics_);
    const auto beyond = [&](Length y, Pen pen) {
      group.primitives.push_back(
          LineOf({view_.outline.left - 4, Map().Y(y)}, {view_.outline.right + 4, Map().Y(y)}, pen));
    };
    beyond(floor - c.feet, Pen::kGround);
    const bool drawn = c.worktop && !c.worktop->width.IsZero();
    if (c.top_none && !drawn) beyond(top, Pen::kOutline);
  }

  void DrawSpace(const Space& space) {
    const std::string id = ToText(space.id);
    const std::string title = space.name.empty() ? id : id + " " + space.name;
    SheetGroup& group = AddViewGroup(view_, id, title, 0);
    if (!space.HasFront()) return DrawOpenSpace(group, space);
    const PaperBox face = Map().Box(space.front.rect);
    if (IsOverlay()) group.primitives.push_back(BoxFill(face, Tone::kPaper));
    const double least = std::min(face.Width(), face.Height());
    const bool clogs = least < 2 * StyleOf(Pen::kFront).width;
    group.primitives.push_back(clogs ? BoxFill(face, Tone::kInk) : InsetOutline(face, Pen::kFront));
    for (const PaperPoint at : CrossesOn(space)) AddCross(group, at);
    const int used = AddLabels(group, space, arrangements_[SizeClass(space)]);
    if (used == kNoArrangement) has_unnumbered_ = true;
  }

  // Centers of holes, where the front has room for their crosses.
  std::vector<PaperPoint> CrossesOn(const Space& space) const {
    constexpr double kRoom = 4;  // mm
    const PaperBox face = Map().Box(space.front.rect);
    std::vector<PaperPoint> crosses;
    if (std::min(face.Width(), face.Height()) < kRoom) return crosses;
    for (const PullHole& hole : space.front.pulls) crosses.push_back(Map().At(hole.x, hole.y));
    return crosses;
  }

  int AddLabels(SheetGroup& group, const Space& space, int from) const {
    std::vector<PaperBox> taken;
    for (const PaperPoint at : CrossesOn(space)) {
      taken.push_back(Grow({at.x, at.y, at.x, at.y}, 2.6));
    }
    const PaperBox room = RoomOn(Map().Box(space.front.rect));
    return AddFrontLabels(group, bank_, space, room, taken, options_, from, metrics_);
  }

  // Fronts of much the same size are labeled alike: as the one with the least room allows, if it
  // can show its size at all.
  void ChooseArrangements() {
    constexpr int kLastWithSize = 5;
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      SheetGroup trial;
      int& worst = arrangements_[SizeClass(space)];
      const int used = AddLabels(trial, space, worst);
      if (used <= kLastWithSize) worst = used;
    }
  }
  using SizeKey = std::pair<int, int>;
  SizeKey SizeClass(const Space& space) const {
    const PaperBox face = Map().Box(space.front.rect);
    const auto step = [](double size) { return static_cast<int>(std::log(size + 1) * 8); };
    return {step(face.Width()), step(face.Height())};
  }

  // The part of a front that hidden edges of the opening leave free, where it is most of it.
  PaperBox RoomOn(const PaperBox& face) const {
    const PaperBox opening = Map().Box(Opening());
    const PaperBox room{std::max(face.left, opening.left + 0.6), std::max(face.top, opening.top),
                        std::min(face.right, opening.right - 0.6),
                        std::min(face.bottom, opening.bottom)};
    const bool most =
        IsOverlay() && room.Width() > 0.85 * face.Width() && room.Height() > 0.85 * face.Height();
    return most ? room : face;
  }

  // The center of a hole.
  static void AddCross(SheetGroup& group, PaperPoint at) {
    constexpr double kReach = 1.6;
    group.primitives.push_back(LineOf({at.x - kReach, at.y}, {at.x + kReach, at.y}, Pen::kThin));
    group.primitives.push_back(LineOf({at.x, at.y - kReach}, {at.x, at.y + kReach}, Pen::kThin));
  }

  void DrawOpenSpace(SheetGroup& group, const Space& space) const {
    const PaperBox box = Map().Box(space.cell);
    group.primitives.push_back(BoxOutline(box, Pen::kThin));
    const LabelStyle style{.cap_height = 1.8, .anchor = TextAnchor::kCenter};
    Label label = MakePlainLabel(metrics_, ToText(space.id) + " OPEN", style, box.Center());
    const PaperBox room = Grow(box, -1);
    const bool fits = label.box.left > room.left && label.box.right < room.right &&
                      label.box.top > room.top && label.box.bottom < room.bottom;
    if (fits) group.primitives.push_back(std::move(label));
  }

  // --- What lies behind -------------------------------------------------------------------------

  // Labels and balloons, for lines that must keep clear of them.
  std::vector<PaperBox> TextBoxes(std::size_t first) const {
    const std::span<const SheetGroup> groups = std::span(view_.groups).subspan(first);
    std::vector<PaperBox> boxes = LabelBoxes(groups);
    for (const SheetGroup& group : groups) {
      for (const Primitive& primitive : group.primitives) {
        if (std::holds_alternative<Circle>(primitive)) boxes.push_back(Bounds(primitive));
      }
    }
    return boxes;
  }

  void DrawBehind(std::span<const PaperBox> texts) {
    SheetGroup& group = AddViewGroup(view_, "hidden", "Edges behind the fronts", 0);
    const auto is_small = [&](const PaperBox& box) {
      return box.Width() < kLeastOverlay || box.Height() < kLeastOverlay;
    };
    const auto hidden = [&](const Rect& r) {
      const PaperBox box = Map().Box(r);
      if (!is_small(box)) AddBehindFronts(group, BoxOutline(box, Pen::kHidden), texts);
    };
    if (IsOverlay()) {
      const bool apart = Map().Size(-Extent().x) >= kLeastOverlay;
      if (apart) hidden(Opening());
      for (const Divider& member : bank_.dividers) {
        if (is_small(Map().Box(member.rect))) continue;
        AddBehindFronts(group, MemberOutline(bank_, member, Map(), Pen::kHidden), texts);
      }
    }
    if (!options_.hidden_boxes) return;
    for (const Space& space : bank_.spaces) {
      if (space.HasBox()) hidden({space.box.x, space.box.y, space.box.width, space.box.height});
    }
  }

  // The parts of an outline that fronts hide.
  void AddBehindFronts(SheetGroup& group, const Polyline& outline,
                       std::span<const PaperBox> texts) const {
    for (std::size_t i = 0; i < outline.points.size(); ++i) {
      const PaperSegment side{outline.points[i], outline.points[(i + 1) % outline.points.size()]};
      HatchArea fronts;
      for (const Space& space : bank_.spaces) {
        if (!space.HasFront()) continue;
        const PaperBox face = Map().Box(space.front.rect);
        if (Meets(face, side)) fronts.rings.push_back(AreaOf(face).rings.front());
      }
      for (const PaperSegment& piece : ClipToArea(fronts, side)) {
        AddBroken(group, LineOf(piece.from, piece.to, outline.pen), texts);
      }
    }
  }
  static bool Meets(const PaperBox& box, const PaperSegment& s) {
    return box.right > std::min(s.from.x, s.to.x) && box.left < std::max(s.from.x, s.to.x) + 1e-9 &&
           box.bottom > std::min(s.from.y, s.to.y) && box.top < std::max(s.from.y, s.to.y) + 1e-9;
  }

  void DrawCenterLine(std::span<const PaperBox> texts) {
    SheetGroup& group = AddViewGroup(view_, "center", "Center line", 0);
    const double x = Map().X(HalfBelow(bank_.opening_width));
    const PaperBox& box = view_.outline;
    AddBroken(group, LineOf({x, box.top - 1}, {x, box.bottom + 1}, Pen::kCenter), texts);
  }

  const Bank& bank_;
  const ViewOptions& options_;
  const TextMetrics& metrics_;
  std::map<SizeKey, int> arrangements_;
  bool has_unnumbered_ = false;  // some front is too small for its number
  View view_;
};

}  // namespace

View FrontElevation(const Bank& bank, const Scale& scale, const ViewOptions& options,
                    const TextMetrics& metrics) {
  return FrontDrawing(bank, scale, options, metrics).Draw();
}

}  // namespace tillwright
