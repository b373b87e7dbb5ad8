// Specs for tests: text to a solved bank in one call, and random ones with a printed seed.
#ifndef TILLWRIGHT_TESTS_SUPPORT_SPECS_H_
#define TILLWRIGHT_TESTS_SUPPORT_SPECS_H_

#include <gtest/gtest.h>

#include <cstdint>
#include <random>
#include <string>

#include "tillwright/read.h"
#include "tillwright/solve.h"
#include "tillwright/write.h"

namespace tillwright::testing {

// The spec, or a failure of the test that says what is wrong with it.
inline Spec MustRead(const std::string& text) {
  Outcome<Spec> spec = ReadSpec(text);
  EXPECT_TRUE(spec.ok()) << DiagnosticsText(spec.diagnostics(), "spec", text, {});
  return spec.ok() ? spec.value() : Spec{};
}

struct Solved {
  Spec spec;
  Bank bank;
};
inline Solved MustSolve(const std::string& text) {
  Solved solved{MustRead(text), {}};
  Outcome<Bank> bank = SolveBank(solved.spec);
  EXPECT_TRUE(bank.ok()) << DiagnosticsText(bank.diagnostics(), "spec", text, {}) << text;
  if (bank.ok()) solved.bank = bank.value();
  return solved;
}

// What reading or solving the text reports.
inline Diagnostics MustFail(const std::string& text) {
  const Outcome<Spec> spec = ReadSpec(text);
  if (!spec.ok()) return spec.diagnostics();
  const Outcome<Bank> bank = SolveBank(spec.value());
  EXPECT_FALSE(bank.ok()) << "solved, and should not have:\n" << text;
  return bank.diagnostics();
}

// A length in a test's words: L("15 3/8"), L("390.5 mm").
inline Length L(const char* text) {
  const ParsedLength parsed = ParseLength(text, Unit::kInch);
  EXPECT_TRUE(parsed.value.has_value()) << text << ": " << parsed.fault.message;
  return parsed.value.value_or(Length());
}

// Random numbers from a seed that every failure message can name.
class Random {
 public:
  explicit Random(std::uint32_t seed) : engine_(seed) {}
  // From low to high, both included. Not std::uniform_int_distribution: the same everywhere.
  int Int(int low, int high) {
    return low + static_cast<int>(engine_() % static_cast<std::uint32_t>(high - low + 1));
  }
  bool Chance(int percent) { return Int(1, 100) <= percent; }
  template <class T>
  const T& Pick(const std::vector<T>& list) {
    return list[static_cast<std::size_t>(Int(0, static_cast<int>(list.size()) - 1))];
  }

 private:
  std::mt19937 engine_;
};

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_SPECS_H_
