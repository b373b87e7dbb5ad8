// The two number types the construction rules are written over.
//
// A rule is a template over a tracer T and computes with T::Number. With NoTrace that is a plain
// Length and the tracer's calls vanish; with WithTrace every operation also leaves a node in the
// Trace. So there is one expression for the value and for its explanation.
#ifndef TILLWRIGHT_SOLVE_NUMBER_H_
#define TILLWRIGHT_SOLVE_NUMBER_H_

#include <string>
#include <string_view>

#include "tillwright/bank.h"
#include "tillwright/trace.h"

namespace tillwright {

// A Length and the node that says how it came about.
struct Traced {
  Length value;
  int node = -1;
  Trace* trace = nullptr;
};

[[nodiscard]] constexpr Length Value(Length number) { return number; }
[[nodiscard]] inline Length Value(const Traced& number) { return number.value; }

namespace traced {

inline Traced Node(TraceNode::Kind kind, Length value, const Traced& a, const Traced* b,
                   std::int64_t factor) {
  TraceNode node;
  node.kind = kind;
  node.value = value;
  node.left = a.node;
  node.right = b == nullptr ? -1 : b->node;
  node.factor = factor;
  return {value, a.trace->Add(std::move(node)), a.trace};
}

}  // namespace traced

inline Traced operator+(const Traced& a, const Traced& b) {
  return traced::Node(TraceNode::Kind::kAdd, a.value + b.value, a, &b, 0);
}
inline Traced operator-(const Traced& a, const Traced& b) {
  return traced::Node(TraceNode::Kind::kSubtract, a.value - b.value, a, &b, 0);
}
inline Traced operator*(std::int64_t n, const Traced& a) {
  return traced::Node(TraceNode::Kind::kTimes, n * a.value, a, nullptr, n);
}
inline Traced FloorTo(const Traced& a, const Traced& q) {
  return traced::Node(TraceNode::Kind::kFloor, FloorTo(a.value, q.value), a, &q, 0);
}
inline Traced HalfBelow(const Traced& a) {
  return traced::Node(TraceNode::Kind::kHalfBelow, HalfBelow(a.value), a, nullptr, 0);
}
inline Traced HalfAbove(const Traced& a) {
  return traced::Node(TraceNode::Kind::kHalfAbove, HalfAbove(a.value), a, nullptr, 0);
}
inline Traced PartBelow(const Traced& a, std::int64_t n) {
  return traced::Node(TraceNode::Kind::kPartBelow, PartBelow(a.value, n), a, nullptr, n);
}

inline Traced Max(const Traced& a, const Traced& b) {
  return traced::Node(TraceNode::Kind::kGreater, Max(a.value, b.value), a, &b, 0);
}
inline Traced Min(const Traced& a, const Traced& b) {
  return traced::Node(TraceNode::Kind::kLesser, Min(a.value, b.value), a, &b, 0);
}

// The tracer that keeps nothing.
struct NoTrace {
  using Number = Length;
  static constexpr bool kTracing = false;

  static Length Given(std::string_view /*key*/, const Entry<Length>& entry) { return entry.value; }
  static Length Chosen(const char* /*words*/, Length value, Length /*a*/, Length /*b*/) {
    return value;
  }
  static Length Zero() { return {}; }
  static Length Name(SpaceId /*id*/, std::string_view /*path*/, Length number) { return number; }
  static Length Name(const Divider& /*member*/, std::string_view /*path*/, Length number) {
    return number;
  }
  static Length Name(std::string_view /*path*/, Length number) { return number; }
};

// The tracer that keeps everything.
class WithTrace {
 public:
  using Number = Traced;
  static constexpr bool kTracing = true;

  explicit WithTrace(Trace& trace) : trace_(&trace) {}

  Traced Given(std::string_view key, const Entry<Length>& entry) {
    TraceNode node;
    node.kind = entry.typed ? TraceNode::Kind::kTyped : TraceNode::Kind::kDefault;
    node.value = entry.value;
    node.name = key;
    node.place = entry.place;
    return {entry.value, trace_->Add(std::move(node)), trace_};
  }
  // A choice among values, in words, and what it looked at.
  Traced Chosen(std::string words, Length value, const Traced& a, const Traced& b) {
    TraceNode node;
    node.kind = TraceNode::Kind::kChosen;
    node.value = value;
    node.name = std::move(words);
    node.left = a.node;
    node.right = b.node;
    return {value, trace_->Add(std::move(node)), trace_};
  }
  Traced Zero() {
    TraceNode node;
    node.kind = TraceNode::Kind::kChosen;
    node.name = "zero";
    return {Length(), trace_->Add(std::move(node)), trace_};
  }
  Traced Name(SpaceId id, std::string_view path, const Traced& number) {
    return Name((ToText(id) += '.') += path, number);
  }
  Traced Name(const Divider& member, std::string_view path, const Traced& number) {
    return Name((ToText(member) += '.') += path, number);
  }
  Traced Name(std::string_view path, const Traced& number) {
    return {number.value, trace_->Name(number.node, std::string(path)), trace_};
  }

 private:
  Trace* trace_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_NUMBER_H_
