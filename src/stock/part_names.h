// Ids of many parts in few words.
#ifndef TILLWRIGHT_STOCK_PART_NAMES_H_
#define TILLWRIGHT_STOCK_PART_NAMES_H_

#include <set>
#include <string>
#include <utility>
#include <vector>

namespace tillwright {

// A letter and a number: D12.
using NumberedId = std::pair<char, int>;

// In their order, those that count up together: "D1–D3, D5".
[[nodiscard]] std::string RunTogether(const std::vector<std::string>& ids);
[[nodiscard]] std::string RunTogether(const std::set<NumberedId>& ids);

// REQUIRES: a letter and a number.
[[nodiscard]] NumberedId ToNumberedId(const std::string& id);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_PART_NAMES_H_
