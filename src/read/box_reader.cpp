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

void ReadStock(ObjectReader& object, std::string_view key, StockSpec& out) {
  const JsonValue* value = object.Find(key);
  if (value == nullptr) return;
  ObjectReader stock(object.context(), *value, "stock");
  stock.LengthOf("thickness", Sign::kPositive, out.thickness);
  stock.Text("material", out.material);
}

void ReadCorner(const JsonValue& value, ReadContext& context, CornerSpec& out) {
  ObjectReader corner(context, value, "corner");
  corner.Choice("joint", out.joint);
  corner.LengthOf("depth", Sign::kPositive, out.depth);
  corner.LengthOf("lap", Sign::kPositive, out.lap);
  corner.LengthOf("back_setback", Sign::kZeroOrMore, out.back_setback);
}

void ReadBottom(const JsonValue& value, ReadContext& context, BottomSpec& out) {
  ObjectReader bottom(context, value, "bottom");
  bottom.LengthOf("thickness", Sign::kPositive, out.thickness);
  bottom.Choice("fit", out.fit);
  bottom.LengthOf("depth", Sign::kPositive, out.depth);
  bottom.LengthOf("up", Sign::kZeroOrMore, out.up);
  bottom.LengthOf("play", Sign::kZeroOrMore, out.play);
  bottom.Flag("open_back", out.open_back);
  bottom.Text("material", out.material);
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

void ReadPull(ObjectReader& object, PullSpec& out) {
  const JsonValue* value = object.Find("pull");
  if (value == nullptr) return;
  out.typed = true;
  out.place = value->place;
  out.none = value->kind == JsonValue::Kind::kString && value->text == "none";
  if (out.none) return;
  ObjectReader pull(object.context(), *value, "pull");
  if (!pull.ok()) return;
  pull.LengthOf("centers", Sign::kZeroOrMore, out.centers);
  pull.LengthOf("down", Sign::kPositive, out.down);
  pull.WholeNumber("count", 1, 2, out.count);
}

void ReadSlides(ObjectReader& object, SlideSpec& out) {
  object.Choice("type", out.type);
  if (const JsonValue* length = object.Find("length")) {
    out.length_auto = length->kind == JsonValue::Kind::kString && length->text == "auto";
    if (!out.length_auto) ReadLength(object.context(), *length, Sign::kPositive, out.length);
  }
  ReadLengths(object, "lengths", out.lengths, out.lengths_typed, out.lengths_place);
  object.LengthOf("clearance", Sign::kZeroOrMore, out.clearance);
  object.LengthOf("deduct", Sign::kZeroOrMore, out.deduct);
  object.LengthOf("side_max", Sign::kPositive, out.side_max);
  object.LengthOf("behind", Sign::kZeroOrMore, out.behind);
  object.LengthOf("line", Sign::kZeroOrMore, out.line);
  ReadRating(object, out.rating);
}

void ReadBox(ObjectReader& object, BoxSpec& out) {
  ReadStock(object, "side", out.side);
  ReadStock(object, "end", out.end);
  if (const JsonValue* corner = object.Find("corner")) {
    ReadCorner(*corner, object.context(), out.corner);
  }
  if (const JsonValue* bottom = object.Find("bottom")) {
    ReadBottom(*bottom, object.context(), out.bottom);
  }
  object.LengthOf("clear_below", Sign::kZeroOrMore, out.clear_below);
  object.LengthOf("clear_above", Sign::kZeroOrMore, out.clear_above);
  object.LengthOf("height", Sign::kPositive, out.height);
  ReadLengths(object, "heights", out.heights, out.heights_typed, out.heights_place);
  object.LengthOf("depth", Sign::kPositive, out.depth);
}

}  // namespace tillwright
