// What checks of the bank put their findings into, and the rules that several of them share.
#ifndef TILLWRIGHT_CHECK_FINDING_LIST_H_
#define TILLWRIGHT_CHECK_FINDING_LIST_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/check.h"
#include "tillwright/length_text.h"

namespace tillwright {

inline constexpr std::string_view kCommon = "common practice, no source";
inline constexpr std::string_view kSpecSource = "the spec";
inline constexpr std::string_view kGeometry = "geometry";

class FindingList {
 public:
  FindingList(Unit unit, std::vector<Finding>& out) : unit_(unit), out_(out) {}

  [[nodiscard]] Unit unit() const { return unit_; }
  [[nodiscard]] std::string In(Length length) const { return FormatWithUnit(length, unit_); }

  void Pass(CheckCode code, const std::string& subject, const char* message, Length value,
            Length limit, std::string_view source) {
    out_.push_back({code, Level::kPass, subject, message, value, limit, source});
  }
  void Add(CheckCode code, Level level, std::string subject, std::string message,
           std::optional<Length> value, std::optional<Length> limit, std::string_view source) {
    out_.push_back({code, level, std::move(subject), std::move(message), value, limit, source});
  }

  // A groove or dado: not through (fail), and no deeper than half the part (a warning).
  void Groove(const std::string& subject, std::string_view what, Length depth, Length part);
  // A rabbet no deeper than two thirds of the part.
  void Rabbet(const std::string& subject, std::string_view what, Length depth, Length part);

 private:
  Unit unit_;
  std::vector<Finding>& out_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_FINDING_LIST_H_
