// SVG 1.1, written straight from the Sheet.
//
// Why not Cairo's SVG surface: it rounds to 1/256 of a unit, flattens circles, numbers its ids from
// a counter of the whole process, and has no groups, titles or searchable text.
//
// Presentation attributes rather than CSS classes, which some viewers ignore; the style sheet only
// names the paper and turns colors over on dark screens.
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "render/drawing_font.h"
#include "render/sheet_check.h"
#include "render/svg_text.h"
#include "sheet/rich_text.h"
#include "text/utf8.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

constexpr std::string_view kInk = "#000";
constexpr std::string_view kShade = "#b4b4b4";
constexpr std::string_view kPaper = "#fff";

constexpr std::string_view kStyle =
    "svg{background:#fff}"
    "@media screen and (prefers-color-scheme:dark){svg{background:#15181c}"
    "[stroke=\"#000\"]{stroke:#e8e8e8}[fill=\"#000\"]{fill:#e8e8e8}"
    "[fill=\"#b4b4b4\"]{fill:#59626c}[fill=\"#fff\"]{fill:#15181c}}";

std::string_view ColorOf(Tone tone) {
  switch (tone) {
    case Tone::kNone:
      return "none";
    case Tone::kInk:
      return kInk;
    case Tone::kShade:
      return kShade;
    case Tone::kPaper:
      return kPaper;
  }
  return "none";
}

// A size of paper in whole CSS pixels (96 to the inch), rounded down.
int CssPixels(double mm) { return static_cast<int>(std::floor(mm * 96 / 25.4 + 1e-6)); }

class SvgWriter {
 public:
  SvgWriter(const Sheet& sheet, SvgUse use)
      : sheet_(sheet), use_(use), prefix_(NameToken(sheet.name)) {
    if (prefix_.empty() || (prefix_[0] >= '0' && prefix_[0] <= '9') || prefix_[0] == '-') {
      prefix_ = "s" + prefix_;
    }
    body_.reserve(1U << 17U);
  }

  std::string Write() {
    WriteGroups();
    std::string out;
    out.reserve(body_.size() + (1U << 15U));
    WriteHead(out);
    WriteGlyphs(out);
    out +=
        "<g fill=\"none\" stroke=\"#000\" stroke-miterlimit=\"4\" fill-rule=\"evenodd\" "
        "font-family=\"'DejaVu Sans Condensed','DejaVu Sans',sans-serif\">\n";
    out += body_;
    out += "</g>\n</svg>\n";
    return out;
  }

  void operator()(const Polyline& line) {
    if (line.points.empty()) return;
    Open("path");
    body_ += " d=\"";
    path_.MoveTo(line.points.front());
    for (std::size_t i = 1; i < line.points.size(); ++i) path_.LineTo(line.points[i]);
    body_ += line.closed ? "z\"" : "\"";
    Paint(line.pen, line.fill);
    body_ += "/>\n";
  }

  void operator()(const Circle& circle) {
    Open("circle");
    Attribute("cx", circle.center.x);
    Attribute("cy", circle.center.y);
    Attribute("r", circle.radius);
    Paint(circle.pen, circle.fill);
    body_ += "/>\n";
  }

  void operator()(const Arc& arc) {
    Open("path");
    body_ += " d=\"";
    path_.MoveTo(OnCircle(arc.center, arc.radius, arc.start));
    body_ += 'A';
    AppendPaper(body_, arc.radius);
    body_ += ' ';
    AppendPaper(body_, arc.radius);
    body_ += " 0 ";
    body_ += std::abs(arc.sweep) > 180 ? "1 " : "0 ";
    body_ += arc.sweep > 0 ? "0 " : "1 ";
    path_.Append(OnCircle(arc.center, arc.radius, arc.start + arc.sweep));
    body_ += '"';
    Paint(arc.pen, Tone::kNone);
    body_ += "/>\n";
  }

  void operator()(const Arrowhead& head) {
    (*this)(Polyline{ArrowheadCorners(head), true, Pen::kNone, Tone::kInk});
  }

  void operator()(const Tick& tick) {
    const PaperSegment s = TickSegment(tick);
    (*this)(LineOf(s.from, s.to, tick.pen));
  }

  void operator()(const HatchLines& hatch) {
    if (hatch.segments.empty()) return;
    Open("path");
    body_ += " d=\"";
    const PaperSegment* before = nullptr;
    for (const PaperSegment& s : hatch.segments) {
      if (before == nullptr || !SvgPathData::IsSame(before->to, s.from)) path_.MoveTo(s.from);
      path_.LineTo(s.to);
      before = &s;
    }
    body_ += '"';
    Paint(hatch.pen, Tone::kNone);
    body_ += "/>\n";
  }

