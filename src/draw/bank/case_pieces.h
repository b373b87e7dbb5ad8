// The parts of a case beyond sides, bottom, top, back and plain members, as the views show them.
#ifndef TILLWRIGHT_DRAW_BANK_CASE_PIECES_H_
#define TILLWRIGHT_DRAW_BANK_CASE_PIECES_H_

#include "sheet/scale.h"
#include "tillwright/assembly.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// True when a frame of rails and runners stands in a divider's place.
[[nodiscard]] bool IsWebFrame(const Bank& bank, const Divider& member);

// A piece's face from the front; of a worktop only so much as stands near the case.
struct PieceFace {
  Rect rect;
  bool cut_left = false, cut_right = false;  // it goes on there
};
[[nodiscard]] PieceFace FrontFaceOf(const Bank& bank, const CasePiece& piece);

// What is seen from the front: face frame, toe kick, feet, worktop, named as far as there is room.
void AddPiecesInFront(SheetGroup& out, const Bank& bank, const PaperMap& map,
                      const TextMetrics& metrics);

// What an upright plane at `x` cuts, and the web frames' runners and the feet beyond it.
void AddPiecesInSection(SheetGroup& out, const Bank& bank, const Assembly& assembly, Length x,
                        const PaperMap& map);

// A case side as the section sees it: with the notch for the foot.
[[nodiscard]] Polyline SideOutline(const Bank& bank, const PaperMap& map);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_BANK_CASE_PIECES_H_
