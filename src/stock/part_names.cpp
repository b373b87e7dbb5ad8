#include "stock/part_names.h"

#include "tillwright/parts.h"

namespace tillwright {
namespace {

std::string Name(NumberedId id) { return id.first + std::to_string(id.second); }

bool IsOfCase(const Part& part) { return part.space < 0 && part.divider < 0; }

// "H1 V1, H2 V3": runners by frame and partition.
std::string RunnerIds(const Bank& bank, const PartKind& kind) {
  std::string out;
  for (const std::size_t index : kind.parts) {
    const Part& part = bank.parts[index];
    if (!out.empty()) out += ", ";
    out += PartFor(bank, part) + " " + ToText(bank.dividers[static_cast<std::size_t>(part.takes)]);
  }
  return out;
}

}  // namespace

std::string RunTogether(const std::set<NumberedId>& ids) {
  std::string out;
  for (auto at = ids.begin(); at != ids.end();) {
    const NumberedId first = *at;
    NumberedId last = first;
    for (++at; at != ids.end() && *at == NumberedId{last.first, last.second + 1}; ++at) last = *at;
    if (!out.empty()) out += ", ";
    out += Name(first);
    if (last == first) continue;
    out += last.second == first.second + 1 ? ", " : "\u2013";
    out += Name(last);
  }
  return out;
}

NumberedId ToNumberedId(const std::string& id) { return {id[0], std::stoi(id.substr(1))}; }

std::string PartKindIds(const Bank& bank, const PartKind& kind) {
  if (IsOfCase(bank.parts[kind.parts.front()])) return "";
  if (bank.parts[kind.parts.front()].takes >= 0) return RunnerIds(bank, kind);
  std::set<NumberedId> ids;
  for (const std::size_t index : kind.parts) {
    ids.insert(ToNumberedId(PartFor(bank, bank.parts[index])));
  }
  return RunTogether(ids);
}

std::string PartKindLabel(const Bank& bank, const PartKind& kind) {
  std::string label(ToText(bank.parts[kind.parts.front()].role));
  const std::string ids = PartKindIds(bank, kind);
  return ids.empty() ? label : label + " " + ids;
}

}  // namespace tillwright
