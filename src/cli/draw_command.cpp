#include "cli/commands.h"
#include "cli/pdf_info.h"
#include "tillwright/draw.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

template <class Add>
void RenderAll(const Options& options, const Bank& bank, const Drawings& drawings, Add add) {
  if (options.format == "pdf") {
    return add("drawings.pdf", RenderPdf(drawings.sheets, PdfInfoOf(bank, "Dimensioned drawings")));
  }
  constexpr double kPreviewDpi = 150;
  const bool png = options.format == "png";
  if (!png) {
    for (const Sheet& sheet : drawings.views) add(sheet.name + ".svg", RenderSvg(sheet));
  }
  for (const Sheet& sheet : drawings.sheets) {
    add(sheet.name + (png ? ".png" : ".svg"),
        png ? RenderPng(sheet, kPreviewDpi) : RenderSvg(sheet));
  }
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
                          "leave --scale out, or take a smaller scale or larger --paper",
                          ExitStatus::kUsage);
  }
  std::vector<FileToWrite> files;
  std::string fault;
  RenderAll(options, bank, drawings, [&](const std::string& name, Rendered rendered) {
    if (!rendered.ok() && fault.empty()) fault = name + ": " + rendered.fault;
    files.push_back({options.output + "/" + name, std::move(rendered.bytes)});
  });
  if (!fault.empty()) {
    return program.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + fault, {},
                          ExitStatus::kFile);
  }
  return program.Write(files, StatusOf(findings));
}

}  // namespace

ExitStatus DrawCommand(Program& program) { return program.WithBank(Draw); }

}  // namespace tillwright
