#include <algorithm>
#include <cmath>
#include <optional>
#include <tuple>

#include "draw/bank/case_joints.h"
#include "draw/detail/detail_faces.h"
#include "draw/detail/details.h"
#include "draw/plan/plan_faces.h"
#include "draw/plan/plan_words.h"
#include "draw/section/side_plane.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

constexpr double kLeastRadius = 17;  // mm on paper
constexpr double kMostRadius = 29;
constexpr double kTwiceUpTo = 12;  // mm needed on the piece up to which 2:1 serves better

double Reach(Length a, Length b) { return std::hypot(ToMillimeters(a), ToMillimeters(b)); }

// "D1–D4, D6" of ascending numbers, or how many when they are many.
std::string ListOf(const std::vector<int>& numbers) {
  std::string text;
  int runs = 0;
  for (std::size_t i = 0; i < numbers.size();) {
    std::size_t last = i;
    while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
    if (!text.empty()) text += ", ";
    text += "D" + std::to_string(numbers[i]);
    if (last > i) text += (last > i + 1 ? "\u2013D" : ", D") + std::to_string(numbers[last]);
    ++runs;
    i = last + 1;
  }
  return runs <= 3 ? text : std::to_string(numbers.size()) + " DRAWERS";
}

class DetailRule {
 public:
  explicit DetailRule(const Bank& bank) : bank_(bank), plane_(ChooseSectionPlane(bank)) {}

  std::vector<DetailChoice> Choose() {
    ChooseGap();
    ChooseBottoms();
    ChooseCorners();
    ChooseBack();
    ChooseEdge();
    ChooseJoint();
    char letter = 'B';
    for (DetailChoice& choice : chosen_) {
      choice.letter = letter;
      if (letter < 'Z') ++letter;
      if (letter == 'I' || letter == 'O') ++letter;  // too like figures
    }
    return std::move(chosen_);
  }

 private:
  [[nodiscard]] const Space& At(std::size_t i) const { return bank_.spaces[i]; }

  // Adds a detail whose circle must reach `need` mm of the piece from its center.
  DetailChoice& Add(DetailKind kind, std::size_t space, ViewKind parent, Length right, Length up,
                    double need) {
    DetailChoice& choice = chosen_.emplace_back();
    choice.kind = kind;
    choice.space = choice.other = space;
    choice.parent = parent;
    choice.right = right;
    choice.up = up;
    if (need <= kTwiceUpTo) {
      choice.scale = {2, "2:1"};
    } else {
      for (const Scale& scale : ScaleSeries(bank_.units)) {
        choice.scale = scale;
        if (need * scale.paper_per_mm <= kMostRadius) break;
      }
    }
    choice.radius = std::clamp(need * choice.scale.paper_per_mm, kLeastRadius, kMostRadius);
    return choice;
  }

  // Drawers whose construction, as `key` tells it, is that of `space`.
  template <class Key>
  [[nodiscard]] std::string AppliesTo(std::size_t space, Key key) const {
    std::vector<int> numbers;
    int drawers = 0;
    for (const Space& other : bank_.spaces) {
      if (!other.HasBox()) continue;
      ++drawers;
      if (key(other) == key(At(space))) numbers.push_back(other.id.number);
    }
    if (drawers > 1 && static_cast<int>(numbers.size()) == drawers) return "ALL DRAWERS";
    return ListOf(numbers);
  }

  // One of each construction among the drawers of `list`, in its order.
  template <class Key>
  [[nodiscard]] std::vector<std::size_t> Different(const std::vector<std::size_t>& list,
                                                   Key key) const {
    std::vector<std::size_t> found;
    for (const std::size_t i : list) {
      const bool known = std::ranges::any_of(
          found, [&](std::size_t other) { return key(At(other)) == key(At(i)); });
      if (At(i).HasBox() && !known) found.push_back(i);
    }
    return found;
  }

  // --- Fronts -----------------------------------------------------------------------------------

  // The middle of front and front end together, and half their thickness.
  static Length MiddleOf(const Space& space) {
    return space.box.z + HalfBelow(space.box.build.end - space.front.thickness);
  }
  static Length HalfOf(const Space& space) {
    return HalfAbove(space.box.build.end + space.front.thickness);
  }

