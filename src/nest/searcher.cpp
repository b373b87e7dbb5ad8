#include "nest/searcher.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace tillwright::nest {
namespace {

constexpr std::uint32_t kSkip = 13;  // of 256: how often a place is passed over

// What a leftover of an area is worth: more when it is large in one piece. Only steers the search;
// square roots are exact to the last bit on every machine, so the same path is taken everywhere.
inline float Worth(float area) { return area * std::sqrt(std::sqrt(area)); }

std::uint32_t MeanRemoved(const Problem& problem) {
  std::int64_t parts = 0;
  for (const Part& part : problem.parts) parts += part.count;
  return parts <= 100 ? 8 : parts <= 300 ? 6 : 4;
}

}  // namespace

Searcher::Searcher(const Problem& problem, std::uint64_t seed, std::size_t history)
    : problem_(problem), random_(seed), history_(history), mean_removed_(MeanRemoved(problem)) {
  least_width_ = least_height_ = std::numeric_limits<std::int32_t>::max();
  for (const Part& part : problem.parts) {
    least_width_ = std::min({least_width_, part.width, part.turn ? part.height : part.width});
    least_height_ = std::min({least_height_, part.height, part.turn ? part.width : part.height});
  }
}

float Searcher::LeftWorth(std::int32_t width, std::int32_t height) const {
  return Worth(width >= least_width_ && height >= least_height_
                   ? static_cast<float>(width) * static_cast<float>(height)
                   : 0.0F);
}

void Searcher::Lefts::Clear() {
  all_.clear();
  widths_.clear();
  heights_.clear();
}

void Searcher::Lefts::Add(const Left& left) {
  const std::size_t at = all_.size();
  all_.push_back(left);
  if (at == widths_.size()) {
    widths_.resize(at + kBlock);
    heights_.resize(at + kBlock);
  }
  widths_[at] = left.width;
  heights_[at] = left.height;
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
  std::ranges::fill(history_, current_);
}

void Searcher::Run(std::int64_t work, std::int64_t bound) {
  for (work_ = 0; work_ < work && best_cost_ > bound;) {
    RuinAndRecreate();
    if (missing_area_ == 0) {
      Keep();
      Aim(best_cost_);
      continue;
    }
    if (!Accept()) Undo();
    Mark();
  }
}

