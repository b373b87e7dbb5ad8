#include "cli/command_table.h"

#include <array>

#include "cli/choice.h"
#include "cli/commands.h"
#include "cli/stick_options.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using namespace std::string_view_literals;
using Text = std::string_view;

constexpr std::array kColors{"auto"sv, "always"sv, "never"sv};
constexpr std::array kFormats{"svg"sv, "pdf"sv,          "png"sv, "table"sv,
                              "csv"sv, "hardware-csv"sv, "dxf"sv};
constexpr std::array kSizes{"all"sv, "key"sv};
constexpr std::array kTemplates{"with"sv, "without"sv, "only"sv};
constexpr std::array kStickFormats{"pdf"sv, "svg"sv};

// Some of the formats, from `first` on.
template <FileFormat first, std::size_t count>
std::span<const std::string_view> Formats() {
  return std::span(kFormats).subspan(static_cast<std::size_t>(first), count);
}
std::span<const std::string_view> StickFormats() { return kStickFormats; }
std::span<const std::string_view> Sizes() { return kSizes; }
std::span<const std::string_view> Templates() { return kTemplates; }

// --- What options do ----------------------------------------------------------------------------

void TakeColor(Text word, Options& to) { to.color = ChoiceOf<ColorChoice>(word); }
void TakeSpec(Text path, Options& to) { to.specs.emplace_back(path); }
// A name in a variable of the shell that was never set is empty, and would lead to the root folder.
std::string Named(Text path, std::string& to) {
  to = path;
  return path.empty() ? "an empty name leads nowhere: name a file or folder" : "";
}
std::string TakeOutput(Text path, Options& to) { return Named(path, to.output); }
void TakeJson(Text /*none*/, Options& to) { to.json = true; }
void TakeFormat(Text word, Options& to) { to.format = ChoiceOf<FileFormat>(word); }
void TakePath(Text path, Options& to) { to.path = path; }
std::string TakeSheet(Text path, Options& to) { return Named(path, to.sheet); }
void TakeView(Text word, Options& to) { to.draw.views.push_back(ChoiceOf<ViewKind>(word)); }
void TakePaper(Text word, Options& to) { to.draw.paper = ChoiceOf<Paper>(word); }
void TakeDate(Text text, Options& to) { to.draw.date = text; }
void TakeSizes(Text word, Options& to) { to.draw.all_sizes = word == "all"; }
void TakeHidden(Text /*none*/, Options& to) { to.draw.hidden_boxes = true; }
std::string TakeScale(Text text, Options& to) {
  to.draw.scale = text;
  return IsScale(text) ? "" : "\"" + std::string(text) + "\" is not a scale such as 1:8";
}
void TakeTemplates(Text word, Options& to) {
  to.stick.templates = word != "without";
  to.stick.sticks = word != "only";
}
template <std::string (*read)(Text, StickOptions&)>
std::string OfSticks(Text text, Options& to) {
  return read(text, to.stick);
}

// --- Options of several commands ----------------------------------------------------------------

constexpr auto kNoChoices = nullptr;

constexpr OptionRow kSpec{"SPEC",   "",         "The spec: a file, or - for standard input",
                          TakeSpec, kNoChoices, true};
constexpr OptionRow kJson{"--json", "", "Print JSON, errors included", TakeJson};

constexpr OptionRow File(bool required) {
  return {"-o,--output", "FILE",     "The file to write, or - for standard output",
          TakeOutput,    kNoChoices, required};
}
constexpr OptionRow Folder(bool required) {
  return {"-o,--output", "DIR", "The folder to write into", TakeOutput, kNoChoices, required};
}

// What every command that makes sheets takes.
constexpr OptionRow kPaper{
    "--paper",    "PAPER",      "Letter, Tabloid, A4 or A3 (Letter for inches, otherwise A4)",
    TakePaper,    Words<Paper>, false,
    Often::kOnce, true};
constexpr OptionRow kDate{"--date", "DATE", "A date for the title block, as typed", TakeDate};

// --- Options of one command, in the order of its help -------------------------------------------

constexpr std::array kCommon{OptionRow{"--color", "WHEN",
                                       "Color: auto (on a terminal), always, never", TakeColor,
                                       Words<ColorChoice>}};

constexpr std::array kSizeOptions{kSpec, File(false), kJson};

constexpr std::array kCheckOptions{
    kSpec, File(false),
    OptionRow{"--sheet", "DIR", "Also write the fitting sheet, as SVG and PDF, into this folder",
              TakeSheet},
    kJson};

constexpr std::array kDrawOptions{
    kSpec,
    Folder(true),
    OptionRow{"--format", "FORMAT",
              "svg: one file for each view and sheet; pdf: one file of all sheets; png: previews",
              TakeFormat, Formats<FileFormat::kSvg, 3>},
    OptionRow{"--view", "VIEW",
              "front, side, plan, sizes, details, overview or parts; repeat for more (all)",
              TakeView, Words<ViewKind>, false, Often::kRepeated},
    OptionRow{"--scale", "SCALE",
              "Scale of elevation, section and plan, such as 1:8 (the largest that fits)",
              TakeScale},
    OptionRow{"--sizes", "WHICH", "All dimensions, or only the key ones", TakeSizes, Sizes},
    OptionRow{"--hidden", "", "Show the boxes behind the fronts", TakeHidden},
    kPaper,
    kDate,
    kJson};

