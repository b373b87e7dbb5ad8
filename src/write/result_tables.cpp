#include <algorithm>

#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/cautions.h"
#include "write/id_list.h"
#include "write/parts_table.h"
#include "write/text_table.h"
#include "write/utf8_width.h"

namespace tillwright {
namespace {

// Of a name or material: enough to know it by.
constexpr std::size_t kMostOfLabel = 240;

class Tables {
 public:
  Tables(const Bank& bank, const std::vector<Finding>& findings, TextStyle style)
      : bank_(bank), findings_(findings), style_(style) {}

  std::string Run() {
    Head();
    Fronts();
    Pulls();
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
  static std::string Label(const std::string& text) {
    return Shortened(Printable(text), kMostOfLabel);
  }

  // `head`, `head_width` characters wide, then text in lines that fit the page, indented after the
  // first.
  void Wrapped(const std::string& head, std::size_t head_width, const std::string& text,
               std::size_t indent) {
    out_ += head;
    bool first = true;
    for (const std::string& line : WrapText(text, kTableWidth - indent, head_width - indent)) {
      if (!first) out_.append(indent, ' ');
      first = false;
      out_ += line + "\n";
    }
  }

  void Head() {
    out_ += bank_.title.empty() ? "Drawer bank" : Shortened(Printable(bank_.title), kTableWidth);
    out_ += '\n';
    out_ += bank_.units == Unit::kInch ? "Inches" : "Millimetres";
    out_ += ", parts cut to " + In(bank_.round) +
            ". Places are from the opening's lower left corner.\n";
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
      table.Row({ToText(space.id), Label(space.name), In(r.width), In(r.height),
                 In(space.front.thickness), In(r.x), In(r.y), Label(space.front.material)});
    }
    if (table.empty()) return;
    Heading("Fronts", Word(bank_.style));
    Put(table);
  }

  // Where to drill for pulls, on the front itself; holes alike once.
  void Pulls() {
    struct Hole {
      int number;
      Length across, up;
      IdList fronts;
    };
    std::vector<Hole> holes;
    for (const Space& space : bank_.spaces) {
      int number = 0;
      for (const PullHole& pull : space.front.pulls) {
        const Length across = pull.x - space.front.rect.x;
        const Length up = pull.y - space.front.rect.y;
        ++number;
        auto same = std::ranges::find_if(holes, [&](const Hole& hole) {
          return hole.number == number && hole.across == across && hole.up == up;
        });
        if (same == holes.end()) same = holes.insert(same, {number, across, up, {}});
        same->fronts.Add(ToText(space.id));
      }
    }
    TextTable table({{"hole"}, {"from the left edge"}, {"from the lower edge"},
                     {"fronts", false, true}});
    for (const Hole& hole : holes) {
      table.Row({std::to_string(hole.number), In(hole.across), In(hole.up), hole.fronts.ToText()});
    }
    if (table.empty()) return;
    Heading("Pull holes", "centers, on the front");
    Put(table);
  }

  // What lies between fronts from the bottom up, then from left to right; gaps alike that lie side
  // by side once.
  void Gaps() {
    TextTable table({{"gap"}, {"from", false, true}, {"to", false, true}});
    const std::vector<Gap>& gaps = bank_.gaps;
    for (std::size_t i = 0; i < gaps.size();) {
      const Gap& gap = gaps[i];
      IdList from;
      IdList to;
      for (; i < gaps.size() && SideBySide(gap, gaps[i]); ++i) {
        from.Add(ToText(bank_, gaps[i].from));
        to.Add(ToText(bank_, gaps[i].to));
      }
      table.Row({In(gap.size), from.ToText(), to.ToText()});
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

  static bool SideBySide(const Gap& a, const Gap& b) {
    return a.axis == b.axis && a.at == b.at && a.size == b.size;
  }

  void OverlapsAt(Edge edge, TextTable& table) {
    std::vector<std::pair<Length, IdList>> sizes;
    for (const Overlap& overlap : bank_.overlaps) {
      if (overlap.edge != edge) continue;
      auto same = std::ranges::find(sizes, overlap.size, &std::pair<Length, IdList>::first);
      if (same == sizes.end()) same = sizes.insert(same, {overlap.size, {}});
      same->second.Add(ToText(SpaceAt(overlap.space).id));
    }
    for (const auto& [size, ids] : sizes) {
      table.Row({std::string(Word(edge)), In(size), ids.ToText()});
    }
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
      table.Row({ToText(space.id), std::string(Word(s.type)), In(s.length), In(s.line_y),
                 In(s.line)});
    }
    if (table.empty()) return;
    Heading("Slide lines");
    Put(table);
  }

  void Members() {
    TextTable table({{"", false}, {"", false}, {"left"}, {"bottom"}, {"width"}, {"height"},
                     {"depth"}});
    for (const Divider& d : bank_.dividers) {
      table.Row({ToText(d), d.partition ? "partition" : "divider", In(d.rect.x), In(d.rect.y),
                 In(d.rect.width), In(d.rect.height), In(d.depth)});
    }
    if (!table.empty()) {
      Heading("Dividers and partitions", "their clear part, seen from the front");
      Put(table);
    }
    TextTable opens({{"", false}, {"name", false, true}, {"width"}, {"height"}, {"left"},
                     {"bottom"}});
    for (const Space& space : bank_.spaces) {
      if (space.id.kind != SpaceKind::kOpen) continue;
      const Rect& r = space.cell;
      opens.Row({ToText(space.id), Label(space.name), In(r.width), In(r.height), In(r.x), In(r.y)});
    }
    if (opens.empty()) return;
    Heading("Open spaces");
    Put(opens);
  }

  void Parts() {
    const std::string table = PartsTable(bank_);
    if (table.empty()) return;
    Heading("Parts", "finished sizes, length along the grain");
    out_ += table;
  }

  // --- Checks -----------------------------------------------------------------------------------

  void Checks() {
    const auto count = [&](Level level, const std::string& one) {
      const auto n = std::ranges::count(findings_, level, &Finding::level);
      return std::to_string(n) + " " + one + (n == 1 || level == Level::kPass ? "" : "s");
    };
    Heading("Checks");
    for (const Level level : {Level::kFail, Level::kWarn, Level::kNote}) Those(level);
    out_ += "  " + count(Level::kPass, "pass") + ", " + count(Level::kNote, "note") + ", " +
            count(Level::kWarn, "warning") + ", " + count(Level::kFail, "failure") + "\n";
  }

  // Findings of one level, those that say the same together.
  void Those(Level level) {
    std::vector<std::pair<const Finding*, IdList>> said;
    for (const Finding& finding : findings_) {
      if (finding.level != level) continue;
      auto same = std::ranges::find_if(said, [&](const auto& other) {
        return other.first->code == finding.code && other.first->message == finding.message;
      });
      if (same == said.end()) same = said.insert(same, {&finding, {}});
      same->second.Add(finding.subject);
    }
    for (const auto& [finding, subjects] : said) {
      std::string head = "  " + std::string(ToText(level)) + "  " +
                         std::string(ToText(finding->code)) + "  ";
      const std::size_t width = head.size();
      if (style_.color) head = Coloured(level) + head + "\x1b[0m";
      Wrapped(head, width, subjects.ToText() + ": " + Printable(finding->message), 8);
    }
  }

  static std::string Coloured(Level level) {
    return level == Level::kFail ? "\x1b[31m" : level == Level::kWarn ? "\x1b[33m" : "\x1b[36m";
  }

  void Cautions() {
    Heading("Before you cut");
    for (const std::string_view caution : kCautions) {
      Wrapped("  ", 2, std::string(caution), 2);
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
