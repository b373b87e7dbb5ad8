#include "draw/stick_texts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <regex>

#include "sheet/rich_text.h"
#include "tillwright/length_text.h"

namespace tillwright::testing {
namespace {

std::vector<const Label*> LabelsOf(const SheetGroup& group) {
  std::vector<const Label*> labels;
  for (const Primitive& primitive : group.primitives) {
    if (const Label* label = std::get_if<Label>(&primitive)) labels.push_back(label);
  }
  return labels;
}

// As it is seen on paper.
std::string Seen(const Label& label) { return PlainText(label.text); }

// "BOX 1/2 · Heights 2: D1–D4" is a piece of "BOX · Heights 2", "CASE · Depths" of itself.
std::string StripOf(const std::string& title) {
  static const std::regex kTitle(R"(([A-Z]+)(?: \d+/\d+)? · ([A-Za-z]+(?: \d+(?=:))?).*)");
  std::smatch found;
  if (!std::regex_match(title, found, kTitle)) return "";
  return found[1].str() + " · " + found[2].str();
}

// Are there columns, or a line for each size?
bool IsTable(const SheetGroup& group) {
  return std::ranges::any_of(LabelsOf(group),
                             [](const Label* label) { return Seen(*label) == "thickness"; });
}

}  // namespace

std::vector<std::string> TextsOf(const SheetGroup& group) {
  std::vector<std::string> texts;
  for (const Label* label : LabelsOf(group)) texts.push_back(Seen(*label));
  return texts;
}

std::map<std::string, std::array<std::string, 3>> KeyRows(const StickSheets& sheets) {
  std::map<std::string, std::array<std::string, 3>> rows;
  for (const Sheet& sheet : sheets.sheets) {
    for (const SheetGroup& group : sheet.groups) {
      if (!group.id.starts_with("key-")) continue;
      std::array<double, 3> columns{};
      std::string name;
      bool open = false;  // the heads have been read
      for (const Label* label : LabelsOf(group)) {
        const std::string text = Seen(*label);
        if (text == "length") columns[0] = label->at.x;
        if (text == "width") columns[1] = label->at.x;
        if (text == "thickness") {
          columns[2] = label->at.x;
          open = true;
          continue;
        }
        if (!open && text.find("to which.") != std::string::npos) open = !IsTable(group);
        if (!open || text.find("to which.") != std::string::npos) continue;
        static const std::regex kLine("(length|width|thickness): (.*)");
        std::smatch line;
        if (std::regex_match(text, line, kLine)) {
          rows[name][line[1] == "length" ? 0 : line[1] == "width" ? 1 : 2] = line[2];
          continue;
        }
        const auto column = std::ranges::find_if(
            columns, [&](double x) { return std::abs(x - label->at.x) < 0.01; });
        if (column != columns.end()) {
          rows[name][static_cast<std::size_t>(column - columns.begin())] = text;
        } else if (rows.contains(name) || name.empty()) {
          name = text;
        } else {
          name += " " + text;  // goes on in the next line
        }
      }
    }
  }
  return rows;
}

StickMarkTexts::StickMarkTexts(const StickSheets& sheets) {
  for (const Sheet& sheet : sheets.sheets) {
    for (const SheetGroup& group : sheet.groups) {
      std::string strip;
      for (const std::string& text : TextsOf(group)) {
        if (strip.empty()) strip = StripOf(text);
        if (text.find("to last mark") != std::string::npos) {
          inches_ = inches_ || text.find(" in. ") != std::string::npos;
        }
      }
      if (strip.empty()) continue;
      for (const Label* label : LabelsOf(group)) {
        if (label->path.empty() || label->turn != TextTurn::kLevel) continue;
        // Two spaces stand before the distance.
        const std::string text = Seen(*label);
        const std::size_t at = text.rfind("  ");
        if (at != std::string::npos) distances_[strip].insert(text.substr(at + 2));
      }
    }
  }
}

bool StickMarkTexts::Has(const std::string& strip, const std::string& distance) const {
  const auto found = distances_.find(strip);
  return found != distances_.end() && found->second.contains(distance);
}

double StickMarkTexts::Millimeters(const std::string& distance) const {
  std::string text = distance;
  const std::string about = "≈ ";
  if (text.starts_with(about)) text.erase(0, about.size());
  const std::optional<Length> length =
      ParseLength(text, inches_ ? Unit::kInch : Unit::kMillimeter).value;
  EXPECT_TRUE(length) << distance;
  return length ? static_cast<double>(length->picometers()) / 1e9 : 0;
}

}  // namespace tillwright::testing
