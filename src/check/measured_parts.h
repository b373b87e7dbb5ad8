// Finding what was measured of a part by its drawer.
#ifndef TILLWRIGHT_CHECK_MEASURED_PARTS_H_
#define TILLWRIGHT_CHECK_MEASURED_PARTS_H_

#include <functional>
#include <map>
#include <string_view>
#include <vector>

#include "tillwright/bank.h"
#include "tillwright/spec.h"

namespace tillwright {

class MeasuredParts {
 public:
  // `parts` stays where it is.
  explicit MeasuredParts(const std::vector<MeasuredPart>& parts) {
    for (const MeasuredPart& part : parts) by_id_.try_emplace(part.id, &part);
  }

  // nullptr when nothing was measured of it.
  [[nodiscard]] const MeasuredPart* Of(const Space& space) const {
    if (by_id_.empty()) return nullptr;
    const auto found = by_id_.find(ToText(space.id));
    return found == by_id_.end() ? nullptr : found->second;
  }

  // The size along an axis; nullptr when that was not measured.
  [[nodiscard]] static const Entry<Length>* Along(const MeasuredPart& part, Axis axis) {
    const Entry<Length>& size = axis == Axis::kY ? part.height : part.width;
    return size.typed ? &size : nullptr;
  }

 private:
  std::map<std::string_view, const MeasuredPart*, std::less<>> by_id_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_CHECK_MEASURED_PARTS_H_
