#include "stock/part_names.h"

#include "bank/id_list.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

std::string Name(const NumberedId& id) { return id.first + std::to_string(id.second); }

bool IsOfCase(const Part& part) { return part.space < 0 && part.divider < 0; }

}  // namespace

std::string RunTogether(const std::set<NumberedId>& ids) {
  IdList list;
  for (const NumberedId& id : ids) list.Add(Name(id));
  return list.ToText();
}

NumberedId ToNumberedId(const std::string& id) { return {id[0], std::stoi(id.substr(1))}; }

std::string PartKindIds(const Bank& bank, const PartKind& kind) {
  if (IsOfCase(bank.parts[kind.parts.front()])) return "";
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
