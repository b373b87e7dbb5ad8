#include "draw/stick/key.h"

#include <algorithm>
#include <array>
#include <string>

#include "draw/stick/strip_text.h"
#include "sheet/rich_text.h"

namespace tillwright {
namespace {

constexpr std::array<const char*, 3> kSizes{"length", "width", "thickness"};
constexpr double kTitleCap = 2.2;  // mm
constexpr double kPitch = 3.7;     // from line to line
constexpr double kBetweenRows = 0.8;
constexpr double kBetweenColumns = 4;
constexpr double kBelow = 3;       // left free
constexpr double kMostLabel = 48;  // a longer label is broken
constexpr double kHead = 12.5;     // title, a line of words, the columns' heads
constexpr const char* kTitle = "PARTS ON THE STICKS";
constexpr const char* kWords =
    "Names as in the cut list: which strip to use, and from which mark to which.";

LabelStyle Style() { return {.cap_height = kCaptionCap}; }

struct Row {
  std::vector<std::string> label;    // in lines
  std::array<std::string, 3> cells;  // "BOX · Heights: 3/4 to 4 3/4"; empty: not on these sticks
};

class KeyMaker {
 public:
  KeyMaker(const StickSheets& sticks, const StripStyle& style, const PieceRoom& room,
           const TextMetrics& metrics)
      : sticks_(sticks), style_(style), room_(room), metrics_(metrics) {}

  std::vector<Template> Make() {
    for (const StickPart& part : sticks_.parts) AddRow(part);
    SetColumns();
    for (const Row& row : rows_) {
      if (y_ > kHead && y_ + HeightOf(row) + kBelow > room_.height) Finish();
      if (group_.primitives.empty()) Head();
      Draw(row);
    }
    if (!group_.primitives.empty()) Finish();
    return std::move(blocks_);
  }

 private:
  void AddRow(const StickPart& part) {
    Row row;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      if (part.sizes[i]) row.cells[i] = CellOf(*part.sizes[i]);
    }
    if (std::ranges::all_of(row.cells, &std::string::empty)) return;
    row.label = WrapText(metrics_, part.label, Style(), std::min(kMostLabel, room_.width));
    rows_.push_back(std::move(row));
  }

  [[nodiscard]] std::string CellOf(const StickSize& size) const {
    return LaneWord(size.lane) + " · " + sticks_.sticks[size.stick].sign + ": " +
           DistanceText(size.from, style_) + " to " + DistanceText(size.to, style_);
  }

  [[nodiscard]] double WidthOf(const std::string& text) const {
    return MakePlainLabel(metrics_, text, Style(), {}).width;
  }

  // Columns as wide as their widest cells.
  void SetColumns() {
    double x = 0;
    for (const Row& row : rows_) {
      for (const std::string& line : row.label) x = std::max(x, WidthOf(line));
    }
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      columns_[i] = x + kBetweenColumns;
      double widest = WidthOf(kSizes[i]);
      for (const Row& row : rows_) widest = std::max(widest, WidthOf(row.cells[i]));
      x = columns_[i] + widest;
    }
    is_table_ = x <= room_.width;
  }

  [[nodiscard]] double HeightOf(const Row& row) const {
    std::size_t lines = row.label.size();
    if (!is_table_) {
      for (const std::string& cell : row.cells) lines += cell.empty() ? 0U : 1U;
    }
    return static_cast<double>(lines) * kPitch + kBetweenRows;
  }

  void Text(const std::string& text, double x, double y, const LabelStyle& style = Style()) {
    group_.primitives.emplace_back(MakePlainLabel(metrics_, text, style, {x, y}));
  }

  void Head() {
    Text(kTitle, 0, 1.5, {.cap_height = kTitleCap, .weight = TextWeight::kBold});
    y_ = 1.5 + kPitch + 0.4;
    for (const std::string& line : WrapText(metrics_, kWords, Style(), room_.width)) {
      Text(line, 0, y_);
      y_ += kPitch;
    }
    if (!is_table_) return;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      Text(kSizes[i], columns_[i], y_, {.cap_height = kCaptionCap, .weight = TextWeight::kBold});
    }
    y_ += kPitch + kBetweenRows;
  }

  void Draw(const Row& row) {
    double y = y_;
    for (const std::string& line : row.label) {
      Text(line, 0, y);
      if (!is_table_ || &line != &row.label.back()) y += kPitch;
    }
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      if (row.cells[i].empty()) continue;
      if (is_table_) {
        Text(row.cells[i], columns_[i], y);
      } else {
        Text(std::string(kSizes[i]) + ": " + row.cells[i], 3, y,
             {.cap_height = kCaptionCap, .max_width = room_.width - 3});
        y += kPitch;
      }
    }
    y_ += HeightOf(row);
  }

  void Finish() {
    group_.id = "key-" + std::to_string(blocks_.size() + 1);
    group_.title = "Parts on the sticks";
    const PaperBox box = Bounds(group_);
    Shift(group_, -box.left, -box.top);
    blocks_.push_back({std::move(group_), box.Width(), box.Height() + kBelow});
    group_ = {};
    y_ = 0;
  }

  const StickSheets& sticks_;
  const StripStyle& style_;
  const PieceRoom& room_;
  const TextMetrics& metrics_;
  std::vector<Row> rows_;
  std::array<double, 3> columns_{};
  bool is_table_ = false;
  SheetGroup group_;
  double y_ = 0;
  std::vector<Template> blocks_;
};

}  // namespace

std::vector<Template> KeyOf(const StickSheets& sticks, const StripStyle& style,
                            const PieceRoom& room, const TextMetrics& metrics) {
  return KeyMaker(sticks, style, room, metrics).Make();
}

}  // namespace tillwright
