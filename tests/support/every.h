// Every value of a choice, for loops of tests.
#ifndef TILLWRIGHT_TESTS_SUPPORT_EVERY_H_
#define TILLWRIGHT_TESTS_SUPPORT_EVERY_H_

#include <cstddef>
#include <vector>

#include "tillwright/words.h"

namespace tillwright::testing {

template <class E>
std::vector<E> Every() {
  std::vector<E> values;
  for (std::size_t i = 0; i < Words<E>().size(); ++i) values.push_back(static_cast<E>(i));
  return values;
}

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_EVERY_H_
