// How the sizes of parts, the places of pieces, and what is cut into them are made.
#include <algorithm>
#include <array>

#include "bank/part_roles.h"
#include "dimension/fields.h"
#include "spec/kinds.h"
#include "stock/part_seats.h"

namespace tillwright {
namespace {

std::string Called(std::string_view what, std::string_view a, std::string_view b) {
  return (((((std::string("the ") += what) += " of (") += a) += ", ") += b) += ")";
}

std::string MemberId(const Bank& bank, int index) {
  return ToText(bank.dividers[static_cast<std::size_t>(index)]);
}

// The channel that takes a member so thick.
std::string SeatWidth(const Bank& bank, std::string thickness) {
  return bank.casework->tongue.IsZero() ? std::move(thickness) : "case.joint.tongue";
}

// --- Pieces -------------------------------------------------------------------------------------

constexpr std::string_view kFrameFront = "case.face_frame.thickness?";

// Which of the pieces of one role that go to one place: the first, the next, any, or one that
// stands before a member.
enum class Which : std::uint8_t { kFirst, kSecond, kAny, kAtMember };

// What the sides of a block are made of.
struct BlockRow {
  PartRole role;
  Which which;
  std::string_view x, y, z, width, height, depth;
};

constexpr BlockRow kBlockRows[] = {
    {PartRole::kStretcher, Which::kFirst, "half of (opening.width - case.member_length)",
     "opening.height + case.high_in?", kFrameFront, "case.member_length", "case.top",
     "case.stretchers.width"},
    {PartRole::kStretcher, Which::kSecond, "half of (opening.width - case.member_length)",
     "opening.height + case.high_in?",
     "case.face_frame.thickness? + case.inside_depth - case.stretchers.width", "case.member_length",
     "case.top", "case.stretchers.width"},
    {PartRole::kToeKick, Which::kAny, "0 - case.side_in?", "0 - case.base", "case.toe_kick.setback",
     "case.inside_width", "case.raise", "case.side"},
    {PartRole::kFrameStile, Which::kAtMember, ".x", ".y", "0", ".width", ".height",
     "case.face_frame.thickness"},
    {PartRole::kFrameStile, Which::kFirst, "0 - case.face_frame.stile", "case.face_frame.y", "0",
     "case.face_frame.stile", "case.face_frame.height", "case.face_frame.thickness"},
    {PartRole::kFrameStile, Which::kSecond, "opening.width", "case.face_frame.y", "0",
     "case.face_frame.stile", "case.face_frame.height", "case.face_frame.thickness"},
    {PartRole::kFrameRail, Which::kAtMember, ".x", ".y", "0", ".width", ".height",
     "case.face_frame.thickness"},
    {PartRole::kFrameTopRail, Which::kAny, "0", "opening.height", "0", "opening.width",
     "case.face_frame.rail", "case.face_frame.thickness"},
    {PartRole::kFrameBottomRail, Which::kAny, "0", "0 - case.face_frame.bottom_rail", "0",
     "opening.width", "case.face_frame.bottom_rail", "case.face_frame.thickness"},
    // About the slide's line, inside the cell; at the left or right.
    {PartRole::kBlocking, Which::kAny, "",
     "the greater of (.cell.y, the lesser of (.slide.line_y - half of (.blocking.width), "
     ".cell.top - .blocking.width))",
     "case.face_frame.thickness", "case.side_in",
     "the lesser of (case.face_frame.blocking, .cell.height)", "case.inside_depth"},
    {PartRole::kWebRail, Which::kFirst, ".begin", ".y", kFrameFront, ".length", ".height",
     "case.web_frame.rail"},
    {PartRole::kWebRail, Which::kSecond, ".begin", ".y",
     "case.face_frame.thickness? + .depth - case.web_frame.rail", ".length", ".height",
     "case.web_frame.rail"},
    {PartRole::kWebRunner, Which::kAny, "", ".y",
     "case.face_frame.thickness? + case.web_frame.rail - case.web_frame.tenon",
     "case.web_frame.runner", ".height",
     ".depth - 2 x case.web_frame.rail + 2 x case.web_frame.tenon - case.web_frame.free"},
    {PartRole::kWorktop, Which::kAny, "0 - case.side_in? - case.side - case.worktop.left",
     "case.height - case.base", "", "case.worktop.width", "case.worktop.thickness",
     "case.worktop.depth"},
};

class PieceSums {
 public:
  PieceSums(const Bank& bank, std::size_t index) : bank_(bank), piece_(bank.pieces[index]) {
    for (std::size_t i = 0; i < index; ++i) {
      const CasePiece& other = bank.pieces[i];
      const bool like = other.role == piece_.role && other.space == piece_.space &&
                        other.divider == piece_.divider;
      order_ += like ? 1 : 0;
    }
  }

