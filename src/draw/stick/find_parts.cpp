#include "draw/stick/find_parts.h"

#include <algorithm>
#include <tuple>

#include "draw/stick/mark_book.h"
#include "draw/stick/part_blocks.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

StickLane LaneOf(PartRole role) {
  switch (role) {
    case PartRole::kFront:
      return StickLane::kFront;
    case PartRole::kBoxSide:
    case PartRole::kBoxFrontEnd:
    case PartRole::kBoxBackEnd:
    case PartRole::kBoxBottom:
      return StickLane::kBox;
    case PartRole::kCaseSide:
    case PartRole::kCaseBottom:
    case PartRole::kCaseTop:
    case PartRole::kCaseBack:
    case PartRole::kDivider:
    case PartRole::kPartition:
    case PartRole::kStretcher:
    case PartRole::kToeKick:
    case PartRole::kFrameStile:
    case PartRole::kFrameTopRail:
    case PartRole::kFrameBottomRail:
    case PartRole::kFrameRail:
    case PartRole::kBlocking:
    case PartRole::kWebRail:
    case PartRole::kWebRunner:
    case PartRole::kWorktop:
      break;
  }
  return StickLane::kCase;
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
  PartFinder(const Bank& bank, std::span<const Stick> sticks) : bank_(bank), sticks_(sticks) {
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
    const StickLane lane = LaneOf(part.role);
    const std::array<StickAxis, 3> axes = PartAxes(part, b);
    std::array<std::optional<StickSize>, 3> sizes;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      switch (axes[i]) {
        case StickAxis::kHeight:
          sizes[i] = Find(axes[i], lane, floor_ + b.y, b.height, id);
          break;
        case StickAxis::kWidth:
          sizes[i] = part.role == PartRole::kWorktop
                         ? Find(axes[i], lane, Length(), b.width, "")
                         : Find(axes[i], lane, left_ + b.x, b.width, id);
          break;
        case StickAxis::kDepth:
          sizes[i] = Find(axes[i], lane, b.z, b.depth, id);
          break;
      }
    }
    return sizes;
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
    const auto marks =
        std::ranges::equal_range(places_, PlaceKey(axis, lane, at, stick), {}, KeyOf);
    return std::ranges::any_of(marks,
                               [&](const MarkPlace& place) { return IsFor(*place.mark, id); });
  }

  static bool IsFor(const StickMark& mark, const std::string& id) {
    return mark.ids.empty() || std::ranges::binary_search(mark.ids, id, IdBefore);
  }

  const Bank& bank_;
  std::span<const Stick> sticks_;
  Length left_, floor_;
  std::vector<MarkPlace> places_;
};

}  // namespace

std::vector<StickPart> FindParts(const Bank& bank, std::span<const Stick> sticks) {
  return PartFinder(bank, sticks).Run();
}

}  // namespace tillwright
