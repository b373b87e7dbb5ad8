#include "read/object_reader.h"

#include <algorithm>

namespace tillwright {
namespace {

// How many bytes of the text, and of the decoded string, one step through a JSON string takes: a
// plain byte, or an escape. REQUIRES: `rest` begins with a whole escape or a plain byte.
struct Step {
  std::size_t typed;
  std::size_t decoded;
};
Step StepOf(std::string_view rest) {
  if (rest[0] != '\\') return {1, 1};
  if (rest[1] != 'u') return {2, 1};
  unsigned unit = 0;  // of UTF-16
  for (const char c : rest.substr(2, 4)) {
    const bool digit = c >= '0' && c <= '9';
    unit = unit * 16 + static_cast<unsigned>(digit ? c - '0' : (c | 0x20) - 'a' + 10);
  }
  if (unit < 0x80U) return {6, 1};
  if (unit < 0x800U) return {6, 2};
  if (unit >= 0xD800U && unit < 0xDC00U) return {12, 4};  // a pair of surrogates
  return {6, 3};
}

// Where `length` bytes from the decoded byte `offset` of a string stand in the text. A piece of an
// escaped character is the whole escape.
Place InString(std::string_view text, Place string, std::size_t offset, std::size_t length) {
  std::size_t at = string.offset + 1;  // past the quote
  const std::size_t end = string.offset + string.length - 1;
  std::size_t decoded = 0;
  const auto go_to = [&](std::size_t goal, bool past) {
    while (at < end && decoded < goal) {
      const Step step = StepOf(text.substr(at));
      if (!past && decoded + step.decoded > goal) break;
      at += step.typed;
      decoded += step.decoded;
    }
    return at;
  };
  const std::size_t begin = go_to(offset, false);
  const std::size_t stop = go_to(offset + length, true);
  return {static_cast<std::uint32_t>(begin),
          static_cast<std::uint32_t>(std::max<std::size_t>(stop - begin, 1))};
}

Place FaultPlace(std::string_view text, const JsonValue& value, const LengthFault& fault) {
  if (value.kind == JsonValue::Kind::kString && fault.length < value.text.size()) {
    return InString(text, value.place, fault.offset, fault.length);
  }
  return value.place;
}

void CheckSign(ReadContext& context, const JsonValue& value, Sign sign, Length length) {
  const bool wrong = (sign == Sign::kPositive && length <= Length()) ||
                     (sign == Sign::kZeroOrMore && length < Length());
  if (!wrong) return;
  ReportError(context.diagnostics, DiagnosticCode::kLengthRange, value.place,
              "\"" + value.text + "\" " +
                  (sign == Sign::kPositive ? "must be more than zero" : "cannot be negative"));
}

constexpr std::size_t kMostHints = 1000;

std::string OneOf(std::span<const std::string_view> choices) {
  std::string list = "write one of ";
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (i > 0) list += ", ";
    list += "\"" + std::string(choices[i]) + "\"";
  }
  return list;
}

}  // namespace

bool IsNone(const JsonValue& value) {
  return value.kind == JsonValue::Kind::kString && value.text == "none";
}

std::string_view KindWords(const JsonValue& value) {
  switch (value.kind) {
    case JsonValue::Kind::kNull:
      return "null";
    case JsonValue::Kind::kBool:
      return value.flag ? "true" : "false";
    case JsonValue::Kind::kNumber:
      return "a number";
    case JsonValue::Kind::kString:
      return "text";
    case JsonValue::Kind::kArray:
      return "a list";
    case JsonValue::Kind::kObject:
      return "an object";
  }
  return "";
}

void ReportWrongType(ReadContext& context, const JsonValue& value, std::string_view wanted) {
  ReportError(context.diagnostics, DiagnosticCode::kWrongType, value.place,
              "expected " + std::string(wanted) + ", found " + std::string(KindWords(value)));
}

void ReadLength(ReadContext& context, const JsonValue& value, Sign sign, Entry<Length>& out) {
  if (value.kind != JsonValue::Kind::kNumber && value.kind != JsonValue::Kind::kString) {
    return ReportWrongType(context, value, "a length such as \"15 3/8\" or \"390.5 mm\"");
  }
  ParsedLength parsed = ParseLength(value.text, context.unit);
  if (!parsed.value) {
    return ReportError(context.diagnostics, parsed.fault.code,
                       FaultPlace(context.text, value, parsed.fault),
                       std::move(parsed.fault.message), std::move(parsed.fault.hint));
  }
  CheckSign(context, value, sign, *parsed.value);
  out = {*parsed.value, value.place};
}

void ReadRatio(ReadContext& context, const JsonValue& value, Entry<Rational>& out) {
  if (value.kind != JsonValue::Kind::kNumber && value.kind != JsonValue::Kind::kString) {
    return ReportWrongType(context, value, "a number such as 1.3 or \"4/3\"");
  }
  const std::optional<Rational> ratio = ParseRational(value.text);
  if (!ratio) {
    return ReportError(context.diagnostics, DiagnosticCode::kNumberSyntax, value.place,
                       "\"" + value.text + "\" is not a ratio above zero",
                       "write a number such as 1.3 or \"4/3\"");
  }
  if (ratio->numerator == 0) {
    return ReportError(context.diagnostics, DiagnosticCode::kNumberRange, value.place,
                       "a ratio or weight must be more than zero");
  }
  out = {*ratio, value.place};
}

