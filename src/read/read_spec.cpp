#include <algorithm>
#include <string>

#include "read/box_reader.h"
#include "read/case_reader.h"
#include "read/check_inputs.h"
#include "read/layout_reader.h"
#include "read/object_reader.h"
#include "read/stock_reader.h"
#include "spec/box_rules.h"
#include "spec/defaults.h"
#include "tillwright/read.h"

namespace tillwright {
namespace {

constexpr std::string_view kOverlayHint =
    "write a length, \"flush\", { \"reveal\": … }, or one of these for each edge";

class SpecReader {
 public:
  SpecReader(ReadContext& context, const JsonValue& root)
      : context_(context), top_(context, root, "spec") {}

  void Run(Spec& spec) {
    if (!top_.ok()) return;
    ReadUnits(spec);
    Entry<std::string> for_editors;
    top_.Text("$schema", for_editors);
    top_.ReadInto(spec);
    ReadOpening(spec);
    Object("fronts", [&](ObjectReader& o) { ReadFronts(o, spec.fronts); });
    Object("slides", [&](ObjectReader& o) { ReadSlides(o, spec.slides); });
    Object("box", [&](ObjectReader& o) { ReadBox(o, spec.box); });
    CheckGlueUp(spec.glue_up);
    ReadLayout(top_, spec);
    ReadCheckInputs(top_, spec);
    ReadStock(top_, spec.stock);
  }

 private:
  template <class F>
  void Object(std::string_view key, F read) {
    if (const JsonValue* value = top_.Find(key)) {
      ObjectReader reader(context_, *value, key);
      if (reader.ok()) read(reader);
    }
  }

  void CheckGlueUp(const GlueUpSpec& glue_up) {
    const Length least = LengthOr(glue_up.joint, defaults::kJointing, context_.unit);
    if (!glue_up.board.typed || glue_up.board.value > least) return;
    ReportError(context_.diagnostics, DiagnosticCode::kNoRoom, glue_up.board.place,
                "jointing leaves nothing of boards this narrow",
                "use wider boards or a smaller \"joint\"");
  }

  // The unit first: every bare number depends on it.
  void ReadUnits(Spec& spec) {
    top_.Choice("units", spec.units);
    context_.unit = spec.units.value;
  }

  void ReadOpening(Spec& spec) {
    if (top_.Has("opening") && top_.Has("case")) {
      ReportError(context_.diagnostics, DiagnosticCode::kConflict, top_.KeyPlace("case"),
                  "\"opening\" and \"case\" cannot be used together", "give one of the two");
    }
    if (!top_.Has("opening") && !top_.Has("case")) {
      ReportError(context_.diagnostics, DiagnosticCode::kMissingKey, top_.place(),
                  "neither \"opening\" nor \"case\" is given",
                  "add \"opening\": { \"width\": …, \"height\": …, \"depth\": … }");
    }
    Object("opening", [&](ObjectReader& o) { o.ReadInto(spec.opening.emplace()); });
    Object("case", [&](ObjectReader& o) { ReadCase(o, spec.casework.emplace()); });
  }

  // --- Fronts -----------------------------------------------------------------------------------

  void ReadFronts(ObjectReader& o, FrontsSpec& out) {
    o.ReadInto(out);
    CheckMatch(o, out);
    const bool inset = out.style.value == FrontStyle::kInset;
    const bool known = out.style.typed || !o.Has("style");
    if (const JsonValue* value = o.Find("overlay")) {
      out.overlay_typed = true;
      out.overlay_place = value->place;
      OnlyWith(!inset || !known, o, "overlay", "use \"edge\" for the gap around inset fronts");
      ReadOverlay(*value, out);
    }
    if (const JsonValue* value = o.Find("edge")) {
      out.edge_typed = true;
      out.edge_place = value->place;
      OnlyWith(inset || !known, o, "edge", "use \"overlay\", or set \"style\": \"inset\"");
      ReadEdges(*value, out);
    }
  }

