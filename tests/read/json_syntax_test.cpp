// What is not JSON, and where the reader says so.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "tillwright/read.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

struct Faulty {
  const char* text;
  DiagnosticCode code;
  const char* about;  // the text at the place
  const char* message;
  int after = 0;  // the place is looked for from this byte on
};

constexpr DiagnosticCode kSyntax = DiagnosticCode::kJsonSyntax;
constexpr DiagnosticCode kComma = DiagnosticCode::kTrailingComma;

TEST(JsonSyntax, FaultsAreToldAtTheTokenThatIsWrong) {
  for (const Faulty& row : {
           Faulty{"", kSyntax, "", "end of input"},
           Faulty{"// nothing but a comment\n", kSyntax, "", "end of input"},
           Faulty{"{", kSyntax, "", "end of input"},
           Faulty{"{\"a\": [1, 2", kSyntax, "", "end of input"},
           Faulty{"{\"a\" 1}", kSyntax, "1", "expected ':'"},
           Faulty{"[1 2]", kSyntax, "2", "expected ',' or ']'"},
           Faulty{"[15 3/8]", kSyntax, "3", "expected ',' or ']'"},
           Faulty{"{\"a\": }", kSyntax, "}", "unexpected '}'"},
           Faulty{"[,1]", kSyntax, ",", "unexpected ','"},
           Faulty{"[1,, 2]", kSyntax, ",", "unexpected ','", 3},
           Faulty{"{\"a\":: 1}", kSyntax, ":", "unexpected ':'", 5},
           Faulty{"{\"a\"\n  , 1}", kSyntax, ",", "unexpected ','"},
           Faulty{"{a: 1}", kSyntax, "a", "expected string literal"},
           Faulty{"{'a': 1}", kSyntax, "'a'", "expected string literal"},
           Faulty{"[+1]", kSyntax, "+1", "invalid literal"},
           Faulty{"[007]", kSyntax, "007", "\"007\" is not a valid value"},
           Faulty{"[-01.5]", kSyntax, "-01.5", "is not a valid value"},
           Faulty{"[1abc]", kSyntax, "1abc", "is not a valid value"},
           Faulty{"[nullx]", kSyntax, "nullx", "is not a valid value"},
           Faulty{"[true1]", kSyntax, "true1", "is not a valid value"},
           Faulty{"[.5]", kSyntax, ".5", "invalid literal"},
           Faulty{"[5.]", kSyntax, "5.", "invalid number"},
           Faulty{"[NaN]", kSyntax, "NaN", "invalid literal"},
           Faulty{"[Infinity]", kSyntax, "Infinity", "invalid literal"},
           Faulty{"[True]", kSyntax, "True", "invalid literal"},
           Faulty{"[1] 2", kSyntax, "2", "expected end of input"},
           Faulty{"[1]]", kSyntax, "]", "expected end of input", 3},
           Faulty{"[\"a\nb\"]", kSyntax, "\"a", "control character"},
           Faulty{"[\"a\\x\"]", kSyntax, "\"a\\x\"", "invalid string"},
           Faulty{"[\"\\ud83d\"]", kSyntax, "\"\\ud83d\"", "surrogate"},
           Faulty{"[\"a]", kSyntax, "\"a]", "missing closing quote"},
           Faulty{"[\"\xff\"]", kSyntax, "\"\xff\"", "ill-formed UTF-8"},
           Faulty{"[\"\xc0\xaf\"]", kSyntax, "\"\xc0\xaf\"", "ill-formed UTF-8"},
           Faulty{"[1e999]", DiagnosticCode::kNumberRange, "1e999", "too large a number"},
           Faulty{"{\"a\": -1E400}", DiagnosticCode::kNumberRange, "-1E400", "too large a number"},
           Faulty{"[1,]", kComma, ",", "before a closing bracket"},
           Faulty{"{\"a\": 1 /* , */ , // ,\n }", kComma, ", // ,", "before a closing bracket"},
           Faulty{"[1, // ]\n]", kComma, ",", "before a closing bracket"},
           Faulty{"{,}", kComma, ",", "before a closing bracket"},
       }) {
    const std::string text = row.text;
    SCOPED_TRACE(text);
    const Outcome<Spec> read = ReadSpec(text);
    ASSERT_FALSE(read.ok());
    const Diagnostic& first = read.diagnostics().front();
    EXPECT_EQ(CodeText(first.code), CodeText(row.code));
    EXPECT_THAT(first.message, HasSubstr(row.message));
    const std::string about = row.about;
    const std::size_t at =
        about.empty() ? text.size() : text.find(about, static_cast<std::size_t>(row.after));
    EXPECT_EQ(first.place.offset, at);
    if (row.code != kComma) {
      EXPECT_EQ(first.place.length, about.size());
    }
  }
}