  [[nodiscard]] const BlockRow& Row() const {
    const auto row = std::ranges::find_if(kBlockRows, [&](const BlockRow& at) {
      if (at.role != piece_.role) return false;
      return at.which == Which::kAny || (at.which == Which::kAtMember && piece_.divider >= 0) ||
             (at.which == Which::kFirst && order_ == 0) ||
             (at.which == Which::kSecond && order_ == 1);
    });
    return *row;  // there is one of every piece
  }

  // Where no row can tell: of blocking and runners the left side, of a worktop the front.
  [[nodiscard]] std::string X() const {
    if (piece_.space < 0) return RunnerAt();
    return piece_.block.x < Length() ? "0 - case.side_in" : "opening.width";
  }
  // Flush with the thickest front.
  [[nodiscard]] std::string Z() const {
    for (const Space& space : bank_.spaces) {
      if (piece_.block.z.IsZero()) break;
      if (space.HasFront() && -space.front.thickness == piece_.block.z) {
        return "0 - " + ToText(space.id) + ".front.thickness";
      }
    }
    return "0";
  }

 private:
  // At both ends of the rails, their tongues left out, and under partitions.
  [[nodiscard]] std::string RunnerAt() const {
    const bool tongues = !bank_.casework->tongue.IsZero();
    if (order_ == 0) return tongues ? ".begin + case.joint.depth" : ".begin";
    if (order_ == 1) {
      return std::string(".begin + .length") + (tongues ? " - case.joint.depth" : "") +
             " - case.web_frame.runner";
    }
    for (const Divider& member : bank_.dividers) {
      const Rect& r = member.rect;
      if (!member.partition || r.x + HalfBelow(r.width - piece_.block.width) != piece_.block.x) {
        continue;
      }
      const std::string id = ToText(member);
      return id + ".x + half of (" + id + ".width - case.web_frame.runner)";
    }
    return {};
  }

