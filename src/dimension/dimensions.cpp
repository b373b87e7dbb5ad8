#include "tillwright/dimensions.h"

#include <algorithm>
#include <charconv>

#include "dimension/fields.h"
#include "dimension/formula.h"

namespace tillwright {
namespace {

bool TakePrefix(std::string_view& text, std::string_view prefix) {
  if (!text.starts_with(prefix)) return false;
  text.remove_prefix(prefix.size());
  return true;
}

// The dimensions of one thing, and what "." stands for in their formulas.
struct Thing {
  std::string owner;
  std::string head;  // of their paths: "D1.", "part.D1.side."
  Fields fields;
};

// `path` is the one that is sought in it, or empty: all.
Thing NewThing(std::string owner, std::string head, std::string_view path) {
  Thing thing{std::move(owner), std::move(head), {}};
  if (!path.empty()) thing.fields.wanted = path.substr(thing.head.size());
  return thing;
}

Thing OfSpace(const Space& space, std::string_view path = {}) {
  const std::string id = ToText(space.id);
  Thing thing = NewThing(id, id + ".", path);
  AddSpaceFields(space, thing.fields);
  return thing;
}

Thing OfMember(const Divider& member, std::string_view path = {}) {
  const std::string id = ToText(member);
  Thing thing = NewThing(id, id + ".", path);
  AddMemberFields(member, thing.fields);
  return thing;
}

Thing OfPart(const Bank& bank, const Part& part, std::string_view path = {}) {
  Thing thing = NewThing(PartFor(bank, part), "part." + PartId(bank, part) + ".", path);
  AddPartFields(bank, part, thing.fields);
  return thing;
}

Thing OfPiece(const Bank& bank, std::size_t index) {
  const CasePiece& piece = bank.pieces[index];
  Thing thing = NewThing({}, "piece." + std::to_string(index + 1) + ".", {});
  if (piece.space >= 0) {
    thing.owner = ToText(bank.spaces[static_cast<std::size_t>(piece.space)].id);
  } else if (piece.divider >= 0) {
    thing.owner = ToText(bank.dividers[static_cast<std::size_t>(piece.divider)]);
  }
  AddPieceFields(bank, index, thing.fields);
  return thing;
}

// A field, and the owner that its formula speaks of.
struct Found {
  Field field;
  std::string owner;
};

class Registry {
 public:
  explicit Registry(const Bank& bank) : bank_(bank) {}

  std::optional<Found> Find(std::string_view path) const {
    if (path.starts_with("gap.") || path.starts_with("overlap.") || path.starts_with("reveal.")) {
      Thing thing = NewThing({}, {}, path);
      AddGapFields(bank_, thing.fields);
      return In(thing, path);
    }
    std::string_view rest = path;
    if (TakePrefix(rest, "floor.")) return FromFloor(path, rest);
    if (TakePrefix(rest, "part.")) return InPart(rest);
    if (path.starts_with("piece.")) return InPiece(path);
    if (std::optional<Found> found = Numbered(path)) return found;
    Thing thing = NewThing({}, {}, path);
    AddBankFields(bank_, thing.fields);
    if (std::optional<Found> found = In(thing, path)) return found;
    return InPart(path);
  }

  std::vector<std::string> Paths() const {
    std::vector<std::string> paths;
    const auto add = [&](const Thing& thing) {
      for (const Field& field : thing.fields) paths.push_back(thing.head + field.name);
    };
    Thing whole;
    AddBankFields(bank_, whole.fields);
    AddGapFields(bank_, whole.fields);
    add(whole);
    const std::size_t first = paths.size();
    for (const Space& space : bank_.spaces) add(OfSpace(space));
    for (const Divider& member : bank_.dividers) add(OfMember(member));
    const std::size_t last = paths.size();
    for (std::size_t i = first; bank_.casework && i < last; ++i) {
      if (IsHeight(paths[i])) paths.push_back("floor." + paths[i]);
    }
    for (const Part& part : bank_.parts) add(OfPart(bank_, part));
    for (std::size_t i = 0; i < bank_.pieces.size(); ++i) add(OfPiece(bank_, i));
    return paths;
  }

