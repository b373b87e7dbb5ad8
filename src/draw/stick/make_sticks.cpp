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

// The lines as long as the first, where one drawer of each stands for the next.
std::string AlikeOf(const Bank& bank, const Shared& shared) {
  std::string text;
  const std::size_t length = shared.lines[0].size();
  for (std::size_t i = 1; i < shared.lines.size() && length > 1; ++i) {
    if (shared.lines[i].size() != length) continue;
    if (!text.empty()) text += "; ";
    text += IdsOf(bank, shared.lines[i]);
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
    Stick& worktop = Add(StickAxis::kWidth, "worktop", "Worktop", WorktopMarks(bank_));
    worktop.datum = "worktop left";
    DropNeedless();
    return std::move(sticks_);
  }

 private:
  Stick& Add(StickAxis axis, std::string name, std::string title, const MarkBook& book) {
    Stick& stick = sticks_.emplace_back();
    stick.axis = axis;
    stick.name = std::move(name);
    stick.sign = title;
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
        return own.lane == mark.lane && own.at == mark.at && own.part == mark.part &&
               own.what == mark.what && HasAll(own.ids, mark.ids);
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

  // Adds a line to the one that says as much, or takes over one that says less.
  static void Share(Shared line, std::vector<Shared>& all) {
    for (Shared& shared : all) {
      const bool holds = shared.book.Holds(line.book);
      if (!holds && !line.book.Holds(shared.book)) continue;
      if (!holds) std::swap(shared.book, line.book);
      shared.book.Take(line.book);
      shared.lines.insert(holds ? shared.lines.end() : shared.lines.begin(), line.lines.begin(),
                          line.lines.end());
      return;
    }
    all.push_back(std::move(line));
  }

  void AddLines(StickAxis axis, Axis along, const std::string& datum) {
    std::vector<Shared> all;
    std::vector<BankLine> lines = LinesAcross(bank_, along);
    if (along == Axis::kX) std::ranges::reverse(lines);  // rows from the top, as they are read
    for (const BankLine& line : lines) {
      MarkBook book = along == Axis::kY ? HeightMarks(bank_, line) : WidthMarks(bank_, line);
      Share({std::move(book), {line.spaces}}, all);
    }
    const bool up = along == Axis::kY;
    for (std::size_t i = 0; i < all.size(); ++i) {
      const std::string number = all.size() > 1 ? std::to_string(i + 1) : "";
      const std::string sign = (up ? "Heights" : "Widths") + (number.empty() ? "" : " " + number);
      const std::string stem = (up ? "heights" : "widths") + (number.empty() ? "" : "-" + number);
      Stick& stick = Add(axis, stem, sign, all[i].book);
      stick.title += (number.empty() ? " " : ": ") + TitleOf(bank_, all[i]);
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
  std::string name;
  for (const std::string& word : {part, list.ToText(), what}) {
    if (!name.empty() && !word.empty()) name += ' ';
    name += word;
  }
  return name;
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