  void operator()(const Label& label) {
    if (label.text.empty()) return;
    const TextLayout layout =
        LayoutText(DrawingFontMetrics(), label.text, label.weight, label.cap_height);
    body_ += "<g fill=\"#000\" stroke=\"none\">";
    if (!label.path.empty()) {
      body_ += "<title>";
      AppendEscaped(body_, label.path);
      body_ += "</title>";
    }
    for (const PlacedRun& run : layout.runs) WriteRun(label, run);
    WritePlainText(label);
    body_ += "</g>\n";
  }

 private:
  void WriteGroups() {
    int open = 0;
    for (const SheetGroup& group : sheet_.groups) {
      for (; open > std::max(group.depth, 0); --open) body_ += "</g>\n";
      body_ += "<g id=\"" + UniqueId(group.id) + "\">";
      Element("title", group.title);
      Element("desc", group.desc);
      body_ += '\n';
      ++open;
      for (const Primitive& primitive : group.primitives) std::visit(*this, primitive);
    }
    for (; open > 0; --open) body_ += "</g>\n";
  }

  // Group ids hold no '.', so that they never meet those of glyphs.
  std::string UniqueId(std::string_view wish) {
    const std::string base = prefix_ + "_" + NameToken(wish);
    std::string id = base;
    for (int n = 2; !ids_.insert(id).second; ++n) id = base + "_" + std::to_string(n);
    return id;
  }

  void Element(std::string_view name, std::string_view text) {
    if (text.empty()) return;
    AppendElement(body_, name, text);
  }

  void Open(std::string_view element) {
    body_ += '<';
    body_ += element;
  }

  void Attribute(std::string_view name, double mm) {
    body_ += ' ';
    body_ += name;
    body_ += "=\"";
    AppendPaper(body_, mm);
    body_ += '"';
  }

  void Paint(Pen pen, Tone fill) {
    if (fill != Tone::kNone) {
      body_ += " fill=\"";
      body_ += ColorOf(fill);
      body_ += '"';
    }
    if (pen == Pen::kNone) {
      body_ += " stroke=\"none\"";
      return;
    }
    const PenStyle& style = StyleOf(pen);
    Attribute("stroke-width", style.width);
    if (style.dashes.empty()) return;
    body_ += " stroke-dasharray=\"";
    for (std::size_t i = 0; i < style.dashes.size(); ++i) {
      if (i > 0) body_ += ' ';
      AppendPaper(body_, style.dashes[i]);
    }
    body_ += '"';
  }

  // A point of a label's own axes on paper.
  static PaperPoint OnPaper(const Label& label, double x, double y) {
    const PaperPoint start = BaselineStart(label);
    return label.turn == TextTurn::kLevel ? PaperPoint{start.x + x, start.y - y}
                                          : PaperPoint{start.x - y, start.y - x};
  }

  void WriteRun(const Label& label, const PlacedRun& run) {
    switch (run.kind) {
      case TextRun::Kind::kPlain:
        WriteOutlines(label, run.text);
        return;
      case TextRun::Kind::kFraction:
        WriteOutlines(label, run.text);
        WriteOutlines(label, run.denominator);
        WriteBar(label, run.bar);
        return;
      case TextRun::Kind::kDiameter:
        WriteDiameter(label, run.diameter);
        return;
    }
  }

  void WriteBar(const Label& label, const PlacedBar& bar) {
    body_ += "<path d=\"";
    path_.MoveTo(OnPaper(label, bar.left, bar.bottom));
    path_.LineTo(OnPaper(label, bar.right, bar.bottom));
    path_.LineTo(OnPaper(label, bar.right, bar.top));
    path_.LineTo(OnPaper(label, bar.left, bar.top));
    body_ += "z\"/>";
  }

  void WriteDiameter(const Label& label, const PlacedDiameter& sign) {
    body_ += "<g fill=\"none\" stroke=\"#000\"";
    Attribute("stroke-width", sign.width);
    body_ += "><circle";
    const PaperPoint center = OnPaper(label, sign.x, sign.y);
    Attribute("cx", center.x);
    Attribute("cy", center.y);
    Attribute("r", sign.radius);
    body_ += "/><path d=\"";
    path_.MoveTo(OnPaper(label, sign.x - sign.reach_x, sign.y - sign.reach_y));
    path_.LineTo(OnPaper(label, sign.x + sign.reach_x, sign.y + sign.reach_y));
    body_ += "\"/></g>";
  }

  // `along` and `up`: scale along the text and across it.
  void WriteMatrix(const Label& label, double along, double up, PaperPoint origin) {
    body_ += " transform=\"matrix(";
    const bool level = label.turn == TextTurn::kLevel;
    const std::array terms{level ? along : 0, level ? 0 : -along, level ? 0 : up, level ? up : 0};
    for (const double term : terms) {
      AppendFine(body_, term);
      body_ += ' ';
    }
    path_.Append(origin);
    body_ += ")\"";
  }

