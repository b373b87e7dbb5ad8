#include <algorithm>

#include "read/json_value.h"
#include "tillwright/read.h"

namespace tillwright {
namespace {

bool StartsCharacter(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

int Characters(std::string_view text) {
  return static_cast<int>(std::ranges::count_if(text, StartsCharacter));
}

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

// Finds the key or value that `offset` lies in, leaving its pointer in `pointer`.
bool FindPointer(const JsonValue& value, std::uint32_t offset, std::string& pointer) {
  const std::size_t length = pointer.size();
  for (const JsonMember& member : value.members) {
    AppendToken(pointer, member.key);
    if (Holds(member.key_place, offset) || FindPointer(member.value, offset, pointer)) return true;
    pointer.resize(length);
  }
  for (std::size_t i = 0; i < value.items.size(); ++i) {
    AppendToken(pointer, std::to_string(i));
    if (FindPointer(value.items[i], offset, pointer)) return true;
    pointer.resize(length);
  }
  return Holds(value.place, offset);
}

}  // namespace

Location Locate(std::string_view text, Place place) {
  Location location;
  if (!place.IsSomewhere()) return location;
  const std::size_t offset = std::min<std::size_t>(place.offset, text.size());
  const std::size_t newline = offset == 0 ? std::string_view::npos : text.rfind('\n', offset - 1);
  const std::size_t begin = newline == std::string_view::npos ? 0 : newline + 1;
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
