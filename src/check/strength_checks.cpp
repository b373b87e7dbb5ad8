#include "check/strength_checks.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>

#include "check/figures.h"
#include "diag/characters.h"
#include "spec/box_rules.h"
#include "spec/mass.h"
#include "spec/materials.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr double kGravity = 9.80665;  // m/s²
constexpr std::string_view kEstimate =
    "an estimate; 15 lb/ft2 (718 Pa) where no load is given, ANSI/KCMA A161.1 7.1";
constexpr std::string_view kSlideSource = "an estimate of the box's weight; the slide's own sheet";
constexpr std::string_view kTipSource =
    "an estimate, not a test: drawers open by two thirds, filled at 8.5 lb/ft3 where no load is "
    "given, 60 lb climber (after ASTM F2057-23, whose own procedure governs)";

// 15 lb/ft²: ANSI/KCMA A161.1-2012, clause 7.1, as quoted in a trade journal.
constexpr double kUsualPressure = 718;
// 8.5 lb/ft³: ASTM F2057-23, 9.2.1, as quoted in the Federal Register.
constexpr double kUsualFilling = 8.5 * kKilogramsPerPound / (0.3048 * 0.3048 * 0.3048);
// 60 lb: the same, 9.2.3.
constexpr double kClimber = 60 * kKilogramsPerPound;
constexpr double kPartOpen = 2.0 / 3;  // of the slide's length; from memory
constexpr double kSagShare = 360;      // sag limit: short side / 360, common practice, no source

// What wood products weigh and how stiff they are, at the cautious end. Density: common practice,
// no source. Modulus of elasticity: Wood Handbook, table 12-1 (from memory); solid wood lies across
// the span here, so a sheet's figure is taken for it too.
struct Stuff {
  std::string_view word;
  double density;  // kg/m³
  double modulus;  // Pa
};
constexpr std::array kStuff{
    Stuff{"mdf", 750, 3.6e9},       Stuff{"particleboard", 680, 2.8e9},
    Stuff{"chipboard", 680, 2.8e9}, Stuff{"hardboard", 900, 3.1e9},
    Stuff{"hdf", 900, 3.1e9},       Stuff{"osb", 650, 4.4e9},
};
constexpr Stuff kPlywood{"", 650, 6.9e9};
constexpr Stuff kSolid{"", 650, 6.9e9};

Stuff StuffOf(const std::string& material) {
  std::string lower;
  for (const char c : material) lower += Lower(c);
  for (const Stuff& stuff : kStuff) {
    if (lower.find(stuff.word) != std::string::npos) return stuff;
  }
  return IsSolidWood(material) ? kSolid : kPlywood;
}

double Metres(Length length) { return ToMillimeters(length) / 1000; }

Length LengthFrom(double metres) {
  return Length::Picometers(
      std::llround(metres * 1000 * static_cast<double>(Length::kPerMillimeter)));
}

double MassOf(const Part& part) {
  return part.count * Metres(part.length) * Metres(part.width) * Metres(part.thickness) *
         StuffOf(part.material).density;
}

bool IsOfBox(PartRole role) {
  return role == PartRole::kBoxSide || role == PartRole::kBoxFrontEnd ||
         role == PartRole::kBoxBackEnd || role == PartRole::kBoxBottom;
}

class Strength {
 public:
  Strength(const Spec& spec, const Bank& bank) : spec_(spec), bank_(bank) {
    box_.resize(bank.spaces.size());
    front_.resize(bank.spaces.size());
    for (const Part& part : bank.parts) {
      if (part.space < 0) {
        case_ += MassOf(part);
      } else if (IsOfBox(part.role)) {
        box_[static_cast<std::size_t>(part.space)] += MassOf(part);
      } else {
        front_[static_cast<std::size_t>(part.space)] += MassOf(part);
      }
    }
  }

