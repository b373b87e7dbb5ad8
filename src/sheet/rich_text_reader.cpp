#include "sheet/rich_text_reader.h"

#include <cstdint>
#include <optional>
#include <utility>

#include "text/utf8.h"

namespace tillwright {
namespace {

using Kind = TextRun::Kind;

constexpr std::string_view kDiameterText = "⌀";

bool IsDigit(char32_t c) { return c >= U'0' && c <= U'9'; }
bool IsLetter(char32_t c) {
  return (c >= U'a' && c <= U'z') || (c >= U'A' && c <= U'Z') || c >= 0xc0;
}

// Marks of direction and of zero width, soft hyphen.
constexpr std::array kInvisible{
    CharacterRange{0x00ad, 0x00ad}, CharacterRange{0x200b, 0x200f}, CharacterRange{0x202a, 0x202e},
    CharacterRange{0x2060, 0x206f}, CharacterRange{0xfe00, 0xfe0f}, CharacterRange{0xfeff, 0xfeff},
};
constexpr std::array kBlank{
    CharacterRange{0x00, 0x1f},
    CharacterRange{0x7f, 0xa0},
    CharacterRange{0x2028, 0x2029},
    CharacterRange{0x2000, 0x200a},
};

// The text without what cannot be shown in any font: valid UTF-8, no control characters, single
// line, no blanks at the ends.
std::u32string Clean(std::string_view text) {
  std::u32string out;
  for (std::size_t at = 0; at < text.size();) {
    const char32_t c = NextCharacter(text, at);
    if (c == kBadByte || (c & 0xfffeU) == 0xfffeU) {
      out += U'\ufffd';
    } else if (IsIn(c, kBlank)) {
      out += U' ';
    } else if (!IsIn(c, kInvisible)) {
      out += c;
    }
  }
  const std::size_t last = out.find_last_not_of(U' ');
  out.erase(last == std::u32string::npos ? 0 : last + 1);
  out.erase(0, std::min(out.find_first_not_of(U' '), out.size()));
  return out;
}

std::string ToUtf8(std::u32string_view text) {
  std::string out;
  for (const char32_t c : text) AppendCharacter(out, c);
  return out;
}

struct Precomposed {
  char32_t sign;
  std::string_view numerator;
  std::string_view denominator;
};
constexpr std::array kPrecomposed{
    Precomposed{U'½', "1", "2"}, Precomposed{U'¼', "1", "4"}, Precomposed{U'¾', "3", "4"},
    Precomposed{U'⅓', "1", "3"}, Precomposed{U'⅔', "2", "3"}, Precomposed{U'⅛', "1", "8"},
    Precomposed{U'⅜', "3", "8"}, Precomposed{U'⅝', "5", "8"}, Precomposed{U'⅞', "7", "8"},
};

// Reads a cleaned text run by run.
class RichTextReader {
 public:
  explicit RichTextReader(std::u32string_view text) : text_(text) {}

  RichText Read() {
    while (at_ < text_.size()) {
      if (!ReadFraction() && !ReadPrecomposed() && !ReadDiameter()) plain_ += text_[at_++];
    }
    Flush();
    return std::move(runs_);
  }

 private:
  [[nodiscard]] char32_t At(std::size_t i) const { return i < text_.size() ? text_[i] : U'\0'; }

  // The end of 1 to 3 digits, the first not 0, from `start`; `start` if there are none.
  [[nodiscard]] std::size_t SkipNumeral(std::size_t start) const {
    std::size_t end = start;
    while (IsDigit(At(end))) ++end;
    return At(start) == U'0' || end - start > 3 ? start : end;
  }

  [[nodiscard]] bool Isolated(std::size_t start, std::size_t end) const {
    const auto joins = [](char32_t c) {
      return IsDigit(c) || IsLetter(c) || c == U'/' || c == U'.' || c == U'\u2044';
    };
    const bool before = start > 0 && joins(At(start - 1)) && !IsDiameterSign(At(start - 1));
    // A full stop after the fraction may end a sentence; a digit after it may not follow.
    const char32_t next = At(end);
    const bool after = next == U'.' ? IsDigit(At(end + 1)) : joins(next) && next < 0x2000;
    return !before && !after;
  }

