#include "stock/stock_parts.h"

#include <algorithm>
#include <map>
#include <utility>

#include "stock/glue_up.h"
#include "stock/part_names.h"

namespace tillwright {

void StockParts::Add(const CutLine& line, std::string label, std::int64_t count) {
  StockPart part{
      .label = std::move(label), .length = line.length, .width = line.width, .count = count};
  NestPart nest{.label = {},
                .along = line.rough_length,
                .across = line.rough_width,
                .count = count,
                .may_turn = !group_.solid && line.grain == Grain::kNone};
  if (line.boards > 1) {
    part.boards = line.boards;
    nest.across = line.board_width;
    nest.count *= part.boards;
  }
  nest.label = part.label;
  group_.parts.push_back(std::move(part));
  group_.job.parts.push_back(std::move(nest));
}

Length StockParts::WidestStock() const {
  Length widest;
  for (const NestStock& stock : group_.job.stock) widest = Max(widest, stock.across);
  return widest;
}

void StockParts::AddRun(const RunToCut& run) {
  const std::size_t all = run.run.parts.size();
  for (FrontStretch stretch; stretch.from < all; stretch.from = stretch.to) {
    stretch.to = stretch.from + 1;
    while (stretch.to < all && Fits(PieceFor(run, {stretch.from, stretch.to + 1}))) ++stretch.to;
    AddStretch(run, stretch);
  }
}

// The piece of a stretch as if it were one part.
CutLine StockParts::PieceFor(const RunToCut& run, FrontStretch stretch) const {
  const SawnInRun sawn = PieceOf(run.run, stretch, run.lines, run.line_of, group_.job.kerf);
  CutLine piece = run.lines[run.line_of[run.run.parts[stretch.from]]];
  piece.length = piece.rough_length = sawn.length;
  piece.width = piece.rough_width = sawn.width;
  if (group_.solid) GlueUp(piece, WidestStock(), run.source.spec->glue_up, *run.source.bank);
  return piece;
}

bool StockParts::Fits(const CutLine& piece) const {
  const bool panel = piece.boards > 1;
  return std::ranges::any_of(group_.job.stock, [&](const NestStock& stock) {
    return piece.rough_length <= stock.along - 2 * stock.trim &&
           (panel || piece.rough_width <= stock.across - 2 * stock.trim);
  });
}

// The kind of part that a front is in a run, with one more of it.
std::int32_t StockParts::KindInRun(const RunToCut& run, const CutLine& line) {
  const SawnInRun sawn = SawnIn(run.run, line);
  const std::string label = run.prefix + line.label;
  std::size_t at = 0;
  for (; at < group_.parts.size(); ++at) {
    const NestPart& nest = group_.job.parts[at];
    const bool same = nest.along == sawn.length && nest.across == sawn.width;
    if (same && group_.parts[at].boards == 1 && group_.parts[at].label == label) break;
  }
  if (at == group_.parts.size()) {
    group_.parts.push_back(
        {.label = label, .length = line.length, .width = line.width, .count = 0});
    group_.job.parts.push_back(
        {.label = label, .along = sawn.length, .across = sawn.width, .count = 0});
  }
  ++group_.parts[at].count;
  ++group_.job.parts[at].count;
  return static_cast<std::int32_t>(at);
}

void StockParts::AddStretch(const RunToCut& run, FrontStretch stretch) {
  const CutLine piece = PieceFor(run, stretch);
  StockRun stock{.label = run.run.label,
                 .bank = run.prefix.substr(0, 1),
                 .match = run.source.bank->match,
                 .across = run.run.across,
                 .length = piece.length,
                 .width = piece.width};
  stock.whole = stretch.to - stretch.from == run.run.parts.size() ? "" : stock.label;
  NestRun nest{.parts = {}, .across = run.run.across, .spare = {}};
  for (std::size_t i = stretch.from; i < stretch.to; ++i) {
    const Bank& bank = *run.source.bank;
    const Part& part = bank.parts[run.run.parts[i]];
    stock.fronts.push_back(PartFor(bank, part));
    const CutLine& line = run.lines[run.line_of[run.run.parts[i]]];
    nest.spare = SawnIn(run.run, line).spare;
    if (piece.boards == 1) nest.parts.push_back(KindInRun(run, line));
  }
  if (piece.boards > 1) {
    stock.panel = static_cast<std::int32_t>(group_.parts.size());
    Add(piece, stock.label, 1);
    group_.panels.push_back(std::move(stock));
    return;
  }
  group_.runs.push_back(std::move(stock));
  group_.job.runs.push_back(std::move(nest));
}

std::string FrontsOf(const StockRun& run) { return RunTogether(run.fronts); }

namespace {

std::vector<bool> PlacedRuns(const StockGroup& group) {
  std::vector<bool> placed(group.runs.size());
  for (const NestLayout& layout : group.plan.layouts) {
    for (const NestPiece& piece : layout.pieces) {
      if (piece.run >= 0) placed[static_cast<std::size_t>(piece.run)] = true;
    }
  }
  return placed;
}

// The first `half` of a run's fronts, and what is left as the run.
std::pair<StockRun, NestRun> TakeHalf(StockRun& stock, NestRun& nest, const NestJob& job) {
  const auto half = static_cast<std::ptrdiff_t>((nest.parts.size() + 1) / 2);
  if (stock.whole.empty()) stock.whole = stock.label;
  std::pair<StockRun, NestRun> first{stock, nest};
  first.first.fronts.resize(static_cast<std::size_t>(half));
  first.second.parts.resize(static_cast<std::size_t>(half));
  stock.fronts.erase(stock.fronts.begin(), stock.fronts.begin() + half);
  nest.parts.erase(nest.parts.begin(), nest.parts.begin() + half);
  for (auto& [s, n] : {std::pair{&stock, &nest}, std::pair{&first.first, &first.second}}) {
    const NestPart piece = PieceOf(job, *n);
    s->length = piece.along;
    s->width = piece.across;
  }
  return first;
}

}  // namespace

bool BreakUnplacedRuns(StockGroup& group) {
  const std::vector<bool> placed = PlacedRuns(group);
  std::vector<StockRun> stock;
  std::vector<NestRun> nest;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    if (!placed[i] && group.job.runs[i].parts.size() > 1) {
      auto [stock_half, nest_half] = TakeHalf(group.runs[i], group.job.runs[i], group.job);
      stock.push_back(std::move(stock_half));
      nest.push_back(std::move(nest_half));
    }
    stock.push_back(std::move(group.runs[i]));
    nest.push_back(std::move(group.job.runs[i]));
  }
  const bool broken = stock.size() > placed.size();
  group.runs = std::move(stock);
  group.job.runs = std::move(nest);
  return broken;
}

void NameRuns(StockGroup& group) {
  std::map<std::pair<std::string, std::string>, int> stretches;  // of each bank's run
  for (std::vector<StockRun>* runs : {&group.panels, &group.runs}) {
    for (StockRun& run : *runs) {
      const std::string of_bank = run.bank.empty() ? "" : " of " + run.bank;
      if (!run.whole.empty()) {
        const int n = stretches[{run.bank, run.whole}]++;
        run.label = run.whole + (n < 26 ? std::string(1, static_cast<char>('a' + n))
                                        : "-" + std::to_string(n + 1));
        run.whole += of_bank;
      }
      run.label += of_bank;
    }
  }
  for (const StockRun& run : group.panels) {
    const auto at = static_cast<std::size_t>(run.panel);
    group.parts[at].label = group.job.parts[at].label = "panel " + run.label;
  }
}

}  // namespace tillwright
