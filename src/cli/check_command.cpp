#include "cli/commands.h"
#include "tillwright/gap_check.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

ExitStatus Check(Program& program, const Bank& bank, const std::vector<Finding>& of_bank) {
  const Outcome<GapCheck> checked = CheckGaps(program.spec(), bank);
  program.Show(checked.diagnostics());
  if (!checked.ok()) return ExitStatus::kSpec;
  const GapCheck& check = checked.value();
  std::vector<Finding> findings = of_bank;
  findings.insert(findings.end(), check.findings.begin(), check.findings.end());
  return program.Emit(program.options().json
                          ? CheckJson(program.spec(), bank, check, findings)
                          : CheckTables(program.spec(), bank, check, findings,
                                        {program.ColoredResult()}),
                      StatusOf(findings));
}

}  // namespace

ExitStatus CheckCommand(Program& program) { return program.WithBank(Check); }

}  // namespace tillwright
