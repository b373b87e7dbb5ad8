// Finds a place for the label of everything in a panel: beyond the edges, on the cuts, in the
// parts.
#ifndef TILLWRIGHT_DRAW_STOCK_PANEL_LABELS_H_
#define TILLWRIGHT_DRAW_STOCK_PANEL_LABELS_H_

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "draw/stock/edge_callouts.h"
#include "draw/stock/stock_labels.h"

namespace tillwright {

// A cut as it is drawn.
struct PanelLine {
  PaperSegment line{};  // from its lower or left end
  std::size_t number = 1;
  std::int32_t piece = 0;           // what it cuts up
  std::optional<PaperSide> edge{};  // of the panel that it reaches
  int depth = 0;
  std::optional<TagPlace> tag{};  // out: where its number stands if not beyond the edge
};

// A part, an offcut or a piece drawn by itself.
struct PanelBox {
  PaperBox box{};
  std::vector<std::string> texts{};  // the fullest first
  std::int32_t piece = 0;            // itself
  std::int32_t whole = 0;            // what it is cut from
  bool optional = false;             // its label may be left out
  std::optional<PaperSide> edge{};   // of the panel that its narrow end reaches
  int depth = 0;
  std::optional<Label> label{};  // out: inside it
};

class PanelLabels {
 public:
  // `outline`: of the panel, which the rows of callouts stand beside.
  PanelLabels(const PaperBox& outline, std::vector<PanelLine> lines, std::vector<PanelBox> boxes,
              const TextMetrics& metrics);

  [[nodiscard]] const std::vector<PanelLine>& lines() const { return lines_; }
  [[nodiscard]] const std::vector<PanelBox>& boxes() const { return boxes_; }
  [[nodiscard]] const EdgeCallouts& callouts() const { return callouts_; }
  // Where there was no room, what is to be drawn by itself; each once.
  [[nodiscard]] const std::vector<std::int32_t>& crowded() const { return crowded_; }

 private:
  void PlaceAtEdges();
  void PlaceInside();
  // Labels first what is named in `first`, then the cuts, then the rest. False when a label that
  // must be there found no room; it is then among `first`.
  bool Try(std::vector<std::size_t>& first);
  void PlaceCuts();
  void PlaceLabel(std::size_t box, bool least);
  void Crowded(std::int32_t piece);

  PaperBox outline_;
  std::vector<PanelLine> lines_;
  std::vector<PanelBox> boxes_;
  const TextMetrics& metrics_;
  EdgeCallouts callouts_;
  std::vector<bool> line_outside_;
  std::vector<bool> box_outside_;
  TagField field_;
  std::vector<std::int32_t> crowded_;
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_PANEL_LABELS_H_
