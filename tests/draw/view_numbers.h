// Numbers in the texts of labels, and what they should be.
#ifndef TILLWRIGHT_TESTS_DRAW_VIEW_NUMBERS_H_
#define TILLWRIGHT_TESTS_DRAW_VIEW_NUMBERS_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/sheet.h"

namespace tillwright::testing {

// "14 5/8", "3/4", "-5/8", "390.5": the numbers of a text as they stand in it, "≈ " included. Digits
// that touch letters (D1) are no numbers.
std::vector<std::string> NumbersIn(std::string_view text);

std::vector<std::string> PathsOf(const Label& label);

// What is wrong with the numbers of a label that carries paths; empty when all is well. A label with
// k numbers names k paths for each thing it is about.
std::string FaultOf(const Bank& bank, const Label& label);

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_DRAW_VIEW_NUMBERS_H_
