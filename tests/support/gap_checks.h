// The gap check of a spec in one call, and finding a gap of it.
#ifndef TILLWRIGHT_TESTS_SUPPORT_GAP_CHECKS_H_
#define TILLWRIGHT_TESTS_SUPPORT_GAP_CHECKS_H_

#include <algorithm>
#include <string>

#include "support/specs.h"
#include "tillwright/gap_check.h"

namespace tillwright::testing {

struct Checked : Solved {
  GapCheck check;

  const StackUp& Stack(const std::string& subject) const {
    const auto found = std::ranges::find_if(
        check.stacks, [&](const StackUp& stack) { return SubjectOf(bank, stack) == subject; });
    if (found == check.stacks.end()) {
      ADD_FAILURE() << "no gap " << subject;
      return check.stacks.front();
    }
    return *found;
  }
};

inline Checked MustCheck(const Spec& spec) {
  Checked checked;
  checked.spec = spec;
  const Outcome<Bank> bank = SolveBank(spec);
  EXPECT_TRUE(bank.ok());
  if (!bank.ok()) return checked;
  checked.bank = bank.value();
  const Outcome<GapCheck> check = CheckGaps(spec, checked.bank);
  EXPECT_TRUE(check.ok());
  if (check.ok()) checked.check = check.value();
  return checked;
}
inline Checked MustCheck(const std::string& text) { return MustCheck(MustRead(text)); }

// The level of the first finding of a code, on a subject unless that is empty.
inline Level LevelOf(const GapCheck& check, CheckCode code, const std::string& subject = {}) {
  for (const Finding& finding : check.findings) {
    if (finding.code == code && (subject.empty() || finding.subject == subject)) {
      return finding.level;
    }
  }
  ADD_FAILURE() << "no finding " << ToText(code) << " " << subject;
  return Level::kNote;
}

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_GAP_CHECKS_H_
