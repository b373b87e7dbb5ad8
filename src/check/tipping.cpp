#include "check/tipping.h"

#include <algorithm>
#include <cmath>

#include "bank/part_roles.h"
#include "check/weights.h"
#include "spec/defaults.h"
#include "spec/kinds.h"
#include "spec/mass.h"
#include "tillwright/assembly.h"

namespace tillwright {
namespace {

constexpr std::string_view kTipSource =
    "an estimate, not a test: about the front of feet, toe kick or case, drawers open by two "
    "thirds, filled at 8.5 lb/ft3 where no load is given, 60 lb climber (after "
    "ASTM F2057-23, whose own procedure governs)";

// 8.5 lb/ft³: ASTM F2057-23, 9.2.1, as quoted in the Federal Register.
constexpr double kUsualFilling = 8.5 * kKilogramsPerPound / (0.3048 * 0.3048 * 0.3048);
// 60 lb: the same, 9.2.3.
constexpr double kClimber = 60 * kKilogramsPerPound;
// Only cases so high are climbed: 27 in, the scope of the same (from memory).
constexpr Default kClimbed{Length::Inches(27), Length::Millimeters(686)};
constexpr double kPartOpen = 2.0 / 3;  // of the slide's length; from memory

class Balance {
 public:
  Balance(const Spec& spec, const Bank& bank)
      : spec_(spec),
        bank_(bank),
        c_(*bank.casework),
        assembly_(Assemble(bank)),
        line_(SupportLine(bank)) {}

  TippingMoments Run() {
    for (const PlacedPart& piece : assembly_.pieces()) {
      if (piece.body == PartBody::kCase) CasePart(piece);
    }
    if (c_.worktop && c_.worktop->width.IsZero()) BareWorktop(*c_.worktop);
    double reach = 0;
    const SpaceWeights weights = WeightsOf(bank_);
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Space& space = bank_.spaces[i];
      const double open = space.HasBox() ? kPartOpen * Meters(space.slide.length) : 0;
      const double face = FrontPlace(i) - open;
      Turn(weights.front[i], face);
      if (!space.HasBox()) continue;
      Turn(weights.box[i] + Filling(i), Meters(space.box.z) + Meters(space.box.depth) / 2 - open);
      reach = std::max(reach, line_ - face);
    }
    moments_.climber = moments_.tips + kClimber * kGravity * reach;
    return moments_;
  }

 private:
  // A mass in kg whose middle is `z` m behind the opening's front: behind the line it holds.
  void Turn(double mass, double z) {
    const double arm = z - line_;
    (arm >= 0 ? moments_.holds : moments_.tips) += mass * kGravity * std::abs(arm);
  }

  void CasePart(const PlacedPart& piece) {
    const Block& b = piece.block;
    Length width = b.width;
    if (Facts(piece.role).group == PartGroup::kWorktop) {  // what lies over the case
      const Length left = -c_.side_in - c_.side;
      width = Min(b.x + b.width, left + c_.width) - Max(b.x, left);
      if (width <= Length()) return;
    }
    const double mass = Meters(width) * Meters(b.height) * Meters(b.depth) *
                        StuffOf(bank_.parts[piece.part].material).density;
    Turn(mass, MiddleOf(piece));
  }

  static double MiddleOf(const PlacedPart& piece) {
    return Meters(piece.block.z) + Meters(piece.block.depth) / 2;
  }

  // One that is no part of the job still lies on the case, from the fronts' faces backwards.
  void BareWorktop(const Worktop& worktop) {
    double front = 0;
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      front = std::min(front, 2 * FrontPlace(i));
    }
    const double depth = Meters(worktop.depth.IsZero() ? c_.depth : worktop.depth);
    const double mass =
        Meters(c_.width) * depth * Meters(worktop.thickness) * StuffOf(worktop.material).density;
    Turn(mass, front + depth / 2);
  }

  // The middle of a front's thickness.
  double FrontPlace(std::size_t space) const {
    const PartOwner owner{PartOwner::Kind::kSpace, static_cast<int>(space)};
    const PlacedPart* front = assembly_.Find(PartRole::kFront, owner);
    return front == nullptr ? 0 : MiddleOf(*front);
  }

  double Filling(std::size_t i) const {
    const Box& box = bank_.spaces[i].box;
    return LoadOf(spec_, bank_, i)
        .value_or(kUsualFilling * Meters(box.inside_width) * Meters(box.inside_depth) *
                  Meters(box.inside_height));
  }

  const Spec& spec_;
  const Bank& bank_;
  const CaseBuild& c_;
  Assembly assembly_;
  double line_;
  TippingMoments moments_;
};

}  // namespace

double SupportLine(const Bank& bank) {
  const CaseBuild& c = *bank.casework;
  if (!c.kick_setback.IsZero()) return Meters(c.kick_setback);
  return c.feet.IsZero() ? 0 : Meters(Max(c.front_in, c.feet_setback));
}

TippingMoments MomentsOf(const Spec& spec, const Bank& bank) { return Balance(spec, bank).Run(); }

void AddTippingCheck(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  if (!bank.casework) return;
  const TippingMoments moments = MomentsOf(spec, bank);
  Finding finding{
      CheckCode::kTipping,
      Level::kPass,
      "case",
      "does not tip with every drawer open and filled (estimated); anchor it all the same",
      std::nullopt,
      std::nullopt,
      kTipSource};
  finding.measure = Measure{moments.tips, moments.holds, "N m"};
  if (moments.tips > moments.holds) {
    finding.level = Level::kWarn;
    finding.message =
        "with every drawer open and filled it would tip forward (estimated): anchor it to the wall "
        "or the bench, and open one drawer at a time";
  } else if (bank.casework->height + bank.casework->feet < kClimbed.In(bank.units)) {
    finding.message = "does not tip with every drawer open and filled (estimated)";
  } else if (moments.climber > moments.holds) {
    finding.level = Level::kNote;
    finding.measure->value = moments.climber;
    finding.message =
        "a child of 60 lb (27 kg) on an open drawer would tip it (estimated): anchor it to the "
        "wall or the bench";
  }
  out.push_back(std::move(finding));
}

}  // namespace tillwright
