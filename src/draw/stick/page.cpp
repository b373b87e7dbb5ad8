#include "draw/stick/page.h"

#include <algorithm>
#include <cmath>

#include "draw/stick/strip_text.h"
#include "sheet/annotation.h"
#include "sheet/rich_text.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr double kBarRoom = 12;  // mm across a pair of bars, labels included
constexpr double kWordsCap = 1.7;
constexpr double kWordsPitch = 3.7;
constexpr double kHeadCap = 2.3;
constexpr double kHeadRoom = 4.6;

constexpr std::string_view kCaution =
    "Cut paper on a board, away from your hand; try the sticks on one drawer first; clamp the work "
    "and wear eye protection when you drill or rout.";

constexpr std::string_view kFewWords =
    "Print at 100 %, one-sided. Before you cut, measure the bars both ways. If they are wrong, "
    "turn off \"fit to page\"; if still wrong: --correct x=150:MEASURED,y=150:MEASURED. Check "
    "joints and totals with a tape. More on page 1.";

// A pair of bars back to back: how long they are, in mm and in inches.
struct BarPair {
  int millimeters = 0;
  int inches = 0;
};

// As long as the room allows, but 150 mm and 6 in wherever they fit.
BarPair PairFor(double room, double stretch) {
  const double true_room = room / stretch;
  BarPair pair{static_cast<int>(true_room / 10) * 10, static_cast<int>(true_room / 25.4)};
  pair.millimeters = std::min(pair.millimeters, 500);
  pair.inches = std::min(pair.inches, 20);
  return pair;
}

// Makes up for the printer: what AddCheckBar() drew from `start` on.
void StretchFrom(SheetGroup& group, PaperPoint start, const Correction& correction) {
  const auto move = [&](PaperPoint& p) {
    p.x = start.x + (p.x - start.x) * correction.x;
    p.y = start.y + (p.y - start.y) * correction.y;
  };
  for (Primitive& primitive : group.primitives) {
    if (Polyline* line = std::get_if<Polyline>(&primitive)) {
      for (PaperPoint& p : line->points) move(p);
    } else if (HatchLines* lines = std::get_if<HatchLines>(&primitive)) {
      for (PaperSegment& s : lines->segments) {
        move(s.from);
        move(s.to);
      }
    }
  }
}

std::string ScaleWords(const StickPage& page) {
  std::string words =
      "Print at 100 % (actual size), one-sided, all pages in one run. Before you cut, measure the "
      "bars both ways with a steel rule. If they are wrong, turn off \"fit to page\" and print "
      "again; if still wrong: give what you measured, --correct x=150:MEASURED,y=150:MEASURED (mm; "
      "across, up).";
  if (!page.correction.IsNone()) words += " This print is corrected: the bars must measure right.";
  return words;
}

// What reading a bar to a quarter of a millimeter leaves open over the longest stick.
std::string BudgetWords(const StickPage& page) {
  const Length doubt = PartBelow(page.longest, 600);  // 0.25 mm in 150 mm
  const Length tenth = Length::Picometers(Length::kPerMillimeter / 10);
  return "A bar of 150 mm read to 0.25 mm leaves about " + FormatMillimeters(CeilTo(doubt, tenth)) +
         " mm of doubt over " + FormatWithUnit(page.longest, page.style.unit) +
         ", and paper swells with humidity: check each joint against a tape from the datum, and "
         "check each total; the figure beside a mark is the exact one.";
}

// Height of bars and words.
double FootRoom(const StickPage& page) {
  return kBarRoom + kHeadRoom + static_cast<double>(page.words.size()) * kWordsPitch + 1.5;
}

class PageMaker {
 public:
  PageMaker(const StickPage& page, const TextMetrics& metrics) : page_(page), metrics_(metrics) {}

  Sheet Make(int number, int of) {
    sheet_.width = page_.width;
    sheet_.height = page_.height;
    sheet_.name = "sticks-" + std::to_string(number);
    sheet_.title =
        page_.title + ": story sticks, " + std::to_string(number) + " of " + std::to_string(of);
    sheet_.frame = Inner();
    Bars();
    Text(number, of);
    return std::move(sheet_);
  }

 private:
  [[nodiscard]] PaperBox Inner() const {
    return {page_.margin, page_.margin, page_.width - page_.margin, page_.height - page_.margin};
  }

  SheetGroup& Group(const char* id, const char* title) { return AddGroup(sheet_, id, title, 0); }

