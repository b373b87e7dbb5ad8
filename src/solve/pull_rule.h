// Pulls: where the holes for handles and knobs are bored in a front.
//
// `pull` of the fronts, over which the leaf's own is merged key by key; neither, or "none" in the
// nearer one: no holes. A pull stands in the middle of the front's width, two at a quarter and
// three quarters of it, mirrored exactly. Without `count` there is one, and two on fronts wider
// than 24 in (610 mm): common practice, no source. Halves and quarters that are no whole picometer
// are rounded down, from the edge they are measured from.
#ifndef TILLWRIGHT_SOLVE_PULL_RULE_H_
#define TILLWRIGHT_SOLVE_PULL_RULE_H_

#include "solve/box_rule.h"
#include "solve/context.h"

namespace tillwright {

template <class T>
class PullRule {
 public:
  using N = typename T::Number;

  PullRule(Context<T>& context, const PullSpec& pull, Space& space)
      : context_(context), pull_(pull), space_(space), id_(ToText(space.id)) {}

  // Reports kNoRoom when a hole would miss the front or two pulls would run into one another.
  void Run(const Cell<N>& face) {
    T& t = context_.trace;
    Front& front = space_.front;
    if (Value(face.width) <= Length() || Value(face.height) <= Length()) return;  // is reported
    const bool two = pull_.count.typed
                         ? pull_.count.value == 2
                         : Value(face.width) > defaults::kTwoPulls.In(context_.unit());
    if (!FitsUpright() || !FitsAcross(two)) return;
    const N centers =
        t.Name(space_.id, "front.pull.centers", t.Given("pull.centers", pull_.centers));
    front.pull_centers = Value(centers);
    const N y = pull_.down.typed ? face.y + face.height - t.Given("pull.down", pull_.down)
                                 : face.y + HalfBelow(face.height);
    if (!two) return Add(face.x + HalfBelow(face.width), y, centers);
    const N quarter = PartBelow(face.width, 4);
    Add(face.x + quarter, y, centers);
    Add(face.x + face.width - quarter, y, centers);
  }

 private:
  // One pull about the center line `x`.
  void Add(const N& x, const N& y, const N& centers) {
    if (Value(centers).IsZero()) return Hole(x, y);
    const N left = x - HalfBelow(centers);
    Hole(left, y);
    Hole(left + centers, y);
  }

  void Hole(const N& x, const N& y) {
    std::vector<PullHole>& holes = space_.front.pulls;
    const std::string path =
        T::kTracing ? "front.pull." + std::to_string(holes.size() + 1) : std::string();
    holes.push_back({Value(context_.trace.Name(space_.id, path + ".x", x)),
                     Value(context_.trace.Name(space_.id, path + ".y", y))});
  }

  bool FitsUpright() {
    const Length height = space_.front.rect.height;
    if (!pull_.down.typed || pull_.down.value < height) return true;
    return Refuse(pull_.down.place, "the pull's holes, " + In(pull_.down.value) +
                                        " down, miss the front of " + id_ + ", which is " +
                                        In(height) + " tall");
  }

  bool FitsAcross(bool two) {
    const Length width = space_.front.rect.width;
    if (pull_.centers.value < (two ? HalfBelow(width) : width)) return true;
    return Refuse(pull_.centers.place, std::string(two ? "two pulls" : "a pull") + " of " +
                                           In(pull_.centers.value) + " between centers " +
                                           (two ? "do" : "does") + " not fit the front of " + id_ +
                                           ", which is " + In(width) + " wide");
  }

  [[nodiscard]] std::string In(Length length) const {
    return FormatWithUnit(length, context_.unit());
  }

  bool Refuse(Place place, std::string message) {
    ReportError(context_.diagnostics, DiagnosticCode::kNoRoom, place, std::move(message),
                "give " + id_ + " a \"pull\" of its own in its \"front\", or \"none\"");
    return false;
  }

  Context<T>& context_;
  const PullSpec& pull_;
  Space& space_;
  std::string id_;
};

// The leaf's own keys over the bank's. Not typed when there are no pulls.
[[nodiscard]] inline PullSpec MergedPull(const PullSpec& bank, const PullSpec& own) {
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

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_PULL_RULE_H_
