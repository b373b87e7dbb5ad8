#include <algorithm>
#include <tuple>

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
    switch (part_.role) {
      case PartRole::kCaseSide:
        if (member.partition) return;
        // From the opening's bottom to the side's lower end.
        if (r.x.IsZero()) Standing(index, false, -c.base);
        if (r.Right() == bank_.opening_width) Standing(index, true, -c.base);
        return;
      case PartRole::kCaseBottom:
        if (member.partition && r.y.IsZero()) Lying(index, false, -(c.side_in + depth_));
        return;
      case PartRole::kCaseTop:
        if (member.partition && r.Top() == bank_.opening_height) {
          Lying(index, false, -(c.side_in + depth_));
        }
        return;
      case PartRole::kStretcher:
        if (member.partition && r.Top() == bank_.opening_height) {
          Lying(index, true, -(c.side_in + depth_));
        }
        return;
      case PartRole::kWorktop:  // where it closes the case
        if (c.top_none && member.partition && r.Top() == bank_.opening_height) {
          Lying(index, true, -(c.side_in + c.side + c.worktop->left));
        }
        return;
      case PartRole::kPartition:
        if (!member.partition) InPartition(index);
        return;
      case PartRole::kDivider:
      case PartRole::kWebRail:
        if (member.partition) InDivider(index);
        return;
      case PartRole::kFront:
      case PartRole::kBoxSide:
      case PartRole::kBoxFront:
      case PartRole::kBoxBack:
      case PartRole::kBoxBottom:
      case PartRole::kCaseBack:
      case PartRole::kToeKick:
      case PartRole::kFrameStile:
      case PartRole::kFrameTopRail:
      case PartRole::kFrameBottomRail:
      case PartRole::kFrameRail:
      case PartRole::kBlocking:
      case PartRole::kWebRunner:  // theirs run along them: Part::cuts
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