  // Characters as uses of glyph outlines, in font units.
  void WriteOutlines(const Label& label, const PlacedText& text) {
    const DrawingFont& font = DrawingFont::Of(label.weight);
    body_ += "<g";
    const double unit = text.cap_height / font.CapHeight();
    WriteMatrix(label, unit * kFontStretch, unit, OnPaper(label, text.x, text.y));
    body_ += '>';
    int x = 0;
    for (std::size_t at = 0; at < text.text.size();) {
      const FontGlyph& glyph = font.Glyph(NextCharacter(text.text, at));
      if (!font.Outline(glyph.index).empty()) WriteUse(label.weight, glyph.index, x);
      x += glyph.advance;
    }
    body_ += "</g>";
  }

  void WriteUse(TextWeight weight, std::uint32_t index, int x) {
    glyphs_.insert({weight, index});
    body_ += "<use xlink:href=\"#";
    AppendGlyphId(body_, weight, index);
    body_ += '"';
    if (x != 0) body_ += " x=\"" + std::to_string(x) + '"';
    body_ += "/>";
  }

  void AppendGlyphId(std::string& out, TextWeight weight, std::uint32_t index) const {
    out += prefix_;
    out += weight == TextWeight::kBold ? ".b" : ".r";
    out += std::to_string(index);
  }

  // Invisible text over the outlines: found by search, copied, read aloud.
  void WritePlainText(const Label& label) {
    const DrawingFont& font = DrawingFont::Of(label.weight);
    const PaperPoint start = BaselineStart(label);
    body_ += "<text";
    if (label.turn == TextTurn::kLevel) {
      Attribute("x", start.x);
      Attribute("y", start.y);
    } else {
      WriteMatrix(label, 1, 1, start);
    }
    Attribute("font-size", label.cap_height * font.UnitsPerEm() / font.CapHeight());
    if (label.weight == TextWeight::kBold) body_ += " font-weight=\"bold\"";
    if (label.width > 0) {
      Attribute("textLength", label.width);
      body_ += " lengthAdjust=\"spacingAndGlyphs\"";
    }
    body_ += " fill-opacity=\"0\" xml:space=\"preserve\">";
    AppendEscaped(body_, label.plain);
    body_ += "</text>";
  }

  void WriteHead(std::string& out) const {
    const int width = CssPixels(sheet_.width);
    const int height = CssPixels(sheet_.height);
    const bool file = use_ == SvgUse::kFile;
    if (file) {
      out +=
          "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
          "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" "
          "\"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">\n";
    }
    out +=
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" ";
    if (file) {
      out += "version=\"1.1\" width=\"" + std::to_string(width) + "\" height=\"" +
             std::to_string(height) + "\" ";
    } else {
      out += "role=\"img\" ";
    }
    out += "viewBox=\"0 0 ";
    AppendFine(out, width * 25.4 / 96);
    out += ' ';
    AppendFine(out, height * 25.4 / 96);
    out += "\">\n";
    AppendElement(out, "title", sheet_.title.empty() ? sheet_.name : sheet_.title);
    if (!sheet_.description.empty()) AppendElement(out, "desc", sheet_.description);
    out += '\n';
    if (file) WriteStyle(out);
  }

  void WriteStyle(std::string& out) const {
    out += "<style type=\"text/css\">@page{size:";
    AppendPaper(out, sheet_.width);
    out += "mm ";
    AppendPaper(out, sheet_.height);
    out += "mm;margin:0}";
    out += kStyle;
    out += "</style>\n";
  }

  void WriteGlyphs(std::string& out) const {
    if (glyphs_.empty()) return;
    out += "<defs>\n";
    for (const auto& [weight, index] : glyphs_) {
      out += "<path id=\"";
      AppendGlyphId(out, weight, index);
      out += "\" d=\"" + DrawingFont::Of(weight).Outline(index) + "\"/>\n";
    }
    out += "</defs>\n";
  }

  const Sheet& sheet_;
  SvgUse use_;
  std::string prefix_;
  std::string body_;
  SvgPathData path_{body_};
  std::set<std::string> ids_;
  std::set<std::pair<TextWeight, std::uint32_t>> glyphs_;
};

}  // namespace

std::string_view SvgPageStyle() { return kStyle; }

Rendered RenderSvg(const Sheet& sheet, SvgUse use) {
  Rendered rendered;
  rendered.fault = FaultOf(sheet);
  if (rendered.ok()) rendered.bytes = SvgWriter(sheet, use).Write();
  return rendered;
}

}  // namespace tillwright
