// Ids of drawers, members and the like in a row, as lists, drawings and sticks write them: "D1–D4,
// D7, D9".
#ifndef TILLWRIGHT_BANK_ID_LIST_H_
#define TILLWRIGHT_BANK_ID_LIST_H_

#include <string>
#include <vector>

namespace tillwright {

class IdList {
 public:
  // An id that repeats the one before it is left out.
  void Add(std::string id) {
    if (ids_.empty() || ids_.back() != id) ids_.push_back(std::move(id));
  }
  [[nodiscard]] bool empty() const { return ids_.empty(); }

  // In the order added; three or more that follow one another are drawn together, up or down.
  [[nodiscard]] std::string ToText() const;

 private:
  std::vector<std::string> ids_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_BANK_ID_LIST_H_
