#include "cli/app.h"

#include "cli/options.h"
#include "tillwright/check.h"
#include "tillwright/draw.h"
#include "tillwright/read.h"
#include "tillwright/render.h"
#include "tillwright/solve.h"
#include "tillwright/write.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

class Program {
 public:
  Program(const Options& options, Console& console, Files& files)
      : options_(options), console_(console), files_(files) {}

  ExitStatus Run() {
    switch (options_.command) {
      case Command::kNew: return Emit(StarterSpec(), ExitStatus::kOk);
      case Command::kSchema: return Emit(SpecSchema(), ExitStatus::kOk);
      case Command::kSize: return WithBank(&Program::Size);
      case Command::kDraw: return WithBank(&Program::Draw);
      case Command::kWhy: return Why();
    }
    return ExitStatus::kInternal;
  }

 private:
  bool Colored(bool terminal) const {
    if (options_.color != ColorChoice::kAuto) return options_.color == ColorChoice::kAlways;
    return terminal && !console_.no_color;
  }

  // Shows diagnostics where they belong: JSON with results, text with messages.
  void Show(const Diagnostics& diagnostics) {
    if (diagnostics.empty()) return;
    const std::string name = options_.spec == "-" ? "<stdin>" : options_.spec;
    if (options_.json) {
      console_.out += DiagnosticsJson(diagnostics, name, text_);
    } else {
      console_.err += DiagnosticsText(diagnostics, name, text_, {Colored(console_.err_is_terminal)});
    }
  }

  ExitStatus Failed(DiagnosticCode code, std::string message, std::string hint, ExitStatus status) {
    Diagnostics diagnostics;
    ReportError(diagnostics, code, {}, std::move(message), std::move(hint));
    Show(diagnostics);
    return status;
  }

  std::optional<ExitStatus> ReadText() {
    if (options_.spec == "-" && console_.in_is_terminal) {
      return Failed(DiagnosticCode::kUsage, "a spec is expected on standard input, which is a terminal",
                    "name a file, or pipe a spec in", ExitStatus::kUsage);
    }
    FileResult read = files_.Read(options_.spec, kMaxSpecBytes);
    if (!read.ok) {
      return Failed(DiagnosticCode::kFileRead, "cannot be read: " + read.problem,
                    "check the name; 'tillwright new' prints a starter spec", ExitStatus::kFile);
    }
    text_ = std::move(read.text);
    return std::nullopt;
  }

  std::optional<ExitStatus> ReadTheSpec() {
    if (const std::optional<ExitStatus> status = ReadText()) return status;
    Outcome<Spec> read = ReadSpec(text_);
    Show(read.diagnostics());
    if (!read.ok()) return ExitStatus::kSpec;
    spec_ = std::move(read.value());
    return std::nullopt;
  }

  ExitStatus WithBank(ExitStatus (Program::*act)(const Bank&, const std::vector<Finding>&)) {
    if (const std::optional<ExitStatus> status = ReadTheSpec()) return *status;
    const Outcome<Bank> solved = SolveBank(spec_);
    Show(solved.diagnostics());
    if (!solved.ok()) return ExitStatus::kSpec;
    return (this->*act)(solved.value(), CheckBank(spec_, solved.value()));
  }

  static ExitStatus StatusOf(const std::vector<Finding>& findings) {
    return HasFailure(findings) ? ExitStatus::kCheckFails : ExitStatus::kOk;
  }

  // Text to standard output, or to the file that -o names.
  ExitStatus Emit(std::string text, ExitStatus status) {
    if (options_.output.empty() || options_.output == "-") {
      console_.out += text;
      return status;
    }
    return Write({{options_.output, std::move(text)}}, status);
  }

  ExitStatus Write(std::vector<FileToWrite> files, ExitStatus status) {
    for (const FileToWrite& file : files) {
      if (options_.spec != "-" && files_.Same(file.path, options_.spec)) {
        return Failed(DiagnosticCode::kFileWrite, "the output would overwrite the spec",
                      "name another file with -o", ExitStatus::kUsage);
      }
    }
    const FileResult written = files_.WriteAll(files);
    if (!written.ok) {
      return Failed(DiagnosticCode::kFileWrite,
                    "\"" + written.text + "\" cannot be written: " + written.problem,
                    "choose another place with -o", ExitStatus::kFile);
    }
    if (!options_.json) {
      for (const FileToWrite& file : files) console_.err += "wrote " + Printable(file.path) + "\n";
    }
    return status;
  }

