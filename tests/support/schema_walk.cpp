#include "support/schema_walk.h"

#include <array>
#include <deque>
#include <set>

namespace tillwright::testing {
namespace {

constexpr std::string_view kDefinitions = "#/$defs/";

bool IsReference(const Json& of) { return of.contains("$ref"); }

std::string NameOf(const Json& reference) {
  return reference["$ref"].get<std::string>().substr(kDefinitions.size());
}

// Keys that exclude one another in one object.
const std::vector<std::vector<std::string>> kExclusive{
    {"opening", "case"}, {"drawers", "layout"}, {"rows", "columns", "drawer", "blank", "open"}};

void MakeRoomFor(Json& object, const std::string& key) {
  for (const std::vector<std::string>& group : kExclusive) {
    if (std::find(group.begin(), group.end(), key) == group.end()) continue;
    for (const std::string& other : group) {
      if (other != key) object.erase(other);
    }
  }
}

// Everything an alternative of the schema leads to: the definitions of objects, each with the value
// that holds a sample of it and the pointer to it in there.
struct Lead {
  std::string name;
  Json value;
  Json::json_pointer where;
};

std::vector<Lead> Within(const std::vector<Lead>& leads, const std::string& token, bool list) {
  std::vector<Lead> outer;
  for (const Lead& lead : leads) {
    Json value = list ? Json::array() : Json::object();
    if (list) {
      value.push_back(lead.value);
    } else {
      value[token] = lead.value;
    }
    outer.push_back({lead.name, value, Json::json_pointer("/" + token) / lead.where});
  }
  return outer;
}

std::vector<Lead> LeadsOf(const Json& schema, const Json& of) {
  if (IsReference(of)) {
    const Json& definition = schema["$defs"].at(NameOf(of));
    if (definition.contains("properties")) {
      return {{NameOf(of), SampleOf(schema, definition), Json::json_pointer()}};
    }
    return LeadsOf(schema, definition);
  }
  if (of.contains("items")) return Within(LeadsOf(schema, of["items"]), "0", true);
  if (of.contains("additionalProperties") && of["additionalProperties"].is_object()) {
    return Within(LeadsOf(schema, of["additionalProperties"]), "D1", false);
  }
  std::vector<Lead> leads;
  if (of.contains("anyOf")) {
    for (const Json& choice : of["anyOf"]) {
      for (Lead& lead : LeadsOf(schema, choice)) leads.push_back(std::move(lead));
    }
  }
  return leads;
}

Json SampleObject(const Json& schema, const Json& of) {
  Json value = Json::object();
  const auto require = [&](const Json& from) {
    if (!from.contains("required")) return;
    for (const Json& key : from["required"]) {
      value[key.get<std::string>()] = SampleOf(schema, of["properties"][key.get<std::string>()]);
    }
  };
  require(of);
  if (of.contains("anyOf")) require(of["anyOf"].front());  // keys that may stand for one another
  if (of.contains("oneOf")) {  // a node: rows of one drawer
    value["rows"] = Json::array({Json::object({{"drawer", Json::object()}})});
  }
  return value;
}

}  // namespace

Json ReachedObject::With(const std::string& key, const Json& value) const {
  Json changed = document;
  Json& object = changed[where];
  MakeRoomFor(object, key);
  object[key] = value;
  return changed;
}

Json SampleOf(const Json& schema, const Json& of) {
  if (IsReference(of)) return SampleOf(schema, schema["$defs"].at(NameOf(of)));
  if (of.contains("const")) return of["const"];
  if (of.contains("enum")) return of["enum"][0];
  if (of.contains("properties")) return SampleObject(schema, of);
  if (of.contains("anyOf")) return SampleOf(schema, of["anyOf"].back());
  if (of.contains("items")) return Json::array({SampleOf(schema, of["items"])});
  const Json& type = of["type"].is_array() ? of["type"][0] : of["type"];
  if (type == "object") return Json::object();
  if (type == "boolean") return true;
  if (type == "integer" || type == "number") return 1;
  return of.contains("pattern") ? "3/2" : "8 mm";
}

std::vector<ReachedObject> ReachObjects(const Json& schema) {
  const Json length = "500 mm";
  const Json opening = {{"width", length}, {"height", length}, {"depth", length}};
  const Json document = {{"opening", opening}, {"drawers", Json::array({Json::object()})}};
  std::vector<ReachedObject> all{{"spec", document, Json::json_pointer()}};
  std::set<std::string> followed;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const ReachedObject at = all[i];
    if (!followed.insert(at.name).second) continue;
    const Json& definition = at.name == "spec" ? schema : schema["$defs"].at(at.name);
    for (const auto& [key, property] : definition["properties"].items()) {
      for (const Lead& lead : LeadsOf(schema, property)) {
        all.push_back({lead.name, at.With(key, lead.value), at.where / key / lead.where});
      }
    }
  }
  return all;
}

}  // namespace tillwright::testing
