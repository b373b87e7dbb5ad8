#include "read/stock_reader.h"

namespace tillwright {
namespace {

void ReadDefects(ObjectReader& piece, const Entry<Length>& length, std::vector<DefectSpec>& out) {
  const std::vector<JsonValue>* list = piece.List("defects");
  if (list == nullptr) return;
  for (const JsonValue& value : *list) {
    ObjectReader o(piece.context(), value, "defect");
    DefectSpec& defect = out.emplace_back();
    o.LengthOf("from", Sign::kZeroOrMore, defect.from);
    if (o.Require("to") != nullptr) o.LengthOf("to", Sign::kPositive, defect.to);
    if (!defect.to.typed || !length.typed) continue;
    if (defect.to.value <= defect.from.value || defect.to.value > length.value) {
      ReportError(o.context().diagnostics, DiagnosticCode::kNumberRange, value.place,
                  "a defect must end after it begins, and within the piece's length",
                  "measure both from the left end");
    }
  }
}

void ReadPieces(ObjectReader& stock, std::string_view key, std::vector<StockPieceSpec>& out) {
  const std::vector<JsonValue>* list = stock.List(key);
  if (list == nullptr) return;
  for (const JsonValue& value : *list) {
    ObjectReader o(stock.context(), value, "stock-piece");
    if (!o.ok()) continue;
    StockPieceSpec& piece = out.emplace_back();
    o.Text("name", piece.name);
    o.Text("material", piece.material);
    o.LengthOf("thickness", Sign::kPositive, piece.thickness);
    if (o.Require("length") != nullptr) o.LengthOf("length", Sign::kPositive, piece.length);
    if (o.Require("width") != nullptr) o.LengthOf("width", Sign::kPositive, piece.width);
    o.WholeNumber("count", 1, 1000, piece.count);
    o.Flag("on_hand", piece.on_hand);
    o.Ratio("price", piece.price);
    ReadDefects(o, piece.length, piece.defects);
  }
}

}  // namespace

void ReadStock(ObjectReader& top, StockListSpec& out) {
  const JsonValue* value = top.Find("stock");
  if (value == nullptr) return;
  ObjectReader o(top.context(), *value, "stock-list");
  if (!o.ok()) return;
  out.typed = true;
  o.LengthOf("kerf", Sign::kZeroOrMore, out.kerf);
  o.LengthOf("trim", Sign::kZeroOrMore, out.trim);
  o.WholeNumber("stages", 1, 10, out.stages);
  o.Ratio("waste", out.waste);
  ReadPieces(o, "sheets", out.sheets);
  ReadPieces(o, "boards", out.boards);
}

}  // namespace tillwright
