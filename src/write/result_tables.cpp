#include <algorithm>

#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/cautions.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

using Column = TextTable::Column;

std::string Wrapped(const std::string& text, std::size_t first_used, std::size_t indent) {
  std::string out;
  std::size_t used = first_used;
  std::size_t at = 0;
  while (at < text.size()) {
    std::size_t space = text.find(' ', at);
    if (space == std::string::npos) space = text.size();
    const std::string word = text.substr(at, space - at);
    const std::size_t width = CharacterCount(word);
    if (used + width + 1 > kTableWidth && used > indent) {
      out += '\n';
      out.append(indent, ' ');
      used = indent;
    } else if (!out.empty()) {
      out += ' ';
      ++used;
    }
    out += word;
    used += width;
    at = space + 1;
  }
  return out;
}

class Tables {
 public:
  Tables(const Bank& bank, const std::vector<Finding>& findings, TextStyle style)
      : bank_(bank), findings_(findings), style_(style) {}

  std::string Run() {
    Head();
    Fronts();
    Gaps();
    Boxes();
    Slides();
    Members();
    Parts();
    Checks();
    Cautions();
    return std::move(out_);
  }

 private:
  std::string In(Length length) const { return FormatLength(length, bank_.units); }
  const Space& SpaceAt(int index) const { return bank_.spaces[static_cast<std::size_t>(index)]; }

  void Heading(std::string_view text, std::string_view remark = {}) {
    out_ += '\n';
    if (style_.color) out_ += "\x1b[1m";
    out_ += text;
    if (style_.color) out_ += "\x1b[0m";
    if (!remark.empty()) {
      out_ += "  (";
      out_ += remark;
      out_ += ')';
    }
    out_ += '\n';
  }
  void Put(const TextTable& table) { out_ += table.ToText(); }

  void Head() {
    out_ += bank_.title.empty() ? "Drawer bank" : Shortened(Printable(bank_.title), kTableWidth);
    out_ += '\n';
    out_ += bank_.units == Unit::kInch ? "Inches" : "Millimetres";
    out_ += ", parts cut to " + In(bank_.round) + ". Places are from the opening's lower left corner.\n";
    if (bank_.casework) {
      const CaseBuild& c = *bank_.casework;
      out_ += "Case     " + In(c.width) + " wide, " + In(c.height) + " high, " + In(c.depth) +
              " deep\n";
    }
    out_ += "Opening  " + In(bank_.opening_width) + " wide, " + In(bank_.opening_height) +
            " high, " + In(bank_.opening_depth) + " deep\n";
  }

