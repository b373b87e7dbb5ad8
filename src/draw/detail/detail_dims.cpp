#include "draw/detail/detail_dims.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "draw/bank/case_joints.h"
#include "draw/detail/detail_faces.h"
#include "draw/plan/plan_dims.h"
#include "draw/plan/plan_faces.h"
#include "draw/section/side_plane.h"
#include "sheet/size_chain.h"
#include "spec/kinds.h"
#include "tillwright/dimensions.h"

namespace tillwright {
namespace {

// A station and the place on it, across, where its extension line starts: the end of the edge that
// it prolongs. kRunsOut for edges that run out of the circle.
constexpr Length kRunsOut = Length::Millimeters(1'000'000);
struct Stop {
  Length at;
  Length from;
  std::string path{};    // of what lies between this and the next stop
  bool against = false;  // shown with a minus
};

class DetailDimensions {
 public:
  DetailDimensions(SheetGroup& out, const Bank& bank, const DetailChoice& choice,
                   const PaperMap& map, const TextMetrics& metrics)
      : out_(out),
        bank_(bank),
        choice_(choice),
        map_(map),
        metrics_(metrics),
        space_(bank.spaces[choice.space]),
        id_(ToText(space_.id)) {
    for (const PaperSide side :
         {PaperSide::kLeft, PaperSide::kRight, PaperSide::kAbove, PaperSide::kBelow}) {
      const bool low = side == PaperSide::kLeft || side == PaperSide::kAbove;
      Stack(side) = {.side = side, .edge = low ? -choice.radius : choice.radius};
    }
  }

  void Draw() {
    switch (choice_.kind) {
      case DetailKind::kGap:
        FrontGap();
        break;
      case DetailKind::kEdge:
        FrontEdge();
        break;
      case DetailKind::kBottom:
        Bottom();
        break;
      case DetailKind::kCorner:
        Corner();
        break;
      case DetailKind::kBack:
        Back();
        break;
      case DetailKind::kJoint:
        Joint();
        break;
    }
    DimensionStyle style;
    style.first_offset = 7;
    for (const DimensionStack& stack : stacks_) {
      if (!stack.tiers.empty()) AddDimensionStack(out_, stack, style, metrics_);
    }
    if (!note_.lines.empty()) AddPathNote(out_, note_, metrics_);
  }

 private:
  [[nodiscard]] DimensionStack& Stack(PaperSide side) {
    return stacks_[static_cast<std::size_t>(side)];
  }
  [[nodiscard]] std::string Path(std::string_view name) const {
    return id_ + "." + std::string(name);
  }
  static bool IsUpright(PaperSide side) {
    return side == PaperSide::kLeft || side == PaperSide::kRight;
  }

  // On paper, where the extension line of a stop starts: never outside the circle.
  [[nodiscard]] double StartOf(PaperSide side, double station, Length from) const {
    const double chord =
        std::sqrt(std::max(0.0, choice_.radius * choice_.radius - station * station));
    const bool low = side == PaperSide::kLeft || side == PaperSide::kAbove;
    if (from == kRunsOut) return low ? -chord : chord;
    return std::clamp(IsUpright(side) ? map_.X(from) : map_.Y(from), -chord, chord);
  }

  [[nodiscard]] bool IsShown(PaperSide side, Length at) const {
    const double station = IsUpright(side) ? map_.Y(at) : map_.X(at);
    return std::abs(station) < choice_.radius - 0.5;
  }

  // Adds a tier; stops outside the circle are left out with what they bound.
  void Add(PaperSide side, const std::vector<Stop>& stops) {
    std::vector<SizeStop> shown;
    for (const Stop& stop : stops) {
      if (!IsShown(side, stop.at)) {
        if (!shown.empty()) shown.back().path.clear();
        continue;
      }
      shown.push_back({stop.at, stop.path, stop.against});
      const double station = IsUpright(side) ? map_.Y(stop.at) : map_.X(stop.at);
      Stack(side).starts.push_back({station, StartOf(side, station, stop.from)});
    }
    if (shown.empty()) return;
    shown.back().path.clear();
    AddTier(Stack(side), SizeChain::Through(std::move(shown)), map_, bank_.units);
  }

  // --- Fronts: side section, a is z and b is y --------------------------------------------------

