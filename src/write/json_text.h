// JsonText: writes JSON text in order, keys and values one after another.
//
// Lengths are written as exact decimals of a millimeter, which no JSON library's number type holds
// as such; that, and writing without building a tree first, is why this is our own.
//   (1) What is written is valid JSON (RFC 8259) as long as Open/Close pair up and every value in
//   an
//       object follows a Key.
//   (2) Text that is not UTF-8 is written with U+FFFD in its place.
#ifndef TILLWRIGHT_WRITE_JSON_TEXT_H_
#define TILLWRIGHT_WRITE_JSON_TEXT_H_

#include <string>
#include <string_view>

#include "tillwright/length.h"

namespace tillwright {

class JsonText {
 public:
  explicit JsonText(std::size_t reserve) { out_.reserve(reserve); }

  JsonText& Open(char bracket);  // '{' or '['
  JsonText& Close();
  JsonText& Key(std::string_view key);

  JsonText& Text(std::string_view value);
  JsonText& Number(std::int64_t value);
  JsonText& Flag(bool value);
  JsonText& Null();
  JsonText& Millimeters(Length value);
  JsonText& Decimal(double value);       // to the thousandth
  JsonText& Raw(std::string_view json);  // already JSON

  // A key and its value.
  JsonText& Text(std::string_view key, std::string_view value) { return Key(key).Text(value); }
  JsonText& Number(std::string_view key, std::int64_t v) { return Key(key).Number(v); }
  JsonText& Flag(std::string_view key, bool value) { return Key(key).Flag(value); }
  JsonText& Millimeters(std::string_view key, Length v) { return Key(key).Millimeters(v); }
  JsonText& Open(std::string_view key, char bracket) { return Key(key).Open(bracket); }

  // One value a line down to this depth, the rest on one line (0: all on one line).
  JsonText& BreakLines(std::size_t depth) {
    break_depth_ = depth;
    return *this;
  }

  [[nodiscard]] std::string Take() { return std::move(out_); }

 private:
  void Separate();
  void NewLine();

  std::string out_;
  std::string open_;  // closing brackets of what is open
  bool first_ = true;
  bool after_key_ = false;
  std::size_t break_depth_ = 0;
};

// Appends `text` as a JSON string with its quotes.
void AppendJsonString(std::string& out, std::string_view text);

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_JSON_TEXT_H_
