#include "read/layout_reader.h"

#include <array>

#include "read/box_reader.h"

namespace tillwright {
namespace {

constexpr std::array<std::string_view, 4> kSizeKeys{"exact", "min", "max", "weight"};
constexpr std::array<std::string_view, 5> kNodeKinds{"rows", "columns", "drawer", "blank", "open"};

class LayoutReader {
 public:
  LayoutReader(ReadContext& context, Spec& spec) : context_(context), spec_(spec) {}

  void Plain(ObjectReader& top) {
    LayoutNode& root = spec_.layout;
    root.kind = NodeKind::kRows;
    root.place = top.KeyPlace("drawers");
    ReadSplitKeys(top, root);
    const std::vector<JsonValue>* list = top.List("drawers");
    if (list == nullptr) return;
    RefuseEmpty(*list, root.place, "drawers");
    root.children.reserve(list->size());
    spec_.leaves.reserve(list->size());
    for (const JsonValue& value : *list) {
      if (!HasRoom(value.place)) return;
      LayoutNode& child = root.children.emplace_back();
      child.kind = NodeKind::kDrawer;
      child.place = value.place;
      ReadDrawer(value, child);
    }
    CheckSplit(root);
  }

  void Tree(const JsonValue& value) {
    ReadNode(value, spec_.layout, 1);
    const SizeSpec& size = spec_.layout.size;
    const std::array places{size.exact.place, size.min.place, size.max.place, size.weight.place};
    for (std::size_t i = 0; i < kSizeKeys.size(); ++i) {
      const JsonMember* member =
          value.Find(kSizeKeys[i]);  // beside the node's kind, or in its leaf
      const Place place = member != nullptr ? member->key_place : places[i];
      if (!place.IsSomewhere()) continue;
      ReportError(context_.diagnostics, DiagnosticCode::kConflict, place,
                  "\"" + std::string(kSizeKeys[i]) +
                      "\" on the root of the layout: its size is "
                      "the opening's",
                  "move it to a child, or remove it");
    }
  }

 private:
  void RefuseEmpty(const std::vector<JsonValue>& list, Place place, std::string_view key) {
    if (!list.empty()) return;
    ReportError(context_.diagnostics, DiagnosticCode::kMissingKey, place,
                "\"" + std::string(key) + "\" is empty", "{} is a whole drawer");
  }

  // Reports, once, more leaves than there may be.
  bool HasRoom(Place place) {
    if (spec_.leaves.size() < static_cast<std::size_t>(kMaxDrawers)) return true;
    if (!full_) {
      ReportError(context_.diagnostics, DiagnosticCode::kTooBig, place,
                  "more than 10 000 drawers, blanks and open spaces", "split the job");
    }
    full_ = true;
    return false;
  }

  // --- Leaves -----------------------------------------------------------------------------------

  LeafSpec& NewLeaf(LayoutNode& node) {
    node.leaf = static_cast<int>(spec_.leaves.size());
    return spec_.leaves.emplace_back();
  }

  void ReadDrawer(const JsonValue& value, LayoutNode& node) {
    ObjectReader drawer(context_, value, "drawer");
    LeafSpec& leaf = NewLeaf(node);
    if (!drawer.ok()) return;
    ReadSize(drawer, node.size);
    drawer.ReadInto(leaf);
    ReadLoad(drawer, leaf);
    if (!drawer.Has("box") && !drawer.Has("slides")) return;
    leaf.override_index = static_cast<int>(spec_.overrides.size());
    OverrideSpec& own = spec_.overrides.emplace_back();
    if (const JsonValue* box = drawer.Find("box")) {
      ObjectReader object(context_, *box, "box");
      ReadBox(object, own.box);
    }
    if (const JsonValue* slides = drawer.Find("slides")) {
      ObjectReader object(context_, *slides, "slides");
      ReadSlides(object, own.slides);
    }
  }

  void ReadLoad(ObjectReader& drawer, LeafSpec& leaf) {
    const JsonValue* load = drawer.Find("load");
    if (load == nullptr) return;
    const bool fine =
        load->kind == JsonValue::Kind::kNumber || load->kind == JsonValue::Kind::kString;
    if (!fine) return ReportWrongType(context_, *load, "a weight such as \"20 lb\" or \"9 kg\"");
    leaf.load = {load->text, load->place};
  }

  void ReadPlainLeaf(const JsonValue& value, std::string_view kind, LayoutNode& node) {
    ObjectReader object(context_, value, kind);
    LeafSpec& leaf = NewLeaf(node);
    ReadSize(object, node.size);
    object.ReadInto(leaf);
  }

  // Size keys, merged with those already read beside the leaf.
  void ReadSize(ObjectReader& object, SizeSpec& size) {
    for (const std::string_view key : kSizeKeys) {
      if (!object.Has(key) || !SizeTyped(size, key)) continue;
      ReportError(context_.diagnostics, DiagnosticCode::kConflict, object.KeyPlace(key),
                  "\"" + std::string(key) + "\" is given both in the leaf and in its node",
                  "keep one of the two");
    }
    object.ReadInto(size);
  }

