#include <algorithm>
#include <tuple>

#include "bank/part_roles.h"
#include "spec/kinds.h"
#include "tillwright/assembly.h"

namespace tillwright {
namespace {

class SeatFinder {
 public:
  SeatFinder(const Bank& bank, const Part& part) : bank_(bank), part_(part) {}

  std::vector<Seat> Find() {
    if (!bank_.casework || !Facts(bank_.casework->joint).cut) return {};
    depth_ = bank_.casework->joint_depth;
    for (std::size_t i = 0; i < bank_.dividers.size(); ++i) {
      const Divider& member = bank_.dividers[i];
      if (part_.divider != static_cast<int>(i)) Look(member, static_cast<int>(i));
    }
    std::ranges::sort(seats_, {}, [](const Seat& seat) {
      return std::tuple(seat.other_face, seat.offset, seat.member);
    });
    return std::move(seats_);
  }

 private:
  void Look(const Divider& member, int index) {
    const Rect& r = member.rect;
    const CaseBuild& c = *bank_.casework;
    const bool below = member.partition && r.y.IsZero();
    const bool above = member.partition && r.Top() == bank_.opening_height;
    const Length end = -(c.side_in + depth_);
    switch (Facts(part_.role).takes) {
      case TakesMembers::kSide:
        if (member.partition) return;
        // From the opening's bottom to the side's lower end.
        if (r.x.IsZero()) Standing(index, false, -c.base);
        if (r.Right() == bank_.opening_width) Standing(index, true, -c.base);
        return;
      case TakesMembers::kBottom:
        if (below) Lying(index, false, end);
        return;
      case TakesMembers::kTop:
        if (above) Lying(index, false, end);
        return;
      case TakesMembers::kStretcher:
        if (above) Lying(index, true, end);
        return;
      case TakesMembers::kWorktop:  // where it closes the case
        if (above && c.top_none) Lying(index, true, -(c.side_in + c.side + c.worktop->left));
        return;
      case TakesMembers::kPartition:
        if (!member.partition) InPartition(index);
        return;
      case TakesMembers::kDivider:
        if (member.partition) InDivider(index);
        return;
      case TakesMembers::kNone:
        return;
    }
  }

  const Rect& RectOf(int member) const {
    return bank_.dividers[static_cast<std::size_t>(member)].rect;
  }

  // Where the part's own lower or left end is.
  Length Begin() const { return bank_.dividers[static_cast<std::size_t>(part_.divider)].begin; }

  void InPartition(int index) {
    const Rect& own = RectOf(part_.divider);
    const Rect& r = RectOf(index);
    if (r.y >= own.Top() || r.Top() <= own.y) return;
    if (r.x == own.Right()) Standing(index, false, Begin());
    if (r.Right() == own.x) Standing(index, true, Begin());
  }

  void InDivider(int index) {
    const Rect& own = RectOf(part_.divider);
    const Rect& r = RectOf(index);
    if (r.x >= own.Right() || r.Right() <= own.x) return;
    if (r.y == own.Top()) Lying(index, false, Begin());
    if (r.Top() == own.y) Lying(index, true, Begin());
  }

  // Across a part that stands; its lower end is at `end` of the opening's heights.
  void Standing(int index, bool other_face, Length end) {
    const Rect& r = RectOf(index);
    seats_.push_back({index, other_face, false, r.y - end, WidthOf(r.height), depth_});
  }
  void Lying(int index, bool other_face, Length end) {
    const Rect& r = RectOf(index);
    seats_.push_back({index, other_face, true, r.x - end, WidthOf(r.width), depth_});
  }
  // A tongue lies along a divider's lower and a partition's left face.
  Length WidthOf(Length thickness) const { return bank_.casework->SeatWidth(thickness); }

  const Bank& bank_;
  const Part& part_;
  Length depth_;
  std::vector<Seat> seats_;
};

}  // namespace

std::vector<Seat> SeatsIn(const Bank& bank, const Part& part) {
  return SeatFinder(bank, part).Find();
}

}  // namespace tillwright
