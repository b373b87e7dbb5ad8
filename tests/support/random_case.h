// Random cases, in inches, with every kind of construction: written as the text of a spec.
#ifndef TILLWRIGHT_TESTS_SUPPORT_RANDOM_CASE_H_
#define TILLWRIGHT_TESTS_SUPPORT_RANDOM_CASE_H_

#include <string>

#include "support/specs.h"

namespace tillwright::testing {

class RandomCase {
 public:
  explicit RandomCase(std::uint32_t seed) : random_(seed) {}

  std::string Text() {
    inset_ = random_.Chance(40);
    std::string text = "{\"round\": \"1/32\", \"case\": " + Case();
    text += ", \"fronts\": {\"style\": \"" + std::string(inset_ ? "inset" : "overlay") +
            "\", \"thickness\": " + Len(40, 56) + ", \"" + (inset_ ? "edge" : "overlay") +
            "\": " + Len(4, 24) + (random_.Chance(40) ? ", \"material\": \"cherry\"" : "") + "}";
    text += ", \"slides\": {\"type\": \"" +
            random_.Pick<std::string>({"side-mount", "undermount", "center-mount", "wood-runner"}) +
            "\"}, \"box\": " + Box();
    if (random_.Chance(50)) text += ", \"glue_up\": {\"board\": " + Len(200, 420) + "}";
    return text + ", \"layout\": " + Layout() + "}";
  }

 private:
  // A length in 64ths of an inch, in quotes.
  std::string Len(int low, int high) {
    return "\"" + FormatInches(Length::Inches(random_.Int(low, high), 64)) + "\"";
  }

  std::string Case() {
    std::string text = "{\"width\": " + Len(1400, 2800) + ", \"side\": " + Len(40, 56) +
                       ", \"bottom\": " + Len(40, 56) + ", \"material\": \"" +
                       (random_.Chance(50) ? "soft maple" : "birch plywood") + "\"";
    const std::string joint = random_.Pick<std::string>({"butt", "dado", "rabbet", "tongue-and-dado"});
    text += ", \"joint\": {\"type\": \"" + joint + "\"" +
            (joint == "butt" ? "" : ", \"depth\": " + Len(8, 24)) + "}";
    text += ", \"back\": " + Back() + Top() + Base();
    if (random_.Chance(50)) {
      text += ", \"face_frame\": {\"thickness\": " + Len(40, 60) + ", \"stile\": " + Len(80, 130) +
              ", \"rail\": " + Len(60, 130) + ", \"bottom_rail\": " + Len(60, 130) +
              ", \"overlap\": " + Len(0, 16) + "}";
    }
    if (random_.Chance(50)) {
      text += ", \"web_frame\": {\"rail\": " + Len(100, 200) + ", \"runner\": " + Len(100, 200) +
              ", \"tenon\": " + Len(10, 30) + "}";
    }
    return text + "}";
  }

  std::string Back() {
    const std::string fit = random_.Pick<std::string>({"rabbet", "groove", "applied", "none"});
    if (fit == "none") return "\"none\"";
    return "{\"fit\": \"" + fit + "\", \"thickness\": " + Len(12, 24) + "}";
  }

  std::string Top() {
    switch (random_.Int(0, 2)) {
      case 0:
        return ", \"top\": \"none\"";
      case 1:
        return ", \"top\": " + Len(40, 56) + ", \"stretchers\": {\"width\": " + Len(120, 260) + "}";
      default:
        return ", \"top\": " + Len(40, 56);
    }
  }

  // Height and depth typed, or from a worktop; toe kick, feet, raise or none.
  std::string Base() {
    std::string text;
    const int base = random_.Int(0, 3);
    if (base == 0)
      text =
          ", \"toe_kick\": {\"height\": " + Len(180, 300) + ", \"setback\": " + Len(120, 220) + "}";
    if (base == 1) text = ", \"feet\": {\"height\": " + Len(60, 300) + "}";
    if (base == 2) text = ", \"raise\": " + Len(0, 200);
    if (random_.Chance(50)) {
      return text + ", \"height\": " + Len(1800, 2600) + ", \"depth\": " + Len(1100, 1700);
    }
    return text + ", \"worktop\": {\"thickness\": " + Len(60, 120) + ", \"" +
           (random_.Chance(50) ? "height" : "leg") + "\": " + Len(2200, 2700) +
           ", \"depth\": " + Len(1300, 1800) + ", \"width\": " + Len(2900, 4500) + "}";
  }

  std::string Box() {
    const std::string joint = random_.Pick<std::string>(
        {"butt", "rabbet", "dado", "half-blind-dovetail", "through-dovetail", "finger"});
    const std::string fit = random_.Pick<std::string>({"groove", "rabbet", "applied"});
    return "{\"side\": {\"thickness\": " + Len(28, 38) +
           "}, \"end\": {\"thickness\": " + Len(28, 48) + "}, \"corner\": {\"joint\": \"" + joint +
           "\"}, \"bottom\": {\"fit\": \"" + fit + "\", \"thickness\": " + Len(10, 20) + "}}";
  }

  std::string Layout() {
    std::string rows;
    const int n = random_.Int(1, 4);
    for (int i = 0; i < n; ++i) {
      rows += i > 0 ? ", " : "";
      rows += random_.Chance(25) ? R"({"columns": [{"drawer": {}}, {"drawer": {}}]})"
                                 : R"({"drawer": {}})";
    }
    return "{\"rows\": [" + rows + "]" +
           (random_.Chance(50) ? ", \"divider\": " + Len(40, 56) : "") + "}";
  }

  Random random_;
  bool inset_ = false;
};

}  // namespace tillwright::testing

#endif  // TILLWRIGHT_TESTS_SUPPORT_RANDOM_CASE_H_
