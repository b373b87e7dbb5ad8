// Why: for every dimension, what is printed is the bank's, and the line with numbers comes to the
// value that is printed above it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "support/files.h"
#include "support/specs.h"
#include "tillwright/dimensions.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;

// --- A calculator for the lines with numbers ----------------------------------------------------
//
//   sum = product { ("+" | "-") product }
//   product = integer "x" product | atom [ "/" integer ]
//   atom = length | "(" sum ")" | "half of (" sum ")" | "the other half of (" sum ")"
//        | "down to" atom "of (" sum ")" | "the greater of (" sum ", " sum ")"
//        | "the lesser of (" sum ", " sum ")"
//
// Lengths are mixed fractions of an inch or decimals of a millimeter, as the unit says.
class Calculator {
 public:
  Calculator(std::string_view text, Unit unit) : rest_(text), unit_(unit) {}

  std::optional<Length> Run() {
    const Length value = Sum();
    if (failed_ || !rest_.empty()) return std::nullopt;
    return value;
  }

 private:
  bool Take(std::string_view token) {
    if (!rest_.starts_with(token)) return false;
    rest_.remove_prefix(token.size());
    return true;
  }

  Length Sum() {
    Length value = Product();
    while (!failed_) {
      if (Take(" + ")) {
        value += Product();
      } else if (Take(" - ")) {
        value -= Product();
      } else {
        break;
      }
    }
    return value;
  }

  Length Product() {
    if (const std::optional<std::int64_t> factor = FactorBefore(" x ")) return *factor * Product();
    Length value = Atom();
    while (Take(" / ")) value = PartBelow(value, Integer());
    return value;
  }

  // An integer and the token, if both are next.
  std::optional<std::int64_t> FactorBefore(std::string_view token) {
    std::size_t end = rest_.starts_with('-') ? 1 : 0;
    while (end < rest_.size() && rest_[end] >= '0' && rest_[end] <= '9') ++end;
    if (end == 0 || !rest_.substr(end).starts_with(token)) return std::nullopt;
    const std::int64_t factor = std::stoll(std::string(rest_.substr(0, end)));
    rest_.remove_prefix(end + token.size());
    return factor;
  }

  std::int64_t Integer() {
    std::int64_t value = 0;
    while (!rest_.empty() && rest_[0] >= '0' && rest_[0] <= '9') {
      value = value * 10 + (rest_[0] - '0');
      rest_.remove_prefix(1);
    }
    if (value == 0) failed_ = true;
    return failed_ ? 1 : value;
  }

  Length InBrackets() {
    if (!Take("(")) failed_ = true;
    const Length value = failed_ ? Length() : Sum();
    if (!Take(")")) failed_ = true;
    return value;
  }

  Length Pair(bool greater) {
    const Length a = Sum();
    if (!Take(", ")) failed_ = true;
    const Length b = failed_ ? Length() : Sum();
    if (!Take(")")) failed_ = true;
    return greater ? Max(a, b) : Min(a, b);
  }

  Length Atom() {
    if (failed_) return {};
    if (rest_.starts_with('(')) return InBrackets();
    if (Take("half of ")) return HalfBelow(InBrackets());
    if (Take("the other half of ")) return HalfAbove(InBrackets());
    if (Take("the greater of (")) return Pair(true);
    if (Take("the lesser of (")) return Pair(false);
    if (Take("down to ")) {
      const Length increment = Atom();
      if (!Take(" of ") || increment <= Length()) failed_ = true;
      const Length value = InBrackets();
      return failed_ ? Length() : FloorTo(value, increment);
    }
    return Number();
  }

  // The longest run that is a length: "15 3/8" before "15".
  Length Number() {
    std::size_t longest = rest_.find_first_not_of("-0123456789./ ");
    longest = std::min(longest, rest_.size());
    for (std::size_t n = longest; n > 0; --n) {
      const std::string_view text = rest_.substr(0, n);
      if (text.ends_with(' ')) continue;
      const ParsedLength parsed = ParseLength(text, unit_);
      if (!parsed.value) continue;
      rest_.remove_prefix(n);
      return *parsed.value;
    }
    failed_ = true;
    return {};
  }

  std::string_view rest_;
  Unit unit_;
  bool failed_ = false;
};

