// The only place that sees CLI11.
#include "cli/options.h"

#include <CLI/CLI.hpp>
#include <algorithm>

#include "cli/stick_options.h"
#include "text/utf8_width.h"
#include "tillwright/keys.h"
#include "tillwright/version.h"

namespace tillwright {
namespace {

constexpr const char* kPurpose =
    "Tillwright sizes banks of drawers and the casework around them, exactly.";

constexpr const char* kShortHelp =
    "Tillwright sizes banks of drawers and the casework around them, exactly.\n"
    "\n"
    "  tillwright new -o bank.json         a starter spec to change\n"
    "  tillwright size bank.json           every size, as tables for the shop\n"
    "  tillwright check bank.json          whether its gaps will come out even, all year round\n"
    "  tillwright draw bank.json -o out    dimensioned drawings\n"
    "\n"
    "tillwright --help lists the rest.\n";

constexpr const char* kFooter =
    "\nSPEC is a file, or - for standard input.\n"
    "Exit status: 0 solved and no check fails; 1 solved, but a check fails; 2 the command line is\n"
    "wrong; 3 the spec is wrong or cannot be solved; 4 a file cannot be read or written.\n"
    "NO_COLOR in the environment turns color off.";

// One record a command: CLI11, help and suggestions all come from it.
struct CommandRow {
  Command command;
  const char* name;
  const char* about;
  const char* example;
  bool takes_spec, takes_json, takes_output;
};
constexpr CommandRow kCommands[] = {
    {Command::kSize, "size", "Solve a spec; print every size as tables, or the result as JSON",
     "tillwright size specs/sewing-frame-pedestal.json", true, true, true},
    {Command::kCheck, "check", "Check the gaps: tolerances, seasons, what you measured, spacers",
     "tillwright check specs/finishing-tool-chest.json", true, true, true},
    {Command::kDraw, "draw", "Draw dimensioned views, details, parts and sheets into a folder",
     "tillwright draw specs/sewing-frame-pedestal.json -o out", true, true, true},
    {Command::kStick, "stick", "Print story sticks and templates at full scale",
     "tillwright stick specs/sewing-frame-pedestal.json -o sticks.pdf", true, true, true},
    {Command::kShop, "shop",
     "Write the whole packet for one job into a folder, with a page to open",
     "tillwright shop specs/sewing-frame-pedestal.json -o packet", true, true, true},
    {Command::kParts, "parts", "Print the cut list and the hardware",
     "tillwright parts specs/sewing-frame-pedestal.json --format csv -o cuts.csv", true, true,
     true},
    {Command::kStock, "stock", "Lay the parts out on sheets and boards; print what to buy and cut",
     "tillwright stock specs/sewing-frame-pedestal.json", true, true, true},
    {Command::kWhy, "why", "Explain how one dimension was calculated",
     "tillwright why specs/sewing-frame-pedestal.json D2.box.width", true, true, false},
    {Command::kNew, "new", "Print a starter spec, commented", "tillwright new -o bank.json", false,
     false, true},
    {Command::kSchema, "schema", "Print the JSON Schema of the spec, for editors",
     "tillwright schema -o tillwright.schema.json", false, false, true},
};

class Parser {
 public:
  Parser() : app_(kPurpose, "tillwright") {
    app_.set_version_flag("--version", std::string("tillwright ") + kVersion);
    app_.footer(kFooter);
    app_.fallthrough();
    app_.require_subcommand(0, 1);
    app_.add_option("--color", color_, "Color: auto (on a terminal), always, never")
        ->check(CLI::IsMember({"auto", "always", "never"}))
        ->type_name("WHEN");
    for (const CommandRow& row : kCommands) Add(row);
  }

  ParsedOptions Run(const std::vector<std::string>& args) {
    const bool json = std::ranges::find(args, "--json") != args.end();
    if (args.empty()) return {std::nullopt, kShortHelp, true, false};
    std::vector<std::string> reversed(args.rbegin(), args.rend());  // as CLI11 wants them
    try {
      app_.parse(reversed);
    } catch (const CLI::CallForHelp&) {
      return {std::nullopt, HelpText(), false, json};
    } catch (const CLI::CallForAllHelp&) {
      return {std::nullopt, app_.help("", CLI::AppFormatMode::All), false, json};
    } catch (const CLI::CallForVersion&) {
      return {std::nullopt, app_.version() + "\n", false, json};
    } catch (const CLI::ParseError& error) {
      return {std::nullopt, Misused(args, error.what()), true, json};
    }
    for (const CommandRow& row : kCommands) {
      if (!app_.get_subcommand(row.name)->parsed()) continue;
      options_.command = row.command;
      if (!options_.specs.empty()) options_.spec = options_.specs.front();
      options_.draw.all_sizes = sizes_ != "key";
      options_.stick.templates = templates_ != "without";
      options_.stick.sticks = templates_ != "only";
      options_.color = color_ == "always"  ? ColorChoice::kAlways
                       : color_ == "never" ? ColorChoice::kNever
                                           : ColorChoice::kAuto;
      return {options_, {}, false, json};
    }
    return {std::nullopt, Misused(args, "a command is missing"), true, json};
  }

