#include "draw/rich_text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <utility>

#include "draw/utf8.h"

namespace tillwright {
namespace {

using Kind = TextRun::Kind;

constexpr std::string_view kReplacement = "‹?›";
constexpr std::string_view kEllipsis = "…";
constexpr std::string_view kDiameterText = "⌀";

// Proportions in cap heights; see the header.
constexpr double kNumeral = 0.70;
constexpr double kNumeralFromMiddle = 0.16;
constexpr double kBarHalf = 0.085 / 2;
constexpr double kBarBeyond = 0.06;
constexpr double kAfterWhole = 0.22;
constexpr double kBesideFraction = 0.12;
constexpr double kDiameterRadius = 0.40;
constexpr double kDiameterReachX = 0.40;
constexpr double kDiameterReachY = 0.62;
constexpr double kDiameterAfter = 0.28;

bool IsDigit(char32_t c) { return c >= U'0' && c <= U'9'; }
bool IsLetter(char32_t c) {
  return (c >= U'a' && c <= U'z') || (c >= U'A' && c <= U'Z') || c >= 0xc0;
}

struct Range {
  char32_t first;
  char32_t last;
};
template <std::size_t N>
bool IsIn(char32_t c, const std::array<Range, N>& ranges) {
  return std::any_of(ranges.begin(), ranges.end(),
                     [c](const Range& r) { return c >= r.first && c <= r.last; });
}

// Scripts that run from right to left or whose letters change with their neighbours.
constexpr std::array kShaped{
    Range{0x0590, 0x08ff},   Range{0x0900, 0x0dff},   Range{0x0f00, 0x109f},
    Range{0x1780, 0x18af},   Range{0x1a00, 0x1bff},   Range{0xa840, 0xa8df},
    Range{0xa980, 0xa9df},   Range{0xfb1d, 0xfdff},   Range{0xfe70, 0xfefc},
    Range{0x10800, 0x10fff}, Range{0x11000, 0x11fff}, Range{0x1e800, 0x1efff},
};
// Marks of direction and of zero width, soft hyphen.
constexpr std::array kInvisible{
    Range{0x00ad, 0x00ad}, Range{0x200b, 0x200f}, Range{0x202a, 0x202e},
    Range{0x2060, 0x206f}, Range{0xfe00, 0xfe0f}, Range{0xfeff, 0xfeff},
};
constexpr std::array kBlank{
    Range{0x00, 0x1f},
    Range{0x7f, 0xa0},
    Range{0x2028, 0x2029},
    Range{0x2000, 0x200a},
};

// The text without what cannot be shown in any font: valid UTF-8, no control characters, single
// line, no blanks at the ends.
std::u32string Clean(std::string_view text) {
  std::u32string out;
  for (std::size_t at = 0; at < text.size();) {
    const char32_t c = NextCharacter(text, at);
    if (c == kBadByte || (c & 0xfffeU) == 0xfffeU) {
      out += U'\ufffd';
    } else if (IsIn(c, kBlank)) {
      out += U' ';
    } else if (!IsIn(c, kInvisible)) {
      out += c;
    }
  }
  const std::size_t last = out.find_last_not_of(U' ');
  out.erase(last == std::u32string::npos ? 0 : last + 1);
  out.erase(0, std::min(out.find_first_not_of(U' '), out.size()));
  return out;
}

std::string ToUtf8(std::u32string_view text) {
  std::string out;
  for (const char32_t c : text) AppendCharacter(out, c);
  return out;
}

struct Precomposed {
  char32_t sign;
  std::string_view numerator;
  std::string_view denominator;
};
constexpr std::array kPrecomposed{
    Precomposed{U'½', "1", "2"}, Precomposed{U'¼', "1", "4"}, Precomposed{U'¾', "3", "4"},
    Precomposed{U'⅓', "1", "3"}, Precomposed{U'⅔', "2", "3"}, Precomposed{U'⅛', "1", "8"},
    Precomposed{U'⅜', "3", "8"}, Precomposed{U'⅝', "5", "8"}, Precomposed{U'⅞', "7", "8"},
};

// Reads a cleaned text run by run.
class RichTextReader {
 public:
  explicit RichTextReader(std::u32string_view text) : text_(text) {}

