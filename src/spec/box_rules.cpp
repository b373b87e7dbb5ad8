#include "spec/box_rules.h"

#include <functional>

#include "spec/kinds.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

const std::string kNoMaterial;

// The drawer's own entry, else the bank's where it may be inherited.
template <class T>
const Entry<T>& Merged(const Entry<T>& own, const Entry<T>& bank, bool inherit = true) {
  static const Entry<T> kNothing;
  if (own.typed) return own;
  return inherit ? bank : kNothing;
}

Entry<Length> Or(const Entry<Length>& entry, const Default& fallback, Unit unit) {
  return entry.typed ? entry : Entry<Length>(fallback.In(unit));
}

SlideType BankSlideType(const Spec& spec) {
  return spec.slides.type.typed ? spec.slides.type.value : SlideType::kSideMount;
}

const std::string* MaterialOf(const Entry<std::string>& entry) {
  return entry.typed ? &entry.value : &kNoMaterial;
}

// One merge for the bank (own empty) and for every drawer.
class Merge {
 public:
  Merge(const Spec& spec, const OverrideSpec& own)
      : spec_(spec), own_(own), unit_(spec.units.value) {
    rules_.slide = own.slides.type.typed ? own.slides.type.value : BankSlideType(spec);
    same_slide_ = rules_.slide == BankSlideType(spec);
  }

  BoxRules Run() {
    Slides();
    Corner();
    Bottom();
    Heights();
    return rules_;
  }

 private:
  void Slides() {
    const SlideSpec& own = own_.slides;
    const SlideSpec& bank = spec_.slides;
    const SlideFacts& fallback = Facts(rules_.slide);
    const auto pick = [&](Entry<Length> SlideSpec::*key, const Default& otherwise) {
      return Or(Merged(own.*key, bank.*key, same_slide_), otherwise, unit_);
    };
    rules_.clearance = pick(&SlideSpec::clearance, fallback.clearance);
    rules_.deduct = pick(&SlideSpec::deduct, defaults::kDeduct);
    rules_.side_max = pick(&SlideSpec::side_max, defaults::kSideMax);
    rules_.behind = pick(&SlideSpec::behind, fallback.behind);
    rules_.line = pick(&SlideSpec::line, fallback.line);
    const Entry<std::string>& rating = Merged(own.rating, bank.rating, same_slide_);
    if (rating.typed) rules_.rating = &rating.value;
    rules_.slide_length = Merged(own.length, bank.length, same_slide_ && !own.length_auto);
    if (own.lengths_typed) {
      rules_.series = &own.lengths;
    } else if (same_slide_ && bank.lengths_typed) {
      rules_.series = &bank.lengths;
    }
    const auto clear = [&](Entry<Length> BoxSpec::* key, const Default& otherwise) {
      return Or(Merged(own_.box.*key, spec_.box.*key, same_slide_), otherwise, unit_);
    };
    rules_.clear_below = clear(&BoxSpec::clear_below, fallback.below);
    rules_.clear_above = clear(&BoxSpec::clear_above, fallback.above);
  }

  void Corner() {
    const BoxSpec& own = own_.box;
    const BoxSpec& bank = spec_.box;
    rules_.side =
        Or(Merged(own.side.thickness, bank.side.thickness), defaults::kBoxSide, unit_);
    rules_.end = Merged(own.end.thickness, bank.end.thickness);
    rules_.joint = Merged(own.corner.joint, bank.corner.joint).value;  // butt when nobody says
    const CornerFacts& has = Facts(rules_.joint);
    rules_.joint_depth = Merged(own.corner.depth, bank.corner.depth, has.depth);
    rules_.lap = Merged(own.corner.lap, bank.corner.lap, has.lap);
    rules_.back_setback = Merged(own.corner.back_setback, bank.corner.back_setback, has.setback);
    const Entry<std::string>& side = Merged(own.side.material, bank.side.material);
    const Entry<std::string>& end = Merged(own.end.material, bank.end.material);
    rules_.side_material = MaterialOf(side);
    rules_.end_material = end.typed ? MaterialOf(end) : rules_.side_material;
  }

  void Bottom() {
    const BottomSpec& own = own_.box.bottom;
    const BottomSpec& bank = spec_.box.bottom;
    rules_.fit = Merged(own.fit, bank.fit).value;  // groove when nobody says
    const bool let_in = Facts(rules_.fit).cut.has_value();
    rules_.bottom = Or(Merged(own.thickness, bank.thickness), defaults::kBottomThickness, unit_);
    rules_.groove = Or(Merged(own.depth, bank.depth, let_in), defaults::kGrooveDepth, unit_);
    rules_.play = Or(Merged(own.play, bank.play, let_in), defaults::kPlay, unit_);
    if (Facts(rules_.fit).set_up) {
      rules_.up = Or(Merged(own.up, bank.up, same_slide_), Facts(rules_.slide).up, unit_);
      rules_.open_back = Merged(own.open_back, bank.open_back).value;
    }
    rules_.bottom_material = MaterialOf(Merged(own.material, bank.material));
  }

  void Heights() {
    const BoxSpec& own = own_.box;
    const BoxSpec& bank = spec_.box;
    rules_.height = Merged(own.height, bank.height, !own.heights_typed);
    rules_.depth = Merged(own.depth, bank.depth);
    if (own.heights_typed) {
      rules_.heights = &own.heights;
    } else if (bank.heights_typed) {
      rules_.heights = &bank.heights;
    }
  }

  const Spec& spec_;
  const OverrideSpec& own_;
  Unit unit_;
  bool same_slide_ = true;
  BoxRules rules_;
};

