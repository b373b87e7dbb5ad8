#include "cli/app.h"

#include "cli/commands.h"
#include "cli/options.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

ExitStatus Act(Program& program) {
  switch (program.options().command) {
    case Command::kNew:
      return program.Emit(StarterSpec(), ExitStatus::kOk);
    case Command::kSchema:
      return program.Emit(SpecSchema(), ExitStatus::kOk);
    case Command::kSize:
      return SizeCommand(program);
    case Command::kCheck:
      return CheckCommand(program);
    case Command::kDraw:
      return DrawCommand(program);
    case Command::kStick:
      return StickCommand(program);
    case Command::kShop:
      return ShopCommand(program);
    case Command::kParts:
      return PartsCommand(program);
    case Command::kStock:
      return StockCommand(program);
    case Command::kWhy:
      return WhyCommand(program);
  }
  return ExitStatus::kInternal;
}

ExitStatus Misused(const ParsedOptions& parsed, Console& console) {
  if (!parsed.is_error) {
    console.out += parsed.text;
    return ExitStatus::kOk;
  }
  if (parsed.json) {
    Diagnostics diagnostics;
    ReportError(diagnostics, DiagnosticCode::kUsage, {}, parsed.text);
    console.out += DiagnosticsJson(diagnostics, "", "");
  } else {
    console.err += parsed.text;
  }
  return ExitStatus::kUsage;
}

}  // namespace

ExitStatus Run(const std::vector<std::string>& args, Console& console, Files& files) {
  const ParsedOptions parsed = ParseOptions(args);
  if (!parsed.options) return Misused(parsed, console);
  Program program(*parsed.options, console, files);
  return Act(program);
}

}  // namespace tillwright
