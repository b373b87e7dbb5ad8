// Reading how drawers are made: their boxes, slides and the holes for pulls.
#ifndef TILLWRIGHT_READ_BOX_READER_H_
#define TILLWRIGHT_READ_BOX_READER_H_

#include "read/object_reader.h"

namespace tillwright {

// `pull` of a front or of the fronts, if it is there.
void ReadPull(ObjectReader& object, PullSpec& out);
void ReadSlides(ObjectReader& object, SlideSpec& out);
void ReadBox(ObjectReader& object, BoxSpec& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_BOX_READER_H_
