// The shop packet: everything for one job in one folder, and a page that leads through it.
#include <algorithm>
#include <utility>

#include "cli/commands.h"
#include "cli/pdf_info.h"
#include "cli/rendered_files.h"
#include "text/utf8_width.h"
#include "tillwright/draw.h"
#include "tillwright/gap_check.h"
#include "tillwright/parts.h"
#include "tillwright/render.h"
#include "tillwright/stick.h"
#include "tillwright/stock.h"
#include "tillwright/stock_draw.h"
#include "tillwright/write.h"
#include "write/cut_notes.h"
#include "write/packet.h"
#include "write/parts_tables.h"
#include "write/stock_tables.h"

namespace tillwright {
namespace {

class Packet {
 public:
  // `findings`: of the bank and of its gaps.
  Packet(Program& program, const Bank& bank, const GapCheck& gaps,
         const std::vector<Finding>& findings)
      : program_(program),
        bank_(bank),
        gaps_(gaps),
        findings_(findings),
        lists_(MakePartsLists(program.spec(), bank)),
        files_(program.options().output) {}

  ExitStatus Write() {
    program_.Progress("laying parts out on sheets and boards");
    const StockSource source{&program_.spec(), &bank_, &lists_.cuts};
    const StockPlan plan = PlanStock({&source, 1});
    Buy(plan);
    Drawings();
    Sizes();
    Parts();
    Stock(plan);
    Sticks();
    Fitting();
    Data();
    if (!files_.fault().empty()) {
      return program_.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + files_.fault(),
                             "use larger --paper", ExitStatus::kFile);
    }
    files_.Add("index.html", PacketPage(bank_, findings_, sections_, SvgPageStyle()));
    const std::string names = Names();
    files_.Add(kList, names);
    const FileResult before = program_.ReadOutput(kList);
    const ExitStatus solved = IsWhole(plan) ? StatusOf(findings_) : ExitStatus::kCheckFails;
    const ExitStatus status = program_.WriteFolder(files_.files(), "index.html", solved);
    if (before.ok && status != ExitStatus::kFile) TellOfLeftovers(before.text, names);
    return status;
  }

 private:
  static constexpr const char* kList = "files.txt";

  // The files of the packet, one a line, itself too.
  [[nodiscard]] std::string Names() const {
    std::string names = std::string(kList) + "\n";
    const std::size_t folder = program_.InFolder("").size();
    for (const FileToWrite& file : files_.files()) names += file.path.substr(folder) + "\n";
    return names;
  }

  // The list may be anybody's: only names that stay in the folder are looked at.
  static bool IsBelow(std::string_view name) {
    return !name.starts_with('/') &&
           ("/" + std::string(name) + "/").find("/../") == std::string::npos;
  }

  // Files that the packet before this one had and this one has not: they would mislead. They are
  // named, not deleted: the folder is the maker's.
  void TellOfLeftovers(const std::string& before, const std::string& now) {
    for (std::size_t at = 0; at < before.size();) {
      const std::size_t end = std::min(before.find('\n', at), before.size());
      const std::string name = before.substr(at, end - at);
      at = end + 1;
      if (name.empty() || ("\n" + now).find("\n" + name + "\n") != std::string::npos) continue;
      if (!IsBelow(name) || !program_.HasOutput(name)) continue;
      program_.Remark("note: " + Printable(program_.InFolder(name)) +
                      " is left over from an earlier packet; delete it if you do not need it");
    }
  }

  PacketSection& Section(std::string id, std::string heading) {
    sections_.emplace_back();
    sections_.back().id = std::move(id);
    sections_.back().heading = std::move(heading);
    return sections_.back();
  }

  // The views that fit a page, shown; all of them as one PDF to print.
  void Drawings() {
    program_.Progress("drawing");
    const tillwright::Drawings drawings =
        DrawBank(bank_, program_.options().draw, DrawingFontMetrics());
    if (!drawings.fault.empty()) {
      return files_.Fail(drawings.fault);
    }
    PacketSection& section = Section("drawings", "Drawings");
    for (const std::size_t i : drawings.on_page) {
      const Sheet& view = drawings.views[i];
      section.pictures.push_back({RenderSvg(view, SvgUse::kInPage).bytes, {}, {}, view.width});
    }
    files_.Add("drawings.pdf",
               RenderPdf(drawings.sheets, PdfInfoOf(bank_, "Dimensioned drawings")));
    section.files = {{"drawings.pdf", "all views, details and part sheets, to print and pin up"}};
  }

  void Sizes() {
    PacketSection& section = Section("sizes", "Sizes");
    section.lines = {"Positions are measured from the lower left corner of the opening."};
    section.tables = BankTables(bank_);
  }

  // To stand in the shop with: sheets, boards and hardware on one list.
  void Buy(const StockPlan& plan) {
    PacketSection& section = Section("buy", "To buy");
    section.lines = StockTotals(plan);
    section.tables.push_back({"Sheets and boards", {}, StockTable(plan)});
    section.tables.push_back({"Hardware",
                              "counts are common practice; follow the slide maker's sheet",
                              HardwareTable(bank_, lists_.hardware)});
    section.notes = StockProofs(plan);
    files_.Add("hardware.csv", HardwareCsv(bank_, lists_.hardware));
    section.files = {{"hardware.csv", "the hardware, for a spreadsheet"}};
  }

