// The only place that reads with nlohmann-json: its SAX parser checks the grammar and decodes
// strings, and a scan of our own beside it keeps the place of every token.
#include <nlohmann/json.hpp>
#include <optional>

#include "read/json_value.h"

namespace tillwright {
namespace {

using Json = nlohmann::json;

Place PlaceOf(std::size_t begin, std::size_t end) {
  return {static_cast<std::uint32_t>(begin), static_cast<std::uint32_t>(end - begin)};
}

// "syntax error while parsing object key - unexpected ','; expected string literal" without the
// library's prefix and without what it last read, which the caret shows.
std::string Reworded(std::string what) {
  if (const std::size_t at = what.find("while parsing "); at != std::string::npos) {
    what.erase(0, at);
  }
  const std::size_t read = what.find("; last read:");
  if (read != std::string::npos) {
    const std::size_t expected = what.find("; expected", read);
    const std::string tail = expected == std::string::npos ? "" : what.substr(expected);
    what.resize(read);
    what += tail;
  }
  return what;
}

class Handler : public nlohmann::json_sax<Json> {
 public:
  Handler(std::string_view text, JsonValue& root, Diagnostics& diagnostics)
      : text_(text), root_(root), diagnostics_(diagnostics) {}

  bool null() override { return Put(JsonValue::Kind::kNull, {}) != nullptr; }
  bool boolean(bool flag) override {
    JsonValue* value = Put(JsonValue::Kind::kBool, {});
    value->flag = flag;
    return true;
  }
  bool number_integer(number_integer_t /*n*/) override { return Number(); }
  bool number_unsigned(number_unsigned_t /*n*/) override { return Number(); }
  bool number_float(number_float_t /*n*/, const string_t& /*text*/) override { return Number(); }
  bool string(string_t& text) override {
    return Put(JsonValue::Kind::kString, std::move(text)) != nullptr;
  }
  bool binary(binary_t& /*bytes*/) override { return false; }
  bool start_object(std::size_t /*size*/) override { return Open(JsonValue::Kind::kObject); }
  bool start_array(std::size_t /*size*/) override { return Open(JsonValue::Kind::kArray); }
  bool end_object() override { return Close(); }
  bool end_array() override { return Close(); }

  bool key(string_t& text) override {
    key_place_ = TakeToken();
    for (const JsonMember& member : open_.back()->members) {
      if (member.key != text) continue;
      ReportError(diagnostics_, DiagnosticCode::kDuplicateKey, key_place_,
                  "the key \"" + text + "\" stands here a second time", "take one of the two out");
    }
    key_ = std::move(text);
    return true;
  }

  bool parse_error(std::size_t /*byte*/, const std::string& /*token*/,
                   const nlohmann::detail::exception& error) override {
    const std::size_t begin = SkipToToken(text_, at_);
    const std::size_t end = EndOfToken(text_, begin);
    // A colon or comma may be the culprit itself; the scan steps over those.
    ReportError(diagnostics_, DiagnosticCode::kJsonSyntax,
                PlaceOf(std::min(begin, text_.empty() ? 0 : text_.size() - 1), std::max(end, begin)),
                "the spec is not valid JSON " + Reworded(error.what()),
                begin >= text_.size() ? "a bracket or quote may be open above"
                                      : "check the commas, quotes and brackets before this");
    return false;
  }

 private:
  Place TakeToken() {
    const std::size_t begin = SkipToToken(text_, at_);
    at_ = EndOfToken(text_, begin);
    return PlaceOf(begin, at_);
  }

  bool Number() {
    JsonValue* value = Put(JsonValue::Kind::kNumber, {});
    value->text = text_.substr(value->place.offset, value->place.length);
    return true;
  }

  JsonValue* Put(JsonValue::Kind kind, std::string text) {
    JsonValue* value = Slot();
    value->kind = kind;
    value->text = std::move(text);
    value->place = TakeToken();
    return value;
  }

