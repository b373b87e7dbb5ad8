// PNG by way of an alpha-only Cairo surface and libpng.
//
// Why not Cairo's own PNG writer: three bytes a pixel, slow, and no resolution in the file.
#include <png.h>

#include <cmath>
#include <csetjmp>
#include <exception>
#include <string>
#include <vector>

#include "render/cairo_painter.h"
#include "render/sheet_check.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

constexpr double kMmPerInch = 25.4;
constexpr int kMostPixels = 32767;  // a side, as Cairo allows
constexpr double kMostArea = 4e8;

struct Sink {
  std::string bytes;
  std::string message;
  std::exception_ptr failure;  // must not pass through libpng
};

extern "C" void AppendToPngSink(png_structp png, png_bytep data, png_size_t length) {
  Sink& sink = *static_cast<Sink*>(png_get_io_ptr(png));
  try {
    sink.bytes.append(reinterpret_cast<const char*>(data), length);
  } catch (...) {
    sink.failure = std::current_exception();
  }
  if (sink.failure) png_error(png, "out of memory");
}

extern "C" void FlushNothing(png_structp) {}

extern "C" [[noreturn]] void StopPng(png_structp png, png_const_charp message) {
  static_cast<Sink*>(png_get_error_ptr(png))->message = message;
  png_longjmp(png, 1);
}

extern "C" void IgnoreWarning(png_structp, png_const_charp) {}

struct Picture {
  int width = 0;
  int height = 0;
  double dpi = 0;
};

// Everything between setjmp and the end is plain data: a jump skips no destructor.
bool WriteRows(png_structp png, png_infop info, const Picture& picture, png_bytepp rows) {
  if (setjmp(png_jmpbuf(png)) != 0) return false;  // NOLINT(cert-err52-cpp): libpng's way
  png_set_compression_level(png, 6);
  png_set_filter(png, PNG_FILTER_TYPE_BASE, PNG_FILTER_NONE);
  png_set_IHDR(png, info, static_cast<png_uint_32>(picture.width),
               static_cast<png_uint_32>(picture.height), 8, PNG_COLOR_TYPE_GRAY, PNG_INTERLACE_NONE,
               PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  const auto per_meter = static_cast<png_uint_32>(std::lround(picture.dpi * 1000 / kMmPerInch));
  png_set_pHYs(png, info, per_meter, per_meter, PNG_RESOLUTION_METER);
  png_write_info(png, info);
  png_write_image(png, rows);
  png_write_end(png, nullptr);
  return true;
}

std::string Encode(const Picture& picture, std::vector<png_bytep>& rows, Sink& sink) {
  png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, &sink, StopPng, IgnoreWarning);
  png_infop info = png == nullptr ? nullptr : png_create_info_struct(png);
  if (info == nullptr) {
    png_destroy_write_struct(&png, nullptr);
    return "the PNG library cannot be started";
  }
  png_set_write_fn(png, &sink, AppendToPngSink, FlushNothing);
  const bool written = WriteRows(png, info, picture, rows.data());
  png_destroy_write_struct(&png, &info);
  return written ? "" : "the PNG cannot be written: " + sink.message;
}

std::string FaultOfPicture(const Sheet& sheet, double dpi, Picture& picture) {
  if (std::string fault = FaultOf(sheet); !fault.empty()) return fault;
  if (!(dpi >= 10 && dpi <= 2400)) return "the resolution must be between 10 and 2400 dpi";
  const double width = std::ceil(sheet.width * dpi / kMmPerInch - 1e-6);
  const double height = std::ceil(sheet.height * dpi / kMmPerInch - 1e-6);
  if (width > kMostPixels || height > kMostPixels || width * height > kMostArea) {
    return "the sheet \"" + sheet.name + "\" has too many pixels at this resolution";
  }
  picture = {static_cast<int>(width), static_cast<int>(height), dpi};
  return "";
}

// Draws ink as alpha, then turns alpha into gray.
std::string Draw(const Sheet& sheet, const Picture& picture, cairo_surface_t* surface) {
  const CairoContext context(cairo_create(surface));
  const double scale = picture.dpi / kMmPerInch;
  cairo_scale(context.get(), scale, scale);
  cairo_set_tolerance(context.get(), 0.05);  // pixels
  PaintSheet(context.get(), sheet, CairoInk::kCoverage);
  const cairo_status_t status = cairo_status(context.get());
  if (status == CAIRO_STATUS_SUCCESS) return "";
  return std::string("the picture cannot be drawn: ") + cairo_status_to_string(status);
}

std::vector<png_bytep> GrayRows(const Picture& picture, cairo_surface_t* surface) {
  cairo_surface_flush(surface);
  unsigned char* data = cairo_image_surface_get_data(surface);
  const auto stride = static_cast<std::size_t>(cairo_image_surface_get_stride(surface));
  std::vector<png_bytep> rows(static_cast<std::size_t>(picture.height));
  for (std::size_t y = 0; y < rows.size(); ++y) {
    rows[y] = data + y * stride;
    for (std::size_t x = 0; x < static_cast<std::size_t>(picture.width); ++x) {
      rows[y][x] = static_cast<unsigned char>(255 - rows[y][x]);
    }
  }
  return rows;
}

}  // namespace

Rendered RenderPng(const Sheet& sheet, double dpi) {
  Rendered rendered;
  Picture picture;
  rendered.fault = FaultOfPicture(sheet, dpi, picture);
  if (!rendered.ok()) return rendered;
  const CairoSurface surface(
      cairo_image_surface_create(CAIRO_FORMAT_A8, picture.width, picture.height));
  rendered.fault = Draw(sheet, picture, surface.get());
  if (!rendered.ok()) return rendered;
  std::vector<png_bytep> rows = GrayRows(picture, surface.get());
  Sink sink;
  rendered.fault = Encode(picture, rows, sink);
  if (sink.failure) std::rethrow_exception(sink.failure);
  if (rendered.ok()) rendered.bytes = std::move(sink.bytes);
  return rendered;
}

}  // namespace tillwright
