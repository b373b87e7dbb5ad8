// JsonText: valid JSON (1), text that is not UTF-8 (2), and lengths as exact decimals.
#include "write/json_text.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <random>
#include <string>

#include "support/files.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

using Json = nlohmann::ordered_json;

std::string Quoted(std::string_view text) {
  std::string out;
  AppendJsonString(out, text);
  return out;
}

// The model of a document beside the document itself.
class Writer {
 public:
  Writer(std::uint32_t seed, std::size_t break_depth) : engine_(seed), json_(64) {
    if (break_depth > 0) json_.BreakLines(break_depth);
  }
  Json Run() { return Value(0); }
  std::string Text() { return json_.Take(); }

 private:
  int Int(int most) { return static_cast<int>(engine_() % static_cast<unsigned>(most)); }

  std::string AnyText() {
    static constexpr const char* kPieces[] = {"a", "\"", "\\", "\n", "\t", "\x01", "\x7f", "\xc3\xa9",
                                              "\xe2\x89\x88", "\xf0\x9f\x98\x80", "/", "</b>", "'"};
    std::string text;
    for (int n = Int(8); n > 0; --n) text += kPieces[Int(13)];
    return text;
  }

  Json Value(int depth) {
    switch (Int(depth > 4 ? 5 : 7)) {
      case 0: json_.Null(); return Json();
      case 1: json_.Flag(true); return Json(true);
      case 2: {
        const std::int64_t n = static_cast<std::int64_t>(engine_()) - 2'000'000'000;
        json_.Number(n);
        return Json(n);
      }
      case 3: {
        json_.Millimeters(Length::Millimeters(Int(1000)));
        return Json();  // compared as text elsewhere
      }
      case 4: {
        const std::string text = AnyText();
        json_.Text(text);
        return Json(text);
      }
      case 5: {
        Json list = Json::array();
        json_.Open('[');
        for (int n = Int(5); n > 0; --n) list.push_back(Value(depth + 1));
        json_.Close();
        return list;
      }
      default: {
        Json object = Json::object();
        json_.Open('{');
        const int n = Int(5);
        for (int i = 0; i < n; ++i) {
          const std::string key = "k" + std::to_string(i);
          json_.Key(key);
          object[key] = Value(depth + 1);
        }
        json_.Close();
        return object;
      }
    }
  }

  std::mt19937 engine_;
  JsonText json_;
};

// Equal, but for lengths, which the model leaves null.
bool Alike(const Json& model, const Json& read) {
  if (model.is_null()) return read.is_null() || read.is_number();
  if (model.type() != read.type() && !(model.is_number() && read.is_number())) return false;
  if (model.size() != read.size()) return false;
  if (model.is_array() || model.is_object()) {
    auto other = read.begin();
    for (auto one = model.begin(); one != model.end(); ++one, ++other) {
      if (model.is_object() && one.key() != other.key()) return false;
      if (!Alike(one.value(), other.value())) return false;
    }
    return true;
  }
  return model == read;
}

TEST(JsonText, WritesWhatAnotherParserReadsBack) {  // (1)
  const std::uint32_t seed = testing::TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  for (std::uint32_t i = 0; i < 5000; ++i) {
    Writer writer(seed + i, i % 4);
    const Json model = writer.Run();
    const std::string text = writer.Text();
    ASSERT_TRUE(Json::accept(text)) << text;
    ASSERT_TRUE(Alike(model, Json::parse(text))) << text;
  }
}

TEST(JsonText, LaysShallowValuesOutALineEach) {
  JsonText json(0);
  json.BreakLines(2).Open('{').Number("a", 1).Open("b", '[');
  json.Open('{').Flag("c", false).Number("d", -2).Close();
  json.Open('[').Close().Close().Open("e", '{').Close().Close();
  EXPECT_EQ(json.Take(),
            "{\n  \"a\": 1,\n  \"b\": [\n    {\"c\": false, \"d\": -2},\n    []\n  ],\n  \"e\": {}\n}");
}

TEST(JsonText, EveryByteAndPairOfBytesGivesValidUtf8) {  // (2)
  for (int a = 0; a < 256; ++a) {
    for (int b = -1; b < 256; ++b) {
      std::string text(1, static_cast<char>(a));
      if (b >= 0) text += static_cast<char>(b);
      const std::string json = Quoted(text);
      ASSERT_TRUE(Json::accept(json)) << a << " " << b;  // refuses what is not UTF-8
      if (a < 0x80 && b < 0x80) {
        ASSERT_EQ(Json::parse(json).get<std::string>(), text);
      }
    }
  }
}

struct Replaced {
  const char* text;
  const char* shown;
};

TEST(JsonText, BytesThatAreNotUtf8BecomeTheReplacementCharacter) {  // (2)
  for (const Replaced& row : {
           Replaced{"\xff", "\uFFFD"}, Replaced{"a\x80z", "a\uFFFDz"},
           Replaced{"\xc3", "\uFFFD"},                      // cut off
           Replaced{"\xc0\xaf", "\uFFFD\uFFFD"},            // overlong
           Replaced{"\xed\xa0\x80", "\uFFFD\uFFFD\uFFFD"},  // a surrogate
           Replaced{"\xf4\x90\x80\x80", "\uFFFD\uFFFD\uFFFD\uFFFD"},  // past U+10FFFF
           Replaced{"\xf0\x9f\x98\x80", "\xf0\x9f\x98\x80"},
           Replaced{"\xe2\x89\x88\xe2\x89", "\xe2\x89\x88\uFFFD\uFFFD"},
       }) {
    EXPECT_EQ(Json::parse(Quoted(row.text)).get<std::string>(), row.shown);
  }
}

TEST(JsonText, LengthsAreExactDecimals) {
  const std::uint32_t seed = testing::TestSeed();
  SCOPED_TRACE("TILLWRIGHT_TEST_SEED=" + std::to_string(seed));
  std::mt19937_64 engine(seed);
  for (int i = 0; i < 20'000; ++i) {
    const std::uint64_t magnitude = (engine() >> (engine() % 60U)) % 100'000'000'000'000U;
    const std::int64_t pm = static_cast<std::int64_t>(magnitude) * (i % 2 == 0 ? 1 : -1);
    JsonText json(0);
    json.Millimeters(Length::Picometers(pm));
    const std::string text = json.Take();
    ASSERT_TRUE(Json::accept(text)) << text;
    ASSERT_EQ(ParseLength(text, Unit::kMillimeter).value, Length::Picometers(pm)) << text;
  }
}

}  // namespace
}  // namespace tillwright
