#include <algorithm>
#include <set>

#include "text/utf8_width.h"
#include "tillwright/dimensions.h"
#include "tillwright/keys.h"
#include "tillwright/write.h"

namespace tillwright {
namespace {

using Kind = TraceNode::Kind;

constexpr std::size_t kMostSteps = 400;  // dimensions explained in one answer

// How tightly an expression holds together, for brackets.
enum class Binding : std::uint8_t { kSum, kProduct, kAtom };

class WhyWriter {
 public:
  WhyWriter(const Trace& trace, Unit unit, std::string_view file, std::string_view text)
      : trace_(trace), unit_(unit), file_(file), text_(text) {}

  std::string Run(int node) {
    queue_.push_back(node);
    seen_.insert(node);
    for (std::size_t i = 0; i < queue_.size(); ++i) {
      if (i == kMostSteps) {
        out_ += "… and " + std::to_string(queue_.size() - i) + " more\n";
        break;
      }
      if (i > 0) out_ += '\n';
      Explain(queue_[i]);
    }
    return std::move(out_);
  }

 private:
  std::string In(Length length) const { return FormatLength(length, unit_); }

  // One node: its formula with names, the same with numbers; or where an input comes from.
  void Explain(int index) {
    const TraceNode& node = trace_.At(index);
    const std::string value = FormatWithUnit(node.value, unit_);
    out_ += Label(node) + " = " + value + "\n";
    switch (node.kind) {
      case Kind::kTyped:
        return Typed(node);
      case Kind::kDefault:
        out_ += "    default (common practice, no source)\n";
        return;
      case Kind::kChosen:
        return Chosen(node);
      case Kind::kAdd:
      case Kind::kSubtract:
      case Kind::kTimes:
      case Kind::kFloor:
      case Kind::kHalfBelow:
      case Kind::kHalfAbove:
      case Kind::kPartBelow:
      case Kind::kGreater:
      case Kind::kLesser:
      case Kind::kSame:
        break;
    }
    if (const std::string names = Formula(node, true); names != Label(node)) {
      out_ += "    = " + names + "\n";
    }
    if (node.kind != Kind::kSame) out_ += "    = " + Formula(node, false) + "\n";
    Follow(node);
  }

  static std::string Label(const TraceNode& node) {
    return node.name.empty() ? std::string("(unnamed)") : node.name;
  }

  void Typed(const TraceNode& node) {
    if (!node.place.IsSomewhere() || text_.empty()) {
      out_ += "    given\n";
      return;
    }
    const Location at = Locate(text_, node.place);
    std::string source = at.source;
    source.erase(0, source.find_first_not_of(" \t"));
    out_ += "    given at " + Printable(file_) + ":" + std::to_string(at.line) + ":" +
            std::to_string(at.column) + ":  " + Shortened(Printable(source), 70) + "\n";
  }

  void Chosen(const TraceNode& node) {
    std::string from;
    for (const int input : {node.left, node.right}) {
      if (input < 0 || IsZero(input) || (input == node.left && !from.empty())) continue;
      if (input == node.right && node.right == node.left) continue;
      if (!from.empty()) from += ", ";
      from += Term(input, true, Binding::kSum) + " = " + In(trace_.At(input).value);
    }
    if (!from.empty()) out_ += "    from " + from + "\n";
    Follow(node);
  }

  bool IsZero(int index) const {
    const TraceNode& node = trace_.At(index);
    return node.kind == Kind::kChosen && node.left < 0;
  }

  // Queues the named nodes a formula rests on, through its unnamed steps.
  void Follow(const TraceNode& node) {
    for (const int input : {node.left, node.right}) {
      if (input < 0 || IsZero(input)) continue;
      const TraceNode& at = trace_.At(input);
      if (at.name.empty()) {
        Follow(at);
      } else if (seen_.insert(input).second && FirstOfItsKind(at)) {
        queue_.push_back(input);
      }
    }
  }

  // The same entry looked up for several drawers is explained once.
  bool FirstOfItsKind(const TraceNode& node) {
    if (node.kind != Kind::kTyped && node.kind != Kind::kDefault) return true;
    return inputs_.insert({node.name, node.value, node.place.offset}).second;
  }

