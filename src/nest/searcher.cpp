#include "nest/searcher.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace tillwright::nest {
namespace {

constexpr std::size_t kHistory = 100;
constexpr std::uint32_t kSkip = 13;  // of 256: how often a place is passed over

std::uint32_t MeanRemoved(const Problem& problem) {
  std::int64_t parts = 0;
  for (const Part& part : problem.parts) parts += part.count;
  return parts <= 100 ? 8 : parts <= 300 ? 6 : 4;
}

}  // namespace

Searcher::Searcher(const Problem& problem, std::uint64_t seed)
    : problem_(problem), random_(seed), mean_removed_(MeanRemoved(problem)) {
  least_width_ = least_height_ = std::numeric_limits<std::int32_t>::max();
  for (const Part& part : problem.parts) {
    least_width_ = std::min({least_width_, part.width, part.turn ? part.height : part.width});
    least_height_ = std::min({least_height_, part.height, part.turn ? part.width : part.height});
  }
}

double Searcher::LeftWorth(std::int32_t width, std::int32_t height) const {
  return width < least_width_ || height < least_height_ ? 0 : Worth(width, height);
}

void Searcher::Start(const Packing& packing) {
  best_ = packing;
  best_cost_ = cost_ = packing.Cost(problem_);
  missing_ = packing.missing;
  missing_area_ = packing.MissingArea(problem_);
  sheets_.clear();
  on_hand_.clear();
  for (const Stock& stock : problem_.stock) on_hand_.push_back(stock.count);
  worth_ = 0;
  for (const SheetInWork& work : packing.sheets) {
    if (work.stock == kNone) continue;
    --on_hand_[static_cast<std::size_t>(work.stock)];
    sheets_.push_back({work, {}, 0});
    Measure(sheets_.back());
    worth_ += sheets_.back().worth;
  }
  stamp_.assign(sheets_.size(), 0);
  backup_.resize(sheets_.size());
  now_ = 1;
}

void Searcher::Aim(std::int64_t goal) {
  goal_ = goal;
  while (cost_ >= goal_) RemoveSomething();
  Mark();
  current_ = Now();
  history_.assign(kHistory, current_);
}

void Searcher::Run(std::int64_t work, std::int64_t bound) {
  for (work_ = 0; work_ < work && best_cost_ > bound;) {
    Ruin();
    Recreate();
    if (missing_area_ == 0) {
      Keep();
      Aim(best_cost_);
      continue;
    }
    if (!Accept()) Undo();
    Mark();
  }
}

// Keeps a whole packing: the goal is met.
void Searcher::Keep() {
  best_cost_ = cost_;
  best_.missing = missing_;
  best_.sheets.clear();
  for (const Sheet& sheet : sheets_) {
    if (sheet.work.stock != kNone) best_.sheets.push_back(sheet.work);
  }
}

// From here on Undo comes back here.
void Searcher::Mark() {
  touched_.clear();
  ++now_;
  missing_before_ = missing_;
  on_hand_before_ = on_hand_;
  missing_area_before_ = missing_area_;
  cost_before_ = cost_;
  worth_before_ = worth_;
}

Searcher::Cost Searcher::Now() const {
  const double spare = static_cast<double>(goal_ - cost_);
  return {missing_area_, worth_ + spare * std::sqrt(std::sqrt(spare))};
}

bool Searcher::Accept() {
  const Cost now = Now();
  Cost& old = history_[turn_];
  turn_ = (turn_ + 1) % kHistory;
  const bool accept = now.NoWorseThan(old) || now.NoWorseThan(current_);
  if (accept) current_ = now;
  if (!old.NoWorseThan(current_)) old = current_;
  return accept;
}

void Searcher::Touch(std::size_t sheet) {
  if (stamp_[sheet] == now_) return;
  stamp_[sheet] = now_;
  touched_.push_back(sheet);
  backup_[sheet] = sheets_[sheet];
}

void Searcher::Undo() {
  for (const std::size_t sheet : touched_) std::swap(sheets_[sheet], backup_[sheet]);
  std::swap(missing_, missing_before_);
  std::swap(on_hand_, on_hand_before_);
  missing_area_ = missing_area_before_;
  cost_ = cost_before_;
  worth_ = worth_before_;
}

