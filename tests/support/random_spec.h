// Random specs with nothing left to a default, so that the same one can be written in either unit.
#ifndef TILLWRIGHT_TESTS_SUPPORT_RANDOM_SPEC_H_
#define TILLWRIGHT_TESTS_SUPPORT_RANDOM_SPEC_H_

#include <string>

#include "support/specs.h"

namespace tillwright::testing {

// Writes one random spec. The same seed gives the same piece in both units, lengths on the 1/64 in
// grid so that either text is exact.
class RandomSpec {
 public:
  RandomSpec(std::uint32_t seed, Unit unit) : random_(seed), unit_(unit) {}

  std::string Text() {
    inset_ = random_.Chance(40);
    std::string text = "{\"units\": \"" + std::string(unit_ == Unit::kInch ? "in" : "mm") + "\"";
    text += ", \"round\": " + Len(random_.Pick<Length>({In(1, 32), In(1, 64), In(1, 16)}));
    text += ", \"opening\": {\"width\": " + Len(Sixty(2000, 5000)) + ", \"height\": " +
            Len(Sixty(2500, 6000)) + ", \"depth\": " + Len(Sixty(1200, 1800)) + "}";
    text += ", \"fronts\": {\"style\": \"" + std::string(inset_ ? "inset" : "overlay") +
            "\", \"thickness\": " + Len(Sixty(40, 60)) + ", \"gap\": " + Len(Sixty(4, 12)) + ", \"" +
            (inset_ ? "edge" : "overlay") + "\": " + Edges() + "}";
    text += ", \"slides\": " + Slides() + ", \"box\": " + Box();
    text += ", \"layout\": " + Node(0) + "}";
    return text;
  }

 private:
  static Length In(int n, int d) { return Length::Inches(n, d); }
  Length Sixty(int low, int high) { return In(random_.Int(low, high), 64); }
  std::string Len(Length length) const {
    return "\"" + (unit_ == Unit::kInch ? FormatInches(length) : FormatMillimeters(length)) + "\"";
  }

  std::string Edges() {
    if (random_.Chance(50)) return Len(Sixty(2, 40));
    return "{\"top\": " + Len(Sixty(2, 40)) + ", \"bottom\": " + Len(Sixty(2, 40)) +
           ", \"left\": " + Len(Sixty(2, 40)) + ", \"right\": " + Len(Sixty(2, 40)) + "}";
  }

  std::string Slides() {
    const std::string type = random_.Pick<std::string>(
        {"side-mount", "undermount", "center-mount", "wood-runner"});
    const bool under = type == "undermount";
    return "{\"type\": \"" + type + "\", \"" + (under ? "deduct" : "clearance") + "\": " +
           Len(under ? Sixty(90, 110) : Sixty(1, 34)) + (under ? ", \"side_max\": " + Len(In(5, 8)) : "") +
           ", \"behind\": " + Len(Sixty(0, 60)) + ", \"line\": " + Len(Sixty(0, 40)) +
           ", \"lengths\": [" + Len(In(8, 1)) + ", " + Len(In(12, 1)) + ", " + Len(In(16, 1)) + "]}";
  }

  std::string Box() {
    const std::string joint = random_.Pick<std::string>(
        {"butt", "rabbet", "dado", "half-blind-dovetail", "through-dovetail", "finger"});
    const bool deep = joint == "rabbet" || joint == "dado";
    const std::string fit = random_.Pick<std::string>({"groove", "rabbet", "applied"});
    std::string text = "{\"side\": {\"thickness\": " + Len(Sixty(28, 40)) +
                       "}, \"end\": {\"thickness\": " + Len(Sixty(28, 48)) + "}";
    text += ", \"corner\": {\"joint\": \"" + joint + "\"" +
            (deep ? ", \"depth\": " + Len(Sixty(8, 20)) : "") +
            (joint[0] == 'h' ? ", \"lap\": " + Len(Sixty(6, 14)) : "") +
            (deep && random_.Chance(30) ? ", \"back_setback\": " + Len(Sixty(10, 30)) : "") + "}";
    text += ", \"bottom\": {\"fit\": \"" + fit + "\", \"thickness\": " + Len(Sixty(10, 20));
    if (fit != "applied") {
      text += ", \"depth\": " + Len(Sixty(8, 16)) + ", \"play\": " + Len(Sixty(0, 4));
    }
    if (fit == "groove") {
      text += ", \"up\": " + Len(Sixty(10, 36)) + ", \"open_back\": " +
              (random_.Chance(30) ? "true" : "false");
    }
    return text + "}, \"clear_below\": " + Len(Sixty(0, 30)) + ", \"clear_above\": " +
           Len(Sixty(4, 40)) + "}";
  }

  std::string Node(int depth) {
    if (depth > 0 && (depth > 2 || random_.Chance(60))) return Leaf();
    const bool rows = random_.Chance(60);
    const int n = random_.Int(1, depth == 0 ? 5 : 3);
    std::string text = rows ? "{\"rows\": [" : "{\"columns\": [";
    for (int i = 0; i < n; ++i) text += (i > 0 ? ", " : "") + Node(depth + 1);
    text += "], \"divider\": " + (random_.Chance(50) ? "\"none\"" : Len(Sixty(32, 56)));
    text += ", \"gap\": " + Len(Sixty(4, 12));
    return text + Graduate(n) + "}";
  }

  std::string Leaf() {
    const int kind = random_.Int(1, 10);
    return kind > 8 ? "{\"blank\": {}}" : kind > 7 ? "{\"open\": {}}" : "{\"drawer\": {}}";
  }

  std::string Graduate(int n) {
    switch (random_.Int(0, 4)) {
      case 0: return ", \"graduate\": {\"scheme\": \"geometric\", \"ratio\": \"6/5\"}";
      case 1:
        return ", \"graduate\": {\"scheme\": \"arithmetic\", \"step\": " + Len(Sixty(0, 20)) + "}";
      case 2: {
        std::string shares;
        for (int i = 0; i < n; ++i) shares += (i > 0 ? ", " : "") + std::to_string(random_.Int(3, 6));
        return ", \"graduate\": {\"scheme\": \"shares\", \"shares\": [" + shares + "]}";
      }
      default: return "";
    }
  }

  Random random_;
  Unit unit_;
  bool inset_ = false;
};

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_RANDOM_SPEC_H_
