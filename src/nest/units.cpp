#include "nest/units.h"

#include <algorithm>
#include <numeric>

#include "nest/fences.h"

namespace tillwright::nest {
namespace {

// Sides stay below this, so that areas and their sums stay far inside 64 bits.
constexpr std::int64_t kMostUnits = std::int64_t{1} << 24;

// What of a sheet can be used, with one kerf more: see problem.h.
Length Usable(Length side, const NestStock& stock, Length kerf) {
  return side - 2 * stock.trim + kerf;
}

// The largest unit that measures every size exactly; a coarser one when that is too fine.
Length UnitOf(const NestJob& job) {
  std::int64_t unit = 0;
  std::int64_t most = 1;
  const auto take = [&](Length length) {
    unit = std::gcd(unit, length.picometers());
    most = std::max(most, length.picometers());
  };
  for (const NestPart& part : job.parts) {
    take(part.along + job.kerf);
    take(part.across + job.kerf);
  }
  for (const NestStock& stock : job.stock) {
    most = std::max(
        {most, (stock.along + job.kerf).picometers(), (stock.across + job.kerf).picometers()});
  }
  // Sheets need not be whole units: what is over is of no use to any part.
  return Length::Picometers(std::max({unit, most / kMostUnits + 1, std::int64_t{1}}));
}

std::int32_t Down(Length length, Length unit) {
  return static_cast<std::int32_t>(FloorDiv(length.picometers(), unit.picometers()));
}
std::int32_t Up(Length length, Length unit) { return -Down(-length, unit); }

// What a sheet costs: its price, else its area. What is on hand costs next to nothing.
std::int64_t CostOf(const NestStock& stock, std::int64_t area, bool priced) {
  constexpr std::int64_t kBought = 1024;
  if (priced) return stock.on_hand ? 1 : stock.price.value_or(0) * kBought + 1;
  return stock.on_hand ? std::max<std::int64_t>(1, area / kBought) : area;
}

void AddStock(const NestJob& job, Integers& out) {
  bool priced = false;
  for (const NestStock& stock : job.stock) {
    priced = priced || (!stock.on_hand && stock.price.has_value());
  }
  for (std::size_t i = 0; i < job.stock.size(); ++i) {
    const NestStock& stock = job.stock[i];
    Stock sheet{.width = Down(Usable(stock.along, stock, job.kerf), out.unit),
                .height = Down(Usable(stock.across, stock, job.kerf), out.unit)};
    if (sheet.width <= 0 || sheet.height <= 0 || stock.count == 0) continue;
    sheet.cost = CostOf(stock, sheet.Area(), priced);
    if (stock.count)
      sheet.count = static_cast<std::int32_t>(std::min<std::int64_t>(*stock.count, 1 << 30));
    out.problem.stock.push_back(sheet);
    out.stock.push_back(static_cast<std::int32_t>(i));
  }
  std::int64_t common = 0;
  for (const Stock& sheet : out.problem.stock) common = std::gcd(common, sheet.cost);
  for (Stock& sheet : out.problem.stock) sheet.cost /= common;
  out.smaller.stock = out.problem.stock;
}

Part PartOf(const NestPart& part, Length kerf, Length unit, std::int32_t (*round)(Length, Length)) {
  Part out{.width = round(part.along + kerf, unit),
           .height = round(part.across + kerf, unit),
           .count = static_cast<std::int32_t>(part.count),
           .turn = part.may_turn && part.along != part.across};
  // One way of writing a part that may lie either way, so that alike parts are found.
  if (out.turn && out.width < out.height) std::swap(out.width, out.height);
  return out;
}

void AddPart(const NestJob& job, std::int32_t index, Integers& out) {
  const NestPart& part = job.parts[static_cast<std::size_t>(index)];
  const Part larger = PartOf(part, job.kerf, out.unit, Up);
  const auto fits = [&](const Stock& sheet) { return Fits(larger, sheet); };
  if (part.count == 0 || std::ranges::none_of(out.problem.stock, fits)) return;
  std::vector<Part>& parts = out.problem.parts;
  const auto same = std::ranges::find_if(parts, [&](const Part& other) {
    return other.width == larger.width && other.height == larger.height &&
           other.turn == larger.turn;
  });
  if (same != parts.end()) {
    const auto at = static_cast<std::size_t>(same - parts.begin());
    same->count += larger.count;
    out.smaller.parts[at].count += larger.count;
    out.sources[at].push_back(index);
    return;
  }
  parts.push_back(larger);
  out.smaller.parts.push_back(PartOf(part, job.kerf, out.unit, Down));
  out.sources.push_back({index});
}

// Writes the layouts of a plan: hands the job's own parts to the places of alike parts in turn.
class PlanWriter {
 public:
  PlanWriter(const NestJob& job, const Integers& integers) : job_(job), integers_(integers) {
    for (const NestPart& part : job.parts) plan_.missing.push_back(part.count);
  }