void Searcher::Ruin() {
  const std::uint32_t n = 1 + random_.Below(2 * mean_removed_ - 1);
  for (std::uint32_t i = 0; i < n; ++i) RemoveSomething();
  for (const std::size_t at : touched_) {
    Sheet& sheet = sheets_[at];
    if (sheet.work.stock == kNone) continue;
    if (sheet.work.tree.IsEmpty()) {
      Close(at);
      continue;
    }
    worth_ -= sheet.worth;
    Measure(sheet);
    worth_ += sheet.worth;
  }
}

void Searcher::Close(std::size_t at) {
  Sheet& sheet = sheets_[at];
  cost_ -= StockOf(sheet.work.stock).cost;
  ++on_hand_[static_cast<std::size_t>(sheet.work.stock)];
  worth_ -= sheet.worth;
  sheet.work.stock = kNone;
  sheet.lefts.clear();
  sheet.worth = 0;
}

// A random node of a random sheet, or while the goal is exceeded the whole sheet.
void Searcher::RemoveSomething() {
  const std::size_t at = random_.Below(static_cast<std::uint32_t>(sheets_.size()));
  if (sheets_[at].work.stock == kNone) return;
  const std::vector<Node>& nodes = sheets_[at].work.tree.nodes();
  std::int32_t node = 0;
  const bool whole = cost_ >= goal_;
  if (!whole) {
    node = static_cast<std::int32_t>(random_.Below(static_cast<std::uint32_t>(nodes.size())));
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

void Searcher::Measure(Sheet& sheet) {
  sheet.lefts.clear();
  sheet.worth = 0;
  const std::vector<Node>& nodes = sheet.work.tree.nodes();
  for (std::size_t i = 0; i < nodes.size(); ++i) {
    if (nodes[i].what != kLeftover) continue;
    const double worth = LeftWorth(nodes[i].width, nodes[i].height);
    if (worth > 0) {
      sheet.lefts.push_back(
          {nodes[i].width, nodes[i].height, 0, static_cast<std::int32_t>(i), worth});
    }
    sheet.worth += worth;
  }
}

// All leftovers of all sheets, without those that no missing part fits.
void Searcher::Gather() {
  std::int32_t least_width = std::numeric_limits<std::int32_t>::max();
  std::int32_t least_height = least_width;
  for (const Waiting& waiting : waiting_) {
    const Part& part = PartAt(waiting.part);
    least_width = std::min({least_width, part.width, part.turn ? part.height : part.width});
    least_height = std::min({least_height, part.height, part.turn ? part.width : part.height});
  }
  lefts_.clear();
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    for (const Left& left : sheets_[i].lefts) {
      if (left.width < least_width || left.height < least_height) continue;
      lefts_.push_back(left);
      lefts_.back().sheet = static_cast<std::int32_t>(i);
    }
  }
}

void Searcher::Consider(Waiting& waiting, const Left& left, std::int32_t at, std::int32_t width,
                        std::int32_t height, bool turned) {
  if (width > left.width || height > left.height) return;
  const std::int32_t beside = left.width - width;
  const std::int32_t above = left.height - height;
  const double columns = LeftWorth(beside, left.height) + LeftWorth(width, above);
  const double rows = LeftWorth(left.width, above) + LeftWorth(beside, height);
  ++waiting.places;
  const std::uint32_t chance = random_.Next();
  if ((chance & 255) < kSkip) return;
  const bool by_columns = columns >= rows;
  std::int32_t cut = by_columns ? kColumns : kRows;
  double loss = left.worth - std::max(columns, rows);
  if (((chance >> 8) & 255) < kSkip) {
    cut = by_columns ? kRows : kColumns;
    loss = left.worth - std::min(columns, rows);
  }
  if (waiting.left != kNone && loss >= waiting.loss) return;
  waiting.left = at;
  waiting.loss = loss;
  waiting.turned = turned;
  waiting.first_cut = cut;
}

void Searcher::LookAt(Waiting& waiting, std::int32_t at) {
  const Left& left = lefts_[static_cast<std::size_t>(at)];
  const Part& part = PartAt(waiting.part);
  Consider(waiting, left, at, part.width, part.height, false);
  if (part.turn && part.width != part.height) {
    Consider(waiting, left, at, part.height, part.width, true);
  }
}

void Searcher::LookAll(Waiting& waiting) {
  waiting.places = 0;
  waiting.left = kNone;
  for (std::size_t i = 0; i < lefts_.size(); ++i) {
    LookAt(waiting, static_cast<std::int32_t>(i));
  }
  work_ += static_cast<std::int64_t>(lefts_.size());
}

// Opens a sheet for a part that has no place, if the goal allows.
bool Searcher::Open(const Part& part) {
  std::int32_t chosen = kNone;
  std::uint32_t seen = 0;
  for (std::size_t i = 0; i < problem_.stock.size(); ++i) {
    const Stock& stock = problem_.stock[i];
    if (on_hand_[i] == 0 || !Fits(part, stock) || cost_ + stock.cost >= goal_) continue;
    if (random_.Below(++seen) == 0) chosen = static_cast<std::int32_t>(i);
  }
  if (chosen == kNone) return false;
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
  for (const Left& left : sheet.lefts) {
    lefts_.push_back(left);
    lefts_.back().sheet = static_cast<std::int32_t>(at);
  }
  return true;
}

void Searcher::Place(const Waiting& waiting) {
  const Left left = lefts_[static_cast<std::size_t>(waiting.left)];
  const Part& part = PartAt(waiting.part);
  const auto sheet = static_cast<std::size_t>(left.sheet);
  Touch(sheet);
  Tree& tree = sheets_[sheet].work.tree;
  const Laid laid{waiting.part, waiting.turned ? part.height : part.width,
                  waiting.turned ? part.width : part.height, waiting.turned};
  const auto rests = tree.Insert(left.node, laid, waiting.first_cut);
  --missing_[static_cast<std::size_t>(waiting.part)];
  missing_area_ -= part.Area();
  lefts_[static_cast<std::size_t>(waiting.left)].width = 0;
  for (const std::int32_t rest : rests) {
    if (rest == kNone) continue;
    const Node& node = tree.At(rest);
    const double worth = LeftWorth(node.width, node.height);
    if (worth > 0) lefts_.push_back({node.width, node.height, left.sheet, rest, worth});
  }
}

void Searcher::Recreate() {
  waiting_.clear();
  for (std::size_t i = 0; i < missing_.size(); ++i) {
    if (missing_[i] > 0) waiting_.push_back({.part = static_cast<std::int32_t>(i)});
  }
  Gather();
  for (Waiting& waiting : waiting_) LookAll(waiting);
  while (!waiting_.empty()) {
    auto least = waiting_.begin();
    for (auto it = least + 1; it != waiting_.end(); ++it) {
      if (it->places < least->places ||
          (it->places == least->places && PartAt(it->part).Area() > PartAt(least->part).Area())) {
        least = it;
      }
    }
    std::size_t known = lefts_.size();
    std::int32_t gone = kNone;
    if (least->left == kNone && (least->places > 0 || !Open(PartAt(least->part)))) {
      *least = waiting_.back();
      waiting_.pop_back();
      continue;
    }
    if (least->left != kNone) {
      gone = least->left;
      const Left old = lefts_[static_cast<std::size_t>(gone)];
      const Waiting placed = *least;
      Place(placed);
      if (missing_[static_cast<std::size_t>(placed.part)] == 0) {
        *least = waiting_.back();
        waiting_.pop_back();
      }
      for (Waiting& waiting : waiting_) {
        if (waiting.left == gone) {
          LookAll(waiting);
          continue;
        }
        const Part& part = PartAt(waiting.part);
        if (part.width <= old.width && part.height <= old.height) --waiting.places;
        if (part.turn && part.width != part.height && part.height <= old.width &&
            part.width <= old.height) {
          --waiting.places;
        }
        for (std::size_t i = known; i < lefts_.size(); ++i) {
          LookAt(waiting, static_cast<std::int32_t>(i));
        }
      }
      continue;
    }
    for (Waiting& waiting : waiting_) {
      for (std::size_t i = known; i < lefts_.size(); ++i) {
        LookAt(waiting, static_cast<std::int32_t>(i));
      }
    }
  }
  for (const std::size_t at : touched_) {
    Sheet& sheet = sheets_[at];
    if (sheet.work.stock == kNone) continue;
    worth_ -= sheet.worth;
    Measure(sheet);
    worth_ += sheet.worth;
  }
}

}  // namespace tillwright::nest
