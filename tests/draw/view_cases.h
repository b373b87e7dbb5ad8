// Banks to draw in tests: the curated specs, hard cases, random ones.
#ifndef TILLWRIGHT_TESTS_DRAW_VIEW_CASES_H_
#define TILLWRIGHT_TESTS_DRAW_VIEW_CASES_H_

#include <string>
#include <vector>

#include "tillwright/bank.h"

namespace tillwright::testing {

struct BankCase {
  std::string name;
  Bank bank;
};

// Every spec of specs/ that can be solved; never empty.
std::vector<BankCase> CuratedBanks();
// What strains a layout: many drawers, tiny and huge fronts, long and foreign names, deep trees.
std::vector<BankCase> HardBanks();
// `count` random specs that can be solved, from the seed on; each named by its own seed.
std::vector<BankCase> RandomBanks(std::uint32_t seed, int count);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_DRAW_VIEW_CASES_H_