  void Fronts() {
    TextTable table({{"", false}, {"name", false, true}, {"width"}, {"height"}, {"thick"},
                     {"left"}, {"bottom"}, {"material", false, true}});
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      const Rect& r = space.front.rect;
      table.Row({ToText(space.id), Printable(space.name), In(r.width), In(r.height),
                 In(space.front.thickness), In(r.x), In(r.y), Printable(space.front.material)});
    }
    if (table.empty()) return;
    Heading("Fronts", Word(bank_.style));
    Put(table);
  }

  // What lies between fronts from the bottom up, then from left to right; equal ones across once.
  void Gaps() {
    TextTable table({{"from", false}, {"to", false}, {"gap"}});
    for (const Gap& gap : bank_.gaps) {
      table.Row({ToText(bank_, gap.from), ToText(bank_, gap.to), In(gap.size)});
    }
    if (!table.empty()) {
      Heading("Gaps", "bottom up, then left to right");
      Put(table);
    }
    TextTable overlaps({{"edge", false}, {"overlay"}, {"fronts", false, true}});
    for (const Edge edge : kEdges) OverlapsAt(edge, overlaps);
    if (overlaps.empty()) return;
    Heading("Overlays", "beyond the opening's edge");
    Put(overlaps);
  }

  void OverlapsAt(Edge edge, TextTable& table) {
    std::vector<std::pair<Length, std::string>> sizes;
    for (const Overlap& overlap : bank_.overlaps) {
      if (overlap.edge != edge) continue;
      const std::string id = ToText(SpaceAt(overlap.space).id);
      const auto same = std::ranges::find(sizes, overlap.size, &std::pair<Length, std::string>::first);
      if (same == sizes.end()) {
        sizes.emplace_back(overlap.size, id);
      } else {
        same->second += " " + id;
      }
    }
    for (const auto& [size, ids] : sizes) table.Row({std::string(Word(edge)), In(size), ids});
  }

  void Boxes() {
    TextTable table({{"", false}, {"width"}, {"height"}, {"depth"}, {"inside w"}, {"inside h"},
                     {"inside d"}, {"left"}, {"bottom"}, {"joint", false}});
    for (const Space& space : bank_.spaces) {
      if (!space.HasBox()) continue;
      const Box& b = space.box;
      table.Row({ToText(space.id), In(b.width), In(b.height), In(b.depth), In(b.inside_width),
                 In(b.inside_height), In(b.inside_depth), In(b.x), In(b.y),
                 std::string(Word(b.build.joint))});
    }
    if (table.empty()) return;
    Heading("Boxes", "outer sizes, then inside");
    Put(table);
  }

  void Slides() {
    TextTable table({{"", false}, {"slide", false}, {"length"}, {"line above opening's bottom"},
                     {"above the box's lower edge"}});
    for (const Space& space : bank_.spaces) {
      if (!space.HasBox()) continue;
      const Slide& s = space.slide;
      table.Row({ToText(space.id), std::string(Word(s.type)), In(s.length), In(s.line_y), In(s.line)});
    }
    if (table.empty()) return;
    Heading("Slide lines");
    Put(table);
  }

  void Members() {
    TextTable table({{"", false}, {"", false}, {"left"}, {"bottom"}, {"width"}, {"height"}, {"depth"}});
    for (const Divider& d : bank_.dividers) {
      table.Row({ToText(d), d.partition ? "partition" : "divider", In(d.rect.x), In(d.rect.y),
                 In(d.rect.width), In(d.rect.height), In(d.depth)});
    }
    if (!table.empty()) {
      Heading("Dividers and partitions", "their clear part, seen from the front");
      Put(table);
    }
    TextTable opens({{"", false}, {"name", false, true}, {"width"}, {"height"}, {"left"}, {"bottom"}});
    for (const Space& space : bank_.spaces) {
      if (space.id.kind != SpaceKind::kOpen) continue;
      const Rect& r = space.cell;
      opens.Row({ToText(space.id), Printable(space.name), In(r.width), In(r.height), In(r.x), In(r.y)});
    }
    if (opens.empty()) return;
    Heading("Open spaces");
    Put(opens);
  }

  // --- Parts: alike ones once, with their count and what they are for ---------------------------

  struct Kind {
    const Part* part;
    int count;
    std::string uses;
  };

  static bool Alike(const Part& a, const Part& b) {
    const auto cut_alike = [](const Cut& x, const Cut& y) {
      return x.kind == y.kind && x.from == y.from && x.offset == y.offset && x.width == y.width &&
             x.depth == y.depth;
    };
    return a.role == b.role && a.length == b.length && a.width == b.width &&
           a.thickness == b.thickness && a.material == b.material && a.grain == b.grain &&
           std::ranges::equal(a.cuts, b.cuts, cut_alike);
  }

  void Parts() {
    std::vector<Kind> kinds;
    for (const Part& part : bank_.parts) {
      if (part.role == PartRole::kFront) continue;  // listed above
      const std::string use = PartFor(bank_, part);
      const auto same =
          std::ranges::find_if(kinds, [&](const Kind& kind) { return Alike(*kind.part, part); });
      if (same == kinds.end()) {
        kinds.push_back({&part, part.count, use});
      } else {
        same->count += part.count;
        same->uses += " " + use;
      }
    }
    if (kinds.empty()) return;
    std::ranges::stable_sort(kinds, {}, [](const Kind& kind) { return kind.part->role; });
    Heading("Parts", "finished sizes, length along the grain");
    TextTable table({{"part", false}, {"pcs"}, {"length"}, {"width"}, {"thick"},
                     {"cuts, on the inside", false, true}, {"material", false, true},
                     {"for", false, true}});
    for (const Kind& kind : kinds) {
      const Part& part = *kind.part;
      table.Row({std::string(ToText(part.role)), std::to_string(kind.count), In(part.length),
                 In(part.width), In(part.thickness), CutsOf(part), Printable(part.material),
                 kind.uses});
    }
    Put(table);
  }

  std::string CutsOf(const Part& part) const {
    std::string text;
    for (const Cut& cut : part.cuts) {
      if (!text.empty()) text += "; ";
      const bool along = cut.from == CutFrom::kLowerEdge;
      text += std::string(ToText(cut.kind)) + " " + In(cut.width) + " x " + In(cut.depth);
      if (!cut.offset.IsZero()) text += along ? " up " + In(cut.offset) : " in " + In(cut.offset);
      if (!along) text += " at " + std::string(ToText(cut.from));
    }
    return text;
  }

  // --- Checks -----------------------------------------------------------------------------------

  void Checks() {
    const auto count = [&](Level level) {
      return std::to_string(std::ranges::count(findings_, level, &Finding::level));
    };
    Heading("Checks");
    for (const Level level : {Level::kFail, Level::kWarn, Level::kNote}) Those(level);
    out_ += "  " + count(Level::kPass) + " pass, " + count(Level::kNote) + " notes, " +
            count(Level::kWarn) + " warnings, " + count(Level::kFail) + " failures\n";
  }

  // Findings of one level, those that say the same together.
  void Those(Level level) {
    std::vector<std::pair<const Finding*, std::string>> said;
    for (const Finding& finding : findings_) {
      if (finding.level != level) continue;
      const auto same = std::ranges::find_if(said, [&](const auto& other) {
        return other.first->code == finding.code && other.first->message == finding.message;
      });
      if (same == said.end()) {
        said.emplace_back(&finding, finding.subject);
      } else {
        same->second += ", " + finding.subject;
      }
    }
    for (const auto& [finding, subjects] : said) {
      std::string head = "  " + std::string(ToText(level)) + "  " +
                         std::string(ToText(finding->code)) + "  ";
      const std::size_t used = head.size();
      if (style_.color) head = Coloured(level) + head + "\x1b[0m";
      out_ += head + Wrapped(subjects + ": " + Printable(finding->message), used, 8) + "\n";
    }
  }

  static std::string Coloured(Level level) {
    return level == Level::kFail ? "\x1b[31m" : level == Level::kWarn ? "\x1b[33m" : "\x1b[36m";
  }

  void Cautions() {
    Heading("Before you cut");
    for (const std::string_view caution : kCautions) {
      out_ += "  " + Wrapped(std::string(caution), 2, 2) + "\n";
    }
  }

  const Bank& bank_;
  const std::vector<Finding>& findings_;
  TextStyle style_;
  std::string out_;
};

}  // namespace

std::string ResultTables(const Bank& bank, const std::vector<Finding>& findings, TextStyle style) {
  return Tables(bank, findings, style).Run();
}

}  // namespace tillwright
