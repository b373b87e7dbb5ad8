#include "cli/commands.h"
#include "tillwright/solve.h"
#include "tillwright/write.h"

namespace tillwright {

ExitStatus WhyCommand(Program& program) {
  if (const std::optional<ExitStatus> status = program.ReadTheSpec()) return *status;
  Trace trace;
  const Outcome<Bank> solved = SolveBank(program.spec(), trace);
  program.Show(solved.diagnostics());
  if (!solved.ok()) return ExitStatus::kSpec;
  const std::string& path = program.options().path;
  std::string text = WhyText(solved.value(), trace, path, program.SpecName(), program.text());
  if (!text.empty()) return program.Emit(std::move(text), ExitStatus::kOk);
  const std::vector<std::string> near = NearestPaths(solved.value(), path);  // there are more
  return program.Failed(
      DiagnosticCode::kUnknownPath, "there is no dimension \"" + path + "\"",
      "did you mean " + near.at(0) + ", " + near.at(1) + " or " + near.at(2) + "?",
      ExitStatus::kUsage);
}

}  // namespace tillwright
