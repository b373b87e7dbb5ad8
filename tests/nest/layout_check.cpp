#include "nest/layout_check.h"

#include <algorithm>
#include <map>

namespace tillwright::testing {
namespace {

using Rects = std::vector<Rect>;

struct Span {
  Length from;
  Length to;
};

Span SpanOf(const Rect& rect, bool x) {
  return x ? Span{rect.x, rect.Right()} : Span{rect.y, rect.Top()};
}

// Groups of parts between which a saw cut can pass right across: along x, or along y.
std::vector<Rects> Groups(Rects rects, bool x, Length kerf) {
  std::ranges::sort(rects, {}, [&](const Rect& r) { return SpanOf(r, x).from; });
  std::vector<Rects> groups;
  Length reach;
  for (const Rect& rect : rects) {
    const Span span = SpanOf(rect, x);
    if (groups.empty() || span.from < reach + kerf || span.from < reach) {
      if (groups.empty()) groups.emplace_back();
      reach = groups.back().empty() ? span.to : Max(reach, span.to);
    } else {
      groups.emplace_back();
      reach = span.to;
    }
    groups.back().push_back(rect);
  }
  return groups;
}

// Whether a piece's edges along one direction are the part's own.
bool Fills(const Rect& part, const Rect& piece, bool x) {
  const Span a = SpanOf(part, x);
  const Span b = SpanOf(piece, x);
  return a.from == b.from && a.to == b.to;
}

Rect Narrowed(Rect piece, const Rects& group, bool x) {
  Span all = SpanOf(group.front(), x);
  for (const Rect& rect : group) {
    const Span span = SpanOf(rect, x);
    all = {Min(all.from, span.from), Max(all.to, span.to)};
  }
  (x ? piece.x : piece.y) = all.from;
  (x ? piece.width : piece.height) = all.to - all.from;
  return piece;
}

constexpr int kNever = 1000;

// Stages still needed for one piece when the next cuts run across x (or y). A stage cuts the piece
// into its groups and takes off the waste beside them.
int StagesFrom(const Rects& parts, const Rect& piece, bool x, Length kerf, bool other_failed) {
  if (parts.size() == 1 && Fills(parts[0], piece, true) && Fills(parts[0], piece, false)) return 0;
  const std::vector<Rects> groups = Groups(parts, x, kerf);
  if (groups.size() == 1 && Narrowed(piece, groups[0], x) == piece) {
    if (other_failed) return kNever;
    return StagesFrom(parts, piece, !x, kerf, true);
  }
  int most = 0;
  for (const Rects& group : groups) {
    most = std::max(most, StagesFrom(group, Narrowed(piece, group, x), !x, kerf, false));
  }
  return std::min(kNever, 1 + most);
}

Rects PartsOf(const NestLayout& layout) {
  Rects rects;
  for (const NestPiece& piece : layout.pieces) {
    if (piece.kind == NestPieceKind::kPart) rects.push_back(piece.rect);
  }
  return rects;
}

Rect Around(const Rect& a, const Rect& b) {
  const Length x = Min(a.x, b.x);
  const Length y = Min(a.y, b.y);
  return {x, y, Max(a.Right(), b.Right()) - x, Max(a.Top(), b.Top()) - y};
}

// What is cut free of a layout: the parts that stand alone, and each run as one with its spare.
Rects CutFree(const NestJob& job, const NestLayout& layout) {
  Rects rects;
  std::map<std::int32_t, Rect> runs;
  for (const NestPiece& piece : layout.pieces) {
    if (piece.kind != NestPieceKind::kPart) continue;
    if (piece.run < 0) {
      rects.push_back(piece.rect);
    } else if (const auto [at, is_new] = runs.emplace(piece.run, piece.rect); !is_new) {
      at->second = Around(at->second, piece.rect);
    }
  }
  for (auto& [run, rect] : runs) {
    const NestRun& is = job.runs[static_cast<std::size_t>(run)];
    (is.across ? rect.height : rect.width) += is.spare;
    rects.push_back(rect);
  }
  return rects;
}

int StagesFor(const Rects& parts, const NestLayout& layout, Length kerf) {
  const Rect& piece = layout.pieces.front().rect;
  const int stages = std::min(StagesFrom(parts, piece, true, kerf, false),
                              StagesFrom(parts, piece, false, kerf, false));
  return stages >= kNever ? -1 : stages;
}

bool Inside(const Rect& rect, const NestStock& stock) {
  return rect.x >= stock.trim && rect.y >= stock.trim && rect.Right() <= stock.along - stock.trim &&
         rect.Top() <= stock.across - stock.trim;
}

class Check {
 public:
  Check(const NestJob& job, const NestPlan& plan) : job_(job), plan_(plan) {}

