// Where everything of a stack of dimensions goes: lines, texts, columns of moved texts.
#ifndef TILLWRIGHT_SHEET_DIMENSION_STACK_H_
#define TILLWRIGHT_SHEET_DIMENSION_STACK_H_

#include <cstdint>
#include <optional>
#include <vector>

#include "sheet/dimension.h"
#include "sheet/dimension_frame.h"
#include "sheet/spread.h"

namespace tillwright {

inline constexpr double kSameLevel = 0.002;  // mm: stations this close are one level
inline constexpr double kShelf = 1.4;        // mm of leader before a moved text

// Where the text of one segment goes.
enum class TextPlace : std::uint8_t { kNone, kInLine, kInColumn, kBeforeStart, kAfterEnd };

struct Placement {
  TextPlace place = TextPlace::kNone;
  LabelNeed need;
  double along = 0;  // center of the text
};

struct Tier {
  const DimensionChain* chain = nullptr;
  std::vector<Placement> placements;  // one a segment
  double line = 0;                    // out
  double column = 0;                  // out, near side of the moved texts
  double far = 0;                     // out, the farthest reach of line and texts
};

struct Interval {
  double from = 0;
  double to = 0;
  [[nodiscard]] double Length() const { return to - from; }
  [[nodiscard]] double Middle() const { return (from + to) / 2; }
};

// Decides where everything goes; StackDrawing (dimension.cpp) draws it.
class StackLayout {
 public:
  StackLayout(const DimensionStack& stack, const DimensionStyle& style, const TextMetrics& metrics);

 protected:
  [[nodiscard]] static Interval Segment(const Tier& tier, std::size_t i) {
    return {tier.chain->stations[i], tier.chain->stations[i + 1]};
  }
  [[nodiscard]] static bool IsDimensioned(const Tier& tier, std::size_t i) {
    return i < tier.chain->texts.size() && !tier.chain->texts[i].text.empty();
  }
  // Is the station an end of a segment that carries a dimension?
  [[nodiscard]] static bool IsUsed(const Tier& tier, std::size_t station) {
    return (station > 0 && IsDimensioned(tier, station - 1)) || IsDimensioned(tier, station);
  }
  // Levels of the extension lines that pass tier i on their way out.
  [[nodiscard]] std::vector<double> LevelsBeyond(std::size_t i) const;
  [[nodiscard]] bool IsClear(Interval space, const std::vector<double>& levels) const;
  // The place in the line for a text: the middle, or else the widest stretch between the lines that
  // cross the segment.
  [[nodiscard]] std::optional<double> InLine(Interval segment, double need,
                                             const std::vector<double>& levels) const;
  void PlaceTexts(std::size_t i);
  [[nodiscard]] Placement PlaceText(const Tier& tier, std::size_t s,
                                    const std::vector<double>& levels) const;
  // Below and above a view, the text of an end segment stands beyond the end of the line.
  [[nodiscard]] bool TryBeyondEnd(const Tier& tier, std::size_t s,
                                  const std::vector<double>& levels, Placement& placed) const;
  // From the last station to a text beyond it.
  [[nodiscard]] double Tail() const { return 2.6 + style_.text_gap; }
  // Across the line, of the texts that stand in it.
  [[nodiscard]] static double WidestInLine(const Tier& tier);
  // Does a text in this tier's line stand on the level of one of the inner tier?
  [[nodiscard]] bool IsAbreast(const Tier& inner, const Tier& tier) const;
  void PlaceLine(std::size_t i);
  // Where a moved text wants to be: at the middle of its segment, but for a narrow one at an end of
  // the chain, just beyond that end, where there is most room and no other text.
  [[nodiscard]] double WishOf(const Tier& tier, std::size_t s) const;
  // Places that keep clear of the levels. Where the levels leave too little room between them, the
  // levels are disregarded and their lines are broken at the texts instead.
  [[nodiscard]] std::vector<double> PlacesBetween(std::vector<SpreadItem> texts,
                                                  const std::vector<double>& levels) const;
  void SpreadColumn(std::size_t i);
  // Moves the texts in the line that a slanting leader would come too close to. True if there were
  // any.
  bool MoveTextsInTheWay(std::size_t i);
  [[nodiscard]] bool IsInTheWay(const Tier& tier, const Placement& text) const;
  // Where leaders end and where beside a view they turn level.
  [[nodiscard]] double EndOf(const Tier& tier) const {
    return tier.column - style_.clearance * 0.8;
  }
  [[nodiscard]] double TurnOf(const Tier& tier) const {
    return frame_.IsVertical() ? EndOf(tier) - kShelf : EndOf(tier);
  }
  [[nodiscard]] bool IsNarrow(const Tier& tier, std::size_t s) const {
    return IsDimensioned(tier, s) && Segment(tier, s).Length() < style_.narrow;
  }
  // Next to a narrow segment?
  [[nodiscard]] bool IsCrowded(const Tier& tier, std::size_t station) const {
    return (station > 0 && IsNarrow(tier, station - 1)) || IsNarrow(tier, station);
  }

  const DimensionStack& stack_;
  const DimensionStyle& style_;
  const TextMetrics& metrics_;
  DimensionFrame frame_;
  std::vector<Tier> tiers_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_SHEET_DIMENSION_STACK_H_
