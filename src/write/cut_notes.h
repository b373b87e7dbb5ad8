// The cuts of parts in words, for tables: each text once, and a letter for it.
#ifndef TILLWRIGHT_WRITE_CUT_NOTES_H_
#define TILLWRIGHT_WRITE_CUT_NOTES_H_

#include <string>
#include <vector>

#include "tillwright/length_text.h"
#include "tillwright/parts.h"

namespace tillwright {

// "groove 7/32 wide, 1/4 deep, 1/4 up from the lower edge; …"; empty for a part without cuts.
[[nodiscard]] std::string CutWords(const Part& part, Unit unit);
// The same, and the dados that take dividers and partitions.
[[nodiscard]] std::string AllCutWords(const Bank& bank, const Part& part);

// The boards it is glued up from, "5 of 5 3/8; 4 joints"; empty for a part of one board.
[[nodiscard]] std::string BoardWords(const CutLine& line, Unit unit);

class CutNotes {
 public:
  // The letter of what CutWords() or AllCutWords() gave, or nothing when that is empty.
  std::string Letter(const std::string& words);

  // Every text behind its letter: "a: dado …".
  [[nodiscard]] std::vector<std::string> Lines() const;
  // The same in lines that fit a table.
  [[nodiscard]] std::string ToText() const;

 private:
  std::vector<std::string> notes_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_WRITE_CUT_NOTES_H_
