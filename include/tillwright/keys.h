// Every key of a spec, once: the reader refuses what is not here, the schema and the documentation
// are written from it.
#ifndef TILLWRIGHT_KEYS_H_
#define TILLWRIGHT_KEYS_H_

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tillwright {

class ObjectReader;
struct Default;
struct KeyRow;

// The default of a key, in words or as a length in both units; neither where there is none.
struct KeyDefault {
  std::string_view words;
  const Default* length = nullptr;

  constexpr KeyDefault() = default;
  constexpr KeyDefault(std::string_view text) : words(text) {}          // NOLINT: a row's cell
  constexpr KeyDefault(const char* text) : words(text) {}               // NOLINT
  constexpr KeyDefault(const Default& standard) : length(&standard) {}  // NOLINT
  // "1/4 in, or 6 mm".
  [[nodiscard]] std::string Text() const;
};

// What reads a key's value into a member of its owner; without one a reader does it by hand.
struct KeyTarget {
  const void* owner = nullptr;  // tells the type
  void (*read)(ObjectReader& reader, const KeyRow& row, void* owner) = nullptr;
};

struct KeyRow {
  std::string_view key;
  std::string_view type;   // a definition of the schema, or "list:" and one (see schema.cpp)
  std::string_view about;  // one sentence
  KeyDefault fallback;
  KeyTarget target = {};
  bool required = false;
};

// The whole numbers that keys of some types may be.
struct CountType {
  std::string_view type;
  int least, greatest;
};
inline constexpr std::array kCountTypes{
    CountType{"count", 1, 1000},
    CountType{"pull-count", 1, 2},
    CountType{"stages", 1, 10},
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
