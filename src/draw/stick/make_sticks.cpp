#include <algorithm>
#include <array>

#include "bank/id_list.h"
#include "draw/stick/axis_marks.h"
#include "tillwright/stick.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, kStickLanes> kLaneWords{"case", "box", "front"};

std::string IdsOf(const Bank& bank, const BankLine& line) {
  std::vector<int> spaces = line.spaces;
  std::ranges::sort(spaces);  // reading order
  IdList ids;
  for (const int i : spaces) ids.Add(ToText(bank.spaces[static_cast<std::size_t>(i)].id));
  return ids.ToText();
}

// Lines whose marks differ by ids alone share a book.
struct Shared {
  MarkBook book;
  std::vector<std::string> ids;  // of each line
};

class StickMaker {
 public:
  StickMaker(const Bank& bank, const StickOptions& options) : bank_(bank), options_(options) {}

  std::vector<Stick> Make() {
    const bool cased = bank_.casework.has_value();
    AddLines(StickAxis::kHeight, Axis::kY, cased ? "case base" : "opening bottom");
    AddLines(StickAxis::kWidth, Axis::kX, cased ? "case left" : "opening left");
    Stick& depths = Add(StickAxis::kDepth, "depths", "Depths", DepthMarks(bank_, options_.screws));
    depths.datum = "case front edge";
    return std::move(sticks_);
  }

 private:
  Stick& Add(StickAxis axis, std::string name, std::string title, const MarkBook& book) {
    Stick& stick = sticks_.emplace_back();
    stick.axis = axis;
    stick.name = std::move(name);
    stick.title = std::move(title);
    stick.marks = book.marks();
    stick.spans = book.spans();
    for (StickMark& mark : stick.marks) {
      if (mark.ids == std::vector<std::string>{""}) mark.ids.clear();
    }
    for (const StickLane lane : {StickLane::kCase, StickLane::kBox, StickLane::kFront}) {
      if (IsWanted(lane) && HasWork(stick, lane)) continue;
      std::erase_if(stick.marks, [lane](const StickMark& mark) { return mark.lane == lane; });
      std::erase_if(stick.spans, [lane](const StickSpan& span) { return span.lane == lane; });
    }
    return stick;
  }

  // The case is marked always; boxes and fronts where there are any.
  static bool HasWork(const Stick& stick, StickLane lane) {
    return lane == StickLane::kCase ||
           std::ranges::any_of(stick.marks, [lane](const StickMark& mark) {
             return mark.lane == lane && !mark.ids.empty();
           });
  }

  [[nodiscard]] bool IsWanted(StickLane lane) const {
    return options_.lanes.empty() ||
           std::ranges::find(options_.lanes, lane) != options_.lanes.end();
  }

  void AddLines(StickAxis axis, Axis along, const std::string& datum) {
    std::vector<Shared> all;
    for (const BankLine& line : LinesAcross(bank_, along)) {
      MarkBook book = along == Axis::kY ? HeightMarks(bank_, line) : WidthMarks(bank_, line);
      const auto like =
          std::ranges::find_if(all, [&](const Shared& s) { return s.book.IsLike(book); });
      if (like == all.end()) {
        all.push_back({std::move(book), {IdsOf(bank_, line)}});
      } else {
        like->book.Take(book);
        like->ids.push_back(IdsOf(bank_, line));
      }
    }
    const std::string word = along == Axis::kY ? "heights" : "widths";
    for (std::size_t i = 0; i < all.size(); ++i) {
      const std::string number = all.size() > 1 ? "-" + std::to_string(i + 1) : "";
      const std::string title = (along == Axis::kY ? "Heights " : "Widths ") + all[i].ids[0];
      Stick& stick = Add(axis, word + number, title, all[i].book);
      stick.datum = datum;
      for (std::size_t k = 1; k < all[i].ids.size(); ++k) {
        stick.alike += (k > 1 ? ", " : "") + all[i].ids[k];
      }
    }
  }

  const Bank& bank_;
  const StickOptions& options_;
  std::vector<Stick> sticks_;
};

}  // namespace

std::string_view ToText(StickLane lane) { return kLaneWords[static_cast<std::size_t>(lane)]; }

std::string StickMark::Name() const {
  IdList list;
  for (const std::string& id : ids) list.Add(id);
  const std::string text = list.ToText();
  return text.empty() ? what : text + " " + what;
}

bool Stick::Has(StickLane lane) const {
  return std::ranges::find(marks, lane, &StickMark::lane) != marks.end();
}

Length Stick::Begin(StickLane lane) const {
  Length begin;
  for (const StickMark& mark : marks) {
    if (mark.lane == lane) begin = Min(begin, mark.at);
  }
  return begin;
}

Length Stick::End(StickLane lane) const {
  Length end;
  for (const StickMark& mark : marks) {
    if (mark.lane == lane) end = Max(end, mark.at);
  }
  return end;
}

std::vector<Stick> MakeSticks(const Bank& bank, const StickOptions& options) {
  return StickMaker(bank, options).Make();
}

}  // namespace tillwright
