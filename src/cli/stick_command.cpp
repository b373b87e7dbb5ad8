#include "cli/commands.h"
#include "cli/pdf_info.h"
#include "tillwright/render.h"
#include "tillwright/stick.h"

namespace tillwright {
namespace {

ExitStatus WriteSvg(Program& program, const StickSheets& sticks, ExitStatus status) {
  std::vector<FileToWrite> files;
  for (const Sheet& sheet : sticks.sheets) {
    Rendered svg = RenderSvg(sheet);
    if (!svg.ok()) {
      return program.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + svg.fault, {},
                            ExitStatus::kFile);
    }
    files.push_back({program.InFolder(sheet.name + ".svg"), std::move(svg.bytes)});
  }
  return program.Write(files, status);
}

ExitStatus WritePdf(Program& program, const Bank& bank, const StickSheets& sticks,
                    ExitStatus status) {
  Rendered pdf =
      RenderPdf(sticks.sheets, PdfInfoOf(bank, "Story sticks and templates at full scale"));
  if (!pdf.ok()) {
    return program.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + pdf.fault, {},
                          ExitStatus::kFile);
  }
  return program.Emit(std::move(pdf.bytes), status);
}

ExitStatus MakeThem(Program& program, const Bank& bank, const std::vector<Finding>& findings) {
  const Options& options = program.options();
  const bool svg = options.format == FileFormat::kSvg;
  if (svg && options.output == "-") {
    return program.Failed(DiagnosticCode::kUsage,
                          "sticks as SVG are several files, not one for standard output",
                          "name a folder with -o", ExitStatus::kUsage);
  }
  const StickSheets sticks = svg && !options.stick.paper && !options.stick.roll
                                 ? DrawSticksAlone(bank, options.stick, DrawingFontMetrics())
                                 : DrawSticks(bank, options.stick, DrawingFontMetrics());
  if (!sticks.fault.empty()) {
    return program.Failed(DiagnosticCode::kUsage, "cannot be drawn: " + sticks.fault,
                          "use larger --paper, a smaller --margin, or --templates without",
                          ExitStatus::kUsage);
  }
  return svg ? WriteSvg(program, sticks, StatusOf(findings))
             : WritePdf(program, bank, sticks, StatusOf(findings));
}

}  // namespace

ExitStatus StickCommand(Program& program) { return program.WithBank(MakeThem); }

}  // namespace tillwright
