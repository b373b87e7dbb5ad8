// The assembly: where each physical piece stands in the job, how it lies on the bench, and all that
// is cut into it. Views, part sheets, sticks, lists and estimates read it, so that no two of them
// can put one piece in two places.
//
// What has room to spare lies so:
// - A box bottom in a groove or rabbet is centered in its room, from side to side and from front to
//   back. Under an open back its rear edge is flush with the box back; its play, and what rounding
//   takes from its depth, is at the front.
// - A case's back is centered between the sides; in a rabbet or groove it stands its play above the
//   bottom's lower face.
#ifndef TILLWRIGHT_ASSEMBLY_H_
#define TILLWRIGHT_ASSEMBLY_H_

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "tillwright/bank.h"

namespace tillwright {

struct Extent {
  Length low, high;
  [[nodiscard]] constexpr Length Size() const { return high - low; }
  friend constexpr bool operator==(const Extent&, const Extent&) = default;
};
[[nodiscard]] Extent ExtentOf(const Block& block, JobAxis axis);

// Which list a placed cut stands in.
enum class CutSource : std::uint8_t { kPartCuts, kSeats, kNotch, kPulls };
// How it runs over the drawn face.
enum class CutRun : std::uint8_t {
  kAcross,   // from left to right
  kUpright,  // from the lower edge to the upper
  kEdge,     // along an edge, in it
  kCorner,   // at the lower left corner, right through
  kBore
};

struct PlacedCut {
  CutPurpose purpose = CutPurpose::kMember;
  CutKind kind = CutKind::kGroove;  // of no meaning for notches and bores
  CutSource source = CutSource::kPartCuts;
  std::size_t index = 0;  // into Part::cuts, the part's seats (SeatsIn()), or Front::pulls
  int member = -1;        // what it takes: index into Bank::dividers
  CutRun run = CutRun::kAcross;
  Length low, high;       // its two sides on the drawn face, from the left (upright) or lower edge
  bool from_far = false;  // it is measured from the right or upper edge
  bool behind = false;    // cut into the face that is not drawn
  bool twin = false;      // behind, and the same in the drawn face
  bool partly = false;    // tails, pins or fingers: only a part of it is cut away
  Length depth;           // into the wood
  Block block;            // what it takes away, in the job's axes; of a bore its axis: no width, no
                          // height, as the size of the bolt is its maker's
  JobWay into;            // the way it is cut, in the job's axes

  [[nodiscard]] bool IsUpright() const { return run == CutRun::kUpright; }
};
// From one edge of the drawn face to the other.
[[nodiscard]] inline bool IsBand(const PlacedCut& cut) {
  return cut.run == CutRun::kAcross || cut.run == CutRun::kUpright;
}

// What a piece belongs to.
struct PartOwner {
  enum class Kind : std::uint8_t { kSpace, kMember, kCase } kind = Kind::kCase;
  int index = 0;  // into Bank::spaces or Bank::dividers
  friend constexpr bool operator==(const PartOwner&, const PartOwner&) = default;
};

// What a piece is fixed to, and moves with.
enum class PartBody : std::uint8_t { kFront, kBox, kCase };

struct PlacedPart {
  std::size_t part = 0;  // index into Bank::parts
  PartRole role = PartRole::kFront;
  PartOwner owner;
  PartBody body = PartBody::kCase;
  bool mirrored = false;  // a right-hand piece: the drawn face of the left one, left for right
  Block block;            // with what enters other pieces
  Block clear;            // without it; of a member what shows in the opening
  PartFrame frame;
  std::vector<PlacedCut> cuts;  // those of Part::cuts, then seats, notch, bores
};

class Assembly {
 public:
  // Every piece in the order of Bank::parts, left before right.
  [[nodiscard]] std::span<const PlacedPart> pieces() const& { return pieces_; }
  void pieces() const&& = delete;  // they go with the assembly
  // The pieces of one of Bank::parts.
  [[nodiscard]] std::span<const PlacedPart> OfPart(std::size_t part) const;
  // Indices into pieces().
  [[nodiscard]] std::span<const std::size_t> OfOwner(PartOwner owner) const;
  // The first piece of that role and owner, or null.
  [[nodiscard]] const PlacedPart* Find(PartRole role, PartOwner owner) const;

 private:
  friend class Assembler;
  std::vector<PlacedPart> pieces_;
  std::vector<std::size_t> first_;                          // by part; one more at the end
  std::vector<std::vector<std::size_t>> spaces_, members_;  // by owner
  std::vector<std::size_t> case_;
};

[[nodiscard]] Assembly Assemble(const Bank& bank);
// The pieces of one of Bank::parts alone.
[[nodiscard]] std::vector<PlacedPart> PiecesOf(const Bank& bank, std::size_t part);

// A dado, or groove for a tongue, in which a divider or partition sits, seen from the part that
// takes it.
struct Seat {
  int member = 0;           // index into Bank::dividers
  bool other_face = false;  // a divider's lower, a partition's left face; the right case side's
  bool upright = false;     // across a part that lies; else across one that stands
  Length offset;            // from the part's lower or left end to the near side
  Length width, depth;
};
// The seats in a part, those of the face that is drawn first, each face's from the lower or left
// end. None where the case has butt joints, or there is no case.
[[nodiscard]] std::vector<Seat> SeatsIn(const Bank& bank, const Part& part);

// A stretch of a piece in its own frame, as a block of the job.
[[nodiscard]] Block InJob(const PlacedPart& piece, Extent right, Extent up, Extent into);
// The sides of the drawn face, and the thickness.
[[nodiscard]] Length RightSize(const PlacedPart& piece);
[[nodiscard]] Length UpSize(const PlacedPart& piece);
[[nodiscard]] Length Thickness(const PlacedPart& piece);
// The axes that the length, width and thickness of its part lie along.
[[nodiscard]] std::array<JobAxis, 3> SizeAxes(const PlacedPart& piece, const Part& part);

// What to do about tails, pins and fingers.
enum class JointBands : std::uint8_t { kKeep, kTakeAway };

// What is left of a piece, as blocks that touch but don't overlap.
[[nodiscard]] std::vector<Block> SolidOf(const PlacedPart& piece, JointBands bands);

// A place in a plane across one of the job's axes: of x = … (z, y), of y = … (x, z), of z = …
// (x, y).
struct PlanePoint {
  Length u, v;
  friend constexpr bool operator==(const PlanePoint&, const PlanePoint&) = default;
};
using PlaneRing = std::vector<PlanePoint>;

// What the plane `across` = `at` cuts of a piece: closed outlines, u to the right and v up
// anticlockwise, holes clockwise. A plane that only touches the piece cuts nothing; one that only
// touches a cut meets wood there.
[[nodiscard]] std::vector<PlaneRing> CutByPlane(const PlacedPart& piece, JobAxis across, Length at,
                                                JointBands bands);

}  // namespace tillwright

#endif  // TILLWRIGHT_ASSEMBLY_H_
