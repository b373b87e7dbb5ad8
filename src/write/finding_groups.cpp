#include "write/finding_groups.h"

#include <algorithm>

namespace tillwright {

std::vector<FindingGroup> FindingGroups(const std::vector<Finding>& findings, Level level) {
  std::vector<FindingGroup> groups;
  for (const Finding& finding : findings) {
    if (finding.level != level) continue;
    auto same = std::ranges::find_if(groups, [&](const FindingGroup& group) {
      return group.finding->code == finding.code && group.finding->message == finding.message;
    });
    if (same == groups.end()) same = groups.insert(same, {&finding, {}});
    same->subjects.Add(finding.subject);
  }
  return groups;
}

}  // namespace tillwright
