#include "stock/glue_up.h"

#include "spec/defaults.h"

namespace tillwright {

void GlueUp(CutLine& line, Length widest, const GlueUpSpec& spec, const Bank& bank) {
  const Length board = spec.typed ? spec.board.value : widest;
  const Length joint = LengthOr(spec.joint, defaults::kJointing, bank.units);
  line.boards = 1;
  line.board_width = Length();
  if (line.rough_width <= board || board <= 2 * joint) return;
  const Length each = board - joint;
  const std::int64_t n = CeilTo(line.rough_width - joint, each).picometers() / each.picometers();
  const Length total = line.rough_width + (n - 1) * joint;
  const Length share = total - (n - 1) * PartBelow(total, n);  // the largest of equal ones
  line.boards = static_cast<int>(n);
  line.board_width = Min(CeilTo(share, bank.round), board);
}

}  // namespace tillwright