  // With at most a member between them: no row that the plane passes through beside its spaces.
  [[nodiscard]] bool AreNeighbors(const Space& upper, const Space& lower) const {
    if (upper.cell.y == lower.cell.Top()) return true;
    return std::ranges::any_of(bank_.dividers, [&](const Divider& member) {
      const Rect& r = member.rect;
      return !member.partition && r.Top() == upper.cell.y && r.y == lower.cell.Top();
    });
  }

  void ChooseGap() {
    for (std::size_t i = 0; i + 1 < plane_.spaces.size(); ++i) {
      const Space& upper = At(plane_.spaces[i]);
      const Space& lower = At(plane_.spaces[i + 1]);
      if (!upper.HasBox() || !lower.HasFront() || !AreNeighbors(upper, lower)) continue;
      const Length low = lower.HasBox() ? lower.box.y + lower.box.height : lower.front.rect.Top();
      const Length up = HalfBelow(low + upper.box.y);
      const double need = Reach(HalfOf(upper), upper.box.y - up) + 4;
      DetailChoice& choice =
          Add(DetailKind::kGap, plane_.spaces[i], ViewKind::kSide, MiddleOf(upper), up, need);
      choice.other = plane_.spaces[i + 1];
      choice.title = "GAP BETWEEN FRONTS";
      choice.applies_to = ToText(upper.id) + " OVER " + ToText(lower.id);
      return;
    }
  }

  // The lowest front, where it covers the case's bottom or stands above it.
  void ChooseEdge() {
    if (plane_.spaces.empty() || !At(plane_.spaces.back()).HasBox()) return;
    const std::size_t space = plane_.spaces.back();
    const Space& s = At(space);
    const Length wood = bank_.casework ? bank_.casework->EdgeAt(Edge::kBottom) : Length();
    const Length low = Min(s.front.rect.y, -wood);
    const Length up = HalfBelow(low + s.box.y);
    const double need = Reach(HalfOf(s), s.box.y - up) + 4;
    DetailChoice& choice = Add(DetailKind::kEdge, space, ViewKind::kSide, MiddleOf(s), up, need);
    choice.title = bank_.style == FrontStyle::kOverlay ? "LOWER OVERLAY" : "LOWER EDGE GAP";
    choice.applies_to = ToText(s.id);
  }

  // --- Boxes ------------------------------------------------------------------------------------

  static auto BottomKey(const Space& s) {
    const BoxBuild& b = s.box.build;
    return std::tuple(b.fit, b.bottom, b.groove, b.up, b.play, b.open_back, b.end, b.end_material,
                      b.bottom_material);
  }

  [[nodiscard]] bool IsGapDetailed(std::size_t space) const {
    return std::ranges::any_of(chosen_, [&](const DetailChoice& choice) {
      return choice.kind == DetailKind::kGap && choice.space == space;
    });
  }

  void ChooseBottoms() {
    for (const std::size_t first : Different(plane_.spaces, BottomKey)) {
      std::size_t space = first;  // the lowest that is built so: the gap's circle is at the top
      for (const std::size_t i : plane_.spaces) {
        if (At(i).HasBox() && BottomKey(At(i)) == BottomKey(At(first))) space = i;
      }
      const bool open = At(space).box.build.open_back;
      AddBottom(space, IsGapDetailed(space) && !open);
      if (open) {
        AddBottom(space, true);
        chosen_.back().title = "OPEN BACK";
      }
    }
  }

  void AddBottom(std::size_t space, bool rear) {
    const Box& box = At(space).box;
    const BoxBuild& build = box.build;
    const BottomPlace at = BottomPlaceOf(box);
    const Length low = Min(at.low, at.wood);
    const Length up = HalfBelow(low + at.high) + PartBelow(build.bottom, 2);
    const Length half = HalfAbove(build.end);
    const Length right = rear ? at.end_rear + half : at.end_front - half;
    const double need = Reach(half, up - low) + 7;
    DetailChoice& choice = Add(DetailKind::kBottom, space, ViewKind::kSide, right, up, need);
    choice.rear = rear;
    choice.title = Facts(build.fit).set_up ? "GROOVE AND BOTTOM"
                   : Facts(build.fit).cut  ? "BOTTOM RABBET"
                                           : "APPLIED BOTTOM";
    choice.applies_to = AppliesTo(space, BottomKey);
  }

