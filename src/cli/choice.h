// Words of the command line, read.
#ifndef TILLWRIGHT_CLI_CHOICE_H_
#define TILLWRIGHT_CLI_CHOICE_H_

#include <algorithm>
#include <string_view>

#include "tillwright/words.h"

namespace tillwright {

// REQUIRES: one of Words<E>().
template <class E>
[[nodiscard]] E ChoiceOf(std::string_view word) {
  const auto words = Words<E>();
  return static_cast<E>(std::ranges::find(words, word) - words.begin());
}

}  // namespace tillwright

#endif  // TILLWRIGHT_CLI_CHOICE_H_
