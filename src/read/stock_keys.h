// The keys of the stock that parts are cut from; keys.cpp has the rest.
#ifndef TILLWRIGHT_READ_STOCK_KEYS_H_
#define TILLWRIGHT_READ_STOCK_KEYS_H_

#include <array>

#include "read/key_target.h"

namespace tillwright {

inline constexpr std::array kStockListKeys{
    KeyRow{"kerf", "length-or-zero", "Width of the saw cut.", defaults::kKerf,
           kInto<&StockListSpec::kerf>},
    KeyRow{"trim", "length-or-zero", "Taken off each edge of a sheet first, saw cut included.",
           defaults::kTrim, kInto<&StockListSpec::trim>},
    KeyRow{"stages", "stages", "Most stages of cutting; each stage cuts one way only.",
           "as many as it takes", kInto<&StockListSpec::stages>},
    KeyRow{"waste", "ratio", "Extra to buy of solid wood beyond the layouts, in percent.", "10",
           kInto<&StockListSpec::waste>},
    KeyRow{"sheets", "list:stock-piece", "Sheets that can be bought, and offcuts on hand.",
           "one of 96 by 48 in, or 2440 by 1220 mm"},
    KeyRow{"boards", "list:stock-piece", "Boards that can be bought or are on hand.",
           "one of 96 by 6 in, or 2400 by 150 mm"},
};

inline constexpr std::array kStockPieceKeys{
    KeyRow{"name", "text", "What it is called.", kNone, kInto<&StockPieceSpec::name>},
    KeyRow{"material", "text", "What it is made of.", "any", kInto<&StockPieceSpec::material>},
    KeyRow{"thickness", "length", "Thickness; of a board before it is planed.", "any",
           kInto<&StockPieceSpec::thickness>},
    KeyRow{"length", "length", "Along the grain.", kNone, kInto<&StockPieceSpec::length>,
           kRequired},
    KeyRow{"width", "length", "Across the grain.", kNone, kInto<&StockPieceSpec::width>, kRequired},
    KeyRow{"count", "count", "How many there are.", "as many as needed; 1 when on hand",
           kInto<&StockPieceSpec::count>},
    KeyRow{"on_hand", "flag", "In the shop already: used before any is bought.", "false",
           kInto<&StockPieceSpec::on_hand>},
    KeyRow{"price", "ratio", "What one costs.", kNone, kInto<&StockPieceSpec::price>},
    KeyRow{"defects", "list:defect", "Defects along the length to cut around.", kNone},
};

inline constexpr std::array kDefectKeys{
    KeyRow{"from", "length-or-zero", "From its left end.", "0", kInto<&DefectSpec::from>},
    KeyRow{"to", "length", "From its left end.", kNone, kInto<&DefectSpec::to>, kRequired},
};

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_STOCK_KEYS_H_
