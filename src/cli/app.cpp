#include "cli/app.h"

#include "cli/command_table.h"
#include "cli/options.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

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
  if (parsed.command == nullptr) return Misused(parsed, console);
  Program program(parsed.options, console, files);
  return parsed.command->run(program);
}

}  // namespace tillwright
