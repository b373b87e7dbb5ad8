#include "check/strength_checks.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

#include "check/figures.h"
#include "check/weights.h"
#include "spec/box_rules.h"
#include "spec/kinds.h"
#include "spec/mass.h"
#include "spec/trade_sizes.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr std::string_view kEstimate =
    "an estimate; 15 lb/ft2 (718 Pa) where no load is given, ANSI/KCMA A161.1 7.1";
constexpr std::string_view kSlideSource =
    "an estimate of the box's weight; the slide maker's sheet";
// 15 lb/ft²: ANSI/KCMA A161.1-2012, clause 7.1, as quoted in a trade journal.
constexpr double kUsualPressure = 718;
constexpr double kSagShare = 360;  // sag limit: short side / 360, common practice, no source

Length LengthFrom(double meters) {
  return Length::Picometers(
      std::llround(meters * 1000 * static_cast<double>(Length::kPerMillimeter)));
}

class Strength {
 public:
  Strength(const Spec& spec, const Bank& bank)
      : spec_(spec), bank_(bank), weights_(WeightsOf(bank)) {}

  void Add(std::vector<Finding>& out) const {
    for (std::size_t i = 0; i < bank_.spaces.size(); ++i) {
      if (!bank_.spaces[i].HasBox()) continue;
      Sag(i, out);
      SlideLoad(i, out);
    }
  }

 private:
  void Sag(std::size_t i, std::vector<Finding>& out) const {
    const Box& box = bank_.spaces[i].box;
    const Plate plate{Meters(box.inside_width), Meters(box.inside_depth), Meters(box.build.bottom),
                      StuffOf(box.build.bottom_material).modulus};
    const std::optional<double> load = LoadOf(spec_, bank_, i);
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
      const std::optional<Length> sold =
          PanelAtLeast(LengthFrom(plate.thickness * std::cbrt(sag / most)), bank_.units);
      finding.message =
          "the bottom sags " + Shown(sag) + " under " +
          FormatMass(pressure * plate.width * plate.depth / kGravity, bank_.units) +
          " (estimated): " +
          (sold ? "make it " + FormatWithUnit(*sold, bank_.units) + " thick, or " : "") +
          "add a muntin under the center";
    }
    out.push_back(std::move(finding));
  }

  std::string Shown(double meters) const {
    return FormatWithUnit(RoundedUp(LengthFrom(meters), bank_.units), bank_.units);
  }

  void SlideLoad(std::size_t i, std::vector<Finding>& out) const {
    const LeafSpec* leaf = i < spec_.leaves.size() ? &spec_.leaves[i] : nullptr;
    if (leaf == nullptr || !leaf->load.typed) return;
    const std::string id = ToText(bank_.spaces[i].id);
    const std::optional<double> load = LoadOf(spec_, bank_, i);
    if (!load) {
      out.push_back({CheckCode::kSlideLoad, Level::kNote, id,
                     "the load \"" + leaf->load.value +
                         "\" is not a weight (write \"20 lb\" or \"9 kg\"), so it was ignored",
                     std::nullopt, std::nullopt, kSlideSource});
      return;
    }
    if (Facts(bank_.spaces[i].slide.type).sold == SoldAs::kNot) return;
    out.push_back(RatedFor(*leaf, id, *load + weights_.box[i] + weights_.front[i]));
  }

  Finding RatedFor(const LeafSpec& leaf, const std::string& id, double mass) const {
    const BoxRules rules =
        leaf.override_index < 0
            ? BankRules(spec_)
            : DrawerRules(spec_, spec_.overrides[static_cast<std::size_t>(leaf.override_index)]);
    const std::string carried = FormatMass(mass, bank_.units) + " including box and front";
    Finding finding{CheckCode::kSlideLoad,
                    Level::kNote,
                    id,
                    "use slides rated for " + Sold(mass) + " or more: they carry " + carried,
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
    const std::optional<double> sold = SlideRatingFor(mass, bank_.units);
    finding.message = "the slides are rated for " + FormatMass(*rating, bank_.units) +
                      " but carry " + carried + ": " +
                      (sold ? "use slides rated for " + FormatMass(*sold, bank_.units) + ", or "
                            : std::string()) +
                      "put less in";
    return finding;
  }

  // The rating that is sold for a load, or the load itself where none is so high.
  std::string Sold(double mass) const {
    return FormatMass(SlideRatingFor(mass, bank_.units).value_or(mass), bank_.units);
  }

  const Spec& spec_;
  const Bank& bank_;
  SpaceWeights weights_;
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

void AddStrengthChecks(const Spec& spec, const Bank& bank, std::vector<Finding>& out) {
  Strength(spec, bank).Add(out);
}

}  // namespace tillwright
