#include "nest/runs.h"

#include <cstddef>
#include <utility>

namespace tillwright {

NestPart PieceOf(const NestJob& job, const NestRun& run) {
  NestPart piece;
  Length& line = run.across ? piece.across : piece.along;
  Length& other = run.across ? piece.along : piece.across;
  line = run.spare + (static_cast<std::int64_t>(run.parts.size()) - 1) * job.kerf;
  for (const std::int32_t index : run.parts) {
    const NestPart& part = job.parts[static_cast<std::size_t>(index)];
    line += run.across ? part.across : part.along;
    other = Max(other, run.across ? part.along : part.across);
  }
  return piece;
}

namespace nest {
namespace {

// Takes the piece of a run apart.
class RunCutter {
 public:
  RunCutter(const NestJob& job, std::int32_t index, NestLayout& layout)
      : job_(job),
        run_(job.runs[static_cast<std::size_t>(index)]),
        index_(index),
        layout_(layout) {}

  void Cut(std::size_t at) {
    whole_ = static_cast<std::int32_t>(at);
    NestPiece& piece = layout_.pieces[at];
    piece.kind = run_.across ? NestPieceKind::kRows : NestPieceKind::kColumns;
    piece.part = -1;
    piece.run = index_;
    left_ = piece.rect;
    const auto n = static_cast<std::int32_t>(run_.parts.size());
    // Rows are listed from below, and the first part of a run lies uppermost.
    for (std::int32_t i = 0; i < n; ++i) AddPart(run_.across ? n - 1 - i : i);
    if (left_.width > Length() && left_.height > Length()) Add({.rect = left_});
  }

 private:
  void AddPart(std::int32_t place) {
    const std::int32_t index = run_.parts[static_cast<std::size_t>(place)];
    const NestPart& part = job_.parts[static_cast<std::size_t>(index)];
    Add({.kind = NestPieceKind::kPart,
         .rect = {left_.x, left_.y, part.along, part.across},
         .part = index,
         .run = index_,
         .place = place});
    const Length taken = (run_.across ? part.across : part.along) + job_.kerf;
    (run_.across ? left_.y : left_.x) += taken;
    (run_.across ? left_.height : left_.width) -= taken;
  }

  void Add(NestPiece piece) {
    piece.parent = whole_;
    const auto at = static_cast<std::int32_t>(layout_.pieces.size());
    layout_.pieces.push_back(std::move(piece));
    layout_.pieces[static_cast<std::size_t>(whole_)].pieces.push_back(at);
  }

  const NestJob& job_;
  const NestRun& run_;
  std::int32_t index_;
  NestLayout& layout_;
  std::int32_t whole_ = 0;
  Rect left_;
};

}  // namespace

NestJob WithRunsWhole(const NestJob& job) {
  NestJob whole = job;
  whole.runs.clear();
  for (const NestRun& run : job.runs) {
    for (const std::int32_t part : run.parts) --whole.parts[static_cast<std::size_t>(part)].count;
    whole.parts.push_back(PieceOf(job, run));
  }
  return whole;
}

NestPlan WithRunsCut(const NestJob& job, NestPlan plan) {
  const std::size_t kinds = job.parts.size();
  for (NestLayout& layout : plan.layouts) {
    const std::size_t pieces = layout.pieces.size();
    for (std::size_t i = 0; i < pieces; ++i) {
      const std::int32_t run = layout.pieces[i].part - static_cast<std::int32_t>(kinds);
      if (run >= 0) RunCutter(job, run, layout).Cut(i);
    }
  }
  for (std::size_t run = 0; run < job.runs.size(); ++run) {
    if (plan.missing[kinds + run] == 0) continue;
    for (const std::int32_t part : job.runs[run].parts) {
      ++plan.missing[static_cast<std::size_t>(part)];
    }
  }
  plan.missing.resize(kinds);
  return plan;
}

}  // namespace nest
}  // namespace tillwright
