#include "draw/stick/ruler.h"

#include <array>
#include <string>

#include "draw/stick/strip_room.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

struct Division {
  int every;      // of the smallest
  double length;  // mm
};
struct Graduations {
  Length least;
  std::array<Division, 5> divisions;  // the largest first
};

const Graduations& GraduationsOf(Unit unit) {
  static constexpr Graduations kInch{Length::Inches(1, 8),
                                     {{{8, kRulerTick}, {4, 3.5}, {2, 2.4}, {1, 1.5}, {1, 1.5}}}};
  static constexpr Graduations kMillimeter{
      Length::Millimeters(1), {{{10, kRulerTick}, {5, 2.6}, {1, 1.5}, {1, 1.5}, {1, 1.5}}}};
  return unit == Unit::kInch ? kInch : kMillimeter;
}

double LengthOf(const Graduations& graduations, std::int64_t count) {
  for (const Division& division : graduations.divisions) {
    if (count % division.every == 0) return division.length;
  }
  return 0;
}

constexpr double kBeforeNumeral = 0.7;  // mm

// The number at a whole inch or at 10 mm.
std::string Numeral(const Graduations& graduations, Unit unit, std::int64_t count) {
  const std::int64_t every = graduations.divisions[0].every;
  if (count % every != 0) return {};
  const std::int64_t number = unit == Unit::kInch ? count / every : count;
  std::string text = number < 0 ? "−" : "";
  text += std::to_string(number < 0 ? -number : number);
  return text;
}

}  // namespace

void AddRuler(SheetGroup& out, const Ruler& ruler, const StripMap& map,
              const TextMetrics& metrics) {
  const Graduations& graduations = GraduationsOf(ruler.unit);
  const LabelStyle style{.cap_height = kNumeralCap,
                         .anchor = map.inward > 0 ? TextAnchor::kRight : TextAnchor::kLeft};
  const std::int64_t last =
      FloorTo(ruler.to, graduations.least).picometers() / graduations.least.picometers();
  const std::int64_t first =
      CeilTo(ruler.from, graduations.least).picometers() / graduations.least.picometers();
  const double low = map.V(ruler.from) + ruler.clear_low;
  const double high = map.V(ruler.to) - ruler.clear_high;
  HatchLines ticks{{}, Pen::kRuler};
  ticks.segments.reserve(static_cast<std::size_t>(last - first + 1));
  for (std::int64_t count = first; count <= last; ++count) {
    const Length at = count * graduations.least;
    const double length = LengthOf(graduations, count);
    ticks.segments.push_back({map.At(ruler.edge, at), map.At(ruler.edge - length, at)});
    const std::string numeral = Numeral(graduations, ruler.unit, count);
    const double v = map.V(at);
    if (numeral.empty() || v < low || v > high) continue;
    out.primitives.emplace_back(MakePlainLabel(
        metrics, numeral, style, map.At(ruler.edge - kRulerTick - kBeforeNumeral, v)));
  }
  out.primitives.emplace_back(std::move(ticks));
}

double RulerWidth(Unit unit, Length from, Length to, const TextMetrics& metrics) {
  const Graduations& graduations = GraduationsOf(unit);
  double widest = 0;
  for (const Length end : {from, to}) {
    const std::int64_t every = graduations.divisions[0].every;
    const std::int64_t count =
        FloorTo(end, every * graduations.least).picometers() / graduations.least.picometers();
    const LabelStyle style{.cap_height = kNumeralCap};
    widest =
        std::max(widest, MeasureLabel(metrics, Numeral(graduations, unit, count), style).width);
  }
  return kRulerTick + kBeforeNumeral + widest;
}

}  // namespace tillwright
