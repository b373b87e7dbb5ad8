// Reading a spec from JSON, and finding places in its text again.
#ifndef TILLWRIGHT_READ_H_
#define TILLWRIGHT_READ_H_

#include <string>
#include <string_view>
#include <vector>

#include "tillwright/diagnostic.h"
#include "tillwright/spec.h"

namespace tillwright {

// Reads a spec (JSON with // and /* */ comments). Reports every fault it can find in one run:
// grammar, unknown and duplicate keys, lengths, choices, keys that exclude one another. Refuses,
// before any work, text over 16 MiB, more than 64 levels of layout, more than 10 000 leaves, lengths
// beyond 100 m. Pure: reads nothing but `text`.
[[nodiscard]] Outcome<Spec> ReadSpec(std::string_view text);

// A place as a maker and an editor name it. Lines and columns count from 1, columns in characters.
struct Location {
  int line = 1;
  int column = 1;
  std::string source;  // the line's text
  int width = 1;       // how many characters of the line the place covers, at least 1
};

// Where `place` is in `text`. A place that is nowhere gives the first line and an empty source.
[[nodiscard]] Location Locate(std::string_view text, Place place);

// The JSON Pointers (RFC 6901) of the keys or values at `places`; "" is the whole spec, or a place
// in text that is not JSON. Reads the text once.
[[nodiscard]] std::vector<std::string> PointersTo(std::string_view text,
                                                  const std::vector<Place>& places);

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_H_
