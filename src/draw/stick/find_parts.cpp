#include "draw/stick/find_parts.h"

#include <algorithm>
#include <tuple>

#include "draw/stick/mark_book.h"
#include "draw/stick/part_blocks.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

// A drawer's parts are its front's and its box's, but for what stands beside it in the case.
StickLane LaneOf(const Part& part) {
  if (part.role == PartRole::kFront) return StickLane::kFront;
  const bool of_case = part.space < 0 || part.role == PartRole::kBlocking;
  return of_case ? StickLane::kCase : StickLane::kBox;
}

// A mark, and where it is.
struct MarkPlace {
  StickAxis axis;
  StickLane lane;
  Length at;
  std::size_t stick;
  const StickMark* mark;
};

using PlaceKey = std::tuple<StickAxis, StickLane, Length, std::size_t>;
PlaceKey KeyOf(const MarkPlace& place) { return {place.axis, place.lane, place.at, place.stick}; }

class PartFinder {
 public:
  PartFinder(const Bank& bank, std::span<const Stick> sticks) : bank_(bank) {
    if (bank.casework) {
      left_ = bank.casework->side + bank.casework->side_in;
      floor_ = bank.casework->base;
    }
    for (std::size_t i = 0; i < sticks.size(); ++i) {
      for (const StickMark& mark : sticks[i].marks) {
        if (!mark.is_line) places_.push_back({sticks[i].axis, mark.lane, mark.at, i, &mark});
      }
    }
    std::ranges::stable_sort(places_, {}, KeyOf);
  }

  std::vector<StickPart> Run() const {
    std::vector<StickPart> all;
    for (const PartKind& kind : PartKinds(bank_)) {
      StickPart& row = all.emplace_back();
      row.label = PartKindLabel(bank_, kind);
      row.sizes = SizesOf(bank_.parts[kind.parts.front()]);
    }
    return all;
  }

 private:
  // What a part's marks are called by.
  [[nodiscard]] std::string IdOf(const Part& part) const {
    if (part.space >= 0) return ToText(bank_.spaces[static_cast<std::size_t>(part.space)].id);
    if (part.divider >= 0) return ToText(bank_.dividers[static_cast<std::size_t>(part.divider)]);
    return "";
  }

  [[nodiscard]] std::array<std::optional<StickSize>, 3> SizesOf(const Part& part) const {
    const Block b = PartBlock(bank_, part);
    const std::string id = IdOf(part);
    const StickLane lane = LaneOf(part);
    const std::array<StickAxis, 3> axes = PartAxes(part, b);
    std::array<std::optional<StickSize>, 3> sizes;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      sizes[i] = Find(axes[i], lane, BeginOf(part, b, axes[i]), SizeAlong(b, axes[i]), id);
    }
    return sizes;
  }

  // From the sticks' datum; a worktop's length from its own end.
  [[nodiscard]] Length BeginOf(const Part& part, const Block& b, StickAxis axis) const {
    if (axis == StickAxis::kHeight) return floor_ + b.y;
    if (axis == StickAxis::kDepth) return b.z;
    return part.role == PartRole::kWorktop ? Length() : left_ + b.x;
  }

  [[nodiscard]] std::optional<StickSize> Find(StickAxis axis, StickLane lane, Length from,
                                              Length size, const std::string& id) const {
    const Length to = from + size;
    auto at = std::ranges::lower_bound(places_, PlaceKey(axis, lane, from, 0), {}, KeyOf);
    for (; at != places_.end() && IsAt(*at, axis, lane, from); ++at) {
      if (IsFor(*at->mark, id) && Has(axis, lane, to, at->stick, id)) {
        return StickSize{at->stick, lane, from, to};
      }
    }
    return std::nullopt;
  }

  static bool IsAt(const MarkPlace& place, StickAxis axis, StickLane lane, Length at) {
    return place.axis == axis && place.lane == lane && place.at == at;
  }

  [[nodiscard]] bool Has(StickAxis axis, StickLane lane, Length at, std::size_t stick,
                         const std::string& id) const {
    const auto key = PlaceKey(axis, lane, at, stick);
    const auto from = std::ranges::lower_bound(places_, key, {}, KeyOf);
    const auto to = std::ranges::upper_bound(places_, key, {}, KeyOf);
    return std::any_of(from, to, [&](const MarkPlace& place) { return IsFor(*place.mark, id); });
  }

  static bool IsFor(const StickMark& mark, const std::string& id) {
    return mark.ids.empty() || std::ranges::binary_search(mark.ids, id, IdBefore);
  }

  const Bank& bank_;
  Length left_, floor_;
  std::vector<MarkPlace> places_;
};

}  // namespace

std::vector<StickPart> FindParts(const Bank& bank, std::span<const Stick> sticks) {
  return PartFinder(bank, sticks).Run();
}

}  // namespace tillwright