constexpr std::array kStickOptions{
    kSpec,
    File(true),
    OptionRow{"--format", "FORMAT",
              "pdf: one file of all pages; svg: one file for each stick in the folder -o, or, with "
              "--paper, one for each page",
              TakeFormat, StickFormats},
    OptionRow{"--paper", "PAPER",
              "Letter, Tabloid, A4, A3 or roll (Letter for inches, otherwise A4)",
              OfSticks<ReadStickPaper>, StickPaperWords, false, Often::kOnce, true},
    OptionRow{"--roll-width", "LENGTH", "Width of the roll, such as 24in or 610 (mm)",
              OfSticks<ReadRollWidth>},
    OptionRow{"--max-length", "LENGTH", "Longest page of a roll, at most 200in",
              OfSticks<ReadMaxLength>},
    OptionRow{"--margin", "LENGTH", "What the printer leaves unprinted at each edge (10 mm)",
              OfSticks<ReadMargin>},
    OptionRow{"--correct", "BARS",
              "x=TRUE:MEASURED,y=TRUE:MEASURED of the bars, to correct for the printer",
              OfSticks<ReadCorrection>},
    OptionRow{"--screws", "ROW", "Rows of slide screws, SETBACK:PITCH (--mark screws: 37:32 mm)",
              OfSticks<ReadScrews>},
    OptionRow{"--mark", "WORDS",
              "case, box, front: only these lanes; datum-up, mirror: orientation; in, mm, both: "
              "units; screws: rows along the slides; separate several with commas",
              OfSticks<ReadStickMark>, StickMarkWords, false, Often::kWithCommas},
    OptionRow{"--templates", "WHICH", "Drilling and groove templates: with, without, only",
              TakeTemplates, Templates},
    kJson};

constexpr std::array kShopOptions{kSpec, Folder(true), kPaper, kDate, kJson};

constexpr std::array kPartsOptions{
    kSpec, File(false),
    OptionRow{"--format", "FORMAT",
              "table; csv: the cut list; hardware-csv: the hardware; dxf: sheet parts, -o DIR",
              TakeFormat, Formats<FileFormat::kTable, 4>},
    kJson};

constexpr std::array kStockOptions{
    OptionRow{"SPEC", "", "The specs that share the stock; - for standard input", TakeSpec,
              kNoChoices, true, Often::kRepeated},
    Folder(false),
    OptionRow{
        "--format", "FORMAT",
        "Format of the drawings: svg: one file for each sheet; pdf: one file of all; png: previews",
        TakeFormat, Formats<FileFormat::kSvg, 3>},
    kPaper,
    kDate,
    kJson};

constexpr std::array kWhyOptions{
    kSpec,
    OptionRow{"DIMENSION", "", "Such as D2.box.width or opening.height", TakePath, kNoChoices,
              true},
    kJson};

constexpr std::array kNewOptions{File(false)};

// --- The commands -------------------------------------------------------------------------------

constexpr std::array kCommands{
    CommandRow{"size", "Solve a spec; print every size as tables, or the result as JSON",
               "tillwright size specs/sewing-frame-pedestal.json", kSizeOptions, SizeCommand},
    CommandRow{"check", "Check the gaps: tolerances, seasons, what you measured, spacers",
               "tillwright check specs/finishing-tool-chest.json", kCheckOptions, CheckCommand},
    CommandRow{"draw", "Draw dimensioned views, details, parts and sheets into a folder",
               "tillwright draw specs/sewing-frame-pedestal.json -o out", kDrawOptions,
               DrawCommand},
    CommandRow{"stick", "Print story sticks and templates at full scale",
               "tillwright stick specs/sewing-frame-pedestal.json -o sticks.pdf", kStickOptions,
               StickCommand},
    CommandRow{"shop", "Write the whole packet for one job into a folder, with a page to open",
               "tillwright shop specs/sewing-frame-pedestal.json -o packet", kShopOptions,
               ShopCommand},
    CommandRow{"parts", "Print the cut list and the hardware",
               "tillwright parts specs/sewing-frame-pedestal.json --format csv -o cuts.csv",
               kPartsOptions, PartsCommand},
    CommandRow{"stock", "Lay the parts out on sheets and boards; print what to buy and cut",
               "tillwright stock specs/sewing-frame-pedestal.json", kStockOptions, StockCommand},
    CommandRow{"why", "Explain how one dimension was calculated",
               "tillwright why specs/sewing-frame-pedestal.json D2.box.width", kWhyOptions,
               WhyCommand},
    CommandRow{"new", "Print a starter spec, commented", "tillwright new -o bank.json", kNewOptions,
               [](Program& program) { return program.Emit(StarterSpec(), ExitStatus::kOk); }},
    CommandRow{"schema", "Print the JSON Schema of the spec, for editors",
               "tillwright schema -o tillwright.schema.json", kNewOptions,
               [](Program& program) { return program.Emit(SpecSchema(), ExitStatus::kOk); }},
};

}  // namespace

template <>
std::span<const std::string_view> Words<ColorChoice>() {
  return kColors;
}
template <>
std::span<const std::string_view> Words<FileFormat>() {
  return kFormats;
}

std::span<const CommandRow> Commands() { return kCommands; }
std::span<const OptionRow> CommonOptions() { return kCommon; }

}  // namespace tillwright
