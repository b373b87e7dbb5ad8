#include "tillwright/parts.h"
#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/json_text.h"

namespace tillwright {
namespace {

class StockJsonWriter {
 public:
  explicit StockJsonWriter(const StockPlan& plan) : plan_(plan), json_(4096) {}

  std::string Run() {
    json_.BreakLines(5).Open('{').Text("format", "tillwright-stock/1");
    json_.Text("title", plan_.title).Text("units", Word(plan_.units));
    if (!plan_.banks.empty()) {
      json_.Open("banks", '[');
      for (const std::string& title : plan_.banks) json_.Text(title);
      json_.Close();
    }
    json_.Open("groups", '[');
    for (const StockGroup& group : plan_.groups) Group(group);
    json_.Close().Flag("ok", IsWhole(plan_)).Close();
    std::string text = json_.Take();
    text += '\n';
    return text;
  }

 private:
  void Group(const StockGroup& group) {
    json_.Open('{').Text("material", group.material);
    json_.Millimeters("thickness_mm", group.thickness).Flag("solid", group.solid);
    json_.Millimeters("rough_mm", group.rough).Millimeters("kerf_mm", group.job.kerf);
    json_.Number("sheets", static_cast<std::int64_t>(group.plan.layouts.size()));
    json_.Number("bound", group.plan.bound).Flag("proven", group.plan.proven);
    if (group.plan.price_bound) {
      json_.Key("price_bound").Decimal(static_cast<double>(*group.plan.price_bound) / 100);
    }
    json_.Text("words", NestWords(group.job, group.plan, group.solid ? "board" : "sheet"));
    if (group.solid) {
      json_.Key("volume_m3").Decimal(BoardVolume(plan_, group) / 1e9);
      json_.Number("waste_percent", plan_.waste_percent);
    }
    Uses(group);
    Parts(group);
    json_.Open("runs", '[');
    for (const StockRun& run : group.runs) Run(run);
    json_.Close().Open("panels", '[');
    for (const StockRun& run : group.panels) Run(run);
    json_.Close();
    json_.Open("layouts", '[');
    for (const NestLayout& layout : group.plan.layouts) Layout(group, layout);
    json_.Close().Close();
  }

  void Uses(const StockGroup& group) {
    json_.Open("stock", '[');
    for (const StockUse& use : UsesOf(group)) {
      const NestStock& stock = group.job.stock[static_cast<std::size_t>(use.stock)];
      json_.Open('{').Text("name", stock.label).Number("count", use.count);
      json_.Millimeters("length_mm", stock.along).Millimeters("width_mm", stock.across);
      json_.Millimeters("trim_mm", stock.trim).Flag("on_hand", stock.on_hand);
      json_.Flag("usual", use.stock == group.usual);
      if (stock.price) json_.Key("price").Decimal(static_cast<double>(*stock.price) / 100);
      json_.Close();
    }
    json_.Close();
  }

  void Parts(const StockGroup& group) {
    json_.Open("parts", '[');
    for (std::size_t i = 0; i < group.parts.size(); ++i) {
      const NestPart& sawn = group.job.parts[i];
      json_.Open('{').Text("label", group.parts[i].label).Number("count", sawn.count);
      json_.Millimeters("length_mm", sawn.along).Millimeters("width_mm", sawn.across);
      json_.Flag("may_turn", sawn.may_turn).Number("boards", group.parts[i].boards);
      json_.Number("missing", group.plan.missing[i]).Close();
    }
    json_.Close();
  }

  void Run(const StockRun& run) {
    json_.Open('{').Text("label", run.label);
    if (!run.whole.empty()) json_.Text("stretch_of", run.whole);
    json_.Open("fronts", '[');
    for (const std::string& front : run.fronts) json_.Text(front);
    json_.Close().Text("order", OrderWords(run.match));
    json_.Text("way", run.across ? "edge to edge" : "end to end");
    json_.Millimeters("length_mm", run.length).Millimeters("width_mm", run.width);
    if (run.panel >= 0) json_.Number("part", run.panel);
    json_.Close();
  }

  void Layout(const StockGroup& group, const NestLayout& layout) {
    const auto at = static_cast<std::size_t>(layout.stock);
    const NestStock& stock = group.job.stock[at];
    json_.Open('{').Millimeters("length_mm", stock.along).Millimeters("width_mm", stock.across);
    json_.Millimeters("from_mm", group.begins[at]).Flag("on_hand", stock.on_hand);
    json_.Open("parts", '[');
    for (const NestPiece& piece : layout.pieces) {
      if (piece.kind == NestPieceKind::kPart) Piece(piece, true);
    }
    json_.Close().Open("offcuts", '[');
    for (const NestPiece& piece : layout.pieces) {
      if (piece.kind == NestPieceKind::kOffcut) Piece(piece, false);
    }
    json_.Close().Open("cuts", '[');
    for (const NestCut& cut : CutsOf(layout)) Cut(layout, cut);
    json_.Close().Close();
  }

  void Piece(const NestPiece& piece, bool part) {
    json_.Open('{');
    if (part) json_.Number("part", piece.part).Flag("turned", piece.turned);
    if (piece.place >= 0) json_.Number("run", piece.run).Number("place", piece.place);
    Box(piece.rect);
    json_.Close();
  }

  void Box(const Rect& rect) {
    json_.Millimeters("x_mm", rect.x).Millimeters("y_mm", rect.y);
    json_.Millimeters("width_mm", rect.width).Millimeters("height_mm", rect.height);
  }

  void Cut(const NestLayout& layout, const NestCut& cut) {
    json_.Open('{').Text("way", cut.across ? "across" : "along");
    json_.Millimeters("fence_mm", cut.size).Millimeters("at_mm", cut.at);
    json_.Open("piece", '{');
    Box(layout.pieces[static_cast<std::size_t>(cut.piece)].rect);
    json_.Close().Flag("small", cut.small).Close();
  }

  const StockPlan& plan_;
  JsonText json_;
};

}  // namespace

std::string StockJson(const StockPlan& plan) { return StockJsonWriter(plan).Run(); }

}  // namespace tillwright
