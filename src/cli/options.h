// What a command line says, once read.
#ifndef TILLWRIGHT_CLI_OPTIONS_H_
#define TILLWRIGHT_CLI_OPTIONS_H_

#include <optional>
#include <string>
#include <vector>

#include "tillwright/draw.h"
#include "tillwright/stick.h"

namespace tillwright {

enum class Command { kSize, kCheck, kDraw, kStick, kParts, kStock, kShop, kWhy, kNew, kSchema };
enum class ColorChoice { kAuto, kAlways, kNever };

struct Options {
  Command command = Command::kSize;
  std::string spec;                // a path, or "-"
  std::vector<std::string> specs;  // stock: all of them, the first in `spec` too
  std::string output;              // -o: a path, "-" or empty
  std::string path;                // why: the dimension
  std::string format;              // draw, stick, parts: the first of theirs unless given
  std::string sheet;               // check: the folder for the fitting sheet
  DrawOptions draw;
  StickOptions stick;
  bool json = false;
  ColorChoice color = ColorChoice::kAuto;
};

// The options, or why there are none to act on: help or version text (status 0), or what is wrong
// with the command line (status 2).
struct ParsedOptions {
  std::optional<Options> options;
  std::string text;
  bool is_error = false;
  bool json = false;  // --json was among the arguments, so the error is wanted as JSON
};

[[nodiscard]] ParsedOptions ParseOptions(const std::vector<std::string>& args);

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_OPTIONS_H_
