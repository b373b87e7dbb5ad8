#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "diag/characters.h"
#include "tillwright/keys.h"

namespace tillwright {
namespace {

// Edits between two words: insert, delete, change, or swap neighbors, case aside.
std::size_t Edits(std::string_view a, std::string_view b) {
  constexpr std::size_t kLongest = 32;
  if (a.size() > kLongest || b.size() > kLongest) return a.size() + b.size();  // no key is so long
  std::array<std::array<std::size_t, kLongest + 1>, kLongest + 1> d{};
  for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
  for (std::size_t j = 0; j <= b.size(); ++j) d[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const bool same = Lower(a[i - 1]) == Lower(b[j - 1]);
      std::size_t best = d[i - 1][j - 1] + (same ? 0U : 1U);
      if (d[i - 1][j] + 1 < best) best = d[i - 1][j] + 1;
      if (d[i][j - 1] + 1 < best) best = d[i][j - 1] + 1;
      const bool swapped = i > 1 && j > 1 && Lower(a[i - 1]) == Lower(b[j - 2]) &&
                           Lower(a[i - 2]) == Lower(b[j - 1]);
      if (swapped && d[i - 2][j - 2] + 1 < best) best = d[i - 2][j - 2] + 1;
      d[i][j] = best;
    }
  }
  return d[a.size()][b.size()];
}

// What a thing was called before, or is called elsewhere, and its name here.
constexpr std::array<std::pair<std::string_view, std::string_view>, 6> kOtherWords{{
    {"groove", "tongue-and-dado"},
    {"flaws", "defects"},
    {"front_end", "box_front"},
    {"back_end", "box_back"},
    {"rebate", "rabbet"},
    {"housing", "dado"},
}};

// The word, or path of words with points between, with each of those replaced.
std::string Renamed(std::string_view path) {
  std::string out;
  while (!path.empty()) {
    const std::size_t end = std::min(path.find('.'), path.size());
    std::string_view word = path.substr(0, end);
    for (const auto& [other, here] : kOtherWords) {
      if (word == other) word = here;
    }
    out += word;
    if (end < path.size()) out += '.';
    path.remove_prefix(std::min(end + 1, path.size()));
  }
  return out;
}

}  // namespace

std::string_view Nearest(std::string_view word, std::span<const std::string_view> choices) {
  const auto renamed = std::ranges::find(choices, Renamed(word));
  if (renamed != choices.end()) return *renamed;
  std::string_view best;
  std::size_t best_edits = (word.size() > 3 ? word.size() : 3) / 3 + 1;
  for (const std::string_view choice : choices) {
    const std::size_t edits = Edits(word, choice);
    if (edits < best_edits) {
      best = choice;
      best_edits = edits;
    }
  }
  return best;
}

}  // namespace tillwright
