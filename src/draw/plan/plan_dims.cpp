#include "draw/plan/plan_dims.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "sheet/annotation.h"
#include "sheet/rich_text.h"
#include "tillwright/dimensions.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr double kNoteCap = 2.2;    // mm
constexpr double kNotePitch = 2.1;  // cap heights

}  // namespace

DimensionText TextOf(const Bank& bank, const std::string& path) {
  const std::optional<Length> value = DimensionValue(bank, path);
  if (!value) return {};
  return {FormatLength(*value, bank.units), path};
}

PaperBox AddPathNote(SheetGroup& out, const PathNote& note, const TextMetrics& metrics) {
  LeaderNote leader;
  leader.tip = note.tip;
  leader.elbow = note.elbow;
  leader.end = note.dot ? LeaderEnd::kDot : LeaderEnd::kArrow;
  leader.text_left = note.text_left;
  leader.cap_height = kNoteCap;
  SheetGroup drawn;
  bool first = true;
  double y = note.elbow.y;
  for (const NoteLine& line : note.lines) {
    if (line.text.empty()) continue;
    if (first) {
      leader.lines = {line.text};
      leader.path = line.path;
      AddLeaderNote(drawn, leader, metrics);
    } else {
      const Label& above = std::get<Label>(drawn.primitives.back());
      LabelStyle style;
      style.cap_height = kNoteCap;
      style.anchor = above.anchor;
      drawn.primitives.push_back(MakeLabel(metrics, line.text, style, {above.at.x, y}, line.path));
    }
    first = false;
    y += kNotePitch * kNoteCap;
  }
  const PaperBox covered = Bounds(drawn);
  std::ranges::move(drawn.primitives, std::back_inserter(out.primitives));
  return covered;
}

NoteLine NumberNote(const Bank& bank, std::string_view before, const std::string& path,
                    std::string_view after) {
  const DimensionText value = TextOf(bank, path);
  if (value.text.empty()) return {};
  std::string text(before);
  text += value.text;
  text += after;
  return {std::move(text), path};
}

}  // namespace tillwright
