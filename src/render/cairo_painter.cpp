#include "render/cairo_painter.h"

#include <cairo-ft.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "render/drawing_font.h"
#include "sheet/rich_text.h"
#include "text/utf8.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

constexpr double kEase = 0.1;  // points, what Cairo takes unless told

double Radians(double degrees) { return degrees * std::numbers::pi / 180; }

// Created once and kept, as the FreeType faces are.
cairo_font_face_t* CairoFaceOf(TextWeight weight) {
  static cairo_font_face_t* const regular = cairo_ft_font_face_create_for_ft_face(
      DrawingFont::Of(TextWeight::kRegular).Face(), FT_LOAD_NO_HINTING);
  static cairo_font_face_t* const bold = cairo_ft_font_face_create_for_ft_face(
      DrawingFont::Of(TextWeight::kBold).Face(), FT_LOAD_NO_HINTING);
  return weight == TextWeight::kBold ? bold : regular;
}

// Glyphs, and which bytes of a text they stand for.
struct GlyphText {
  std::string text;
  std::vector<cairo_glyph_t> glyphs;
  std::vector<cairo_text_cluster_t> clusters;
};

// Adds what a primitive strokes or fills to the path.
class Tracer {
 public:
  explicit Tracer(cairo_t* context) : cr_(context) {}

  void operator()(const Polyline& line) {
    cairo_new_sub_path(cr_);
    for (const PaperPoint& p : line.points) cairo_line_to(cr_, p.x, p.y);
    if (line.closed) cairo_close_path(cr_);
  }

  void operator()(const Circle& circle) {
    cairo_new_sub_path(cr_);
    cairo_arc(cr_, circle.center.x, circle.center.y, circle.radius, 0, 2 * std::numbers::pi);
    cairo_close_path(cr_);
  }

  void operator()(const Arc& arc) {
    cairo_new_sub_path(cr_);
    const double from = -Radians(arc.start);
    const double to = -Radians(arc.start + arc.sweep);
    if (arc.sweep > 0) {
      cairo_arc_negative(cr_, arc.center.x, arc.center.y, arc.radius, from, to);
    } else {
      cairo_arc(cr_, arc.center.x, arc.center.y, arc.radius, from, to);
    }
  }

  void operator()(const Arrowhead& head) {
    (*this)(Polyline{ArrowheadCorners(head), true, Pen::kNone, Tone::kInk});
  }

  void operator()(const Tick& tick) {
    const PaperSegment s = TickSegment(tick);
    (*this)(LineOf(s.from, s.to, tick.pen));
  }

  void operator()(const HatchLines& hatch) {
    PaperPoint at{-1e9, -1e9};
    for (const PaperSegment& s : hatch.segments) {
      const bool goes_on = std::abs(s.from.x - at.x) < 1e-9 && std::abs(s.from.y - at.y) < 1e-9;
      if (!goes_on) cairo_move_to(cr_, s.from.x, s.from.y);
      cairo_line_to(cr_, s.to.x, s.to.y);
      at = s.to;
    }
  }

  void operator()(const Label&) {}

 private:
  cairo_t* cr_;
};

Pen PenOf(const Primitive& primitive) {
  return std::visit(Overloaded{[](const Arrowhead&) { return Pen::kNone; },
                               [](const Label&) { return Pen::kNone; },
                               [](const auto& drawn) { return drawn.pen; }},
                    primitive);
}

Tone FillOf(const Primitive& primitive) {
  return std::visit(Overloaded{[](const Polyline& line) { return line.fill; },
                               [](const Circle& circle) { return circle.fill; },
                               [](const Arrowhead&) { return Tone::kInk; },
                               [](const auto&) { return Tone::kNone; }},
                    primitive);
}

// Ink over ink is ink: lines of one pen are stroked together, as long as no paper or shade comes
// between. A page is then a few strokes and not hundreds, each of which Cairo would weigh alone.
class Painter {
 public:
  Painter(cairo_t* context, CairoInk ink)
      : cr_(context), ink_(ink), tolerance_(cairo_get_tolerance(context)) {
    cairo_set_line_cap(cr_, CAIRO_LINE_CAP_BUTT);
    cairo_set_line_join(cr_, CAIRO_LINE_JOIN_MITER);
    cairo_set_miter_limit(cr_, 4);  // as SVG has it
    cairo_set_fill_rule(cr_, CAIRO_FILL_RULE_EVEN_ODD);
    SetFontOptions();
  }

