#include "check/change.h"

#include "check/layout_index.h"
#include "check/measured_parts.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

using Key = SpecChange::Key;

constexpr const char* kPanelMaterial = "veneered panel";

class Changer {
 public:
  Changer(Spec& spec, const Bank& bank) : spec_(spec), bank_(bank) {}

  void Make(const SpecChange& change) {
    const auto edge = static_cast<std::size_t>(change.edge);
    switch (change.key) {
      case Key::kGap:
        NodeAt(spec_, change.node).gap = Typed(change.to);
        return;
      case Key::kEdge:
        spec_.fronts.edge_typed = true;
        spec_.fronts.edge[edge] = Typed(change.to);
        return;
      case Key::kOverlay:
        spec_.fronts.overlay_typed = true;
        spec_.fronts.overlay[edge] = {OverlayEdge::Kind::kLength, Typed(change.to), false};
        return;
      case Key::kCut:
        spec_.tolerance.cut = Typed(change.to);
        return;
      case Key::kPlace:
        spec_.tolerance.place = Typed(change.to);
        return;
      case Key::kOpening:
        spec_.tolerance.opening = Typed(change.to);
        return;
      case Key::kQuarterSawn:
        spec_.fronts.cut = {SawnCut::kQuarter, {}};
        return;
      case Key::kPanel:
        return Panels();
      case Key::kOpeningWidth:
        return Opening(&OpeningSpec::width, &CaseSpec::width, bank_.opening_width, change.to);
      case Key::kOpeningHeight:
        return Opening(&OpeningSpec::height, &CaseSpec::height, bank_.opening_height, change.to);
      case Key::kOpeningDepth:
        return Opening(&OpeningSpec::depth, &CaseSpec::depth, bank_.opening_depth, change.to);
      case Key::kExact:
        return Exact(change);
      case Key::kNotMeasured:
        return NotMeasured(change);
      case Key::kLeast:
        spec_.limits.least = Typed(change.to);
        return;
      case Key::kGreatest:
        spec_.limits.greatest = Typed(change.to);
        return;
    }
  }

 private:
  static Entry<Length> Typed(Length length) { return {length, Place{}}; }

  void Panels() {
    spec_.fronts.material = {kPanelMaterial, {}};
    for (LeafSpec& leaf : spec_.leaves) leaf.front.material = {};
  }

  void Opening(Entry<Length> OpeningSpec::*size, Entry<Length> CaseSpec::*outer, Length planned,
               Length to) {
    if (spec_.opening) {
      (*spec_.opening).*size = Typed(to);
    } else {
      Entry<Length>& entry = (*spec_.casework).*outer;
      entry = Typed((entry.typed ? entry.value : MadeUp(outer)) + to - planned);
    }
  }

  // A size of the case that follows from its worktop.
  Length MadeUp(Entry<Length> CaseSpec::*outer) const {
    return outer == &CaseSpec::height ? bank_.casework->height : bank_.casework->depth;
  }

  void NotMeasured(const SpecChange& change) {
    const std::string id = ToText(bank_.spaces[static_cast<std::size_t>(change.space)].id);
    const auto is_it = [&](const MeasuredPart& part) { return part.id == id; };
    std::erase_if(spec_.measured.fronts, is_it);
    std::erase_if(spec_.measured.boxes, is_it);
  }

  void Exact(const SpecChange& change) {
    const LayoutIndex index(spec_);
    LayoutNode& leaf = NodeAt(spec_, index.PathOf(change.space));
    leaf.size = {};
    leaf.size.exact = Typed(change.to);
  }

  Spec& spec_;
  const Bank& bank_;
};

std::string KeyText(const Spec& spec, const Bank& bank, const SpecChange& change) {
  const auto id = [&] { return ToText(bank.spaces[static_cast<std::size_t>(change.space)].id); };
  const std::string what = spec.opening ? "opening." : "case.";
  switch (change.key) {
    case Key::kGap: {
      std::string path = "gap";
      if (!change.node.empty()) path += " of the node at layout";
      for (const int child : change.node) path += "/" + std::to_string(child);
      return path;
    }
    case Key::kEdge:
      return "fronts.edge." + std::string(Word(change.edge));
    case Key::kOverlay:
      return "fronts.overlay." + std::string(Word(change.edge));
    case Key::kCut:
      return "tolerance.cut";
    case Key::kPlace:
      return "tolerance.place";
    case Key::kOpening:
      return "tolerance.opening";
    case Key::kQuarterSawn:
      return "fronts.cut";
    case Key::kPanel:
      return "fronts.material";
    case Key::kOpeningWidth:
      return what + "width";
    case Key::kOpeningHeight:
      return what + "height";
    case Key::kOpeningDepth:
      return what + "depth";
    case Key::kExact:
      return id() + ".exact";
    case Key::kNotMeasured:
      return "measured sizes of " + id();
    case Key::kLeast:
      return "limits.least";
    case Key::kGreatest:
      break;
  }
  return "limits.greatest";
}

std::string ValueText(const Spec& spec, const Bank& bank, const SpecChange& change) {
  const bool outer =
      !spec.opening && (change.key == Key::kOpeningWidth || change.key == Key::kOpeningHeight ||
                        change.key == Key::kOpeningDepth);
  if (change.key == Key::kQuarterSawn) return "quarter";
  if (change.key == Key::kPanel) return std::string(kPanelMaterial) + ", which does not move";
  if (change.key == Key::kNotMeasured) return "remove them and make the part again";
  return (outer ? "so that the opening is " : "") + FormatWithUnit(change.to, bank.units);
}

}  // namespace

SpecChange Named(const Spec& spec, const Bank& bank, SpecChange change) {
  change.text = KeyText(spec, bank, change) + ": " + ValueText(spec, bank, change);
  return change;
}

Spec Applied(const Spec& spec, const Bank& bank, const std::vector<SpecChange>& changes) {
  Spec changed = spec;
  for (const SpecChange& change : changes) Changer(changed, bank).Make(change);
  return changed;
}

std::vector<SpecChange> ChangesToRefit(const Spec& spec, const Bank& bank,
                                       const RealOpening& real) {
  std::vector<SpecChange> changes;
  const auto hold = [&](Key key, Length planned, Length measured, int space = -1) {
    if (measured != planned) {
      SpecChange change;
      change.key = key;
      change.space = space;
      change.to = measured;
      changes.push_back(Named(spec, bank, change));
    }
  };
  hold(Key::kOpeningWidth, bank.opening_width, real.LeastWidth(Length(), bank.opening_height));
  hold(Key::kOpeningHeight, bank.opening_height, real.LeastHeight(Length(), bank.opening_width));
  hold(Key::kOpeningDepth, bank.opening_depth, real.depth());
  const LayoutIndex index(spec);
  const MeasuredParts fronts(spec.measured.fronts);
  for (std::size_t i = 0; i < bank.spaces.size(); ++i) {
    const int space = static_cast<int>(i);
    const MeasuredPart* part = fronts.Of(bank.spaces[i]);
    const std::optional<Axis> split = index.SplitOf(space);
    if (part == nullptr || !split) continue;
    // Held even where it came out as planned: what is cut does not change.
    if (const Entry<Length>* size = MeasuredParts::Along(*part, *split)) {
      hold(Key::kExact, Length(), size->value, space);
    }
  }
  return changes;
}

}  // namespace tillwright
