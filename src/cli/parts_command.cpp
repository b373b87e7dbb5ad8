#include "cli/commands.h"
#include "tillwright/parts.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

std::string Listed(const Program& program, const Bank& bank) {
  const Options& options = program.options();
  const PartsLists lists = MakePartsLists(program.spec(), bank);
  if (options.json) return PartsJson(bank, lists);
  if (options.format == "csv") return CutListCsv(bank, lists.cuts);
  if (options.format == "hardware-csv") return HardwareCsv(bank, lists.hardware);
  return PartsText(bank, lists, {program.ColoredResult()});
}

ExitStatus Parts(Program& program, const Bank& bank, const std::vector<Finding>& findings) {
  return program.Emit(Listed(program, bank), StatusOf(findings));
}

}  // namespace

ExitStatus PartsCommand(Program& program) { return program.WithBank(Parts); }

}  // namespace tillwright
