#include "spec/moisture.h"

#include <algorithm>
#include <cmath>

#include "spec/species.h"

namespace tillwright {
namespace {

// The table's ends, 30 F and 270 F.
constexpr double kColdest = (30.0 - 32) * 5 / 9;
constexpr double kHottest = (270.0 - 32) * 5 / 9;

}  // namespace

double EquilibriumMoisture(double celsius, double humidity_percent) {
  const double t = std::clamp(celsius, kColdest, kHottest);
  const double h = humidity_percent / 100;
  const double w = 349 + 1.29 * t + 0.0135 * t * t;
  const double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const double kh = k * h;
  const double hydrated = k1 * kh + 2 * k1 * k2 * kh * kh;
  const double all = 1 + k1 * kh + k1 * k2 * kh * kh;
  return 1800 / w * (kh / (1 - kh) + hydrated / all);
}

double MoisturePercent(const MoistureSpec& moisture) {
  return moisture.percent ? *moisture.percent
                          : EquilibriumMoisture(moisture.celsius, moisture.humidity_percent);
}

SeasonMoisture MoistureOf(const SeasonSpec& season) {
  SeasonMoisture moisture;
  if (season.made.typed) moisture.made = MoisturePercent(season.made);
  if (season.dry.typed) moisture.dry = MoisturePercent(season.dry);
  if (season.humid.typed) moisture.humid = MoisturePercent(season.humid);
  return moisture;
}

double ChangePerPercent(std::string_view material, SawnCut cut) {
  const Species* species = SpeciesOf(material);
  if (species == nullptr) return 0;
  return cut == SawnCut::kQuarter ? species->radial : species->tangential;
}

Length ShareOf(Length length, double share) {
  return Length::Picometers(std::llround(static_cast<double>(length.picometers()) * share));
}

}  // namespace tillwright
