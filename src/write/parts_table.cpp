#include "write/parts_table.h"

#include <algorithm>

#include "bank/id_list.h"
#include "tillwright/length_text.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

// Parts of one kind: how many, and what for.
struct Kind {
  const Part* part;
  int count;
  IdList uses;
};

bool Alike(const Part& a, const Part& b) {
  return a.role == b.role && a.length == b.length && a.width == b.width &&
         a.thickness == b.thickness && a.material == b.material && a.grain == b.grain &&
         std::ranges::equal(a.cuts, b.cuts);
}

std::vector<Kind> KindsOf(const Bank& bank) {
  std::vector<Kind> kinds;
  for (const Part& part : bank.parts) {
    if (part.role == PartRole::kFront) continue;  // a table of their own
    auto kind = std::ranges::find_if(kinds, [&](const Kind& k) { return Alike(*k.part, part); });
    if (kind == kinds.end()) kind = kinds.insert(kind, {&part, 0, {}});
    kind->count += part.count;
    kind->uses.Add(PartFor(bank, part));
  }
  std::ranges::stable_sort(kinds, {}, [](const Kind& kind) { return kind.part->role; });
  return kinds;
}

bool IsJoint(CutKind kind) {
  return kind == CutKind::kHalfBlindDovetail || kind == CutKind::kThroughDovetail ||
         kind == CutKind::kFinger;
}

// The cuts of a part in words, with each text once and a letter for it.
class CutNotes {
 public:
  explicit CutNotes(Unit unit) : unit_(unit) {}

  // The letter of the part's cuts, or nothing when it has none.
  std::string Letter(const Part& part) {
    const std::string text = Words(part);
    if (text.empty()) return {};
    auto note = std::ranges::find(notes_, text);
    if (note == notes_.end()) note = notes_.insert(note, text);
    return Name(static_cast<std::size_t>(note - notes_.begin()));
  }

  [[nodiscard]] std::string ToText() const {
    std::string text;
    for (std::size_t i = 0; i < notes_.size(); ++i) {
      std::string head = "  " + Name(i) + "  ";
      const std::size_t indent = head.size();
      for (const std::string& line : WrapText(notes_[i], kTableWidth - indent)) {
        text += head + line + "\n";
        head.assign(indent, ' ');
      }
    }
    return text;
  }

 private:
  // a … z, then aa, ab …
  static std::string Name(std::size_t index) {
    std::string name(1, static_cast<char>('a' + index % 26));
    return index < 26 ? name : Name(index / 26 - 1) + name;
  }

  std::string Words(const Part& part) const {
    std::string text;
    for (std::size_t i = 0; i < part.cuts.size(); ++i) {
      Cut cut = part.cuts[i];
      const bool twin = i + 1 < part.cuts.size() && AtBothEnds(cut, part.cuts[i + 1]);
      if (twin) cut.from = CutFrom::kEachEnd;
      if (twin) ++i;
      if (!text.empty()) text += "; ";
      text += Size(cut) + ", " + Where(part, cut);
    }
    return text;
  }

  static bool AtBothEnds(const Cut& a, const Cut& b) {
    return a.from == CutFrom::kFrontEnd && b.from == CutFrom::kBackEnd && a.kind == b.kind &&
           a.offset == b.offset && a.width == b.width && a.depth == b.depth;
  }

  std::string Size(const Cut& cut) const {
    std::string kind(tillwright::ToText(cut.kind));
    std::ranges::replace(kind, '-', ' ');
    return kind + " " + In(cut.width) + (IsJoint(cut.kind) ? " along the part, " : " wide, ") +
           In(cut.depth) + " deep";
  }

  std::string Where(const Part& part, const Cut& cut) const {
    const bool upright = part.role == PartRole::kCaseSide && cut.from == CutFrom::kLowerEdge;
    if (upright && cut.offset + cut.width == part.length) return "at the upper edge";
    const std::string from = (cut.from == CutFrom::kEachEnd ? "" : "the ") +
                             std::string(tillwright::ToText(cut.from));
    if (cut.offset.IsZero()) return "at " + from;
    return In(cut.offset) + (cut.from == CutFrom::kLowerEdge ? " up from " : " in from ") + from;
  }

  std::string In(Length length) const { return FormatLength(length, unit_); }

  Unit unit_;
  std::vector<std::string> notes_;
};

}  // namespace

std::string PartsTable(const Bank& bank) {
  const auto in = [&](Length length) { return FormatLength(length, bank.units); };
  CutNotes notes(bank.units);
  TextTable table({{"part", false}, {"pcs"}, {"length"}, {"width"}, {"thick"}, {"cuts", false},
                   {"material", false, true}, {"for", false, true}});
  for (const Kind& kind : KindsOf(bank)) {
    const Part& part = *kind.part;
    table.Row({std::string(ToText(part.role)), std::to_string(kind.count), in(part.length),
               in(part.width), in(part.thickness), notes.Letter(part), Printable(part.material),
               kind.uses.ToText()});
  }
  if (table.empty()) return {};
  const std::string words = notes.ToText();
  return table.ToText() + (words.empty() ? "" : "  Cuts, on the inside:\n" + words);
}

}  // namespace tillwright