TEST(Calculator, WorksSumsHalvesAndFloors) {
  const auto run = [](const char* text) { return Calculator(text, Unit::kInch).Run(); };
  EXPECT_EQ(run("15 3/8 - 2 x 1/2"), Length::Inches(115, 8));
  EXPECT_EQ(run("1 - (1/2 + 1/4)"), Length::Inches(1, 4));
  EXPECT_EQ(run("down to 1/32 of (1 1/64)"), Length::Inches(1));
  EXPECT_EQ(run("half of (3) + the other half of (3)"), Length::Inches(3));
  EXPECT_EQ(run("(1 + 2) / 2 - 0"), Length::Inches(3, 2));
  EXPECT_EQ(run("-3/8 + 2 x (1/8 - -1/8)"), Length::Inches(1, 8));
  EXPECT_EQ(run("the greater of (1, 1/2 + 3/4) - the lesser of (1/4, 2)"), Length::Inches(1));
  EXPECT_EQ(run("1 + "), std::nullopt);
  EXPECT_EQ(run("1 + x"), std::nullopt);
}

// --- Every dimension ----------------------------------------------------------------------------

struct Answer {
  std::string label;
  std::string value;
  std::vector<std::string> lines;  // under it
};

// The answer's paragraphs: "label = value unit", then indented lines.
std::vector<Answer> Paragraphs(const std::string& text) {
  std::vector<Answer> all;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    const std::string line = text.substr(at, end - at);
    at = end + 1;
    if (line.empty()) continue;
    if (line.starts_with("    ")) {
      all.back().lines.push_back(line.substr(4));
    } else {
      const std::size_t equals = line.find(" = ");
      EXPECT_NE(equals, std::string::npos) << line;
      all.push_back({line.substr(0, equals), line.substr(equals + 3), {}});
    }
  }
  return all;
}

bool IsRounded(const std::string& text) { return text.find("\u2248") != std::string::npos; }

// Works the line with numbers, which is the last that begins with "=", if nothing in it is rounded.
int CheckSums(const std::vector<Answer>& answers, Unit unit) {
  int checked = 0;
  for (const Answer& answer : answers) {
    std::string numbers;
    int formulas = 0;
    for (const std::string& line : answer.lines) {
      if (!line.starts_with("= ")) continue;
      numbers = line.substr(2);
      ++formulas;
    }
    if (formulas != 2 || IsRounded(numbers) || IsRounded(answer.value)) continue;
    const std::optional<Length> worked = Calculator(numbers, unit).Run();
    EXPECT_TRUE(worked.has_value()) << numbers;
    const ParsedLength printed = ParseLength(answer.value, unit);
    EXPECT_TRUE(printed.value.has_value()) << answer.value;
    if (worked && printed.value) {
      EXPECT_EQ(FormatMillimeters(*worked), FormatMillimeters(*printed.value))
          << answer.label << " = " << numbers;
    }
    ++checked;
  }
  return checked;
}

// Every path of one spec; the number of lines that were worked.
int CheckSpec(const std::string& text, const Spec& spec) {
  Trace trace;
  const Outcome<Bank> solved = SolveBank(spec, trace);
  if (!solved.ok()) return 0;
  const Bank& bank = solved.value();
  int checked = 0;
  for (const std::string& path : DimensionPaths(bank)) {
    const std::string why = WhyText(bank, trace, path, "spec.json", text);
    EXPECT_FALSE(why.empty()) << path;
    const std::vector<Answer> answers = Paragraphs(why);
    if (answers.empty()) continue;
    EXPECT_EQ(answers[0].label, path);
    EXPECT_EQ(answers[0].value, FormatWithUnit(*DimensionValue(bank, path), bank.units)) << path;
    // No line says what stands before it.
    EXPECT_NE(answers[0].lines.at(0), "= " + path);
    checked += CheckSums(answers, bank.units);
  }
  return checked;
}

TEST(Why, EveryDimensionOfTheCuratedSpecsIsExplainedByItsNumbers) {
  const auto specs = testing::CuratedSpecs();
  ASSERT_FALSE(specs.empty());
  for (const auto& path : specs) {
    SCOPED_TRACE(path);
    const std::string text = testing::ReadFile(path);
    EXPECT_GT(CheckSpec(text, testing::MustRead(text)), 50);
  }
}

