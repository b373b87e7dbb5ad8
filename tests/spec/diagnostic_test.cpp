// Diagnostic codes and Outcome.
#include "tillwright/diagnostic.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace tillwright {
namespace {

TEST(Diagnostic, EveryCodeHasANameAndAMeaningOfItsOwn) {
  std::set<std::string_view> names;
  std::set<std::string_view> meanings;
  int index = 0;
  for (const DiagnosticCode code : AllCodes()) {
    EXPECT_EQ(static_cast<int>(code), index++) << "the table is out of order at " << CodeText(code);
    EXPECT_TRUE(names.insert(CodeText(code)).second) << CodeText(code);
    EXPECT_TRUE(meanings.insert(CodeMeaning(code)).second) << CodeText(code);
    EXPECT_EQ(CodeText(code).find_first_not_of("abcdefghijklmnopqrstuvwxyz-"),
              std::string_view::npos);
  }
  EXPECT_EQ(AllCodes().back(), DiagnosticCode::kFileWrite) << "a new last code is not in the table";
}

TEST(Outcome, HoldsAValueIfAndOnlyIfNothingIsAnError) {  // (1)
  const Diagnostic warning{DiagnosticCode::kConflict, Severity::kWarning, {}, "careful", ""};
  const Diagnostic error{DiagnosticCode::kConflict, Severity::kError, {}, "no", ""};
  EXPECT_TRUE(Outcome<int>(7, {}).ok());
  const Outcome<int> warned(7, {warning});
  EXPECT_TRUE(warned.ok());
  EXPECT_EQ(warned.value(), 7);
  EXPECT_EQ(warned.diagnostics().size(), 1U);
  EXPECT_FALSE(Outcome<int>(7, {warning, error}).ok());
  EXPECT_FALSE(Outcome<int>(std::nullopt, {error}).ok());
}

TEST(OutcomeDeathTest, BugEndsTheProgramWithItsWords) {
  EXPECT_DEATH(Bug("the sky is falling"), "internal error: the sky is falling");
}

}  // namespace
}  // namespace tillwright
