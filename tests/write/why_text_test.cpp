// Why: for every dimension, what is printed is the bank's, and the line with numbers comes to the
// value that is printed above it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "support/files.h"
#include "support/specs.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;

// --- A calculator for the lines with numbers ----------------------------------------------------
//
//   sum = product { ("+" | "-") product }
//   product = integer "x" product | atom [ "/" integer ]
//   atom = length | "(" sum ")" | "half of (" sum ")" | "the other half of (" sum ")"
//        | "down to" atom "of (" sum ")"
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

  Length Atom() {
    if (failed_) return {};
    if (rest_.starts_with('(')) return InBrackets();
    if (Take("half of ")) return HalfBelow(InBrackets());
    if (Take("the other half of ")) return HalfAbove(InBrackets());
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
  EXPECT_EQ(run("1 + "), std::nullopt);
  EXPECT_EQ(run("1 + x"), std::nullopt);
}

// --- Every dimension ----------------------------------------------------------------------------

// What the bank says under the paths of `why`.
std::map<std::string, Length> Dimensions(const Bank& bank) {
  std::map<std::string, Length> all{{"opening.width", bank.opening_width},
                                    {"opening.height", bank.opening_height},
                                    {"opening.depth", bank.opening_depth}};
  const auto rect = [&](const std::string& head, const Rect& r) {
    all[head + ".x"] = r.x;
    all[head + ".y"] = r.y;
    all[head + ".width"] = r.width;
    all[head + ".height"] = r.height;
  };
  for (const Space& space : bank.spaces) {
    const std::string id = ToText(space.id);
    rect(id + ".cell", space.cell);
    if (space.HasFront()) rect(id + ".front", space.front.rect);
    if (!space.HasBox()) continue;
    const Box& box = space.box;
    all[id + ".slide.length"] = space.slide.length;
    all[id + ".slide.line_y"] = space.slide.line_y;
    all[id + ".box.x"] = box.x;
    all[id + ".box.y"] = box.y;
    all[id + ".box.z"] = box.z;
    all[id + ".box.width"] = box.width;
    all[id + ".box.height"] = box.height;
    all[id + ".box.depth"] = box.depth;
    all[id + ".box.inside_width"] = box.inside_width;
    all[id + ".box.inside_depth"] = box.inside_depth;
    all[id + ".box.inside_height"] = box.inside_height;
  }
  for (const Divider& divider : bank.dividers) all[ToText(divider) + ".length"] = divider.length;
  return all;
}

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
  const Outcome<Bank> bank = SolveBank(spec, trace);
  if (!bank.ok()) return 0;
  const Unit unit = spec.units.value;
  std::map<std::string, Length> dimensions = Dimensions(bank.value());
  int checked = 0;
  for (const std::string& path : trace.Paths()) {
    const std::string why = WhyText(trace, path, unit, "spec.json", text);
    EXPECT_FALSE(why.empty()) << path;
    const std::vector<Answer> answers = Paragraphs(why);
    if (answers.empty()) continue;
    EXPECT_EQ(answers[0].label, path);
    if (const auto known = dimensions.find(path); known != dimensions.end()) {
      EXPECT_EQ(answers[0].value, FormatWithUnit(known->second, unit)) << path;
      EXPECT_EQ(trace.At(trace.Find(path)).value, known->second) << path;
      dimensions.erase(known);
    }
    checked += CheckSums(answers, unit);
    EXPECT_EQ(WhyText(trace, path + "_mm", unit, "spec.json", text), why) << path;
  }
  EXPECT_TRUE(dimensions.empty()) << dimensions.begin()->first << " has no explanation";
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
  for (const std::string& text : testing::RandomSpecs(70'000, 60)) {
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
  ASSERT_TRUE(SolveBank(spec, trace).ok());
  const std::string why = WhyText(trace, "D1.box.width", Unit::kInch, "bank.json", text);
  EXPECT_THAT(why, HasSubstr("given at bank.json:2:25:"));
  EXPECT_THAT(why, HasSubstr("default (common practice, no source)"));
  EXPECT_EQ(WhyText(trace, "D3.box.width", Unit::kInch, "bank.json", text), "");
  EXPECT_EQ(WhyText(trace, "", Unit::kInch, "bank.json", text), "");
}

TEST(Why, OffersTheNearestDimensions) {
  const Spec spec = testing::MustRead(
      R"({"opening": {"width": 15, "height": 24, "depth": 21}, "drawers": [{}]})");
  Trace trace;
  ASSERT_TRUE(SolveBank(spec, trace).ok());
  EXPECT_EQ(NearestPaths(trace, "D1.box.widht").at(0), "D1.box.width");
  EXPECT_EQ(NearestPaths(trace, "opening.widht_mm").at(0), "opening.width");
  EXPECT_EQ(NearestPaths(trace, "D1.front_end.length").at(0), "D1.box_front.length");
  const std::vector<std::string> of_drawer = NearestPaths(trace, "D1.nonsense");
  EXPECT_LE(of_drawer.size(), 12U);
  EXPECT_THAT(of_drawer, ::testing::Each(::testing::StartsWith("D1.")));
}

}  // namespace
}  // namespace tillwright
