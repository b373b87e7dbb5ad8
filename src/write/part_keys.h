// The keys of a part's cuts, wherever JSON has them.
#ifndef TILLWRIGHT_WRITE_PART_KEYS_H_
#define TILLWRIGHT_WRITE_PART_KEYS_H_

#include <vector>

#include "tillwright/bank.h"
#include "write/json_text.h"

namespace tillwright {

// The notch of a case side, where there is one.
inline void AddNotchKeys(JsonText& json, const Notch& notch) {
  if (notch.IsNone()) return;
  json.Open("notch", '{').Millimeters("width_mm", notch.width);
  json.Millimeters("height_mm", notch.height).Close();
}

inline void AddCutKeys(JsonText& json, const std::vector<Cut>& cuts) {
  json.Open("cuts", '[');
  for (const Cut& cut : cuts) {
    json.Open('{').Text("kind", ToText(cut.kind)).Text("face", ToText(cut.face));
    json.Text("from", ToText(cut.from)).Millimeters("offset_mm", cut.offset);
    json.Millimeters("width_mm", cut.width).Millimeters("depth_mm", cut.depth).Close();
  }
  json.Close();
}

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_PART_KEYS_H_
