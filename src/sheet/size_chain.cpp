#include "sheet/size_chain.h"

#include <algorithm>
#include <utility>

#include "sheet/rich_text.h"

namespace tillwright {
namespace {

bool IsBeside(PaperSide side) { return side == PaperSide::kLeft || side == PaperSide::kRight; }

DimensionChain TierBeside(PaperSide side, const SizeChain& chain, const PaperMap& map, Unit unit) {
  const auto paper = [&](Length at) { return IsBeside(side) ? map.Y(at) : map.X(at); };
  return TierOf(chain, paper, unit);
}

void AddIfDimensioned(DimensionStack& stack, DimensionChain tier) {
  const bool any =
      std::ranges::any_of(tier.texts, [](const DimensionText& text) { return !text.text.empty(); });
  if (any) stack.tiers.push_back(std::move(tier));
}

// True when the texts of a tier find room: those too wide for their segments stand in a column or
// row that may be longer than the chain by `spare` mm. A single text always does.
bool HasRoomFor(const DimensionChain& tier, PaperSide side, double spare,
                const TextMetrics& metrics) {
  const DimensionStyle style;
  const LabelStyle text{.cap_height = style.cap_height};
  double moved = 0;
  int texts = 0;
  for (std::size_t i = 0; i < tier.texts.size(); ++i) {
    if (tier.texts[i].text.empty()) continue;
    ++texts;
    const TextSize size = MeasureLabel(metrics, tier.texts[i].text, text);
    const double need = IsBeside(side) ? size.height : size.width;
    const double length = tier.stations[i + 1] - tier.stations[i];
    if (length >= need + 2 * style.room_beside) continue;
    moved += need + (IsBeside(side) ? 1 : 2) * style.clearance;
  }
  return texts <= 1 || moved <= tier.stations.back() - tier.stations.front() + spare;
}

}  // namespace

void SizeChain::Add(Length from, Length to, std::string path, bool runs_against) {
  if (to <= from || (!places.empty() && from < places.back())) return;
  if (places.empty()) {
    places.push_back(from);
  } else if (from > places.back()) {
    places.push_back(from);
    paths.emplace_back();
    against.push_back(false);
  }
  places.push_back(to);
  paths.push_back(std::move(path));
  against.push_back(runs_against);
}

SizeChain SizeChain::Through(std::vector<SizeStop> stops) {
  for (std::size_t i = 1; i < stops.size(); ++i) stops[i].at = Max(stops[i].at, stops[i - 1].at);
  SizeChain chain;
  for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
    chain.Add(stops[i].at, stops[i + 1].at, std::move(stops[i].path), stops[i].against);
  }
  return chain;
}

DimensionChain TierOf(const SizeChain& chain, const std::function<double(Length)>& paper,
                      Unit unit) {
  DimensionChain tier;
  tier.stations.reserve(chain.places.size());
  tier.texts.reserve(chain.paths.size());
  for (const Length place : chain.places) tier.stations.push_back(paper(place));
  for (std::size_t i = 0; i < chain.paths.size(); ++i) {
    const Length size = chain.places[i + 1] - chain.places[i];
    tier.texts.push_back(
        chain.paths[i].empty()
            ? DimensionText{}
            : DimensionText{FormatLength(chain.against[i] ? -size : size, unit), chain.paths[i]});
  }
  if (!tier.stations.empty() && tier.stations.front() > tier.stations.back()) {
    std::ranges::reverse(tier.stations);
    std::ranges::reverse(tier.texts);
  }
  return tier;
}

void AddTier(DimensionStack& stack, const SizeChain& chain, const PaperMap& map, Unit unit) {
  AddIfDimensioned(stack, TierBeside(stack.side, chain, map, unit));
}

void AddTierWithRoom(DimensionStack& stack, SizeChain chain, const PaperMap& map, Unit unit,
                     const TierRoom& room, const TextMetrics& metrics) {
  DimensionChain tier = TierBeside(stack.side, chain, map, unit);
  if (!HasRoomFor(tier, stack.side, room.whole, metrics)) {
    for (std::string& path : chain.paths) {
      const auto is_in = [&](std::string_view word) {
        return path.find(word) != std::string::npos;
      };
      if (std::ranges::any_of(room.lesser, is_in)) path.clear();
    }
    tier = TierBeside(stack.side, chain, map, unit);
    if (!HasRoomFor(tier, stack.side, room.rest, metrics)) return;
  }
  AddIfDimensioned(stack, std::move(tier));
}

}  // namespace tillwright
