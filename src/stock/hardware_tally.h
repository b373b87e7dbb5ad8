// HardwareTally: adds up what is bought, alike things in one line, in the order first asked for.
#ifndef TILLWRIGHT_STOCK_HARDWARE_TALLY_H_
#define TILLWRIGHT_STOCK_HARDWARE_TALLY_H_

#include <set>
#include <string>
#include <vector>

#include "stock/part_names.h"
#include "tillwright/parts.h"

namespace tillwright {

class HardwareTally {
 public:
  // Adds to the line of the same kind, words, length and unit. `id` names what it is for; empty:
  // the whole piece.
  void Add(HardwareLine line, const std::string& id = {}) {
    if (line.amount <= 0) return;
    for (Entry& entry : entries_) {
      if (!Alike(entry.line, line)) continue;
      entry.line.amount += line.amount;
      if (!id.empty()) entry.ids.insert(ToNumberedId(id));
      return;
    }
    Entry& entry = entries_.emplace_back();
    entry.line = std::move(line);
    if (!id.empty()) entry.ids.insert(ToNumberedId(id));
  }

  [[nodiscard]] std::vector<HardwareLine> Take() {
    std::vector<HardwareLine> lines;
    for (Entry& entry : entries_) {
      if (!entry.ids.empty()) entry.line.use = RunTogether(entry.ids);
      lines.push_back(std::move(entry.line));
    }
    return lines;
  }

 private:
  struct Entry {
    HardwareLine line;
    std::set<NumberedId> ids;
  };

  static bool Alike(const HardwareLine& a, const HardwareLine& b) {
    return a.kind == b.kind && a.what == b.what && a.length == b.length && a.unit == b.unit &&
           a.suggested == b.suggested && a.remark == b.remark;
  }

  std::vector<Entry> entries_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_HARDWARE_TALLY_H_
