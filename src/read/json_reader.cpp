// The only place that reads with nlohmann-json: its SAX parser checks the grammar and decodes
// strings, and a scan of our own beside it keeps the place of every token.
#include <nlohmann/json.hpp>
#include <optional>
#include <unordered_set>

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
  if (what.find("while parsing ") != std::string::npos) {
    const std::size_t dash = what.find(" - ");
    if (dash != std::string::npos) what.erase(0, dash + 3);
  }
  const std::size_t read = what.find("; last read:");
  if (read != std::string::npos) {
    const std::size_t expected = what.find("; expected", read);
    const std::string tail = expected == std::string::npos ? "" : what.substr(expected);
    what.resize(read);
    what += tail;
  }
  for (const std::string_view end : {"expected '}'", "expected ']'"}) {
    if (what.ends_with(end)) what.insert(what.size() - 3, "',' or ");
  }
  return what;
}

// What to look for at a fault: the commonest slips have hints of their own.
std::string_view HintAt(std::string_view text, Place place) {
  if (place.offset >= text.size()) return "a bracket or quote may be open above";
  if (place.offset == SkipToToken(text, 0)) return "a spec is an object: { … }";
  const char c = text[place.offset];
  if (c == '\'') return "put text in double quotes";
  std::size_t before = place.offset;
  while (before > 0 && (text[before - 1] == ' ' || text[before - 1] == '\n' ||
                        text[before - 1] == '\r' || text[before - 1] == '\t')) {
    --before;
  }
  const char last = before > 0 ? text[before - 1] : ' ';
  const bool after_number = last >= '0' && last <= '9';
  if (after_number && c >= '0' && c <= '9') return "put a fraction in quotes, such as \"15 3/8\"";
  const bool after_value = after_number || last == '"' || last == '}' || last == ']';
  if (after_value && (c == '"' || c == '{' || c == '[')) {
    return "a comma may be missing before this";
  }
  return "check the commas, quotes and brackets before this";
}

// number = [ "-" ] int [ frac ] [ exp ] (RFC 8259, section 6)
bool IsJsonNumber(std::string_view text) {
  std::size_t at = text.starts_with('-') ? 1 : 0;
  const auto digits = [&] {
    const std::size_t start = at;
    while (at < text.size() && text[at] >= '0' && text[at] <= '9') ++at;
    return at - start;
  };
  const auto take = [&](std::string_view any) {
    const bool found = at < text.size() && any.find(text[at]) != std::string_view::npos;
    if (found) ++at;
    return found;
  };
  const bool zero = at < text.size() && text[at] == '0';
  const std::size_t whole = digits();
  if (whole == 0 || (zero && whole > 1)) return false;
  if (take(".") && digits() == 0) return false;
  if (take("eE")) {
    take("+-");
    if (digits() == 0) return false;
  }
  return at == text.size();
}

class Handler : public nlohmann::json_sax<Json> {
 public:
  Handler(std::string_view text, JsonValue& root, Diagnostics& diagnostics)
      : text_(text), root_(root), diagnostics_(diagnostics) {}

  bool null() override { return IsWord(Put(JsonValue::Kind::kNull, {}), "null"); }
  bool boolean(bool flag) override {
    JsonValue* value = Put(JsonValue::Kind::kBool, {});
    if (value != nullptr) value->flag = flag;
    return IsWord(value, flag ? "true" : "false");
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
    if (open_.back().Has(text)) {
      ReportError(diagnostics_, DiagnosticCode::kDuplicateKey, key_place_,
                  "the key \"" + text + "\" is repeated here", "remove one of the two");
    }
    key_ = std::move(text);
    return true;
  }

  bool parse_error(std::size_t read, const std::string& token,
                   const nlohmann::detail::exception& error) override {
    constexpr int kNumberOverflow = 406;
    const Place place = PlaceOfFault(read, token);
    if (error.id == kNumberOverflow) {
      ReportError(diagnostics_, DiagnosticCode::kNumberRange, place,
                  "\"" + token + "\" is too large a number");
      return false;
    }
    ReportError(diagnostics_, DiagnosticCode::kJsonSyntax, place,
                "the spec is not valid JSON: " + Reworded(error.what()),
                std::string(HintAt(text_, place)));
    return false;
  }

 private:
  // A list or an object whose end has not been read.
  struct OpenValue {
    JsonValue* value;
    std::unordered_set<std::string> keys = {};  // of the first `known` members, once they are many