  RichText Read() {
    while (at_ < text_.size()) {
      if (!ReadFraction() && !ReadPrecomposed() && !ReadDiameter()) plain_ += text_[at_++];
    }
    Flush();
    return std::move(runs_);
  }

 private:
  [[nodiscard]] char32_t At(std::size_t i) const { return i < text_.size() ? text_[i] : U'\0'; }

  // The end of 1 to 3 digits, the first not 0, from `start`; `start` if there are none.
  [[nodiscard]] std::size_t SkipNumeral(std::size_t start) const {
    std::size_t end = start;
    while (IsDigit(At(end))) ++end;
    return At(start) == U'0' || end - start > 3 ? start : end;
  }

  [[nodiscard]] bool Isolated(std::size_t start, std::size_t end) const {
    const auto joins = [](char32_t c) {
      return IsDigit(c) || IsLetter(c) || c == U'/' || c == U'.' || c == U'\u2044';
    };
    const bool before = start > 0 && joins(At(start - 1)) && !IsDiameterSign(At(start - 1));
    // A full stop after the fraction may end a sentence; a digit after it may not follow.
    const char32_t next = At(end);
    const bool after = next == U'.' ? IsDigit(At(end + 1)) : joins(next) && next < 0x2000;
    return !before && !after;
  }

  bool ReadFraction() {
    const std::size_t slash = SkipNumeral(at_);
    if (slash == at_ || (At(slash) != U'/' && At(slash) != U'\u2044')) return false;
    const std::size_t end = SkipNumeral(slash + 1);
    if (end == slash + 1 || !Isolated(at_, end)) return false;
    AddFraction(ToUtf8(text_.substr(at_, slash - at_)),
                ToUtf8(text_.substr(slash + 1, end - slash - 1)));
    at_ = end;
    return true;
  }

  bool ReadPrecomposed() {
    const char32_t c = At(at_);
    const auto* found = std::find_if(kPrecomposed.begin(), kPrecomposed.end(),
                                     [c](const Precomposed& p) { return p.sign == c; });
    if (found == kPrecomposed.end()) return false;
    AddFraction(std::string(found->numerator), std::string(found->denominator));
    ++at_;
    return true;
  }

  static bool IsDiameterSign(char32_t c) { return c == U'ø' || c == U'Ø' || c == U'⌀'; }

  bool ReadDiameter() {
    if (!IsDiameterSign(At(at_)) || (at_ > 0 && IsLetter(At(at_ - 1)))) return false;
    std::size_t next = at_ + 1;
    while (At(next) == U' ') ++next;
    const char32_t c = At(next);
    const bool sign = std::any_of(kPrecomposed.begin(), kPrecomposed.end(),
                                  [c](const Precomposed& p) { return p.sign == c; });
    if (!IsDigit(c) && !sign) return false;
    Flush();
    runs_.push_back({Kind::kDiameter, "", ""});
    at_ = next;
    return true;
  }

  void AddFraction(std::string numerator, std::string denominator) {
    DropBlankAfterWhole();
    Flush();
    runs_.push_back({Kind::kFraction, std::move(numerator), std::move(denominator)});
  }

  // "15 " before a fraction becomes "15" if 15 is a number of its own and not the end of a name.
  void DropBlankAfterWhole() {
    if (plain_.size() < 2 || plain_.back() != U' ') return;
    std::size_t start = plain_.size() - 1;
    while (start > 0 && IsDigit(plain_[start - 1])) --start;
    const bool digits = start < plain_.size() - 1;
    const bool own = start == 0 || !(IsLetter(plain_[start - 1]) || plain_[start - 1] == U'.');
    if (digits && own) plain_.pop_back();
  }

