// What heads every page, list and drawing alike.
#ifndef TILLWRIGHT_BANK_HEADINGS_H_
#define TILLWRIGHT_BANK_HEADINGS_H_

#include <string>
#include <string_view>

#include "tillwright/length_text.h"

namespace tillwright {

// The title, or what a piece without one is called.
[[nodiscard]] inline std::string TitleOr(std::string title) {
  return title.empty() ? "Drawer bank" : std::move(title);
}

// "inches", "millimeters".
[[nodiscard]] inline std::string_view UnitsWord(Unit unit) {
  return unit == Unit::kInch ? "inches" : "millimeters";
}

}  // namespace tillwright

#endif  // TILLWRIGHT_BANK_HEADINGS_H_
