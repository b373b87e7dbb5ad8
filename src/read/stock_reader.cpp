#include "read/stock_reader.h"

#include "spec/defaults.h"

namespace tillwright {
namespace {

void ReadDefects(ObjectReader& piece, const Entry<Length>& length, std::vector<DefectSpec>& out) {
  const std::vector<JsonValue>* list = piece.List("defects");
  if (list == nullptr) return;
  for (const JsonValue& value : *list) {
    ObjectReader o(piece.context(), value, "defect");
    DefectSpec& defect = out.emplace_back();
    o.ReadInto(defect);
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
    o.ReadInto(piece);
    ReadDefects(o, piece.length, piece.defects);
  }
}

// What is trimmed off a sheet's edges must leave something of the size that is bought where none is
// listed.
void CheckTrim(ReadContext& context, const Entry<Length>& trim) {
  const Length width = defaults::kSheetWidth.In(context.unit);
  if (!trim.typed || 2 * trim.value < width) return;
  ReportError(
      context.diagnostics, DiagnosticCode::kNoRoom, trim.place,
      "trimming leaves nothing of a common sheet, " + FormatWithUnit(width, context.unit) + " wide",
      "make \"trim\" smaller: it is taken off each edge");
}

}  // namespace

void ReadStock(ObjectReader& top, StockListSpec& out) {
  const JsonValue* value = top.Find("stock");
  if (value == nullptr) return;
  ObjectReader o(top.context(), *value, "stock-list");
  if (!o.ok()) return;
  out.typed = true;
  o.ReadInto(out);
  ReadPieces(o, "sheets", out.sheets);
  ReadPieces(o, "boards", out.boards);
  CheckTrim(top.context(), out.trim);
}

}  // namespace tillwright
