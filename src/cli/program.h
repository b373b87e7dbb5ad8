// What every command does alike: reading the spec, solving it, telling what is wrong, writing
// files.
#ifndef TILLWRIGHT_CLI_PROGRAM_H_
#define TILLWRIGHT_CLI_PROGRAM_H_

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/app.h"
#include "cli/options.h"
#include "tillwright/bank.h"
#include "tillwright/check.h"
#include "tillwright/diagnostic.h"
#include "tillwright/spec.h"

namespace tillwright {

// A spec, and what came of it.
struct Solved {
  Spec spec;
  Bank bank;
  std::vector<Finding> findings;
};

class Program {
 public:
  Program(const Options& options, Console& console, Files& files)
      : options_(options), console_(console), files_(files) {
    if (!options.specs.empty()) path_ = options.specs.front();
  }

  [[nodiscard]] const Options& options() const { return options_; }
  [[nodiscard]] const Spec& spec() const { return spec_; }         // after ReadTheSpec
  [[nodiscard]] const std::string& text() const { return text_; }  // its text
  [[nodiscard]] std::string SpecName() const;                      // as messages call it
  [[nodiscard]] bool Colored(bool terminal) const;
  [[nodiscard]] bool ColoredResult() const;  // whether a result for standard output may be colored

  // Shows diagnostics where they belong: JSON with results, text with messages.
  void Show(const Diagnostics& diagnostics);
  ExitStatus Failed(DiagnosticCode code, std::string message, std::string hint, ExitStatus status);

  // Reads the spec that the command line names; a status when that fails and all is said.
  std::optional<ExitStatus> ReadTheSpec();

  // Reads, solves and checks, then acts on what came out.
  using Act = ExitStatus (*)(Program&, const Bank&, const std::vector<Finding>&);
  ExitStatus WithBank(Act act);

  // The same for every spec that the command line names.
  using ActOnAll = ExitStatus (*)(Program&, const std::vector<Solved>&);
  ExitStatus WithBanks(ActOnAll act);

  // Text to standard output, or to the file that -o names.
  ExitStatus Emit(std::string text, ExitStatus status);
  // All of the files or none; never over the spec.
  ExitStatus Write(const std::vector<FileToWrite>& files, ExitStatus status);
  // The same for a folder of many files: names only `first`, the one to open.
  ExitStatus WriteFolder(const std::vector<FileToWrite>& files, std::string_view first,
                         ExitStatus status);

  // The path of a file in the folder that -o names.
  [[nodiscard]] std::string InFolder(std::string_view name) const;

  // A file of the output, for what an earlier run left there; not ok when there is none.
  [[nodiscard]] FileResult ReadOutput(const std::string& name) {
    constexpr std::size_t kMost = 1U << 20U;
    if (!HasOutput(name)) return {false, {}, {}};
    return files_.Read(InFolder(name), kMost);
  }
  [[nodiscard]] bool HasOutput(const std::string& name) { return files_.IsFile(InFolder(name)); }
  // A remark beside the result, not with --json.
  void Remark(const std::string& text) {
    if (!options_.json) console_.err += text + "\n";
  }

  // Says what is being done, where someone waits at a terminal.
  void Progress(std::string_view what) {
    if (console_.progress) console_.progress(what);
  }

 private:
  std::optional<ExitStatus> ReadText();
  // A status when they were not written, and why is said.
  std::optional<ExitStatus> WriteQuietly(const std::vector<FileToWrite>& files);

  const Options& options_;
  Console& console_;
  Files& files_;
  std::string path_;  // of the spec being read
  std::string text_;
  Spec spec_;
};

[[nodiscard]] ExitStatus StatusOf(const std::vector<Finding>& findings);

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_PROGRAM_H_
