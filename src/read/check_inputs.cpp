#include "read/check_inputs.h"

#include <optional>

namespace tillwright {
namespace {

constexpr std::size_t kMostSpacers = 100;

// A plain decimal such as 8, 45.5 or -3; statistics only, so a double will do.
std::optional<double> ReadDecimal(std::string_view text) {
  const bool negative = text.starts_with('-');
  if (negative) text.remove_prefix(1);
  const std::optional<Rational> number = ParseRational(text);
  if (!number) return std::nullopt;
  return negative ? -ToDouble(*number) : ToDouble(*number);
}

std::optional<double> ReadPercent(ReadContext& context, const JsonValue& value, double most) {
  std::string_view text = value.text;
  if (text.ends_with('%')) text.remove_suffix(1);
  const std::optional<double> percent =
      value.kind == JsonValue::Kind::kNumber || value.kind == JsonValue::Kind::kString
          ? ReadDecimal(text)
          : std::nullopt;
  if (percent && *percent >= 0 && *percent <= most) return percent;
  ReportError(context.diagnostics, DiagnosticCode::kNumberRange, value.place,
              "expected a percentage from 0 to " + std::to_string(static_cast<int>(most)));
  return std::nullopt;
}

// "70 F", "21 C", with or without a degree sign.
std::optional<double> ReadCelsius(ReadContext& context, const JsonValue& value) {
  std::string_view text = value.text;
  const char scale = text.empty() ? ' ' : text.back();
  const bool fahrenheit = scale == 'F' || scale == 'f';
  if (fahrenheit || scale == 'C' || scale == 'c') {
    text.remove_suffix(1);
    if (text.ends_with("\u00b0")) text.remove_suffix(2);
    while (text.ends_with(' ')) text.remove_suffix(1);
    if (const std::optional<double> degrees = ReadDecimal(text)) {
      const double celsius = fahrenheit ? (*degrees - 32) * 5 / 9 : *degrees;
      if (celsius > -60 && celsius < 150) return celsius;
    }
  }
  ReportError(context.diagnostics, DiagnosticCode::kNumberSyntax, value.place,
              "expected a temperature", "write it like \"70 F\" or \"21 C\"");
  return std::nullopt;
}

void ReadMoisture(ObjectReader& season, std::string_view key, MoistureSpec& out) {
  const JsonValue* value = season.Find(key);
  if (value == nullptr) return;
  out.typed = true;
  out.place = value->place;
  ReadContext& context = season.context();
  if (value->kind != JsonValue::Kind::kObject) {
    out.percent = ReadPercent(context, *value, 30);  // above about 30 % wood moves no more
    return;
  }
  ObjectReader climate(context, *value, "climate");
  if (const JsonValue* t = climate.Require("temperature")) {
    out.celsius = ReadCelsius(context, *t).value_or(20);
  }
  if (const JsonValue* h = climate.Require("humidity")) {
    out.humidity_percent = ReadPercent(context, *h, 100).value_or(50);
  }
}

void ReadParts(ObjectReader& measured, std::string_view key, std::vector<MeasuredPart>& out) {
  const JsonValue* value = measured.Find(key);
  if (value == nullptr) return;
  ReadContext& context = measured.context();
  if (value->kind != JsonValue::Kind::kObject) {
    return ReportWrongType(context, *value, "an object such as { \"D1\": { \"height\": … } }");
  }
  for (const JsonMember& member : value->members) {
    MeasuredPart& part = out.emplace_back();
    part.id = member.key;
    part.place = member.key_place;
    ObjectReader sizes(context, member.value, "measured-part");
    sizes.ReadInto(part);
  }
}

void ReadMeasured(ObjectReader& o, MeasuredSpec& out) {
  out.typed = true;
  if (const std::vector<JsonValue>* widths = o.List("width")) {
    for (const JsonValue& value : *widths) {
      ObjectReader(o.context(), value, "width-at").ReadInto(out.width.emplace_back());
    }
  }
  if (const JsonValue* value = o.Find("height")) {
    ObjectReader(o.context(), *value, "measured-height").ReadInto(out);
  }
  if (const JsonValue* value = o.Find("diagonals")) {
    ObjectReader(o.context(), *value, "diagonals").ReadInto(out);
  }
  o.ReadInto(out);
  ReadParts(o, "fronts", out.fronts);
  ReadParts(o, "boxes", out.boxes);
}

// Counts the drawers, and the blanks, of a layout.
void CountLeaves(const LayoutNode& node, int& drawers, int& blanks) {
  drawers += node.kind == NodeKind::kDrawer ? 1 : 0;
  blanks += node.kind == NodeKind::kBlank ? 1 : 0;
  for (const LayoutNode& child : node.children) CountLeaves(child, drawers, blanks);
}

// Whether `id` is a letter and a number from 1 to `most`.
bool IsIdOf(std::string_view id, char letter, int most) {
  if (!id.starts_with(letter) || id.size() < 2 || id.size() > 6 || id[1] == '0') return false;
  int number = 0;
  for (const char c : id.substr(1)) {
    if (c < '0' || c > '9') return false;
    number = number * 10 + (c - '0');
  }
  return number <= most;
}

void CheckParts(const std::vector<MeasuredPart>& parts, int drawers, int blanks,
                Diagnostics& diagnostics) {
  for (const MeasuredPart& part : parts) {
    if (IsIdOf(part.id, 'D', drawers) || IsIdOf(part.id, 'B', blanks)) continue;
    ReportError(diagnostics, DiagnosticCode::kUnknownPart, part.place,
                "there is no \"" + part.id + "\" that could have been measured",
                drawers == 0
                    ? std::string()
                    : "drawers are D1 to D" + std::to_string(drawers) + ", in reading order");
  }
}

void ReadSpacers(ObjectReader& top, std::vector<SpacerSpec>& out) {
  const std::vector<JsonValue>* list = top.List("spacers");
  if (list == nullptr) return;
  if (list->size() > kMostSpacers) {
    ReportError(top.context().diagnostics, DiagnosticCode::kTooBig, list->front().place,
                "more than " + std::to_string(kMostSpacers) + " kinds of spacers",
                "list only those close to the gaps in size");
    return;
  }
  for (const JsonValue& value : *list) {
    ObjectReader o(top.context(), value, "spacer");
    SpacerSpec& spacer = out.emplace_back();
    spacer.count = Entry<int>(1);
    o.ReadInto(spacer);
  }
}

void CheckMeasuredParts(const Spec& spec, Diagnostics& diagnostics) {
  int drawers = 0;
  int blanks = 0;
  CountLeaves(spec.layout, drawers, blanks);
  CheckParts(spec.measured.fronts, drawers, blanks, diagnostics);
  CheckParts(spec.measured.boxes, drawers, 0, diagnostics);
}

}  // namespace

void ReadCheckInputs(ObjectReader& top, Spec& spec) {
  ReadContext& context = top.context();
  if (const JsonValue* value = top.Find("season")) {
    ObjectReader o(context, *value, "season");
    spec.season.typed = true;
    ReadMoisture(o, "made", spec.season.made);
    ReadMoisture(o, "dry", spec.season.dry);
    ReadMoisture(o, "humid", spec.season.humid);
  }
  if (const JsonValue* value = top.Find("measured")) {
    ObjectReader o(context, *value, "measured");
    ReadMeasured(o, spec.measured);
    // A layout that is not all there would make sound ids look wrong.
    if (!HasErrors(context.diagnostics)) CheckMeasuredParts(spec, context.diagnostics);
  }
  ReadSpacers(top, spec.spacers);
}

}  // namespace tillwright
