// Straight lines across the bank: what a stick that stands, or lies, in one place meets.
#ifndef TILLWRIGHT_DRAW_STICK_LINES_ACROSS_H_
#define TILLWRIGHT_DRAW_STICK_LINES_ACROSS_H_

#include <vector>

#include "tillwright/bank.h"

namespace tillwright {

struct BankLine {
  std::vector<int> spaces;   // indices into Bank::spaces, from the datum on
  std::vector<int> members;  // into Bank::dividers: those it crosses, and those that end beside it
};

// Upright lines (`along` kY: for heights) or level ones (kX: for widths), from the left or from the
// bottom, as few as meet every space and every two neighbors. Never empty.
[[nodiscard]] std::vector<BankLine> LinesAcross(const Bank& bank, Axis along);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_LINES_ACROSS_H_
