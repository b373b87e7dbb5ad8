#include "solve/layout_errors.h"

#include <algorithm>
#include <optional>

#include "spec/kinds.h"
#include "tillwright/bank.h"

namespace tillwright {
namespace {

SlideType SlideOf(const Spec& spec, const LayoutNode& leaf) {
  const int own = spec.leaves[static_cast<std::size_t>(leaf.leaf)].override_index;
  if (own >= 0) {
    const Entry<SlideType>& type = spec.overrides[static_cast<std::size_t>(own)].slides.type;
    if (type.typed) return type.value;
  }
  return spec.slides.type.value;  // side-mount unless typed
}

bool HangsOnSides(const Spec& spec, const LayoutNode& node) {
  if (node.kind == NodeKind::kDrawer) return Facts(SlideOf(spec, node)).beside;
  return std::ranges::any_of(node.children,
                             [&](const LayoutNode& child) { return HangsOnSides(spec, child); });
}

bool StandsOnSomething(const Spec& spec, const LayoutNode& node) {
  if (node.kind == NodeKind::kColumns) return true;
  if (node.kind != NodeKind::kDrawer) return false;
  return Facts(SlideOf(spec, node)).beneath;
}

// Walks the leaves in reading order, numbering them as the layout does, up to `node`.
struct Finder {
  const LayoutNode* wanted;
  int drawers = 0, blanks = 0, opens = 0;
  std::string first = {};  // the leaves within `wanted`
  std::string last = {};

