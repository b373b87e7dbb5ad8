#include "write/cut_notes.h"

#include <algorithm>

#include "stock/part_seats.h"
#include "text/utf8_width.h"
#include "write/text_table.h"

namespace tillwright {
namespace {

bool IsAlongPart(CutKind kind) {
  return kind == CutKind::kHalfBlindDovetail || kind == CutKind::kThroughDovetail ||
         kind == CutKind::kFinger || kind == CutKind::kTenon;
}

bool AtBothEnds(const Cut& a, const Cut& b) {
  return a.from == CutFrom::kFrontEnd && b.from == CutFrom::kBackEnd && a.kind == b.kind &&
         a.offset == b.offset && a.width == b.width && a.depth == b.depth;
}

std::string Size(const Cut& cut, Unit unit) {
  std::string kind(ToText(cut.kind));
  std::ranges::replace(kind, '-', ' ');
  return kind + " " + FormatLength(cut.width, unit) +
         (IsAlongPart(cut.kind) ? " along the part, " : " wide, ") + FormatLength(cut.depth, unit) +
         " deep";
}

std::string Where(const Part& part, const Cut& cut, Unit unit) {
  const bool upright = part.role == PartRole::kCaseSide && cut.from == CutFrom::kLowerEdge;
  if (upright && cut.offset + cut.width == part.length) return "at the top edge";
  const std::string from =
      (cut.from == CutFrom::kEachEnd ? "" : "the ") + std::string(ToText(cut.from));
  if (cut.face == CutOn::kInnerEdge) {
    return "in the inner edge, " + FormatLength(cut.offset, unit) + " below " + from;
  }
  if (cut.from == CutFrom::kLeftEdge) {
    return "along the " + std::string(ToText(cut.face)) + ", " + FormatLength(cut.offset, unit) +
           " in from " + from;
  }
  if (cut.face == CutOn::kBothFaces) return "on both faces at " + from;
  if (cut.from == CutFrom::kEachEnd && cut.face != CutOn::kInside) {
    return "on the " + std::string(ToText(cut.face)) + " at " + from;
  }
  if (cut.offset.IsZero()) return "at " + from;
  return FormatLength(cut.offset, unit) +
         (cut.from == CutFrom::kLowerEdge ? " up from " : " in from ") + from;
}

// A dado or groove that takes a member.
std::string SeatWords(const Bank& bank, const Seat& seat) {
  return "dado " + FormatLength(seat.width, bank.units) + " wide, " +
         FormatLength(seat.depth, bank.units) + " deep, " + FormatLength(seat.offset, bank.units) +
         (seat.upright ? " in from the left end" : " up from the lower end") + " for " +
         ToText(bank.dividers[static_cast<std::size_t>(seat.member)]);
}

// a … z, then aa, ab …
std::string LetterOf(std::size_t index) {
  std::string name(1, static_cast<char>('a' + index % 26));
  return index < 26 ? name : LetterOf(index / 26 - 1) + name;
}

}  // namespace

std::string CutWords(const Part& part, Unit unit) {
  std::string text;
  if (!part.notch.IsNone()) {
    text = "notch " + FormatLength(part.notch.width, unit) + " wide, " +
           FormatLength(part.notch.height, unit) + " high, at the lower front corner";
  }
  for (std::size_t i = 0; i < part.cuts.size(); ++i) {
    Cut cut = part.cuts[i];
    const bool twin = i + 1 < part.cuts.size() && AtBothEnds(cut, part.cuts[i + 1]);
    if (twin) cut.from = CutFrom::kEachEnd;
    if (twin) ++i;
    if (!text.empty()) text += "; ";
    text += Size(cut, unit) + ", " + Where(part, cut, unit);
  }
  return text;
}

std::string AllCutWords(const Bank& bank, const Part& part) {
  std::string text = CutWords(part, bank.units);
  const std::vector<Seat> seats = SeatsIn(bank, part);
  const bool once = part.role == PartRole::kCaseSide && BothFacesAlike(seats);
  for (const Seat& seat : seats) {
    if (once && seat.other_face) continue;
    if (!text.empty()) text += "; ";
    text += SeatWords(bank, seat) + ", ";
    text += once ? "both sides" : SeatFace(part.role, seat);
  }
  return text;
}

std::string BoardWords(const CutLine& line, Unit unit) {
  if (line.boards == 1) return {};
  return std::to_string(line.boards) + " of " + FormatLength(line.board_width, unit);
}

std::string CutNotes::Letter(const std::string& text) {
  if (text.empty()) return {};
  auto note = std::ranges::find(notes_, text);
  if (note == notes_.end()) note = notes_.insert(note, text);
  return LetterOf(static_cast<std::size_t>(note - notes_.begin()));
}

std::vector<std::string> CutNotes::Lines() const {
  std::vector<std::string> lines;
  for (std::size_t i = 0; i < notes_.size(); ++i) lines.push_back(LetterOf(i) + ": " + notes_[i]);
  return lines;
}

std::string CutNotes::ToText() const {
  std::string text;
  for (std::size_t i = 0; i < notes_.size(); ++i) {
    std::string head = "  " + LetterOf(i) + "  ";
    const std::size_t indent = head.size();
    for (const std::string& line : WrapText(notes_[i], kTableWidth - indent)) {
      text += head + line + "\n";
      head.assign(indent, ' ');
    }
  }
  return text;
}

}  // namespace tillwright
