// Diagnostics as a compiler would show them, and as JSON.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>

#include "text/utf8_width.h"
#include "tillwright/read.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using Json = nlohmann::json;

std::string Shown(const std::string& text, TextStyle style = {}) {
  return DiagnosticsText(ReadSpec(text).diagnostics(), "bank.json", text, style);
}

constexpr const char* kFaulty =
    "{ \"opening\": { \"width\": \"15 1/0\", \"height\": 24, \"depth\": 21 },\n"
    "\t\"drawers\": [{ \"heigth\": 3 }] }\n";

TEST(DiagnosticsText, NamesThePlaceShowsTheLineAndPointsAtTheFault) {
  EXPECT_EQ(Shown(kFaulty),
            "bank.json:1:31: error: a denominator cannot be zero: \"0\" in \"15 1/0\" "
            "[length-syntax]\n"
            "   1 | { \"opening\": { \"width\": \"15 1/0\", \"height\": 24, \"depth\": 21 },\n"
            "     |                               ^\n"
            "bank.json:2:16: error: unknown key \"heigth\" in \"drawer\" [unknown-key]\n"
            "   2 |  \"drawers\": [{ \"heigth\": 3 }] }\n"
            "     |                ^^^^^^^^ did you mean \"weight\"?\n");
}

TEST(DiagnosticsText, ColorsOnlyWhenAsked) {
  EXPECT_THAT(Shown(kFaulty), Not(HasSubstr("\x1b")));
  EXPECT_THAT(Shown(kFaulty, {true}), HasSubstr("\x1b[31merror\x1b[0m"));
}

TEST(DiagnosticsText, WorksWithoutATextAFileOrAPlace) {
  const Diagnostics lone{
      {DiagnosticCode::kFileRead, Severity::kError, {}, "cannot be read", "why"}};
  EXPECT_EQ(DiagnosticsText(lone, "x.json", "", {}),
            "x.json: error: cannot be read [file-read]\n  why\n");
  EXPECT_EQ(DiagnosticsText(lone, "", "", {}), "error: cannot be read [file-read]\n  why\n");
  EXPECT_EQ(DiagnosticsText({}, "x.json", "text", {}), "");
}

TEST(DiagnosticsText, ShowsTheStretchOfAVeryLongLine) {
  const std::string text = "{\"title\": \"" + std::string(5000, 'x') + "\", \"rond\": 1}";
  const std::string shown = Shown(text);
  EXPECT_LT(shown.size(), 2500U);
  for (std::size_t at = 0; at < shown.size();) {
    const std::size_t end = shown.find('\n', at);
    EXPECT_LT(end - at, 200U);
    at = end + 1;
  }
  EXPECT_THAT(shown, HasSubstr("did you mean \"round\"?"));
}

TEST(DiagnosticsText, TheCaretStandsUnderItsCharacterWhateverTheLineHolds) {
  const std::string text = "{ /* \xe2\x89\x88\xf0\x9f\x98\x80 \x1b[2J \xc2\x9b */ \"colour\": 1 }";
  const std::string shown = Shown(text);
  const std::size_t line = shown.rfind("   1 | ");
  const std::string source = shown.substr(line, shown.find('\n', line) - line);
  const std::size_t caret_line = line + source.size() + 1;
  const std::string carets = shown.substr(caret_line, shown.find('\n', caret_line) - caret_line);
  EXPECT_EQ(CharacterCount(source.substr(0, source.find("\"colour\""))), carets.find('^'));
}

TEST(DiagnosticsText, CountsWhatItDoesNotShow) {
  std::string text = "{";
  for (int i = 0; i < 150; ++i) text += "\"wrong" + std::to_string(i) + "\": 0,\n";
  text += "\"last\": 0}";
  EXPECT_THAT(Shown(text), ::testing::EndsWith("and 53 more\n"));  // and the two that are missing
}

TEST(DiagnosticsText, ControlCharactersNeverReachTheOutput) {
  for (const char* evil : {"\x1b[2J", "\x07",
                           "\xc2\x9b"
                           "31m",
                           "\x9b", "\xe2\x80\xae", "\r", "\x7f"}) {
    const std::string raw = std::string("{ \"colour\": 1 } // ") + evil;
    Diagnostics some = ReadSpec(raw).diagnostics();
    some.push_back({DiagnosticCode::kUsage, Severity::kError, {}, evil, evil});
    const std::string shown = DiagnosticsText(some, std::string("name") + evil, raw, {});
    EXPECT_EQ(shown.find(evil), std::string::npos) << shown;
    const std::string json = DiagnosticsJson(some, std::string("name") + evil, raw);
    EXPECT_TRUE(Json::accept(json));
  }
}

TEST(DiagnosticsJson, HoldsTheKeysOfTheContract) {
  const std::string text = kFaulty;
  const Json json = Json::parse(DiagnosticsJson(ReadSpec(text).diagnostics(), "bank.json", text));
  ASSERT_EQ(json["errors"].size(), 2U);
  const Json& second = json["errors"][1];
  EXPECT_EQ(second["code"], "unknown-key");
  EXPECT_EQ(second["message"], "unknown key \"heigth\" in \"drawer\"");
  EXPECT_EQ(second["hint"], "did you mean \"weight\"?");
  EXPECT_EQ(second["where"]["file"], "bank.json");
  EXPECT_EQ(second["where"]["line"], 2);
  EXPECT_EQ(second["where"]["column"], 16);
  EXPECT_EQ(second["where"]["path"], "/drawers/0/heigth");
  EXPECT_EQ(json["errors"][0]["where"]["path"], "/opening/width");
}

TEST(DiagnosticsJson, SaysNullForAPlaceThatIsNowhere) {
  const Diagnostics lone{{DiagnosticCode::kFileRead, Severity::kError, {}, "cannot be read", ""}};
  const Json json = Json::parse(DiagnosticsJson(lone, "x.json", ""));
  EXPECT_TRUE(json["errors"][0]["where"]["line"].is_null());
  EXPECT_TRUE(json["errors"][0]["where"]["column"].is_null());
  EXPECT_TRUE(json["errors"][0]["where"]["path"].is_null());
}

}  // namespace
}  // namespace tillwright