std::vector<std::string> MessagesAt(const std::string& text) {
  std::vector<std::string> lines;
  for (const Diagnostic& d : ReadSpec(text).diagnostics()) {
    const Location at = Locate(text, d.place);
    lines.push_back(std::to_string(at.line) + ":" + std::to_string(at.column) + " " +
                    std::string(CodeText(d.code)));
  }
  return lines;
}

TEST(JsonSyntax, EveryTrailingCommaIsToldAtTheCommaAndReadingGoesOn) {
  EXPECT_THAT(MessagesAt("{\n"
                         "  \"opening\": { \"width\": 1, \"height\": 2, \"depth\": 3, },\n"
                         "  \"round\": \"1/0\",\n"
                         "  \"drawers\": [ {}, {},\n"
                         "    // the last\n"
                         "  ],\n"
                         "}\n"),
              ElementsAre("2:51 trailing-comma", "4:22 trailing-comma", "6:4 trailing-comma",
                          "3:15 length-syntax"));
}

TEST(JsonSyntax, ACommaInACommentIsNoTrailingComma) {
  EXPECT_THAT(MessagesAt("{ \"opening\": { \"width\": 1, \"height\": 2, \"depth\": 3 //,\n },\n"
                         "  \"drawers\": [{} /*,*/ ],}"),
              ElementsAre("3:25 trailing-comma"));
}

TEST(JsonSyntax, BothTheTrailingCommaAndTheNextFaultAreTold) {
  EXPECT_THAT(MessagesAt("{\"a\": [1,], \"b\" 2}"),
              ElementsAre("1:9 trailing-comma", "1:17 json-syntax"));
}

TEST(JsonSyntax, ADuplicateKeyIsToldAtItsSecondPlaceAndReadingGoesOn) {
  EXPECT_THAT(MessagesAt("{\"opening\": {\"width\": 9, \"height\": 9, \"depth\": 9, \"width\": 8},\n"
                         " \"drawers\": [{}], \"colour\": 1, \"drawers\": [{}]}"),
              ElementsAre("1:51 duplicate-key", "2:32 duplicate-key", "2:19 unknown-key"));
  // An escape does not hide one.
  EXPECT_THAT(MessagesAt("{\"opening\": {\"width\": 9, \"height\": 9, \"depth\": 9},\n"
                         " \"drawers\": [{}], \"\\u0064rawers\": [{}]}"),
              ElementsAre("2:19 duplicate-key"));
}

TEST(JsonSyntax, ADuplicateAmongManyKeysIsFoundToo) {
  std::string text = "{";
  for (int i = 0; i < 100; ++i) text += "\"k" + std::to_string(i) + "\": 0, ";
  int duplicates = 0;
  const std::string many = text + "\"k7\": 0, \"k99\": 1, \"k99\": 2}";
  for (const Diagnostic& d : ReadSpec(many).diagnostics()) {
    if (d.code == DiagnosticCode::kDuplicateKey) ++duplicates;
  }
  EXPECT_EQ(duplicates, 3);
}

TEST(JsonSyntax, CommentsAndAByteOrderMarkAreFine) {
  EXPECT_TRUE(ReadSpec("\xEF\xBB\xBF// line\r\n{ /* block, \" */ \"opening\": { \"width\": 9,\n"
                       "\"height\": /**/ 9, \"depth\"/***/: 9 }, \"drawers\": [{}] } // end")
                  .ok());
}

}  // namespace
}  // namespace tillwright