  static Binding BindingOf(const TraceNode& node) {
    switch (node.kind) {
      case Kind::kAdd:
      case Kind::kSubtract:
        return Binding::kSum;
      case Kind::kTimes:
      case Kind::kPartBelow:
        return Binding::kProduct;
      case Kind::kTyped:
      case Kind::kDefault:
      case Kind::kChosen:
      case Kind::kFloor:
      case Kind::kHalfBelow:
      case Kind::kHalfAbove:
      case Kind::kGreater:
      case Kind::kLesser:
      case Kind::kSame:
        break;
    }
    return Binding::kAtom;
  }

  // A node inside a formula: its name (or its number), or its own formula in brackets if need be.
  std::string Term(int index, bool names, Binding least) {
    const TraceNode& node = trace_.At(index);
    if (IsZero(index)) return "0";
    if (!node.name.empty()) {
      if (!names) return In(node.value);
      return node.kind == Kind::kChosen ? "[" + node.name + "]" : node.name;
    }
    const std::string inner = Formula(node, names);
    return BindingOf(node) < least ? "(" + inner + ")" : inner;
  }

  std::string Pair(const TraceNode& node, bool names) {
    return "(" + Term(node.left, names, Binding::kSum) + ", " +
           Term(node.right, names, Binding::kSum) + ")";
  }

  std::string Formula(const TraceNode& node, bool names) {
    const auto left = [&](Binding least) { return Term(node.left, names, least); };
    switch (node.kind) {
      case Kind::kAdd:
        if (IsZero(node.left)) return Term(node.right, names, Binding::kSum);
        if (IsZero(node.right)) return left(Binding::kSum);
        return left(Binding::kSum) + " + " + Term(node.right, names, Binding::kSum);
      case Kind::kSubtract:
        if (IsZero(node.right)) return left(Binding::kSum);
        return left(Binding::kSum) + " - " + Term(node.right, names, Binding::kProduct);
      case Kind::kTimes:
        return std::to_string(node.factor) + " x " + left(Binding::kProduct);
      case Kind::kPartBelow:
        return left(Binding::kProduct) + " / " + std::to_string(node.factor);
      case Kind::kFloor:
        return "down to " + Term(node.right, names, Binding::kAtom) + " of (" +
               left(Binding::kSum) + ")";
      case Kind::kHalfBelow:
        return "half of (" + left(Binding::kSum) + ")";
      case Kind::kHalfAbove:
        return "the other half of (" + left(Binding::kSum) + ")";
      case Kind::kGreater:
        return "the greater of " + Pair(node, names);
      case Kind::kLesser:
        return "the lesser of " + Pair(node, names);
      case Kind::kSame:
        return left(Binding::kAtom);
      case Kind::kTyped:
      case Kind::kDefault:
      case Kind::kChosen:
        break;
    }
    return names ? Label(node) : In(node.value);
  }

  const Trace& trace_;
  Unit unit_;
  std::string_view file_;
  std::string_view text_;
  std::vector<int> queue_;
  std::set<int> seen_;
  std::set<std::tuple<std::string, Length, std::uint32_t>> inputs_;
  std::string out_;
};

std::string_view WithoutUnit(std::string_view path) {
  if (path.ends_with("_mm")) path.remove_suffix(3);
  return path;
}

}  // namespace

std::string WhyText(const Bank& bank, Trace& trace, std::string_view path, std::string_view file,
                    std::string_view text) {
  const int node = ExplainDimension(bank, trace, WithoutUnit(path));
  if (node < 0) return {};
  return WhyWriter(trace, bank.units, file, text).Run(node);
}

std::vector<std::string> NearestPaths(const Bank& bank, std::string_view path) {
  const std::vector<std::string> all = DimensionPaths(bank);
  const std::vector<std::string_view> views(all.begin(), all.end());
  const std::vector<std::string_view> nearest = NearestOf(WithoutUnit(path), views, 3);
  return {nearest.begin(), nearest.end()};
}

}  // namespace tillwright
