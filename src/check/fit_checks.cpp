#include "check/fit_checks.h"

#include <algorithm>
#include <cmath>

#include "check/wood.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

constexpr std::string_view kGeometry = "geometry";
constexpr std::string_view kCommon = "common practice";
constexpr std::string_view kHandbook =
    "estimate: Wood Handbook, dimensional change coefficients, flat-sawn";

// So much of a dry tenon stays in its groove in the humid season, at least (common practice).
constexpr Default kTenonHolds{Length::Inches(1, 8), Length::Millimeters(3)};

class FitChecks {
 public:
  FitChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : spec_(spec), bank_(bank), c_(*bank.casework), out_(out) {}

  void Run() {
    LegAndHeight();
    if (!c_.worktop->leg.IsZero()) Height();
    if (!c_.worktop->depth.IsZero()) Depth();
  }

 private:
  std::string In(Length length) const { return FormatWithUnit(length, bank_.units); }

  void Add(CheckCode code, Level level, std::string message, Length value, Length limit,
           std::string_view source) {
    out_.push_back({code, level, "case", std::move(message), value, limit, source});
  }

  // Height, legs and thickness of the worktop typed all three.
  void LegAndHeight() {
    const WorktopSpec& typed = spec_.casework->worktop;
    if (!typed.height.typed || !typed.leg.typed) return;
    const Length stands = typed.leg.value + typed.thickness.value;
    const Length over = stands - typed.height.value;
    if (over.IsZero()) return;
    Add(CheckCode::kFitHeight, Level::kFail,
        "the worktop's legs and thickness add up to " + In(stands) + ", but its height is " +
            In(typed.height.value) + ": correct one of the three by " +
            In(over > Length() ? over : -over) + "",
        stands, typed.height.value, kGeometry);
  }

  void Height() {
    const Length stands = c_.height + c_.feet;
    const Length over = stands - c_.worktop->leg;
    if (over.IsZero()) {
      return Add(CheckCode::kFitHeight, Level::kPass,
                 "case and feet are as tall as the worktop's legs", stands, c_.worktop->leg,
                 kGeometry);
    }
    const bool high = over > Length();
    Add(CheckCode::kFitHeight, Level::kFail,
        "case and feet are " + In(stands) + " tall and the worktop's legs " + In(c_.worktop->leg) +
            ": make the case or feet " + In(high ? over : -over) + (high ? " shorter" : " taller"),
        stands, c_.worktop->leg, kGeometry);
  }

  // From the case's rear to the faces of the fronts.
  Length Reach() const {
    Length reach = c_.front_in + c_.depth;
    if (Facts(c_.back).behind) reach += c_.back_thickness;
    if (bank_.style == FrontStyle::kInset) return reach;
    return reach + LengthOr(spec_.fronts.thickness, defaults::kFrontThickness, bank_.units);
  }

  void Depth() {
    const Length reach = Reach();
    const Length over = reach - c_.worktop->depth;
    if (over.IsZero()) {
      return Add(CheckCode::kFitDepth, Level::kPass, "fronts end flush with the worktop's edge",
                 reach, c_.worktop->depth, kCommon);
    }
    const bool proud = over > Length();
    Add(CheckCode::kFitDepth, proud ? Level::kWarn : Level::kNote,
        proud ? "the fronts are " + In(over) +
                    " proud of the worktop's edge: make the case that much shallower"
              : "the fronts are " + In(-over) + " behind the worktop's edge",
        reach, c_.worktop->depth, kCommon);
  }

  const Spec& spec_;
  const Bank& bank_;
  const CaseBuild& c_;
  std::vector<Finding>& out_;
};

// Solid wood across the grain between the dry and the humid season. An estimate.
class Movement {
 public:
  Movement(const Spec& spec, const Bank& bank, std::vector<Finding>& out)
      : bank_(bank),
        c_(*bank.casework),
        out_(out),
        season_(MoistureOf(spec.season)),
        range_(std::abs(season_.humid - season_.dry)) {}

  void Run() {
    if (c_.worktop) Worktop();
    if (Facts(c_.back).there) Back();
    if (c_.web) WebFrames();
  }

