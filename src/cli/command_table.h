// The commands and their options as data: one row each. The command line, its help and what is
// suggested for a misspelt word are made from these rows.
#ifndef TILLWRIGHT_CLI_COMMAND_TABLE_H_
#define TILLWRIGHT_CLI_COMMAND_TABLE_H_

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "cli/options.h"
#include "cli/program.h"

namespace tillwright {

// How often an option may stand.
enum class Often : std::uint8_t { kOnce, kRepeated, kWithCommas };

// Takes the text of an option, once for each that is given; returns what is wrong with it, or
// nothing.
class OptionTaker {
 public:
  using Set = void (*)(std::string_view text, Options& options);
  using Read = std::string (*)(std::string_view text, Options& options);
  constexpr OptionTaker(Set set) : set_(set) {}  // whatever it is
  constexpr OptionTaker(Read read) : read_(read) {}
  std::string operator()(std::string_view text, Options& options) const {
    if (read_ != nullptr) return read_(text, options);
    set_(text, options);
    return {};
  }

 private:
  Set set_ = nullptr;
  Read read_ = nullptr;
};

struct OptionRow {
  const char* name;      // "--format", "-o,--output"; without a dash it stands by its place
  const char* argument;  // "FORMAT"; empty for a flag, and for what stands by its place
  const char* help;
  OptionTaker take;
  std::span<const std::string_view> (*choices)() = nullptr;  // the only texts it takes; null: any
  bool required = false;
  Often often = Often::kOnce;
  bool any_case = false;  // choices may be typed in capitals or small letters

  [[nodiscard]] constexpr bool IsPlaced() const { return *name != '-'; }
  [[nodiscard]] constexpr bool IsFlag() const { return !IsPlaced() && *argument == '\0'; }
};

struct CommandRow {
  const char* name;
  const char* about;  // one line
  const char* example;
  std::span<const OptionRow> options;
  ExitStatus (*run)(Program&);
};

[[nodiscard]] std::span<const CommandRow> Commands();
// What every command takes.
[[nodiscard]] std::span<const OptionRow> CommonOptions();

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_COMMAND_TABLE_H_