 private:
  static std::optional<Found> In(Thing& thing, std::string_view path) {
    if (!TakePrefix(path, thing.head)) return std::nullopt;
    const auto at = std::ranges::find(thing.fields, path, &Field::name);
    if (at == thing.fields.end()) return std::nullopt;
    return Found{std::move(*at), std::move(thing.owner)};
  }

  static bool IsHeight(std::string_view path) {
    return path.ends_with(".y") || path.ends_with(".top") || path.ends_with(".line_y");
  }

  std::optional<Found> FromFloor(std::string_view path, std::string_view rest) const {
    if (!bank_.casework || !IsHeight(rest) || !Find(rest)) return std::nullopt;
    return Found{{std::string(path), {}, std::string(rest) + " + case.base"}, {}};
  }

  // D1, B1, O1, H1, V1 and what follows.
  std::optional<Found> Numbered(std::string_view path) const {
    int number = 0;
    const std::size_t dot = path.find('.');
    if (dot == std::string_view::npos || dot < 2) return std::nullopt;
    const std::string_view id = path.substr(0, dot);
    std::from_chars(path.data() + 1, path.data() + dot, number);
    for (const Space& space : bank_.spaces) {
      if (space.id.number != number || ToText(space.id) != id) continue;
      Thing thing = OfSpace(space, path);
      return In(thing, path);
    }
    for (const Divider& member : bank_.dividers) {
      if (member.number != number || ToText(member) != id) continue;
      Thing thing = OfMember(member, path);
      return In(thing, path);
    }
    return std::nullopt;
  }

  // Ids hold dots, so the part is sought by its id; of several of one id the first has the name.
  std::optional<Found> InPart(std::string_view path) const {
    for (const Part& part : bank_.parts) {
      std::string_view rest = path;
      if (!TakePrefix(rest, PartId(bank_, part)) || !rest.starts_with('.')) continue;
      const std::string whole = "part." + std::string(path);
      Thing thing = OfPart(bank_, part, whole);
      if (std::optional<Found> found = In(thing, whole)) return found;
    }
    return std::nullopt;
  }

  std::optional<Found> InPiece(std::string_view path) const {
    for (std::size_t i = 0; i < bank_.pieces.size(); ++i) {
      if (!path.starts_with("piece." + std::to_string(i + 1) + ".")) continue;
      Thing thing = OfPiece(bank_, i);
      return In(thing, path);
    }
    return std::nullopt;
  }

  const Bank& bank_;
};

// As marks carry them; the datum's is "0".
bool IsSum(std::string_view path) {
  return path == "0" || path.find(' ') != std::string_view::npos;
}

template <class T, class Look>
auto Work(T& tracer, std::string_view formula, std::string_view owner, Look look) {
  return Formula<T, Look>(tracer, formula, owner, look).Run();
}

}  // namespace

std::optional<Length> DimensionValue(const Bank& bank, std::string_view path) {
  const std::optional<Found> found = Registry(bank).Find(path);
  if (found && found->field.value) return found->field.value;
  if (!found && !IsSum(path)) return std::nullopt;
  NoTrace none;
  const auto look = [&](const std::string& leaf) { return DimensionValue(bank, leaf); };
  return found ? Work(none, found->field.formula, found->owner, look) : Work(none, path, "", look);
}

int ExplainDimension(const Bank& bank, Trace& trace, std::string_view path) {
  if (const int known = trace.Find(path); known >= 0) return known;
  const std::optional<Found> found = Registry(bank).Find(path);
  if (found ? found->field.formula.empty() : !IsSum(path)) return -1;
  WithTrace tracer(trace);
  const auto look = [&](const std::string& leaf) -> std::optional<Traced> {
    const int node = ExplainDimension(bank, trace, leaf);
    return node < 0 ? std::nullopt : std::optional(Traced{trace.At(node).value, node, &trace});
  };
  const std::optional<Traced> made =
      found ? Work(tracer, found->field.formula, found->owner, look) : Work(tracer, path, "", look);
  return made ? trace.Name(made->node, std::string(path)) : -1;
}

std::vector<std::string> DimensionPaths(const Bank& bank) { return Registry(bank).Paths(); }

}  // namespace tillwright
