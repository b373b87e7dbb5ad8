#include "draw/stock/stock_names.h"

#include <algorithm>
#include <set>

#include "draw/stock/stock_panel.h"
#include "tillwright/length_text.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

// A, B … Z, AA, AB …
std::string LetterAt(std::size_t index) {
  const std::string last(1, static_cast<char>('A' + index % 26));
  return index < 26 ? last : LetterAt(index / 26 - 1) + last;
}

bool IsPart(const NestPiece& piece) { return piece.kind == NestPieceKind::kPart; }

}  // namespace

StockNames::StockNames(const StockPlan& plan, const StockGroup& group, const NestLayout& layout)
    : plan_(plan), group_(group), layout_(layout) {
  for (const NestPiece& piece : layout.pieces) {
    if (IsPart(piece)) kinds_.push_back(piece.part);
  }
  std::ranges::sort(kinds_);
  kinds_.erase(std::unique(kinds_.begin(), kinds_.end()), kinds_.end());
}

std::string StockNames::In(Length length) const { return FormatLength(length, plan_.units); }

std::string StockNames::Size(Length a, Length b) const { return In(a) + " × " + In(b); }

std::string StockNames::LetterOf(std::int32_t part) const {
  return LetterAt(static_cast<std::size_t>(std::ranges::find(kinds_, part) - kinds_.begin()));
}

std::vector<std::string> StockNames::PartTexts(const NestPiece& piece) const {
  const auto at = static_cast<std::size_t>(piece.part);
  const std::string letter = LetterOf(piece.part);
  const NestPart& sawn = group_.job.parts[at];
  const std::string size = Size(sawn.along, sawn.across);
  if (piece.run < 0) {
    return {letter + "  " + group_.parts[at].label + "  " + size, letter + "  " + size, letter};
  }
  const StockRun& run = group_.runs[static_cast<std::size_t>(piece.run)];
  const std::string& front = run.fronts[static_cast<std::size_t>(piece.place)];
  return {letter + "  " + run.label + ", " + front + "  " + size, front + "  " + size, front};
}

std::string StockNames::RunRow(std::int32_t index) const {
  constexpr std::size_t kFew = 6;
  const StockRun& run = group_.runs[static_cast<std::size_t>(index)];
  const std::string order = run.fronts.size() > 1 ? ", " + std::string(OrderWords(run.match)) : "";
  const std::string fronts =
      run.fronts.size() > kFew ? run.fronts.front() + " … " + run.fronts.back() : FrontsOf(run);
  return run.label + "  " + fronts + order + ", one piece " + Size(run.length, run.width);
}

std::vector<std::string> StockNames::TextsOf(std::int32_t piece) const {
  const NestPiece& shown = At(piece);
  const std::string size = Size(shown.rect.width, shown.rect.height);
  switch (shown.kind) {
    case NestPieceKind::kPart:
      return PartTexts(shown);
    case NestPieceKind::kOffcut:
      return {"offcut " + size, size};
    case NestPieceKind::kColumns:
    case NestPieceKind::kRows:
      return {PieceName(piece) + "  cuts " + CutsWithin(layout_, piece), PieceName(piece)};
  }
  return {};
}

std::vector<std::string> StockNames::KeyRows(const std::vector<std::int32_t>& pieces) const {
  std::vector<std::string> rows;
  for (const std::int32_t part : kinds_) {
    const auto count = std::ranges::count_if(
        pieces, [&](std::int32_t piece) { return IsPart(At(piece)) && At(piece).part == part; });
    if (count == 0) continue;
    const auto at = static_cast<std::size_t>(part);
    const NestPart& sawn = group_.job.parts[at];
    rows.push_back(LetterOf(part) + "  " + std::to_string(count) + " of " +
                   Size(sawn.along, sawn.across) + ", " + group_.parts[at].label);
  }
  std::set<std::int32_t> runs;
  for (const std::int32_t piece : pieces) runs.insert(At(piece).run);
  runs.erase(-1);
  for (const std::int32_t run : runs) rows.push_back(RunRow(run));
  return rows;
}

void StockNames::NamePiece(std::int32_t piece) {
  if (std::ranges::find(pieces_, piece) == pieces_.end()) pieces_.push_back(piece);
}

std::string StockNames::PieceName(std::int32_t piece) const {
  return "P" + std::to_string(std::ranges::find(pieces_, piece) - pieces_.begin() + 1);
}

bool StockNames::IsUseful(const NestPiece& offcut) {
  return Max(offcut.rect.width, offcut.rect.height) >= kSmallPiece &&
         Min(offcut.rect.width, offcut.rect.height) >= kNarrowCut;
}

}  // namespace tillwright
