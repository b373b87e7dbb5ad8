// Locate and PointersTo: how a place in a text is named for makers, editors and programs.
#include <gtest/gtest.h>

#include <string>

#include "tillwright/read.h"

namespace tillwright {
namespace {

Place PlaceIn(const std::string& text, const std::string& needle) {
  return {static_cast<std::uint32_t>(text.find(needle)),
          static_cast<std::uint32_t>(needle.size())};
}

struct Row {
  const char* text;
  const char* needle;
  int line;
  int column;
  const char* source;
  int width;
};

TEST(Locate, CountsLinesAndCharactersFromOne) {
  for (const Row& row : {
           Row{"abc", "a", 1, 1, "abc", 1},
           Row{"abc", "bc", 1, 2, "abc", 2},
           Row{"abc\ndef\n", "ef", 2, 2, "def", 2},
           Row{"abc\r\ndef\r\nghi", "f", 2, 3, "def", 1},
           Row{"\n\n\nx", "x", 4, 1, "x", 1},
           Row{"\t\tx", "x", 1, 3, "\t\tx", 1},
           Row{"\xc3\xa9\xe2\x89\x88\xf0\x9f\x98\x80x", "x", 1, 4,
               "\xc3\xa9\xe2\x89\x88\xf0\x9f\x98\x80x", 1},
           Row{"a\xc3\xa9\xe2\x89\x88z", "\xc3\xa9\xe2\x89\x88", 1, 2, "a\xc3\xa9\xe2\x89\x88z", 2},
           Row{"ab\ncd", "b\nc", 1, 2, "ab", 1},  // a caret stays on its line
           Row{"\xEF\xBB\xBFxy", "y", 1, 2, "xy", 1},  // a byte order mark is no character
           Row{"\xEF\xBB\xBF\nxy", "y", 2, 2, "xy", 1},
       }) {
    SCOPED_TRACE(row.text);
    const Location at = Locate(row.text, PlaceIn(row.text, row.needle));
    EXPECT_EQ(at.line, row.line);
    EXPECT_EQ(at.column, row.column);
    EXPECT_EQ(at.source, row.source);
    EXPECT_EQ(at.width, row.width);
  }
}

TEST(Locate, TakesThePlacesAtTheVeryEndsToo) {
  const Location nowhere = Locate("abc", {});
  EXPECT_EQ(nowhere.line, 1);
  EXPECT_EQ(nowhere.column, 1);
  EXPECT_TRUE(nowhere.source.empty());
  EXPECT_EQ(Locate("ab\n", {3, 0}).line, 2);
  EXPECT_EQ(Locate("ab\n", {3, 1}).column, 1);
  EXPECT_EQ(Locate("ab", {2, 1}).column, 3);
  EXPECT_EQ(Locate("ab", {700, 9}).column, 3);
  EXPECT_EQ(Locate("", {0, 1}).column, 1);
  EXPECT_EQ(Locate("\xEF\xBB\xBF", {0, 1}).column, 1);
  EXPECT_EQ(Locate("ab\ncd", {2, 1}).source, "ab");
}

TEST(Pointers, FollowRfc6901) {
  const std::string text = R"(// a comment
{ "a/b": [10, {"m~n": 11, "": 12}], "c": {"d": {"e": 13}}, " ": "text", "k\"l": 14 })";
  struct Wanted {
    const char* needle;
    const char* pointer;
  };
  // RFC 6901, section 3: "~" is written ~0 and "/" is written ~1; section 5 has the empty key.
  for (const Wanted& row : {
           Wanted{"{ \"a", ""}, Wanted{"\"a/b\"", "/a~1b"}, Wanted{"[10", "/a~1b"},
           Wanted{"10", "/a~1b/0"}, Wanted{"{\"m~n", "/a~1b/1"}, Wanted{"\"m~n\"", "/a~1b/1/m~0n"},
           Wanted{"11", "/a~1b/1/m~0n"}, Wanted{"12", "/a~1b/1/"}, Wanted{"\"c\"", "/c"},
           Wanted{"13", "/c/d/e"}, Wanted{"\"text\"", "/ "}, Wanted{"14", "/k\"l"},
       }) {
    EXPECT_EQ(PointersTo(text, {PlaceIn(text, row.needle)}), std::vector<std::string>{row.pointer})
        << row.needle;
  }
}

TEST(Pointers, AreEmptyForPlacesThatAreNoValuesAndTextThatIsNoJson) {
  const std::string text = R"({ "a": [1, 2] })";
  EXPECT_EQ(PointersTo(text, {PlaceIn(text, ","), {}, {500, 1}}),
            (std::vector<std::string>{"", "", ""}));
  EXPECT_EQ(PointersTo("[1", {{1, 1}}), std::vector<std::string>{""});
  EXPECT_EQ(PointersTo("", {{0, 1}}), std::vector<std::string>{""});
}

}  // namespace
}  // namespace tillwright
