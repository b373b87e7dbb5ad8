#include "cli/commands.h"
#include "cli/pdf_info.h"
#include "cli/rendered_files.h"
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
  RenderedFiles files(options.output);
  files.Fail(drawings.fault);
  if (options.format == FileFormat::kPdf && !drawings.sheets.empty()) {
    files.Add("stock.pdf", RenderPdf(drawings.sheets, PdfInfoOf(plan.title, "Stock layouts")));
  } else {
    files.AddSheets(drawings.sheets, options.format == FileFormat::kPng);
  }
  if (!files.fault().empty()) {
    return program.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + files.fault(),
                          "use larger --paper", ExitStatus::kFile);
  }
  files.Add(options.json ? "stock.json" : "stock.txt", Listed(program, plan));
  return program.Write(files.files(), status);
}

ExitStatus Stock(Program& program, const std::vector<Solved>& solved) {
  const std::string& output = program.options().output;
  const bool drawn = !output.empty() && output != "-";
  if (!drawn && program.options().format) {
    return program.Failed(DiagnosticCode::kUsage,
                          "--format applies to the drawings, which go into a folder",
                          "name a folder with -o", ExitStatus::kUsage);
  }
  std::vector<StockSource> sources;
  ExitStatus status = ExitStatus::kOk;
  for (const Solved& one : solved) {
    sources.push_back({&one.spec, &one.bank});
    if (HasFailure(one.findings)) status = ExitStatus::kCheckFails;
  }
  const StockPlan plan = PlanStock(sources);
  if (!IsWhole(plan)) status = ExitStatus::kCheckFails;
  if (drawn) return WriteDrawings(program, plan, status);
  return program.Emit(Listed(program, plan), status);
}

}  // namespace

ExitStatus StockCommand(Program& program) { return program.WithBanks(Stock); }

}  // namespace tillwright
