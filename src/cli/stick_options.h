// What the command line says of sticks, from text.
#ifndef TILLWRIGHT_CLI_STICK_OPTIONS_H_
#define TILLWRIGHT_CLI_STICK_OPTIONS_H_

#include <span>
#include <string>
#include <string_view>

#include "tillwright/stick.h"

namespace tillwright {

// The words of --mark.
[[nodiscard]] std::span<const std::string_view> StickMarkWords();
// Of --paper: the papers, and "roll".
[[nodiscard]] std::span<const std::string_view> StickPaperWords();

// Each takes an option's text and returns what is wrong with it; empty when all is well.
// REQUIRES for the first two: a word of StickMarkWords() and of StickPaperWords().
std::string ReadStickMark(std::string_view word, StickOptions& options);
std::string ReadStickPaper(std::string_view word, StickOptions& options);
std::string ReadMargin(std::string_view text, StickOptions& options);
std::string ReadRollWidth(std::string_view text, StickOptions& options);
std::string ReadMaxLength(std::string_view text, StickOptions& options);
// "37:32", setback and pitch; lengths as in a spec, millimeters without a unit.
std::string ReadScrews(std::string_view text, StickOptions& options);
// "x=150:149.6,y=150:150.3": true and measured lengths, for one axis or both.
std::string ReadCorrection(std::string_view text, StickOptions& options);

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_STICK_OPTIONS_H_
