// What the views of a bank are called and how each comes onto sheets: one row a kind.
#ifndef TILLWRIGHT_DRAW_SHEETS_VIEW_TABLE_H_
#define TILLWRIGHT_DRAW_SHEETS_VIEW_TABLE_H_

#include <string_view>

#include "sheet/view.h"
#include "tillwright/draw.h"

namespace tillwright {

class Composer;

struct ViewFacts {
  ViewKind kind;
  std::string_view word;     // that asks for it
  std::string_view caption;  // in title blocks
  bool on_page;              // whether the page of a shop packet shows it
  // Builds it and lays it on sheets. Called in the order of the rows, of those that are wanted.
  void (*place)(Composer&);
};
[[nodiscard]] const ViewFacts& Facts(ViewKind kind);

// The view, called and shown as its kind is.
[[nodiscard]] View As(ViewKind kind, View view);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_SHEETS_VIEW_TABLE_H_