  void Bars() {
    const PaperBox inner = Inner();
    const double foot = FootRoom(page_);
    SheetGroup& up = Group("bar-up", "Bars to measure, up the page");
    const double room = inner.Height() - foot - 1;
    const BarPair tall = PairFor(room, page_.correction.y);
    const PaperPoint top{inner.left + kBarRoom / 2, inner.top + 0.5};
    Pair(up, PaperAxis::kVertical, top, tall);
    SheetGroup& across = Group("bar-across", "Bars to measure, across the page");
    const PaperPoint left{inner.left + 0.5, inner.bottom - foot + kBarRoom / 2 + 0.4};
    Pair(across, PaperAxis::kHorizontal, left, PairFor(inner.Width() - 1, page_.correction.x));
  }

  void Pair(SheetGroup& out, PaperAxis along, PaperPoint at, const BarPair& pair) {
    SheetGroup bars;
    if (pair.millimeters > 0) {
      AddCheckBar(bars, {.at = at, .along = along, .length = pair.millimeters, .coarse = true},
                  metrics_);
    }
    if (pair.inches > 0) {
      AddCheckBar(bars,
                  {.at = at,
                   .along = along,
                   .unit = CheckUnit::kInch,
                   .length = pair.inches,
                   .flip = true,
                   .coarse = true},
                  metrics_);
    }
    StretchFrom(bars, at, page_.correction);
    for (Primitive& primitive : bars.primitives) out.primitives.push_back(std::move(primitive));
    BarLabels(out, along, at, {150, pair.millimeters}, 1, " mm", true);
    BarLabels(out, along, at, {6, pair.inches}, 25.4, " in", false);
  }

  // What the bar measures from its start to these graduations.
  void BarLabels(SheetGroup& out, PaperAxis along, PaperPoint at, std::vector<int> numbers,
                 double unit, const char* word, bool before) {
    const bool level = along == PaperAxis::kHorizontal;
    const double stretch = level ? page_.correction.x : page_.correction.y;
    constexpr double kAway = 2.4 + 0.9;  // past the graduations
    const int longest = numbers[1];
    if (longest < numbers[0] || longest * unit - numbers[0] * unit < 16)
      numbers.erase(numbers.begin() + (longest >= numbers[0] ? 1 : 0));
    for (const int number : numbers) {
      if (number == 0) continue;
      LabelStyle style{.cap_height = 1.8, .anchor = TextAnchor::kRight};
      style.turn = level ? TextTurn::kLevel : TextTurn::kUpward;
      const double reach = number * unit * stretch;
      const double off = (before ? -1 : 1) * (kAway + 0.75);
      const PaperPoint end =
          level ? PaperPoint{at.x + reach, at.y + off} : PaperPoint{at.x + off, at.y + reach};
      if (!level) style.anchor = TextAnchor::kLeft;  // reads upward from the graduation
      out.primitives.emplace_back(
          MakePlainLabel(metrics_, "0 to " + std::to_string(number) + word, style, end));
    }
  }

  void Text(int number, int of) {
    const PaperBox inner = Inner();
    SheetGroup& out = Group("words", "How to print and check");
    double y = inner.bottom - FootRoom(page_) + kBarRoom + kHeadRoom - 1.2;
    const std::string count = std::to_string(number) + " of " + std::to_string(of);
    LabelStyle style{.cap_height = kHeadCap, .weight = TextWeight::kBold};
    style.level = TextLevel::kBaseline;
    style.anchor = TextAnchor::kRight;
    const Label page = MakePlainLabel(metrics_, "page " + count, style, {inner.right, y});
    style.anchor = TextAnchor::kLeft;
    style.max_width = inner.Width() - page.width - 6;
    out.primitives.emplace_back(MakePlainLabel(metrics_, page_.title, style, {inner.left, y}));
    out.primitives.emplace_back(page);
    AddTextBlock(out,
                 {.at = {inner.left, y + kWordsPitch + 0.6},
                  .lines = page_.words,
                  .cap_height = kWordsCap,
                  .pitch = kWordsPitch / kWordsCap},
                 metrics_);
  }

  const StickPage& page_;
  const TextMetrics& metrics_;
  Sheet sheet_;
};

}  // namespace

void SetWords(StickPage& page, const TextMetrics& metrics) {
  page.words =
      WrapText(metrics, ScaleWords(page) + " " + BudgetWords(page) + " " + std::string(kCaution),
               {.cap_height = kWordsCap}, page.width - 2 * page.margin);
}

void SetFewWords(StickPage& page, const TextMetrics& metrics) {
  page.words =
      WrapText(metrics, kFewWords, {.cap_height = kWordsCap}, page.width - 2 * page.margin);
}

PaperBox PieceSpace(const StickPage& page) {
  return {page.margin + kBarRoom + 1, page.margin + 0.5, page.width - page.margin - 0.3,
          page.height - page.margin - FootRoom(page)};
}

Sheet MakePage(const StickPage& page, int number, int of, const TextMetrics& metrics) {
  return PageMaker(page, metrics).Make(number, of);
}

}  // namespace tillwright