  bool ReadFraction() {
    const std::size_t slash = SkipNumeral(at_);
    if (slash == at_ || (At(slash) != U'/' && At(slash) != U'\u2044')) return false;
    const std::size_t end = SkipNumeral(slash + 1);
    if (end == slash + 1 || !Isolated(at_, end)) return false;
    AddFraction(ToUtf8(text_.substr(at_, slash - at_)),
                ToUtf8(text_.substr(slash + 1, end - slash - 1)));
    at_ = end;
    return true;
  }

  bool ReadPrecomposed() {
    const char32_t c = At(at_);
    const auto* found = std::find_if(kPrecomposed.begin(), kPrecomposed.end(),
                                     [c](const Precomposed& p) { return p.sign == c; });
    if (found == kPrecomposed.end()) return false;
    AddFraction(std::string(found->numerator), std::string(found->denominator));
    ++at_;
    return true;
  }

  static bool IsDiameterSign(char32_t c) { return c == U'ø' || c == U'Ø' || c == U'⌀'; }

  bool ReadDiameter() {
    if (!IsDiameterSign(At(at_)) || (at_ > 0 && IsLetter(At(at_ - 1)))) return false;
    std::size_t next = at_ + 1;
    while (At(next) == U' ') ++next;
    const char32_t c = At(next);
    const bool sign = std::any_of(kPrecomposed.begin(), kPrecomposed.end(),
                                  [c](const Precomposed& p) { return p.sign == c; });
    if (!IsDigit(c) && !sign) return false;
    Flush();
    runs_.push_back({Kind::kDiameter, "", ""});
    at_ = next;
    return true;
  }

  void AddFraction(std::string numerator, std::string denominator) {
    DropBlankAfterWhole();
    Flush();
    runs_.push_back({Kind::kFraction, std::move(numerator), std::move(denominator)});
  }

  // "15 " before a fraction becomes "15" if 15 is a number of its own and not the end of a name.
  void DropBlankAfterWhole() {
    if (plain_.size() < 2 || plain_.back() != U' ') return;
    std::size_t start = plain_.size() - 1;
    while (start > 0 && IsDigit(plain_[start - 1])) --start;
    const bool digits = start < plain_.size() - 1;
    const bool own = start == 0 || !(IsLetter(plain_[start - 1]) || plain_[start - 1] == U'.');
    if (digits && own) plain_.pop_back();
  }

  void Flush() {
    if (!plain_.empty()) runs_.push_back({Kind::kPlain, ToUtf8(plain_), ""});
    plain_.clear();
  }

  std::u32string_view text_;
  std::size_t at_ = 0;
  std::u32string plain_;
  RichText runs_;
};

}  // namespace

bool EndsInDigit(const TextRun& run) {
  return run.kind == Kind::kPlain && !run.text.empty() &&
         IsDigit(static_cast<unsigned char>(run.text.back()));
}

RichText OnePlainRun(std::string_view text) {
  std::string clean = ToUtf8(Clean(text));
  if (clean.empty()) return {};
  return {{Kind::kPlain, std::move(clean), ""}};
}

RichText ParseRichText(std::string_view text) { return RichTextReader(Clean(text)).Read(); }

std::string PlainText(const RichText& text) {
  std::string out;
  const TextRun* before = nullptr;
  for (const TextRun& run : text) {
    switch (run.kind) {
      case Kind::kPlain:
        out += run.text;
        break;
      case Kind::kFraction:
        if (before != nullptr && EndsInDigit(*before)) out += ' ';
        out += run.text + '/' + run.denominator;
        break;
      case Kind::kDiameter:
        out += kDiameterText;
        out += ' ';
        break;
    }
    before = &run;
  }
  return out;
}

}  // namespace tillwright