  static bool SizeTyped(const SizeSpec& size, std::string_view key) {
    if (key == "exact") return size.exact.typed;
    if (key == "min") return size.min.typed;
    if (key == "max") return size.max.typed;
    return size.weight.typed;
  }

  // --- Nodes ------------------------------------------------------------------------------------

  void ReadNode(const JsonValue& value, LayoutNode& node, int level) {
    node.place = value.place;
    if (level > kMaxDepth) {
      return ReportError(context_.diagnostics, DiagnosticCode::kTooBig, value.place,
                         "the layout is nested deeper than 64 levels", "flatten it");
    }
    ObjectReader object(context_, value, "node");
    if (!object.ok()) return;
    std::string_view kind;
    for (const std::string_view candidate : kNodeKinds) {
      if (!object.Has(candidate)) continue;
      if (!kind.empty()) {
        ReportError(context_.diagnostics, DiagnosticCode::kConflict, object.KeyPlace(candidate),
                    "\"" + std::string(kind) + "\" and \"" + std::string(candidate) +
                        "\" cannot be used together in one node",
                    "list them in \"rows\" or \"columns\"");
        continue;
      }
      kind = candidate;
    }
    if (kind.empty()) {
      return ReportError(context_.diagnostics, DiagnosticCode::kMissingKey, value.place,
                         "a node of the layout needs \"rows\", \"columns\", \"drawer\", \"blank\" "
                         "or \"open\"");
    }
    if (kind == "rows" || kind == "columns") {
      node.kind = kind == "rows" ? NodeKind::kRows : NodeKind::kColumns;
      ReadSize(object, node.size);
      ReadSplitKeys(object, node);
      ReadChildren(object, kind, node, level);
      return;
    }
    ReadLeafNode(object, kind, node);
  }

  void ReadLeafNode(ObjectReader& object, std::string_view kind, LayoutNode& node) {
    for (const std::string_view key : {"graduate", "divider", "gap"}) {
      if (!object.Has(key)) continue;
      ReportError(context_.diagnostics, DiagnosticCode::kNotApplicable, object.KeyPlace(key),
                  "\"" + std::string(key) + "\" belongs to rows and columns, not to a leaf");
    }
    if (!HasRoom(object.place())) return;
    ReadSize(object, node.size);
    const JsonValue& leaf = *object.Find(kind);
    if (kind == "drawer") {
      node.kind = NodeKind::kDrawer;
      ReadDrawer(leaf, node);
    } else {
      node.kind = kind == "blank" ? NodeKind::kBlank : NodeKind::kOpen;
      ReadPlainLeaf(leaf, kind, node);
    }
  }

  void ReadChildren(ObjectReader& object, std::string_view kind, LayoutNode& node, int level) {
    const std::vector<JsonValue>* list = object.List(kind);
    if (list == nullptr) return;
    RefuseEmpty(*list, object.KeyPlace(kind), kind);
    node.children.reserve(list->size());
    for (const JsonValue& child : *list) {
      if (full_) return;
      ReadNode(child, node.children.emplace_back(), level + 1);
    }
    CheckSplit(node);
  }

  void ReadSplitKeys(ObjectReader& object, LayoutNode& node) {
    object.ReadInto(node);
    if (const JsonValue* divider = object.Find("divider")) {
      node.divider.place = divider->place;
      node.divider.none = IsNone(*divider);
      if (!node.divider.none) {
        ReadLength(context_, *divider, Sign::kPositive, node.divider.thickness);
      }
    }
    if (const JsonValue* graduate = object.Find("graduate")) ReadGraduate(*graduate, node.graduate);
  }

  // --- Graduation -------------------------------------------------------------------------------

  void ReadGraduate(const JsonValue& value, GraduateSpec& out) {
    ObjectReader object(context_, value, "graduate");
    out.place = value.place;
    if (!object.ok()) return;
    object.ReadInto(out);
    if (const std::vector<JsonValue>* shares = object.List("shares")) {
      out.shares_typed = true;
      out.shares_place = object.Find("shares")->place;
      for (const JsonValue& share : *shares) ReadRatio(context_, share, out.shares.emplace_back());
    }
    if (object.Has("scheme") && !out.scheme.typed) return;  // who knows which keys it would have
    const Graduation scheme = out.scheme.value;
    const bool arithmetic = scheme == Graduation::kArithmetic;
    const bool geometric = scheme == Graduation::kGeometric;
    OnlyIn(object, "step", arithmetic, "arithmetic");
    OnlyIn(object, "first", arithmetic || geometric, "arithmetic or geometric");
    OnlyIn(object, "ratio", geometric, "geometric");
    OnlyIn(object, "shares", scheme == Graduation::kShares, "shares");
    if (out.alike.value && scheme != Graduation::kEqual) {
      ReportError(
          context_.diagnostics, DiagnosticCode::kConflict, out.alike.place,
          "\"alike\" cannot be used together with " + std::string(Word(scheme)) + " graduation",
          "remove the scheme, or \"alike\"");
    }
    if (arithmetic) OneOfTwo(object, "step", "first");
    if (geometric) OneOfTwo(object, "ratio", "first");
    if (scheme == Graduation::kShares) object.Require("shares");
  }