void Searcher::Tidy(std::int64_t work) {
  Aim(cost_ + 1);
  Cost best = current_;
  for (work_ = 0; work_ < work;) {
    RuinAndRecreate();
    if (missing_area_ == 0 && !best.NoWorseThan(Now())) {
      best = Now();
      Keep();
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
  turn_ = (turn_ + 1) % history_.size();
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

// A round that finds nothing to do counts as well, so that every search comes to its end.
void Searcher::RuinAndRecreate() {
  constexpr std::int64_t kIdleRound = 64;
  const std::int64_t before = work_;
  Ruin();
  Recreate();
  if (work_ == before) work_ += kIdleRound;
}

void Searcher::Ruin() {
  const std::uint32_t n = 1 + random_.Below(2 * mean_removed_ - 1);
  for (std::uint32_t i = 0; i < n; ++i) RemoveSomething();
  for (const std::size_t at : touched_) {
    if (sheets_[at].work.stock != kNone && sheets_[at].work.tree.IsEmpty()) Close(at);
  }
  MeasureTouched();
}

void Searcher::MeasureTouched() {
  for (const std::size_t at : touched_) {
    Sheet& sheet = sheets_[at];
    if (sheet.work.stock == kNone) continue;
    worth_ -= sheet.worth;
    Measure(sheet);
    worth_ += sheet.worth;
  }
  work_ += static_cast<std::int64_t>(8 * touched_.size());
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
    const float worth = LeftWorth(nodes[i].width, nodes[i].height);
    if (worth <= 0) continue;
    sheet.lefts.push_back(
        {nodes[i].width, nodes[i].height, 0, static_cast<std::int32_t>(i), worth});
    sheet.worth += static_cast<double>(worth);
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
  lefts_.Clear();
  for (std::size_t i = 0; i < sheets_.size(); ++i) {
    for (Left left : sheets_[i].lefts) {
      if (left.width < least_width || left.height < least_height) continue;
      left.sheet = static_cast<std::int32_t>(i);
      lefts_.Add(left);
    }
  }
}

void Searcher::Consider(Waiting& waiting, std::size_t at, std::int32_t width, std::int32_t height,
                        bool turned) {
  const Left& left = lefts_[at];
  const std::int32_t beside = left.width - width;
  const std::int32_t above = left.height - height;
  // The four pieces that may remain: two by cutting a column off first, two by a row.
  const std::array<std::int32_t, 4> widths{beside, width, left.width, beside};
  const std::array<std::int32_t, 4> heights{left.height, above, above, height};
  std::array<float, 4> worths{};
  for (std::size_t i = 0; i < 4; ++i) worths[i] = LeftWorth(widths[i], heights[i]);
  const float columns = worths[0] + worths[1];
  const float rows = worths[2] + worths[3];
  const std::int32_t only = problem_.stages > 0 ? OnlyCut(waiting, left, width, height) : kColumns;
  if (only == kNone) return;
  ++waiting.places;
  const std::uint32_t chance = random_.Next();
  if ((chance & 255) < kSkip) return;
  // Either cut may be passed over too.
  bool by_columns = (columns >= rows) != (((chance >> 8) & 255) < kSkip);
  if (problem_.stages > 0) by_columns = only == kColumns;
  const float loss = left.worth - (by_columns ? columns : rows);
  if (waiting.left != kNone && loss >= waiting.loss) return;
  waiting.left = static_cast<std::int32_t>(at);
  waiting.loss = loss;
  waiting.turned = turned;
  waiting.first_cut = by_columns ? kColumns : kRows;
}

// Within a limit on stages: the cut that may be made first, kNone when neither may.
std::int32_t Searcher::OnlyCut(const Waiting& waiting, const Left& left, std::int32_t width,
                               std::int32_t height) const {
  const Tree& tree = sheets_[static_cast<std::size_t>(left.sheet)].work.tree;
  return AllowedCut(tree, left.node, {waiting.part, width, height, false}, problem_.stages,
                    left.width - width > left.height - height ? kColumns : kRows);
}

// Looks at the leftovers from a block on.
void Searcher::Look(Waiting& waiting, std::size_t from) {
  const Part& part = PartAt(waiting.part);
  lefts_.ForFitting(part.width, part.height, from,
                    [&](std::size_t at) { Consider(waiting, at, part.width, part.height, false); });
  if (!part.turn || part.width == part.height) return;
  lefts_.ForFitting(part.height, part.width, from,
                    [&](std::size_t at) { Consider(waiting, at, part.height, part.width, true); });
}

void Searcher::LookAll(Waiting& waiting) {
  const std::int32_t before = waiting.places = 0;
  waiting.left = kNone;
  Look(waiting, 0);
  work_ += static_cast<std::int64_t>(lefts_.size() / 4) + 2 * (waiting.places - before);
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
  for (Left left : sheet.lefts) {
    left.sheet = static_cast<std::int32_t>(at);
    lefts_.Add(left);
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
  lefts_.Drop(static_cast<std::size_t>(waiting.left));
  for (const std::int32_t rest : rests) {
    if (rest == kNone) continue;
    const Node& node = tree.At(rest);
    const float worth = LeftWorth(node.width, node.height);
    if (worth > 0) lefts_.Add({node.width, node.height, left.sheet, rest, worth});
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
    // The part with the fewest places first, the larger among equals.
    const auto least = std::ranges::min_element(waiting_, [&](const Waiting& a, const Waiting& b) {
      return a.places != b.places ? a.places < b.places
                                  : PartAt(a.part).Area() > PartAt(b.part).Area();
    });
    Settle(static_cast<std::size_t>(least - waiting_.begin()));
  }
  MeasureTouched();
}

// Places one of the waiting parts, opens a sheet for it, or gives it up for this time.
void Searcher::Settle(std::size_t which) {
  const Waiting waiting = waiting_[which];
  const std::size_t known = lefts_.size();
  bool done = false;
  if (waiting.left != kNone) {
    Place(waiting);
    done = missing_[static_cast<std::size_t>(waiting.part)] == 0;
  } else {
    done = waiting.places > 0 || !Open(PartAt(waiting.part));
  }
  if (done) {
    waiting_[which] = waiting_.back();
    waiting_.pop_back();
  }
  if (waiting.left != kNone || !done) LookAgain(waiting.left, known);
}

// Brings what is known of the waiting parts up to date: one leftover is gone, others are new.
void Searcher::LookAgain(std::int32_t gone, std::size_t from) {
  const Left old = gone == kNone ? Left{} : lefts_[static_cast<std::size_t>(gone)];
  for (Waiting& waiting : waiting_) {
    // A cut changes what the stages allow elsewhere on its sheet.
    if ((gone != kNone && waiting.left == gone) || problem_.stages > 0) {
      LookAll(waiting);
      continue;
    }
    const Part& part = PartAt(waiting.part);
    const auto fits = [&](std::int32_t w, std::int32_t h) {
      return w <= old.width && h <= old.height ? 1 : 0;
    };
    waiting.places -= fits(part.width, part.height);
    const bool turns = part.turn && part.width != part.height;
    if (turns) waiting.places -= fits(part.height, part.width);
    for (std::size_t i = from; i < lefts_.size(); ++i) {
      const Left& left = lefts_[i];
      if (part.width <= left.width && part.height <= left.height) {
        Consider(waiting, i, part.width, part.height, false);
      }
      if (turns && part.height <= left.width && part.width <= left.height) {
        Consider(waiting, i, part.height, part.width, true);
      }
    }
  }
  work_ += static_cast<std::int64_t>(2 * waiting_.size());
}

}  // namespace tillwright::nest
