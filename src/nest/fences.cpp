#include "nest/fences.h"

#include <algorithm>
#include <utility>

#include "nest/random.h"
#include "nest/refill.h"
#include "nest/workbench.h"

namespace tillwright::nest {
namespace {

std::int32_t SizeIn(const Node& parent, const Node& child) {
  return parent.what == kColumns ? child.width : child.height;
}

// Calls use(tree, parent, child, index of the child) for every piece that is no leftover.
template <class F>
void ForPieces(const Tree& tree, F use) {
  for (const Node& node : tree.nodes()) {
    if (node.what != kColumns && node.what != kRows) continue;
    for (std::int32_t child = node.first; child != kNone; child = tree.At(child).next) {
      if (tree.At(child).what != kLeftover) use(node, tree.At(child), child);
    }
  }
}

std::int64_t Distinct(std::vector<std::int32_t>& sizes) {
  std::ranges::sort(sizes);
  return std::unique(sizes.begin(), sizes.end()) - sizes.begin();
}

}  // namespace

PieceSizes::PieceSizes(const std::vector<const Tree*>& trees) {
  for (const Tree* tree : trees) {
    ForPieces(*tree, [&](const Node& parent, const Node& child, std::int32_t) {
      sizes_.push_back(SizeIn(parent, child));
    });
  }
  std::ranges::sort(sizes_);
}

std::int64_t PieceSizes::Uses(std::int32_t size) const {
  return std::ranges::upper_bound(sizes_, size) - std::ranges::lower_bound(sizes_, size);
}

std::int32_t PieceSizes::LastOf(const Tree& tree, const Node& node) const {
  std::int32_t last = kNone;
  std::pair<std::int64_t, std::int32_t> least;
  for (std::int32_t child = node.first; child != kNone; child = tree.At(child).next) {
    if (tree.At(child).what == kLeftover) return child;
    const std::int32_t size = SizeIn(node, tree.At(child));
    const std::pair key(Uses(size), size);
    if (last != kNone && key >= least) continue;
    last = child;
    least = key;
  }
  return last;
}

std::vector<const Tree*> TreesOf(const Packing& packing) {
  std::vector<const Tree*> trees;
  for (const SheetInWork& sheet : packing.sheets) {
    if (sheet.stock != kNone) trees.push_back(&sheet.tree);
  }
  return trees;
}

Fences FencesOf(const std::vector<const Tree*>& trees, const PieceSizes& sizes) {
  Fences fences;
  std::vector<std::int32_t> all;
  std::vector<std::int32_t> one;
  for (const Tree* tree : trees) {
    one.clear();
    const Node* parent = nullptr;
    std::int32_t last = kNone;
    ForPieces(*tree, [&](const Node& whole, const Node& piece, std::int32_t index) {
      if (&whole != parent) last = sizes.LastOf(*tree, whole);
      parent = &whole;
      if (index != last) one.push_back(SizeIn(whole, piece));
    });
    all.insert(all.end(), one.begin(), one.end());
    fences.sheet_settings += Distinct(one);
    if (tree->nodes().front().what == kColumns) ++fences.crosscut_first;
  }
  fences.settings = Distinct(all);
  return fences;
}

namespace {

class FenceSaver {
 public:
  FenceSaver(const Problem& problem, Packing packing, std::int32_t kerf)
      : bench_(problem), refill_(bench_, random_), kerf_(kerf), best_(std::move(packing)) {
    bench_.Start(best_);
    cost_ = bench_.cost();
    sheets_ = best_.Sheets();
    largest_ = LargestLeft();
    in_use_ = PieceSizes(Trees());
    now_ = least_ = FencesOf(Trees(), in_use_);
  }

  Packing Run(std::int64_t work) {
    while (bench_.work < work && least_.settings > 1) {
      Change();
      if (!Keeps() || !Settle()) bench_.Undo();
      bench_.Mark();
    }
    return std::move(best_);
  }

 private:
  static constexpr std::uint32_t kMostRemoved = 8;
  static constexpr std::int64_t kRoundWork = 64;

  void Change() {
    const std::uint32_t n = 1 + random_.Below(kMostRemoved);
    for (std::uint32_t i = 0; i < n; ++i) bench_.RemoveSomething(random_, false);
    bench_.ClearUp();
    refill_.Run(cost_ + 1, &in_use_);
    bench_.work += kRoundWork;
  }

  // Whether the settings are no more than they were.
  bool Settle() {
    PieceSizes sizes(Trees());
    const Fences fences = FencesOf(Trees(), sizes);
    bench_.work += 4 * sizes.size();
    if (fences > now_) return false;
    in_use_ = std::move(sizes);
    now_ = fences;
    if (now_ < least_) {
      least_ = now_;
      best_ = bench_.ToPacking();
    }
    return true;
  }

  // Whether all is as good as at the beginning but for the settings.
  [[nodiscard]] bool Keeps() const {
    return bench_.missing_area() == 0 && bench_.cost() <= cost_ &&
           static_cast<std::int32_t>(Trees().size()) <= sheets_ && LargestLeft() >= largest_;
  }

  [[nodiscard]] std::vector<const Tree*> Trees() const {
    std::vector<const Tree*> trees;
    for (const Workbench::Sheet& sheet : bench_.sheets()) {
      if (sheet.work.stock != kNone) trees.push_back(&sheet.work.tree);
    }
    return trees;
  }

  // Neither side's kerf is of use.
  [[nodiscard]] std::int64_t LargestLeft() const {
    std::int64_t most = 0;
    for (const Tree* tree : Trees()) {
      for (const Node& node : tree->nodes()) {
        if (node.what != kLeftover || node.width <= kerf_ || node.height <= kerf_) continue;
        most = std::max(most, std::int64_t{node.width - kerf_} * (node.height - kerf_));
      }
    }
    return most;
  }

  Random random_{5};
  Workbench bench_;
  Refill refill_;
  std::int32_t kerf_;
  Packing best_;
  std::int64_t cost_ = 0;
  std::int32_t sheets_ = 0;
  std::int64_t largest_ = 0;
  PieceSizes in_use_{{}};
  Fences now_;
  Fences least_;
};

}  // namespace

Packing WithFewerSettings(const Problem& problem, Packing packing, std::int32_t kerf,
                          std::int64_t work) {
  if (packing.sheets.empty()) return packing;
  return FenceSaver(problem, std::move(packing), kerf).Run(work);
}

}  // namespace tillwright::nest
