#include "draw/plan/plan_words.h"

#include "spec/kinds.h"

namespace tillwright {

std::string CornerWords(CornerJoint joint) { return std::string(Facts(joint).caption); }

std::string BottomWords(const BoxBuild& build) {
  return std::string(Facts(build.fit).caption) + (build.open_back ? ", OPEN BACK" : "");
}

std::string SlideWords(SlideType type) { return std::string(Facts(type).caption); }

std::string Lowered(std::string_view text) {
  std::string out(text);
  for (char& c : out) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return out;
}

}  // namespace tillwright
