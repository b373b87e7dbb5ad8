#include "write/dxf.h"

#include "text/utf8.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr std::string_view kEnd = "\r\n";

std::string Group(int code, std::string_view value) {
  // Codes stand right-aligned in three places, as R12 wrote them.
  std::string out = std::to_string(code);
  out.insert(0, out.size() < 3 ? 3 - out.size() : 0, ' ');
  out += kEnd;
  out += value;
  out += kEnd;
  return out;
}

}  // namespace

void Dxf::Code(int code, std::string_view value) { entities_ += Group(code, value); }
void Dxf::Code(int code, Length value) { Code(code, FormatMillimeters(value)); }

void Dxf::Point(int code, DxfPoint point) {
  Code(code, point.x);
  Code(code + 10, point.y);
}

void Dxf::Seen(DxfPoint point) {
  if (empty_) low_ = high_ = point;
  empty_ = false;
  low_ = {Min(low_.x, point.x), Min(low_.y, point.y)};
  high_ = {Max(high_.x, point.x), Max(high_.y, point.y)};
}

void Dxf::Layer(std::string_view name, int color) {
  for (const auto& [known, its_color] : layers_) {
    if (known == name) return;
  }
  layers_.emplace_back(name, color);
}

void Dxf::Polygon(std::string_view layer, const std::vector<DxfPoint>& corners) {
  Code(0, "POLYLINE");
  Code(8, layer);
  Code(66, "1");  // vertices follow
  Point(10, {});
  Code(70, "1");  // closed
  for (const DxfPoint corner : corners) {
    Seen(corner);
    Code(0, "VERTEX");
    Code(8, layer);
    Point(10, corner);
  }
  Code(0, "SEQEND");
  Code(8, layer);
}

void Dxf::Circle(std::string_view layer, DxfPoint center, Length radius) {
  Seen({center.x - radius, center.y - radius});
  Seen({center.x + radius, center.y + radius});
  Code(0, "CIRCLE");
  Code(8, layer);
  Point(10, center);
  Code(40, radius);
}

void Dxf::Text(std::string_view layer, DxfPoint lower_left, Length height, std::string_view text) {
  Seen(lower_left);
  Code(0, "TEXT");
  Code(8, layer);
  Point(10, lower_left);
  Code(40, height);
  Code(1, DxfText(text));
}

std::string Dxf::Take(std::string_view comment) const {
  std::string out = Group(999, DxfText(comment));
  const auto put = [&](int code, std::string_view value) { out += Group(code, value); };
  const auto point = [&](std::string_view name, DxfPoint at) {
    put(9, name);
    put(10, FormatMillimeters(at.x));
    put(20, FormatMillimeters(at.y));
  };
  put(0, "SECTION");
  put(2, "HEADER");
  put(9, "$ACADVER");
  put(1, "AC1009");
  point("$EXTMIN", low_);
  point("$EXTMAX", high_);
  put(0, "ENDSEC");
  put(0, "SECTION");
  put(2, "TABLES");
  put(0, "TABLE");
  put(2, "LAYER");
  put(70, std::to_string(layers_.size()));
  for (const auto& [name, color] : layers_) {
    put(0, "LAYER");
    put(2, name);
    put(70, "0");
    put(62, std::to_string(color));
    put(6, "CONTINUOUS");
  }
  put(0, "ENDTAB");
  put(0, "ENDSEC");
  put(0, "SECTION");
  put(2, "ENTITIES");
  out += entities_;
  put(0, "ENDSEC");
  put(0, "EOF");
  return out;
}

std::string DxfText(std::string_view text) {
  constexpr std::string_view kHex = "0123456789ABCDEF";
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const char32_t c = NextCharacter(text, at);
    if (c < 0x20 || c == 0x7f) {
      out += ' ';
    } else if (c < 0x7f) {
      out += static_cast<char>(c);
    } else if (c > 0xffff) {
      out += '?';  // no way to write it
    } else {
      out += "\\U+";
      for (int shift = 12; shift >= 0; shift -= 4) out += kHex[(c >> shift) & 0xfU];
    }
  }
  return out;
}

}  // namespace tillwright
