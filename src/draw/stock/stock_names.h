// What a layout calls its parts and pieces: letters for kinds of parts, P1, P2 … for pieces drawn
// by themselves, and the rows of the key that explain the letters.
#ifndef TILLWRIGHT_DRAW_STOCK_STOCK_NAMES_H_
#define TILLWRIGHT_DRAW_STOCK_STOCK_NAMES_H_

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "tillwright/stock.h"

namespace tillwright {

class StockNames {
 public:
  StockNames(const StockPlan& plan, const StockGroup& group, const NestLayout& layout);

  [[nodiscard]] std::string In(Length length) const;
  [[nodiscard]] std::string Size(Length a, Length b) const;

  // What may stand in a part, an offcut or a piece drawn by itself, the fullest first; the last is
  // the least that must.
  [[nodiscard]] std::vector<std::string> TextsOf(std::int32_t piece) const;
  [[nodiscard]] std::string LetterOf(std::int32_t part) const;

  // A row for each kind of part among the pieces and for each run that they belong to, in order.
  [[nodiscard]] std::vector<std::string> KeyRows(const std::vector<std::int32_t>& pieces) const;

  // Names a piece that is drawn by itself; the same piece once.
  void NamePiece(std::int32_t piece);
  [[nodiscard]] std::string PieceName(std::int32_t piece) const;  // REQUIRES: it was named

  // Whether an offcut is large enough to be sawn safely, and so must show its size.
  [[nodiscard]] static bool IsUseful(const NestPiece& offcut);

 private:
  [[nodiscard]] const NestPiece& At(std::int32_t piece) const {
    return layout_.pieces[static_cast<std::size_t>(piece)];
  }
  [[nodiscard]] std::vector<std::string> PartTexts(const NestPiece& piece) const;
  [[nodiscard]] std::string RunRow(std::int32_t run) const;

  const StockPlan& plan_;
  const StockGroup& group_;
  const NestLayout& layout_;
  std::vector<std::int32_t> kinds_;   // of parts on it, in order: A, B …
  std::vector<std::int32_t> pieces_;  // P1, P2 …
};

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_STOCK_STOCK_NAMES_H_