 private:
  void Add(const CommandRow& row) {
    CLI::App* sub = app_.add_subcommand(row.name, row.about);
    sub->footer(std::string("\nExample: ") + row.example);
    if (row.command == Command::kStock) {
      sub->add_option("SPEC", options_.specs,
                      "The specs that share the stock; - for standard input")
          ->required()
          ->type_name("");
    } else if (row.takes_spec) {
      sub->add_option("SPEC", options_.spec, "The spec: a file, or - for standard input")
          ->required()
          ->type_name("");
    }
    if (row.command == Command::kWhy) {
      sub->add_option("DIMENSION", options_.path, "Such as D2.box.width or opening.height")
          ->required()
          ->type_name("");
    }
    if (row.takes_output) {
      const bool folder = row.command == Command::kDraw || row.command == Command::kShop ||
                          row.command == Command::kStock;
      CLI::Option* output = sub->add_option(
          "-o,--output", options_.output,
          folder ? "The folder to write into" : "The file to write, or - for standard output");
      output->type_name(folder ? "DIR" : "FILE");
      if (row.command != Command::kStock && (folder || row.command == Command::kStick)) {
        output->required();
      }
    }
    if (row.command == Command::kDraw) AddDrawOptions(*sub);
    if (row.command == Command::kStick) AddStickOptions(*sub);
    if (row.command == Command::kShop) AddSheetOptions(*sub);
    if (row.command == Command::kStock) AddStockOptions(*sub);
    if (row.command == Command::kParts) {
      sub->add_option(
             "--format", options_.format,
             "table; csv: the cut list; hardware-csv: the hardware; dxf: sheet parts, -o DIR")
          ->check(CLI::IsMember({"table", "csv", "hardware-csv", "dxf"}))
          ->type_name("FORMAT");
    }
    if (row.command == Command::kCheck) {
      sub->add_option("--sheet", options_.sheet,
                      "Also write the fitting sheet, as SVG and PDF, into this folder")
          ->type_name("DIR");
    }
    if (row.takes_json) sub->add_flag("--json", options_.json, "Print JSON, errors included");
  }

  void AddDrawOptions(CLI::App& sub) {
    DrawOptions& draw = options_.draw;
    sub.add_option(
           "--format", options_.format,
           "svg: one file for each view and sheet; pdf: one file of all sheets; png: previews")
        ->check(CLI::IsMember({"svg", "pdf", "png"}))
        ->type_name("FORMAT");
    sub.add_option("--view", draw.views,
                   "front, side, plan, details, parts or overview; repeat for more (all)")
        ->check(CLI::IsMember(Texts(ViewNames())))
        ->allow_extra_args(false)
        ->type_name("VIEW");
    sub.add_option("--scale", draw.scale,
                   "Scale of elevation, section and plan, such as 1:8 (the largest that fits)")
        ->check([](const std::string& text) {
          return IsScale(text) ? std::string() : "\"" + text + "\" is not a scale such as 1:8";
        })
        ->type_name("SCALE");
    sub.add_option("--sizes", sizes_, "All dimensions, or only the key ones")
        ->check(CLI::IsMember({"all", "key"}))
        ->type_name("WHICH");
    sub.add_flag("--hidden", draw.hidden_boxes, "Show the boxes behind the fronts");
    AddSheetOptions(sub);
  }

  void AddStockOptions(CLI::App& sub) {
    sub.add_option("--format", options_.format,
                   "Format of the drawings: svg: one file for each sheet; pdf: one file of all; "
                   "png: previews")
        ->check(CLI::IsMember({"svg", "pdf", "png"}))
        ->type_name("FORMAT");
    AddSheetOptions(sub);
  }

  // What every command that makes sheets takes.
  void AddSheetOptions(CLI::App& sub) {
    DrawOptions& draw = options_.draw;
    sub.add_option("--paper", draw.paper,
                   "Letter, Tabloid, A4 or A3 (Letter for inches, otherwise A4)")
        ->transform(CLI::IsMember(Texts(PaperNames()), CLI::ignore_case))
        ->type_name("PAPER");
    sub.add_option("--date", draw.date, "A date for the title block, as typed")->type_name("DATE");
  }

