#include "render/comb.h"

#include <cmath>

namespace tillwright {
namespace {

constexpr std::size_t kFewest = 6;
constexpr double kSame = 1e-6;  // mm

PaperPoint Between(PaperPoint from, PaperPoint to) { return {to.x - from.x, to.y - from.y}; }

bool IsAt(PaperPoint p, PaperPoint start, PaperPoint step, double count) {
  return std::abs(start.x + count * step.x - p.x) < kSame &&
         std::abs(start.y + count * step.y - p.y) < kSame;
}

}  // namespace

std::optional<Comb> CombOf(const HatchLines& lines) {
  const std::vector<PaperSegment>& teeth = lines.segments;
  if (teeth.size() < kFewest || !StyleOf(lines.pen).dashes.empty()) return std::nullopt;
  const PaperPoint tooth = Between(teeth[0].from, teeth[0].to);
  const PaperPoint step = Between(teeth[0].from, teeth[1].from);
  const double pitch = std::hypot(step.x, step.y);
  const double pen = StyleOf(lines.pen).width;
  if (std::abs(tooth.x * step.x + tooth.y * step.y) > kSame || pitch < 2 * pen) return std::nullopt;
  for (std::size_t i = 0; i < teeth.size(); ++i) {
    const auto count = static_cast<double>(i);
    if (!IsAt(teeth[i].from, teeth[0].from, step, count)) return std::nullopt;
    if (!IsAt(teeth[i].to, teeth[0].to, step, count)) return std::nullopt;
  }
  const PaperPoint half{step.x / pitch * pen / 2, step.y / pitch * pen / 2};
  const PaperPoint first = teeth.front().from;
  const PaperPoint last = teeth.back().from;
  return Comb{{first.x + tooth.x / 2 - half.x, first.y + tooth.y / 2 - half.y},
              {last.x + tooth.x / 2 + half.x, last.y + tooth.y / 2 + half.y},
              std::hypot(tooth.x, tooth.y),
              {pen, pitch - pen}};
}

}  // namespace tillwright
