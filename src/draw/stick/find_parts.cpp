#include "draw/stick/find_parts.h"

#include <algorithm>
#include <tuple>

#include "bank/part_roles.h"
#include "draw/stick/mark_book.h"
#include "tillwright/assembly.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

StickLane LaneOf(PartBody body) {
  switch (body) {
    case PartBody::kFront:
      return StickLane::kFront;
    case PartBody::kBox:
      return StickLane::kBox;
    case PartBody::kCase:
      break;
  }
  return StickLane::kCase;
}

StickAxis AxisOf(JobAxis axis) {
  switch (axis) {
    case JobAxis::kX:
      return StickAxis::kWidth;
    case JobAxis::kY:
      return StickAxis::kHeight;
    case JobAxis::kZ:
      break;
  }
  return StickAxis::kDepth;
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
    const Assembly assembly = Assemble(bank_);
    for (const PartKind& kind : PartKinds(bank_)) {
      StickPart& row = all.emplace_back();
      row.label = PartKindLabel(bank_, kind);
      row.sizes = SizesOf(assembly.OfPart(kind.parts.front()).front());
    }
    return all;
  }

 private:
  // What a piece's marks are called by.
  [[nodiscard]] std::string IdOf(PartOwner owner) const {
    const auto index = static_cast<std::size_t>(owner.index);
    if (owner.kind == PartOwner::Kind::kSpace) return ToText(bank_.spaces[index].id);
    return owner.kind == PartOwner::Kind::kMember ? ToText(bank_.dividers[index]) : "";
  }

  [[nodiscard]] std::array<std::optional<StickSize>, 3> SizesOf(const PlacedPart& piece) const {
    const std::string id = IdOf(piece.owner);
    const std::array<JobAxis, 3> axes = SizeAxes(piece, bank_.parts[piece.part]);
    std::array<std::optional<StickSize>, 3> sizes;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
      const Extent extent = ExtentOf(piece.block, axes[i]);
      const Length from = extent.low + DatumOf(piece, axes[i]);
      sizes[i] = Find(AxisOf(axes[i]), LaneOf(piece.body), from, extent.Size(), id);
    }
    return sizes;
  }

  // From the sticks' datum to the opening's corner; a worktop's length counts
  // from its own end.
  [[nodiscard]] Length DatumOf(const PlacedPart& piece, JobAxis axis) const {
    if (axis == JobAxis::kY) return floor_;
    if (axis == JobAxis::kZ) return {};
    return Facts(piece.role).group == PartGroup::kWorktop ? -piece.block.x : left_;
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
