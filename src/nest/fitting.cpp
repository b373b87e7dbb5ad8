#include "nest/fitting.h"

#include <algorithm>
#include <numeric>

namespace tillwright::nest {
namespace {

constexpr std::size_t kMostPatterns = 6'000;

class Fitting {
 public:
  Fitting(const Problem& problem, std::int64_t boards, std::int64_t steps)
      : problem_(problem),
        length_(problem.stock.front().width),
        boards_(boards),
        steps_(steps),
        order_(problem.parts.size()) {
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::ranges::stable_sort(order_, [&](std::size_t a, std::size_t b) {
      return problem.parts[a].width > problem.parts[b].width;
    });
    waste_ = boards * length_;
    for (const Part& part : problem.parts) {
      left_.push_back(part.count);
      pieces_ += part.count;
      waste_ -= std::int64_t{part.width} * part.count;
    }
  }

  std::vector<Pattern> Run() {
    if (waste_ < 0 || waste_ >= length_) return {};
    now_.assign(left_.size(), 0);
    if (!List(0, length_)) return {};
    if (full_.empty()) return {};
    std::ranges::stable_sort(full_, {}, &Full::waste);
    const auto [fewest, most] = std::ranges::minmax(full_, {}, &Full::pieces);
    fewest_ = fewest.pieces;
    most_ = most.pieces;
    ListByPart();
    if (!Cover()) return {};
    std::vector<Pattern> patterns;
    for (const std::size_t at : taken_) {
      patterns.push_back({0, std::vector<std::int32_t>(left_.size())});
      for (const Some& some : full_[at].parts) patterns.back().counts[some.part] = some.count;
    }
    return patterns;
  }

 private:
  struct Some {
    std::size_t part = 0;
    std::int32_t count = 0;
  };
  struct Full {
    std::int64_t waste = 0;
    std::int64_t pieces = 0;
    std::vector<Some> parts{};
  };

  // All patterns that go on with parts from this place in the order on; false when they are too
  // many.
  bool List(std::size_t from, std::int32_t room) {
    if (--steps_ < 0) return false;
    if (room <= waste_ && room < length_) {
      if (full_.size() == kMostPatterns) return false;
      Full full{.waste = room};
      for (std::size_t i = 0; i < now_.size(); ++i) {
        if (now_[i] > 0) full.parts.push_back({i, now_[i]});
        full.pieces += now_[i];
      }
      full_.push_back(std::move(full));
    }
    for (std::size_t at = from; at < order_.size(); ++at) {
      const std::size_t part = order_[at];
      const std::int32_t size = problem_.parts[part].width;
      if (size > room || now_[part] == left_[part]) continue;
      ++now_[part];
      const bool listed = List(at, room - size);
      --now_[part];
      if (!listed) return false;
    }
    return true;
  }

  void ListByPart() {
    by_part_.resize(left_.size());
    for (std::size_t at = 0; at < full_.size(); ++at) {
      for (const Some& some : full_[at].parts) by_part_[some.part].push_back(at);
    }
  }

  // The boards after this one must not have to take more pieces, or fewer, than any pattern has.
  [[nodiscard]] bool Usable(const Full& full) const {
    const std::int64_t pieces = pieces_ - full.pieces;
    return full.waste <= waste_ && pieces >= fewest_ * (boards_ - 1) &&
           pieces <= most_ * (boards_ - 1) &&
           std::ranges::all_of(full.parts,
                               [&](const Some& some) { return some.count <= left_[some.part]; });
  }

  // The part that the fewest usable patterns take, of those still wanted; the number of parts when
  // none is.
  std::size_t Scarcest() {
    std::size_t best = left_.size();
    std::size_t least = 0;
    for (const std::size_t part : order_) {
      if (left_[part] == 0) continue;
      std::size_t n = 0;
      for (const std::size_t at : by_part_[part]) {
        --steps_;
        if (Usable(full_[at]) && ++n >= least && best < left_.size()) break;
      }
      if (best == left_.size() || n < least) {
        best = part;
        least = n;
      }
      if (least == 0) break;
    }
    return best;
  }

  bool Cover() {
    const std::size_t part = Scarcest();
    if (part == left_.size()) return true;
    for (const std::size_t at : by_part_[part]) {
      if (steps_ < 0) return false;
      if (!Usable(full_[at])) continue;
      Take(at, 1);
      if (Cover()) return true;
      Take(at, -1);
    }
    return false;
  }

  void Take(std::size_t at, std::int32_t n) {
    for (const Some& some : full_[at].parts) left_[some.part] -= n * some.count;
    waste_ -= n * full_[at].waste;
    pieces_ -= n * full_[at].pieces;
    boards_ -= n;
    if (n > 0) taken_.push_back(at);
    if (n < 0) taken_.pop_back();
  }

  const Problem& problem_;
  std::int32_t length_;
  std::int64_t boards_;      // still to come
  std::int64_t pieces_ = 0;  // still to be placed
  std::int64_t steps_;
  std::vector<std::size_t> order_;  // parts, the longest first
  std::vector<std::int32_t> left_;
  std::int64_t waste_ = 0;   // that all boards still to come may have together
  std::int64_t fewest_ = 0;  // pieces that a pattern has
  std::int64_t most_ = 0;
  std::vector<std::int32_t> now_;
  std::vector<Full> full_;
  std::vector<std::vector<std::size_t>> by_part_;  // the patterns that take a part
  std::vector<std::size_t> taken_;
};

}  // namespace

std::vector<Pattern> FittedBoards(const Problem& problem, std::int64_t boards, std::int64_t steps) {
  return Fitting(problem, boards, steps).Run();
}

}  // namespace tillwright::nest
