#include "cli/commands.h"
#include "tillwright/stock.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

std::string Listed(const Program& program, const StockPlan& plan) {
  if (program.options().json) return StockJson(plan);
  return StockText(plan, {program.ColoredResult()});
}

ExitStatus Stock(Program& program, const std::vector<Solved>& solved) {
  std::vector<StockSource> sources;
  ExitStatus status = ExitStatus::kOk;
  for (const Solved& one : solved) {
    sources.push_back({&one.spec, &one.bank});
    if (HasFailure(one.findings)) status = ExitStatus::kCheckFails;
  }
  const StockPlan plan = PlanStock(sources);
  if (!IsWhole(plan)) status = ExitStatus::kCheckFails;
  return program.Emit(Listed(program, plan), status);
}

}  // namespace

ExitStatus StockCommand(Program& program) { return program.WithBanks(Stock); }

}  // namespace tillwright
