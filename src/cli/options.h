// What a command line says, once read.
#ifndef TILLWRIGHT_CLI_OPTIONS_H_
#define TILLWRIGHT_CLI_OPTIONS_H_

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "tillwright/draw.h"
#include "tillwright/stick.h"

namespace tillwright {

enum class ColorChoice : std::uint8_t { kAuto, kAlways, kNever };
// What --format names; each command takes some of them.
enum class FileFormat : std::uint8_t { kSvg, kPdf, kPng, kTable, kCsv, kHardwareCsv, kDxf };
template <>
std::span<const std::string_view> Words<ColorChoice>();
template <>
std::span<const std::string_view> Words<FileFormat>();

struct Options {
  std::vector<std::string> specs;    // paths, or "-"; none for commands that read none
  std::string output;                // -o: a path, "-" or empty
  std::string path;                  // why: the dimension
  std::optional<FileFormat> format;  // as given
  std::string sheet;                 // check: the folder for the fitting sheet
  DrawOptions draw;
  StickOptions stick;
  bool json = false;
  ColorChoice color = ColorChoice::kAuto;
};

// The command and its options, or why there are none to act on: help or version text (status 0), or
// what is wrong with the command line (status 2).
struct CommandRow;
struct ParsedOptions {
  const CommandRow* command = nullptr;
  Options options;
  std::string text;
  bool is_error = false;
  bool json = false;  // --json was among the arguments, so the error is wanted as JSON
};

[[nodiscard]] ParsedOptions ParseOptions(const std::vector<std::string>& args);

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_OPTIONS_H_
