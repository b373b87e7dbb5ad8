// Walks the schema of the spec and gives, for every object of keys.h, a whole document that holds
// one and the pointer to it.
#ifndef TILLWRIGHT_TESTS_SUPPORT_SCHEMA_WALK_H_
#define TILLWRIGHT_TESTS_SUPPORT_SCHEMA_WALK_H_

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace tillwright::testing {

using Json = nlohmann::ordered_json;

// One way to one kind of object: `document` is a spec that has it at `where`.
struct ReachedObject {
  std::string name;  // "spec", "fronts" … as in SpecObjects()
  Json document;
  Json::json_pointer where;

  // The document with `key` of the object set to `value`, and what excludes the key taken out.
  [[nodiscard]] Json With(const std::string& key, const Json& value) const;
};

// A value the schema (or one of its definitions) accepts.
[[nodiscard]] Json SampleOf(const Json& schema, const Json& of);

// Every edge from an object to an object, the spec itself first.
[[nodiscard]] std::vector<ReachedObject> ReachObjects(const Json& schema);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_SCHEMA_WALK_H_
