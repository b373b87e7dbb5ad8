// The command line: one function from arguments to exit status, with everything outside handed in.
#ifndef TILLWRIGHT_CLI_APP_H_
#define TILLWRIGHT_CLI_APP_H_

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/files.h"

namespace tillwright {

// Exit statuses: the contract of specs/README.md.
enum class ExitStatus : int {
  kOk = 0,          // solved, and no check fails
  kCheckFails = 1,  // solved, but a check fails; the output is complete
  kUsage = 2,       // the command line is wrong
  kSpec = 3,        // the spec is wrong, or cannot be solved
  kFile = 4,        // a file cannot be read or written
  kInternal = 70    // a bug
};

// What the program is connected to.
struct Console {
  std::string out;  // results, for standard output
  std::string err;  // messages, for standard error
  bool out_is_terminal = false;
  bool err_is_terminal = false;
  bool in_is_terminal = false;
  bool no_color = false;  // NO_COLOR is set and not empty, or TERM is "dumb"
  // Told what is being done; shown only where someone waits. May be empty.
  std::function<void(std::string_view)> progress;
};

// Runs one command. `args` are without the program's name.
ExitStatus Run(const std::vector<std::string>& args, Console& console, Files& files);

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_APP_H_
