// Reading what parts are cut from: sheets, boards, the saw.
#ifndef TILLWRIGHT_READ_STOCK_READER_H_
#define TILLWRIGHT_READ_STOCK_READER_H_

#include "read/object_reader.h"

namespace tillwright {

void ReadStock(ObjectReader& top, StockListSpec& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_STOCK_READER_H_
