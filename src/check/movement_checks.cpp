#include "check/movement_checks.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "check/figures.h"
#include "check/wood.h"
#include "spec/defaults.h"
#include "spec/kinds.h"
#include "spec/materials.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr std::string_view kHandbook =
    "an estimate: USDA Wood Handbook, table 13-5 and eq. 13-2; 8, 6 and 11 % moisture where no "
    "season is given";

// A front that moves less than this needs no more than the usual play of screws in their holes.
constexpr Default kScrewPlay{Length::Inches(1, 16),
                             Length::Picometers(Length::kPerMillimeter * 3 / 2)};

class Movement {
 public:
  Movement(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : bank_(bank), season_(MoistureOf(spec.season)), cut_(spec.fronts.cut.value), out_(out) {}

  void Add() {
    for (const Space& space : bank_.spaces) {
      if (!space.HasBox()) continue;
      if (space.box.solid_bottom) Bottom(space);
      if (IsSolidWood(space.front.material)) Front(space);
    }
  }

 private:
  std::string In(Length length) const { return FormatWithUnit(length, bank_.units); }

  Length Shown(Length length) const { return RoundedUp(length, bank_.units); }

  Length Change(Length size, const std::string& material, SawnCut cut, double moisture) const {
    const double share = ChangePerPercent(material, cut) * (moisture - season_.made);
    return Length::Picometers(
        std::llround(static_cast<double>(size.picometers()) * std::abs(share)));
  }

  // The grain of a solid bottom runs from side to side: it grows from front to back.
  void Bottom(const Space& space) {
    const Box& box = space.box;
    const std::string& material = box.build.bottom_material;
    const Length grows = Change(box.panel_depth, material, SawnCut::kFlat, season_.humid);
    const Length shrinks = Change(box.panel_depth, material, SawnCut::kFlat, season_.dry);
    const std::string id = ToText(space.id);
    if (!Facts(box.build.fit).set_up) {
      return Put(CheckCode::kBottomMoves, Level::kWarn, id,
                 "a solid bottom glued or nailed all around will split: set it in a groove, or fix "
                 "its front edge only; it expands " +
                     In(Shown(grows)) + " in the humid season",
                 grows, std::nullopt);
    }
    if (box.build.open_back) {
      return Put(CheckCode::kBottomMoves, Level::kPass, id,
                 "the bottom is free to move out below the box back: fix its front edge only",
                 grows, std::nullopt);
    }
    InGrooves(box, id, grows, shrinks);
  }

  void InGrooves(const Box& box, const std::string& id, Length grows, Length shrinks) {
    const Length room = box.inside_depth + 2 * box.build.groove - box.panel_depth;
    const Length held = box.panel_depth - box.inside_depth;
    if (grows > room) {
      return Put(CheckCode::kBottomMoves, Level::kWarn, id,
                 "the solid bottom expands " + In(Shown(grows)) + " in the humid season but has " +
                     In(room) + " of play: give each edge " + In(Shown(HalfAbove(grows - room))) +
                     " more play, or an open back",
                 grows, room);
    }
    if (shrinks >= held) {
      return Put(CheckCode::kBottomMoves, Level::kWarn, id,
                 "the solid bottom shrinks " + In(Shown(shrinks)) +
                     " in the dry season and drops out of its grooves, which hold " + In(held) +
                     ": make them deeper",
                 shrinks, held);
    }
    Put(CheckCode::kBottomMoves, Level::kPass, id, "the bottom is free to move in its grooves",
        grows, room);
  }

  void Front(const Space& space) {
    const bool up = MovesAlong(space.front.grain, Axis::kY);
    const Length size = up ? space.front.rect.height : space.front.rect.width;
    const Length most = Max(Change(size, space.front.material, cut_, season_.humid),
                            Change(size, space.front.material, cut_, season_.dry));
    const Length limit = kScrewPlay.In(bank_.units);
    if (space.front.grain == Grain::kNone) return;
    if (most <= limit) {
      return Put(CheckCode::kFrontMoves, Level::kPass, ToText(space.id),
                 "the front moves no more than its screws allow", most, limit);
    }
    Put(CheckCode::kFrontMoves, Level::kNote, ToText(space.id),
        "the solid front moves " + In(Shown(most)) +
            " with the seasons: fasten it with washers through " +
            (up ? "vertical" : "horizontal") + " slots in the box front",
        most, limit);
  }

  void Put(CheckCode code, Level level, std::string subject, std::string message,
           std::optional<Length> value, std::optional<Length> limit) {
    out_.push_back({code, level, std::move(subject), std::move(message), value, limit, kHandbook});
  }

  const Bank& bank_;
  SeasonMoisture season_;
  SawnCut cut_;
  std::vector<Finding>& out_;
};

}  // namespace

void AddMovementChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  Movement(spec, bank, out).Add();
}

}  // namespace tillwright
