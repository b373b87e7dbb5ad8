// Wide solid parts are glued up of boards.
#ifndef TILLWRIGHT_STOCK_GLUE_UP_H_
#define TILLWRIGHT_STOCK_GLUE_UP_H_

#include "tillwright/parts.h"

namespace tillwright {

// Glues a line up where it is wider, as sawn, than the spec's board, or without such than the
// widest there is: as few boards as do, all of one width in whole increments, so that one setting
// of the fence serves; each joint takes its jointing.
void GlueUp(CutLine& line, Length widest, const GlueUpSpec& spec, const Bank& bank);

}  // namespace tillwright

#endif  // TILLWRIGHT_STOCK_GLUE_UP_H_