void ReadText(ReadContext& context, const JsonValue& value, Entry<std::string>& out) {
  if (value.kind != JsonValue::Kind::kString) return ReportWrongType(context, value, "text");
  out = {value.text, value.place};
}

int ReadChoice(ReadContext& context, const JsonValue& value,
               std::span<const std::string_view> choices) {
  if (value.kind != JsonValue::Kind::kString) {
    ReportWrongType(context, value, "a word");
    return -1;
  }
  const auto found = std::ranges::find(choices, value.text);
  if (found != choices.end()) return static_cast<int>(found - choices.begin());
  const std::string_view nearest = Nearest(value.text, choices);
  ReportError(context.diagnostics, DiagnosticCode::kBadChoice, value.place,
              "\"" + value.text + "\" is not allowed here",
              nearest.empty() ? OneOf(choices) : "did you mean \"" + std::string(nearest) + "\"?");
  return -1;
}

ObjectReader::ObjectReader(ReadContext& context, const JsonValue& value, std::string_view object)
    : context_(context), value_(value), object_(SpecObject(object)) {
  if (!ok()) {
    ReportWrongType(context, value, "an object { … }");
    context.diagnostics.back().hint =
        "write { \"" + std::string(object_.keys.front().key) + "\": … } or another of its keys";
    return;
  }
  for (const JsonMember& member : value.members) {
    const bool known =
        std::ranges::any_of(object_.keys, [&](const KeyRow& row) { return row.key == member.key; });
    if (known) continue;
    std::vector<std::string_view> keys;
    for (const KeyRow& row : object_.keys) keys.push_back(row.key);
    // Looking for likeness takes time: nobody reads the thousandth hint of a mistaken file.
    const bool looks = context.diagnostics.size() < kMostHints;
    const std::string_view nearest = looks ? Nearest(member.key, keys) : std::string_view();
    ReportError(context.diagnostics, DiagnosticCode::kUnknownKey, member.key_place,
                "unknown key \"" + member.key + "\" in \"" + std::string(object) + "\"",
                nearest.empty() ? OneOf(keys) : "did you mean \"" + std::string(nearest) + "\"?");
  }
}

const JsonValue* ObjectReader::Find(std::string_view key) const {
  const bool known =
      std::ranges::any_of(object_.keys, [&](const KeyRow& row) { return row.key == key; });
  if (!known) Bug("a key that is not in the table of keys");
  const JsonMember* member = value_.Find(key);
  return member == nullptr ? nullptr : &member->value;
}

Place ObjectReader::KeyPlace(std::string_view key) const {
  const JsonMember* member = value_.Find(key);
  return member == nullptr ? value_.place : member->key_place;
}

const JsonValue* ObjectReader::Require(std::string_view key) {
  const JsonValue* value = Find(key);
  if (value == nullptr && ok()) {
    ReportError(context_.diagnostics, DiagnosticCode::kMissingKey, value_.place,
                "\"" + std::string(key) + "\" is missing in \"" + std::string(object_.name) + "\"");
  }
  return value;
}

void ObjectReader::LengthOf(std::string_view key, Sign sign, Entry<Length>& out) {
  if (const JsonValue* value = Find(key)) ReadLength(context_, *value, sign, out);
}

void ObjectReader::Text(std::string_view key, Entry<std::string>& out) {
  if (const JsonValue* value = Find(key)) ReadText(context_, *value, out);
}

void ObjectReader::ReadKey(const KeyRow& row, Entry<Length>& out) {
  const Sign sign = row.type == "length"           ? Sign::kPositive
                    : row.type == "length-or-zero" ? Sign::kZeroOrMore
                                                   : Sign::kAny;
  LengthOf(row.key, sign, out);
}

void ObjectReader::ReadKey(const KeyRow& row, Entry<std::string>& out) { Text(row.key, out); }

void ObjectReader::ReadKey(const KeyRow& row, Entry<Rational>& out) {
  if (const JsonValue* value = Find(row.key)) ReadRatio(context_, *value, out);
}

void ObjectReader::ReadKey(const KeyRow& row, Entry<bool>& out) {
  const JsonValue* value = Find(row.key);
  if (value == nullptr) return;
  if (value->kind != JsonValue::Kind::kBool) {
    return ReportWrongType(context_, *value, "true or false");
  }
  out = {value->flag, value->place};
}

void ObjectReader::ReadKey(const KeyRow& row, Entry<int>& out) {
  const JsonValue* value = Find(row.key);
  if (value == nullptr) return;
  const CountType& type = *std::ranges::find(kCountTypes, row.type, &CountType::type);
  const std::optional<Rational> n =
      value->kind == JsonValue::Kind::kNumber ? ParseRational(value->text) : std::nullopt;
  if (n && n->denominator == 1 && n->numerator >= type.least && n->numerator <= type.greatest) {
    out = {static_cast<int>(n->numerator), value->place};
  } else {
    ReportError(context_.diagnostics, DiagnosticCode::kNumberRange, value->place,
                "expected a whole number from " + std::to_string(type.least) + " to " +
                    std::to_string(type.greatest));
  }
}

const std::vector<JsonValue>* ObjectReader::List(std::string_view key) {
  const JsonValue* value = Find(key);
  if (value == nullptr) return nullptr;
  if (value->kind == JsonValue::Kind::kArray) return &value->items;
  ReportWrongType(context_, *value, "a list [ … ]");
  return nullptr;
}

}  // namespace tillwright
