// Puts missing parts back: always the part with the fewest places, where it spoils least.
#ifndef TILLWRIGHT_NEST_REFILL_H_
#define TILLWRIGHT_NEST_REFILL_H_

#include <cstdint>
#include <vector>

#include "nest/fences.h"
#include "nest/lefts.h"
#include "nest/random.h"
#include "nest/workbench.h"

namespace tillwright::nest {

class Refill {
 public:
  // REQUIRES: both outlive this.
  Refill(Workbench& bench, Random& random) : bench_(bench), random_(random) {}

  // Places what it can; opens sheets as long as all of them cost less than `goal`. Where `in_use`
  // is given, sizes among them are cut rather than others.
  void Run(std::int64_t goal, const PieceSizes* in_use = nullptr);

 private:
  // What is known of one missing part while it waits for its place.
  struct Waiting {
    std::int32_t part = 0;
    std::int32_t places = 0;
    std::int32_t left = kNone;  // of the best place
    float loss = 0;
    bool turned = false;
    std::int32_t first_cut = kColumns;
  };

  void Gather();
  void LookAll(Waiting& waiting);
  void Consider(Waiting& waiting, std::size_t at, std::int32_t width, std::int32_t height,
                bool turned);
  [[nodiscard]] float NewSizes(const Left& left, std::int32_t width, std::int32_t height) const;
  [[nodiscard]] std::int32_t OnlyCut(const Waiting& waiting, const Left& left, std::int32_t width,
                                     std::int32_t height) const;
  void Settle(std::size_t waiting);
  void LookAgain(std::int32_t gone, std::size_t from);
  bool Open(const Part& part);
  void Place(const Waiting& waiting);

  Workbench& bench_;
  Random& random_;
  std::int64_t goal_ = 0;
  const PieceSizes* in_use_ = nullptr;
  Lefts lefts_;
  std::vector<Waiting> waiting_;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_REFILL_H_
