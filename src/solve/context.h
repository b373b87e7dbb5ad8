// What every construction rule is given: the spec, the bank it fills in, the tracer and the
// diagnostics.
#ifndef TILLWRIGHT_SOLVE_CONTEXT_H_
#define TILLWRIGHT_SOLVE_CONTEXT_H_

#include <string>
#include <string_view>

#include "solve/number.h"
#include "spec/defaults.h"
#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

// A node of the layout as it was laid, for walking along its boundaries afterwards.
struct LaidNode {
  NodeKind kind = NodeKind::kDrawer;
  int first_child = -1;  // children lie next to one another
  int child_count = 0;
  int space = -1;          // leaves: index into Bank::spaces
  int first_divider = -1;  // splits with members: index into Bank::dividers; one less than children
};

template <class T>
struct Context {
  using N = typename T::Number;

  const Spec& spec;
  T& trace;
  Bank& bank;
  Diagnostics& diagnostics;
  N round;
  std::vector<LaidNode> laid = {};

  [[nodiscard]] Unit unit() const { return spec.units.value; }

  // An entry, or its default in the spec's unit.
  N GivenOr(std::string_view key, const Entry<Length>& entry, const Default& fallback) {
    return trace.Given(key, entry.typed ? entry : Entry<Length>(fallback.In(unit())));
  }

  // The same, as a dimension of the key's name.
  N Named(std::string_view key, const Entry<Length>& entry, const Default& fallback) {
    return trace.Name(key, GivenOr(key, entry, fallback));
  }
  N Named(std::string_view key, const Entry<Length>& entry) {
    return trace.Name(key, trace.Given(key, entry));
  }

  // Reports `value` if it is not above zero.
  bool HasRoom(const N& value, std::string_view what, Place place, std::string_view hint) {
    if (Value(value) > Length()) return true;
    std::string message(what);
    message += " works out to ";
    message += FormatWithUnit(Value(value), unit());
    ReportError(diagnostics, DiagnosticCode::kNoRoom, place, std::move(message), std::string(hint));
    return false;
  }
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SOLVE_CONTEXT_H_
