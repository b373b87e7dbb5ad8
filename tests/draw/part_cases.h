// Banks of every construction, and views laid on sheets of their own, for tests of part sheets and
// overviews.
#ifndef TILLWRIGHT_TESTS_DRAW_PART_CASES_H_
#define TILLWRIGHT_TESTS_DRAW_PART_CASES_H_

#include <set>
#include <string>
#include <vector>

#include "draw/view_cases.h"
#include "sheet/view.h"

namespace tillwright::testing {

// Each corner joint with each bottom, in overlay and inset fronts, with cases of every joint and
// back, pulls and solid and sheet stock.
std::vector<BankCase> ConstructionBanks();

// Those, the curated specs, the hard cases and some random ones.
std::vector<BankCase> AllBanks(std::uint32_t seed);

// The view alone on a sheet just large enough for it.
Sheet SheetOf(View view);

// What is wrong with the view's layout and numbers, one line each: faults of layout, labels whose
// paths do not give their numbers, labels that are numbers and have no path. Empty when all is
// well.
std::string FaultsOf(const Bank& bank, const View& view);

// Every path that a label of the view carries.
std::set<std::string> PathsOn(const View& view);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_DRAW_PART_CASES_H_
