// What the gap check adds to the result in JSON.
#ifndef TILLWRIGHT_WRITE_GAP_KEYS_H_
#define TILLWRIGHT_WRITE_GAP_KEYS_H_

#include "tillwright/gap_check.h"
#include "write/json_text.h"

namespace tillwright {

class GapKeys {
 public:
  GapKeys(const Spec& spec, const Bank& bank, const GapCheck& check)
      : spec_(spec), bank_(bank), check_(check) {}

  // Keys and values of one gap or overlap, inside its object.
  void OfStack(JsonText& json, std::size_t stack) const;
  // Keys and values of the whole bank.
  void OfBank(JsonText& json) const;

 private:
  void Contributors(JsonText& json, const StackUp& stack) const;
  void Cells(JsonText& json) const;
  void Layouts(JsonText& json) const;
  void RefitKeys(JsonText& json) const;

  const Spec& spec_;
  const Bank& bank_;
  const GapCheck& check_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_GAP_KEYS_H_
