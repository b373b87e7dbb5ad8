#include "stock/front_runs.h"

#include <map>
#include <set>
#include <tuple>

#include "bank/part_roles.h"
#include "spec/defaults.h"
#include "stock/part_names.h"

namespace tillwright {
namespace {

// Finds for every front the one that follows it: its neighbor along the run with nothing but a gap
// or a member between, of one size across the run, and of one thickness, material and grain.
class RunFinder {
 public:
  explicit RunFinder(const Bank& bank) : bank_(bank), row_(bank.match == FrontMatch::kRow) {}

  std::vector<FrontRun> Run() {
    if (bank_.match == FrontMatch::kNone) return {};
    const Axis axis = row_ ? Axis::kX : Axis::kY;
    for (const Gap& gap : bank_.gaps) {
      if (gap.axis == axis) Look(gap);
    }
    for (const auto& [place, low] : before_) {
      if (const auto high = after_.find(place); high != after_.end()) Link(low, high->second);
    }
    return Runs();
  }

 private:
  // A member, and where along it a front begins and ends.
  using Place = std::tuple<int, Length, Length>;

  [[nodiscard]] const Front& FrontOf(int space) const {
    return bank_.spaces[static_cast<std::size_t>(space)].front;
  }

  [[nodiscard]] Place PlaceAt(int member, int space) const {
    const Rect& rect = FrontOf(space).rect;
    return row_ ? Place{member, rect.y, rect.Top()} : Place{member, rect.x, rect.Right()};
  }

  void Look(const Gap& gap) {
    const bool from_front = gap.from.kind == GapEnd::Kind::kSpace;
    const bool to_front = gap.to.kind == GapEnd::Kind::kSpace;
    if (from_front && to_front) Link(gap.from.index, gap.to.index);
    if (from_front && gap.to.kind == GapEnd::Kind::kDivider) {
      before_.emplace(PlaceAt(gap.to.index, gap.from.index), gap.from.index);
    }
    if (to_front && gap.from.kind == GapEnd::Kind::kDivider) {
      after_.emplace(PlaceAt(gap.from.index, gap.to.index), gap.to.index);
    }
  }

  [[nodiscard]] bool Matched(const Front& a, const Front& b) const {
    const bool in_line = row_ ? a.rect.y == b.rect.y && a.rect.height == b.rect.height
                              : a.rect.x == b.rect.x && a.rect.width == b.rect.width;
    return in_line && a.grain != Grain::kNone && a.grain == b.grain && a.thickness == b.thickness &&
           a.material == b.material;
  }

  // `low` lies to the left of `high`, or below it.
  void Link(int low, int high) {
    if (!Matched(FrontOf(low), FrontOf(high))) return;
    const int first = row_ ? low : high;
    const int second = row_ ? high : low;
    next_.emplace(first, second);
    followers_.insert(second);
  }

  [[nodiscard]] std::vector<FrontRun> Runs() const {
    std::vector<FrontRun> runs;
    const std::map<int, std::size_t> parts = FrontParts();
    for (const auto& [first, second] : next_) {
      if (followers_.contains(first)) continue;
      FrontRun run;
      run.label = "R" + std::to_string(runs.size() + 1);
      run.across = (FrontOf(first).grain == Grain::kHorizontal) != row_;
      run.parts.push_back(parts.at(first));
      for (auto at = next_.find(first); at != next_.end(); at = next_.find(at->second)) {
        run.parts.push_back(parts.at(at->second));
      }
      runs.push_back(std::move(run));
    }
    return runs;
  }

  [[nodiscard]] std::map<int, std::size_t> FrontParts() const {
    std::map<int, std::size_t> parts;
    for (std::size_t i = 0; i < bank_.parts.size(); ++i) {
      if (Facts(bank_.parts[i].role).group == PartGroup::kFront)
        parts.emplace(bank_.parts[i].space, i);
    }
    return parts;
  }

  const Bank& bank_;
  bool row_;
  std::map<Place, int> before_, after_;  // fronts on the two sides of members
  std::map<int, int> next_;
  std::set<int> followers_;
};

}  // namespace

std::vector<FrontRun> MatchedFronts(const Bank& bank) { return RunFinder(bank).Run(); }

SawnInRun SawnIn(const FrontRun& run, const CutLine& line) {
  SawnInRun sawn{line.rough_length, line.rough_width, {}};
  if (!line.solid) return sawn;
  Length& along = run.across ? sawn.width : sawn.length;
  const Length finished = run.across ? line.width : line.length;
  sawn.spare = along - finished;
  along = finished;
  return sawn;
}

std::string_view OrderWords(FrontMatch match) {
  return match == FrontMatch::kRow ? "left to right" : "top to bottom";
}

std::string FrontsOf(const Bank& bank, const FrontRun& run) {
  std::vector<std::string> fronts;
  for (const std::size_t part : run.parts) fronts.push_back(PartFor(bank, bank.parts[part]));
  return RunTogether(fronts);
}

std::string RunLabels(const CutLine& line) { return RunTogether(line.runs); }

std::vector<std::size_t> LineOfParts(const Bank& bank, const std::vector<CutLine>& lines) {
  std::vector<std::size_t> line_of(bank.parts.size());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    for (const std::size_t part : lines[i].kind.parts) line_of[part] = i;
  }
  return line_of;
}

SawnInRun PieceOf(const FrontRun& run, FrontStretch stretch, const std::vector<CutLine>& lines,
                  const std::vector<std::size_t>& line_of, Length kerf) {
  Length sum = (static_cast<std::int64_t>(stretch.to - stretch.from) - 1) * kerf;
  SawnInRun piece;
  for (std::size_t i = stretch.from; i < stretch.to; ++i) {
    piece = SawnIn(run, lines[line_of[run.parts[i]]]);
    sum += run.across ? piece.width : piece.length;
  }
  (run.across ? piece.width : piece.length) = sum + piece.spare;
  return piece;
}

std::vector<FrontRun> FrontRuns(const Spec& spec, const Bank& bank,
                                const std::vector<CutLine>& lines) {
  std::vector<FrontRun> runs = MatchedFronts(bank);
  const std::vector<std::size_t> line_of = LineOfParts(bank, lines);
  const Length kerf = LengthOr(spec.stock.kerf, defaults::kKerf, bank.units);
  for (FrontRun& run : runs) {
    const SawnInRun piece = PieceOf(run, {0, run.parts.size()}, lines, line_of, kerf);
    run.length = piece.length;
    run.width = piece.width;
  }
  return runs;
}

}  // namespace tillwright