  void Flush() {
    if (!plain_.empty()) runs_.push_back({Kind::kPlain, ToUtf8(plain_), ""});
    plain_.clear();
  }

  std::u32string_view text_;
  std::size_t at_ = 0;
  std::u32string plain_;
  RichText runs_;
};

bool EndsInDigit(const TextRun& run) {
  return run.kind == Kind::kPlain && !run.text.empty() &&
         IsDigit(static_cast<unsigned char>(run.text.back()));
}

bool StartsBlank(const TextRun& run) { return run.kind == Kind::kPlain && run.text.front() == ' '; }
bool EndsBlank(const TextRun& run) { return run.kind == Kind::kPlain && run.text.back() == ' '; }

// The space before run i, in cap heights.
double SpaceBefore(const RichText& text, std::size_t i) {
  if (i == 0) return 0;
  const TextRun& before = text[i - 1];
  const TextRun& run = text[i];
  if (before.kind == Kind::kDiameter) return 0;  // has its own space
  if (run.kind == Kind::kFraction) {
    if (EndsInDigit(before)) return kAfterWhole;
    return EndsBlank(before) ? 0 : kBesideFraction;
  }
  if (before.kind == Kind::kFraction) return StartsBlank(run) ? 0 : kBesideFraction;
  return 0;
}

// Lays runs out from left to right.
class LineSetter {
 public:
  LineSetter(const TextMetrics& metrics, TextWeight weight, double cap_height)
      : metrics_(metrics), weight_(weight), h_(cap_height) {}

  void Add(const TextRun& run, double space) {
    layout_.width += space * h_;
    PlacedRun placed;
    placed.kind = run.kind;
    switch (run.kind) {
      case Kind::kPlain:
        SetPlain(run, placed);
        break;
      case Kind::kFraction:
        SetFraction(run, placed);
        break;
      case Kind::kDiameter:
        SetDiameter(placed);
        break;
    }
    layout_.runs.push_back(placed);
  }

  TextLayout Take() { return std::move(layout_); }

 private:
  void Reach(double ascent, double descent) {
    layout_.ascent = std::max(layout_.ascent, ascent);
    layout_.descent = std::max(layout_.descent, descent);
  }

  void SetPlain(const TextRun& run, PlacedRun& placed) {
    const TextExtent extent = metrics_.Measure(run.text, weight_, h_);
    placed.text = {run.text, layout_.width, 0, h_};
    layout_.width += extent.advance;
    Reach(extent.ascent, extent.descent);
  }

  void SetFraction(const TextRun& run, PlacedRun& placed) {
    const double small = kNumeral * h_;
    const double top = metrics_.Measure(run.text, weight_, small).advance;
    const double bottom = metrics_.Measure(run.denominator, weight_, small).advance;
    const double wide = std::max(top, bottom) + 2 * kBarBeyond * h_;
    const double middle = layout_.width + wide / 2;
    const double reach = (kNumeralFromMiddle + kNumeral) * h_;
    placed.text = {run.text, middle - top / 2, h_ / 2 + kNumeralFromMiddle * h_, small};
    placed.denominator = {run.denominator, middle - bottom / 2, h_ / 2 - reach, small};
    placed.bar = {layout_.width, layout_.width + wide, h_ / 2 - kBarHalf * h_,
                  h_ / 2 + kBarHalf * h_};
    layout_.width += wide;
    Reach(h_ / 2 + reach, reach - h_ / 2);
  }

  void SetDiameter(PlacedRun& placed) {
    const double line = (weight_ == TextWeight::kBold ? 0.16 : 0.10) * h_;
    const double wide = 2 * kDiameterRadius * h_ + line;
    placed.diameter = {layout_.width + wide / 2, h_ / 2, kDiameterRadius * h_, kDiameterReachX * h_,
                       kDiameterReachY * h_,     line};
    layout_.width += wide + kDiameterAfter * h_;
    Reach(h_ / 2 + kDiameterReachY * h_, kDiameterReachY * h_ - h_ / 2);
  }