  // REQUIRES: the primitive lives until Finish().
  void Paint(const Primitive& primitive) {
    if (const Label* label = std::get_if<Label>(&primitive)) Show(*label);
    if (const Tone fill = FillOf(primitive); fill != Tone::kNone) {
      if (fill != Tone::kInk) Finish();
      Trace(primitive);
      EasePath();
      SetInk(fill);
      cairo_fill(cr_);
    }
    const Pen pen = PenOf(primitive);
    if (pen != Pen::kNone) strokes_[static_cast<std::size_t>(pen)].push_back(&primitive);
    if (ink_ == CairoInk::kCoverage) Finish();  // pixels take no notice
  }

  void Finish() {
    for (std::size_t pen = 0; pen < strokes_.size(); ++pen) {
      if (!strokes_[pen].empty()) Stroke(StyleOf(static_cast<Pen>(pen)), strokes_[pen]);
    }
    FillBars();
  }

 private:
  // A page keeps curves as they are: once they are traced, a fine tolerance only makes Cairo weigh
  // them longer. On pixels it is what they are flattened by, and it would merge short dashes.
  void EasePath() {
    if (ink_ == CairoInk::kColor) cairo_set_tolerance(cr_, kEase);
  }

  void StrokePath(double width, std::span<const double> dashes) {
    if (dashes.empty()) EasePath();
    SetInk(Tone::kInk);
    cairo_set_line_width(cr_, width);
    cairo_set_dash(cr_, dashes.data(), static_cast<int>(dashes.size()), 0);
    cairo_stroke(cr_);
  }

  void Trace(const Primitive& primitive) {
    cairo_set_tolerance(cr_, tolerance_);
    std::visit(Tracer(cr_), primitive);
  }

  void Stroke(const PenStyle& style, std::vector<const Primitive*>& drawn) {
    cairo_new_path(cr_);
    for (const Primitive* primitive : drawn) Trace(*primitive);
    drawn.clear();
    StrokePath(style.width, style.dashes);
  }

  void Show(const Label& label) {
    if (label.text.empty()) return;
    const TextLayout layout =
        LayoutText(DrawingFontMetrics(), label.text, label.weight, label.cap_height);
    const PaperPoint start = BaselineStart(label);
    start_ = start;
    upward_ = label.turn == TextTurn::kUpward;
    cairo_save(cr_);
    cairo_translate(cr_, start.x, start.y);
    if (upward_) cairo_rotate(cr_, -std::numbers::pi / 2);
    SetInk(Tone::kInk);
    for (std::size_t i = 0; i < layout.runs.size(); ++i) {
      ShowRun(label, label.text[i], layout.runs[i]);
    }
    cairo_restore(cr_);
    cairo_new_path(cr_);
  }

  void SetFontOptions() {
    cairo_font_options_t* options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    cairo_set_font_options(cr_, options);
    cairo_font_options_destroy(options);
  }

  static double DarknessOf(Tone tone) {
    switch (tone) {
      case Tone::kNone:
      case Tone::kPaper:
        return 0;
      case Tone::kShade:
        return 1 - 0xb4 / 255.0;
      case Tone::kInk:
        return 1;
    }
    return 1;
  }

  void SetInk(Tone tone) {
    const double dark = DarknessOf(tone);
    if (ink_ == CairoInk::kColor) {
      cairo_set_source_rgb(cr_, 1 - dark, 1 - dark, 1 - dark);
    } else {
      cairo_set_source_rgba(cr_, 0, 0, 0, dark);
      // SOURCE mixes old and new alpha by the mask, so paper can cover ink.
      const bool solid = tone == Tone::kInk;
      cairo_set_operator(cr_, solid ? CAIRO_OPERATOR_OVER : CAIRO_OPERATOR_SOURCE);
    }
  }

  void ShowRun(const Label& label, const TextRun& run, const PlacedRun& placed) {
    switch (placed.kind) {
      case TextRun::Kind::kPlain:
        ShowPlain(label, placed.text);
        return;
      case TextRun::Kind::kFraction:
        ShowFraction(label.weight, run, placed);
        return;
      case TextRun::Kind::kDiameter:
        ShowDiameter(placed.diameter);
        return;
    }
  }

  void ShowPlain(const Label& label, const PlacedText& text) {
    GlyphText shown;
    AppendGlyphs(shown, label.weight, text, true);
    // A name that was cut or has replaced characters still reads in full.
    if (label.text.size() == 1 && shown.text != label.plain) {
      shown.text = label.plain;
      shown.clusters = {
          {static_cast<int>(shown.text.size()), static_cast<int>(shown.glyphs.size())}};
    }
    Show(label.weight, text.cap_height, shown);
  }

