// The only place that sees CLI11.
#include "cli/options.h"

#include <CLI/CLI.hpp>
#include <algorithm>

#include "cli/command_table.h"
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

class Parser {
 public:
  Parser() : app_(kPurpose, "tillwright") {
    app_.set_version_flag("--version", std::string("tillwright ") + kVersion);
    app_.footer(kFooter);
    app_.fallthrough();
    app_.require_subcommand(0, 1);
    for (const OptionRow& option : CommonOptions()) Add(app_, option);
    for (const CommandRow& row : Commands()) {
      CLI::App* sub = app_.add_subcommand(row.name, row.about);
      sub->footer(std::string("\nExample: ") + row.example);
      for (const OptionRow& option : row.options) Add(*sub, option);
    }
  }

  ParsedOptions Run(const std::vector<std::string>& args) {
    const bool json = std::ranges::find(args, "--json") != args.end();
    if (args.empty()) return {nullptr, {}, kShortHelp, true, false};
    std::vector<std::string> reversed(args.rbegin(), args.rend());  // as CLI11 wants them
    try {
      app_.parse(reversed);
    } catch (const CLI::CallForHelp&) {
      return {nullptr, {}, HelpText(), false, json};
    } catch (const CLI::CallForAllHelp&) {
      return {nullptr, {}, app_.help("", CLI::AppFormatMode::All), false, json};
    } catch (const CLI::CallForVersion&) {
      return {nullptr, {}, app_.version() + "\n", false, json};
    } catch (const CLI::ParseError& error) {
      return {nullptr, {}, Misused(args, error.what()), true, json};
    }
    for (const CommandRow& row : Commands()) {
      if (app_.get_subcommand(row.name)->parsed()) return {&row, options_, {}, false, json};
    }
    return {nullptr, {}, Misused(args, "a command is missing"), true, json};
  }

 private:
  void Add(CLI::App& app, const OptionRow& row) {
    CLI::Option* option = row.IsFlag() ? AddFlag(app, row)
                          : row.often == Often::kOnce
                              ? AddTaking<std::string>(app, row)
                              : AddTaking<std::vector<std::string>>(app, row);
    if (!row.IsFlag()) option->type_name(row.argument);
    if (row.required) option->required();
    if (row.often != Often::kOnce && !row.IsPlaced()) option->allow_extra_args(false);
    if (row.often == Often::kWithCommas) option->delimiter(',');
    if (row.choices == nullptr) return;
    const std::span<const std::string_view> words = row.choices();
    const std::vector<std::string> choices(words.begin(), words.end());
    if (row.any_case) {
      option->transform(CLI::IsMember(choices, CLI::ignore_case));
    } else {
      option->check(CLI::IsMember(choices));
    }
  }

  CLI::Option* AddFlag(CLI::App& app, const OptionRow& row) {
    return app.add_flag_callback(
        row.name, [this, &row] { Take(row, std::string()); }, row.help);
  }

  template <class T>
  CLI::Option* AddTaking(CLI::App& app, const OptionRow& row) {
    return app.add_option_function<T>(
        row.name, [this, &row](const T& given) { Take(row, given); }, row.help);
  }

  void Take(const OptionRow& row, const std::vector<std::string>& given) {
    for (const std::string& text : given) Take(row, text);
  }
  void Take(const OptionRow& row, const std::string& text) {
    const std::string fault = row.take(text, options_);
    if (!fault.empty()) throw CLI::ValidationError(row.name, fault);
  }

  std::string HelpText() {
    for (const CommandRow& row : Commands()) {
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
    for (const CommandRow& row : Commands()) names.emplace_back(row.name);
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
};

}  // namespace

ParsedOptions ParseOptions(const std::vector<std::string>& args) { return Parser().Run(args); }

}  // namespace tillwright
