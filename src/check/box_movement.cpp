#include "check/box_movement.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "check/figures.h"
#include "check/wood.h"
#include "spec/kinds.h"
#include "tillwright/gap_check.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr std::string_view kHandbook =
    "an estimate: USDA Wood Handbook, table 13-5 and eq. 13-2, flat-sawn; 8, 6 and 11 % moisture "
    "where no season is given";

using List = std::vector<Contributor>;

Length FromMillimeters(double mm) { return Length::Picometers(std::llround(mm * 1e9)); }

class BoxMovement {
 public:
  BoxMovement(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : spec_(spec),
        bank_(bank),
        season_(MoistureOf(spec.season)),
        least_(LengthOr(spec.limits.least, defaults::kLeastGap, bank.units)),
        out_(out) {}

  void Add() {
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      if (!bank_.spaces[i].HasBox() || SideRate(bank_.spaces[i]) <= 0) continue;
      Sides(bank_.spaces[i]);
    }
    for (const Gap& gap : bank_.gaps) {
      if (gap.axis == Axis::kY && gap.from.kind == GapEnd::Kind::kSpace) OverFront(gap);
    }
  }

 private:
  std::string In(Length length) const { return FormatWithUnit(length, bank_.units); }
  std::string About(double mm) const { return In(NearestShown(mm, bank_.units)); }

  const Space& SpaceAt(const GapEnd& end) const {
    return bank_.spaces[static_cast<std::size_t>(end.index)];
  }

  static double SideRate(const Space& space) {
    return ChangePerPercent(space.box.build.side_material, SawnCut::kFlat);
  }

  // What stays where it is: the lower edge of a box that stands on runners, the line of its slides.
  static Length Fixed(const Space& space) {
    const bool stands = Facts(space.slide.type).sold == SoldAs::kNot;  // made, not bought
    return stands ? space.box.y : space.slide.line_y;
  }

  // One thing that moves by `mm` for each % of moisture.
  void Moves(List& list, int halves, double mm) const {
    Contributor& added = list.emplace_back();
    added.kind = Contributor::Kind::kMovement;
    added.halves = halves;
    added.dry = mm * (season_.dry - season_.made);
    added.humid = mm * (season_.humid - season_.made);
  }

  static List Room(Length size) {
    List list(1);
    list[0].nominal = HalfLength::Of(size);
    return list;
  }

  // How far a place that is fixed to the sides rises for each % of moisture.
  static double Lift(const Space& space, Length at) {
    if (!space.HasBox()) return 0;
    const Length top = space.box.y + space.box.height;
    const Length low = top - space.box.wood_height;
    const Length from = Max(Fixed(space), low);
    return ToMillimeters(Max(low, Min(at, top)) - from) * SideRate(space);
  }

  void Sides(const Space& space) {
    const Length top = space.box.y + space.box.height;
    const Length room = space.cell.Top() - top;
    if (room < Length()) return;  // box-height says so
    List list = Room(room);
    Moves(list, -2, Lift(space, top));
    const double left = HumidValue(list);
    const double rises = ToMillimeters(room) - left;
    const std::string id = ToText(space.id);
    if (left >= ToMillimeters(Min(least_, room))) {
      return Put(Level::kPass, id, "the solid sides have room to swell", rises, room);
    }
    const Length leave = CeilTo(FromMillimeters(rises) + least_, bank_.round);
    Put(left > 0 ? Level::kWarn : Failing(), id,
        "the solid sides swell " + About(rises) + " in the humid season but have " + In(room) +
            " above them: leave " + In(leave) +
            " (\"clear_above\", or a smaller \"height\"), or make them of plywood",
        rises, room);
  }

  // Reports only what the sides' own swelling adds: without it, gap-season has the word.
  void OverFront(const Gap& gap) {
    const Space& lower = SpaceAt(gap.from);
    const Space* upper = gap.to.kind == GapEnd::Kind::kSpace ? &SpaceAt(gap.to) : nullptr;
    if (!lower.HasBox() || SideRate(lower) <= 0 || gap.size < least_) return;
    List list = Room(gap.size);
    const bool at_bottom = spec_.fronts.held.value == Held::kBottom;
    Moves(list, at_bottom ? -2 : -1, FrontMoves(lower));
    if (upper != nullptr && !at_bottom) Moves(list, -1, FrontMoves(*upper));
    if (spec_.season.typed && HumidValue(list) < ToMillimeters(least_)) return;
    Moves(list, -2, Lift(lower, HeldAt(lower)));
    if (upper != nullptr) Moves(list, 2, Lift(*upper, HeldAt(*upper)));
    const double left = HumidValue(list);
    if (left >= ToMillimeters(least_)) return;
    const double closes = ToMillimeters(gap.size) - left;
    const Length leave = CeilTo(FromMillimeters(closes) + least_, bank_.round);
    Put(left > 0 ? Level::kWarn : Failing(),
        ToText(bank_, gap.from) + " to " + ToText(bank_, gap.to),
        "the solid sides of " + ToText(lower.id) +
            " lift its front in the humid season: the gap of " + In(gap.size) + " closes by " +
            About(closes) + "; make it " + In(leave) + ", or the sides of plywood",
        closes, gap.size);
  }

  double FrontMoves(const Space& space) const {
    if (!MovesAlong(space.front.grain, Axis::kY)) return 0;
    return ToMillimeters(space.front.rect.height) *
           ChangePerPercent(space.front.material, spec_.fronts.cut.value);
  }

  // Where a front is held to its box.
  Length HeldAt(const Space& space) const {
    const Rect& front = space.front.rect;
    return spec_.fronts.held.value == Held::kBottom ? front.y : front.y + HalfBelow(front.height);
  }

  // Where nobody said what the seasons are like, it may not be so damp.
  Level Failing() const { return spec_.season.typed ? Level::kFail : Level::kWarn; }

  void Put(Level level, std::string subject, std::string message, double value, Length limit) {
    out_.push_back({CheckCode::kBoxMoves, level, std::move(subject), std::move(message),
                    FromMillimeters(value), limit, kHandbook});
  }

  const Spec& spec_;
  const Bank& bank_;
  SeasonMoisture season_;
  Length least_;
  std::vector<Finding>& out_;
};

}  // namespace

void AddBoxMovement(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  BoxMovement(spec, bank, out).Add();
}

}  // namespace tillwright
