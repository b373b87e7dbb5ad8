// Limits: each has a case just inside and one just outside, and none takes long to refuse.
#include <gtest/gtest.h>

#include <algorithm>
#include <ctime>
#include <string>

#include "tillwright/read.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

const std::string kOpening = R"("opening": {"width": "50 m", "height": "50 m", "depth": 9})";

int Count(const Diagnostics& diagnostics, DiagnosticCode code) {
  return static_cast<int>(std::ranges::count(diagnostics, code, &Diagnostic::code));
}

std::string Repeated(const std::string& text, int times) {
  std::string out;
  for (int i = 0; i < times; ++i) out += text;
  return out;
}

// A layout of nodes within one another, the leaf being the last level.
std::string Nested(int levels) {
  return "{" + kOpening + ", \"layout\": " + Repeated(R"({"rows": [)", levels - 1) +
         R"({"drawer": {"box": {"side": {"thickness": 1}}}})" + Repeated("]}", levels - 1) + "}";
}

TEST(Limits, SixtyFourLevelsPassAndOneMoreIsRefused) {
  EXPECT_TRUE(ReadSpec(Nested(64)).ok());
  const std::string deep = Nested(65);
  const Outcome<Spec> read = ReadSpec(deep);
  ASSERT_EQ(Count(read.diagnostics(), DiagnosticCode::kTooBig), 1);
  EXPECT_EQ(read.diagnostics()[0].place.offset, deep.find("{\"drawer\""));
  EXPECT_EQ(Count(ReadSpec(Nested(500)).diagnostics(), DiagnosticCode::kTooBig), 1);
}

std::string PlainList(int drawers) {
  return "{" + kOpening + ", \"drawers\": [{}" + Repeated(", {}", drawers - 1) + "]}";
}

TEST(Limits, TenThousandLeavesPassAndOneMoreIsRefusedOnce) {
  EXPECT_TRUE(ReadSpec(PlainList(10'000)).ok());
  EXPECT_EQ(Count(ReadSpec(PlainList(10'001)).diagnostics(), DiagnosticCode::kTooBig), 1);
  EXPECT_EQ(Count(ReadSpec(PlainList(30'000)).diagnostics(), DiagnosticCode::kTooBig), 1);
}

TEST(Limits, LeavesOfEveryKindCountInATreeToo) {
  const auto tree = [](int columns) {
    return "{" + kOpening + R"(, "layout": {"rows": [{"drawer": {}}, {"columns": [{"open": {}})" +
           Repeated(R"(, {"blank": {}})", columns - 1) + "]}]}}";
  };
  EXPECT_TRUE(ReadSpec(tree(9'999)).ok());
  EXPECT_EQ(Count(ReadSpec(tree(10'000)).diagnostics(), DiagnosticCode::kTooBig), 1);
}

TEST(Limits, AHundredKindsOfSpacersPassAndOneMoreIsRefused) {
  const auto spacers = [](int kinds) {
    return "{" + kOpening + R"(, "drawers": [{}], "spacers": [{"thickness": 1})" +
           Repeated(R"(, {"thickness": 2})", kinds - 1) + "]}";
  };
  EXPECT_TRUE(ReadSpec(spacers(100)).ok());
  EXPECT_EQ(Count(ReadSpec(spacers(101)).diagnostics(), DiagnosticCode::kTooBig), 1);
}

TEST(Limits, SixteenMebibytesPassAndOneByteMoreIsRefused) {
  std::string text = PlainList(1);
  text.resize(kMaxSpecBytes, ' ');
  EXPECT_TRUE(ReadSpec(text).ok());
  text += ' ';
  const Outcome<Spec> read = ReadSpec(text);
  ASSERT_EQ(read.diagnostics().size(), 1U);
  EXPECT_EQ(read.diagnostics()[0].code, DiagnosticCode::kTooBig);
}

TEST(Limits, LengthsEndAtAHundredMeters) {
  const auto with = [](const char* width) {
    return R"({"opening": {"width": )" + std::string(width) +
           R"(, "height": 9, "depth": 9}, "drawers": [{}]})";
  };
  EXPECT_TRUE(ReadSpec(with("\"100 m\"")).ok());
  for (const char* width : {"\"100.001 m\"", "1e30", "123456789012345678901234567890", "1e308"}) {
    EXPECT_FALSE(ReadSpec(with(width)).ok()) << width;
  }
}

// The processor's time, which does not run on while others have the machine.
class Stopwatch {
 public:
  [[nodiscard]] double Seconds() const {
    return static_cast<double>(std::clock() - start_) / CLOCKS_PER_SEC;
  }

 private:
  std::clock_t start_ = std::clock();
};

// A file meant to keep the reader busy, or the maker waiting for its messages.
void ExpectRefusedAtOnce(const std::string& text) {
  const Stopwatch watch;
  const Outcome<Spec> read = ReadSpec(text);
  EXPECT_FALSE(read.ok());
  EXPECT_FALSE(DiagnosticsText(read.diagnostics(), "spec", text, {}).empty());
  EXPECT_FALSE(DiagnosticsJson(read.diagnostics(), "spec", text).empty());
  // Generous: a quadratic step anywhere would take minutes.
  EXPECT_LT(watch.Seconds(), 60) << text.substr(0, 40);
}

TEST(Limits, AMillionBracketsAreRefusedAtOnce) {
  const std::string text(1'000'000, '[');
  const Stopwatch watch;
  const Outcome<Spec> read = ReadSpec(text);
  EXPECT_LT(watch.Seconds(), 2);
  ASSERT_EQ(read.diagnostics().size(), 1U);
  EXPECT_EQ(read.diagnostics()[0].code, DiagnosticCode::kTooBig);
  ExpectRefusedAtOnce(Repeated("{\"a\":", 1'000'000));
}

TEST(Limits, FilesMadeToWasteTimeAreRefusedSoon) {
  std::string keys = "{";
  for (int i = 0; i < 300'000; ++i) keys += "\"k" + std::to_string(i) + "\":0,";
  ExpectRefusedAtOnce(keys + "\"k0\":0}");                            // unknown keys without end
  ExpectRefusedAtOnce("[" + Repeated("0,", 4'000'000) + "0]");        // values without end
  ExpectRefusedAtOnce("[1 /*" + std::string(4'000'000, ',') + "*/");  // commas in a comment
  ExpectRefusedAtOnce("[" + Repeated("1,]", 500'000));
  ExpectRefusedAtOnce(std::string(4'000'000, '/'));
  ExpectRefusedAtOnce("\"" + std::string(4'000'000, '\\'));
  ExpectRefusedAtOnce("{" + kOpening + ", \"drawers\": [" + Repeated("{\"x\":1},", 9'999) + "{}]}");
  ExpectRefusedAtOnce("{" + kOpening + ", \"drawers\": [{}], \"measured\": {\"width\": [" +
                      Repeated("{},", 200'000) + "{}]}}");
}

TEST(Limits, MoreThanAMillionValuesAreRefused) {
  const auto list = [](int n) { return "[0" + Repeated(",0", n - 1) + "]"; };
  EXPECT_EQ(Count(ReadSpec(list(999'999)).diagnostics(), DiagnosticCode::kTooBig), 0);
  EXPECT_EQ(Count(ReadSpec(list(1'000'000)).diagnostics(), DiagnosticCode::kTooBig), 1);
}

}  // namespace
}  // namespace tillwright
