// Reading what hangs in the bank: the layout tree and its leaves.
#ifndef TILLWRIGHT_READ_LAYOUT_READER_H_
#define TILLWRIGHT_READ_LAYOUT_READER_H_

#include "read/object_reader.h"

namespace tillwright {

// `drawers` or `layout`, with what belongs to them at the top level, into spec.layout and
// spec.leaves.
void ReadLayout(ObjectReader& top, Spec& spec);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_LAYOUT_READER_H_
