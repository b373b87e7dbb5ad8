// Trace: how each solved dimension came about.
//
// While a bank is solved with a trace, every arithmetic step leaves a node: the operation, its
// operands and its value. Dimensions are named nodes ("D2.box.width"); what they rest on, in the
// end, are typed entries (with their place in the spec), defaults, and choices such as "the longest
// slide that fits". The formula shown to a maker is written from the very nodes that the solver's
// expressions made, so text and number cannot drift apart.
#ifndef TILLWRIGHT_TRACE_H_
#define TILLWRIGHT_TRACE_H_

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "tillwright/diagnostic.h"
#include "tillwright/length.h"

namespace tillwright {

struct TraceNode {
  enum class Kind : std::uint8_t {
    kTyped,      // an entry of the spec: name is its key, place where it stands
    kDefault,    // an entry that was not typed: name is its key
    kChosen,     // a choice: name says which, left and right are what it looked at
    kAdd,        // left + right
    kSubtract,   // left - right
    kTimes,      // factor x left
    kFloor,      // left, down to a multiple of right
    kHalfBelow,  // half of left, rounded down to a picometer
    kHalfAbove,  // the other half
    kPartBelow,  // left / factor, rounded down to a picometer
    kGreater,    // the greater of left and right
    kLesser,     // the lesser
    kSame        // a second name for left
  };
  Kind kind = Kind::kTyped;
  Length value;
  int left = -1;
  int right = -1;
  std::int64_t factor = 0;
  std::string name;  // a dimension's path, an entry's key, or a choice's words; may be empty
  Place place;
};

class Trace {
 public:
  // Adds a node and returns its index.
  int Add(TraceNode node);
  // Names a node as a dimension; a node that has another name already gets a second one.
  int Name(int node, std::string path);
  // The node of a dimension, or -1.
  [[nodiscard]] int Find(std::string_view path) const;
  [[nodiscard]] const TraceNode& At(int node) const {
    return nodes_[static_cast<std::size_t>(node)];
  }
  // The path of every dimension that has been named, in order.
  [[nodiscard]] std::vector<std::string> Paths() const;

 private:
  std::vector<TraceNode> nodes_;
  std::map<std::string, int, std::less<>> paths_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_TRACE_H_
