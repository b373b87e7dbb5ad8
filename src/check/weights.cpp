#include "check/weights.h"

#include <array>

#include "bank/part_roles.h"
#include "diag/characters.h"
#include "spec/mass.h"
#include "spec/materials.h"

namespace tillwright {
namespace {

constexpr std::array kStuff{
    Stuff{"mdf", 750, 3.6e9},       Stuff{"particleboard", 680, 2.8e9},
    Stuff{"chipboard", 680, 2.8e9}, Stuff{"hardboard", 900, 3.1e9},
    Stuff{"hdf", 900, 3.1e9},       Stuff{"osb", 650, 4.4e9},
};
constexpr Stuff kPlywood{"", 650, 6.9e9};
constexpr Stuff kSolid{"", 650, 6.9e9};

}  // namespace

Stuff StuffOf(const std::string& material) {
  std::string lower;
  for (const char c : material) lower += Lower(c);
  for (const Stuff& stuff : kStuff) {
    if (lower.find(stuff.word) != std::string::npos) return stuff;
  }
  return IsSolidWood(material) ? kSolid : kPlywood;
}

double Meters(Length length) { return ToMillimeters(length) / 1000; }

double MassOf(const Part& part) {
  return part.count * Meters(part.length) * Meters(part.width) * Meters(part.thickness) *
         StuffOf(part.material).density;
}

SpaceWeights WeightsOf(const Bank& bank) {
  SpaceWeights weights;
  weights.box.resize(bank.spaces.size());
  weights.front.resize(bank.spaces.size());
  for (const Part& part : bank.parts) {
    if (part.space < 0) continue;
    const auto space = static_cast<std::size_t>(part.space);
    const PartGroup group = Facts(part.role).group;
    if (group == PartGroup::kBox) weights.box[space] += MassOf(part);
    if (group == PartGroup::kFront) weights.front[space] += MassOf(part);
  }
  return weights;
}

std::optional<double> LoadOf(const Spec& spec, const Bank& bank, std::size_t space) {
  return space < spec.leaves.size() && spec.leaves[space].load.typed
             ? ParseMass(spec.leaves[space].load.value, bank.units)
             : std::nullopt;
}

}  // namespace tillwright
