#include "render/svg_text.h"

#include <cmath>
#include <cstdlib>

#include "text/utf8.h"

namespace tillwright {
namespace {

bool IsXmlCharacter(char32_t c) {  // XML 1.0, production 2
  return c == 0x9 || c == 0xa || c == 0xd || (c >= 0x20 && c <= 0xd7ff) ||
         (c >= 0xe000 && c <= 0xfffd) || (c >= 0x10000 && c <= 0x10ffff);
}

bool IsSame(double a, double b) { return std::llround(a * 1000) == std::llround(b * 1000); }

}  // namespace

void AppendEscaped(std::string& out, std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    const char32_t c = NextCharacter(text, at);
    if (c == U'&') {
      out += "&amp;";
    } else if (c == U'<') {
      out += "&lt;";
    } else if (c == U'>') {
      out += "&gt;";
    } else if (c == U'"') {
      out += "&quot;";
    } else {
      AppendCharacter(out, IsXmlCharacter(c) ? c : U'\ufffd');
    }
  }
}

void AppendFine(std::string& out, double value) {
  long long billionths = std::llround(value * 1e9);
  if (billionths < 0) out += '-';
  billionths = std::llabs(billionths);
  out += std::to_string(billionths / 1'000'000'000);
  const std::string digits = std::to_string(1'000'000'000 + billionths % 1'000'000'000);
  const std::size_t last = digits.find_last_not_of('0');
  if (last == 0) return;
  out += '.';
  out.append(digits, 1, last);
}

std::string NameToken(std::string_view text) {
  std::string out;
  for (const char c : text) {
    const bool plain =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
    if (plain) {
      out += c;
    } else if (!out.empty() && out.back() != '-') {
      out += '-';
    }
  }
  return out;
}

void AppendElement(std::string& out, std::string_view name, std::string_view text) {
  out += '<';
  out += name;
  out += '>';
  AppendEscaped(out, text);
  out += "</";
  out += name;
  out += '>';
}

void SvgPathData::Append(PaperPoint p) {
  AppendPaper(out_, p.x);
  out_ += ' ';
  AppendPaper(out_, p.y);
}

bool SvgPathData::IsSame(PaperPoint a, PaperPoint b) {
  return tillwright::IsSame(a.x, b.x) && tillwright::IsSame(a.y, b.y);
}

void SvgPathData::MoveTo(PaperPoint p) {
  out_ += 'M';
  Append(p);
  at_ = p;
}

void SvgPathData::LineTo(PaperPoint p) {
  if (tillwright::IsSame(p.y, at_.y)) {
    out_ += 'H';
    AppendPaper(out_, p.x);
  } else if (tillwright::IsSame(p.x, at_.x)) {
    out_ += 'V';
    AppendPaper(out_, p.y);
  } else {
    out_ += 'L';
    Append(p);
  }
  at_ = p;
}

}  // namespace tillwright
