#include "nest/workbench.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace tillwright::nest {

Workbench::Workbench(const Problem& problem) : problem_(problem) {
  least_width_ = least_height_ = std::numeric_limits<std::int32_t>::max();
  for (const Part& part : problem.parts) {
    least_width_ = std::min({least_width_, part.width, part.turn ? part.height : part.width});
    least_height_ = std::min({least_height_, part.height, part.turn ? part.width : part.height});
  }
}

void Workbench::Start(const Packing& packing) {
  cost_ = packing.Cost(problem_);
  missing_ = packing.missing;
  missing_area_ = packing.MissingArea(problem_);
  sheets_.clear();
  on_hand_.clear();
  for (const Stock& stock : problem_.stock) on_hand_.push_back(stock.count);
  worth_ = 0;
  for (const SheetInWork& sheet : packing.sheets) {
    if (sheet.stock == kNone) continue;
    --on_hand_[static_cast<std::size_t>(sheet.stock)];
    sheets_.push_back({sheet, {}, 0});
    Measure(sheets_.back());
    worth_ += sheets_.back().worth;
  }
  stamp_.assign(sheets_.size(), 0);
  backup_.resize(sheets_.size());
  now_ = 1;
  Mark();
}

Packing Workbench::ToPacking() const {
  Packing packing{.sheets = {}, .missing = missing_};
  for (const Sheet& sheet : sheets_) {
    if (sheet.work.stock != kNone) packing.sheets.push_back(sheet.work);
  }
  return packing;
}

void Workbench::Mark() {
  touched_.clear();
  ++now_;
  missing_before_ = missing_;
  on_hand_before_ = on_hand_;
  missing_area_before_ = missing_area_;
  cost_before_ = cost_;
  worth_before_ = worth_;
}

void Workbench::Undo() {
  for (const std::size_t sheet : touched_) std::swap(sheets_[sheet], backup_[sheet]);
  std::swap(missing_, missing_before_);
  std::swap(on_hand_, on_hand_before_);
  missing_area_ = missing_area_before_;
  cost_ = cost_before_;
  worth_ = worth_before_;
}

void Workbench::Touch(std::size_t sheet) {
  if (stamp_[sheet] == now_) return;
  stamp_[sheet] = now_;
  touched_.push_back(sheet);
  backup_[sheet] = sheets_[sheet];
}

void Workbench::RemoveSomething(Random& random, bool whole) {
  const std::size_t at = random.Below(static_cast<std::uint32_t>(sheets_.size()));
  if (sheets_[at].work.stock == kNone) return;
  const std::vector<Node>& nodes = sheets_[at].work.tree.nodes();
  std::int32_t node = 0;
  if (!whole) {
    node = static_cast<std::int32_t>(random.Below(static_cast<std::uint32_t>(nodes.size())));
    const std::int32_t what = nodes[static_cast<std::size_t>(node)].what;
    if (what == kLeftover || what == kUnused) return;
  }
  Touch(at);
  sheets_[at].work.tree.Remove(node, [&](std::int32_t part) {
    ++missing_[static_cast<std::size_t>(part)];
    missing_area_ += PartAt(part).Area();
  });
  if (whole) Close(at);
}

void Workbench::Close(std::size_t at) {
  Sheet& sheet = sheets_[at];
  cost_ -= StockOf(sheet.work.stock).cost;
  ++on_hand_[static_cast<std::size_t>(sheet.work.stock)];
  worth_ -= sheet.worth;
  sheet.work.stock = kNone;
  sheet.lefts.clear();
  sheet.worth = 0;
}

void Workbench::ClearUp() {
  for (const std::size_t at : touched_) {
    if (sheets_[at].work.stock != kNone && sheets_[at].work.tree.IsEmpty()) Close(at);
  }
  MeasureTouched();
}

void Workbench::MeasureTouched() {
  for (const std::size_t at : touched_) {
    Sheet& sheet = sheets_[at];
    if (sheet.work.stock == kNone) continue;
    worth_ -= sheet.worth;
    Measure(sheet);
    worth_ += sheet.worth;
  }
  work += static_cast<std::int64_t>(8 * touched_.size());
}

void Workbench::Measure(Sheet& sheet) const {
  sheet.lefts.clear();
  sheet.worth = 0;
  const std::vector<Node>& nodes = sheet.work.tree.nodes();
  for (std::size_t i = 0; i < nodes.size(); ++i) {
    if (nodes[i].what != kLeftover) continue;
    const float worth = LeftWorth(nodes[i].width, nodes[i].height);
    if (worth <= 0) continue;
    sheet.lefts.push_back(
        {nodes[i].width, nodes[i].height, 0, static_cast<std::int32_t>(i), worth});
    sheet.worth += static_cast<double>(worth);
  }
}

std::size_t Workbench::Open(std::int32_t chosen) {
  std::size_t at = 0;
  while (at < sheets_.size() && sheets_[at].work.stock != kNone) ++at;
  if (at == sheets_.size()) {
    sheets_.emplace_back();
    backup_.emplace_back();
    stamp_.push_back(now_ - 1);
  }
  Touch(at);
  const Stock& stock = StockOf(chosen);
  Sheet& sheet = sheets_[at];
  sheet.work.stock = chosen;
  sheet.work.tree.Reset(stock.width, stock.height);
  --on_hand_[static_cast<std::size_t>(chosen)];
  cost_ += stock.cost;
  Measure(sheet);
  worth_ += sheet.worth;
  return at;
}

std::array<std::int32_t, 2> Workbench::Place(const Left& left, const Laid& laid,
                                             std::int32_t first_cut) {
  const auto sheet = static_cast<std::size_t>(left.sheet);
  Touch(sheet);
  --missing_[static_cast<std::size_t>(laid.part)];
  missing_area_ -= PartAt(laid.part).Area();
  return sheets_[sheet].work.tree.Insert(left.node, laid, first_cut);
}

}  // namespace tillwright::nest