  // Nothing may make flexible children differ that are to be alike.
  void CheckAlike(const GraduateSpec& graduate, const LayoutNode& child) {
    if (!graduate.alike.value) return;
    const SizeSpec& size = child.size;
    const auto refuse = [&](bool typed, Place place, std::string_view key) {
      if (!typed) return;
      ReportError(context_.diagnostics, DiagnosticCode::kConflict, place,
                  "\"" + std::string(key) + "\" cannot be used together with \"alike\"",
                  "give the child an \"exact\" size, or remove one of the two");
    };
    refuse(size.min.typed, size.min.place, "min");
    refuse(size.max.typed, size.max.place, "max");
    refuse(size.weight.typed, size.weight.place, "weight");
  }

  void OnlyIn(ObjectReader& object, std::string_view key, bool right, std::string_view scheme) {
    if (right || !object.Has(key)) return;
    ReportError(context_.diagnostics, DiagnosticCode::kNotApplicable, object.KeyPlace(key),
                "\"" + std::string(key) + "\" belongs to " + std::string(scheme) + " graduation",
                "change \"scheme\" to that, or remove the key");
  }

  void OneOfTwo(ObjectReader& object, std::string_view a, std::string_view b) {
    const std::string pair = "\"" + std::string(a) + "\" and \"" + std::string(b) + "\"";
    if (object.Has(a) && object.Has(b)) {
      ReportError(context_.diagnostics, DiagnosticCode::kConflict, object.KeyPlace(b),
                  pair + " cannot be used together", "give one of the two");
    } else if (!object.Has(a) && !object.Has(b)) {
      ReportError(context_.diagnostics, DiagnosticCode::kMissingKey, object.place(),
                  "this graduation needs one of " + pair);
    }
  }

  // What a split and its children's sizes must agree on.
  void CheckSplit(const LayoutNode& node) {
    const bool equal = node.graduate.scheme.value == Graduation::kEqual;
    for (const LayoutNode& child : node.children) {
      const SizeSpec& size = child.size;
      if (!size.exact.typed) CheckAlike(node.graduate, child);
      if (size.exact.typed && (size.min.typed || size.max.typed || size.weight.typed)) {
        ReportError(context_.diagnostics, DiagnosticCode::kConflict, size.exact.place,
                    "\"exact\" cannot be combined with \"min\", \"max\" or \"weight\"",
                    "an exact size needs nothing else: keep one");
      }
      if (size.weight.typed && !equal) {
        ReportError(context_.diagnostics, DiagnosticCode::kNotApplicable, size.weight.place,
                    "\"weight\" works only with equal graduation",
                    "use \"shares\", or remove the weight");
      }
    }
    if (node.graduate.shares_typed && node.graduate.shares.size() != node.children.size()) {
      ReportError(context_.diagnostics, DiagnosticCode::kConflict, node.graduate.shares_place,
                  "\"shares\" lists " + std::to_string(node.graduate.shares.size()) +
                      " weights for " + std::to_string(node.children.size()) + " children",
                  "give one weight for every child");
    }
  }

  ReadContext& context_;
  Spec& spec_;
  bool full_ = false;
};

void RefuseBeside(ObjectReader& top, std::string_view key) {
  if (!top.Has(key)) return;
  ReportError(top.context().diagnostics, DiagnosticCode::kConflict, top.KeyPlace(key),
              "with \"layout\", \"" + std::string(key) + "\" goes in its nodes",
              "move it into \"layout\"");
}

}  // namespace

void ReadLayout(ObjectReader& top, Spec& spec) {
  LayoutReader reader(top.context(), spec);
  const bool plain = top.Has("drawers");
  const JsonValue* tree = top.Find("layout");
  if (plain == (tree != nullptr)) {
    ReportError(top.context().diagnostics,
                plain ? DiagnosticCode::kConflict : DiagnosticCode::kMissingKey,
                plain ? top.KeyPlace("layout") : top.place(),
                plain ? "\"drawers\" and \"layout\" cannot be used together"
                      : "neither \"drawers\" nor \"layout\" is given",
                plain ? "give one of the two" : "add \"drawers\": [{}, {}, {}]");
  }
  if (plain) return reader.Plain(top);
  for (const std::string_view key : {"graduate", "divider", "gap"}) RefuseBeside(top, key);
  if (tree != nullptr) reader.Tree(*tree);
}

}  // namespace tillwright