  const TextMetrics& metrics_;
  TextWeight weight_;
  double h_;
  TextLayout layout_;
};

bool CanDraw(const TextMetrics& metrics, char32_t c, TextWeight weight) {
  return !IsIn(c, kShaped) && metrics.HasGlyph(c, weight);
}

// The text with every run of characters that cannot be drawn replaced.
std::string Drawable(const TextMetrics& metrics, std::string_view text, TextWeight weight) {
  std::string out;
  bool replacing = false;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t start = at;
    const char32_t c = NextCharacter(text, at);
    const bool draws = c != kBadByte && c != U'\ufffd' && CanDraw(metrics, c, weight);
    if (draws) {
      out += text.substr(start, at - start);
    } else if (!replacing) {
      out += kReplacement;
    }
    replacing = !draws;
  }
  return out;
}

std::size_t CharacterCount(const TextRun& run) {
  if (run.kind != Kind::kPlain) return 1;
  std::size_t count = 0;
  for (std::size_t at = 0; at < run.text.size(); ++count) {
    static_cast<void>(NextCharacter(run.text, at));
  }
  return count;
}

// The first `count` characters of the text (a fraction or sign is one), followed by an ellipsis.
RichText Cut(const RichText& text, std::size_t count) {
  RichText out;
  for (const TextRun& run : text) {
    const std::size_t whole = CharacterCount(run);
    if (whole <= count) {
      out.push_back(run);
      count -= whole;
      continue;
    }
    if (run.kind == Kind::kPlain && count > 0) {
      std::size_t at = 0;
      for (std::size_t i = 0; i < count; ++i) static_cast<void>(NextCharacter(run.text, at));
      out.push_back({Kind::kPlain, run.text.substr(0, at), ""});
    }
    break;
  }
  if (out.empty() || out.back().kind != Kind::kPlain) out.push_back({Kind::kPlain, "", ""});
  std::string& last = out.back().text;
  while (!last.empty() && last.back() == ' ') last.pop_back();
  last += kEllipsis;
  return out;
}

double WidthOf(const TextMetrics& metrics, const RichText& text, const LabelStyle& style) {
  return LayoutText(metrics, text, style.weight, style.cap_height).width;
}

RichText Shorten(const TextMetrics& metrics, RichText text, const LabelStyle& style) {
  if (style.max_width <= 0 || WidthOf(metrics, text, style) <= style.max_width) return text;
  std::size_t low = 0;  // known or taken to fit
  std::size_t high = 0;
  for (const TextRun& run : text) high += CharacterCount(run);
  while (high - low > 1) {
    const std::size_t middle = low + (high - low) / 2;
    const bool fits = WidthOf(metrics, Cut(text, middle), style) <= style.max_width;
    (fits ? low : high) = middle;
  }
  return Cut(text, low);
}

RichText Prepare(const TextMetrics& metrics, RichText text, const LabelStyle& style) {
  for (TextRun& run : text) {
    if (run.kind == Kind::kPlain) run.text = Drawable(metrics, run.text, style.weight);
  }
  return Shorten(metrics, std::move(text), style);
}

// How far the start of the text is from the anchor, along the text.
double StartOffset(TextAnchor anchor, double width) {
  switch (anchor) {
    case TextAnchor::kLeft:
      return 0;
    case TextAnchor::kCentre:
      return -width / 2;
    case TextAnchor::kRight:
      return -width;
  }
  return 0;
}

PaperPoint OnBaseline(PaperPoint at, const LabelStyle& style) {
  if (style.level == TextLevel::kBaseline) return at;
  const double drop = style.cap_height / 2;
  return style.turn == TextTurn::kLevel ? PaperPoint{at.x, at.y + drop}
                                        : PaperPoint{at.x + drop, at.y};
}

PaperBox LabelBox(const Label& label, const TextLayout& layout) {
  const PaperPoint start = BaselineStart(label);
  if (label.turn == TextTurn::kLevel) {
    return {start.x, start.y - layout.ascent, start.x + layout.width, start.y + layout.descent};
  }
  return {start.x - layout.ascent, start.y - layout.width, start.x + layout.descent, start.y};
}

Label BuildLabel(const TextMetrics& metrics, RichText text, const LabelStyle& style, PaperPoint at,
                 std::string path) {
  Label label;
  label.plain = PlainText(text);
  label.text = Prepare(metrics, std::move(text), style);
  label.path = std::move(path);
  label.at = OnBaseline(at, style);
  label.cap_height = style.cap_height;
  label.weight = style.weight;
  label.anchor = style.anchor;
  label.turn = style.turn;
  const TextLayout layout = LayoutText(metrics, label.text, label.weight, label.cap_height);
  label.width = layout.width;
  label.box = LabelBox(label, layout);
  return label;
}

RichText OnePlainRun(std::string_view text) {
  std::string clean = ToUtf8(Clean(text));
  if (clean.empty()) return {};
  return {{Kind::kPlain, std::move(clean), ""}};
}

}  // namespace

