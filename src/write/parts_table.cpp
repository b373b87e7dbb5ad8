#include "write/parts_table.h"

#include <algorithm>

#include "bank/id_list.h"
#include "bank/part_roles.h"
#include "text/utf8_width.h"
#include "tillwright/length_text.h"
#include "write/cut_notes.h"
#include "write/text_table.h"

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
    if (Facts(part.role).group == PartGroup::kFront) continue;  // a table of their own
    auto kind = std::ranges::find_if(kinds, [&](const Kind& k) { return Alike(*k.part, part); });
    if (kind == kinds.end()) kind = kinds.insert(kind, {&part, 0, {}});
    kind->count += part.count;
    kind->uses.Add(PartFor(bank, part));
  }
  std::ranges::stable_sort(kinds, {}, [](const Kind& kind) { return kind.part->role; });
  return kinds;
}

}  // namespace

std::string PartsTable(const Bank& bank) {
  const auto in = [&](Length length) { return FormatLength(length, bank.units); };
  CutNotes notes;
  TextTable table({{"part", false},
                   {"pcs"},
                   {"length"},
                   {"width"},
                   {"thick"},
                   {"cuts", false},
                   {"material", false, true},
                   {"for", false, true}});
  for (const Kind& kind : KindsOf(bank)) {
    const Part& part = *kind.part;
    table.Row({std::string(ToText(part.role)), std::to_string(kind.count), in(part.length),
               in(part.width), in(part.thickness), notes.Letter(CutWords(part, bank.units)),
               Printable(part.material), kind.uses.ToText()});
  }
  if (table.empty()) return {};
  const std::string words = notes.ToText();
  return table.ToText() + (words.empty() ? "" : "  Cuts, on the inside:\n" + words);
}

}  // namespace tillwright
