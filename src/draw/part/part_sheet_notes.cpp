#include "draw/part/part_sheet_notes.h"

#include <array>
#include <set>

#include "bank/part_roles.h"
#include "stock/part_names.h"
#include "stock/part_seats.h"

namespace tillwright {
namespace {

const Part& Drawn(const Bank& bank, const PartKind& kind) { return bank.parts[kind.parts.front()]; }

std::string_view JointName(CutKind kind) {
  switch (kind) {
    case CutKind::kGroove:
      return "Groove";
    case CutKind::kRabbet:
      return "Rabbet";
    case CutKind::kDado:
      return "Dado";
    case CutKind::kHalfBlindDovetail:
      return "Half-blind dovetails";
    case CutKind::kThroughDovetail:
      return "Through dovetails";
    case CutKind::kFinger:
      return "Finger joint";
    case CutKind::kTenon:
      return "Tenon";
  }
  return "";
}

std::string_view PlaceName(CutFrom from) {
  switch (from) {
    case CutFrom::kLowerEdge:
      return " along the lower edge";
    case CutFrom::kFrontEnd:
      return " at the front end";
    case CutFrom::kBackEnd:
      return " at the rear end";
    case CutFrom::kEachEnd:
      return " at each end";
    case CutFrom::kRearEdge:
      return " along the rear edge";
    case CutFrom::kUpperFace:
      return " along the inner edge";
    case CutFrom::kLeftEdge:
      return " along it";
  }
  return "";
}

// What goes into the cut, or what becomes of it.
std::string_view PurposeWords(const Cut& cut) {
  switch (cut.purpose) {
    case CutPurpose::kBoxBottom:
      return ", for the bottom";
    case CutPurpose::kBoxCorner:
      if (cut.from == CutFrom::kEachEnd) return ", to the baseline";
      return cut.from == CutFrom::kFrontEnd ? ", for the box front" : ", for the box back";
    case CutPurpose::kCaseBottom:
      return ", for the case bottom";
    case CutPurpose::kCaseTop:
      return ", for the case top";
    case CutPurpose::kCaseBack:
      return ", for the back";
    case CutPurpose::kMember:
      if (cut.face == CutOn::kBothFaces) return ", on both faces, for partitions";
      return cut.face == CutOn::kLowerFace ? ", on the lower face, for a partition"
                                           : ", for a partition";
    case CutPurpose::kTongue:
      return cut.face == CutOn::kOutside ? ", on the outside" : "";
    case CutPurpose::kWebRunner:
      return ", for the runners' tenons";
    case CutPurpose::kTenon:
      return ", on both faces";
    case CutPurpose::kToeKick:
    case CutPurpose::kPull:
      break;
  }
  return "";
}

// Of a cut that the face does not show.
std::string EdgeCutSize(const Cut& cut, Unit unit) {
  const auto in = [unit](Length length) { return FormatLength(length, unit); };
  return ": " + in(cut.width) + " wide, " + in(cut.depth) + " deep, " + in(cut.offset) +
         " below the top face";
}

}  // namespace

std::string UpperCase(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
  }
  return out;
}

std::string PartKindRole(const Bank& bank, const PartKind& kind) {
  return std::string(ToText(Drawn(bank, kind).role));
}

std::string PartKindCount(const Bank& bank, const PartKind& kind) {
  const Part& part = Drawn(bank, kind);
  std::string out = std::to_string(kind.count) + (kind.count == 1 ? " piece" : " pieces");
  if (kind.mirrored > 0) {
    out += ": " + std::to_string(kind.count - kind.mirrored) + " as drawn (left), " +
           std::to_string(kind.mirrored) + " mirrored (right)";
  } else if (part.count == 2 && Facts(part.role).in_pairs) {
    out += ", left and right identical";
  } else if (kind.count > 1) {
    out += " identical";
  }
  return out;
}

std::string PartKindMaterial(const Part& part) {
  std::string out = part.material;
  if (part.grain == Grain::kNone) return out;
  if (!out.empty()) out += ", ";
  const bool across = part.grain == Grain::kHorizontal;
  out += out.empty() ? "Grain " : "grain ";
  out += across ? "horizontal" : "vertical";
  return out;
}

std::vector<std::string> PartKindCuts(const Part& part, Unit unit) {
  std::vector<std::string> lines;
  for (const Cut& cut : part.cuts) {
    std::string line(JointName(cut.kind));
    const bool top = cut.purpose == CutPurpose::kCaseTop;
    const bool bottom = cut.purpose == CutPurpose::kCaseBottom;
    line += top      ? std::string_view(" along the top end")
            : bottom ? std::string_view(" along the lower end")
                     : PlaceName(cut.from);
    line += PurposeWords(cut);
    if (cut.face == CutOn::kInnerEdge) line += EdgeCutSize(cut, unit);
    if (cut.purpose == CutPurpose::kTongue) {
      line += ": leaves a tongue of " + FormatLength(part.thickness - cut.depth, unit);
    }
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<std::string> PartKindSeats(const Bank& bank, const PartKind& kind) {
  const Part& part = Drawn(bank, kind);
  const std::vector<Seat> seats = SeatsIn(bank, part);
  if (seats.empty()) return {};
  std::array<std::set<NumberedId>, 2> ids;  // by face
  for (const Seat& seat : seats) {
    const Divider& member = bank.dividers[static_cast<std::size_t>(seat.member)];
    ids[seat.other_face ? 1 : 0].emplace(member.partition ? 'V' : 'H', member.number);
  }
  const bool side = part.role == PartRole::kCaseSide;
  const std::string dadoes = "dadoes for ";
  const auto whom = [&](const std::set<NumberedId>& face) {
    // Alike parts of different numbers take members of different numbers.
    if (kind.parts.size() == 1) return RunTogether(face);
    return std::string(face.begin()->first == 'V' ? "partitions" : "dividers");
  };
  std::vector<std::string> lines;
  if (!ids[0].empty()) {
    const bool lies = seats[0].upright;
    lines.push_back(dadoes + whom(ids[0]) + (lies ? ", measured from the left end" : ""));
    lines.back()[0] = static_cast<char>(lines.back()[0] - 'a' + 'A');
  }
  // Its inside face, with its left end at the left, is seen from below.
  if (part.role == PartRole::kCaseTop) lines.emplace_back("Front edge above");
  if (ids[1].empty()) {
    if (side) lines.emplace_back("Left side only");
  } else if (!BothFacesAlike(seats)) {
    lines.push_back((side ? "Right side: " : "Other face: ") + dadoes + whom(ids[1]) +
                    (side ? " instead" : "") + ", laid out on the case");
  } else if (!side) {
    lines.push_back("Other face the same, for " + whom(ids[1]));
  }
  return lines;
}

}  // namespace tillwright