  // Front and front end, above the circle.
  void AddThicknesses() {
    Add(PaperSide::kAbove, {{Face(), kRunsOut, Path("front.thickness")},
                            {space_.box.z, kRunsOut, Path("box_front.thickness")},
                            {Inner(), kRunsOut}});
  }
  [[nodiscard]] Length Face() const { return space_.box.z - space_.front.thickness; }
  [[nodiscard]] Length Inner() const { return space_.box.z + space_.box.build.end; }

  // The gaps along y of a space, from or to it.
  [[nodiscard]] const Gap* GapOf(std::size_t space, bool below) const {
    for (const Gap& gap : bank_.gaps) {
      const GapEnd& end = below ? gap.to : gap.from;
      if (gap.axis != Axis::kY || end.kind != GapEnd::Kind::kSpace) continue;
      if (static_cast<std::size_t>(end.index) != space) continue;
      if (!IsBetween(below ? gap.from : gap.to)) continue;
      return &gap;
    }
    return nullptr;
  }
  [[nodiscard]] bool IsBetween(const GapEnd& end) const {
    if (end.kind != GapEnd::Kind::kSpace) return true;
    const auto index = static_cast<std::size_t>(end.index);
    return index == choice_.space || index == choice_.other;
  }

  [[nodiscard]] const Divider* MemberBelow() const {
    const Length plane = ChooseSectionPlane(bank_).x;
    for (const Divider& member : bank_.dividers) {
      if (member.partition || member.rect.Top() != space_.cell.y) continue;
      if (member.rect.x <= plane && plane <= member.rect.Right()) return &member;
    }
    return nullptr;
  }

  void FrontGap() {
    const Space& lower = bank_.spaces[choice_.other];
    AddThicknesses();
    const Gap* upper_gap = GapOf(choice_.space, true);
    const Gap* lower_gap = GapOf(choice_.other, false);
    std::vector<Stop> left;
    const Length low_face = space_.box.z - lower.front.thickness;
    if (lower_gap != nullptr && lower_gap != upper_gap) {
      left.push_back({lower_gap->at, low_face, GapPath(bank_, *lower_gap)});
      left.push_back({lower_gap->at + lower_gap->size, Length()});
      if (const Divider* member = MemberBelow()) left.back().path = ToText(*member) + ".thickness";
    }
    if (upper_gap != nullptr) {
      const Length from = lower_gap == upper_gap ? low_face : Length();
      left.push_back({upper_gap->at, from, GapPath(bank_, *upper_gap)});
      left.push_back({upper_gap->at + upper_gap->size, Face()});
    }
    Add(PaperSide::kLeft, left);
    GapRight(lower);
  }

  // How the boxes stand to the divider between them, or to their own fronts.
  void GapRight(const Space& lower) {
    const Length in = Inner();
    const Length low_in = lower.HasBox() ? lower.box.z + lower.box.build.end : in;
    const Length low_top = lower.HasBox() ? lower.box.y + lower.box.height : Length();
    std::vector<Stop> right;
    const std::string low_id = ToText(lower.id);
    if (const Divider* member = MemberBelow()) {
      if (lower.HasBox()) right.push_back({low_top, low_in, low_id + ".clear.above"});
      const bool inset = bank_.style == FrontStyle::kInset;
      right.push_back(
          {member->rect.y, kRunsOut, inset ? std::string() : ToText(*member) + ".thickness"});
      right.push_back({member->rect.Top(), kRunsOut, Path("clear.below")});
    } else {
      if (lower.HasBox()) {
        right.push_back({low_top, low_in, low_id + ".clear.front_above"});
        right.push_back({lower.front.rect.Top(), lower.box.z});
      }
      right.push_back({space_.front.rect.y, space_.box.z, Path("clear.front_below")});
    }
    right.push_back({space_.box.y, in});
    Add(PaperSide::kRight, right);
  }

