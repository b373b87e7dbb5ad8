#include "cli/commands.h"
#include "tillwright/parts.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

std::string Listed(const Program& program, const Bank& bank) {
  const Options& options = program.options();
  const PartsLists lists = MakePartsLists(program.spec(), bank);
  if (options.json) return PartsJson(bank, lists);
  if (options.format == FileFormat::kCsv) return CutListCsv(bank, lists.cuts);
  if (options.format == FileFormat::kHardwareCsv) return HardwareCsv(bank, lists.hardware);
  return PartsText(bank, lists, {program.ColoredResult()});
}

// One file for every sheet part, in the folder that -o names.
ExitStatus WriteDxf(Program& program, const Bank& bank, ExitStatus status) {
  const std::string& folder = program.options().output;
  if (folder.empty() || folder == "-") {
    return program.Failed(DiagnosticCode::kUsage,
                          "DXF is one file for each part, not one for standard output",
                          "name a folder with -o", ExitStatus::kUsage);
  }
  std::vector<FileToWrite> files;
  for (NamedText& part : PartDxfFiles(bank, CutList(program.spec(), bank))) {
    files.push_back({program.InFolder(part.name), std::move(part.text)});
  }
  if (files.empty()) {
    return program.Failed(DiagnosticCode::kUsage, "there are no sheet parts to write",
                          "DXF is for sheet parts; solid wood is cut from boards",
                          ExitStatus::kUsage);
  }
  return program.Write(files, status);
}

ExitStatus Parts(Program& program, const Bank& bank, const std::vector<Finding>& findings) {
  if (program.options().format == FileFormat::kDxf)
    return WriteDxf(program, bank, StatusOf(findings));
  return program.Emit(Listed(program, bank), StatusOf(findings));
}

}  // namespace

ExitStatus PartsCommand(Program& program) { return program.WithBank(Parts); }

}  // namespace tillwright
