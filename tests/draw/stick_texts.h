// What stands on sheets of sticks, read from their texts as a maker reads paper: the key's rows,
// and the distances beside the marks of a strip.
#ifndef TILLWRIGHT_TESTS_DRAW_STICK_TEXTS_H_
#define TILLWRIGHT_TESTS_DRAW_STICK_TEXTS_H_

#include <array>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "tillwright/stick.h"

namespace tillwright::testing {

// What is drawn, each label by itself, in order; whole when it was not cut, else as it is seen.
std::vector<std::string> TextsOf(const SheetGroup& group);

// Label of a part to its cells for length, width and thickness; from the key's tables, by where the
// texts stand.
std::map<std::string, std::array<std::string, 3>> KeyRows(const StickSheets& sheets);

class StickMarkTexts {
 public:
  explicit StickMarkTexts(const StickSheets& sheets);

  // Is a mark with this distance on a strip of that name ("BOX · Heights 2")?
  [[nodiscard]] bool Has(const std::string& strip, const std::string& distance) const;
  // The distance of a label, in mm; "≈" is taken as it stands.
  [[nodiscard]] double Millimeters(const std::string& distance) const;

 private:
  bool inches_ = false;
  std::map<std::string, std::set<std::string>> distances_;  // by the strips' names
};

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_DRAW_STICK_TEXTS_H_