RichText ParseRichText(std::string_view text) { return RichTextReader(Clean(text)).Read(); }

std::string PlainText(const RichText& text) {
  std::string out;
  const TextRun* before = nullptr;
  for (const TextRun& run : text) {
    switch (run.kind) {
      case Kind::kPlain:
        out += run.text;
        break;
      case Kind::kFraction:
        if (before != nullptr && EndsInDigit(*before)) out += ' ';
        out += run.text + '/' + run.denominator;
        break;
      case Kind::kDiameter:
        out += kDiameterText;
        out += ' ';
        break;
    }
    before = &run;
  }
  return out;
}

Label MakeLabel(const TextMetrics& metrics, std::string_view text, const LabelStyle& style,
                PaperPoint at, std::string path) {
  return BuildLabel(metrics, ParseRichText(text), style, at, std::move(path));
}

Label MakePlainLabel(const TextMetrics& metrics, std::string_view text, const LabelStyle& style,
                     PaperPoint at) {
  return BuildLabel(metrics, OnePlainRun(text), style, at, "");
}

TextSize MeasureLabel(const TextMetrics& metrics, std::string_view text, const LabelStyle& style) {
  const RichText prepared = Prepare(metrics, ParseRichText(text), style);
  const TextLayout layout = LayoutText(metrics, prepared, style.weight, style.cap_height);
  return {layout.width, layout.ascent + layout.descent};
}

std::vector<std::string> WrapText(const TextMetrics& metrics, std::string_view text,
                                  const LabelStyle& style, double width) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    const std::string_view word = text.substr(at, end - at);
    at = end + 1;
    if (word.empty()) continue;
    if (!lines.empty()) {
      const std::string longer = lines.back() + ' ' + std::string(word);
      if (WidthOf(metrics, Prepare(metrics, ParseRichText(longer), style), style) <= width) {
        lines.back() = longer;
        continue;
      }
    }
    lines.emplace_back(word);
  }
  return lines;
}

bool HasReplacedCharacters(const Label& label) {
  return std::any_of(label.text.begin(), label.text.end(), [](const TextRun& run) {
    return run.text.find(kReplacement) != std::string::npos;
  });
}

TextLayout LayoutText(const TextMetrics& metrics, const RichText& text, TextWeight weight,
                      double cap_height) {
  LineSetter setter(metrics, weight, cap_height);
  for (std::size_t i = 0; i < text.size(); ++i) setter.Add(text[i], SpaceBefore(text, i));
  return setter.Take();
}

PaperPoint BaselineStart(const Label& label) {
  const double offset = StartOffset(label.anchor, label.width);
  return label.turn == TextTurn::kLevel ? PaperPoint{label.at.x + offset, label.at.y}
                                        : PaperPoint{label.at.x, label.at.y - offset};
}

}  // namespace tillwright
