#include "draw/stick/axis_marks.h"

#include <algorithm>

#include "draw/dimension_paths.h"

namespace tillwright {

std::string Under(const std::string& id, std::string_view name) {
  std::string path = id;
  path += '.';
  path += name;
  return path;
}

bool ScrewsIntoSide(SlideType type) {
  return type == SlideType::kSideMount || type == SlideType::kUndermount;
}

void AddGaps(MarkBook& book, const Bank& bank, const BankLine& line, Axis axis, Length origin) {
  const auto on_line = [&](const GapEnd& end) {
    if (end.kind == GapEnd::Kind::kOpening) return true;
    const std::vector<int>& known = end.kind == GapEnd::Kind::kSpace ? line.spaces : line.members;
    return std::ranges::find(known, end.index) != known.end();
  };
  for (const Gap& gap : bank.gaps) {
    if (gap.axis != axis || !on_line(gap.from) || !on_line(gap.to)) continue;
    const Length from = origin + gap.at;
    book.Span({StickSpan::Kind::kGap,
               StickLane::kFront,
               from,
               from + gap.size,
               {},
               "",
               GapPath(bank, gap)});
  }
}

}  // namespace tillwright
