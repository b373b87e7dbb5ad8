#include <cairo-pdf.h>

#include <algorithm>
#include <exception>
#include <string>
#include <utility>

#include "render/cairo_painter.h"
#include "render/pdf_catalog.h"
#include "render/sheet_check.h"
#include "text/utf8.h"
#include "tillwright/render.h"

namespace tillwright {
namespace {

constexpr double kPointsPerMm = 72 / 25.4;
constexpr double kLargestMm = 5080;  // 14 400 points: the classic limit of PDF viewers

struct Sink {
  std::string bytes;
  std::exception_ptr failure;  // must not pass through Cairo
};

extern "C" cairo_status_t AppendToSink(void* closure, const unsigned char* data,
                                       unsigned int length) {
  Sink& sink = *static_cast<Sink*>(closure);
  try {
    sink.bytes.append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
  } catch (...) {
    sink.failure = std::current_exception();
    return CAIRO_STATUS_WRITE_ERROR;
  }
}

// Cairo refuses text that is not UTF-8 and stops at a NUL.
std::string CleanUtf8(std::string_view text) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const char32_t c = NextCharacter(text, at);
    AppendCharacter(out, c == kBadByte ? U'\ufffd' : c < 0x20 ? U' ' : c);
  }
  return out;
}

// "2026-03-14T09:00:00Z". Cairo would put the clock's time in place of anything else.
bool IsTimestamp(std::string_view text) {
  constexpr std::string_view kPattern = "dddd-dd-ddTdd:dd:ddZ";
  return std::equal(text.begin(), text.end(), kPattern.begin(), kPattern.end(),
                    [](char c, char p) { return p == 'd' ? c >= '0' && c <= '9' : c == p; });
}

void SetMetadata(cairo_surface_t* surface, const PdfInfo& info) {
  const auto set = [surface](cairo_pdf_metadata_t field, const std::string& text) {
    if (!text.empty()) cairo_pdf_surface_set_metadata(surface, field, CleanUtf8(text).c_str());
  };
  set(CAIRO_PDF_METADATA_TITLE, info.title);
  set(CAIRO_PDF_METADATA_SUBJECT, info.subject);
  set(CAIRO_PDF_METADATA_KEYWORDS, info.keywords);
  set(CAIRO_PDF_METADATA_CREATOR, info.creator);
  set(CAIRO_PDF_METADATA_CREATE_DATE, info.created);
}

std::string FaultOfAll(std::span<const Sheet> sheets, const PdfInfo& info) {
  if (sheets.empty()) return "there is no sheet to draw";
  if (!IsTimestamp(info.created)) {
    return "\"" + info.created + "\" is not a time such as 2026-03-14T09:00:00Z";
  }
  for (const Sheet& sheet : sheets) {
    if (std::string fault = FaultOf(sheet); !fault.empty()) return fault;
    if (sheet.width > kLargestMm || sheet.height > kLargestMm) {
      return "the sheet \"" + sheet.name + "\" is larger than a PDF page may be (5080 mm)";
    }
  }
  return "";
}

void AddBookmark(cairo_surface_t* surface, const Sheet& sheet, std::size_t page) {
  const std::string name = CleanUtf8(sheet.title.empty() ? sheet.name : sheet.title);
  const std::string target = "page=" + std::to_string(page);
  cairo_pdf_surface_add_outline(surface, CAIRO_PDF_OUTLINE_ROOT, name.c_str(), target.c_str(),
                                cairo_pdf_outline_flags_t{});
}

void DrawPage(cairo_surface_t* surface, cairo_t* context, const Sheet& sheet, std::size_t page) {
  cairo_pdf_surface_set_size(surface, sheet.width * kPointsPerMm, sheet.height * kPointsPerMm);
  AddBookmark(surface, sheet, page);
  cairo_save(context);
  cairo_scale(context, kPointsPerMm, kPointsPerMm);
  cairo_set_tolerance(context, 0.003);  // points: a micrometer
  PaintSheet(context, sheet, CairoInk::kColor);
  cairo_restore(context);
  cairo_show_page(context);
}

std::string Draw(std::span<const Sheet> sheets, const PdfInfo& info, Sink& sink) {
  const CairoSurface surface(cairo_pdf_surface_create_for_stream(AppendToSink, &sink, 1, 1));
  cairo_pdf_surface_restrict_to_version(surface.get(), CAIRO_PDF_VERSION_1_5);
  SetMetadata(surface.get(), info);
  CairoContext context(cairo_create(surface.get()));
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    DrawPage(surface.get(), context.get(), sheets[i], i + 1);
  }
  const cairo_status_t drawn = cairo_status(context.get());
  context.reset();
  cairo_surface_finish(surface.get());
  const cairo_status_t written = cairo_surface_status(surface.get());
  const cairo_status_t status = drawn != CAIRO_STATUS_SUCCESS ? drawn : written;
  if (status == CAIRO_STATUS_SUCCESS) return "";
  return std::string("the PDF cannot be drawn: ") + cairo_status_to_string(status);
}

}  // namespace

Rendered RenderPdf(std::span<const Sheet> sheets, const PdfInfo& info) {
  Rendered rendered;
  rendered.fault = FaultOfAll(sheets, info);
  if (!rendered.ok()) return rendered;
  Sink sink;
  rendered.fault = Draw(sheets, info, sink);
  if (sink.failure) std::rethrow_exception(sink.failure);
  if (!rendered.ok()) return rendered;
  if (!AskForActualSize(sink.bytes)) {
    rendered.fault = "the PDF library writes files in a form that is not known here";
    return rendered;
  }
  rendered.bytes = std::move(sink.bytes);
  return rendered;
}

}  // namespace tillwright
