// ObjectReader: reads the keys of one object of the spec, refusing what does not belong.
//
// Every key is looked up in the table of keys (keys.h): a key that is not there is reported with
// the nearest one that is, and asking for a key the table does not have is a bug.
#ifndef TILLWRIGHT_READ_OBJECT_READER_H_
#define TILLWRIGHT_READ_OBJECT_READER_H_

#include <string>
#include <string_view>
#include <vector>

#include "read/json_value.h"
#include "tillwright/keys.h"
#include "tillwright/spec.h"
#include "tillwright/words.h"

namespace tillwright {

// What reading needs to know everywhere.
struct ReadContext {
  std::string_view text;  // of the spec, for places inside strings
  Unit unit = Unit::kInch;
  Diagnostics& diagnostics;
};

// Which lengths make sense.
enum class Sign : std::uint8_t { kPositive, kZeroOrMore, kAny };

// Words for the kind of a value: "a list", "a number".
[[nodiscard]] std::string_view KindWords(const JsonValue& value);

void ReportWrongType(ReadContext& context, const JsonValue& value, std::string_view wanted);

// Reads a length from a number or a string.
void ReadLength(ReadContext& context, const JsonValue& value, Sign sign, Entry<Length>& out);
void ReadRatio(ReadContext& context, const JsonValue& value, Entry<Rational>& out);
void ReadText(ReadContext& context, const JsonValue& value, Entry<std::string>& out);

// The index of a word among choices, or -1 after reporting it.
int ReadChoice(ReadContext& context, const JsonValue& value,
               std::span<const std::string_view> choices);

[[nodiscard]] bool IsNone(const JsonValue& value);

// Its address tells a type.
template <class T>
inline constexpr char kOwnerTag = 0;

class ObjectReader {
 public:
  // Reports keys the object does not have. `value` must outlive the reader.
  ObjectReader(ReadContext& context, const JsonValue& value, std::string_view object);

  [[nodiscard]] ReadContext& context() const { return context_; }
  // False when the value is not an object at all (which has been reported).
  [[nodiscard]] bool ok() const { return value_.kind == JsonValue::Kind::kObject; }
  [[nodiscard]] Place place() const { return value_.place; }

  // The value of a key, or null.
  [[nodiscard]] const JsonValue* Find(std::string_view key) const;
  [[nodiscard]] bool Has(std::string_view key) const { return Find(key) != nullptr; }
  [[nodiscard]] Place KeyPlace(std::string_view key) const;
  // Reports a key that must be there and is not.
  const JsonValue* Require(std::string_view key);

  // Reads every key whose target is a member of `out`; the rest are left to the caller.
  template <class T>
  void ReadInto(T& out) {
    for (const KeyRow& row : object_.keys) {
      if (row.target.owner != &kOwnerTag<T>) continue;
      if (!row.required || Require(row.key) != nullptr) row.target.read(*this, row, &out);
    }
  }

  // One key, for the tables of keys.
  void ReadKey(const KeyRow& row, Entry<Length>& out);
  void ReadKey(const KeyRow& row, Entry<std::string>& out);
  void ReadKey(const KeyRow& row, Entry<Rational>& out);
  void ReadKey(const KeyRow& row, Entry<bool>& out);
  void ReadKey(const KeyRow& row, Entry<int>& out);
  template <class E>
  void ReadKey(const KeyRow& row, Entry<E>& out) {
    Choice(row.key, out);
  }
  // An object within, which tells that it was typed, and that it was typed as "none", if it can.
  template <class T>
  void ReadKey(const KeyRow& row, T& out);

  void LengthOf(std::string_view key, Sign sign, Entry<Length>& out);
  // A length above zero that must be there.
  void RequiredLength(std::string_view key, Entry<Length>& out) {
    if (Require(key) != nullptr) LengthOf(key, Sign::kPositive, out);
  }
  void Text(std::string_view key, Entry<std::string>& out);
  template <class E>
  void Choice(std::string_view key, Entry<E>& out) {
    const JsonValue* value = Find(key);
    if (value == nullptr) return;
    const int index = ReadChoice(context_, *value, Words<E>());
    if (index >= 0) out = {static_cast<E>(index), value->place};
  }

  // The items of a list under `key`, or null; reports what is not a list.
  const std::vector<JsonValue>* List(std::string_view key);

 private:
  ReadContext& context_;
  const JsonValue& value_;
  const ObjectRow& object_;
};

template <class T>
void ObjectReader::ReadKey(const KeyRow& row, T& out) {
  const JsonValue* value = Find(row.key);
  if (value == nullptr) return;
  if constexpr (requires { out.typed; }) out.typed = true;
  if constexpr (requires { out.place = value->place; }) out.place = value->place;
  if constexpr (requires { out.none; }) {
    out.none = IsNone(*value);
    if (out.none) return;
  }
  ObjectReader within(context_, *value, row.type.substr(0, row.type.find("-or-none")));
  within.ReadInto(out);
}

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_OBJECT_READER_H_
