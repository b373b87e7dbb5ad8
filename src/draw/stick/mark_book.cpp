#include "draw/stick/mark_book.h"

#include <algorithm>
#include <tuple>

namespace tillwright {
namespace {

// What may share a mark: drawers and blanks, dividers, partitions, the case.
char KindOf(const StickMark& mark) {
  if (mark.ids.empty() || mark.ids[0].empty()) return ' ';
  const char letter = mark.ids[0][0];
  return letter == 'H' || letter == 'V' ? letter : 'D';
}

auto KeyOf(const StickMark& mark) {
  return std::tuple(mark.lane, mark.at, std::string_view(mark.part), std::string_view(mark.what),
                    KindOf(mark));
}

void AddThing(StickMark& mark, const std::string& id, const std::string& sum) {
  const auto at = std::ranges::lower_bound(mark.ids, id, IdBefore);
  if (at != mark.ids.end() && *at == id) return;
  mark.sums.insert(mark.sums.begin() + (at - mark.ids.begin()), sum);
  mark.ids.insert(at, id);
}

auto SpanKeyOf(const StickSpan& span) {
  return std::tuple(span.lane, span.from, span.to, span.kind, std::string_view(span.what));
}

void AddIds(std::vector<std::string>& ids, const std::vector<std::string>& others) {
  for (const std::string& id : others) {
    const auto at = std::ranges::lower_bound(ids, id, IdBefore);
    if (at == ids.end() || *at != id) ids.insert(at, id);
  }
}

}  // namespace

bool IdBefore(const std::string& a, const std::string& b) {
  return std::tuple(a.substr(0, 1), a.size(), a) < std::tuple(b.substr(0, 1), b.size(), b);
}

void MarkBook::Finish() {
  std::ranges::stable_sort(marks_, {}, [](const StickMark& mark) { return KeyOf(mark); });
  std::vector<StickMark> joined;
  for (StickMark& mark : marks_) {
    if (joined.empty() || KeyOf(joined.back()) != KeyOf(mark)) {
      joined.push_back(std::move(mark));
    } else {
      AddThing(joined.back(), mark.ids[0], mark.sums[0]);
    }
  }
  marks_ = std::move(joined);
  std::ranges::stable_sort(spans_, {}, [](const StickSpan& span) { return SpanKeyOf(span); });
  std::vector<StickSpan> spans;
  for (StickSpan& span : spans_) {
    if (spans.empty() || SpanKeyOf(spans.back()) != SpanKeyOf(span)) {
      spans.push_back(std::move(span));
    } else {
      AddIds(spans.back().ids, span.ids);
    }
  }
  spans_ = std::move(spans);
}

bool MarkBook::Holds(const MarkBook& other) const {
  return std::ranges::includes(marks_, other.marks_, {}, KeyOf, KeyOf);
}

void MarkBook::Take(const MarkBook& other) {
  for (const StickMark& from : other.marks_) {
    const auto own = std::ranges::lower_bound(marks_, KeyOf(from), {}, KeyOf);
    for (std::size_t k = 0; k < from.ids.size(); ++k) AddThing(*own, from.ids[k], from.sums[k]);
  }
  for (const StickSpan& span : other.spans_) {
    const auto like = std::ranges::find(spans_, SpanKeyOf(span), SpanKeyOf);
    if (like != spans_.end()) AddIds(like->ids, span.ids);
  }
}

}  // namespace tillwright
