// What stands on the face of a part: its name, the face mark, the grain, front and rear.
#ifndef TILLWRIGHT_DRAW_PART_PART_SHEET_WORDS_H_
#define TILLWRIGHT_DRAW_PART_PART_SHEET_WORDS_H_

#include <string>
#include <vector>

#include "sheet/scale.h"
#include "stock/part_shape.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

struct DrawnFace {
  const Part& part;
  const PartShape& shape;
  const PaperMap& map;
  bool handed = false;  // has a left and a right: front and rear are told
};

// As far as they fit between cuts and holes; what does not is added to `notes`.
void AddFaceWords(SheetGroup& words, std::vector<std::string>& notes, const DrawnFace& face,
                  const TextMetrics& metrics);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_PART_PART_SHEET_WORDS_H_