TEST(Why, EveryDimensionOfRandomSpecsIsExplainedByItsNumbers) {
  int checked = 0;
  for (const std::string& text : testing::RandomSpecs(70'000, 12)) {
    const Outcome<Spec> spec = ReadSpec(text);
    if (!spec.ok()) continue;
    SCOPED_TRACE(text);
    checked += CheckSpec(text, spec.value());
    if (::testing::Test::HasFailure()) return;
  }
  EXPECT_GT(checked, 3000);
}

TEST(Why, GoesDownToTheLinesOfTheSpecAndTheDefaults) {
  const std::string text = R"({
  "opening": { "width": "15 3/8", "height": 24, "depth": 21 },
  "drawers": [{}, {}]
})";
  const Spec spec = testing::MustRead(text);
  Trace trace;
  const Outcome<Bank> bank = SolveBank(spec, trace);
  ASSERT_TRUE(bank.ok());
  const auto ask = [&](const char* path) {
    return WhyText(bank.value(), trace, path, "bank.json", text);
  };
  const std::string why = ask("D1.box.width");
  EXPECT_THAT(why, HasSubstr("given at bank.json:2:25:"));
  EXPECT_THAT(why, HasSubstr("default (common practice, no source)"));
  EXPECT_EQ(ask("opening.width"),
            "opening.width = 15 3/8 in\n    given at bank.json:2:25:  "
            "\"opening\": { \"width\": \"15 3/8\", \"height\": 24, \"depth\": 21 },\n");
  EXPECT_EQ(ask("D1.box.width_mm"), why);
  EXPECT_EQ(ask("D3.box.width"), "");
  EXPECT_EQ(ask(""), "");
  EXPECT_EQ(ask("opening.width + D3.box.width"), "");
}

TEST(Why, ExplainsWhatIsMadeOfOtherDimensions) {
  const std::string text =
      R"({"opening": {"width": 15, "height": 24, "depth": 21}, "drawers": [{}, {}]})";
  Trace trace;
  const Outcome<Bank> bank = SolveBank(testing::MustRead(text), trace);
  ASSERT_TRUE(bank.ok());
  const auto first = [&](const char* path) {
    const std::string why = WhyText(bank.value(), trace, path, "bank.json", text);
    return why.substr(0, why.find("\n\n"));
  };
  EXPECT_EQ(first("gap.D2.D1"),
            "gap.D2.D1 = 1/8 in\n    = D1.front.y - D2.front.top\n    = 12 1/16 - 11 15/16");
  EXPECT_EQ(first("part.D1.side.thickness"),
            "part.D1.side.thickness = 1/2 in\n    = D1.side.thickness");
  EXPECT_EQ(first("D1.bottom.length"),
            "D1.bottom.length = 19 7/16 in\n"  // 20 - 2 x 1/2 + 2 x 1/4 - 2 x 1/32
            "    = the greater of (D1.box.panel_width, D1.box.panel_depth)\n"
            "    = the greater of (13 7/16, 19 7/16)");
  // What a mark on a stick shows.
  EXPECT_EQ(first("D1.box.y + D1.groove.up"),
            "D1.box.y + D1.groove.up = 12 1/2 in\n    = 12 1/4 + 1/4");
}

TEST(Why, SpeaksInTheUnitsOfTheSpec) {
  const std::string text =
      R"({"opening": {"width": 15, "height": 24, "depth": 21}, "drawers": [{}, {}, {}]})";
  Trace trace;
  const Outcome<Bank> bank = SolveBank(testing::MustRead(text), trace);
  ASSERT_TRUE(bank.ok());
  for (const std::string& path : DimensionPaths(bank.value())) {
    const std::string why = WhyText(bank.value(), trace, path, "bank.json", text);
    ASSERT_EQ(why.find(" mm"), std::string::npos) << why;
  }
}

TEST(Why, OffersTheNearestDimensions) {
  const Spec spec = testing::MustRead(
      R"({"opening": {"width": 15, "height": 24, "depth": 21}, "drawers": [{}]})");
  Trace trace;
  const Outcome<Bank> bank = SolveBank(spec, trace);
  ASSERT_TRUE(bank.ok());
  using ::testing::ElementsAre;
  const auto near = [&](const char* path) { return NearestPaths(bank.value(), path); };
  // One edit (a swap), two and three, counted by hand.
  EXPECT_THAT(near("D1.box.widht"), ElementsAre("D1.box.width", "D1.box.right", "D1.box.height"));
  EXPECT_EQ(near("opening.widht_mm").at(0), "opening.width");
  EXPECT_EQ(near("d1.Front.Top").at(0), "D1.front.top");
  EXPECT_EQ(near("part.D1.side.cut.1.ofset").at(0), "part.D1.side.cut.1.offset");
  for (const char* far : {"", "x", "D1.nonsense", "there is no such thing at all"}) {
    const std::vector<std::string> found = near(far);
    EXPECT_EQ(std::set<std::string>(found.begin(), found.end()).size(), 3U) << far;
    for (const std::string& path : found) {
      EXPECT_TRUE(DimensionValue(bank.value(), path).has_value()) << path;
    }
  }
}

}  // namespace
}  // namespace tillwright