  // The cut list, on the page and as files.
  void Parts() {
    PacketSection& cuts = Section("cuts", "Cut list");
    cuts.lines = {"Finished sizes, length along the grain; rough where it differs."};
    CutNotes notes;
    for (CutTable& table : CutTables(bank_, lists_.cuts, notes)) {
      cuts.tables.push_back({std::move(table.heading), {}, std::move(table.table)});
    }
    cuts.notes = notes.Lines();
    if (!lists_.runs.empty()) {
      cuts.tables.push_back({"Fronts cut from one piece", {}, RunTable(bank_, lists_.runs)});
    }
    for (std::string& note : RunNotes(bank_, lists_.runs)) cuts.notes.push_back(std::move(note));
    files_.Add("cut-list.csv", CutListCsv(bank_, lists_.cuts));
    cuts.files = {{"cut-list.csv", "the same, for a spreadsheet"}};
    for (NamedText& part : PartDxfFiles(bank_, lists_.cuts)) {
      cuts.files.push_back({"dxf/" + part.name, "for a CNC machine, 1 unit = 1 mm"});
      files_.Add("dxf/" + part.name, std::move(part.text));
    }
  }

  // What each part is cut from, and how.
  void Stock(const StockPlan& plan) {
    program_.Progress("drawing the layouts");
    const tillwright::Drawings drawings =
        DrawStock(plan, program_.options().draw, DrawingFontMetrics());
    files_.Fail(drawings.fault);
    PacketSection& section = Section("stock", "Sheets and boards");
    section.lines = {
        "Letters are parts, numbers are cuts in order; a piece marked P1 is drawn separately."};
    for (const Sheet& sheet : drawings.sheets) {
      section.pictures.push_back({RenderSvg(sheet, SvgUse::kInPage).bytes, {}, {}, sheet.width});
    }
    files_.Add("stock.txt", StockText(plan, {}));
    section.files = {{"stock.txt", "every cut in order, with the fence settings"}};
    if (drawings.sheets.empty()) return;  // nothing finds a place
    files_.Add("stock.pdf", RenderPdf(drawings.sheets, PdfInfoOf(bank_, "Stock layouts")));
    section.files.push_back({"stock.pdf", "the layouts, to print"});
  }

  void Sticks() {
    program_.Progress("marking story sticks");
    StickOptions options;
    options.paper = program_.options().draw.paper;
    const StickSheets sticks = DrawSticks(bank_, options, DrawingFontMetrics());
    if (!sticks.fault.empty()) {
      return files_.Fail(sticks.fault);
    }
    files_.Add(
        "sticks.pdf",
        RenderPdf(sticks.sheets, PdfInfoOf(bank_, "Story sticks and templates at full scale")));
    PacketSection& section = Section("sticks", "Story sticks");
    section.lines = {
        "Full-scale strips to glue to a batten and mark from, and drilling templates. "
        "Print at 100 %, without \"fit to page\", one-sided, all in one run, and measure the bars "
        "first."};
    section.files = {{"sticks.pdf", std::to_string(sticks.sheets.size()) + " pages"}};
  }

  // How the fronts go in: the gaps with their ranges, spacers, and blanks for what is measured.
  void Fitting() {
    program_.Progress("drawing the fitting sheet");
    const std::vector<Sheet> sheets =
        DrawFittingSheet(program_.spec(), bank_, gaps_, DrawingFontMetrics());
    files_.Add("fitting.pdf", RenderPdf(sheets, PdfInfoOf(bank_, "Fitting sheet")));
    files_.Add("gaps.txt", CheckTables(program_.spec(), bank_, gaps_, findings_, {}));
    PacketSection& section = Section("fitting", "Fitting");
    for (const Sheet& sheet : sheets) {
      section.pictures.push_back({RenderSvg(sheet, SvgUse::kInPage).bytes, {}, {}, sheet.width});
    }
    section.files = {{"fitting.pdf", "to print and take to the job"},
                     {"gaps.txt", "every gap: planned, worst case, dry, humid, as measured"}};
  }

  void Data() {
    files_.Add("spec.json", program_.text());
    files_.Add("sizes.txt", ResultTables(bank_, findings_, {}));
    files_.Add("result.json", ResultJson(bank_, findings_));
    Section("data", "The same, as data").files = {
        {"spec.json", "the spec this packet was made from"},
        {"sizes.txt", "every size as plain text"},
        {"result.json", "every size for other programs, in millimeters"},
        {kList, "every file of this packet"}};
  }

  Program& program_;
  const Bank& bank_;
  const GapCheck& gaps_;
  const std::vector<Finding>& findings_;
  const PartsLists lists_;
  RenderedFiles files_;
  std::vector<PacketSection> sections_;
};

ExitStatus Shop(Program& program, const Bank& bank, const std::vector<Finding>& findings) {
  if (program.options().output == "-") {
    return program.Failed(DiagnosticCode::kUsage,
                          "a shop packet is several files, not one for standard output",
                          "name a folder with -o", ExitStatus::kUsage);
  }
  const Outcome<GapCheck> checked = CheckGaps(program.spec(), bank);
  program.Show(checked.diagnostics());
  if (!checked.ok()) return ExitStatus::kSpec;
  std::vector<Finding> all = findings;
  const std::vector<Finding>& of_gaps = checked.value().findings;
  all.insert(all.end(), of_gaps.begin(), of_gaps.end());
  return Packet(program, bank, checked.value(), all).Write();
}

}  // namespace

ExitStatus ShopCommand(Program& program) { return program.WithBank(Shop); }

}  // namespace tillwright
