#include "cli/commands.h"
#include "cli/pdf_info.h"
#include "tillwright/render.h"
#include "tillwright/stock.h"
#include "tillwright/stock_draw.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

std::string Listed(const Program& program, const StockPlan& plan) {
  if (program.options().json) return StockJson(plan);
  return StockText(plan, {program.ColoredResult()});
}

// The drawings and the list, in the folder that -o names.
ExitStatus WriteDrawings(Program& program, const StockPlan& plan, ExitStatus status) {
  const Options& options = program.options();
  const Drawings drawings = DrawStock(plan, options.draw, DrawingFontMetrics());
  std::string fault = drawings.fault;
  std::vector<FileToWrite> files;
  const auto add = [&](const std::string& name, Rendered rendered) {
    if (!rendered.ok() && fault.empty()) fault = name + ": " + rendered.fault;
    files.push_back({options.output + "/" + name, std::move(rendered.bytes)});
  };
  if (options.format == "pdf") {
    add("stock.pdf", RenderPdf(drawings.sheets, PdfInfoOf(plan.title, "Stock layouts")));
  } else {
    constexpr double kPreviewDpi = 150;
    const bool png = options.format == "png";
    for (const Sheet& sheet : drawings.sheets) {
      add(sheet.name + (png ? ".png" : ".svg"),
          png ? RenderPng(sheet, kPreviewDpi) : RenderSvg(sheet));
    }
  }
  if (!fault.empty()) {
    return program.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + fault,
                          "take larger --paper", ExitStatus::kFile);
  }
  files.push_back(
      {options.output + (options.json ? "/stock.json" : "/stock.txt"), Listed(program, plan)});
  return program.Write(files, status);
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
  const std::string& output = program.options().output;
  if (!output.empty() && output != "-") return WriteDrawings(program, plan, status);
  return program.Emit(Listed(program, plan), status);
}

}  // namespace

ExitStatus StockCommand(Program& program) { return program.WithBanks(Stock); }

}  // namespace tillwright
