// Reading what hangs in the bank: the layout tree, its leaves, and their boxes and slides.
#ifndef TILLWRIGHT_READ_LAYOUT_READER_H_
#define TILLWRIGHT_READ_LAYOUT_READER_H_

#include "read/object_reader.h"

namespace tillwright {

// `pull` of a front or of the fronts, if it is there.
void ReadPull(ObjectReader& object, PullSpec& out);
void ReadSlides(ObjectReader& object, SlideSpec& out);
void ReadBox(ObjectReader& object, BoxSpec& out);

// `drawers` or `layout`, with what belongs to them at the top level, into spec.layout and
// spec.leaves.
void ReadLayout(ObjectReader& top, Spec& spec);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_LAYOUT_READER_H_
