#include <signal.h>
#include <unistd.h>

#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <exception>
#include <string>
#include <string_view>
#include <vector>

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

// One line on a terminal that says what is going on, once a run takes longer than a second.
class ProgressLine {
 public:
  void Show(std::string_view what) {
    constexpr std::chrono::seconds kPatience{1};
    if (std::chrono::steady_clock::now() - start_ < kPatience) return;
    WriteOut(STDERR_FILENO, kClear);
    WriteOut(STDERR_FILENO, what);
    WriteOut(STDERR_FILENO, " …");
    shown_ = true;
  }
  ~ProgressLine() {
    if (shown_) WriteOut(STDERR_FILENO, kClear);
  }

 private:
  static constexpr std::string_view kClear = "\r\x1b[K";
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
  bool shown_ = false;
};

ExitStatus RunShowingProgress(const std::vector<std::string>& args, Console& console) {
  tillwright::SystemFiles files;
  ProgressLine line;
  if (console.err_is_terminal) {
    console.progress = [&line](std::string_view what) { line.Show(what); };
  }
  const ExitStatus status = tillwright::Run(args, console, files);
  console.progress = nullptr;
  return status;
}

int Main(int argc, char** argv) {
  Console console;
  console.out_is_terminal = ::isatty(STDOUT_FILENO) == 1;
  console.err_is_terminal = ::isatty(STDERR_FILENO) == 1;
  console.in_is_terminal = ::isatty(STDIN_FILENO) == 1;
  console.no_color = IsSet("NO_COLOR", {}) || IsSet("TERM", "dumb");
  ExitStatus status = RunShowingProgress({argv + (argc > 0 ? 1 : 0), argv + argc}, console);
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
