// What parts and what is in them weigh: estimates for the checks of strength and of tipping.
#ifndef TILLWRIGHT_CHECK_WEIGHTS_H_
#define TILLWRIGHT_CHECK_WEIGHTS_H_

#include <optional>
#include <string>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

inline constexpr double kGravity = 9.80665;  // m/s²

// What wood products weigh and how stiff they are, at the cautious end. Density: common practice,
// no source. Modulus of elasticity: Wood Handbook, table 12-1 (from memory); solid wood lies across
// the span here, so a sheet's figure is taken for it too.
struct Stuff {
  std::string_view word;
  double density;  // kg/m³
  double modulus;  // Pa
};
[[nodiscard]] Stuff StuffOf(const std::string& material);

[[nodiscard]] double Meters(Length length);

// In kg, by space: of the box, and of the front.
struct SpaceWeights {
  std::vector<double> box, front;
};
[[nodiscard]] SpaceWeights WeightsOf(const Bank& bank);

// Of all pieces of a part, in kg.
[[nodiscard]] double MassOf(const Part& part);

// What a drawer carries, in kg: as typed, where that is a weight.
[[nodiscard]] std::optional<double> LoadOf(const Spec& spec, const Bank& bank, std::size_t space);

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_WEIGHTS_H_
