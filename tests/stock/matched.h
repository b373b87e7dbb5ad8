// Banks whose fronts are matched.
#ifndef TILLWRIGHT_TESTS_STOCK_MATCHED_H_
#define TILLWRIGHT_TESTS_STOCK_MATCHED_H_

#include <string>
#include <vector>

#include "support/files.h"
#include "support/specs.h"
#include "tillwright/parts.h"

namespace tillwright::testing {

inline std::vector<FrontRun> RunsOf(const Solved& solved) {
  return FrontRuns(solved.spec, solved.bank, CutList(solved.spec, solved.bank));
}

// A curated spec with its fronts matched.
inline Solved Matched(const std::string& file, FrontMatch match) {
  Solved solved = MustSolve(ReadFile(SourcePath("specs/" + file)));
  solved.spec.fronts.match.value = match;
  solved.bank.match = match;
  return solved;
}

// A row of fronts in an opening 96 in wide.
inline std::string Row(const std::string& fronts, const std::string& row,
                       const std::string& more = "") {
  return R"({"opening": {"width": 96, "height": 20, "depth": 20},
             "fronts": {"material": "maple plywood", )" +
         fronts + R"(}, "layout": {"columns": [)" + row + "]}" + more + "}";
}

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_STOCK_MATCHED_H_
