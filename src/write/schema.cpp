// The schema of the spec, written from the table of keys (keys.h) and the tables of words.
#include <nlohmann/json.hpp>

#include "tillwright/keys.h"
#include "tillwright/words.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using Json = nlohmann::ordered_json;

Json Described(std::string_view about) {
  Json value = Json::object();
  value["description"] = std::string(about);
  return value;
}

Json Ref(std::string_view name) {
  Json value = Json::object();
  value["$ref"] = "#/$defs/" + std::string(name);
  return value;
}

Json AnyOf(std::initializer_list<Json> choices) {
  Json list = Json::array();
  for (const Json& choice : choices) list.push_back(choice);
  Json value = Json::object();
  value["anyOf"] = list;
  return value;
}

Json TypeOf(std::initializer_list<const char*> types) {
  Json list = Json::array();
  for (const char* type : types) list.push_back(type);
  Json value = Json::object();
  value["type"] = list.size() == 1 ? list[0] : list;
  return value;
}

Json OneWord(const char* word) {
  Json value = Json::object();
  value["const"] = word;
  return value;
}

template <class E>
Json Choice() {
  Json value = TypeOf({"string"});
  value["enum"] = Json::array();
  for (const std::string_view word : Words<E>()) value["enum"].push_back(std::string(word));
  return value;
}

Json LengthDefinition(const char* about, bool zero, bool negative) {
  Json number = TypeOf({"number"});
  if (!negative) number[zero ? "minimum" : "exclusiveMinimum"] = 0;
  Json text = TypeOf({"string"});
  text["minLength"] = 1;
  Json value = AnyOf({number, text});
  value["description"] = about;
  value["examples"] = Json::array({"15 3/8", "390.5 mm", "1 ft 3 3/8 in"});
  return value;
}

// Definitions that are no objects of the table of keys.
Json SimpleDefinitions() {
  Json d = Json::object();
  d["text"] = TypeOf({"string"});
  d["text-or-number"] = TypeOf({"string", "number"});
  Json weight = TypeOf({"string"});
  weight["pattern"] = "^ *[0-9]+(\\.[0-9]+)? *([A-Za-z]+)? *$";
  Json bare_weight = TypeOf({"number"});
  bare_weight["exclusiveMinimum"] = 0;
  d["weight"] = AnyOf({bare_weight, weight});
  d["flag"] = TypeOf({"boolean"});
  d["length"] = LengthDefinition(
      "A length above zero; without a unit it is in the spec's \"units\".", false, false);
  d["length-or-zero"] = LengthDefinition("A length, which may be zero.", true, false);
  d["signed-length"] = LengthDefinition("A length, which may be negative.", true, true);
  Json ratio_number = TypeOf({"number"});
  ratio_number["exclusiveMinimum"] = 0;
  Json ratio_text = TypeOf({"string"});
  ratio_text["pattern"] = "^ *[0-9]+(\\.[0-9]+| +[0-9]+/[0-9]+|/[0-9]+)? *$";
  d["ratio"] = AnyOf({ratio_number, ratio_text});
  d["ratio"]["description"] = "A ratio above zero such as 1.3 or \"4/3\".";
  d["percent"] = TypeOf({"number", "string"});
  for (const CountType& type : kCountTypes) {
    Json count = TypeOf({"integer"});
    count["minimum"] = type.least;
    count["maximum"] = type.greatest;
    d[std::string(type.type)] = count;
  }
  d["pull-or-none"] = AnyOf({OneWord("none"), Ref("pull")});
  d["slide-length"] = AnyOf({OneWord("auto"), Ref("length")});
  d["divider"] = AnyOf({OneWord("none"), Ref("length")});
  d["case-top"] = AnyOf({OneWord("none"), Ref("length")});
  d["case-back"] = AnyOf({OneWord("none"), Ref("back")});
  d["overlay-edge"] = AnyOf({OneWord("flush"), Ref("signed-length"), Ref("reveal")});
  d["overlay"] = AnyOf({Ref("overlay-edge"), Ref("overlay-edges")});
  d["edge"] = AnyOf({Ref("length-or-zero"), Ref("edges")});
  d["moisture"] = AnyOf({Ref("percent"), Ref("climate")});
  Json parts = TypeOf({"object"});
  parts["additionalProperties"] = Ref("measured-part");
  d["measured-parts"] = parts;
  return d;
}