    // Whether the object has the key already. Few keys are looked through, many are looked up.
    bool Has(const std::string& key) {
      constexpr std::size_t kMany = 32;
      const std::vector<JsonMember>& members = value->members;
      if (members.size() < kMany) return value->Find(key) != nullptr;
      if (keys.empty()) {
        for (const JsonMember& member : members) keys.insert(member.key);
      }
      return !keys.insert(key).second;
    }
  };

  // The token after what was understood. A colon or comma that is the fault itself is what the
  // parser read last.
  Place PlaceOfFault(std::size_t read, const std::string& token) const {
    const char last = token.empty() ? ' ' : token.back();
    if ((last == ',' || last == ':') && read > 0 && read <= text_.size() &&
        text_[read - 1] == last) {
      return PlaceOf(read - 1, read);
    }
    const std::size_t begin = SkipToToken(text_, at_);
    return PlaceOf(begin, EndOfToken(text_, begin));
  }

  Place TakeToken() {
    const std::size_t begin = SkipToToken(text_, at_);
    at_ = EndOfToken(text_, begin);
    return PlaceOf(begin, at_);
  }

  bool Number() {
    JsonValue* value = Put(JsonValue::Kind::kNumber, {});
    if (value == nullptr) return false;
    value->text = text_.substr(value->place.offset, value->place.length);
    if (IsJsonNumber(value->text)) return true;
    return NoValue(*value);
  }

  // The next value of the document, or null when there are too many of them.
  JsonValue* Put(JsonValue::Kind kind, std::string text) {
    if (++values_ > kMaxJsonValues) {
      ReportError(diagnostics_, DiagnosticCode::kTooBig, TakeToken(),
                  "the spec holds more than 1 000 000 values", "split the job");
      return nullptr;
    }
    JsonValue* value = Slot();
    value->kind = kind;
    value->text = std::move(text);
    value->place = TakeToken();
    return value;
  }

  // The parser takes "007" for a zero and then a seven, "nullx" for null and then an x; here they
  // are one token, and the fault is all of it.
  bool IsWord(const JsonValue* value, std::string_view word) {
    if (value == nullptr) return false;
    return text_.substr(value->place.offset, value->place.length) == word || NoValue(*value);
  }
  bool NoValue(const JsonValue& value) {
    ReportError(diagnostics_, DiagnosticCode::kJsonSyntax, value.place,
                "the spec is not valid JSON: \"" +
                    std::string(text_.substr(value.place.offset, value.place.length)) +
                    "\" is not a valid value",
                "put text in quotes; write numbers without a leading zero");
    return false;
  }

  JsonValue* Slot() {
    if (open_.empty()) return &root_;
    JsonValue* parent = open_.back().value;
    if (parent->kind == JsonValue::Kind::kArray) return &parent->items.emplace_back();
    return &parent->members.emplace_back(JsonMember{std::move(key_), key_place_, {}}).value;
  }

  bool Open(JsonValue::Kind kind) {
    if (open_.size() >= kMaxJsonDepth) {
      const std::size_t begin = SkipToToken(text_, at_);
      ReportError(diagnostics_, DiagnosticCode::kTooBig, PlaceOf(begin, begin + 1),
                  "the spec is nested deeper than 64 levels of rows and columns",
                  "flatten the layout");
      return false;
    }
    JsonValue* value = Put(kind, {});
    if (value == nullptr) return false;
    // Children move when their parent's list grows, but only before they are opened or after they
    // are closed, so these pointers stay good.
    open_.push_back({value});
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
  std::vector<OpenValue> open_;
  std::size_t values_ = 0;
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
  std::optional<std::size_t> comma;  // the last token, when it was one
  for (std::size_t at = SkipBlanks(text, 0); at < text.size(); at = SkipBlanks(text, at)) {
    const char c = text[at];
    if ((c == '}' || c == ']') && comma) {
      ReportError(diagnostics, DiagnosticCode::kTrailingComma, PlaceOf(*comma, *comma + 1),
                  "there is a comma before a closing bracket", "remove the comma");
      text[*comma] = ' ';
      found = true;
    }
    comma = c == ',' ? std::optional<std::size_t>(at) : std::nullopt;
    at = c == ',' || c == ':' ? at + 1 : EndOfToken(text, at);
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
  const bool usable =
      Parse(blanked, out, second_try) || second_try.back().code == DiagnosticCode::kDuplicateKey;
  diagnostics.insert(diagnostics.end(), second_try.begin(), second_try.end());
  return usable;
}

}  // namespace tillwright