  void FrontEdge() {
    AddThicknesses();
    const Length front = space_.front.rect.y;
    const Length zero;
    if (bank_.style == FrontStyle::kInset) {
      const Gap* gap = GapOf(choice_.space, true);
      if (gap != nullptr) {
        Add(PaperSide::kLeft, {{gap->at, zero, GapPath(bank_, *gap)}, {front, Face()}});
      }
    } else {
      std::vector<Stop> left;
      if (bank_.casework) {
        left.push_back({-bank_.casework->EdgeAt(Edge::kBottom), zero, EdgePath("reveal")});
      }
      if (front <= zero) {
        left.push_back({front, Face(), EdgePath("overlap")});
        left.push_back({zero, zero});
      } else {
        left.clear();
        left.push_back({zero, zero, EdgePath("overlap"), true});
        left.push_back({front, Face()});
      }
      Add(PaperSide::kLeft, left);
    }
    std::vector<Stop> right;
    if (bank_.casework && !bank_.casework->frame) {
      right.push_back({-bank_.casework->bottom, kRunsOut, "case.bottom"});
    }
    right.push_back({zero, kRunsOut, Path("clear.below")});
    right.push_back({space_.box.y, Inner()});
    Add(PaperSide::kRight, right);
  }
  // "overlap.D4.bottom"
  [[nodiscard]] std::string EdgePath(std::string_view what) const {
    return std::string(what) + "." + id_ + ".bottom";
  }

  // --- The bottom: side section -----------------------------------------------------------------

  void Bottom() {
    const BoxBuild& build = space_.box.build;
    const BottomPlace at = BottomPlaceOf(space_.box);
    const bool rear = choice_.rear;
    const Length inner = rear ? at.end_rear : at.end_front;
    const Length outer = rear ? inner + build.end : inner - build.end;
    const std::string end = rear ? "box_back" : "box_front";
    Add(PaperSide::kAbove,
        {{Min(inner, outer), kRunsOut, Path(end + ".thickness")}, {Max(inner, outer), kRunsOut}});
    const PaperSide open = rear ? PaperSide::kLeft : PaperSide::kRight;  // where the panel runs to
    if (!Facts(build.fit).cut) {
      Add(open, {{at.low, kRunsOut, Path("bottom.thickness")}, {at.high, kRunsOut}});
      return;
    }
    Add(open, {{at.wood, kRunsOut, Path("groove.up")},
               {at.low, kRunsOut, Path("bottom.thickness")},
               {at.high, kRunsOut}});
    if (rear && build.open_back) return;  // the panel runs on under the back end
    const Length deep = rear ? inner + build.groove : inner - build.groove;
    const Stop bottom{deep, at.low};
    const Stop face{inner, at.wood};
    std::vector<Stop> depth = rear ? std::vector{face, bottom} : std::vector{bottom, face};
    depth.front().path = Path("groove.depth");
    Add(PaperSide::kBelow, depth);
    const Length edge = rear ? at.rear : at.front;
    AddPlayNote({map_.X(deep) / 2 + map_.X(edge) / 2, map_.Y(at.low) / 2 + map_.Y(at.high) / 2},
                Path("bottom.play"), rear ? 1 : -1, -0.35);
  }

  // The play is what is asked for at least; rounding the panel down to the shop's increment may
  // leave a little more. `side`: -1 left, 1 right; `level` in radii below the center.
  void AddPlayNote(PaperPoint tip, const std::string& path, double side, double level) {
    const std::optional<Length> play = DimensionValue(bank_, path);
    if (!play || play->IsZero()) return;
    const double r = choice_.radius;
    note_.tip = tip;
    note_.elbow = {side * (r * std::sqrt(1 - level * level) + 3), level * r};
    note_.dot = false;
    note_.text_left = side < 0;
    note_.lines = {NumberNote(bank_, "PLAY ", path), {"OR MORE", ""}};
  }

  // --- Corners: plan, a is x and b is z ---------------------------------------------------------

  void Corner() {
    const Box& box = space_.box;
    const BoxBuild& build = box.build;
    const Length inner = box.x + build.side;
    const Length rear = box.z + box.depth;
    const Length low = choice_.rear ? rear - build.back_setback - build.end : box.z;
    const Length high = low + build.end;
    // Beside a setback the side's end lies within the circle.
    const Length above = choice_.rear ? rear : kRunsOut;
    const PaperSide across = choice_.rear ? PaperSide::kBelow : PaperSide::kAbove;
    const Length shoulder = choice_.rear ? low : high;
    const Length far = choice_.rear ? kRunsOut : above;
    if (!build.joint_depth.IsZero()) {
      Add(across, {{inner - build.joint_depth, shoulder, Path("corner.depth")}, {inner, far}});
    }
    std::vector<Stop> widths;
    const PlanScope scope = PlanScopeOf(bank_, choice_.space, Length::Millimeters(1));
    if (scope.left.bound != PlanBound::kShared) {
      widths.push_back({space_.cell.x, far, Path("clear.left")});
    }
    widths.push_back({box.x, far, Path("side.thickness")});
    widths.push_back({inner, far});
    Add(across, widths);
    CornerRight(low, high, rear);
    if (Facts(build.joint).tailed) AddPinsNote(box.x + HalfBelow(build.side), high);
    if (build.lap.IsZero()) return;
    Add(PaperSide::kLeft, {{low, box.x, Path("corner.lap")},
                           {low + build.lap, box.x, Path("corner.pin")},
                           {high, box.x}});
  }

