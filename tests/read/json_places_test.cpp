// Random JSON, written by a generator that knows where it puts every token: the reader must find
// each key and value at exactly that place.
#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "read/json_value.h"
#include "support/files.h"

namespace tillwright {
namespace {

class Generator {
 public:
  explicit Generator(std::uint32_t seed) : engine_(seed) {}

  std::string Run() {
    if (Chance(10)) text_ += "\xEF\xBB\xBF";
    Blank();
    Value(0);
    Blank();
    return std::move(text_);
  }

  // Keys and values in the order of the text; containers by their opening bracket.
  [[nodiscard]] const std::vector<Place>& places() const { return places_; }

 private:
  int Int(int most) { return static_cast<int>(engine_() % static_cast<unsigned>(most)); }
  bool Chance(int percent) { return Int(100) < percent; }
  std::string Pick(std::initializer_list<const char*> choices) {
    return choices.begin()[Int(static_cast<int>(choices.size()))];
  }

  void Blank() {
    while (Chance(35)) {
      text_ += Pick({" ", "\n", "\t", "\r\n", "/* , : \" [ { */", "// \"not a string, \xc3\xa9\n",
                     "/**/", "/* * / \n ] */", "//\n"});
    }
  }

  void Token(const std::string& token, std::size_t shown = std::string::npos) {
    places_.push_back({static_cast<std::uint32_t>(text_.size()),
                       static_cast<std::uint32_t>(std::min(token.size(), shown))});
    text_ += token;
  }

  std::string String() {
    std::string out = "\"";
    for (int n = Int(6); n > 0; --n) {
      out += Pick({"a", " ", "//", "/*", "*/", ",", ":", "[", "}", "\\\"", "\\\\", "\\n", "\\u00e9",
                   "\\ud83d\\ude00", "\xc3\xa9", "\xf0\x9f\x98\x80", "7", "\\/"});
    }
    return out + "\"";
  }

  std::string Number() {
    std::string out = Pick({"", "-"}) + Pick({"0", "7", "10", "123456789012345678901234567890"});
    if (Chance(40)) out += Pick({".5", ".000", ".123456789012345678901234567890"});
    if (Chance(20)) out += Pick({"e0", "E+1", "e-12"});
    return out;
  }

  void Value(int depth) {
    const int kind = Int(depth > 5 ? 4 : 8);
    if (kind < 1) return Token(Pick({"null", "true", "false"}));
    if (kind < 2) return Token(String());
    if (kind < 4) return Token(Number());
    const bool object = kind < 6;
    Token(object ? "{" : "[");
    Blank();
    const int n = Int(5);
    for (int i = 0; i < n; ++i) {
      if (i > 0) {
        text_ += ',';
        Blank();
      }
      if (object) Key(i);
      Value(depth + 1);
      Blank();
    }
    text_ += object ? '}' : ']';
  }

  void Key(int i) {
    std::string key = String();
    key.insert(1, std::to_string(i));  // no key twice
    Token(key);
    Blank();
    text_ += ':';
    Blank();
  }

  std::mt19937 engine_;
  std::string text_;
  std::vector<Place> places_;
};

void Collect(const JsonValue& value, std::vector<Place>& out) {
  out.push_back(value.place);
  for (const JsonMember& member : value.members) {
    out.push_back(member.key_place);
    Collect(member.value, out);
  }
  for (const JsonValue& item : value.items) Collect(item, out);
}

TEST(JsonPlaces, AreExactInTwentyThousandRandomDocuments) {
  const std::uint32_t seed = testing::TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  std::size_t places = 0;
  for (std::uint32_t i = 0; i < 20'000; ++i) {
    Generator generator(seed + i);
    const std::string text = generator.Run();
    JsonValue root;
    Diagnostics diagnostics;
    ASSERT_TRUE(ParseJson(text, root, diagnostics)) << text << "\n" << diagnostics.at(0).message;
    std::vector<Place> found;
    Collect(root, found);
    ASSERT_EQ(found, generator.places()) << text;
    places += found.size();
  }
  EXPECT_GT(places, 100'000U);
}

TEST(JsonPlaces, NumbersKeepTheirText) {
  JsonValue root;
  Diagnostics diagnostics;
  ASSERT_TRUE(ParseJson("[1.50, -0, 123456789012345678901234567890, 1E2]", root, diagnostics));
  std::vector<std::string> texts;
  for (const JsonValue& item : root.items) texts.push_back(item.text);
  EXPECT_EQ(texts, (std::vector<std::string>{"1.50", "-0", "123456789012345678901234567890",
                                             "1E2"}));
}

}  // namespace

// For messages of GoogleTest.
void PrintTo(const Place& place, std::ostream* out);
void PrintTo(const Place& place, std::ostream* out) {
  *out << place.offset << "+" << place.length;
}

}  // namespace tillwright
