// Draws a Sheet on a Cairo context: what PDF and PNG share.
//
// The context must be scaled to paper millimeters already. Text is drawn with the embedded font,
// glyph by glyph at places of our own; on surfaces that keep text (PDF), a stacked fraction is one
// cluster that reads "15/32", its denominator drawn first so that readers put it after the whole
// number.
#ifndef TILLWRIGHT_RENDER_CAIRO_PAINTER_H_
#define TILLWRIGHT_RENDER_CAIRO_PAINTER_H_

#include <cairo.h>

#include <memory>

#include "tillwright/sheet.h"

namespace tillwright {

struct CairoSurfaceDeleter {
  void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
};
struct CairoContextDeleter {
  void operator()(cairo_t* context) const { cairo_destroy(context); }
};
using CairoSurface = std::unique_ptr<cairo_surface_t, CairoSurfaceDeleter>;
using CairoContext = std::unique_ptr<cairo_t, CairoContextDeleter>;

// How ink is laid down.
enum class CairoInk {
  kColor,     // black, gray and white over what is there
  kCoverage,  // into an alpha-only surface: 1 for ink, 0 for paper
};

// Errors stick to the context: ask cairo_status() when all is drawn.
void PaintSheet(cairo_t* context, const Sheet& sheet, CairoInk ink);

}  // namespace tillwright

#endif  // TILLWRIGHT_RENDER_CAIRO_PAINTER_H_