  const Bank& bank_;
  const CasePiece& piece_;
  int order_ = 0;  // among its like
};

// The piece that a part is, from 1.
std::string PiecePath(const Bank& bank, const Part& part) {
  const auto at = std::ranges::find_if(bank.pieces, [&](const CasePiece& piece) {
    return piece.role == part.role && piece.space == part.space && piece.divider == part.divider &&
           piece.takes == part.takes;
  });
  return "piece." + std::to_string(at - bank.pieces.begin() + 1) + ".";
}

// --- Sizes of parts -----------------------------------------------------------------------------

struct Sizes {
  std::string length, width, thickness;
};

// Of the face that is drawn, to the right and upward, and the thickness.
struct FaceRow {
  PartRole role;
  std::string_view right, up, thickness;
};

constexpr FaceRow kFaceRows[] = {
    {PartRole::kFront, ".front.width", ".front.height", ".front.thickness"},
    {PartRole::kBoxSide, ".box.side_length", ".box.wood_height", ".side.thickness"},
    {PartRole::kBoxFront, ".box.end_length", ".box.wood_height", ".end.thickness"},
    {PartRole::kBoxBack, ".box.end_length", ".box.back_height", ".end.thickness"},
    {PartRole::kBoxBottom, ".box.panel_width", ".box.panel_depth", ".bottom.thickness"},
    {PartRole::kCaseSide, "case.depth", "case.height", "case.side"},
    {PartRole::kCaseBottom, "case.member_length", "case.inside_depth", "case.bottom"},
    {PartRole::kCaseTop, "case.member_length", "case.inside_depth", "case.top"},
    {PartRole::kCaseBack, "case.back.width", "case.back.height", "case.back.thickness"},
    {PartRole::kDivider, ".length", ".depth", ".thickness"},
    {PartRole::kPartition, ".depth", ".length", ".thickness"},
};

std::string SideOf(const std::string& piece, JobAxis axis) {
  if (axis == JobAxis::kX) return piece + "width";
  return piece + (axis == JobAxis::kY ? "height" : "depth");
}

// A length is along the grain; without one the longer side.
Sizes SizesOf(const Bank& bank, const Part& part) {
  const auto row = std::ranges::find(kFaceRows, part.role, &FaceRow::role);
  const bool whole = row != std::end(kFaceRows);  // else a piece: the sides of its block
  const std::string piece = whole ? std::string() : PiecePath(bank, part);
  const PartFrame& frame = Facts(part.role).frame;
  const std::string right = whole ? std::string(row->right) : SideOf(piece, frame.right.axis);
  const std::string up = whole ? std::string(row->up) : SideOf(piece, frame.up.axis);
  const std::string thick = whole ? std::string(row->thickness) : SideOf(piece, frame.into.axis);
  switch (part.grain) {
    case Grain::kHorizontal:
      return {right, up, thick};
    case Grain::kVertical:
      return {up, right, thick};
    case Grain::kNone:
      break;
  }
  return {Called("greater", right, up), Called("lesser", right, up), thick};
}

// --- Cuts ---------------------------------------------------------------------------------------

struct CutSums {
  std::string offset, width, depth;
};

class CutFinder {
 public:
  CutFinder(const Bank& bank, const Part& part, const std::string& path)
      : bank_(bank), part_(part), path_(path) {}

  CutSums Find(std::size_t index) const {
    const Cut& cut = part_.cuts[index];
    if (part_.space >= 0) return InBox(cut);
    if (Facts(part_.role).in_pairs) return InSide(cut, index);
    if (cut.from == CutFrom::kLeftEdge) return ForPartition();
    if (cut.face == CutOn::kInnerEdge) return {Shoulder(), Tongue(), "case.web_frame.tenon"};
    if (cut.kind == CutKind::kTenon) return {"0", "case.web_frame.tenon", Shoulder()};
    return {"0", "case.joint.depth", path_ + "thickness - case.joint.tongue"};
  }

 private:
  CutSums InBox(const Cut& cut) const {
    switch (cut.from) {
      case CutFrom::kLowerEdge:
        return {".groove.up?", ".bottom.thickness", ".groove.depth"};
      case CutFrom::kFrontEnd:
        return {"0", ".end.thickness", ".corner.depth"};
      case CutFrom::kBackEnd:
        return {".corner.back_setback", ".end.thickness", ".corner.depth"};
      case CutFrom::kEachEnd:
      case CutFrom::kRearEdge:
      case CutFrom::kUpperFace:
      case CutFrom::kLeftEdge:
        break;
    }
    if (Facts(part_.role).in_pairs) return {"0", ".corner.pin", ".side.thickness"};
    return {"0", ".side.thickness", ".corner.pin"};
  }

  CutSums InSide(const Cut& cut, std::size_t index) const {
    if (cut.from == CutFrom::kRearEdge) {
      if (cut.kind == CutKind::kRabbet) return {"0", "case.back.thickness", "case.back.lap"};
      return {"case.back.inset", "case.back.thickness", "case.back.depth"};
    }
    const char* depth = "case.joint.depth";
    if (index > 0) {
      return {"case.height - case.top", SeatWidth(bank_, "case.top"), depth};
    }
    const std::string width = SeatWidth(bank_, "case.bottom");
    return {"case.raise + case.bottom - " + width, width, depth};
  }

