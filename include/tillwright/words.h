// The words that stand for the choices of a spec, one table a choice. The reader, the schema and
// every writer use these and no others.
#ifndef TILLWRIGHT_WORDS_H_
#define TILLWRIGHT_WORDS_H_

#include <span>
#include <string_view>

#include "tillwright/spec.h"

namespace tillwright {

// The words of a choice in the order of its enumeration. Declared for every choice in spec.h.
template <class E>
std::span<const std::string_view> Words();

template <class E>
[[nodiscard]] std::string_view Word(E value) {
  return Words<E>()[static_cast<std::size_t>(value)];
}

template <>
std::span<const std::string_view> Words<Unit>();
template <>
std::span<const std::string_view> Words<FrontStyle>();
template <>
std::span<const std::string_view> Words<Grain>();
template <>
std::span<const std::string_view> Words<SlideType>();
template <>
std::span<const std::string_view> Words<CornerJoint>();
template <>
std::span<const std::string_view> Words<BottomFit>();
template <>
std::span<const std::string_view> Words<Graduation>();
template <>
std::span<const std::string_view> Words<CaseJoint>();
template <>
std::span<const std::string_view> Words<CaseFixing>();
template <>
std::span<const std::string_view> Words<OpenRails>();
template <>
std::span<const std::string_view> Words<BackFit>();
template <>
std::span<const std::string_view> Words<Setting>();
template <>
std::span<const std::string_view> Words<SawnCut>();
template <>
std::span<const std::string_view> Words<Held>();
template <>
std::span<const std::string_view> Words<FrontMatch>();
template <>
std::span<const std::string_view> Words<Edge>();

}  // namespace tillwright

#endif  // TILLWRIGHT_WORDS_H_
