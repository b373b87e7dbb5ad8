#include <signal.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <exception>
#include <string_view>

#include "cli/app.h"

namespace {

using tillwright::Console;
using tillwright::ExitStatus;

bool IsSet(const char* name, std::string_view dumb) {
  const char* value = std::getenv(name);
  if (value == nullptr) return false;
  return dumb.empty() ? *value != '\0' : value == dumb;
}

// False when the text could not be written; a reader that has gone away is no failure.
bool WriteOut(int fd, std::string_view text) {
  while (!text.empty()) {
    const ssize_t n = ::write(fd, text.data(), text.size());
    if (n < 0 && errno == EINTR) continue;
    if (n < 0) return errno == EPIPE;
    text.remove_prefix(static_cast<std::size_t>(n));
  }
  return true;
}

int Main(int argc, char** argv) {
  Console console;
  console.out_is_terminal = ::isatty(STDOUT_FILENO) == 1;
  console.err_is_terminal = ::isatty(STDERR_FILENO) == 1;
  console.in_is_terminal = ::isatty(STDIN_FILENO) == 1;
  console.no_color = IsSet("NO_COLOR", {}) || IsSet("TERM", "dumb");
  tillwright::SystemFiles files;
  ExitStatus status = tillwright::Run({argv + (argc > 0 ? 1 : 0), argv + argc}, console, files);
  WriteOut(STDERR_FILENO, console.err);
  if (!WriteOut(STDOUT_FILENO, console.out)) {
    WriteOut(STDERR_FILENO, "tillwright: error: standard output cannot be written\n");
    status = ExitStatus::kFile;
  }
  return static_cast<int>(status);
}

}  // namespace

int main(int argc, char** argv) {
  ::signal(SIGPIPE, SIG_IGN);
  try {
    return Main(argc, argv);
  } catch (const std::exception& error) {
    WriteOut(STDERR_FILENO, "tillwright: internal error: ");
    WriteOut(STDERR_FILENO, error.what());
    WriteOut(STDERR_FILENO, "\n");
    return static_cast<int>(ExitStatus::kInternal);
  }
}
