// Layout faults: what a good draughtsman would see on the finished sheet and put right.
//
// Found on the scene, not on pixels: labels by their measured boxes, lines by their geometry and
// pen. The rules:
//   kNotFinite     a coordinate or size is not a finite number (nothing else is then said of it)
//   kOutsidePage   something reaches past the edge of the paper
//   kOutsideFrame  a label reaches past the frame
//   kLabelsTouch   two labels are less than 0.7 mm apart
//   kLineOnLabel   a stroke, arc or filled shape comes within 0.25 mm of a label's ink (a paper
//                  fill only if it is drawn after the label and hides it); what a paper fill below
//                  the label hides all round it does not count
//   kMissingGlyph  the font cannot draw a character
// Labels with no ink (empty text) are ignored.
#ifndef TILLWRIGHT_TESTS_SUPPORT_LAYOUT_FAULTS_H_
#define TILLWRIGHT_TESTS_SUPPORT_LAYOUT_FAULTS_H_

#include <cstdint>
#include <string>
#include <vector>

#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

inline constexpr double kLabelClearance = 0.7;    // mm between labels
inline constexpr double kStrokeClearance = 0.25;  // mm between a label and the edge of a stroke

enum class LayoutFaultKind : std::uint8_t {
  kNotFinite,
  kOutsidePage,
  kOutsideFrame,
  kLabelsTouch,
  kLineOnLabel,
  kMissingGlyph,
};

struct LayoutFault {
  LayoutFaultKind kind = LayoutFaultKind::kNotFinite;
  std::string group;    // id of the group
  std::string message;  // names the label or primitive and where it is, in mm
  PaperPoint at;
};

[[nodiscard]] std::vector<LayoutFault> FindLayoutFaults(const Sheet& sheet,
                                                        const TextMetrics& metrics);

// One line a fault, for tests.
[[nodiscard]] std::string DescribeFaults(const std::vector<LayoutFault>& faults);

}  // namespace tillwright

#endif  // TILLWRIGHT_TESTS_SUPPORT_LAYOUT_FAULTS_H_
