// Annotations: leaders, center lines, section marks, callouts, titles, bars.
//
// Every function adds primitives to a group and, where it helps placing other things, returns the
// box it covers.
#ifndef TILLWRIGHT_SHEET_ANNOTATION_H_
#define TILLWRIGHT_SHEET_ANNOTATION_H_

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "sheet/hatch.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// A note with a line to what it is about: from the tip to the elbow, then a short level shelf.
enum class LeaderEnd : std::uint8_t { kNone, kArrow, kDot };
struct LeaderNote {
  PaperPoint tip{};
  PaperPoint elbow{};
  LeaderEnd end = LeaderEnd::kArrow;
  bool text_left = false;            // text to the left of the elbow
  std::vector<std::string> lines{};  // the shelf meets the first
  std::string path{};                // of the dimension shown; may be empty
  double cap_height = 2.2;
};
PaperBox AddLeaderNote(SheetGroup& out, const LeaderNote& note, const TextMetrics& metrics);

// Lines of text below each other, the first baseline at `at`, 1.7 cap heights apart (ISO 3098-1
// asks for at least 1.4 [M]; stacked fractions need more).
struct TextBlock {
  PaperPoint at{};
  std::vector<std::string> lines{};
  double cap_height = 2.0;
  TextWeight weight = TextWeight::kRegular;
  double pitch = 2.1;  // cap heights from baseline to baseline
};
PaperBox AddTextBlock(SheetGroup& out, const TextBlock& block, const TextMetrics& metrics);

// A center line from `from` to `to`, longer by `overshoot` at both ends.
void AddCenterLine(SheetGroup& out, PaperPoint from, PaperPoint to, double overshoot);

// A cross of two center lines through a round thing, 2 mm past its edge (thin solid lines when the
// radius is below 3 mm).
void AddCenterMark(SheetGroup& out, PaperPoint center, double radius);

// A section plane seen edge on, from `first` to `last`, of which only the ends are drawn: a thick
// stroke, an arrow in the direction of sight (degrees, square to the plane) and the letter.
struct SectionMark {
  PaperPoint first{};
  PaperPoint last{};
  double sight = 0;
  std::string letter{};
  double stroke = 5;  // mm
};
PaperBox AddSectionMark(SheetGroup& out, const SectionMark& mark, const TextMetrics& metrics);

// A letter or number in a circle. The disc is filled with paper, so it may stand on lines, unless
// it is known to stand on none.
PaperDisc AddBalloon(SheetGroup& out, PaperPoint center, double radius, std::string_view text,
                     const TextMetrics& metrics, Tone fill = Tone::kPaper);

// A circle around a place that is drawn larger elsewhere, and a balloon joined to it.
struct DetailCallout {
  PaperPoint center{};
  double radius = 5;
  PaperPoint balloon{};
  std::string letter{};
};
PaperBox AddDetailCallout(SheetGroup& out, const DetailCallout& callout,
                          const TextMetrics& metrics);

// The name of a view, underlined, with its scale below and, for details, its balloon before it.
struct ViewTitle {
  PaperPoint at{};        // start of the title's baseline (of its balloon, if any)
  std::string letter{};   // of the balloon; empty: none
  std::string title{};    // shown as given
  std::string caption{};  // such as "SCALE 1:8"; may be empty
  double max_width = 0;   // mm; 0: any
};
PaperBox AddViewTitle(SheetGroup& out, const ViewTitle& title, const TextMetrics& metrics);

// The double-headed arrow that tells the direction of the grain.
void AddGrainArrow(SheetGroup& out, PaperPoint center, double length, PaperAxis along);

// A bar of black and white fields. `labels` stand under the ends of the fields and number one more
// than `fields`; empty labels are left out. `unit` follows the last.
struct ScaleBar {
  PaperPoint at{};    // top left corner
  double field = 10;  // mm on paper
  int fields = 2;
  std::vector<std::string> labels{};
  std::string unit{};
};
PaperBox AddScaleBar(SheetGroup& out, const ScaleBar& bar, const TextMetrics& metrics);

// A ruler of a known true length, to be measured after printing. Graduated in 1, 5 and 10 mm or in
// 1/16, 1/8, 1/4, 1/2 and 1 in.
enum class CheckUnit : std::uint8_t { kMillimeter, kInch };
struct CheckBar {
  PaperPoint at{};  // start of the base line
  PaperAxis along = PaperAxis::kHorizontal;
  CheckUnit unit = CheckUnit::kMillimeter;
  int length = 50;      // in the unit
  bool flip = false;    // graduations below or right of the base line
  std::string label{};  // such as "50 mm"; beyond the end; may be empty
  double cap_height = 1.8;
  bool coarse = false;  // graduated in 5 and 10 mm, or in 1/2 and 1 in
};
PaperBox AddCheckBar(SheetGroup& out, const CheckBar& bar, const TextMetrics& metrics);

// A cross in a circle, the same on both sides of a joint between tiles.
void AddRegistrationMark(SheetGroup& out, PaperPoint center, double radius);

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_ANNOTATION_H_
