// StickPlace: a place along a stick with the sum of dimensions it comes from.
#ifndef TILLWRIGHT_DRAW_STICK_PLACE_H_
#define TILLWRIGHT_DRAW_STICK_PLACE_H_

#include <string>
#include <string_view>
#include <utility>

#include "tillwright/length.h"

namespace tillwright {

class StickPlace {
 public:
  StickPlace() = default;  // the datum
  StickPlace(Length at, std::string sum) : at_(at), sum_(std::move(sum)) {}

  [[nodiscard]] Length at() const { return at_; }
  [[nodiscard]] std::string sum() const { return sum_.empty() ? "0" : sum_; }

  // Further from the datum, or nearer, by a dimension.
  [[nodiscard]] StickPlace Plus(Length by, std::string_view path) const {
    return {at_ + by, sum_.empty() ? std::string(path) : Joined(" + ", path)};
  }
  [[nodiscard]] StickPlace Minus(Length by, std::string_view path) const {
    return {at_ - by, sum_.empty() ? "0 - " + std::string(path) : Joined(" - ", path)};
  }

 private:
  [[nodiscard]] std::string Joined(std::string_view sign, std::string_view path) const {
    std::string sum = sum_;
    sum += sign;
    sum += path;
    return sum;
  }

  Length at_;
  std::string sum_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STICK_PLACE_H_
