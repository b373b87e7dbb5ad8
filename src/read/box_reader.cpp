#include "read/box_reader.h"

#include "spec/mass.h"

namespace tillwright {
namespace {

void ReadLengths(ObjectReader& object, std::string_view key, std::vector<Entry<Length>>& out,
                 bool& typed, Place& place) {
  const std::vector<JsonValue>* list = object.List(key);
  if (list == nullptr) return;
  typed = true;
  place = object.Find(key)->place;
  for (const JsonValue& value : *list) {
    ReadLength(object.context(), value, Sign::kPositive, out.emplace_back());
  }
  if (list->empty()) {
    ReportError(object.context().diagnostics, DiagnosticCode::kMissingKey, place,
                "the list \"" + std::string(key) + "\" is empty", "list at least one length");
  }
}

// Unlike a load, which was any text before weights were reckoned with, a rating must be a weight.
void ReadRating(ObjectReader& object, Entry<std::string>& out) {
  const JsonValue* value = object.Find("rating");
  if (value == nullptr) return;
  const bool fine =
      value->kind == JsonValue::Kind::kNumber || value->kind == JsonValue::Kind::kString;
  if (!fine) {
    return ReportWrongType(object.context(), *value, "a weight such as \"75 lb\" or \"35 kg\"");
  }
  if (!ParseMass(value->text, Unit::kInch)) {
    return ReportError(object.context().diagnostics, DiagnosticCode::kNumberSyntax, value->place,
                       "expected a weight above zero", "write it like \"75 lb\" or \"35 kg\"");
  }
  out = {value->text, value->place};
}

}  // namespace

void ReadSlides(ObjectReader& object, SlideSpec& out) {
  object.ReadInto(out);
  if (const JsonValue* length = object.Find("length")) {
    out.length_auto = length->kind == JsonValue::Kind::kString && length->text == "auto";
    if (!out.length_auto) ReadLength(object.context(), *length, Sign::kPositive, out.length);
  }
  ReadLengths(object, "lengths", out.lengths, out.lengths_typed, out.lengths_place);
  ReadRating(object, out.rating);
}

void ReadBox(ObjectReader& object, BoxSpec& out) {
  object.ReadInto(out);
  ReadLengths(object, "heights", out.heights, out.heights_typed, out.heights_place);
}

}  // namespace tillwright
