#include <algorithm>

#include "text/utf8_width.h"
#include "tillwright/write.h"
#include "write/json_text.h"

namespace tillwright {
namespace {

constexpr std::size_t kMostShown = 100;  // diagnostics; the rest are counted
constexpr int kMostOfLine = 120;         // characters of a source line

std::string_view SeverityWord(Severity severity) {
  switch (severity) {
    case Severity::kError:
      return "error";
    case Severity::kWarning:
      return "warning";
    case Severity::kNote:
      return "note";
  }
  return "";
}

// `count` characters of `text` from character `first` on.
std::string Slice(std::string_view text, int first, int count) {
  std::string out;
  int at = -1;
  for (const char c : text) {
    if (StartsCharacter(c)) ++at;
    if (at >= first && at < first + count) out += c;
  }
  return out;
}

// The line with a caret under the place; of a very long line, the stretch round it.
void AppendExcerpt(std::string& out, const Location& at, const std::string& hint) {
  const int skip = at.column > kMostOfLine * 3 / 4 ? at.column - kMostOfLine / 2 : 0;
  std::string source = Slice(at.source, skip, kMostOfLine);
  std::string number = std::to_string(at.line);
  number.insert(number.begin(), number.size() < 4 ? 4 - number.size() : 0, ' ');
  out += number + " | " + Printable(source) + "\n";
  std::string under(number.size(), ' ');
  under += " | ";
  under.append(static_cast<std::size_t>(at.column - 1 - skip), ' ');
  const int room = std::max(1, kMostOfLine - (at.column - 1 - skip));
  under.append(static_cast<std::size_t>(std::min(at.width, room)), '^');
  if (!hint.empty()) under += " " + Printable(hint);
  out += under + "\n";
}

void AppendOne(std::string& out, const Diagnostic& d, std::string_view file, std::string_view text,
               TextStyle style) {
  const bool shown = d.place.IsSomewhere() && !text.empty();
  const Location at = shown ? Locate(text, d.place) : Location{};
  if (!file.empty()) out += Printable(file);
  if (shown) out += ":" + std::to_string(at.line) + ":" + std::to_string(at.column);
  if (!file.empty()) out += ": ";
  if (style.color) out += d.severity == Severity::kError ? "\x1b[31m" : "\x1b[33m";
  out += SeverityWord(d.severity);
  if (style.color) out += "\x1b[0m";
  out += ": " + Printable(d.message) + " [" + std::string(CodeText(d.code)) + "]\n";
  if (shown) {
    AppendExcerpt(out, at, d.hint);
  } else if (!d.hint.empty()) {
    out += "  " + Printable(d.hint) + "\n";
  }
}

// In the order of the text; what is nowhere first.
std::vector<const Diagnostic*> Ordered(const Diagnostics& diagnostics) {
  std::vector<const Diagnostic*> order;
  for (const Diagnostic& d : diagnostics) order.push_back(&d);
  std::ranges::stable_sort(order, {}, [](const Diagnostic* d) {
    return d->place.IsSomewhere() ? std::int64_t{d->place.offset} : -1;
  });
  return order;
}

}  // namespace

std::string DiagnosticsText(const Diagnostics& diagnostics, std::string_view file,
                            std::string_view text, TextStyle style) {
  std::string out;
  const std::vector<const Diagnostic*> order = Ordered(diagnostics);
  for (std::size_t i = 0; i < std::min(order.size(), kMostShown); ++i) {
    AppendOne(out, *order[i], file, text, style);
  }
  if (order.size() > kMostShown) {
    out += "and " + std::to_string(order.size() - kMostShown) + " more\n";
  }
  return out;
}

std::string DiagnosticsJson(const Diagnostics& diagnostics, std::string_view file,
                            std::string_view text) {
  JsonText json(1024);
  json.BreakLines(2).Open('{').Open("errors", '[');
  std::vector<const Diagnostic*> order = Ordered(diagnostics);
  if (order.size() > kMostShown) order.resize(kMostShown);
  std::vector<Place> places;
  for (const Diagnostic* d : order) places.push_back(d->place);
  const std::vector<std::string> pointers = PointersTo(text, places);
  for (std::size_t i = 0; i < order.size(); ++i) {
    const Diagnostic& d = *order[i];
    json.Open('{').Text("code", CodeText(d.code)).Text("message", d.message);
    json.Open("where", '{').Text("file", file);
    if (d.place.IsSomewhere() && !text.empty()) {
      const Location at = Locate(text, d.place);
      json.Number("line", at.line).Number("column", at.column).Text("path", pointers[i]);
    } else {
      json.Key("line").Null().Key("column").Null().Key("path").Null();
    }
    json.Close().Text("hint", d.hint).Close();
  }
  json.Close().Close();
  std::string out = json.Take();
  out += '\n';
  return out;
}

}  // namespace tillwright