  void ShowFraction(TextWeight weight, const TextRun& run, const PlacedRun& placed) {
    GlyphText shown;
    AppendGlyphs(shown, weight, placed.denominator, false);
    AppendGlyphs(shown, weight, placed.text, false);
    shown.text = run.text + '/' + run.denominator;
    shown.clusters = {{static_cast<int>(shown.text.size()), static_cast<int>(shown.glyphs.size())}};
    Show(weight, placed.text.cap_height, shown);
    AddBar(placed.bar);
  }

  // The bar of a fraction.
  void AddBar(const PlacedBar& bar) {
    const PaperPoint a = OnPaper({bar.left, -bar.top});
    const PaperPoint b = OnPaper({bar.right, -bar.bottom});
    bars_.push_back(
        {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)});
  }

  // From the axes of the label that is shown.
  [[nodiscard]] PaperPoint OnPaper(PaperPoint p) const {
    return upward_ ? PaperPoint{start_.x + p.y, start_.y - p.x}
                   : PaperPoint{start_.x + p.x, start_.y + p.y};
  }

  void FillBars() {
    if (bars_.empty()) return;
    cairo_new_path(cr_);
    for (const PaperBox& bar : bars_) {
      cairo_rectangle(cr_, bar.left, bar.top, bar.Width(), bar.Height());
    }
    bars_.clear();
    SetInk(Tone::kInk);
    cairo_fill(cr_);
  }

  void ShowDiameter(const PlacedDiameter& sign) {
    cairo_set_dash(cr_, nullptr, 0, 0);
    cairo_set_line_width(cr_, sign.width);
    cairo_new_path(cr_);
    cairo_arc(cr_, sign.x, -sign.y, sign.radius, 0, 2 * std::numbers::pi);
    cairo_close_path(cr_);
    cairo_move_to(cr_, sign.x - sign.reach_x, -(sign.y - sign.reach_y));
    cairo_line_to(cr_, sign.x + sign.reach_x, -(sign.y + sign.reach_y));
    cairo_stroke(cr_);
  }

  static void AppendGlyphs(GlyphText& out, TextWeight weight, const PlacedText& text,
                           bool cluster_each) {
    const DrawingFont& font = DrawingFont::Of(weight);
    const double unit = text.cap_height / font.CapHeight() * kFontStretch;
    double x = text.x;
    for (std::size_t at = 0; at < text.text.size();) {
      const std::size_t start = at;
      const FontGlyph& glyph = font.Glyph(NextCharacter(text.text, at));
      out.glyphs.push_back({glyph.index, x, -text.y});
      if (cluster_each) out.clusters.push_back({static_cast<int>(at - start), 1});
      x += glyph.advance * unit;
    }
    if (cluster_each) out.text += text.text;
  }

  // On pixels Cairo 1.16 would move every glyph to a whole pixel; outlines stay where they belong.
  void FillOutlines(const GlyphText& shown) {
    cairo_new_path(cr_);
    cairo_glyph_path(cr_, shown.glyphs.data(), static_cast<int>(shown.glyphs.size()));
    cairo_set_fill_rule(cr_, CAIRO_FILL_RULE_WINDING);
    cairo_fill(cr_);
    cairo_set_fill_rule(cr_, CAIRO_FILL_RULE_EVEN_ODD);
  }

  void Show(TextWeight weight, double cap_height, const GlyphText& shown) {
    const DrawingFont& font = DrawingFont::Of(weight);
    cairo_set_font_face(cr_, CairoFaceOf(weight));
    const double size = cap_height * font.UnitsPerEm() / font.CapHeight();
    cairo_matrix_t matrix;
    cairo_matrix_init_scale(&matrix, size * kFontStretch, size);
    cairo_set_font_matrix(cr_, &matrix);
    if (ink_ == CairoInk::kCoverage) {
      FillOutlines(shown);
      return;
    }
    cairo_show_text_glyphs(cr_, shown.text.data(), static_cast<int>(shown.text.size()),
                           shown.glyphs.data(), static_cast<int>(shown.glyphs.size()),
                           shown.clusters.data(), static_cast<int>(shown.clusters.size()),
                           cairo_text_cluster_flags_t{});
  }

  cairo_t* cr_;
  CairoInk ink_;
  double tolerance_;                                              // of curves
  std::array<std::vector<const Primitive*>, kPenCount> strokes_;  // by pen, not yet drawn
  std::vector<PaperBox> bars_;                                    // of fractions, not yet drawn
  PaperPoint start_;                                              // of the label that is shown
  bool upward_ = false;
};

}  // namespace

void PaintSheet(cairo_t* context, const Sheet& sheet, CairoInk ink) {
  Painter painter(context, ink);
  for (const SheetGroup& group : sheet.groups) {
    for (const Primitive& primitive : group.primitives) painter.Paint(primitive);
  }
  painter.Finish();
}

}  // namespace tillwright