  std::vector<std::string> Run() {
    std::vector<std::int64_t> placed(job_.parts.size());
    std::vector<std::int64_t> used(job_.stock.size());
    for (std::size_t i = 0; i < plan_.layouts.size(); ++i) {
      at_ = "layout " + std::to_string(i) + ": ";
      ++used[static_cast<std::size_t>(plan_.layouts[i].stock)];
      Layout(plan_.layouts[i], placed);
    }
    at_.clear();
    for (std::size_t i = 0; i < job_.runs.size(); ++i) Run(static_cast<std::int32_t>(i));
    for (std::size_t i = 0; i < placed.size(); ++i) {
      if (placed[i] + plan_.missing[i] != job_.parts[i].count) {
        Fault("part " + std::to_string(i) + " lies " + std::to_string(placed[i]) + " times");
      }
    }
    for (std::size_t i = 0; i < used.size(); ++i) {
      if (job_.stock[i].count && used[i] > *job_.stock[i].count)
        Fault("more sheets than there are");
    }
    return std::move(faults_);
  }

 private:
  void Fault(const std::string& what) { faults_.push_back(at_ + what); }

  void Layout(const NestLayout& layout, std::vector<std::int64_t>& placed) {
    for (const NestPiece& piece : layout.pieces) {
      if (piece.kind != NestPieceKind::kPart) continue;
      ++placed[static_cast<std::size_t>(piece.part)];
      Piece(piece);
    }
    const Rects free = CutFree(job_, layout);
    if (free.empty()) return Fault("an empty sheet");
    const NestStock& stock = job_.stock[static_cast<std::size_t>(layout.stock)];
    for (std::size_t i = 0; i < free.size(); ++i) {
      for (std::size_t j = i + 1; j < free.size(); ++j) Pair(free[i], free[j]);
      if (!Inside(free[i], stock)) Fault("a part outside the sheet");
    }
    const int stages = StagesFor(free, layout, job_.kerf);
    if (stages < 0 || StagesOf(layout, job_.kerf) < 0) Fault("cannot be cut from edge to edge");
    if (job_.stages > 0 && stages > job_.stages)
      Fault("needs " + std::to_string(stages) + " stages");
  }

  void Piece(const NestPiece& piece) {
    const NestPart& part = job_.parts[static_cast<std::size_t>(piece.part)];
    if (piece.turned && !part.may_turn) Fault("a part turned against its grain");
    const bool size = piece.rect.width == (piece.turned ? part.across : part.along) &&
                      piece.rect.height == (piece.turned ? part.along : part.across);
    if (!size) Fault("a part of another size");
  }

  // The parts of one run, by their places; which layout they lie on.
  struct Lain {
    std::size_t layout;
    const NestPiece* piece;
  };
  [[nodiscard]] std::multimap<std::int32_t, Lain> PartsOfRun(std::int32_t run) const {
    std::multimap<std::int32_t, Lain> parts;
    for (std::size_t i = 0; i < plan_.layouts.size(); ++i) {
      for (const NestPiece& piece : plan_.layouts[i].pieces) {
        const bool part = piece.kind == NestPieceKind::kPart && piece.run == run;
        if (part) parts.emplace(piece.place, Lain{i, &piece});
      }
    }
    return parts;
  }

  // All of it or nothing lies on one sheet: each place once, in order, a kerf apart, in line.
  void Run(std::int32_t index) {
    const NestRun& run = job_.runs[static_cast<std::size_t>(index)];
    const std::multimap<std::int32_t, Lain> parts = PartsOfRun(index);
    if (parts.empty() && MayBeMissing(run)) return;
    if (parts.size() != run.parts.size()) return Fault("a run in pieces");
    std::int32_t place = 0;
    const Lain* before = nullptr;
    for (const auto& [at, lain] : parts) {
      if (at != place || lain.piece->part != run.parts[static_cast<std::size_t>(place)]) {
        Fault("a run without order");
      }
      if (lain.piece->turned) Fault("a part of a run turned");
      if (before != nullptr && before->layout != lain.layout) Fault("a run on two sheets");
      if (before != nullptr && !Follows(before->piece->rect, lain.piece->rect, run.across)) {
        Fault("a run with parts that are no neighbours");
      }
      before = &lain;
      ++place;
    }
  }

  [[nodiscard]] bool MayBeMissing(const NestRun& run) const {
    return std::ranges::all_of(run.parts, [&](std::int32_t part) {
      return plan_.missing[static_cast<std::size_t>(part)] > 0;
    });
  }

  // Whether b lies to the right of a, or below it, a kerf away.
  [[nodiscard]] bool Follows(const Rect& a, const Rect& b, bool across) const {
    if (across) return b.Top() + job_.kerf == a.y && a.x == b.x && a.width == b.width;
    return a.Right() + job_.kerf == b.x && a.y == b.y && a.height == b.height;
  }

  void Pair(const Rect& a, const Rect& b) {
    const bool apart = a.Right() + job_.kerf <= b.x || b.Right() + job_.kerf <= a.x ||
                       a.Top() + job_.kerf <= b.y || b.Top() + job_.kerf <= a.y;
    if (!apart) Fault("two parts without a kerf between them");
  }

  const NestJob& job_;
  const NestPlan& plan_;
  std::string at_;
  std::vector<std::string> faults_;
};

}  // namespace

int StagesOf(const NestLayout& layout, Length kerf) {
  return StagesFor(PartsOf(layout), layout, kerf);
}

std::vector<std::string> FaultsOf(const NestJob& job, const NestPlan& plan) {
  return Check(job, plan).Run();
}

}  // namespace tillwright::testing
