#include "write/gap_keys.h"

#include <cmath>

#include "check/figures.h"
#include "tillwright/length_text.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

// Half a picometer shows as a tenth decimal.
void Halves(JsonText& json, std::string_view key, HalfLength length) {
  std::string text;
  const bool whole = length.halves % 2 == 0;
  const std::int64_t magnitude = length.halves < 0 ? -length.halves : length.halves;
  if (length.halves < 0) text += '-';
  AppendMillimeters(text, Length::Picometers(magnitude / 2));
  if (!whole) {
    const std::size_t point = text.find('.');
    const std::size_t decimals = point == std::string::npos ? 0 : text.size() - point - 1;
    if (point == std::string::npos) text += '.';
    text.append(9 - decimals, '0');
    text += '5';
  }
  json.Key(key).Raw(text);
}

// A double, to the ninth decimal.
void Decimal(JsonText& json, std::string_view key, double value) {
  json.Millimeters(key, Length::Picometers(std::llround(value * 1e9)));
}

// A coefficient counted in halves.
void Coefficient(JsonText& json, int halves) {
  std::string text = halves < 0 ? "-" : "";
  text += std::to_string(std::abs(halves) / 2);
  if (halves % 2 != 0) text += ".5";
  json.Key("coefficient").Raw(text);
}

}  // namespace

void GapKeys::OfStack(JsonText& json, std::size_t at) const {
  const StackUp& stack = check_.stacks[at];
  const HalfLength nominal = HalfLength::Of(stack.nominal);
  json.Open("worst", '{');
  Halves(json, "least_mm", nominal - stack.spread);
  Halves(json, "greatest_mm", nominal + stack.spread);
  json.Close();
  json.Open("rss", '{');
  Decimal(json, "least_mm", ToMillimeters(stack.nominal) - stack.rss_mm);
  Decimal(json, "greatest_mm", ToMillimeters(stack.nominal) + stack.rss_mm);
  json.Close();
  if (check_.has_season) {
    json.Open("season", '{');
    Decimal(json, "dry_mm", stack.dry_mm);
    Decimal(json, "humid_mm", stack.humid_mm);
    if (!stack.is_overlap) Decimal(json, "least_to_leave_mm", stack.least_to_leave_mm);
    json.Close();
  }
  if (check_.has_measured) {
    Halves(json, "measured_mm", stack.measured);
    if (!stack.taper.IsZero()) json.Millimeters("taper_mm", stack.taper);
  }
  if (stack.shims) {
    json.Open("shims", '[');
    for (const Shim& shim : stack.shims->pieces) {
      const SpacerSpec& spacer = spec_.spacers[static_cast<std::size_t>(shim.spacer)];
      json.Open('{').Text("name", SpacerName(spacer, bank_.units));
      json.Number("count", shim.count).Close();
    }
    json.Close();
    json.Millimeters("shim_error_mm", stack.shims->error);
  }
  Contributors(json, stack);
  json.Text("verdict", ToText(stack.verdict));
}

void GapKeys::Contributors(JsonText& json, const StackUp& stack) const {
  json.Open("contributors", '[');
  for (const Contributor& c : stack.contributors) {
    json.Open('{').Text("of", ContributorName(bank_, stack, c));
    Coefficient(json, c.halves);
    Halves(json, "nominal_mm", c.nominal);
    json.Millimeters("tolerance_mm", c.tolerance);
    if (c.kind == Contributor::Kind::kMovement) {
      Decimal(json, "dry_mm", c.dry);
      Decimal(json, "humid_mm", c.humid);
    }
    if (!c.measured.IsZero()) json.Millimeters("measured_mm", c.measured);
    json.Close();
  }
  json.Close();
}

void GapKeys::OfBank(JsonText& json) const {
  json.Open("tolerance", '{').Millimeters("cut_mm", check_.cut);
  json.Millimeters("place_mm", check_.place).Millimeters("opening_mm", check_.opening).Close();
  json.Text("setting", Word(check_.setting));
  json.Open("limits", '{').Millimeters("least_mm", check_.least);
  json.Millimeters("greatest_mm", check_.greatest).Close();
  if (check_.has_season) {
    json.Open("moisture", '{');
    Decimal(json, "made", check_.made);
    Decimal(json, "dry", check_.dry);
    Decimal(json, "humid", check_.humid);
    json.Close();
  }
  Decimal(json, "chance", check_.chance);
  Decimal(json, "chance_error", check_.chance_error);
  json.Number("chance_samples", check_.chance_samples);
  if (check_.lean) json.Millimeters("lean_mm", *check_.lean);
  if (check_.has_measured) Cells(json);
  if (!check_.layouts.empty()) Layouts(json);
  if (check_.refit) RefitKeys(json);
  json.Open("advice", '[');
  for (const SpecChange& change : check_.advice) json.Text(change.text);
  json.Close();
}

void GapKeys::Cells(JsonText& json) const {
  json.Open("measured_cells", '[');
  for (const MeasuredCell& cell : check_.cells) {
    json.Open('{').Text("drawer", ToText(bank_.spaces[static_cast<std::size_t>(cell.space)].id));
    json.Millimeters("width_mm", cell.width).Millimeters("box_width_mm", cell.box_width);
    json.Millimeters("shim_left_mm", cell.shim_left);
    json.Millimeters("shim_right_mm", cell.shim_right).Close();
  }
  json.Close();
}

void GapKeys::Layouts(JsonText& json) const {
  const auto id = [&](int space) {
    return ToText(bank_.spaces[static_cast<std::size_t>(space)].id);
  };
  json.Open("given_layouts", '[');
  for (const GivenLayout& layout : check_.layouts) {
    json.Open('{').Text("first", id(layout.first)).Text("last", id(layout.last));
    json.Millimeters("left_over_mm", layout.left_over);
    json.Millimeters("spread_gap_mm", layout.spread_gap);
    json.Millimeters("flush_end_mm", layout.flush_end);
    if (layout.front >= 0) json.Text("change", id(layout.front));
    json.Close();
  }
  json.Close();
}

void GapKeys::RefitKeys(JsonText& json) const {
  json.Open("refit", '{').Flag("solved", check_.refit->solved).Open("changes", '[');
  for (const Refit::Change& change : check_.refit->changes) {
    json.Open('{').Text("of", change.path).Millimeters("planned_mm", change.planned);
    json.Millimeters("now_mm", change.now).Close();
  }
  json.Close().Open("unmet", '[');
  for (const std::string& unmet : check_.refit->unmet) json.Text(unmet);
  json.Close().Close();
}

}  // namespace tillwright