  SpaceId Number(NodeKind kind) {
    if (kind == NodeKind::kBlank) return {SpaceKind::kBlank, ++blanks};
    if (kind == NodeKind::kOpen) return {SpaceKind::kOpen, ++opens};
    return {SpaceKind::kDrawer, ++drawers};
  }
  void Walk(const LayoutNode& node, bool within) {
    within = within || &node == wanted;
    if (!IsSplit(node.kind)) {
      const std::string id = ToText(Number(node.kind));
      if (!within) return;
      if (first.empty()) first = id;
      last = id;
      return;
    }
    for (const LayoutNode& child : node.children) Walk(child, within);
  }
};

std::string Bound(const Spec& spec, const LayoutNode& child, const Entry<Length>& bound,
                  const char* word, Unit unit) {
  return LabelOf(spec, child) + " " + word + " " + FormatWithUnit(bound.value, unit);
}

// "D1 min 8 in, D3 exact 5 in": the bounds of one kind that children have, at most a handful.
std::string BoundsInTheWay(const Spec& spec, const LayoutNode& node, bool too_long, Unit unit) {
  constexpr int kMost = 6;
  std::string list;
  int count = 0;
  for (const LayoutNode& child : node.children) {
    const Entry<Length>& bound = too_long ? child.size.min : child.size.max;
    const bool exact = child.size.exact.typed;
    if (!exact && !bound.typed) continue;
    if (++count > kMost) continue;
    if (!list.empty()) list += ", ";
    list += exact ? Bound(spec, child, child.size.exact, "exact", unit)
                  : Bound(spec, child, bound, too_long ? "min" : "max", unit);
  }
  if (count > kMost) list += " and " + std::to_string(count - kMost) + " more";
  return list;
}

void ReportLength(const Spec& spec, const LayoutNode& node, const Apportioned& sizes, Unit unit,
                  Diagnostics& out) {
  const bool too_long = sizes.fault == Apportioned::Fault::kTooLong;
  const std::string bounds = BoundsInTheWay(spec, node, too_long, unit);
  std::string message =
      "the fronts of " + LabelOf(spec, node) + " cannot fill their space exactly: they are " +
      FormatWithUnit(sizes.amount, unit) + (too_long ? " too long in all" : " too short in all");
  if (!bounds.empty()) message += " (" + bounds + ")";
  ReportError(out, DiagnosticCode::kDoesNotClose, node.place, std::move(message),
              too_long ? "reduce a \"min\" or \"exact\", remove a front, or make the opening larger"
                       : "raise a \"max\" or \"exact\", or leave the size of one front open");
}

}  // namespace

bool WantsMember(const Spec& spec, const LayoutNode& node) {
  if (node.kind == NodeKind::kColumns) return HangsOnSides(spec, node);
  return std::ranges::any_of(node.children, [&](const LayoutNode& child) {
    return StandsOnSomething(spec, child);
  });
}

ApportionChild ChildOf(const SizeSpec& size, Length pitch) {
  ApportionChild child;
  child.is_exact = size.exact.typed;
  child.exact = size.exact.value + pitch;
  child.has_min = size.min.typed;
  child.has_max = size.max.typed;
  if (child.has_min) child.min = size.min.value + pitch;
  if (child.has_max) child.max = size.max.value + pitch;
  if (size.weight.typed) child.weight = size.weight.value;
  return child;
}

ApportionScheme SchemeOf(const GraduateSpec& graduate) {
  ApportionScheme scheme;
  scheme.scheme = graduate.scheme.value;
  for (const Entry<Rational>& share : graduate.shares) scheme.shares.push_back(share.value);
  scheme.has_first = graduate.first.typed;
  scheme.first = graduate.first.value;
  scheme.step = graduate.step.value;
  scheme.ratio = graduate.ratio.value;
  return scheme;
}

std::string LabelOf(const Spec& spec, const LayoutNode& node) {
  if (&node == &spec.layout && IsSplit(node.kind)) return "the bank";
  Finder finder{&node};
  finder.Walk(spec.layout, false);
  if (!IsSplit(node.kind)) return finder.first;
  return std::string(node.kind == NodeKind::kRows ? "the rows " : "the columns ") + finder.first +
         " to " + finder.last;
}

void ReportApportion(const Spec& spec, const LayoutNode& node, const Apportioned& sizes, Unit unit,
                     Diagnostics& out) {
  using Fault = Apportioned::Fault;
  const LayoutNode& child = node.children[sizes.child < 0 ? 0 : static_cast<std::size_t>(sizes.child)];
  switch (sizes.fault) {
    case Fault::kNone: return;
    case Fault::kTooLong:
    case Fault::kTooShort: return ReportLength(spec, node, sizes, unit, out);
    case Fault::kZero:
      return ReportError(out, DiagnosticCode::kDoesNotClose, child.place,
                         LabelOf(spec, child) + " would work out to zero or less",
                         "give it a \"min\", or graduate the fronts less steeply");
    case Fault::kCrossed:
      return ReportError(out, DiagnosticCode::kConflict, child.size.min.place,
                         "\"min\" of " + LabelOf(spec, child) +
                             " is above its \"max\" once both are rounded to whole increments",
                         "reduce \"min\", raise \"max\", or give the size as \"exact\"");
    case Fault::kNoRatio:
      return ReportError(out, DiagnosticCode::kDoesNotClose, node.graduate.first.place,
                         "no ratio lets the others follow a first size of " +
                             FormatWithUnit(node.graduate.first.value, unit),
                         "make \"first\" smaller");
    case Fault::kTooFine:
      return ReportError(out, DiagnosticCode::kTooBig, node.graduate.ratio.place,
                         "the ratio has too many digits for so many fronts",
                         "round the ratio, or split the bank");
  }
}

namespace {

// What is left over when all equal sizes are the smaller of two; nothing where they are one, or
// `alike` does not go with their keys.
std::optional<Length> RemainderAlike(const LayoutNode& node, const Apportioned& sizes,
                                     Length step) {
  if (node.graduate.scheme.value != Graduation::kEqual) return std::nullopt;
  Length remainder = sizes.remainder;
  for (std::size_t i = 0; i < node.children.size(); ++i) {
    const SizeSpec& typed = node.children[i].size;
    if (typed.min.typed || typed.max.typed || typed.weight.typed) return std::nullopt;
    if (sizes.shares[i].extra) remainder += step;
  }
  if (remainder == sizes.remainder) return std::nullopt;
  return remainder;
}

}  // namespace

void NoteSplit(const Spec& spec, const LayoutNode& node, const Apportioned& sizes, Length step,
               Bank& bank) {
  using Kind = SolveNote::Kind;
  const auto note = [&](Kind kind, Length amount) {
    bank.notes.push_back({kind, LabelOf(spec, node), amount, node.place});
  };
  if (sizes.all_exact && !sizes.remainder.IsZero()) note(Kind::kDoesNotClose, sizes.remainder);
  if (sizes.first_moved) note(Kind::kFirstMoved, sizes.shares.front().size);
  const std::optional<Length> remainder = RemainderAlike(node, sizes, step);
  if (remainder) note(Kind::kTwoSizes, *remainder);
}

}  // namespace tillwright