  void AddStickOptions(CLI::App& sub) {
    StickOptions& stick = options_.stick;
    sub.add_option("--format", options_.format,
                   "pdf: one file of all pages; svg: one file for each stick in the folder -o, or, "
                   "with --paper, one for each page")
        ->check(CLI::IsMember({"pdf", "svg"}))
        ->type_name("FORMAT");
    sub.add_option("--paper", stick.paper,
                   "Letter, Tabloid, A4, A3 or roll (Letter for inches, otherwise A4)")
        ->transform(CLI::IsMember(Texts(StickPaperNames()), CLI::ignore_case))
        ->type_name("PAPER");
    AddRead(sub, "--roll-width", "Width of the roll, such as 24in or 610 (mm)", "LENGTH",
            ReadRollWidth);
    AddRead(sub, "--max-length", "Longest page of a roll, at most 200in", "LENGTH", ReadMaxLength);
    AddRead(sub, "--margin", "What the printer leaves unprinted at each edge (10 mm)", "LENGTH",
            ReadMargin);
    AddRead(sub, "--correct",
            "x=TRUE:MEASURED,y=TRUE:MEASURED of the bars, to correct for the printer", "BARS",
            ReadCorrection);
    AddRead(sub, "--screws", "Rows of slide screws, SETBACK:PITCH (--mark screws: 37:32 mm)", "ROW",
            ReadScrews);
    sub.add_option_function<std::vector<std::string>>(
           "--mark",
           [&stick](const std::vector<std::string>& words) {
             for (const std::string& word : words) ReadStickMark(word, stick);
           },
           "case, box, front: only these lanes; datum-up, mirror: orientation; in, mm, both: "
           "units; screws: rows along the slides; separate several with commas")
        ->check(CLI::IsMember(StickMarkWords()))
        ->delimiter(',')
        ->allow_extra_args(false)
        ->type_name("WORDS");
    sub.add_option("--templates", templates_, "Drilling and groove templates: with, without, only")
        ->check(CLI::IsMember({"with", "without", "only"}))
        ->type_name("WHICH");
  }

  // An option whose text one of our own readers takes.
  void AddRead(CLI::App& sub, const char* name, const char* about, const char* type,
               std::string (*read)(std::string_view, StickOptions&)) {
    sub.add_option_function<std::string>(
           name,
           [this, name, read](const std::string& text) {
             const std::string fault = read(text, options_.stick);
             if (!fault.empty()) throw CLI::ValidationError(name, fault);
           },
           about)
        ->type_name(type);
  }

  static std::vector<std::string> Texts(std::span<const std::string_view> words) {
    return {words.begin(), words.end()};
  }

  std::string HelpText() {
    for (const CommandRow& row : kCommands) {
      if (app_.get_subcommand(row.name)->parsed()) return app_.get_subcommand(row.name)->help();
    }
    return app_.help();
  }

  // What is wrong in words, with the nearest command or option for a word that is neither.
  std::string Misused(const std::vector<std::string>& args, const std::string& what) {
    std::string text = "error: " + Printable(what) + "\n";
    const std::string hint = Suggestion(args);
    if (!hint.empty()) text += "  did you mean \"" + hint + "\"?\n";
    text += "  'tillwright --help' lists the commands and options\n";
    return text;
  }

  // Every --option of the program and its commands, so that a new one is suggested without a list.
  std::vector<std::string> LongFlags() {
    std::vector<std::string> flags;
    std::vector<CLI::App*> apps = app_.get_subcommands({});
    apps.insert(apps.begin(), &app_);
    for (const CLI::App* app : apps) {
      for (const CLI::Option* option : app->get_options()) {
        for (const std::string& name : option->get_lnames()) flags.push_back("--" + name);
      }
    }
    return flags;
  }

  std::string Suggestion(const std::vector<std::string>& args) {
    std::vector<std::string> names;
    for (const CommandRow& row : kCommands) names.emplace_back(row.name);
    const std::vector<std::string> flags = LongFlags();
    bool command_seen = false;
    for (const std::string& arg : args) {
      const bool flag = arg.starts_with("-") && arg != "-";
      if (!flag && command_seen) continue;
      if (!flag) command_seen = true;
      const std::string word = arg.substr(0, arg.find('='));
      const std::vector<std::string>& known = flag ? flags : names;
      if (word == "-o" || word == "-h" || std::ranges::find(known, word) != known.end()) continue;
      const std::vector<std::string_view> views(known.begin(), known.end());
      if (const std::string_view nearest = Nearest(word, views); !nearest.empty()) {
        return std::string(nearest);
      }
    }
    return {};
  }

  CLI::App app_;
  Options options_;
  std::string color_ = "auto";
  std::string sizes_ = "all";
  std::string templates_ = "with";
};

}  // namespace

ParsedOptions ParseOptions(const std::vector<std::string>& args) { return Parser().Run(args); }

}  // namespace tillwright