  NestPlan Write(const Packing& packing) {
    sizes_ = PieceSizes(TreesOf(packing));
    for (const SheetInWork& sheet : packing.sheets) {
      if (sheet.stock != kNone) Add(sheet);
    }
    return std::move(plan_);
  }

 private:
  void Add(const SheetInWork& sheet) {
    NestLayout layout;
    layout.stock = integers_.stock[static_cast<std::size_t>(sheet.stock)];
    const Length trim = job_.stock[static_cast<std::size_t>(layout.stock)].trim;
    AddPiece(sheet.tree, 0, trim, trim, -1, layout);
    const NestStock& stock = job_.stock[static_cast<std::size_t>(layout.stock)];
    // A part that fills the sheet but for what no unit measures keeps its own size.
    NestPiece& whole = layout.pieces.front();
    if (whole.kind != NestPieceKind::kPart) {
      whole.rect = {trim, trim, stock.along - 2 * trim, stock.across - 2 * trim};
    }
    plan_.layouts.push_back(std::move(layout));
  }

  void AddPiece(const Tree& tree, std::int32_t at, Length x, Length y, std::int32_t parent,
                NestLayout& layout) {
    const Node& node = tree.At(at);
    NestPiece piece{.rect = {x, y, node.width * integers_.unit - job_.kerf,
                             node.height * integers_.unit - job_.kerf},
                    .parent = parent};
    if (piece.rect.width <= Length() || piece.rect.height <= Length()) return;  // all sawdust
    if (node.what >= 0) TakePart(node, piece);
    if (node.what == kColumns) piece.kind = NestPieceKind::kColumns;
    if (node.what == kRows) piece.kind = NestPieceKind::kRows;
    const auto index = static_cast<std::int32_t>(layout.pieces.size());
    layout.pieces.push_back(std::move(piece));
    if (parent >= 0) layout.pieces[static_cast<std::size_t>(parent)].pieces.push_back(index);
    for (const std::int32_t child : InOrder(tree, node)) {
      AddPiece(tree, child, x, y, index, layout);
      if (node.what == kColumns) x += tree.At(child).width * integers_.unit;
      if (node.what == kRows) y += tree.At(child).height * integers_.unit;
    }
  }

  // Larger pieces first, and last the one that needs no cut.
  [[nodiscard]] std::vector<std::int32_t> InOrder(const Tree& tree, const Node& node) const {
    std::vector<std::int32_t> children;
    for (std::int32_t child = node.first; child != kNone; child = tree.At(child).next) {
      children.push_back(child);
    }
    const std::int32_t last = sizes_.LastOf(tree, node);
    std::ranges::stable_sort(children, [&](std::int32_t a, std::int32_t b) {
      const auto key = [&](std::int32_t child) {
        const Node& c = tree.At(child);
        return std::pair(child == last, node.what == kColumns ? -c.width : -c.height);
      };
      return key(a) < key(b);
    });
    return children;
  }

  void TakePart(const Node& node, NestPiece& piece) {
    for (const std::int32_t source : integers_.sources[static_cast<std::size_t>(node.what)]) {
      const auto at = static_cast<std::size_t>(source);
      if (plan_.missing[at] == 0) continue;
      --plan_.missing[at];
      const NestPart& part = job_.parts[at];
      piece.kind = NestPieceKind::kPart;
      piece.part = source;
      // The problem writes the longer side of a part that may turn first, whatever the job says.
      const bool swapped = part.may_turn && part.along < part.across;
      piece.turned = node.turned != swapped;
      piece.rect.width = piece.turned ? part.across : part.along;
      piece.rect.height = piece.turned ? part.along : part.across;
      return;
    }
    Bug("a packing with more parts than the job");
  }

  const NestJob& job_;
  const Integers& integers_;
  PieceSizes sizes_{{}};
  NestPlan plan_;
};

}  // namespace

Integers ToIntegers(const NestJob& job) {
  Integers out;
  out.unit = UnitOf(job);
  AddStock(job, out);
  for (std::size_t i = 0; i < job.parts.size(); ++i) {
    AddPart(job, static_cast<std::int32_t>(i), out);
  }
  out.problem.stages = out.smaller.stages = job.stages;
  return out;
}

NestPlan ToPlan(const NestJob& job, const Integers& integers, const Packing& packing) {
  return PlanWriter(job, integers).Write(packing);
}

}  // namespace tillwright::nest
