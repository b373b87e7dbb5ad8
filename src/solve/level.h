// The level at which clamped lines add up to a total: the heart of every apportioning.
//
// The ideal size of a flexible child is a clamped line in one parameter: clamp(slope * x + offset,
// low, high). Proportional schemes have slopes (the weights) and no offsets, arithmetic ones slope
// 1 and an offset each. Their sum grows with x, so the x that meets the total is found by walking
// the bends in order. Everything is written over the number type N: 128-bit integers where the
// digits fit, integers of any length where they do not, doubles only for a ratio that is a root.
#ifndef TILLWRIGHT_SOLVE_LEVEL_H_
#define TILLWRIGHT_SOLVE_LEVEL_H_

#include <algorithm>
#include <cstdint>
#include <vector>

#include "solve/apportion.h"

namespace tillwright::level {

using Fault = Apportioned::Fault;

enum class State : std::uint8_t { kAtLow, kFree, kAtHigh };

template <class N>
struct Item {
  N slope{};
  N offset{};
  N low{};
  N high{};
  bool has_low = false;
  bool has_high = false;
  State state = State::kFree;
};

template <class N>
struct Bend {  // at parameter position / slope the item leaves its low, or reaches its high
  N position{};
  N slope{};
  std::size_t item = 0;
  bool leaves_low = false;
};

template <class N>
struct Level {  // the parameter x = numerator / denominator
  N numerator{};
  N denominator{};
  Fault fault = Fault::kNone;
  N amount{};
};

template <class N>
std::vector<Bend<N>> Bends(const std::vector<Item<N>>& items) {
  std::vector<Bend<N>> bends;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Item<N>& item = items[i];
    if (item.has_low) bends.push_back({item.low - item.offset, item.slope, i, true});
    if (item.has_high) bends.push_back({item.high - item.offset, item.slope, i, false});
  }
  // At one place, leaving a low comes before reaching a high (an item with low == high passes).
  std::ranges::sort(bends, [](const Bend<N>& a, const Bend<N>& b) {
    const N left = a.position * b.slope;
    const N right = b.position * a.slope;
    if (left < right || right < left) return left < right;
    if (a.item != b.item) return a.item < b.item;
    return a.leaves_low && !b.leaves_low;
  });
  return bends;
}

// Finds the parameter at which the items add up to `total`, and leaves each in its state there.
template <class N>
Level<N> FindLevel(std::vector<Item<N>>& items, const N& total) {
  N held{};    // what items at a bound add up to, and the offsets of the free ones
  N slopes{};  // of the free items
  for (Item<N>& item : items) {
    item.state = item.has_low ? State::kAtLow : State::kFree;
    held += item.has_low ? item.low : item.offset;
    if (!item.has_low) slopes += item.slope;
  }
  const N zero{};
  if (!(slopes > zero) && held > total) return {zero, zero, Fault::kTooLong, N(held - total)};
  for (const Bend<N>& bend : Bends(items)) {
    const N missing = total - held;
    if (bend.position * slopes >= missing * bend.slope) break;
    Item<N>& item = items[bend.item];
    if (bend.leaves_low) {
      item.state = State::kFree;
      held += item.offset - item.low;
      slopes += item.slope;
    } else {
      item.state = State::kAtHigh;
      held += item.high - item.offset;
      slopes -= item.slope;
    }
  }
  if (!(slopes > zero) && held < total) return {zero, zero, Fault::kTooShort, N(total - held)};
  return {N(total - held), slopes, Fault::kNone, zero};
}

}  // namespace tillwright::level

#endif  // TILLWRIGHT_SOLVE_LEVEL_H_
