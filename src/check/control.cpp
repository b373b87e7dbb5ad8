#include "check/control.h"

#include <map>

namespace tillwright {
namespace {

using Key = SpecChange::Key;

bool IsGlobal(Key key) { return key != Key::kGap && key != Key::kEdge && key != Key::kOverlay; }

// The changes that bear on one stack: its own gap's, and those of everything.
std::string TextFor(const std::vector<SpecChange>& advice, const Control* control) {
  constexpr int kMost = 4;
  std::string text;
  int said = 0;
  for (const SpecChange& change : advice) {
    const bool own = control != nullptr && change.key == control->key &&
                     change.node == control->node && change.edge == control->edge;
    if (!own && !IsGlobal(change.key)) continue;
    if (++said > kMost) return text + " and what else the advice says";
    text += (text.empty() ? "" : "; ") + change.text;
  }
  return text;
}

}  // namespace

Control ControlOf(const LayoutIndex& index, const Bank& bank, const StackUp& stack) {
  const auto at = static_cast<std::size_t>(stack.index);
  if (stack.is_overlap) return {Key::kOverlay, {}, bank.overlaps[at].edge};
  const Gap& gap = bank.gaps[at];
  const bool lower = gap.from.kind == GapEnd::Kind::kSpace;
  const bool upper = gap.to.kind == GapEnd::Kind::kSpace;
  if (lower && upper) return {Key::kGap, index.Common(gap.from.index, gap.to.index), Edge::kTop};
  if (bank.style == FrontStyle::kOverlay) return {Key::kOverlay, {}, Edge::kTop};  // worktop
  const bool upright = gap.axis == Axis::kY;
  if (lower) return {Key::kEdge, {}, upright ? Edge::kTop : Edge::kRight};
  return {Key::kEdge, {}, upright ? Edge::kBottom : Edge::kLeft};
}

void SayAdvice(const Spec& spec, const Bank& bank, GapCheck& check) {
  const LayoutIndex index(spec);
  std::map<std::string, Control> controls;
  for (const StackUp& stack : check.stacks) {
    if (stack.verdict == Level::kFail) {
      controls.try_emplace(SubjectOf(bank, stack), ControlOf(index, bank, stack));
    }
  }
  for (Finding& finding : check.findings) {
    if (finding.level != Level::kFail) continue;
    const auto control = controls.find(finding.subject);
    const std::string text =
        TextFor(check.advice, control == controls.end() ? nullptr : &control->second);
    if (!text.empty()) finding.message += ". To do: " + text;
  }
}

}  // namespace tillwright