  JsonValue* Slot() {
    if (open_.empty()) return &root_;
    JsonValue* parent = open_.back();
    if (parent->kind == JsonValue::Kind::kArray) return &parent->items.emplace_back();
    return &parent->members.emplace_back(JsonMember{std::move(key_), key_place_, {}}).value;
  }

  bool Open(JsonValue::Kind kind) {
    if (open_.size() >= kMaxJsonDepth) {
      const std::size_t begin = SkipToToken(text_, at_);
      ReportError(diagnostics_, DiagnosticCode::kTooBig, PlaceOf(begin, begin + 1),
                  "the spec nests deeper than 64 levels of rows and columns",
                  "flatten the layout");
      return false;
    }
    JsonValue* value = Put(kind, {});
    // Children move when their parent's list grows, but only before they are opened or after they
    // are closed, so these pointers stay good.
    open_.push_back(value);
    return true;
  }

  bool Close() {
    TakeToken();
    open_.pop_back();
    return true;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  JsonValue& root_;
  Diagnostics& diagnostics_;
  std::vector<JsonValue*> open_;
  std::string key_;
  Place key_place_;
};

bool Parse(std::string_view text, JsonValue& out, Diagnostics& diagnostics) {
  Handler handler(text, out, diagnostics);
  try {
    const bool parsed = Json::sax_parse(text.begin(), text.end(), &handler,
                                        nlohmann::detail::input_format_t::json, true, true);
    return parsed && !HasErrors(diagnostics);
  } catch (const std::exception& error) {  // a number such as 1e999
    ReportError(diagnostics, DiagnosticCode::kJsonSyntax, {},
                "the spec cannot be read: " + Reworded(error.what()));
    return false;
  }
}

// Blanks every comma before a closing bracket and reports it; offsets stay as they are.
bool BlankTrailingCommas(std::string& text, Diagnostics& diagnostics) {
  bool found = false;
  std::optional<std::size_t> comma;
  for (std::size_t at = 0; at < text.size();) {
    const char c = text[at];
    if (c == '/' || c == ' ' || c == '\n' || c == '\r' || c == '\t') {
      const std::size_t next = c == '/' ? SkipToToken(text, at) : at + 1;
      // SkipToToken also steps over commas; find one that hides behind a comment.
      if (c == '/') {
        for (std::size_t i = next; i-- > at;) {
          if (text[i] == ',' && SkipToToken(text, i) == next) comma = i;
        }
      }
      at = next == at ? at + 1 : next;
      continue;
    }
    if ((c == '}' || c == ']') && comma) {
      ReportError(diagnostics, DiagnosticCode::kTrailingComma, PlaceOf(*comma, *comma + 1),
                  "a comma stands before a closing bracket", "take the comma out");
      text[*comma] = ' ';
      found = true;
    }
    comma = c == ',' ? std::optional<std::size_t>(at) : std::nullopt;
    at = c == ',' ? at + 1 : EndOfToken(text, at);
  }
  return found;
}

}  // namespace

bool ParseJson(std::string_view text, JsonValue& out, Diagnostics& diagnostics) {
  Diagnostics first_try;
  if (Parse(text, out, first_try)) return true;
  std::string blanked(text);
  Diagnostics commas;
  if (!BlankTrailingCommas(blanked, commas)) {
    diagnostics.insert(diagnostics.end(), first_try.begin(), first_try.end());
    // Duplicate keys leave a document that can still be read for more faults.
    return first_try.empty() || first_try.back().code == DiagnosticCode::kDuplicateKey;
  }
  diagnostics.insert(diagnostics.end(), commas.begin(), commas.end());
  out = {};
  Diagnostics second_try;
  const bool usable = Parse(blanked, out, second_try) ||
                      second_try.back().code == DiagnosticCode::kDuplicateKey;
  diagnostics.insert(diagnostics.end(), second_try.begin(), second_try.end());
  return usable;
}

}  // namespace tillwright
