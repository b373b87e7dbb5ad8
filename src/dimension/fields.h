// Fields: the dimensions of one thing of a bank, each a solved value, or a formula over others, or
// both (what is solved, and how it is made).
#ifndef TILLWRIGHT_DIMENSION_FIELDS_H_
#define TILLWRIGHT_DIMENSION_FIELDS_H_

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"

namespace tillwright {

struct Field {
  std::string name;             // after the thing's own: "box.width"
  std::optional<Length> value;  // as solved
  std::string formula;          // empty: the trace names it
};
struct Fields : std::vector<Field> {
  std::string_view wanted{};  // the one name that is sought; empty: all

  [[nodiscard]] bool Want(std::string_view head, std::string_view name) const {
    return wanted.empty() || (wanted.size() == head.size() + name.size() &&
                              wanted.starts_with(head) && wanted.ends_with(name));
  }
  [[nodiscard]] bool WantUnder(std::string_view head) const {
    return wanted.empty() || wanted.starts_with(head);
  }
};

// Those of the opening and of the case; their names are whole paths.
void AddBankFields(const Bank& bank, Fields& out);
void AddSpaceFields(const Space& space, Fields& out);
void AddMemberFields(const Divider& member, Fields& out);
// Gaps, overlaps and reveals; their names are whole paths.
void AddGapFields(const Bank& bank, Fields& out);

// Of a part, with its cuts and seats; formulas stand for themselves but for ".", its owner's.
void AddPartFields(const Bank& bank, const Part& part, Fields& out);
// Of the piece with this index.
void AddPieceFields(const Bank& bank, std::size_t index, Fields& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_DIMENSION_FIELDS_H_