 private:
  std::string In(Length length) const { return FormatWithUnit(length, bank_.units); }

  // How much a part so wide moves, to a 64th of an inch or a tenth of a millimeter.
  Length Moves(Length across, const std::string& material) const {
    const double mm = ToMillimeters(across) * ChangePerPercent(material, SawnCut::kFlat) * range_;
    const Length step = bank_.units == Unit::kInch
                            ? Length::Inches(1, 64)
                            : Length::Picometers(Length::kPerMillimeter / 10);
    return std::llround(mm / ToMillimeters(step)) * step;
  }

  // Front to back, over the case's depth: the worktop's grain runs from end to end, a side's
  // upright.
  void Worktop() {
    const Length top = Moves(c_.depth, c_.worktop->material);
    const Length side = Moves(c_.depth, c_.material);
    const Length apart = top < side ? side - top : top - side;
    if (apart.IsZero()) {
      return Add(Level::kPass, "worktop", "worktop and case move equally", apart);
    }
    Add(Level::kNote, "worktop",
        "from dry to humid the worktop moves " + In(top) + " over the case's depth and the case " +
            In(side) + ": fix it at the front; use slotted holes at the rear, " + In(apart) +
            " or longer",
        apart);
  }

  // From side to side, in its rabbet or groove.
  void Back() {
    const Length moves = Moves(c_.panel_width, c_.back_material);
    if (moves.IsZero()) return;
    if (Facts(c_.back).behind) {
      return Add(Level::kWarn, "back",
                 "from dry to humid the solid back moves " + In(moves) +
                     " and will split if it is fixed all around: fix it along its center line; use "
                     "slotted holes at its edges, " +
                     In(moves) + " or longer",
                 moves);
    }
    const Length play = c_.inside_width + 2 * c_.BackEntry() - c_.panel_width;
    if (moves <= play) {
      return Add(Level::kPass, "back", "the solid back has room to move", moves);
    }
    Add(Level::kWarn, "back",
        "from dry to humid the solid back moves " + In(moves) + " but has " + In(play) +
            " of play: allow " + In(moves - play) + " more in all, and do not glue it",
        moves);
  }

  // Runners lie across the grain of solid sides, and do not shrink with them.
  void WebFrames() {
    const bool there = std::ranges::any_of(bank_.dividers,
                                           [](const Divider& member) { return !member.partition; });
    if (!there || c_.web->open) return;
    const Length swells = ShareOf(
        c_.depth, ChangePerPercent(c_.material, SawnCut::kFlat) * (season_.humid - season_.made));
    const Length holds = kTenonHolds.In(bank_.units);
    const Length tenon = c_.web->tenon;
    if (tenon < holds + swells) {
      return Add(Level::kWarn, "web frames",
                 "the runners' rear tenons are " + In(tenon) +
                     " long: when the sides swell in the humid season, less than " + In(holds) +
                     " of them is left in the rear rail; make \"tenon\" " +
                     In(CeilTo(holds + swells, bank_.round)),
                 swells);
    }
    const Length moves = Moves(c_.depth, c_.material);
    if (moves.IsZero()) return;
    Add(Level::kNote, "web frames",
        "from dry to humid the solid sides move " + In(moves) +
            " over their depth but the web frames do not: glue the runners to the front rails "
            "only; leave the rear tenons dry, with " +
            In(c_.web->free) + " free behind them",
        moves);
  }

  void Add(Level level, std::string subject, std::string message, Length value) {
    out_.push_back({CheckCode::kCaseMovement, level, std::move(subject), std::move(message), value,
                    std::nullopt, kHandbook});
  }

  const Bank& bank_;
  const CaseBuild& c_;
  std::vector<Finding>& out_;
  SeasonMoisture season_;
  double range_ = 0;  // % of moisture
};

}  // namespace

void AddFitChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  if (!bank.casework) return;
  if (bank.casework->worktop) FitChecks(spec, bank, out).Run();
  Movement(spec, bank, out).Run();
}

}  // namespace tillwright
