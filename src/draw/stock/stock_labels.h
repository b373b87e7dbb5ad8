// Labels that find room: inside the box of a part, and the numbers of cuts along them.
#ifndef TILLWRIGHT_DRAW_STOCK_STOCK_LABELS_H_
#define TILLWRIGHT_DRAW_STOCK_STOCK_LABELS_H_

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "sheet/rich_text.h"
#include "tillwright/sheet.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

// All lettering of a layout but the captions of its title: what does not find room at this height
// is drawn elsewhere, never smaller.
inline constexpr double kStockCapHeight = 2.5;  // mm

// The number of a cut: bold, in a capsule that hides what is below it.
class CutTag {
 public:
  CutTag(std::size_t number, const TextMetrics& metrics);

  [[nodiscard]] double Width() const { return width_; }
  static constexpr double kHeight = 5.0;  // mm
  [[nodiscard]] PaperBox At(PaperPoint center) const;
  void Draw(SheetGroup& out, PaperPoint center) const;

 private:
  std::string text_;
  const TextMetrics& metrics_;
  double width_ = kHeight;
};

// The first of the texts that fits the box clear of the obstacles, level or turned up, as near the
// middle as may be; none when none does.
[[nodiscard]] std::optional<Label> LabelInBox(std::span<const std::string> texts,
                                              const PaperBox& box,
                                              std::span<const PaperBox> obstacles,
                                              const TextMetrics& metrics);

// Where the number of a cut goes: on the cut, or beside it and joined to its foot by a leader.
struct TagPlace {
  PaperPoint at;
  PaperPoint foot;

  [[nodiscard]] PaperBox Leader() const;  // what it covers, a little more
};

// What tags keep clear of.
struct TagField {
  PaperBox within;                  // what they stay inside
  std::vector<PaperSegment> lines;  // upright or level: all cuts, and the outline
  std::vector<PaperBox> taken;      // by labels, tags and leaders
};

// A place for the tag of line `own`, nearest to its start: on it if it may be, clear of every other
// line, else beside it; none when there is none.
[[nodiscard]] std::optional<TagPlace> PlaceTag(const TagField& field, std::size_t own,
                                               const CutTag& tag);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_STOCK_LABELS_H_
