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

bool IsBeside(PaperSide side) { return side == PaperSide::kLeft || side == PaperSide::kRight; }

}  // namespace

DimensionText TextOf(const Bank& bank, const std::string& path) {
  const std::optional<Length> value = DimensionValue(bank, path);
  if (!value) return {};
  return {FormatLength(*value, bank.units), path};
}

DimensionChain ChainOf(const Bank& bank, const PaperMap& map, PaperSide side,
                       std::vector<DimensionStop> stops) {
  DimensionChain chain;
  for (std::size_t i = 0; i < stops.size(); ++i) {
    if (i > 0 && stops[i].at <= stops[i - 1].at) {
      stops[i - 1].path = std::exchange(stops[i].path, {});
      stops[i].at = stops[i - 1].at;
    }
  }
  const auto same = [](const DimensionStop& a, const DimensionStop& b) { return a.at == b.at; };
  stops.erase(std::unique(stops.begin(), stops.end(), same), stops.end());
  for (std::size_t i = 0; i < stops.size(); ++i) {
    chain.stations.push_back(IsBeside(side) ? map.Y(stops[i].at) : map.X(stops[i].at));
    if (i + 1 < stops.size()) chain.texts.push_back(TextOf(bank, stops[i].path));
  }
  if (IsBeside(side)) {
    std::ranges::reverse(chain.stations);
    std::ranges::reverse(chain.texts);
  }
  return chain;
}

void AddTier(DimensionStack& stack, DimensionChain chain) {
  const bool any = std::ranges::any_of(
      chain.texts, [](const DimensionText& text) { return !text.text.empty(); });
  if (any) stack.tiers.push_back(std::move(chain));
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
