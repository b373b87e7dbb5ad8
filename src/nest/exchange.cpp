#include "nest/exchange.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "nest/random.h"

namespace tillwright::nest {
namespace {

constexpr std::int64_t kMostPieces = 2'000;
constexpr std::uint32_t kShortTabu = 3;
constexpr std::uint32_t kTabuSpread = 8;
// Exchanges without a gain before a shake: some jobs want many, some few, so it varies.
constexpr std::int64_t kLeastPatience = 100;
constexpr std::uint32_t kPatiences = 4;
constexpr std::size_t kLookSteps = 6;
constexpr std::size_t kLargeHeap = 40;  // pairs of a larger heap are too many to look at

class Exchange {
 public:
  Exchange(const Problem& problem, std::int64_t boards, std::int64_t steps)
      : problem_(problem),
        length_(problem.stock.front().width),
        boards_(static_cast<std::size_t>(boards - 2), {length_, {}, {}}),
        steps_(steps),
        random_(7) {
    for (std::size_t i = 0; i < problem.parts.size(); ++i) {
      for (std::int32_t n = 0; n < problem.parts[i].count; ++n) {
        pieces_.push_back({problem.parts[i].width, static_cast<std::int32_t>(i)});
      }
    }
    std::ranges::stable_sort(pieces_, std::ranges::greater(), &Piece::size);
  }

  std::vector<Pattern> Run() {
    heap_.resize(pieces_.size());
    std::iota(heap_.begin(), heap_.end(), std::int32_t{0});
    for (const Piece& piece : pieces_) heap_size_ += piece.size;
    Refill();
    while (steps_ > 0) {
      if (heap_size_ <= 2 * std::int64_t{length_} && Finish()) return Patterns();
      if (!Step() || now_ - last_gain_ > patience_) Shake();
    }
    return {};
  }

 private:
  struct Piece {
    std::int32_t size = 0;
    std::int32_t part = 0;
    std::int32_t left_board = -1;  // the board it was taken from last,
    std::int64_t not_before = 0;   // and when it may go back there, or leave the one it is on
  };
  // None, one or two of a set of pieces.
  struct Few {
    std::int64_t size = 0;
    std::int32_t a = -1;
    std::int32_t b = -1;
  };
  struct Board {
    std::int32_t room = 0;
    std::vector<std::int32_t> pieces{};
    std::vector<Few> few{};  // what may be taken off; none: not listed yet
  };
  struct Move {
    std::int64_t gain = 0;
    std::size_t board = 0;
    Few out;
    Few in;
  };

  [[nodiscard]] Piece& At(std::int32_t piece) { return pieces_[static_cast<std::size_t>(piece)]; }
  [[nodiscard]] const Piece& At(std::int32_t piece) const {
    return pieces_[static_cast<std::size_t>(piece)];
  }

  // Best fit of what lies on the heap, in its order.
  void Refill() {
    std::vector<std::int32_t> rest;
    for (const std::int32_t piece : heap_) {
      Board* best = nullptr;
      for (Board& board : boards_) {
        if (board.room < At(piece).size) continue;
        if (best == nullptr || board.room < best->room) best = &board;
      }
      if (best == nullptr) {
        rest.push_back(piece);
        continue;
      }
      best->pieces.push_back(piece);
      best->few.clear();
      best->room -= At(piece).size;
      heap_size_ -= At(piece).size;
    }
    steps_ -= static_cast<std::int64_t>(heap_.size() * boards_.size());
    heap_ = std::move(rest);
  }

  // Some boards go back onto the heap, and what lies there onto boards in a random order.
  void Shake() {
    constexpr int kShaken = 3;
    for (int i = 0; i < kShaken && !boards_.empty(); ++i) {
      Board& board = boards_[random_.Below(static_cast<std::uint32_t>(boards_.size()))];
      for (const std::int32_t piece : board.pieces) {
        heap_.push_back(piece);
        heap_size_ += At(piece).size;
      }
      board = {length_, {}, {}};
    }
    for (std::size_t i = heap_.size(); i > 1; --i) {
      std::swap(heap_[i - 1], heap_[random_.Below(static_cast<std::uint32_t>(i))]);
    }
    Refill();
    least_heap_ = heap_size_;
    last_gain_ = now_;
    patience_ = kLeastPatience << random_.Below(kPatiences);
    steps_ -= 100;
  }

  // All ways to take none, one or two of some pieces; alike ones once.
  void List(std::vector<std::int32_t>& pieces, bool pairs, std::vector<Few>& out) {
    std::ranges::sort(pieces);  // the longest first
    out.assign(1, {});
    const auto size = [&](std::size_t i) { return std::int64_t{At(pieces[i]).size}; };
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      const bool again = i > 0 && size(i) == size(i - 1);
      if (!again) out.push_back({size(i), pieces[i], -1});
      if (!pairs || again) continue;
      for (std::size_t j = i + 1; j < pieces.size(); ++j) {
        if (j > i + 1 && size(j) == size(j - 1)) continue;
        out.push_back({size(i) + size(j), pieces[i], pieces[j]});
      }
    }
    steps_ -= static_cast<std::int64_t>(4 * out.size());
  }