void AddChoices(Json& d) {
  d["choice:units"] = Choice<Unit>();
  d["choice:front-style"] = Choice<FrontStyle>();
  d["choice:grain"] = Choice<Grain>();
  d["choice:slide"] = Choice<SlideType>();
  d["choice:corner"] = Choice<CornerJoint>();
  d["choice:bottom-fit"] = Choice<BottomFit>();
  d["choice:graduation"] = Choice<Graduation>();
  d["choice:case-joint"] = Choice<CaseJoint>();
  d["choice:case-fixing"] = Choice<CaseFixing>();
  d["choice:back-fit"] = Choice<BackFit>();
  d["choice:setting"] = Choice<Setting>();
  d["choice:sawn"] = Choice<SawnCut>();
  d["choice:held"] = Choice<Held>();
  d["choice:match"] = Choice<FrontMatch>();
  d["choice:open-rails"] = Choice<OpenRails>();
}

Json Property(const KeyRow& row) {
  constexpr std::string_view kList = "list:";
  const std::string fallback = row.fallback.Text();
  Json value =
      Described(std::string(row.about) + (fallback.empty() ? "" : " Default: " + fallback + "."));
  if (row.type.starts_with(kList)) {
    value["type"] = "array";
    value["items"] = Ref(row.type.substr(kList.size()));
    value["minItems"] = row.key == "spacers" || row.key == "width" ? 0 : 1;
  } else {
    value["$ref"] = "#/$defs/" + std::string(row.type);
  }
  return value;
}

Json ObjectDefinition(const ObjectRow& row) {
  Json value = Described(row.about);
  value["type"] = "object";
  value["properties"] = Json::object();
  for (const KeyRow& key : row.keys) value["properties"][std::string(key.key)] = Property(key);
  value["additionalProperties"] = false;
  for (const KeyRow& key : row.keys) {
    if (key.required) value["required"].push_back(std::string(key.key));
  }
  return value;
}

Json Requires(std::initializer_list<const char*> keys) {
  Json value = Json::object();
  value["required"] = Json::array();
  for (const char* key : keys) value["required"].push_back(key);
  return value;
}

Json OneOf(std::initializer_list<const char*> keys) {
  Json list = Json::array();
  for (const char* key : keys) list.push_back(Requires({key}));
  return list;
}

void AddRequirements(Json& schema, Json& d) {
  Json made_up = Json::array();  // height and depth, or the worktop that they follow from
  made_up.push_back(Requires({"height", "depth"}));
  made_up.push_back(Requires({"worktop"}));
  d["case"]["anyOf"] = made_up;
  d["node"]["oneOf"] = OneOf({"rows", "columns", "drawer", "blank", "open"});
  Json opening = Json::object();
  opening["oneOf"] = OneOf({"opening", "case"});
  Json layout = Json::object();
  layout["oneOf"] = OneOf({"drawers", "layout"});
  schema["allOf"] = Json::array({opening, layout});
}

}  // namespace

std::string SpecSchema() {
  Json definitions = SimpleDefinitions();
  AddChoices(definitions);
  Json schema = Json::object();
  schema["$schema"] = "https://json-schema.org/draft/2020-12/schema";
  schema["title"] = "Tillwright spec";
  for (const ObjectRow& row : SpecObjects()) {
    if (row.name == "spec") {
      schema.update(ObjectDefinition(row));
    } else {
      definitions[std::string(row.name)] = ObjectDefinition(row);
    }
  }
  AddRequirements(schema, definitions);
  schema["$defs"] = std::move(definitions);
  return schema.dump(2) + "\n";
}

std::string StarterSpec() {
  return R"(// A bank of drawers. Measure your own opening, stock and slides, then change what differs.
// Lengths: "15 3/8", "15-3/8", 15.375, "390.5 mm", "1 ft 3 3/8 in". Comments are fine.
{
  "title": "Glue table, left bank",
  "units": "in",                     // "in" or "mm": what a bare number means
  "round": "1/32",                   // parts are cut to whole multiples of this

  // The clear space between the case sides. Or give the case: see "case" in the schema.
  "opening": { "width": "15 3/8", "height": "24 3/4", "depth": "21 3/4" },

  "fronts": {
    "style": "overlay",              // or "inset", with "edge" instead of "overlay"
    "thickness": "3/4",
    "gap": "1/8",                    // between fronts
    "overlay": "5/8"                 // past the opening's edge; or each edge by name
  },

  "slides": { "type": "side-mount", "length": "auto" },   // the longest that fits the depth

  "box": {
    "side": { "thickness": "1/2", "material": "birch plywood" },
    "corner": { "joint": "rabbet" },
    "bottom": { "thickness": "1/4", "fit": "groove", "up": "1/4" }   // measure the thickness
  },

  "graduate": { "scheme": "geometric", "ratio": 1.2 },    // each front 1.2 times the one above
  "drawers": [ { "name": "Bone folders" }, { "name": "Threads" }, { "name": "Boards" } ]
}
)";
}

}  // namespace tillwright
