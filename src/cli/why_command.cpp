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
  std::string text =
      WhyText(trace, path, program.spec().units.value, program.SpecName(), program.text());
  if (!text.empty()) return program.Emit(std::move(text), ExitStatus::kOk);
  std::string hint;
  for (const std::string& near : NearestPaths(trace, path)) {
    hint += (hint.empty() ? "there are " : ", ") + near;
  }
  return program.Failed(DiagnosticCode::kUnknownPath, "there is no dimension \"" + path + "\"",
                        hint, ExitStatus::kUsage);
}

}  // namespace tillwright