  // The exchange between a board and the heap that leaves least on the heap, of those not too soon
  // after their reverse.
  bool Step() {
    ++now_;
    List(heap_, heap_.size() <= kLargeHeap, heap_few_);
    std::ranges::stable_sort(heap_few_, {}, &Few::size);
    Move best{.gain = -(std::int64_t{1} << 60), .board = 0, .out = {}, .in = {}};
    std::uint32_t alike = 0;
    for (std::size_t at = 0; at < boards_.size(); ++at) {
      Board& board = boards_[at];
      --steps_;
      if (board.room < best.gain) continue;
      if (board.few.empty()) List(board.pieces, true, board.few);
      for (const Few& out : board.few) Consider(at, out, board.room + out.size, best, alike);
      steps_ -= static_cast<std::int64_t>(kLookSteps * board.few.size());
    }
    if (alike == 0) return false;
    Do(best);
    return true;
  }

  void Consider(std::size_t board, const Few& out, std::int64_t room, Move& best,
                std::uint32_t& alike) {
    auto in = std::ranges::upper_bound(heap_few_, room, {}, &Few::size);
    while (in != heap_few_.begin()) {
      --in;
      const std::int64_t gain = in->size - out.size;
      if (gain < best.gain) return;
      if ((in->b < 0 && out.b < 0 && gain == 0) || TooSoon(board, out, *in, gain)) continue;
      if (gain > best.gain) alike = 0;
      if (random_.Below(++alike) == 0) best = {gain, board, out, *in};
      return;
    }
  }

  [[nodiscard]] bool TooSoon(std::size_t board, const Few& out, const Few& in,
                             std::int64_t gain) const {
    if (heap_size_ - gain < least_heap_) return false;
    for (const std::int32_t piece : {out.a, out.b}) {
      if (piece >= 0 && At(piece).not_before > now_) return true;
    }
    for (const std::int32_t piece : {in.a, in.b}) {
      if (piece >= 0 && At(piece).not_before > now_ &&
          At(piece).left_board == static_cast<std::int32_t>(board)) {
        return true;
      }
    }
    return false;
  }

  void Do(const Move& move) {
    Board& board = boards_[move.board];
    for (const std::int32_t piece : {move.out.a, move.out.b}) {
      if (piece < 0) continue;
      std::erase(board.pieces, piece);
      heap_.push_back(piece);
      Forbid(piece, move.board);
    }
    for (const std::int32_t piece : {move.in.a, move.in.b}) {
      if (piece < 0) continue;
      std::erase(heap_, piece);
      board.pieces.push_back(piece);
      Forbid(piece, move.board);
    }
    board.few.clear();
    board.room -= static_cast<std::int32_t>(move.gain);
    heap_size_ -= move.gain;
    if (heap_size_ >= least_heap_) return;
    least_heap_ = heap_size_;
    last_gain_ = now_;
  }

  void Forbid(std::int32_t piece, std::size_t board) {
    At(piece).left_board = static_cast<std::int32_t>(board);
    At(piece).not_before = now_ + kShortTabu + random_.Below(kTabuSpread);
  }

  // Whether the heap goes on two boards; if so they are added. Exact: all sums that its pieces
  // make.
  bool Finish() {
    std::vector<std::int32_t> last(static_cast<std::size_t>(length_) + 1, -2);
    last[0] = -1;
    std::int32_t most = 0;
    for (const std::int32_t piece : heap_) {
      const std::int32_t size = At(piece).size;
      for (std::int32_t at = std::min(most, length_ - size); at >= 0; --at) {
        const auto to = static_cast<std::size_t>(at + size);
        if (last[static_cast<std::size_t>(at)] == -2 || last[to] != -2) continue;
        last[to] = piece;
      }
      most = std::min(length_, most + size);
    }
    steps_ -= std::int64_t{length_} * static_cast<std::int64_t>(heap_.size()) / 2;
    std::int32_t full = length_;
    while (last[static_cast<std::size_t>(full)] == -2) --full;
    if (heap_size_ - full > length_) return false;
    Board one;
    for (std::int32_t at = full; at > 0;) {
      const std::int32_t piece = last[static_cast<std::size_t>(at)];
      one.pieces.push_back(piece);
      std::erase(heap_, piece);
      at -= At(piece).size;
    }
    boards_.push_back(std::move(one));
    boards_.push_back({0, heap_, {}});
    return true;
  }

  [[nodiscard]] std::vector<Pattern> Patterns() const {
    std::vector<Pattern> patterns;
    for (const Board& board : boards_) {
      if (board.pieces.empty()) continue;
      patterns.push_back({0, std::vector<std::int32_t>(problem_.parts.size())});
      for (const std::int32_t piece : board.pieces) {
        ++patterns.back().counts[static_cast<std::size_t>(At(piece).part)];
      }
    }
    return patterns;
  }

  const Problem& problem_;
  std::int32_t length_;
  std::vector<Board> boards_;
  std::int64_t steps_;
  Random random_;
  std::vector<Piece> pieces_;       // the longest first
  std::vector<std::int32_t> heap_;  // what has no board
  std::int64_t heap_size_ = 0;
  std::int64_t least_heap_ = std::int64_t{1} << 60;
  std::int64_t now_ = 0;
  std::int64_t last_gain_ = 0;
  std::int64_t patience_ = kLeastPatience;
  std::vector<Few> heap_few_;
};

}  // namespace

std::vector<Pattern> ExchangedBoards(const Problem& problem, std::int64_t boards,
                                     std::int64_t steps) {
  std::int64_t pieces = 0;
  for (const Part& part : problem.parts) pieces += part.count;
  if (boards < 2 || pieces > kMostPieces) return {};
  return Exchange(problem, boards, steps).Run();
}

}  // namespace tillwright::nest
