#include "sheet/rich_text.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <utility>

#include "sheet/rich_text_reader.h"
#include "text/utf8.h"

namespace tillwright {
namespace {

using Kind = TextRun::Kind;

constexpr std::string_view kReplacement = "‹?›";
constexpr std::string_view kEllipsis = "…";

// Scripts that run from right to left or whose letters change with their neighbors.
constexpr std::array kShaped{
    CharacterRange{0x0590, 0x08ff},   CharacterRange{0x0900, 0x0dff},
    CharacterRange{0x0f00, 0x109f},   CharacterRange{0x1780, 0x18af},
    CharacterRange{0x1a00, 0x1bff},   CharacterRange{0xa840, 0xa8df},
    CharacterRange{0xa980, 0xa9df},   CharacterRange{0xfb1d, 0xfdff},
    CharacterRange{0xfe70, 0xfefc},   CharacterRange{0x10800, 0x10fff},
    CharacterRange{0x11000, 0x11fff}, CharacterRange{0x1e800, 0x1efff},
};
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

// Words whose width does not depend on their neighbors: no fraction, no sign, nothing that is
// replaced.
bool IsPlainWord(std::string_view word) {
  return std::ranges::all_of(word, [](char c) { return c > ' ' && c < 0x7f && c != '/'; });
}

// The width of a line that grows word by word. Plain words are measured by themselves.
class LineWidth {
 public:
  LineWidth(const TextMetrics& metrics, const LabelStyle& style)
      : metrics_(metrics), style_(style), space_(Plain(" ")) {}

  void Start(std::string_view word) {
    plain_ = IsPlainWord(word);
    width_ = plain_ ? Plain(word) : Whole(word);
  }
  // With one more word; `line` is what there is.
  double With(const std::string& line, std::string_view word) {
    next_plain_ = IsPlainWord(word);
    next_ = plain_ && next_plain_ ? width_ + space_ + Plain(word)
                                  : Whole(line + ' ' + std::string(word));
    return next_;
  }
  void Keep() {
    width_ = next_;
    plain_ = next_plain_;
  }

 private:
  double Plain(std::string_view text) const {
    return metrics_.Measure(text, style_.weight, style_.cap_height).advance;
  }
  double Whole(std::string_view text) const {
    return WidthOf(metrics_, Prepare(metrics_, ParseRichText(text), style_), style_);
  }

  const TextMetrics& metrics_;
  const LabelStyle& style_;
  double space_;
  double width_ = 0;
  double next_ = 0;
  bool plain_ = false;       // the last word
  bool next_plain_ = false;  // the one that was tried
};

// How far the start of the text is from the anchor, along the text.
double StartOffset(TextAnchor anchor, double width) {
  switch (anchor) {
    case TextAnchor::kLeft:
      return 0;
    case TextAnchor::kCenter:
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

}  // namespace

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
  LineWidth line(metrics, style);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    const std::string_view word = text.substr(at, end - at);
    at = end + 1;
    if (word.empty()) continue;
    if (!lines.empty() && line.With(lines.back(), word) <= width) {
      lines.back() += ' ';
      lines.back() += word;
      line.Keep();
    } else {
      lines.emplace_back(word);
      line.Start(word);
    }
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
