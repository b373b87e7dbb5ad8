#include <algorithm>
#include <array>
#include <limits>
#include <string>
#include <utility>

#include "diag/characters.h"
#include "tillwright/keys.h"

namespace tillwright {
namespace {

// Edits between two words: insert, delete, change, or swap neighbors, case aside.
class EditCounter {
 public:
  std::size_t Count(std::string_view a, std::string_view b) {
    for (std::vector<std::size_t>& row : rows_) row.resize(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) rows_[2][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
      std::rotate(rows_.begin(), rows_.begin() + 1, rows_.end());  // two before, before, this
      Row(a, b, i);
    }
    return rows_[2][b.size()];
  }

 private:
  void Row(std::string_view a, std::string_view b, std::size_t i) {
    const auto& [two_before, before, same] = rows_;
    std::vector<std::size_t>& row = rows_[2];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const bool alike = Lower(a[i - 1]) == Lower(b[j - 1]);
      std::size_t best = before[j - 1] + (alike ? 0U : 1U);
      best = std::min({best, before[j] + 1, row[j - 1] + 1});
      const bool swapped = i > 1 && j > 1 && Lower(a[i - 1]) == Lower(b[j - 2]) &&
                           Lower(a[i - 2]) == Lower(b[j - 1]);
      row[j] = swapped ? std::min(best, two_before[j - 2] + 1) : best;
    }
  }

  std::array<std::vector<std::size_t>, 3> rows_;
};

struct Near {
  std::string_view choice;
  std::size_t edits = 0;
};

// The `few` choices with the fewest edits, fewer than `limit`; among equals the earlier first.
std::vector<Near> FewNearest(std::string_view word, std::span<const std::string_view> choices,
                             std::size_t few, std::size_t limit) {
  std::vector<Near> best;
  EditCounter counter;
  for (const std::string_view choice : choices) {
    const std::size_t a = word.size();
    const std::size_t b = choice.size();
    if ((a > b ? a - b : b - a) >= limit) continue;  // that many at least
    const std::size_t edits = counter.Count(word, choice);
    if (edits >= limit || std::ranges::find(best, choice, &Near::choice) != best.end()) continue;
    best.insert(std::ranges::upper_bound(best, edits, {}, &Near::edits), {choice, edits});
    if (best.size() > few) best.pop_back();
    if (best.size() == few) limit = best.back().edits;
  }
  return best;
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
  const std::vector<Near> best =
      FewNearest(word, choices, 1, std::max<std::size_t>(word.size(), 3) / 3 + 1);
  return best.empty() ? std::string_view() : best[0].choice;
}

std::vector<std::string_view> NearestOf(std::string_view word,
                                        std::span<const std::string_view> choices,
                                        std::size_t few) {
  std::vector<std::string_view> nearest;
  constexpr std::size_t kAny = std::numeric_limits<std::size_t>::max();
  for (const Near& near : FewNearest(word, choices, few, kAny)) nearest.push_back(near.choice);
  return nearest;
}

}  // namespace tillwright
