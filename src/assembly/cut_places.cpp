#include "assembly/cut_places.h"

#include "bank/part_roles.h"
#include "spec/kinds.h"

namespace tillwright {
namespace {

bool IsJointed(CutKind kind) {
  return kind == CutKind::kHalfBlindDovetail || kind == CutKind::kThroughDovetail ||
         kind == CutKind::kFinger;
}

JobWay Turned(JobWay way) { return {way.axis, !way.against}; }

class CutPlacer {
 public:
  CutPlacer(const Bank& bank, const Part& part, PlacedPart& piece)
      : bank_(bank),
        part_(part),
        piece_(piece),
        right_(RightSize(piece)),
        up_(UpSize(piece)),
        thickness_(Thickness(piece)) {}

  void Run(const std::vector<Seat>& seats) {
    piece_.cuts.reserve(part_.cuts.size() + seats.size() + 2);
    for (std::size_t i = 0; i < part_.cuts.size(); ++i) Listed(part_.cuts[i], i);
    for (std::size_t i = 0; i < seats.size(); ++i) SeatAt(seats[i], i);
    if (!part_.notch.IsNone()) NotchAt(part_.notch);
    if (Facts(part_.role).group == PartGroup::kFront) Bores();
  }

 private:
  void Listed(const Cut& cut, std::size_t index) {
    PlacedCut made;
    made.purpose = cut.purpose;
    made.kind = cut.kind;
    made.index = index;
    made.depth = cut.depth;
    made.partly = IsJointed(cut.kind);
    if (cut.purpose == CutPurpose::kMember) made.member = part_.takes;
    const bool stands = Facts(part_.role).grain == Grain::kVertical;
    switch (cut.from) {
      case CutFrom::kLowerEdge:
        return Channel(made, cut, CutRun::kAcross, false);
      case CutFrom::kFrontEnd:
        return Channel(made, cut, CutRun::kUpright, false);
      case CutFrom::kBackEnd:
      case CutFrom::kRearEdge:
        return Channel(made, cut, CutRun::kUpright, true);
      case CutFrom::kEachEnd:
        Channel(made, cut, stands ? CutRun::kAcross : CutRun::kUpright, false);
        return Channel(made, cut, stands ? CutRun::kAcross : CutRun::kUpright, true);
      case CutFrom::kLeftEdge:  // seen from above, its front at the left
        return Channel(made, cut, CutRun::kAcross, true);
      case CutFrom::kUpperFace:
        return InEdge(made, cut);
    }
  }

  void Channel(PlacedCut cut, const Cut& as, CutRun run, bool from_far) {
    const Length whole = run == CutRun::kUpright ? right_ : up_;
    const Length far = as.offset + as.width;
    cut.run = run;
    cut.from_far = from_far;
    cut.low = from_far ? whole - far : as.offset;
    cut.high = from_far ? whole - as.offset : far;
    cut.behind = as.face == CutOn::kOutside || as.face == CutOn::kLowerFace;
    Add(cut);
    if (as.face != CutOn::kBothFaces) return;
    cut.behind = cut.twin = true;
    Add(cut);
  }

  void Add(PlacedCut cut) {
    const Extent along{cut.low, cut.high};
    const bool upright = cut.run == CutRun::kUpright;
    const Length depth = Min(cut.depth, thickness_);
    const Extent into =
        cut.behind ? Extent{thickness_ - depth, thickness_} : Extent{Length(), depth};
    cut.into = cut.behind ? Turned(piece_.frame.into) : piece_.frame.into;
    cut.block = upright ? InJob(piece_, along, {Length(), up_}, into)
                        : InJob(piece_, {Length(), right_}, along, into);
    piece_.cuts.push_back(cut);
  }

  // In the edge that looks into the web frame: of the rail at the front the rear one.
  void InEdge(PlacedCut cut, const Cut& as) {
    cut.run = CutRun::kEdge;
    cut.from_far = piece_.block.z == (bank_.casework ? bank_.casework->front_in : Length());
    cut.low = cut.from_far ? up_ - as.depth : Length();
    cut.high = cut.from_far ? up_ : as.depth;
    cut.into = cut.from_far ? Turned(piece_.frame.up) : piece_.frame.up;
    cut.block =
        InJob(piece_, {Length(), right_}, {cut.low, cut.high}, {as.offset, as.offset + as.width});
    piece_.cuts.push_back(cut);
  }

  // A case side's other face is its twin's inside.
  void SeatAt(const Seat& seat, std::size_t index) {
    const bool side = part_.role == PartRole::kCaseSide;
    if (side && seat.other_face != piece_.mirrored) return;
    PlacedCut cut;
    cut.purpose = CutPurpose::kMember;
    cut.kind = *Facts(bank_.casework->joint).cut;
    cut.source = CutSource::kSeats;
    cut.index = index;
    cut.member = seat.member;
    cut.run = seat.upright ? CutRun::kUpright : CutRun::kAcross;
    cut.low = seat.offset;
    cut.high = seat.offset + seat.width;
    cut.depth = seat.depth;
    cut.behind = seat.other_face && !side;
    Add(cut);
  }

  void NotchAt(const Notch& notch) {
    PlacedCut cut;
    cut.purpose = CutPurpose::kToeKick;
    cut.source = CutSource::kNotch;
    cut.run = CutRun::kCorner;
    cut.high = notch.height;
    cut.depth = thickness_;
    cut.into = piece_.frame.into;
    cut.block =
        InJob(piece_, {Length(), notch.width}, {Length(), notch.height}, {Length(), thickness_});
    piece_.cuts.push_back(cut);
  }

  void Bores() {
    const Front& front = bank_.spaces[static_cast<std::size_t>(part_.space)].front;
    for (std::size_t i = 0; i < front.pulls.size(); ++i) {
      PlacedCut cut;
      cut.purpose = CutPurpose::kPull;
      cut.source = CutSource::kPulls;
      cut.index = i;
      cut.run = CutRun::kBore;
      cut.low = cut.high = front.pulls[i].y - front.rect.y;
      cut.depth = thickness_;
      cut.into = piece_.frame.into;
      const Length x = front.pulls[i].x - front.rect.x;
      cut.block = InJob(piece_, {x, x}, {cut.low, cut.high}, {Length(), thickness_});
      piece_.cuts.push_back(cut);
    }
  }

  const Bank& bank_;
  const Part& part_;
  PlacedPart& piece_;
  Length right_, up_, thickness_;
};

}  // namespace

void PlaceCuts(const Bank& bank, const Part& part, const std::vector<Seat>& seats,
               PlacedPart& piece) {
  CutPlacer(bank, part, piece).Run(seats);
}

}  // namespace tillwright
