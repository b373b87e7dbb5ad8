// Banks to put together: the curated ones, and random ones with every kind of construction.
#ifndef TILLWRIGHT_TESTS_ASSEMBLY_ASSEMBLY_CASES_H_
#define TILLWRIGHT_TESTS_ASSEMBLY_ASSEMBLY_CASES_H_

#include <string>

#include "support/files.h"
#include "support/random_case.h"
#include "support/random_spec.h"
#include "support/specs.h"

namespace tillwright::testing {

template <class See>
void ForCuratedSpecs(See see) {
  for (const auto& path : CuratedSpecs()) {
    SCOPED_TRACE(path);
    see(MustSolve(ReadFile(path)).bank);
  }
}

// `count` random cases and as many banks without one, as far as they can be solved: how many were.
template <class See>
int ForRandomBanks(int count, See see) {
  const std::uint32_t seed = TestSeed();
  int solved = 0;
  for (int i = 0; i < 2 * count && !::testing::Test::HasFailure(); ++i) {
    const std::uint32_t own = seed + static_cast<std::uint32_t>(i);
    const std::string text =
        i % 2 == 0 ? RandomCase(own).Text() : RandomSpec(own, Unit::kInch).Text();
    SCOPED_TRACE("seed " + std::to_string(seed) + " + " + std::to_string(i) + "\n" + text);
    const Outcome<Bank> bank = SolveBank(MustRead(text));
    if (!bank.ok()) continue;
    ++solved;
    see(bank.value());
  }
  return solved;
}

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_ASSEMBLY_ASSEMBLY_CASES_H_