  static auto CornerKey(const Space& s) {
    const BoxBuild& b = s.box.build;
    return std::tuple(b.joint, b.side, b.end, b.joint_depth, b.lap, b.side_material, b.end_material,
                      s.slide.type);
  }
  static auto RearKey(const Space& s) {
    return std::tuple_cat(CornerKey(s), std::tuple(s.box.build.back_setback));
  }

  // Every space, the drawer whose plan is drawn with the section first.
  [[nodiscard]] std::vector<std::size_t> AllSpaces() const {
    std::vector<std::size_t> all(bank_.spaces.size());
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
    const auto drawer =
        std::ranges::find_if(plane_.spaces, [&](std::size_t i) { return At(i).HasBox(); });
    if (drawer != plane_.spaces.end()) {
      const auto end = all.begin() + static_cast<std::ptrdiff_t>(*drawer) + 1;
      std::rotate(all.begin(), end - 1, end);
    }
    return all;
  }

  void ChooseCorners() {
    for (const std::size_t space : Different(AllSpaces(), CornerKey)) {
      const BoxBuild& build = At(space).box.build;
      AddCorner(space, false);
      chosen_.back().title = CornerWords(build.joint);
      chosen_.back().applies_to = AppliesTo(space, CornerKey);
    }
    for (const std::size_t space : Different(AllSpaces(), RearKey)) {
      if (At(space).box.build.back_setback.IsZero()) continue;
      AddCorner(space, true);
      chosen_.back().title = "BOX BACK";
      chosen_.back().applies_to = AppliesTo(space, RearKey);
    }
  }

  void AddCorner(std::size_t space, bool rear) {
    const Box& box = At(space).box;
    const BoxBuild& build = box.build;
    const Length right = box.x + HalfBelow(build.side);
    const Length front = rear ? box.z + box.depth - build.back_setback - build.end : box.z;
    const Length deep = rear ? build.end + build.back_setback : build.end;
    const Length up = front + HalfBelow(deep);
    const double need = Reach(HalfAbove(build.side), HalfAbove(deep)) + 9;
    Add(DetailKind::kCorner, space, ViewKind::kPlan, right, up, need).rear = rear;
  }

  // --- The case's back --------------------------------------------------------------------------

  void ChooseBack() {
    if (!bank_.casework) return;
    const CaseBuild& c = *bank_.casework;
    if (!Facts(c.back).cut) return;
    for (const std::size_t i : AllSpaces()) {
      if (!At(i).HasBox() || !At(i).cell.x.IsZero()) continue;
      const Length deep = c.back_allowance;
      const double need = Reach(HalfAbove(c.side), HalfAbove(deep)) + 6;
      DetailChoice& choice =
          Add(DetailKind::kBack, i, ViewKind::kPlan, -c.side_in - HalfBelow(c.side),
              bank_.opening_depth + HalfBelow(deep), need);
      choice.title = Facts(c.back).lap ? "BACK RABBET" : "BACK GROOVE";
      return;
    }
  }

  // --- The case's joints ------------------------------------------------------------------------

  void ChooseJoint() {
    if (!bank_.casework || !Facts(bank_.casework->joint).cut) return;
    const CaseBuild& c = *bank_.casework;
    const double need = Reach(HalfAbove(c.side), HalfAbove(c.bottom)) + 9;
    DetailChoice& choice =
        Add(DetailKind::kJoint, 0, ViewKind::kFront, -c.side_in - HalfBelow(c.side),
            -c.low_in - HalfBelow(c.bottom), need);
    choice.title = CaseJointTitle(c.joint);
  }

  const Bank& bank_;
  SectionPlane plane_;
  std::vector<DetailChoice> chosen_;
};

}  // namespace

std::vector<DetailChoice> ChooseDetails(const Bank& bank) { return DetailRule(bank).Choose(); }

bool NeedsDetail(const DetailChoice& choice, const Scale& parent) {
  return 2 * parent.paper_per_mm <= choice.scale.paper_per_mm;
}

DetailMark MarkOf(const DetailChoice& choice, const View& parent) {
  const double shown = choice.radius / choice.scale.paper_per_mm;
  return {choice.letter, parent.map.At(choice.right, choice.up),
          std::max(3.0, shown * parent.map.scale.paper_per_mm)};
}

}  // namespace tillwright
