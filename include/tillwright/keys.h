// Every key of a spec, once: the reader refuses what is not here, the schema and the documentation
// are written from it.
#ifndef TILLWRIGHT_KEYS_H_
#define TILLWRIGHT_KEYS_H_

#include <span>
#include <string_view>
#include <vector>

namespace tillwright {

struct KeyRow {
  std::string_view key;
  std::string_view type;      // a definition of the schema, or "list:" and one (see schema.cpp)
  std::string_view about;     // one sentence
  std::string_view fallback;  // the default in words; empty when there is none
};

struct ObjectRow {
  std::string_view name;  // the schema's definition
  std::string_view about;
  std::span<const KeyRow> keys;
};

// Every kind of object a spec may hold, the whole spec ("spec") first.
[[nodiscard]] std::span<const ObjectRow> SpecObjects();

// REQUIRES: `name` is one of SpecObjects().
[[nodiscard]] const ObjectRow& SpecObject(std::string_view name);

// The choice nearest to `word` (case aside, at most max(length, 3) / 3 edits), or "".
[[nodiscard]] std::string_view Nearest(std::string_view word,
                                       std::span<const std::string_view> choices);
// The few choices that are nearest, best first, however far they are; each once.
[[nodiscard]] std::vector<std::string_view> NearestOf(std::string_view word,
                                                      std::span<const std::string_view> choices,
                                                      std::size_t few);

}  // namespace tillwright

#endif  // TILLWRIGHT_KEYS_H_
