// What a part sheet says in words: which parts, how many, of what, and what each cut is for.
#ifndef TILLWRIGHT_DRAW_PART_PART_SHEET_NOTES_H_
#define TILLWRIGHT_DRAW_PART_PART_SHEET_NOTES_H_

#include <string>
#include <string_view>
#include <vector>

#include "draw/part/part_sheets.h"

namespace tillwright {

// a to z made large.
[[nodiscard]] std::string UpperCase(std::string_view text);

// "box side", "front".
[[nodiscard]] std::string PartKindRole(const Bank& bank, const PartKind& kind);

// "2 pieces: 1 as drawn (left), 1 mirrored (right)".
[[nodiscard]] std::string PartKindCount(const Bank& bank, const PartKind& kind);

// "birch plywood, grain upright"; the maker's own words first.
[[nodiscard]] std::string PartKindMaterial(const Part& part);

// One line for every cut, in their order: "Groove along the lower edge, for the bottom".
[[nodiscard]] std::vector<std::string> PartKindCuts(const Part& part, Unit unit);

// What is said of the dados for dividers and partitions, on both faces; empty without any.
[[nodiscard]] std::vector<std::string> PartKindSeats(const Bank& bank, const PartKind& kind);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PART_PART_SHEET_NOTES_H_
