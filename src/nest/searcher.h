// One thread's search: see search.h.
#ifndef TILLWRIGHT_NEST_SEARCHER_H_
#define TILLWRIGHT_NEST_SEARCHER_H_

#include <array>
#include <bit>
#include <cstdint>
#include <vector>

#include "nest/packing.h"
#include "nest/random.h"

namespace tillwright::nest {

class Searcher {
 public:
  // `history`: how many steps back a packing is held against (late acceptance: Burke & Bykov 2017).
  // Short ones find soon, long ones find more.
  Searcher(const Problem& problem, std::uint64_t seed, std::size_t history);

  // Starts from a packing.
  void Start(const Packing& packing);

  // Lowers the goal: to cost less than `goal`. Sheets are emptied until that holds, and what was in
  // them is missing.
  void Aim(std::int64_t goal);

  // Searches until `work` units are spent or `bound` is reached, aiming lower each time the goal is
  // met.
  void Run(std::int64_t work, std::int64_t bound);

  // From a whole packing: looks for one that costs no more and leaves more in large pieces.
  void Tidy(std::int64_t work);

  // The cheapest whole packing so far, and what it costs.
  [[nodiscard]] const Packing& best() const { return best_; }
  [[nodiscard]] std::int64_t best_cost() const { return best_cost_; }
  [[nodiscard]] std::int64_t goal() const { return goal_; }

 private:
  struct Left {
    std::int32_t width = 0;
    std::int32_t height = 0;
    std::int32_t sheet = 0;
    std::int32_t node = 0;
    float worth = 0;
  };
  // The leftovers that are looked at, with their sides in columns of their own for speed. The
  // columns are whole blocks, filled up with zeros, which no part fits.
  class Lefts {
   public:
    static constexpr std::size_t kBlock = 8;

    void Clear();
    void Add(const Left& left);
    void Drop(std::size_t at) { widths_[at] = 0; }
    [[nodiscard]] std::size_t size() const { return all_.size(); }
    [[nodiscard]] const Left& operator[](std::size_t at) const { return all_[at]; }

    // Calls found(at) for every leftover from `from` on, a multiple of kBlock, that a part fits.
    template <class F>
    void ForFitting(std::int32_t width, std::int32_t height, std::size_t from, F found) const {
      for (std::size_t block = from; block < all_.size(); block += kBlock) {
        const std::int32_t* const w = widths_.data() + block;
        const std::int32_t* const h = heights_.data() + block;
        std::array<std::uint8_t, kBlock> fits{};
        for (std::size_t i = 0; i < kBlock; ++i) {
          fits[i] = static_cast<std::uint8_t>((w[i] >= width) & (h[i] >= height));
        }
        for (auto bits = std::bit_cast<std::uint64_t>(fits); bits != 0; bits &= bits - 1) {
          found(block + static_cast<std::size_t>(std::countr_zero(bits)) / 8);
        }
      }
    }

   private:
    std::vector<Left> all_;
    std::vector<std::int32_t> widths_;
    std::vector<std::int32_t> heights_;
  };
  struct Sheet {
    SheetInWork work;
    std::vector<Left> lefts;  // the leftovers that some part might fit
    double worth = 0;         // of all of them
  };
  struct Cost {
    std::int64_t missing = 0;  // area
    double worth = 0;          // of the leftovers

    [[nodiscard]] bool NoWorseThan(const Cost& other) const {
      return missing != other.missing ? missing < other.missing : worth >= other.worth;
    }
  };
  // What is known of one missing part while it waits for its place.
  struct Waiting {
    std::int32_t part = 0;
    std::int32_t places = 0;
    std::int32_t left = kNone;  // of the best place
    float loss = 0;
    bool turned = false;
    std::int32_t first_cut = kColumns;
  };

  void Keep();
  void Mark();
  void RuinAndRecreate();
  void Ruin();
  void RemoveSomething();
  void Close(std::size_t sheet);
  void Recreate();
  void Gather();
  void Look(Waiting& waiting, std::size_t from);
  void LookAll(Waiting& waiting);
  void Consider(Waiting& waiting, std::size_t at, std::int32_t width, std::int32_t height,
                bool turned);
  [[nodiscard]] std::int32_t OnlyCut(const Waiting& waiting, const Left& left, std::int32_t width,
                                     std::int32_t height) const;
  void Settle(std::size_t waiting);
  void LookAgain(std::int32_t gone, std::size_t from);
  void MeasureTouched();
  bool Open(const Part& part);
  void Place(const Waiting& waiting);
  void Measure(Sheet& sheet);
  void Touch(std::size_t sheet);
  void Undo();
  bool Accept();
  [[nodiscard]] Cost Now() const;
  [[nodiscard]] float LeftWorth(std::int32_t width, std::int32_t height) const;
  [[nodiscard]] const Stock& StockOf(std::int32_t stock) const {
    return problem_.stock[static_cast<std::size_t>(stock)];
  }
  [[nodiscard]] const Part& PartAt(std::int32_t part) const {
    return problem_.parts[static_cast<std::size_t>(part)];
  }

  const Problem& problem_;
  Random random_;
  std::int32_t least_width_ = 0;
  std::int32_t least_height_ = 0;

  std::vector<Sheet> sheets_;
  std::vector<std::int32_t> missing_;
  std::vector<std::int32_t> on_hand_;
  std::int64_t missing_area_ = 0;
  std::int64_t cost_ = 0;
  std::int64_t goal_ = 0;
  double worth_ = 0;  // of all sheets
  Packing best_;
  std::int64_t best_cost_ = 0;

  Lefts lefts_;
  std::vector<Waiting> waiting_;
  std::vector<std::size_t> touched_;
  std::vector<Sheet> backup_;
  std::vector<std::uint32_t> stamp_;
  std::uint32_t now_ = 0;
  std::vector<std::int32_t> missing_before_;
  std::vector<std::int32_t> on_hand_before_;
  std::int64_t missing_area_before_ = 0;
  std::int64_t cost_before_ = 0;
  double worth_before_ = 0;

  std::vector<Cost> history_;
  std::size_t turn_ = 0;
  Cost current_;
  std::uint32_t mean_removed_ = 8;
  std::int64_t work_ = 0;
};

}  // namespace tillwright::nest

#endif  // TILLWRIGHT_NEST_SEARCHER_H_