// Reports `entry` if it was typed for a choice that does not have it.
template <class T>
void Refuse(const Entry<T>& entry, bool has, std::string_view key, std::string_view choice,
            std::string hint, Diagnostics& out) {
  if (!entry.typed || has) return;
  ReportError(out, DiagnosticCode::kNotApplicable, entry.place,
              "\"" + std::string(key) + "\" does not belong to \"" + std::string(choice) + "\"",
              std::move(hint));
}

// The words of the kinds that have something: "rabbet and dado".
template <class Row, std::size_t kRows, class Has>
std::string Those(const std::array<Row, kRows>& rows, Has has) {
  std::vector<std::string_view> words;
  for (const Row& row : rows) {
    if (std::invoke(has, row)) words.push_back(row.word);
  }
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (i > 0) text += i + 1 < words.size() ? ", " : " and ";
    text += words[i];
  }
  return text;
}

void CheckSlides(const SlideSpec& typed, SlideType type, Diagnostics& out) {
  const bool inside = Facts(type).width == WidthRule::kInside;
  const std::string_view word = Word(type);
  Refuse(typed.clearance, !inside, "clearance", word, "use \"deduct\" for undermount slides", out);
  Refuse(typed.deduct, inside, "deduct", word, "use \"clearance\", the space at each side", out);
  Refuse(typed.side_max, inside, "side_max", word, "take it out: only undermount slides have it",
         out);
}

void CheckCorner(const CornerSpec& typed, CornerJoint joint, Diagnostics& out) {
  const CornerFacts& has = Facts(joint);
  Refuse(typed.depth, has.depth, "depth", has.word,
         Those(kCornerJoints, &CornerFacts::depth) + " joints have a depth", out);
  Refuse(typed.lap, has.lap, "lap", has.word,
         "only a " + Those(kCornerJoints, &CornerFacts::lap) + " has a lap", out);
  Refuse(typed.back_setback, has.setback, "back_setback", has.word,
         Those(kCornerJoints, &CornerFacts::setback) + " joints let the box back be set in", out);
}

void CheckBottom(const BottomSpec& typed, BottomFit fit, Diagnostics& out) {
  const BottomFacts& has = Facts(fit);
  const std::string word = std::string(has.word) + " bottom";
  Refuse(typed.up, has.set_up, "up", word, "only a bottom in a groove can be raised", out);
  Refuse(typed.open_back, has.set_up, "open_back", word,
         "only a bottom in a groove can run out under the box back", out);
  Refuse(typed.depth, has.cut.has_value(), "depth", word,
         "an applied bottom has no groove or rabbet", out);
  Refuse(typed.play, has.cut.has_value(), "play", word, "an applied bottom has no groove or rabbet",
         out);
}

void CheckOne(const SlideSpec& slides, const BoxSpec& box, const BoxRules& rules,
              Diagnostics& out) {
  CheckSlides(slides, rules.slide, out);
  CheckCorner(box.corner, rules.joint, out);
  CheckBottom(box.bottom, rules.fit, out);
}

void CheckBack(const BackSpec& back, Diagnostics& out) {
  const BackFacts& has = Facts(back.fit.value);
  const std::string word = std::string(has.word) + " back";
  Refuse(back.lap, has.lap, "lap", word, "only a back in a rabbet has a \"lap\"", out);
  Refuse(back.inset, has.inset, "inset", word, "only a back in a groove is set in from the rear",
         out);
  Refuse(back.depth, has.inset, "depth", word,
         "only a back in a groove has a depth; a rabbet has a \"lap\"", out);
  Refuse(back.play, has.cut.has_value(), "play", word, "only a back in a rabbet or groove has play",
         out);
}

void CheckCase(const CaseSpec& casework, Diagnostics& out) {
  CheckBack(casework.back, out);
  const CaseJointFacts& has = Facts(casework.joint.type.value);
  const auto let_in = [](const CaseJointFacts& row) { return row.cut.has_value(); };
  Refuse(casework.joint.depth, let_in(has), "depth", has.word,
         Those(kCaseJoints, let_in) + " joints have a depth", out);
  Refuse(casework.joint.tongue, has.tongue, "tongue", has.word,
         "only a " + Those(kCaseJoints, &CaseJointFacts::tongue) + " joint has a tongue", out);
}

const OverrideSpec kNoOverride;

}  // namespace

BoxRules BankRules(const Spec& spec) { return Merge(spec, kNoOverride).Run(); }

BoxRules DrawerRules(const Spec& spec, const OverrideSpec& own) { return Merge(spec, own).Run(); }

bool SameSizes(const BoxRules& a, const BoxRules& b) {
  const auto same = [](const Entry<Length>& one, const Entry<Length>& other) {
    return one.typed == other.typed && (!one.typed || one.value == other.value);
  };
  const auto same_list = [](const std::vector<Entry<Length>>* one,
                            const std::vector<Entry<Length>>* other) {
    if (one == nullptr || other == nullptr) return one == other;
    return std::ranges::equal(*one, *other, {}, &Entry<Length>::value, &Entry<Length>::value);
  };
  const auto rating = [](const BoxRules& rules) {
    return rules.rating == nullptr ? std::string_view() : std::string_view(*rules.rating);
  };
  return same(a.slide_length, b.slide_length) && same(a.height, b.height) &&
         same(a.depth, b.depth) && same_list(a.series, b.series) &&
         same_list(a.heights, b.heights) && rating(a) == rating(b);
}

void CheckApplicable(const Spec& spec, Diagnostics& out) {
  if (spec.casework) CheckCase(*spec.casework, out);
  CheckOne(spec.slides, spec.box, BankRules(spec), out);
  for (const OverrideSpec& own : spec.overrides) {
    CheckOne(own.slides, own.box, DrawerRules(spec, own), out);
  }
}

}  // namespace tillwright