  void CheckMatch(ObjectReader& o, const FrontsSpec& out) {
    if (out.match.value == FrontMatch::kNone || out.grain.value != Grain::kNone) return;
    ReportError(context_.diagnostics, DiagnosticCode::kNotApplicable, o.KeyPlace("match"),
                "\"match\" does not belong to fronts without a grain",
                "write \"grain\": \"horizontal\" or \"vertical\", or leave \"match\" out");
  }

  void OnlyWith(bool right, ObjectReader& o, std::string_view key, std::string_view hint) {
    if (right) return;
    ReportError(context_.diagnostics, DiagnosticCode::kNotApplicable, o.KeyPlace(key),
                "\"" + std::string(key) + "\" does not belong to " +
                    (key == "edge" ? "overlay" : "inset") + " fronts",
                std::string(hint));
  }

  void ReadOverlay(const JsonValue& value, FrontsSpec& out) {
    const bool each = value.kind == JsonValue::Kind::kObject && value.Find("reveal") == nullptr;
    if (!each) {
      OverlayEdge all;
      ReadOverlayEdge(value, all);
      all.from_single = true;
      out.overlay.fill(all);
      return;
    }
    ObjectReader edges(context_, value, "overlay-edges");
    for (const Edge edge : kEdges) {
      if (const JsonValue* one = edges.Find(Word(edge))) {
        ReadOverlayEdge(*one, out.overlay[static_cast<std::size_t>(edge)]);
      }
    }
  }

  void ReadOverlayEdge(const JsonValue& value, OverlayEdge& out) {
    out.from_single = false;
    if (value.kind == JsonValue::Kind::kString && value.text == "flush") {
      out.kind = OverlayEdge::Kind::kFlush;
      out.length.place = value.place;
      return;
    }
    if (value.kind == JsonValue::Kind::kObject) {
      out.kind = OverlayEdge::Kind::kReveal;
      ObjectReader reveal(context_, value, "reveal");
      if (reveal.Require("reveal") != nullptr) {
        reveal.LengthOf("reveal", Sign::kZeroOrMore, out.length);
      }
      return;
    }
    if (value.kind != JsonValue::Kind::kString && value.kind != JsonValue::Kind::kNumber) {
      ReportWrongType(context_, value, "an overlay");
      context_.diagnostics.back().hint = kOverlayHint;
      return;
    }
    ReadLength(context_, value, Sign::kAny, out.length);
  }

  void ReadEdges(const JsonValue& value, FrontsSpec& out) {
    if (value.kind != JsonValue::Kind::kObject) {
      Entry<Length> all;
      ReadLength(context_, value, Sign::kZeroOrMore, all);
      out.edge.fill(all);
      return;
    }
    ObjectReader edges(context_, value, "edges");
    for (const Edge edge : kEdges) {
      edges.LengthOf(Word(edge), Sign::kZeroOrMore, out.edge[static_cast<std::size_t>(edge)]);
    }
  }

  ReadContext& context_;
  ObjectReader top_;
};

}  // namespace

Outcome<Spec> ReadSpec(std::string_view text) {
  Diagnostics diagnostics;
  if (text.size() > kMaxSpecBytes) {
    ReportError(diagnostics, DiagnosticCode::kTooBig, {}, "the spec is over 16 MiB");
    return {std::nullopt, std::move(diagnostics)};
  }
  JsonValue root;
  if (!ParseJson(text, root, diagnostics)) return {std::nullopt, std::move(diagnostics)};
  std::optional<Spec> spec(std::in_place);
  ReadContext context{text, Unit::kInch, diagnostics};
  SpecReader(context, root).Run(*spec);
  // Whether keys belong to their choices can be told once every choice is known.
  const bool known = std::ranges::none_of(diagnostics, [](const Diagnostic& d) {
    return d.code == DiagnosticCode::kBadChoice || d.code == DiagnosticCode::kWrongType ||
           d.code == DiagnosticCode::kUnknownKey;
  });
  if (known) CheckApplicable(*spec, diagnostics);
  return {std::move(spec), std::move(diagnostics)};
}

}  // namespace tillwright
