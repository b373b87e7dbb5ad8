#include "render/pdf_catalog.h"

#include <charconv>
#include <cstddef>
#include <optional>
#include <string_view>

namespace tillwright {
namespace {

constexpr std::string_view kPreferences =
    "   /ViewerPreferences << /PrintScaling /None /Duplex /Simplex /PickTrayByPDFSize true "
    "/DisplayDocTitle true >>\n";

struct Startxref {
  std::size_t digits = 0;  // place and count of the number's digits
  std::size_t count = 0;
  std::size_t offset = 0;  // of the table
};

std::optional<Startxref> FindStartxref(std::string_view pdf) {
  constexpr std::string_view kWord = "startxref\n";
  const std::size_t word = pdf.rfind(kWord);
  if (word == std::string_view::npos) return std::nullopt;
  Startxref found;
  found.digits = word + kWord.size();
  const char* begin = pdf.data() + found.digits;
  const auto [end, error] = std::from_chars(begin, pdf.data() + pdf.size(), found.offset);
  if (error != std::errc() || found.offset >= word) return std::nullopt;
  found.count = static_cast<std::size_t>(end - begin);
  if (pdf.substr(found.offset, 5) != "xref\n") return std::nullopt;
  return found;
}

// The place just before the ">>" of the catalog, if it is the last object before the table.
std::optional<std::size_t> EndOfLastCatalog(std::string_view pdf, std::size_t table) {
  const std::string_view body = pdf.substr(0, table);
  constexpr std::string_view kEnd = ">>\nendobj\n";
  if (body.size() < kEnd.size() || body.substr(body.size() - kEnd.size()) != kEnd) {
    return std::nullopt;
  }
  const std::size_t start = body.rfind(" 0 obj\n");
  if (start == std::string_view::npos) return std::nullopt;
  const std::string_view object = body.substr(start);
  const bool catalog = object.find("/Type /Catalog") != std::string_view::npos;
  const bool has_own = object.find("/ViewerPreferences") != std::string_view::npos;
  if (!catalog || has_own || object.find("stream\n") != std::string_view::npos) {
    return std::nullopt;
  }
  return body.size() - kEnd.size();
}

}  // namespace

bool AskForActualSize(std::string& pdf) {
  const std::optional<Startxref> startxref = FindStartxref(pdf);
  if (!startxref) return false;
  const std::optional<std::size_t> place = EndOfLastCatalog(pdf, startxref->offset);
  if (!place) return false;
  pdf.replace(startxref->digits, startxref->count,
              std::to_string(startxref->offset + kPreferences.size()));
  pdf.insert(*place, kPreferences);
  return true;
}

}  // namespace tillwright
