// Reads the case of a spec.
#ifndef TILLWRIGHT_READ_CASE_READER_H_
#define TILLWRIGHT_READ_CASE_READER_H_

#include "read/object_reader.h"

namespace tillwright {

void ReadCase(ObjectReader& reader, CaseSpec& out);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_CASE_READER_H_
