// The keys of a part's cuts, wherever JSON has them.
#ifndef TILLWRIGHT_WRITE_PART_KEYS_H_
#define TILLWRIGHT_WRITE_PART_KEYS_H_

#include <vector>

#include "tillwright/bank.h"
#include "write/json_text.h"

namespace tillwright {

inline void AddCutKeys(JsonText& json, const std::vector<Cut>& cuts) {
  json.Open("cuts", '[');
  for (const Cut& cut : cuts) {
    json.Open('{').Text("kind", ToText(cut.kind)).Text("face", "inside");
    json.Text("from", ToText(cut.from)).Millimeters("offset_mm", cut.offset);
    json.Millimeters("width_mm", cut.width).Millimeters("depth_mm", cut.depth).Close();
  }
  json.Close();
}

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_PART_KEYS_H_
