// The shop packet: everything for one job in one folder, and a page that leads through it.
#include <algorithm>
#include <utility>

#include "cli/commands.h"
#include "tillwright/draw.h"
#include "tillwright/render.h"
#include "tillwright/write.h"
#include "write/packet.h"

namespace tillwright {
namespace {

class Packet {
 public:
  Packet(Program& program, const Bank& bank, const std::vector<Finding>& findings)
      : program_(program), bank_(bank), findings_(findings) {}

  ExitStatus Write() {
    Drawings();
    Sizes();
    Data();
    if (!fault_.empty()) {
      return program_.Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + fault_,
                             "take larger --paper", ExitStatus::kFile);
    }
    Add("index.html", PacketPage(bank_, findings_, sections_, SvgPageStyle()));
    return program_.WriteFolder(std::move(files_), "index.html", StatusOf(findings_));
  }

 private:
  void Add(const std::string& name, std::string bytes) {
    files_.push_back({program_.options().output + "/" + name, std::move(bytes)});
  }

  void Add(const std::string& name, Rendered rendered) {
    if (!rendered.ok() && fault_.empty()) fault_ = name + ": " + rendered.fault;
    Add(name, std::move(rendered.bytes));
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
      fault_ = drawings.fault;
      return;
    }
    PacketSection& section = Section("drawings", "Drawings");
    for (const Sheet& view : drawings.views) {
      if (!IsShown(view.name)) continue;
      section.pictures.push_back({RenderSvg(view, SvgUse::kInPage).bytes, {}, {}, view.width});
    }
    PdfInfo info;
    info.title = bank_.title.empty() ? "Drawer bank" : bank_.title;
    info.subject = "Dimensioned drawings";
    Add("drawings.pdf", RenderPdf(drawings.sheets, info));
    section.files = {{"drawings.pdf", "all views, details and part sheets, to print and pin up"}};
  }

  static bool IsShown(std::string_view name) {
    return name.starts_with("front") || name.starts_with("side") || name.starts_with("overview");
  }

  void Sizes() {
    PacketSection& section = Section("sizes", "Sizes");
    section.lines = {"Places are from the opening's lower left corner."};
    section.tables = BankTables(bank_);
  }

  void Data() {
    Add("spec.json", program_.text());
    Add("sizes.txt", ResultTables(bank_, findings_, {}));
    Add("result.json", ResultJson(bank_, findings_));
    Section("data", "The same as data").files = {
        {"spec.json", "the spec this packet was made from"},
        {"sizes.txt", "every size as plain text"},
        {"result.json", "every size for other programs, in millimetres"}};
  }

  Program& program_;
  const Bank& bank_;
  const std::vector<Finding>& findings_;
  std::vector<FileToWrite> files_;
  std::vector<PacketSection> sections_;
  std::string fault_;
};

ExitStatus Shop(Program& program, const Bank& bank, const std::vector<Finding>& findings) {
  if (program.options().output == "-") {
    return program.Failed(DiagnosticCode::kUsage,
                          "a shop packet is several files, not one for standard output",
                          "name a folder with -o", ExitStatus::kUsage);
  }
  return Packet(program, bank, findings).Write();
}

}  // namespace

ExitStatus ShopCommand(Program& program) { return program.WithBank(Shop); }

}  // namespace tillwright
