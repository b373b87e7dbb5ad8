// Findings that say the same about several subjects, told once.
#ifndef TILLWRIGHT_WRITE_FINDING_GROUPS_H_
#define TILLWRIGHT_WRITE_FINDING_GROUPS_H_

#include <vector>

#include "bank/id_list.h"
#include "tillwright/check.h"

namespace tillwright {

struct FindingGroup {
  const Finding* finding;  // the first of them
  IdList subjects;
};

// Those of one level, in their order. The findings must outlive what is returned.
[[nodiscard]] std::vector<FindingGroup> FindingGroups(const std::vector<Finding>& findings,
                                                      Level level);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_FINDING_GROUPS_H_
