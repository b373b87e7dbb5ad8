#include "cli/commands.h"
#include "cli/pdf_info.h"
#include "cli/rendered_files.h"
#include "tillwright/draw.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

void RenderAll(const Options& options, const Bank& bank, const Drawings& drawings,
               RenderedFiles& files) {
  if (options.format == FileFormat::kPdf) {
    return files.Add("drawings.pdf",
                     RenderPdf(drawings.sheets, PdfInfoOf(bank, "Dimensioned drawings")));
  }
  const bool png = options.format == FileFormat::kPng;
  if (!png) files.AddSheets(drawings.views, png);
  files.AddSheets(drawings.sheets, png);
}

ExitStatus Draw(Program& program, const Bank& bank, const std::vector<Finding>& findings) {
  const Options& options = program.options();
  if (options.output == "-") {
    return program.Failed(DiagnosticCode::kUsage,
                          "drawings are several files, not one for standard output",
                          "name a folder with -o", ExitStatus::kUsage);
  }
  const Drawings drawings = DrawBank(bank, options.draw, DrawingFontMetrics());
  if (!drawings.fault.empty()) {
    return program.Failed(DiagnosticCode::kUsage, "cannot be drawn: " + drawings.fault,
                          "omit --scale, or use a smaller scale or larger --paper",
                          ExitStatus::kUsage);
  }
  RenderedFiles files(options.output);
  RenderAll(options, bank, drawings, files);
  if (!files.fault().empty()) {
    return program.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + files.fault(), {},
                          ExitStatus::kFile);
  }
  return program.Write(files.files(), StatusOf(findings));
}

}  // namespace

ExitStatus DrawCommand(Program& program) { return program.WithBank(Draw); }

}  // namespace tillwright