  // Along a runner, what takes the partition over or under it.
  CutSums ForPartition() const {
    const std::string id = MemberId(bank_, part_.takes);
    const std::string offset = Called("greater", "0", id + ".x - " + PiecePath(bank_, part_) + "x");
    return {offset,
            Called("lesser", SeatWidth(bank_, id + ".thickness"),
                   "case.web_frame.runner - " + path_ + "cut.1.offset"),
            "case.joint.depth"};
  }

  // A third of the rails' thickness in whole increments, where it has one.
  std::string Tongue() const {
    const std::string third = path_ + "thickness / 3";
    return PartBelow(part_.thickness, 3) < bank_.round ? third : "down to round of (" + third + ")";
  }
  std::string Shoulder() const { return "half of (" + path_ + "thickness - " + Tongue() + ")"; }

  const Bank& bank_;
  const Part& part_;
  const std::string& path_;
};

// --- Seats --------------------------------------------------------------------------------------

// From where a part's seats are measured, as what is added to a member's place.
std::string SeatOrigin(const Bank& bank, const Part& part) {
  if (Facts(part.role).in_pairs) return " + case.base";
  if (Facts(part.role).group == PartGroup::kWorktop) {
    return " + case.side_in? + case.side + case.worktop.left";
  }
  if (part.divider >= 0) return " - " + MemberId(bank, part.divider) + ".begin";
  return " + case.side_in? + case.joint.depth";
}

void AddSeats(const Bank& bank, const Part& part, Fields& out) {
  const std::vector<Seat> seats = SeatsIn(bank, part);
  for (std::size_t i = 0; i < seats.size(); ++i) {
    const Seat& seat = seats[i];
    const std::string head = "seat." + std::to_string(i + 1) + ".";
    const std::string id = MemberId(bank, seat.member);
    out.push_back(
        {head + "offset", seat.offset, id + (seat.upright ? ".x" : ".y") + SeatOrigin(bank, part)});
    out.push_back({head + "width", seat.width, SeatWidth(bank, id + ".thickness")});
    out.push_back({head + "depth", seat.depth, "case.joint.depth"});
  }
}

}  // namespace

void AddPieceFields(const Bank& bank, std::size_t index, Fields& out) {
  const Block& b = bank.pieces[index].block;
  const PieceSums sums(bank, index);
  const BlockRow& row = sums.Row();
  out.push_back({"x", b.x, row.x.empty() ? sums.X() : std::string(row.x)});
  out.push_back({"y", b.y, std::string(row.y)});
  out.push_back({"z", b.z, row.z.empty() ? sums.Z() : std::string(row.z)});
  out.push_back({"width", b.width, std::string(row.width)});
  out.push_back({"height", b.height, std::string(row.height)});
  out.push_back({"depth", b.depth, std::string(row.depth)});
}

void AddPartFields(const Bank& bank, const Part& part, Fields& out) {
  const std::string path = "part." + PartId(bank, part) + ".";
  const Sizes sizes = SizesOf(bank, part);
  out.push_back({"length", part.length, sizes.length});
  out.push_back({"width", part.width, sizes.width});
  out.push_back({"thickness", part.thickness, sizes.thickness});
  if (!part.notch.IsNone()) {
    out.push_back(
        {"notch.width", part.notch.width, "case.toe_kick.setback - " + std::string(kFrameFront)});
    out.push_back({"notch.height", part.notch.height, "case.raise"});
  }
  const CutFinder cuts(bank, part, path);
  for (std::size_t i = 0; i < part.cuts.size(); ++i) {
    const std::string head = "cut." + std::to_string(i + 1) + ".";
    if (!out.WantUnder(head)) continue;
    const CutSums sums = cuts.Find(i);
    out.push_back({head + "offset", part.cuts[i].offset, sums.offset});
    out.push_back({head + "width", part.cuts[i].width, sums.width});
    out.push_back({head + "depth", part.cuts[i].depth, sums.depth});
    out.push_back({head + "left", {}, path + "thickness - " + path + head + "depth"});
  }
  if (out.WantUnder("seat.")) AddSeats(bank, part, out);
}

}  // namespace tillwright
