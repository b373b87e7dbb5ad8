// Where the value of a key goes: kInto<&SlideSpec::clearance> in a row of the tables of keys reads
// the key into that member, as its type and the row's tell, an object within into what it names.
#ifndef TILLWRIGHT_READ_KEY_TARGET_H_
#define TILLWRIGHT_READ_KEY_TARGET_H_

#include "read/object_reader.h"
#include "spec/defaults.h"

namespace tillwright {

inline constexpr std::string_view kNone = "";
inline constexpr bool kRequired = true;

namespace key_target {

template <class Owner, class T>
Owner OwnerOf(T Owner::*member);

template <auto kMember>
void Read(ObjectReader& reader, const KeyRow& row, void* owner) {
  using Owner = decltype(OwnerOf(kMember));
  reader.ReadKey(row, static_cast<Owner*>(owner)->*kMember);
}

}  // namespace key_target

template <auto kMember>
inline constexpr KeyTarget kInto{&kOwnerTag<decltype(key_target::OwnerOf(kMember))>,
                                 &key_target::Read<kMember>};

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_KEY_TARGET_H_