  // The plane runs through a tail; what it stands on is drawn hidden.
  void AddPinsNote(Length across, Length at) {
    const double r = choice_.radius;
    const double level = -0.72;
    note_.tip = map_.At(across, at);
    note_.elbow = {r * std::sqrt(1 - level * level) + 3, level * r};
    const bool fingers = space_.box.build.joint == CornerJoint::kFinger;
    note_.lines = {{fingers ? "FINGERS BELOW" : "PINS BELOW", ""}};
  }

  void CornerRight(Length low, Length high, Length rear) {
    if (choice_.rear) {
      Add(PaperSide::kRight, {{low, kRunsOut, Path("box_back.thickness")},
                              {high, kRunsOut, Path("corner.back_setback")},
                              {rear, space_.box.x + space_.box.build.side}});
      return;
    }
    Add(PaperSide::kRight, {{Face(), kRunsOut, Path("front.thickness")},
                            {low, kRunsOut, Path("box_front.thickness")},
                            {high, kRunsOut}});
  }

  // --- The case's back: plan --------------------------------------------------------------------

  void Back() {
    const CaseBuild& c = *bank_.casework;
    const Length low = bank_.opening_depth;
    const Length high = low + c.back_thickness;
    const bool rabbet = Facts(c.back).lap;
    const Length in = rabbet ? c.back_lap : c.back_depth;
    const Length face = -c.side_in;  // the side's inner face
    Add(PaperSide::kBelow,
        {{face - in, low, rabbet ? "case.back.lap" : "case.back.depth"}, {face, kRunsOut}});
    Add(PaperSide::kBelow, {{face - c.side, kRunsOut, "case.side"}, {face, kRunsOut}});
    std::vector<Stop> right{{low, kRunsOut, "case.back.thickness"},
                            {high, kRunsOut, rabbet ? "" : "case.back.inset"}};
    if (!rabbet) right.push_back({c.front_in + c.depth, face});
    Add(PaperSide::kRight, right);
    const Length edge = HalfBelow(bank_.opening_width - c.panel_width);
    AddPlayNote({map_.X(face - in) / 2 + map_.X(edge) / 2, map_.Y(low) / 2 + map_.Y(high) / 2},
                "case.back.play", -1, -0.2);
  }

  // --- The case's joint: parallel to the front ------------------------------------------------

  void Joint() {
    const CaseBuild& c = *bank_.casework;
    const JointSeat seat = BottomSeat(c);
    const Length face = -c.side_in;
    const Length low = -c.low_in - c.bottom;
    const Length rises = c.raise.IsZero() ? low : kRunsOut;  // where the side's lower end is seen
    Add(PaperSide::kBelow, {{face - c.joint_depth, seat.low, "case.joint.depth"}, {face, rises}});
    Add(PaperSide::kBelow, {{face - c.side, rises, "case.side"}, {face, rises}});
    if (Facts(c.joint).tongue) {
      Add(PaperSide::kRight, {{seat.low, face, "case.joint.tongue"}, {seat.high, kRunsOut}});
    }
    Add(PaperSide::kRight, {{low, kRunsOut, "case.bottom"}, {low + c.bottom, kRunsOut}});
  }

  SheetGroup& out_;
  const Bank& bank_;
  const DetailChoice& choice_;
  const PaperMap& map_;
  const TextMetrics& metrics_;
  const Space& space_;
  std::string id_;
  std::array<DimensionStack, 4> stacks_{};  // by PaperSide
  PathNote note_{};
};

}  // namespace

void AddDetailDimensions(SheetGroup& out, const Bank& bank, const DetailChoice& choice,
                         const PaperMap& map, const TextMetrics& metrics) {
  DetailDimensions(out, bank, choice, map, metrics).Draw();
}

}  // namespace tillwright
