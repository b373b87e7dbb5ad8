// Looking dimensions up by the paths that `why` uses.
#ifndef TILLWRIGHT_TESTS_SUPPORT_BANK_VALUES_H_
#define TILLWRIGHT_TESTS_SUPPORT_BANK_VALUES_H_

#include <string>
#include <vector>

#include "support/specs.h"
#include "tillwright/dimensions.h"

namespace tillwright::testing {

struct Expected {
  const char* path;
  const char* value;
};

struct SolveCase {
  const char* name;
  std::string spec;
  std::vector<Expected> expected;
};
inline void PrintTo(const SolveCase& c, std::ostream* out) { *out << c.name; }
inline std::string NameOf(const ::testing::TestParamInfo<SolveCase>& info) {
  return info.param.name;
}

// Solves the case's spec and compares every path.
inline void ExpectValues(const SolveCase& c) {
  const Spec spec = MustRead(c.spec);
  Trace trace;
  const Outcome<Bank> bank = SolveBank(spec, trace);
  ASSERT_TRUE(bank.ok()) << DiagnosticsText(bank.diagnostics(), c.name, c.spec, {});
  for (const Expected& expected : c.expected) {
    const int node = ExplainDimension(bank.value(), trace, expected.path);
    ASSERT_GE(node, 0) << "no such dimension: " << expected.path;
    EXPECT_EQ(trace.At(node).value, L(expected.value))
        << expected.path << " is " << FormatInches(trace.At(node).value) << " in, "
        << FormatMillimeters(trace.At(node).value) << " mm; expected " << expected.value;
  }
}

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_BANK_VALUES_H_
