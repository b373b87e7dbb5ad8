#include "cli/program.h"

#include <algorithm>
#include <utility>

#include "text/utf8_width.h"
#include "tillwright/read.h"
#include "tillwright/solve.h"
#include "tillwright/write.h"

namespace tillwright {

std::string Program::SpecName() const { return path_ == "-" ? "<stdin>" : path_; }

bool Program::Colored(bool terminal) const {
  if (options_.color != ColorChoice::kAuto) return options_.color == ColorChoice::kAlways;
  return terminal && !console_.no_color;
}

bool Program::ColoredResult() const {
  const bool to_file = !options_.output.empty() && options_.output != "-";
  return Colored(console_.out_is_terminal && !to_file);
}

void Program::Show(const Diagnostics& diagnostics) {
  if (diagnostics.empty()) return;
  if (options_.json) {
    console_.out += DiagnosticsJson(diagnostics, SpecName(), text_);
  } else {
    console_.err +=
        DiagnosticsText(diagnostics, SpecName(), text_, {Colored(console_.err_is_terminal)});
  }
}

ExitStatus Program::Failed(DiagnosticCode code, std::string message, std::string hint,
                           ExitStatus status) {
  Diagnostics diagnostics;
  ReportError(diagnostics, code, {}, std::move(message), std::move(hint));
  Show(diagnostics);
  return status;
}

std::optional<ExitStatus> Program::ReadText() {
  if (path_ == "-" && console_.in_is_terminal) {
    return Failed(DiagnosticCode::kUsage,
                  "a spec is expected on standard input, which is a terminal",
                  "name a file, or pipe a spec in", ExitStatus::kUsage);
  }
  FileResult read = files_.Read(path_, kMaxSpecBytes);
  if (!read.ok) {
    return Failed(DiagnosticCode::kFileRead, "cannot be read: " + read.problem,
                  "check the name; 'tillwright new' prints a starter spec", ExitStatus::kFile);
  }
  text_ = std::move(read.text);
  return std::nullopt;
}

std::optional<ExitStatus> Program::ReadTheSpec() {
  if (const std::optional<ExitStatus> status = ReadText()) return status;
  Outcome<Spec> read = ReadSpec(text_);
  Show(read.diagnostics());
  if (!read.ok()) return ExitStatus::kSpec;
  spec_ = std::move(read.value());
  return std::nullopt;
}

ExitStatus Program::WithBank(Act act) {
  if (const std::optional<ExitStatus> status = ReadTheSpec()) return *status;
  const Outcome<Bank> solved = SolveBank(spec_);
  Show(solved.diagnostics());
  if (!solved.ok()) return ExitStatus::kSpec;
  return act(*this, solved.value(), CheckBank(spec_, solved.value()));
}

ExitStatus Program::WithBanks(ActOnAll act) {
  std::vector<Solved> all;
  for (const std::string& path : options_.specs) {
    path_ = path;
    if (const std::optional<ExitStatus> status = ReadTheSpec()) return *status;
    Outcome<Bank> bank = SolveBank(spec_);
    Show(bank.diagnostics());
    if (!bank.ok()) return ExitStatus::kSpec;
    std::vector<Finding> findings = CheckBank(spec_, bank.value());
    all.push_back({std::move(spec_), std::move(bank.value()), std::move(findings)});
    spec_ = {};
  }
  return act(*this, all);
}

ExitStatus Program::Emit(std::string text, ExitStatus status) {
  if (options_.output.empty() || options_.output == "-") {
    console_.out += text;
    return status;
  }
  return Write({{options_.output, std::move(text)}}, status);
}

std::optional<ExitStatus> Program::WriteQuietly(const std::vector<FileToWrite>& files) {
  for (const FileToWrite& file : files) {
    const auto is_spec = [&](const std::string& path) {
      return path != "-" && files_.Same(file.path, path);
    };
    if (std::ranges::any_of(options_.specs, is_spec)) {
      return Failed(DiagnosticCode::kFileWrite, "the output would overwrite the spec",
                    "name another file with -o", ExitStatus::kUsage);
    }
  }
  const std::string folder = InFolder("");
  const bool below =
      !options_.output.empty() && std::ranges::all_of(files, [&](const FileToWrite& file) {
        return file.path.starts_with(folder);
      });
  const FileResult written =
      below ? files_.WriteFolder(options_.output, files) : files_.WriteAll(files);
  if (written.cleared) Remark("note: what an interrupted run had left unfinished was removed");
  if (written.ok) return std::nullopt;
  return Failed(DiagnosticCode::kFileWrite,
                "\"" + written.text + "\" cannot be written: " + written.problem,
                "choose another place with -o", ExitStatus::kFile);
}

ExitStatus Program::Write(const std::vector<FileToWrite>& files, ExitStatus status) {
  if (const std::optional<ExitStatus> failed = WriteQuietly(files)) return *failed;
  if (options_.json) return status;
  for (const FileToWrite& file : files) console_.err += "wrote " + Printable(file.path) + "\n";
  return status;
}

ExitStatus Program::WriteFolder(const std::vector<FileToWrite>& files, std::string_view first,
                                ExitStatus status) {
  if (const std::optional<ExitStatus> failed = WriteQuietly(files)) return *failed;
  if (options_.json) return status;
  console_.err += "wrote " + Printable(InFolder(first)) + " and " +
                  std::to_string(files.size() - 1) + " other files\n";
  return status;
}

ExitStatus StatusOf(const std::vector<Finding>& findings) {
  return HasFailure(findings) ? ExitStatus::kCheckFails : ExitStatus::kOk;
}

std::string Program::InFolder(std::string_view name) const {
  return tillwright::InFolder(options_.output, name);
}

}  // namespace tillwright
