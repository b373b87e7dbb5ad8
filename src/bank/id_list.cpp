#include "bank/id_list.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace tillwright {
namespace {

// The number of an id such as "D12"; nothing for "case" or "opening.left".
std::optional<int> NumberOf(const std::string& id) {
  if (id.size() < 2) return std::nullopt;
  int number = 0;
  const char* end = id.data() + id.size();
  const auto read = std::from_chars(id.data() + 1, end, number);
  if (read.ec != std::errc() || read.ptr != end) return std::nullopt;
  return number;
}

bool Follows(const std::string& before, const std::string& id, int step) {
  const std::optional<int> a = NumberOf(before);
  const std::optional<int> b = NumberOf(id);
  return a && b && before[0] == id[0] && *b == *a + step;
}

// Past the last of the ids from `first` on that count up, or down, by one.
std::size_t EndOfRun(const std::vector<std::string>& ids, std::size_t first) {
  std::size_t longest = first + 1;
  for (const int step : {1, -1}) {
    std::size_t end = first + 1;
    while (end < ids.size() && Follows(ids[end - 1], ids[end], step)) ++end;
    longest = std::max(longest, end);
  }
  return longest;
}

}  // namespace

std::string IdList::ToText() const {
  constexpr std::size_t kLeastRun = 3;
  std::string text;
  for (std::size_t first = 0; first < ids_.size();) {
    std::size_t end = EndOfRun(ids_, first);
    if (end - first < kLeastRun) end = first + 1;
    if (!text.empty()) text += ", ";
    text += ids_[first];
    if (end > first + 1) text += "\u2013" + ids_[end - 1];
    first = end;
  }
  return text;
}

}  // namespace tillwright
