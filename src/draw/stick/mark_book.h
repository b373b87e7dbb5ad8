// MarkBook: collects the marks of one stick and joins those that are the same.
#ifndef TILLWRIGHT_DRAW_STICK_MARK_BOOK_H_
#define TILLWRIGHT_DRAW_STICK_MARK_BOOK_H_

#include <string>
#include <string_view>
#include <vector>

#include "draw/stick/place.h"
#include "tillwright/stick.h"

namespace tillwright {

// The order of ids in a mark: those of one letter by their numbers.
[[nodiscard]] bool IdBefore(const std::string& a, const std::string& b);

class MarkBook {
 public:
  // An edge, of that part if any. `id` may be empty: the case or the opening.
  void Edge(StickLane lane, const StickPlace& place, std::string id, std::string what,
            std::string part = {}) {
    Add(lane, place, std::move(id), std::move(what), std::move(part), false);
  }
  // A line to work to.
  void Line(StickLane lane, const StickPlace& place, std::string id, std::string what) {
    Add(lane, place, std::move(id), std::move(what), {}, true);
  }
  void Span(StickSpan span) { spans_.push_back(std::move(span)); }

  // Sorts, and joins marks of the same lane, place and kind.
  void Finish();

  // True when each mark of the other is here too, but for the ids it is for: drawers that are
  // alike, a blank above a drawer as wide.
  [[nodiscard]] bool Holds(const MarkBook& other) const;
  // Takes the ids and sums of a book that it holds.
  void Take(const MarkBook& other);

  [[nodiscard]] const std::vector<StickMark>& marks() const { return marks_; }
  [[nodiscard]] const std::vector<StickSpan>& spans() const { return spans_; }

 private:
  void Add(StickLane lane, const StickPlace& place, std::string id, std::string what,
           std::string part, bool is_line) {
    marks_.push_back({lane,
                      place.at(),
                      {std::move(id)},
                      std::move(part),
                      std::move(what),
                      {place.sum()},
                      is_line});
  }

  std::vector<StickMark> marks_;
  std::vector<StickSpan> spans_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_MARK_BOOK_H_
