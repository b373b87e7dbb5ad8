// Reading how drawers are made: their boxes and slides.
#ifndef TILLWRIGHT_READ_BOX_READER_H_
#define TILLWRIGHT_READ_BOX_READER_H_

#include "read/object_reader.h"

namespace tillwright {

void ReadSlides(ObjectReader& object, SlideSpec& out);
void ReadBox(ObjectReader& object, BoxSpec& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_BOX_READER_H_
