#include <algorithm>
#include <array>

#include "bank/id_list.h"
#include "draw/stick/axis_marks.h"
#include "tillwright/stick.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, kStickLanes> kLaneWords{"case", "box", "front"};

std::string IdsOf(const Bank& bank, std::vector<int> spaces) {
  std::ranges::sort(spaces);  // reading order
  IdList ids;
  for (const int i : spaces) ids.Add(ToText(bank.spaces[static_cast<std::size_t>(i)].id));
  return ids.ToText();
}

// Lines whose marks differ by ids alone share a book.
struct Shared {
  MarkBook book;
  std::vector<std::vector<int>> lines;  // the spaces of each
};

// "D1-D6" for columns; rows of one drawer each are told together.
std::string TitleOf(const Bank& bank, const Shared& shared) {
  const bool single =
      std::ranges::all_of(shared.lines, [](const auto& line) { return line.size() == 1; });
  if (!single) return IdsOf(bank, shared.lines[0]);
  std::vector<int> all;
  for (const std::vector<int>& line : shared.lines) all.push_back(line[0]);
  return IdsOf(bank, all);
}

// The other lines, where one drawer of each stands for the next.
std::string AlikeOf(const Bank& bank, const Shared& shared) {
  std::string text;
  for (std::size_t i = 1; i < shared.lines.size() && shared.lines[0].size() > 1; ++i) {
    text += (i > 1 ? ", " : "") + IdsOf(bank, shared.lines[i]);
  }
  return text;
}

bool HasAll(const std::vector<std::string>& ids, const std::vector<std::string>& wanted) {
  return std::ranges::all_of(
      wanted, [&](const std::string& id) { return std::ranges::find(ids, id) != ids.end(); });
}

class StickMaker {
 public:
  StickMaker(const Bank& bank, const StickOptions& options) : bank_(bank), options_(options) {}

  std::vector<Stick> Make() {
    const bool cased = bank_.casework.has_value();
    AddLines(StickAxis::kHeight, Axis::kY, cased ? "case base" : "opening bottom");
    AddLines(StickAxis::kWidth, Axis::kX, cased ? "case left" : "opening left");
    Stick& depths = Add(StickAxis::kDepth, "depths", "Depths", DepthMarks(bank_, options_.screws));
    depths.datum = "case front edge";
    DropNeedless();
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

  // Sticks that say nothing that another does not say: rows of open spaces, lanes not asked for.
  void DropNeedless() {
    for (std::size_t i = sticks_.size(); i-- > 0;) {
      const bool needless = std::ranges::any_of(sticks_, [&](const Stick& other) {
        return &other != &sticks_[i] && other.axis == sticks_[i].axis && Holds(other, sticks_[i]);
      });
      if (sticks_[i].marks.empty() || needless) {
        sticks_.erase(sticks_.begin() + static_cast<std::ptrdiff_t>(i));
      }
    }
  }

  static bool Holds(const Stick& stick, const Stick& part) {
    return std::ranges::all_of(part.marks, [&](const StickMark& mark) {
      return std::ranges::any_of(stick.marks, [&](const StickMark& own) {
        return own.lane == mark.lane && own.at == mark.at && own.what == mark.what &&
               HasAll(own.ids, mark.ids);
      });
    });
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
    std::vector<BankLine> lines = LinesAcross(bank_, along);
    if (along == Axis::kX) std::ranges::reverse(lines);  // rows from the top, as they are read
    for (const BankLine& line : lines) {
      MarkBook book = along == Axis::kY ? HeightMarks(bank_, line) : WidthMarks(bank_, line);
      const auto like =
          std::ranges::find_if(all, [&](const Shared& s) { return s.book.IsLike(book); });
      if (like == all.end()) {
        all.push_back({std::move(book), {line.spaces}});
      } else {
        like->book.Take(book);
        like->lines.push_back(line.spaces);
      }
    }
    const std::string word = along == Axis::kY ? "heights" : "widths";
    for (std::size_t i = 0; i < all.size(); ++i) {
      const std::string number = all.size() > 1 ? "-" + std::to_string(i + 1) : "";
      const std::string title =
          (along == Axis::kY ? "Heights " : "Widths ") + TitleOf(bank_, all[i]);
      Stick& stick = Add(axis, word + number, title, all[i].book);
      stick.datum = datum;
      stick.alike = AlikeOf(bank_, all[i]);
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
