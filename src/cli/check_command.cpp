#include "cli/commands.h"
#include "cli/pdf_info.h"
#include "cli/rendered_files.h"
#include "tillwright/draw.h"
#include "tillwright/gap_check.h"
#include "tillwright/render.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

// The fitting sheet as fitting.pdf, and each of its pages as SVG, in the folder that --sheet names.
ExitStatus WriteSheet(Program& program, const Bank& bank, const GapCheck& check,
                      ExitStatus status) {
  const std::vector<Sheet> sheets =
      DrawFittingSheet(program.spec(), bank, check, DrawingFontMetrics());
  RenderedFiles files(program.options().sheet);
  files.AddSheets(sheets, false);
  files.Add("fitting.pdf", RenderPdf(sheets, PdfInfoOf(bank, "Fitting sheet")));
  if (!files.fault().empty()) {
    return program.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + files.fault(), {},
                          ExitStatus::kFile);
  }
  return program.Write(files.files(), status);
}

ExitStatus Check(Program& program, const Bank& bank, const std::vector<Finding>& of_bank) {
  const Outcome<GapCheck> checked = CheckGaps(program.spec(), bank);
  program.Show(checked.diagnostics());
  if (!checked.ok()) return ExitStatus::kSpec;
  const GapCheck& check = checked.value();
  std::vector<Finding> findings = of_bank;
  findings.insert(findings.end(), check.findings.begin(), check.findings.end());
  const ExitStatus status = StatusOf(findings);
  if (!program.options().sheet.empty()) {
    const ExitStatus written = WriteSheet(program, bank, check, status);
    if (written != status) return written;
  }
  return program.Emit(program.options().json ? CheckJson(program.spec(), bank, check, findings)
                                             : CheckTables(program.spec(), bank, check, findings,
                                                           {program.ColoredResult()}),
                      status);
}

}  // namespace

ExitStatus CheckCommand(Program& program) { return program.WithBank(Check); }

}  // namespace tillwright
