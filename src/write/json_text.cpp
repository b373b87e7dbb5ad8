#include "write/json_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>

#include "text/utf8.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

void AppendEscape(std::string& out, unsigned char c) {
  switch (c) {
    case '"':
      out += "\\\"";
      return;
    case '\\':
      out += "\\\\";
      return;
    case '\n':
      out += "\\n";
      return;
    case '\t':
      out += "\\t";
      return;
    case '\r':
      out += "\\r";
      return;
    default:
      break;
  }
  constexpr std::string_view kHex = "0123456789abcdef";
  out += "\\u00";
  out += kHex[c >> 4U];
  out += kHex[c & 0xFU];
}

bool IsPlain(unsigned char c) { return c >= 0x20 && c < 0x7F && c != '"' && c != '\\'; }

}  // namespace

void AppendJsonString(std::string& out, std::string_view text) {
  out += '"';
  for (std::size_t i = 0; i < text.size();) {
    const auto c = static_cast<unsigned char>(text[i]);
    if (IsPlain(c)) {
      std::size_t end = i + 1;
      while (end < text.size() && IsPlain(static_cast<unsigned char>(text[end]))) ++end;
      out.append(text, i, end - i);
      i = end;
    } else if (c < 0x80) {
      AppendEscape(out, c);
      ++i;
    } else {
      const std::size_t start = i;
      const bool valid = NextCharacter(text, i) != kBadByte;
      out += valid ? text.substr(start, i - start) : "\uFFFD";
    }
  }
  out += '"';
}

void JsonText::NewLine() {
  if (open_.size() > break_depth_) return;
  out_ += '\n';
  out_.append(2 * open_.size(), ' ');
}

void JsonText::Separate() {
  if (after_key_) {
    after_key_ = false;
    return;
  }
  if (!first_) {
    out_ += ',';
    if (open_.size() > break_depth_ && break_depth_ > 0) out_ += ' ';
  }
  if (!open_.empty()) NewLine();
  first_ = false;
}

JsonText& JsonText::Open(char bracket) {
  Separate();
  out_ += bracket;
  open_ += bracket == '{' ? '}' : ']';
  first_ = true;
  return *this;
}

JsonText& JsonText::Close() {
  const char bracket = open_.back();
  const bool broken = !first_ && open_.size() <= break_depth_;
  open_.pop_back();
  if (broken) NewLine();
  out_ += bracket;
  first_ = false;
  return *this;
}

JsonText& JsonText::Key(std::string_view key) {
  Separate();
  out_ += '"';
  out_ += key;  // keys are our own words: nothing to escape
  out_ += break_depth_ > 0 ? "\": " : "\":";
  after_key_ = true;
  return *this;
}

JsonText& JsonText::Text(std::string_view value) {
  Separate();
  AppendJsonString(out_, value);
  return *this;
}

JsonText& JsonText::Number(std::int64_t value) {
  Separate();
  std::array<char, 24> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
  out_.append(buffer.data(), end);
  return *this;
}

JsonText& JsonText::Flag(bool value) { return Raw(value ? "true" : "false"); }

JsonText& JsonText::Null() { return Raw("null"); }

JsonText& JsonText::Millimeters(Length value) {
  Separate();
  AppendMillimeters(out_, value);
  return *this;
}

JsonText& JsonText::Decimal(double value) {
  Separate();
  const long long thousandths = std::llround(value * 1000);
  if (thousandths < 0) out_ += '-';
  out_ += std::to_string(std::abs(thousandths) / 1000);
  std::string digits = std::to_string(1000 + std::abs(thousandths) % 1000);
  while (digits.back() == '0') digits.pop_back();
  if (digits.size() > 1) out_ += "." + digits.substr(1);
  return *this;
}

JsonText& JsonText::Raw(std::string_view json) {
  Separate();
  out_ += json;
  return *this;
}

}  // namespace tillwright
