#include "draw/stick/ruler.h"

#include <array>
#include <string>

#include "draw/rich_text.h"
#include "draw/stick/strip_room.h"

namespace tillwright {
namespace {

struct Division {
  int every = 0;      // of the smallest
  double length = 0;  // mm
};
struct Graduations {
  Length least;
  std::array<Division, 4> divisions;  // the largest first
};

const Graduations& GraduationsOf(Unit unit) {
  static constexpr Graduations kInch{Length::Inches(1, 8),
                                     {{{8, kRulerTick}, {4, 3.5}, {2, 2.4}, {1, 1.5}}}};
  static constexpr Graduations kMillimetre{Length::Millimeters(1),
                                           {{{10, kRulerTick}, {5, 2.6}, {1, 1.5}, {}}}};
  return unit == Unit::kInch ? kInch : kMillimetre;
}

// Those of one length, at one pitch: where every second one would be longer, the others alone.
HatchLines TicksOf(const Graduations& graduations, std::size_t index, const Ruler& ruler,
                   const StripMap& map) {
  HatchLines ticks{{}, Pen::kRuler};
  const Division& own = graduations.divisions[index];
  const bool odd = index > 0 && graduations.divisions[index - 1].every == 2 * own.every;
  const Length pitch = own.every * graduations.least;
  for (Length at = CeilTo(ruler.from, pitch); at <= ruler.to; at += pitch) {
    if (odd && FloorTo(at, 2 * pitch) == at) continue;
    ticks.segments.push_back({map.At(ruler.edge, at), map.At(ruler.edge - own.length, at)});
  }
  return ticks;
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
  const Length pitch = graduations.divisions[0].every * graduations.least;
  const double low = map.V(ruler.from) + ruler.clear_low;
  const double high = map.V(ruler.to) - ruler.clear_high;
  for (Length at = CeilTo(ruler.from, pitch); at <= ruler.to; at += pitch) {
    const double v = map.V(at);
    if (v < low || v > high) continue;
    const std::int64_t count = at.picometers() / graduations.least.picometers();
    out.primitives.emplace_back(
        MakePlainLabel(metrics, Numeral(graduations, ruler.unit, count), style,
                       map.At(ruler.edge - kRulerTick - kBeforeNumeral, v)));
  }
  for (std::size_t i = 0; i < graduations.divisions.size(); ++i) {
    if (graduations.divisions[i].every == 0) continue;
    HatchLines ticks = TicksOf(graduations, i, ruler, map);
    if (!ticks.segments.empty()) out.primitives.emplace_back(std::move(ticks));
  }
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
