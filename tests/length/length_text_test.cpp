// The text of lengths: what is accepted, what is refused and where, and how lengths are shown.
//
// 1 in = 25.4 mm exactly (NIST SP 811, Appendix B), so the picometers in the tables below are exact
// and were worked by hand: 15 3/8 in = 15.375 · 25.4 mm = 390.525 mm.
#include "tillwright/length_text.h"

#include <gtest/gtest.h>

#include <limits>
#include <random>
#include <string>

#include "support/files.h"

namespace tillwright {
namespace {

constexpr Unit kIn = Unit::kInch;
constexpr Unit kMm = Unit::kMillimeter;

struct Accepted {
  const char* text;
  Unit unit;
  std::int64_t pm;
};

constexpr std::int64_t kUsual = 390'525'000'000;  // 15 3/8 in

const Accepted kAccepted[] = {
    // The forms of the reference.
    {"15 3/8", kIn, kUsual},
    {"15-3/8", kIn, kUsual},
    {"15 3/8\"", kIn, kUsual},
    {"15 3/8 in", kIn, kUsual},
    {"15.375", kIn, kUsual},
    {"3/4", kIn, 19'050'000'000},
    {"390.5 mm", kIn, 390'500'000'000},
    {"39.05 cm", kIn, 390'500'000'000},
    {"0.3905 m", kIn, 390'500'000'000},
    {"1' 3 3/8\"", kIn, kUsual},
    {"1 ft 3 3/8 in", kIn, kUsual},
    {"1'-3\"", kIn, 381'000'000'000},
    {"15\u215c", kIn, kUsual},
    // A bare number is in the unit it is given; a unit wins.
    {"390.525", kMm, kUsual},
    {"15 3/8 in", kMm, kUsual},
    {"15 3/8", kMm, 15'375'000'000},
    {"1 ft", kMm, 304'800'000'000},
    // Every unit, in upper and lower case, with and without a space.
    {"10mm", kIn, 10'000'000'000},
    {"10 MM", kIn, 10'000'000'000},
    {"10 millimetres", kIn, 10'000'000'000},
    {"10 Millimeters", kIn, 10'000'000'000},
    {"1cm", kIn, 10'000'000'000},
    {"0.01 M", kIn, 10'000'000'000},
    {"10 3/8 IN", kIn, 263'525'000'000},
    {"10 in.", kIn, 254'000'000'000},
    {"1 inch", kMm, 25'400'000'000},
    {"10 inches", kMm, 254'000'000'000},
    {"10 ''", kMm, 254'000'000'000},
    {"10\u2033", kMm, 254'000'000'000},
    {"10\u201d", kMm, 254'000'000'000},
    {"10\u201c", kMm, 254'000'000'000},
    {"1 foot", kMm, 304'800'000'000},
    {"2 feet", kMm, 609'600'000'000},
    {"1\u2032", kMm, 304'800'000'000},
    {"1\u2019", kMm, 304'800'000'000},
    {"1\u2018", kMm, 304'800'000'000},
    {"1\u2032 3 3/8\u2033", kMm, kUsual},
    {"1\u2019 3 3/8\u201d", kMm, kUsual},
    // Feet and inches: neither part is lost, whatever stands between.
    {"5' 3/4\"", kIn, 1'543'050'000'000},
    {"60 ft 1 in", kIn, 18'313'400'000'000},
    {"5'6", kMm, 1'676'400'000'000},
    {"5' 6", kMm, 1'676'400'000'000},
    {"1 1/2 ft 3 in", kIn, 533'400'000'000},
    {"1.5' 3", kIn, 533'400'000'000},
    {"1/3 ft", kIn, 101'600'000'000},
    // Fractions: the value of a mixed number is a sum, not a product and not digits put together.
    {"4 1/2", kIn, 114'300'000'000},
    {"1 1/2\"", kIn, 38'100'000'000},
    {"1/512", kIn, 49'609'375},
    {"7/4", kIn, 44'450'000'000},
    {"15 3\u20448", kIn, kUsual},
    {"\u00bd", kIn, 12'700'000'000},
    {"\u00bc\"", kIn, 6'350'000'000},
    {"1 \u00be", kIn, 44'450'000'000},
    {"2-\u215e", kIn, 73'025'000'000},
    {"\u215b in", kIn, 3'175'000'000},
    {"\u215d", kIn, 15'875'000'000},
    {"\u2153 ft", kIn, 101'600'000'000},
    {"\u2154 ft", kIn, 203'200'000'000},
    // Blanks of every kind, round and between.
    {"  15 3/8  ", kIn, kUsual},
    {"15\u00a03/8\u00a0in", kIn, kUsual},
    {"15\u20093/8", kIn, kUsual},
    {"390.525\u202fmm", kIn, kUsual},
    {"\t15  3/8\tin ", kIn, kUsual},
    // Decimals to the picometer and the finest exact inch.
    {".5", kIn, 12'700'000'000},
    {"0.000000001", kMm, 1},
    {"0.001953125", kIn, 49'609'375},
    {"15.3750000000000000000000", kIn, kUsual},
    {"007", kIn, 177'800'000'000},
    {"0", kIn, 0},
    {"0 mm", kIn, 0},
    // A minus sign, plain or typographic.
    {"-1/16", kIn, -1'587'500'000},
    {"\u22121/16", kIn, -1'587'500'000},
    {"- 3 mm", kIn, -3'000'000'000},
    {"-1' 3 3/8\"", kIn, -kUsual},
    {"-0", kIn, 0},
    // The limit itself.
    {"100 m", kIn, 100'000'000'000'000},
    {"-100 m", kIn, -100'000'000'000'000},
    {"100000", kMm, 100'000'000'000'000},
    {"100000.000000000", kMm, 100'000'000'000'000},
};

TEST(LengthText, AcceptsWhatMakersType) {
  for (const Accepted& row : kAccepted) {
    SCOPED_TRACE(row.text);
    const ParsedLength parsed = ParseLength(row.text, row.unit);
    ASSERT_TRUE(parsed.value.has_value()) << parsed.fault.message;
    EXPECT_EQ(parsed.value->picometers(), row.pm);
  }
}

struct Refused {
  const char* text;
  DiagnosticCode code;
  const char* about;    // the piece of the text the fault is about
  const char* message;  // what the message must say
};

constexpr DiagnosticCode kSyntax = DiagnosticCode::kLengthSyntax;
constexpr DiagnosticCode kInexact = DiagnosticCode::kLengthInexact;
constexpr DiagnosticCode kRange = DiagnosticCode::kLengthRange;

const Refused kRefused[] = {
    {"", kSyntax, "", "a length is missing"},
    {"   ", kSyntax, "", "a length is missing"},
    {"-", kSyntax, "", "a length is missing"},
    {"abc", kSyntax, "abc", "expected a number"},
    {"in", kSyntax, "in", "expected a number"},
    {"nan", kSyntax, "nan", "expected a number"},
    {"inf", kSyntax, "inf", "expected a number"},
    {"+5", kSyntax, "+5", "expected a number"},
    {"--5", kSyntax, "-5", "expected a number"},
    {"/8", kSyntax, "/8", "expected a number"},
    {"5.", kSyntax, ".", "digits should follow the point"},
    {".", kSyntax, ".", "digits should follow the point"},
    {"390,5", kSyntax, ",", "a decimal comma"},
    {"1,000 mm", kSyntax, ",", "a decimal comma"},
    {"1e3", kSyntax, "e3", "exponents"},
    {"1.5E2 mm", kSyntax, "E2 mm", "exponents"},
    {"1e+3", kSyntax, "e+3", "exponents"},
    {"0x10", kSyntax, "x10", "unexpected"},
    {"1_000", kSyntax, "_000", "unexpected"},
    {"15 3/8 in in", kSyntax, "in", "unexpected"},
    {"5 mmm", kSyntax, "mmm", "unexpected"},
    {"5 mx", kSyntax, "mx", "unexpected"},
    {"5 yd", kSyntax, "yd", "unexpected"},
    {"5 mm2", kSyntax, "2", "unexpected"},
    {"5 mm 3 mm", kSyntax, "3 mm", "unexpected"},
    {"6\" 2'", kSyntax, "2'", "unexpected"},
    {"1' 6 mm", kSyntax, "mm", "only inches can follow feet"},
    {"1' 6\" 3", kSyntax, "3", "unexpected"},
    {"1' x", kSyntax, "x", "expected a number"},
    {"15 3 in", kSyntax, "3", "a fraction like 3/8 should follow"},
    {"15 3", kSyntax, "3", "a fraction like 3/8 should follow"},
    {"15 8/3", kSyntax, "15 8/3", "less than one"},
    {"15 3/3", kSyntax, "15 3/3", "less than one"},
    {"1/0", kSyntax, "0", "a denominator cannot be zero"},
    {"3 1/0 in", kSyntax, "0", "a denominator cannot be zero"},
    {"15 3/", kSyntax, "", "a denominator should follow"},
    {"3/x", kSyntax, "x", "a denominator should follow"},
    {"3/-4", kSyntax, "-4", "a denominator should follow"},
    {"3/4/5", kSyntax, "/5", "unexpected"},
    {"1.5/2", kSyntax, "/2", "a decimal cannot be used in a fraction"},
    {"1 1.5/2", kSyntax, "1", "a fraction like 3/8 should follow"},
    {"15 - 3/8", kSyntax, "- 3/8", "unexpected"},  // a difference?
    {"15 -3/8", kSyntax, "-3/8", "unexpected"},
    {"15- 3/8", kSyntax, "- 3/8", "unexpected"},
    {"15-", kSyntax, "-", "unexpected"},
    {"15+3/8", kSyntax, "+3/8", "unexpected"},
    {"\u00bd/2", kSyntax, "/2", "unexpected"},
    {"\u00bd\u00bd", kSyntax, "\u00bd", "unexpected"},
    {"0.0000000001 m", kSyntax, "0.0000000001 m", "more than 9 decimals"},
    {"1/2000000", kSyntax, "2000000", "the fraction is too long"},
    {"3000000/1000 mm", kSyntax, "3000000", "the fraction is too long"},
    {"1234567890123456789", kSyntax, "1234567890123456789", "too many digits"},
    {"15 3/8 in\x01", kSyntax, "\x01", "unexpected"},
    // Not a whole count of picometers.
    {"1/3", kInexact, "1/3", "cannot be represented exactly"},
    {"2 \u2153", kInexact, "2 \u2153", "cannot be represented exactly"},
    {"1/1024", kInexact, "1/1024", "cannot be represented exactly"},
    {"0.000000001", kInexact, "0.000000001", "cannot be represented exactly"},  // of an inch
    {"1/7 mm", kInexact, "1/7 mm", "cannot be represented exactly"},
    // Past 100 m.
    {"100.000000001 m", kRange, "100.000000001 m", "over the limit of 100 m"},
    {"-100.1 m", kRange, "-100.1 m", "over the limit of 100 m"},
    {"3937 1/2", kRange, "3937 1/2", "over the limit of 100 m"},
    {"1000001 mm", kRange, "1000001", "over the limit of 100 m"},
    {"999999999999999999", kRange, "999999999999999999", "over the limit of 100 m"},
};

TEST(LengthText, RefusesTheRestAndSaysWhere) {
  for (const Refused& row : kRefused) {
    SCOPED_TRACE(row.text);
    const std::string text = row.text;
    const ParsedLength parsed = ParseLength(text, kIn);
    ASSERT_FALSE(parsed.value.has_value()) << parsed.value->picometers();
    const LengthFault& fault = parsed.fault;
    EXPECT_EQ(CodeText(fault.code), CodeText(row.code));
    EXPECT_NE(fault.message.find(row.message), std::string::npos) << fault.message;
    EXPECT_LE(fault.offset, text.size());
    if (*row.about != '\0') {
      EXPECT_EQ(text.substr(fault.offset, fault.length), row.about);
    }
  }
}

TEST(LengthText, ALengthThatIsNotExactNamesTheNearestThatAre) {
  EXPECT_EQ(ParseLength("1/3", kIn).fault.hint,
            "the nearest that can be are 21/64 in and 11/32 in");
  EXPECT_EQ(ParseLength("-1/3", kIn).fault.hint,
            "the nearest that can be are -11/32 in and -21/64 in");
  EXPECT_EQ(ParseLength("1/3", kMm).fault.hint,
            "the nearest that can be are 0.333333333 mm and 0.333333334 mm");
  // In the unit that was typed, not in the spec's.
  EXPECT_EQ(ParseLength("1/3 mm", kIn).fault.hint,
            "the nearest that can be are 0.333333333 mm and 0.333333334 mm");
  EXPECT_EQ(ParseLength("1/3 in", kMm).fault.hint,
            "the nearest that can be are 21/64 in and 11/32 in");
}

TEST(LengthText, FractionsComeBackOverTwoHundredInches) {
  int seen = 0;
  for (std::int64_t n = -100 * 512; n <= 100 * 512; ++n) {
    const Length length = Length::Inches(n, 512);
    const std::string text = FormatInches(length);
    ASSERT_EQ(text.find("\u2248"), std::string::npos) << text;
    const ParsedLength parsed = ParseLength(text, kIn);
    ASSERT_TRUE(parsed.value.has_value()) << text << ": " << parsed.fault.message;
    ASSERT_EQ(*parsed.value, length) << text;
    const std::string with_unit = FormatWithUnit(length, kIn);
    ASSERT_EQ(*ParseLength(with_unit, kMm).value, length) << with_unit;
    ++seen;
  }
  EXPECT_EQ(seen, 102'401);
}

TEST(LengthText, EveryPicometerCountComesBackFromMillimeters) {
  const std::uint32_t seed = testing::TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  std::mt19937_64 engine(seed);
  for (int bits = 1; bits <= 46; ++bits) {
    std::uniform_int_distribution<std::int64_t> any(-(std::int64_t{1} << bits),
                                                    std::int64_t{1} << bits);
    for (int i = 0; i < 1000; ++i) {
      const Length length = Length::Picometers(any(engine));
      const std::string text = FormatMillimeters(length);
      ASSERT_EQ(*ParseLength(text, kMm).value, length) << text;
      ASSERT_EQ(*ParseLength(text + " mm", kIn).value, length) << text;
      const bool padded = text.find('.') != std::string::npos && text.back() == '0';
      ASSERT_FALSE(padded) << text;
    }
  }
}

struct Shown {
  std::int64_t pm;
  const char* inches;
  const char* millimeters;
};

TEST(LengthText, ShowsInchesAsFractionsAndMillimetersExactly) {
  for (const Shown& row : {
           Shown{0, "0", "0"},
           Shown{kUsual, "15 3/8", "390.525"},
           Shown{-kUsual, "-15 3/8", "-390.525"},
           Shown{19'050'000'000, "3/4", "19.05"},
           Shown{-19'050'000'000, "-3/4", "-19.05"},
           Shown{25'400'000'000, "1", "25.4"},
           Shown{396'875'000, "1/64", "0.396875"},
           Shown{1'000'000'000'000, "\u2248 39.3701", "1000"},  // 39.37007…; 39 3/8 is 0.005 off
           Shown{100'000'000'000, "\u2248 3 15/16", "100"},     // 3.93700…; 3 15/16 is 3.9375
           Shown{198'437'500, "1/128", "0.1984375"},
           Shown{198'437'499, "\u2248 0.0078", "0.198437499"},  // 1/128 = 0.0078125
           Shown{-1, "\u2248 0", "-0.000000001"},
           Shown{-198'437'500, "-1/128", "-0.1984375"},
           Shown{99'218'750, "1/256", "0.09921875"},
           Shown{49'609'375, "1/512", "0.049609375"},
           Shown{25'449'609'375, "1 1/512", "25.449609375"},
           Shown{300'000'000, "\u2248 0.0118", "0.3"},  // a playing card; 1/64 is 0.0156
           Shown{-2'000'000'000, "\u2248 -5/64", "-2"},  // 0.07874; 5/64 is 0.07813
           Shown{25'399'999'999, "\u2248 1", "25.399999999"},
           Shown{100'000'000'000'000, "\u2248 3937.0079", "100000"},
           Shown{9'223'372'036'854'775'807, nullptr, "9223372036.854775807"},
       }) {
    const Length length = Length::Picometers(row.pm);
    if (row.inches != nullptr) {
      EXPECT_EQ(FormatInches(length), row.inches);
    }
    EXPECT_EQ(FormatMillimeters(length), row.millimeters);
    EXPECT_EQ(FormatLength(length, kMm), row.millimeters);
    EXPECT_EQ(FormatWithUnit(length, kMm), std::string(row.millimeters) + " mm");
  }
  EXPECT_EQ(FormatMillimeters(Length::Picometers(std::numeric_limits<std::int64_t>::min())),
            "-9223372036.854775808");
}

TEST(LengthText, MarksALengthAsRoundedExactlyWhenItIs) {
  for (std::int64_t n = 0; n < 512; ++n) {
    const InchParts parts = ToInchParts(Length::Inches(n, 512));
    EXPECT_TRUE(parts.exact) << n;
    EXPECT_EQ(parts.whole * 512 + parts.numerator * (512 / parts.denominator), n);
    const InchParts beside = ToInchParts(Length::Inches(n, 512) + Length::Picometers(1));
    EXPECT_FALSE(beside.exact) << n;
    const std::int64_t shown = beside.whole * 64 + beside.numerator * (64 / beside.denominator);
    EXPECT_EQ(shown, (n + 4) / 8) << n << ": the nearest 64th";
  }
}

}  // namespace
}  // namespace tillwright