  ExitStatus Size(const Bank& bank, const std::vector<Finding>& findings) {
    const bool to_file = !options_.output.empty() && options_.output != "-";
    const bool color = Colored(console_.out_is_terminal && !to_file);
    return Emit(options_.json ? ResultJson(bank, findings) : ResultTables(bank, findings, {color}),
                StatusOf(findings));
  }

  ExitStatus Draw(const Bank& bank, const std::vector<Finding>& findings) {
    if (options_.output == "-") {
      return Failed(DiagnosticCode::kUsage, "drawings are several files, not one for standard output",
                    "name a folder with -o", ExitStatus::kUsage);
    }
    const Drawings drawings = DrawBank(bank, options_.draw, DrawingFontMetrics());
    if (!drawings.fault.empty()) {
      return Failed(DiagnosticCode::kUsage, "cannot be drawn: " + drawings.fault,
                    "leave --scale out, or take a smaller scale or larger --paper",
                    ExitStatus::kUsage);
    }
    std::vector<FileToWrite> files;
    std::string fault;
    const auto add = [&](const std::string& name, Rendered rendered) {
      if (!rendered.ok() && fault.empty()) fault = name + ": " + rendered.fault;
      files.push_back({options_.output + "/" + name, std::move(rendered.bytes)});
    };
    RenderAll(bank, drawings, add);
    if (!fault.empty()) {
      return Failed(DiagnosticCode::kFileWrite, "cannot be drawn: " + fault, {},
                    ExitStatus::kFile);
    }
    return Write(std::move(files), StatusOf(findings));
  }

  template <class Add>
  void RenderAll(const Bank& bank, const Drawings& drawings, Add add) const {
    if (options_.format == "pdf") {
      PdfInfo info;
      info.title = bank.title.empty() ? "Drawer bank" : bank.title;
      info.subject = "Dimensioned drawings";
      return add("drawings.pdf", RenderPdf(drawings.sheets, info));
    }
    constexpr double kPreviewDpi = 150;
    const bool png = options_.format == "png";
    if (!png) {
      for (const Sheet& sheet : drawings.views) add(sheet.name + ".svg", RenderSvg(sheet));
    }
    for (const Sheet& sheet : drawings.sheets) {
      add(sheet.name + "." + options_.format,
          png ? RenderPng(sheet, kPreviewDpi) : RenderSvg(sheet));
    }
  }

  ExitStatus Why() {
    if (const std::optional<ExitStatus> status = ReadTheSpec()) return *status;
    Trace trace;
    const Outcome<Bank> solved = SolveBank(spec_, trace);
    Show(solved.diagnostics());
    if (!solved.ok()) return ExitStatus::kSpec;
    const std::string name = options_.spec == "-" ? "<stdin>" : options_.spec;
    std::string text = WhyText(trace, options_.path, spec_.units.value, name, text_);
    if (!text.empty()) return Emit(std::move(text), ExitStatus::kOk);
    std::string hint;
    for (const std::string& path : NearestPaths(trace, options_.path)) {
      hint += (hint.empty() ? "there are " : ", ") + path;
    }
    return Failed(DiagnosticCode::kUnknownPath, "there is no dimension \"" + options_.path + "\"",
                  hint, ExitStatus::kUsage);
  }

  const Options& options_;
  Console& console_;
  Files& files_;
  std::string text_;
  Spec spec_;
};

ExitStatus Misused(const ParsedOptions& parsed, Console& console) {
  if (!parsed.is_error) {
    console.out += parsed.text;
    return ExitStatus::kOk;
  }
  if (parsed.json) {
    Diagnostics diagnostics;
    ReportError(diagnostics, DiagnosticCode::kUsage, {}, parsed.text);
    console.out += DiagnosticsJson(diagnostics, "", "");
  } else {
    console.err += parsed.text;
  }
  return ExitStatus::kUsage;
}

}  // namespace

ExitStatus Run(const std::vector<std::string>& args, Console& console, Files& files) {
  const ParsedOptions parsed = ParseOptions(args);
  if (!parsed.options) return Misused(parsed, console);
  return Program(*parsed.options, console, files).Run();
}

}  // namespace tillwright
