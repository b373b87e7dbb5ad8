// A JSON document as the spec reader sees it: with the text of numbers kept, and the place of every
// key and value.
#ifndef TILLWRIGHT_READ_JSON_VALUE_H_
#define TILLWRIGHT_READ_JSON_VALUE_H_

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/diagnostic.h"

namespace tillwright {

struct JsonMember;

struct JsonValue {
  enum class Kind : std::uint8_t { kNull, kBool, kNumber, kString, kArray, kObject };
  Kind kind = Kind::kNull;
  bool flag = false;  // kBool
  std::string text;   // kString: decoded; kNumber: as typed
  Place place;        // strings include their quotes, containers only their opening bracket
  std::vector<JsonValue> items;     // kArray
  std::vector<JsonMember> members;  // kObject, in the order of the text

  [[nodiscard]] const JsonMember* Find(std::string_view key) const;
};

struct JsonMember {
  std::string key;
  Place key_place;
  JsonValue value;
};

// JSON levels a document may nest: 64 levels of the layout are two each.
inline constexpr int kMaxJsonDepth = 160;

// Values a document may hold: more than 10 000 drawers with every key typed need.
inline constexpr std::size_t kMaxJsonValues = 1'000'000;

// Reads JSON with // and /* */ comments. Reports syntax errors (every trailing comma, else the
// first fault), duplicate keys and nesting that is too deep. False when the document cannot be
// used.
[[nodiscard]] bool ParseJson(std::string_view text, JsonValue& out, Diagnostics& diagnostics);

// Past white space and comments, from `at`.
[[nodiscard]] std::size_t SkipBlanks(std::string_view text, std::size_t at);

// Past white space, comments, commas and colons, from `at`.
[[nodiscard]] std::size_t SkipToToken(std::string_view text, std::size_t at);

// One past the token that begins at `at`: a bracket, a string, or a run of word characters.
[[nodiscard]] std::size_t EndOfToken(std::string_view text, std::size_t at);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_JSON_VALUE_H_
