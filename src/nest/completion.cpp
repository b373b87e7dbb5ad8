#include "nest/completion.h"

#include <algorithm>
#include <numeric>

namespace tillwright::nest {
namespace {

class Completion {
 public:
  Completion(const Problem& problem, std::int32_t stock, const std::vector<std::int32_t>& demands,
             std::int64_t boards, std::int64_t steps)
      : problem_(problem),
        stock_(stock),
        length_(problem.stock[static_cast<std::size_t>(stock)].width),
        left_(demands),
        steps_(steps),
        order_(demands.size()) {
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) {
      return problem.parts[a].width > problem.parts[b].width;
    });
    waste_ = boards * length_;
    for (std::size_t i = 0; i < demands.size(); ++i) {
      waste_ -= std::int64_t{problem.parts[i].width} * demands[i];
    }
  }

  std::vector<Pattern> Run() {
    if (waste_ < 0 || !NextBoard()) return {};
    return std::move(boards_);
  }

 private:
  // Begins a board with the longest part left.
  bool NextBoard() {
    for (std::size_t at = 0; at < order_.size(); ++at) {
      const std::size_t part = order_[at];
      if (left_[part] == 0) continue;
      boards_.push_back({stock_, std::vector<std::int32_t>(left_.size())});
      Add(part, 1);
      if (Fill(at, length_ - problem_.parts[part].width)) return true;
      Add(part, -1);
      boards_.pop_back();
      return false;
    }
    return true;
  }

  // Adds to the last board from this place in the order on, the longest first.
  bool Fill(std::size_t from, std::int32_t room) {
    if (--steps_ < 0) return false;
    for (std::size_t at = from; at < order_.size(); ++at) {
      const std::size_t part = order_[at];
      if (left_[part] == 0 || problem_.parts[part].width > room) continue;
      Add(part, 1);
      if (Fill(at, room - problem_.parts[part].width)) return true;
      Add(part, -1);
      if (steps_ < 0) return false;
    }
    if (room > waste_) return false;
    waste_ -= room;
    if (NextBoard()) return true;
    waste_ += room;
    return false;
  }

  void Add(std::size_t part, std::int32_t n) {
    boards_.back().counts[part] += n;
    left_[part] -= n;
  }

  const Problem& problem_;
  std::int32_t stock_;
  std::int32_t length_;
  std::vector<std::int32_t> left_;
  std::int64_t steps_;
  std::vector<std::size_t> order_;
  std::int64_t waste_ = 0;  // that all boards together may still have
  std::vector<Pattern> boards_;
};

}  // namespace

std::vector<Pattern> CompletedBoards(const Problem& problem, std::int32_t stock,
                                     const std::vector<std::int32_t>& demands, std::int64_t boards,
                                     std::int64_t steps) {
  return Completion(problem, stock, demands, boards, steps).Run();
}

}  // namespace tillwright::nest