  void Add(std::vector<Finding>& out) const {
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      if (!bank_.spaces[i].HasBox()) continue;
      Sag(i, out);
      SlideLoad(i, out);
    }
    if (bank_.casework) Tipping(out);
  }

  TippingMoments Moments() const {
    TippingMoments moments;
    moments.holds = case_ * kGravity * Metres(bank_.casework->depth) / 2;
    double reach = 0;
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      const Space& space = bank_.spaces[i];
      const double open = space.HasBox() ? kPartOpen * Metres(space.slide.length) : 0;
      const double face = FrontPlace(space) - open;
      Turn(moments, front_[i], face);
      if (!space.HasBox()) continue;
      const double middle = Metres(space.box.z) + Metres(space.box.depth) / 2 - open;
      Turn(moments, box_[i] + Filling(i), middle);
      reach = std::max(reach, -face);
    }
    moments.climber = moments.tips + kClimber * kGravity * reach;
    return moments;
  }

 private:
  // Behind the edge it holds, in front of it tips.
  static void Turn(TippingMoments& moments, double mass, double z) {
    (z >= 0 ? moments.holds : moments.tips) += mass * kGravity * std::abs(z);
  }

  double FrontPlace(const Space& space) const {
    const double thick = Metres(space.front.thickness);
    return bank_.style == FrontStyle::kOverlay ? -thick / 2 : thick / 2;
  }

  std::optional<double> Load(std::size_t i) const {
    return i < spec_.leaves.size() && spec_.leaves[i].load.typed
               ? ParseMass(spec_.leaves[i].load.value, bank_.units)
               : std::nullopt;
  }

  double Filling(std::size_t i) const {
    const Box& box = bank_.spaces[i].box;
    return Load(i).value_or(kUsualFilling * Metres(box.inside_width) * Metres(box.inside_depth) *
                            Metres(box.inside_height));
  }

  void Sag(std::size_t i, std::vector<Finding>& out) const {
    const Box& box = bank_.spaces[i].box;
    const Plate plate{Metres(box.inside_width), Metres(box.inside_depth), Metres(box.build.bottom),
                      StuffOf(box.build.bottom_material).modulus};
    const std::optional<double> load = Load(i);
    const double pressure = load ? *load * kGravity / (plate.width * plate.depth) : kUsualPressure;
    const double sag = PlateSag(plate, pressure);
    const double most = std::min(plate.width, plate.depth) / kSagShare;
    Finding finding{CheckCode::kBottomSag,
                    Level::kPass,
                    ToText(bank_.spaces[i].id),
                    "the bottom carries its load (an estimate)",
                    LengthFrom(sag),
                    LengthFrom(most),
                    kEstimate};
    if (sag > most) {
      finding.level = Level::kWarn;
      const double thicker = plate.thickness * (std::cbrt(sag / most) - 1);
      finding.message = "the bottom sags " + Shown(sag) + " under " +
                        FormatMass(pressure * plate.width * plate.depth / kGravity, bank_.units) +
                        " by the estimate: make it " + Shown(thicker) +
                        " thicker, or set a muntin under its middle";
    }
    out.push_back(std::move(finding));
  }

  std::string Shown(double metres) const {
    return FormatWithUnit(RoundedUp(LengthFrom(metres), bank_.units), bank_.units);
  }

  void SlideLoad(std::size_t i, std::vector<Finding>& out) const {
    const LeafSpec* leaf = i < spec_.leaves.size() ? &spec_.leaves[i] : nullptr;
    if (leaf == nullptr || !leaf->load.typed) return;
    const std::string id = ToText(bank_.spaces[i].id);
    const std::optional<double> load = Load(i);
    if (!load) {
      out.push_back({CheckCode::kSlideLoad, Level::kNote, id,
                     "the load \"" + leaf->load.value +
                         "\" is no weight such as \"20 lb\" or \"9 kg\", so nothing is reckoned "
                         "with it",
                     std::nullopt, std::nullopt, kSlideSource});
      return;
    }
    if (bank_.spaces[i].slide.type == SlideType::kWoodRunner) return;
    out.push_back(RatedFor(*leaf, id, *load + box_[i] + front_[i]));
  }

  Finding RatedFor(const LeafSpec& leaf, const std::string& id, double mass) const {
    const BoxRules rules =
        leaf.override_index < 0
            ? BankRules(spec_)
            : DrawerRules(spec_, spec_.overrides[static_cast<std::size_t>(leaf.override_index)]);
    const std::string carried = FormatMass(mass, bank_.units) + " with box and front";
    Finding finding{CheckCode::kSlideLoad,
                    Level::kNote,
                    id,
                    "take slides rated for at least " + carried,
                    std::nullopt,
                    std::nullopt,
                    kSlideSource};
    const std::optional<double> rating =
        rules.rating == nullptr ? std::nullopt : ParseMass(*rules.rating, bank_.units);
    finding.measure = Measure{mass, rating, "kg"};
    if (!rating) return finding;
    if (mass <= *rating) {
      finding.level = Level::kPass;
      finding.message = "the slides are rated for the load (an estimate)";
      return finding;
    }
    finding.level = Level::kFail;
    finding.message = "the slides are rated for " + FormatMass(*rating, bank_.units) +
                      " and carry " + carried + ": take slides rated " +
                      FormatMass(mass - *rating, bank_.units) + " higher, or put less in";
    return finding;
  }

  void Tipping(std::vector<Finding>& out) const {
    const TippingMoments moments = Moments();
    Finding finding{
        CheckCode::kTipping,
        Level::kPass,
        "case",
        "stands with every drawer open and filled (an estimate); anchor it all the same",
        std::nullopt,
        std::nullopt,
        kTipSource};
    finding.measure = Measure{moments.tips, moments.holds, "N m"};
    if (moments.tips > moments.holds) {
      finding.level = Level::kWarn;
      finding.message =
          "with every drawer open and filled it tips forward by the estimate: anchor it to the "
          "wall or the bench, and open one drawer at a time";
    } else if (moments.climber > moments.holds) {
      finding.level = Level::kNote;
      finding.measure->value = moments.climber;
      finding.message =
          "a child of 60 lb (27 kg) on an open drawer tips it by the estimate: anchor it to the "
          "wall or the bench";
    }
    out.push_back(std::move(finding));
  }

  const Spec& spec_;
  const Bank& bank_;
  std::vector<double> box_, front_;  // kg, by space
  double case_ = 0;
};

}  // namespace

double PlateSag(const Plate& plate, double pressure) {
  constexpr double kPoisson = 0.3;
  constexpr int kTerms = 19;
  const double a = std::min(plate.width, plate.depth);
  const double ratio = std::max(plate.width, plate.depth) / a;
  const double stiffness =
      plate.modulus * std::pow(plate.thickness, 3) / (12 * (1 - kPoisson * kPoisson));
  double sum = 0;
  for (int m = 1; m <= kTerms; m += 2) {
    for (int n = 1; n <= kTerms; n += 2) {
      const double sign = ((m + n) / 2) % 2 == 1 ? 1 : -1;
      const double waves = m * m + n * n / (ratio * ratio);
      sum += sign / (m * n * waves * waves);
    }
  }
  return 16 / std::pow(std::numbers::pi, 6) * sum * pressure * std::pow(a, 4) / stiffness;
}

TippingMoments MomentsOf(const Spec& spec, const Bank& bank) {
  return Strength(spec, bank).Moments();
}

void AddStrengthChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  Strength(spec, bank).Add(out);
}

}  // namespace tillwright
