#include "solve/pulls.h"

#include "spec/defaults.h"

namespace tillwright {
namespace {

// The leaf's own keys over the bank's. Not typed when there are no pulls.
PullSpec Merged(const PullSpec& bank, const PullSpec& own) {
  if (!own.typed) return bank.none ? PullSpec() : bank;
  if (own.none) return {};
  if (!bank.typed || bank.none) return own;
  PullSpec pull = bank;
  pull.place = own.place;
  if (own.centers.typed) pull.centers = own.centers;
  if (own.down.typed) pull.down = own.down;
  if (own.count.typed) pull.count = own.count;
  return pull;
}

// One pull about the center line `x`.
void AddPull(Length x, Length y, Length centers, std::vector<PullHole>& holes) {
  if (centers.IsZero()) return holes.push_back({x, y});
  const Length left = x - HalfBelow(centers);
  holes.push_back({left, y});
  holes.push_back({left + centers, y});
}

class PullRule {
 public:
  PullRule(const PullSpec& pull, Unit unit, Space& space, Diagnostics& diagnostics)
      : pull_(pull),
        unit_(unit),
        id_(ToText(space.id)),
        front_(space.front),
        diagnostics_(diagnostics) {}

  void Run() {
    const Rect& r = front_.rect;
    if (r.width <= Length() || r.height <= Length()) return;  // reported already
    const Length centers = pull_.centers.value;
    const bool two =
        pull_.count.typed ? pull_.count.value == 2 : r.width > defaults::kTwoPulls.In(unit_);
    if (!FitsUpright() || !FitsAcross(centers, two)) return;
    front_.pull_centers = centers;
    const Length y = pull_.down.typed ? r.Top() - pull_.down.value : r.y + HalfBelow(r.height);
    if (!two) return AddPull(r.x + HalfBelow(r.width), y, centers, front_.pulls);
    const Length quarter = PartBelow(r.width, 4);
    AddPull(r.x + quarter, y, centers, front_.pulls);
    AddPull(r.Right() - quarter, y, centers, front_.pulls);
  }

 private:
  bool FitsUpright() {
    const Length height = front_.rect.height;
    if (!pull_.down.typed || pull_.down.value < height) return true;
    return Refuse(pull_.down.place, "the pull's holes, " + FormatWithUnit(pull_.down.value, unit_) +
                                        " down, miss the front of " + id_ + ", which is " +
                                        FormatWithUnit(height, unit_) + " tall");
  }

  bool FitsAcross(Length centers, bool two) {
    const Length room = two ? HalfBelow(front_.rect.width) : front_.rect.width;
    if (centers < room) return true;
    return Refuse(pull_.centers.place, std::string(two ? "two pulls" : "a pull") + " of " +
                                           FormatWithUnit(centers, unit_) + " between centers " +
                                           (two ? "do" : "does") + " not fit the front of " + id_ +
                                           ", which is " +
                                           FormatWithUnit(front_.rect.width, unit_) + " wide");
  }

  bool Refuse(Place place, std::string message) {
    ReportError(diagnostics_, DiagnosticCode::kNoRoom, place, std::move(message),
                "give " + id_ + " a \"pull\" of its own in its \"front\", or \"none\"");
    return false;
  }

  const PullSpec& pull_;
  Unit unit_;
  std::string id_;
  Front& front_;
  Diagnostics& diagnostics_;
};

}  // namespace

void AddPulls(const Spec& spec, const LeafSpec& leaf, Space& space, Diagnostics& diagnostics) {
  const PullSpec pull = Merged(spec.fronts.pull, leaf.front.pull);
  if (pull.typed) PullRule(pull, spec.units.value, space, diagnostics).Run();
}

}  // namespace tillwright
