#include "cli/stick_options.h"

#include <algorithm>
#include <array>

#include "cli/choice.h"
#include "tillwright/draw.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, 9> kMarkWords{"case", "box", "front", "datum-up", "mirror",
                                                     "in",   "mm",  "both",  "screws"};
constexpr std::string_view kRoll = "roll";
constexpr double kMostMargin = 40;        // mm
constexpr double kLongestPage = 5080;     // mm, 200 in: a PDF page
constexpr double kMostCorrection = 0.03;  // a printer further out wants mending

std::string Quoted(std::string_view text) { return "\"" + std::string(text) + "\""; }

// A length in millimeters between two bounds.
std::string ReadMillimeters(std::string_view text, double least, double most, double& into) {
  const ParsedLength parsed = ParseLength(text, Unit::kMillimeter);
  if (!parsed.value) return parsed.fault.message;
  const double mm = ToMillimeters(*parsed.value);
  if (mm < least || mm > most) {
    return Quoted(text) + " is not between " + std::to_string(static_cast<int>(least)) + " and " +
           std::to_string(static_cast<int>(most)) + " mm";
  }
  into = mm;
  return {};
}

// "150:149.6", both above zero.
std::string ReadPair(std::string_view text, Length& first, Length& second) {
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos) return Quoted(text) + " needs two lengths, as in 150:149.6";
  for (const auto& [part, into] :
       {std::pair{text.substr(0, colon), &first}, std::pair{text.substr(colon + 1), &second}}) {
    const ParsedLength parsed = ParseLength(part, Unit::kMillimeter);
    if (!parsed.value) return parsed.fault.message;
    if (*parsed.value <= Length()) return Quoted(part) + " must be above zero";
    *into = *parsed.value;
  }
  return {};
}

// "x=150:149.6".
std::string ReadAxis(std::string_view text, StickOptions& options) {
  const bool x = text.starts_with("x=");
  if (!x && !text.starts_with("y=")) {
    return Quoted(text) + " names no axis; write x=TRUE:MEASURED,y=TRUE:MEASURED";
  }
  Length real, measured;
  if (std::string fault = ReadPair(text.substr(2), real, measured); !fault.empty()) return fault;
  const double factor = ToMillimeters(real) / ToMillimeters(measured);
  if (factor < 1 - kMostCorrection || factor > 1 + kMostCorrection) {
    return Quoted(text) + " is off by more than 3 %: print at 100 % and measure again";
  }
  (x ? options.correct_x : options.correct_y) = factor;
  return {};
}

}  // namespace

std::span<const std::string_view> StickMarkWords() { return kMarkWords; }

std::span<const std::string_view> StickPaperWords() {
  static constexpr auto kWords = [] {
    std::array<std::string_view, kPapers.size() + 1> words;
    std::ranges::transform(kPapers, words.begin(), &PaperSize::name);
    words.back() = kRoll;
    return words;
  }();
  return kWords;
}

std::string ReadStickMark(std::string_view word, StickOptions& options) {
  for (const StickLane lane : {StickLane::kCase, StickLane::kBox, StickLane::kFront}) {
    if (word == ToText(lane)) options.lanes.push_back(lane);
  }
  if (word == "datum-up") options.datum_up = true;
  if (word == "mirror") options.mirror = true;
  if (word == "in") options.units = StickUnits::kInch;
  if (word == "mm") options.units = StickUnits::kMillimeter;
  if (word == "both") options.units = StickUnits::kBoth;
  if (word == "screws" && !options.screws) options.screws.emplace();
  return {};
}

std::string ReadStickPaper(std::string_view word, StickOptions& options) {
  options.roll = word == kRoll;
  if (!options.roll) options.paper = ChoiceOf<Paper>(word);
  return {};
}

std::string ReadMargin(std::string_view text, StickOptions& options) {
  return ReadMillimeters(text, 0, kMostMargin, options.margin);
}

std::string ReadRollWidth(std::string_view text, StickOptions& options) {
  return ReadMillimeters(text, 80, kLongestPage, options.roll_width);
}

std::string ReadMaxLength(std::string_view text, StickOptions& options) {
  return ReadMillimeters(text, 200, kLongestPage, options.max_length);
}

std::string ReadScrews(std::string_view text, StickOptions& options) {
  ScrewRow row;
  std::string fault = ReadPair(text, row.setback, row.pitch);
  if (fault.empty() && row.pitch < Length::Millimeters(5)) {
    fault = Quoted(text) + " puts screws closer than 5 mm";
  }
  if (fault.empty()) options.screws = row;
  return fault;
}

std::string ReadCorrection(std::string_view text, StickOptions& options) {
  for (std::string_view rest = text; !rest.empty();) {
    const std::size_t comma = std::min(rest.find(','), rest.size());
    if (std::string fault = ReadAxis(rest.substr(0, comma), options); !fault.empty()) return fault;
    rest.remove_prefix(std::min(comma + 1, rest.size()));
  }
  return {};
}

}  // namespace tillwright
