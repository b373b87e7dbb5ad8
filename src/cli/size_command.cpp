#include "cli/commands.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

ExitStatus Size(Program& program, const Bank& bank, const std::vector<Finding>& findings) {
  return program.Emit(program.options().json
                          ? ResultJson(bank, findings)
                          : ResultTables(bank, findings, {program.ColoredResult()}),
                      StatusOf(findings));
}

}  // namespace

ExitStatus SizeCommand(Program& program) { return program.WithBank(Size); }

}  // namespace tillwright
