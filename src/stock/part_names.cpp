#include "stock/part_names.h"

#include "bank/id_list.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

std::string Name(const NumberedId& id) { return id.first + std::to_string(id.second); }

bool IsOfCase(const Part& part) { return part.space < 0 && part.divider < 0; }

constexpr std::size_t kLongestStem = 60;

// Lower case, "-to-" between the ends of a run, '-' for what else is no letter or digit.
std::string Stem(const std::string& label) {
  const std::string_view dash = "\u2013";
  std::string stem;
  for (std::size_t at = 0; at < label.size(); ++at) {
    const char c = label[at];
    if (label.compare(at, dash.size(), dash) == 0) {
      stem += "-to-";
      at += dash.size() - 1;
    } else if (c >= 'A' && c <= 'Z') {
      stem += static_cast<char>(c - 'A' + 'a');
    } else if (c != ',') {
      stem += c == ' ' ? '-' : c;
    }
  }
  return stem;
}

std::set<NumberedId> IdsOf(const Bank& bank, const PartKind& kind) {
  std::set<NumberedId> ids;
  if (IsOfCase(bank.parts[kind.parts.front()])) return ids;
  for (const std::size_t index : kind.parts) {
    ids.insert(ToNumberedId(PartFor(bank, bank.parts[index])));
  }
  return ids;
}

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

std::string RunTogether(const std::vector<std::string>& ids) {
  IdList list;
  for (const std::string& id : ids) list.Add(id);
  return list.ToText();
}

std::string RunTogether(const std::set<NumberedId>& ids) {
  IdList list;
  for (const NumberedId& id : ids) list.Add(Name(id));
  return list.ToText();
}

NumberedId ToNumberedId(const std::string& id) { return {id[0], std::stoi(id.substr(1))}; }

std::string PartKindIds(const Bank& bank, const PartKind& kind) {
  const Part& part = bank.parts[kind.parts.front()];
  return part.takes >= 0 ? RunnerIds(bank, kind) : RunTogether(IdsOf(bank, kind));
}

namespace {

// A front rail of a wood of its own is told from the one behind it.
std::string RoleWords(const Part& part) {
  return (part.ahead ? "front " : "") + std::string(ToText(part.role));
}

}  // namespace

std::string PartKindLabel(const Bank& bank, const PartKind& kind) {
  std::string label = RoleWords(bank.parts[kind.parts.front()]);
  const std::string ids = PartKindIds(bank, kind);
  return ids.empty() ? label : label + " " + ids;
}

std::string PartKindStem(const Bank& bank, const PartKind& kind) {
  std::string stem = Stem(PartKindLabel(bank, kind));
  if (stem.size() <= kLongestStem) return stem;
  const std::set<NumberedId> ids = IdsOf(bank, kind);
  const std::string role = RoleWords(bank.parts[kind.parts.front()]);
  return Stem(role + " " + Name(*ids.begin())) + "-and-" + std::to_string(ids.size() - 1) + "-more";
}

}  // namespace tillwright
