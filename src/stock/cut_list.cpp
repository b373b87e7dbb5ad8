#include <algorithm>
#include <tuple>

#include "bank/bands.h"
#include "spec/defaults.h"
#include "spec/materials.h"
#include "stock/board_choice.h"
#include "stock/front_runs.h"
#include "stock/glue_up.h"
#include "tillwright/parts.h"

namespace tillwright {
namespace {

Banding BandingOf(SeenEdge banded) {
  switch (banded) {
    case SeenEdge::kFront:
      return {1, 0, "front edge"};
    case SeenEdge::kUpper:
      return {1, 0, "top edge"};
    case SeenEdge::kAll:
      return {2, 2, "all edges"};
    case SeenEdge::kNone:
      break;
  }
  return {};
}

class CutListRule {
 public:
  CutListRule(const Spec& spec, const Bank& bank, const StockListSpec& stock)
      : spec_(spec),
        bank_(bank),
        stock_(stock),
        more_length_(LengthOr(spec.allowance.length, defaults::kAllowanceLength, bank.units)),
        more_width_(LengthOr(spec.allowance.width, defaults::kAllowanceWidth, bank.units)) {}

  std::vector<CutLine> Run() const {
    std::vector<CutLine> lines;
    for (PartKind& kind : PartKinds(bank_)) lines.push_back(Line(std::move(kind)));
    std::ranges::stable_sort(lines, [](const CutLine& a, const CutLine& b) {
      return std::tuple(std::string_view(a.material), -a.thickness, -a.width, -a.length) <
             std::tuple(std::string_view(b.material), -b.thickness, -b.width, -b.length);
    });
    NameRuns(lines);
    return lines;
  }

 private:
  CutLine Line(PartKind kind) const {
    const Part& part = bank_.parts[kind.parts.front()];
    CutLine line;
    line.label = PartKindLabel(bank_, kind);
    line.kind = std::move(kind);
    line.length = part.length;
    line.width = part.width;
    line.thickness = part.thickness;
    line.material = part.material;
    line.grain = part.grain;
    line.solid = IsSolidWood(part.material);
    line.banding =
        BandingOf(BandedEdge(spec_.edge_band, part, bank_.casework && bank_.casework->frame));
    const Length band = spec_.edge_band.thickness.value;
    line.rough_length = part.length - line.banding.across * band;
    line.rough_width = part.width - line.banding.along * band;
    if (line.solid) {
      line.rough_length += more_length_;
      line.rough_width += more_width_;
      GlueUp(line, WidestBoard(stock_, {line.material, line.thickness}, bank_.units), spec_.glue_up,
             bank_);
    }
    return line;
  }

  void NameRuns(std::vector<CutLine>& lines) const {
    const std::vector<FrontRun> runs = MatchedFronts(bank_);
    if (runs.empty()) return;
    const std::vector<std::size_t> line_of = LineOfParts(bank_, lines);
    for (const FrontRun& run : runs) {
      for (const std::size_t part : run.parts) {
        std::vector<std::string>& labels = lines[line_of[part]].runs;
        if (labels.empty() || labels.back() != run.label) labels.push_back(run.label);
      }
    }
  }

  const Spec& spec_;
  const Bank& bank_;
  const StockListSpec& stock_;
  Length more_length_, more_width_;
};

}  // namespace

std::vector<CutLine> CutList(const Spec& spec, const Bank& bank) {
  return CutList(spec, bank, spec.stock);
}

std::vector<CutLine> CutList(const Spec& spec, const Bank& bank, const StockListSpec& stock) {
  return CutListRule(spec, bank, stock).Run();
}

}  // namespace tillwright
