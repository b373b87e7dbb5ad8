#include <algorithm>

#include "diag/characters.h"
#include "read/json_value.h"
#include "tillwright/read.h"

namespace tillwright {
namespace {

int Characters(std::string_view text) { return static_cast<int>(CharacterCount(text)); }

// RFC 6901: ~ and / in a key are written ~0 and ~1.
void AppendToken(std::string& pointer, std::string_view key) {
  pointer += '/';
  for (const char c : key) {
    if (c == '~') {
      pointer += "~0";
    } else if (c == '/') {
      pointer += "~1";
    } else {
      pointer += c;
    }
  }
}

bool Holds(Place place, std::uint32_t offset) {
  return offset >= place.offset && offset < place.offset + place.length;
}

// The last of `children`, which stand in the order of the text, that begins at `offset` or before.
template <class Child, class Begin>
const Child* ChildAt(const std::vector<Child>& children, std::uint32_t offset, Begin begin) {
  const auto after = std::ranges::upper_bound(children, offset, {}, begin);
  return after == children.begin() ? nullptr : &*(after - 1);
}

// Finds the key or value that `offset` lies in, leaving its pointer in `pointer`.
bool FindPointer(const JsonValue& value, std::uint32_t offset, std::string& pointer) {
  const JsonMember* member =
      ChildAt(value.members, offset, [](const JsonMember& m) { return m.key_place.offset; });
  if (member != nullptr) {
    AppendToken(pointer, member->key);
    return Holds(member->key_place, offset) || FindPointer(member->value, offset, pointer);
  }
  const JsonValue* item =
      ChildAt(value.items, offset, [](const JsonValue& v) { return v.place.offset; });
  if (item != nullptr) {
    AppendToken(pointer, std::to_string(item - value.items.data()));
    return FindPointer(*item, offset, pointer);
  }
  return Holds(value.place, offset);
}

}  // namespace

Location Locate(std::string_view text, Place place) {
  Location location;
  if (!place.IsSomewhere()) return location;
  constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";  // no character of the line
  const std::size_t first = text.starts_with(kByteOrderMark) ? kByteOrderMark.size() : 0;
  const std::size_t offset = std::clamp<std::size_t>(place.offset, first, text.size());
  const std::size_t newline = offset == 0 ? std::string_view::npos : text.rfind('\n', offset - 1);
  const std::size_t begin = newline == std::string_view::npos ? first : newline + 1;
  const std::size_t end = std::min(text.find('\n', offset), text.size());
  location.line = 1 + static_cast<int>(std::ranges::count(text.substr(0, begin), '\n'));
  location.column = 1 + Characters(text.substr(begin, offset - begin));
  location.source = text.substr(begin, end - begin);
  if (!location.source.empty() && location.source.back() == '\r') location.source.pop_back();
  const std::size_t stop = std::min<std::size_t>(offset + place.length, end);
  location.width = std::max(1, Characters(text.substr(offset, stop - offset)));
  return location;
}

std::vector<std::string> PointersTo(std::string_view text, const std::vector<Place>& places) {
  std::vector<std::string> pointers(places.size());
  JsonValue root;
  Diagnostics ignored;
  if (!ParseJson(text, root, ignored)) return pointers;
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (!FindPointer(root, places[i].offset, pointers[i])) pointers[i].clear();
  }
  return pointers;
}

}  // namespace tillwright
