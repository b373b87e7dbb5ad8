#include "draw/stick/strip_text.h"

#include <algorithm>

#include "bank/id_list.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr std::size_t kMostIdText = 16;  // bytes of ids in a mark's name: "D1–D3, D5–D7"

// Millimeters as a rule shows them; marked when that is not the whole of it.
std::string ShortMillimeters(Length distance) {
  const Length hundredth = Length::Picometers(Length::kPerMillimeter / 100);
  const Length rounded = FloorTo(distance + PartBelow(hundredth, 2), hundredth);
  return (rounded == distance ? "" : "≈ ") + FormatMillimeters(rounded);
}

// "D1–D4", or of many that do not follow one another "D1 +3".
std::string ShortIds(const std::vector<std::string>& ids) {
  IdList list;
  for (const std::string& id : ids) list.Add(id);
  std::string text = list.ToText();
  if (ids.size() < 2 || text.size() <= kMostIdText) return text;
  return ids[0] + " +" + std::to_string(ids.size() - 1);
}

// "front D1–D4"; either may be empty.
std::string Before(const std::string& part, const std::string& ids) {
  return part.empty() || ids.empty() ? part + ids : part + ' ' + ids;
}

LabelStyle CaptionStyle() { return {.cap_height = kCaptionCap}; }

std::vector<std::string> Wrapped(const std::string& text, double width,
                                 const TextMetrics& metrics) {
  return WrapText(metrics, text, CaptionStyle(), width);
}

}  // namespace

std::string LaneWord(StickLane lane) {
  std::string word;
  for (const char c : ToText(lane)) word += static_cast<char>(c - 'a' + 'A');
  return word;
}

std::string LaneTitle(const Strip& strip) {
  std::string title = LaneWord(strip.lane);
  if (strip.parts > 1)
    title += " " + std::to_string(strip.part) + "/" + std::to_string(strip.parts);
  return title + " · " + strip.stick->title;
}

Unit RulerUnit(const StripStyle& style) {
  switch (style.units) {
    case StickUnits::kOwn:
    case StickUnits::kBoth:
      return style.unit;
    case StickUnits::kInch:
      return Unit::kInch;
    case StickUnits::kMillimeter:
      return Unit::kMillimeter;
  }
  return style.unit;
}

std::string DistanceText(Length distance, const StripStyle& style) {
  const std::string inches = FormatInches(distance);
  const std::string millimeters = ShortMillimeters(distance);
  if (style.units != StickUnits::kBoth) {
    return RulerUnit(style) == Unit::kInch ? inches : millimeters;
  }
  return style.unit == Unit::kInch ? inches + " in, " + millimeters + " mm"
                                   : millimeters + " mm, " + inches + " in";
}

std::string DistanceWithUnit(Length distance, const StripStyle& style) {
  std::string text = DistanceText(distance, style);
  if (style.units != StickUnits::kBoth) text += RulerUnit(style) == Unit::kInch ? " in" : " mm";
  return text;
}

Label MarkLabel(const Stick& stick, const StickMark& mark, const StripStyle& style,
                double max_width, const TextMetrics& metrics) {
  const bool datum = mark.at.IsZero() && mark.what == stick.datum;
  std::string text = datum ? "DATUM" : Before(mark.part, ShortIds(mark.ids));
  if (!text.empty()) text += ' ';
  // At the end of the strip its caption names the datum.
  if (!datum || stick.Begin(mark.lane) < Length()) text += mark.what + ' ';
  text += ' ' + DistanceText(mark.at, style);
  const LabelStyle look{.cap_height = kMarkCap,
                        .weight = datum ? TextWeight::kBold : TextWeight::kRegular,
                        .anchor = style.mirror ? TextAnchor::kRight : TextAnchor::kLeft,
                        .max_width = max_width};
  Label label = MakeLabel(metrics, text, look, {0, 0}, mark.sums.front());
  return label;
}

std::string BodyText(const StickSpan& span, const StripStyle& style) {
  return Before(span.what, ShortIds(span.ids)) + "  " + DistanceText(span.to - span.from, style);
}

std::string PieceLetter(int piece) {
  constexpr std::string_view kLetters = "ABCDEFGHKLMNPRSTUVWXYZ";
  constexpr int kCount = static_cast<int>(kLetters.size());
  std::string letters;
  for (int n = piece; n > 0; n = (n - 1) / kCount) {
    letters.insert(letters.begin(), kLetters[static_cast<std::size_t>((n - 1) % kCount)]);
  }
  return letters;
}

std::vector<std::string> FootLines(const Strip& strip, int piece, const StripStyle& style,
                                   const TextMetrics& metrics) {
  const double width = strip.width - kFootText;
  if (piece > 1) {
    return Wrapped("cut on this line, place it on " + PieceLetter(piece - 1) + " at " +
                       FormatWithUnit(strip.From(piece), RulerUnit(style)),
                   width, metrics);
  }
  const Stick& stick = *strip.stick;
  std::vector<std::string> lines =
      Wrapped(strip.begin.IsZero() ? "datum end: " + stick.datum
                                   : "this end is " + DistanceWithUnit(-strip.begin, style) +
                                         " before the datum, " + stick.datum,
              width, metrics);
  if (stick.alike.empty()) return lines;
  for (std::string& line : Wrapped("identical, in this order: " + stick.alike, width, metrics)) {
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<std::string> JointLines(const Strip& strip, int piece, const StripStyle& style,
                                    const TextMetrics& metrics) {
  return Wrapped("place " + PieceLetter(piece + 1) + " on the line, " +
                     FormatWithUnit(strip.To(piece), RulerUnit(style)) + " from the datum",
                 strip.width - 2 * kBesideJoint, metrics);
}

std::vector<std::string> TotalLines(const Strip& strip, const StripStyle& style,
                                    const TextMetrics& metrics) {
  return Wrapped("TOTAL, datum to last mark: " +
                     DistanceWithUnit(strip.stick->End(strip.lane), style) + ". Check with a tape.",
                 strip.width, metrics);
}

}  // namespace tillwright
