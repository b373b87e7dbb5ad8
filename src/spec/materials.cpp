#include "spec/materials.h"

#include <algorithm>
#include <array>
#include <string>

#include "diag/characters.h"

namespace tillwright {
namespace {

using namespace std::string_view_literals;

// The woods of the Wood Handbook's tables of dimensional change that furniture is made of.
constexpr std::array kWoods{"alder"sv,  "ash"sv,    "aspen"sv,  "basswood"sv, "beech"sv,
                            "birch"sv,  "cedar"sv,  "redcedar"sv, "cherry"sv, "fir"sv,    "mahogany"sv, "maple"sv, "oak"sv,     "pine"sv,
                            "poplar"sv, "teak"sv, "walnut"sv};

// Words that mark a sheet, whatever wood shows on its face.
constexpr std::array kPanelWords{"plywood"sv,  "ply"sv,          "mdf"sv,       "hdf"sv,
                                 "osb"sv,      "particleboard"sv, "chipboard"sv, "hardboard"sv,
                                 "fiberboard"sv, "fibreboard"sv,  "blockboard"sv, "melamine"sv,
                                 "veneer"sv,   "veneered"sv,     "laminate"sv,  "panel"sv};

bool InWord(char c) { return c >= 'a' && c <= 'z'; }

template <std::size_t N>
bool Holds(const std::array<std::string_view, N>& words, std::string_view word) {
  return std::ranges::find(words, word) != words.end();
}

}  // namespace

bool IsSolidWood(std::string_view material) {
  bool wood = false;
  std::string word;
  for (std::size_t i = 0; i <= material.size(); ++i) {
    const char c = i < material.size() ? Lower(material[i]) : ' ';
    if (InWord(c)) {
      word += c;
      continue;
    }
    if (Holds(kPanelWords, word)) return false;
    wood = wood || Holds(kWoods, word);
    word.clear();
  }
  return wood;
}

std::span<const std::string_view> KnownWoods() { return kWoods; }

}  // namespace tillwright
