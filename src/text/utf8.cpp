#include "text/utf8.h"

namespace tillwright {
namespace {

struct Lead {
  std::size_t length = 0;  // bytes in all; 0: not a lead byte
  char32_t bits = 0;       // payload of the lead byte
  char32_t least = 0;      // below this the form is overlong
};

Lead LeadOf(unsigned char byte) {
  if (byte < 0x80U) return {1, byte, 0};
  if (byte >= 0xc2U && byte <= 0xdfU) return {2, byte & 0x1fU, 0x80};
  if (byte >= 0xe0U && byte <= 0xefU) return {3, byte & 0x0fU, 0x800};
  if (byte >= 0xf0U && byte <= 0xf4U) return {4, byte & 0x07U, 0x10000};
  return {};
}

bool IsScalar(char32_t c) { return c <= 0x10ffffU && (c < 0xd800U || c > 0xdfffU); }

char LowByte(char32_t value) {
  return static_cast<char>(static_cast<unsigned char>(value & 0xffU));
}

}  // namespace

char32_t NextCharacter(std::string_view text, std::size_t& position) {
  const std::size_t start = position++;
  const Lead lead = LeadOf(static_cast<unsigned char>(text[start]));
  if (lead.length == 0 || text.size() - start < lead.length) return kBadByte;
  char32_t c = lead.bits;
  for (std::size_t i = 1; i < lead.length; ++i) {
    const auto byte = static_cast<unsigned char>(text[start + i]);
    if ((byte & 0xc0U) != 0x80U) return kBadByte;
    c = (c << 6U) | (byte & 0x3fU);
  }
  if (c < lead.least || !IsScalar(c)) return kBadByte;
  position = start + lead.length;
  return c;
}

void AppendCharacter(std::string& out, char32_t c) {
  if (c < 0x80U) {
    out += LowByte(c);
  } else if (c < 0x800U) {
    out += LowByte(0xc0U | (c >> 6U));
    out += LowByte(0x80U | (c & 0x3fU));
  } else if (c < 0x10000U) {
    out += LowByte(0xe0U | (c >> 12U));
    out += LowByte(0x80U | ((c >> 6U) & 0x3fU));
    out += LowByte(0x80U | (c & 0x3fU));
  } else {
    out += LowByte(0xf0U | (c >> 18U));
    out += LowByte(0x80U | ((c >> 12U) & 0x3fU));
    out += LowByte(0x80U | ((c >> 6U) & 0x3fU));
    out += LowByte(0x80U | (c & 0x3fU));
  }
}

}  // namespace tillwright
