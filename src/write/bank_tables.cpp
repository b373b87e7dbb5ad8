#include "write/bank_tables.h"

#include <algorithm>
#include <utility>

#include "bank/id_list.h"
#include "text/utf8_width.h"
#include "tillwright/length_text.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

// Of a name or material: enough to know it by.
constexpr std::size_t kMostOfLabel = 240;

class Tables {
 public:
  explicit Tables(const Bank& bank) : bank_(bank) {}

  std::vector<BankTable> Run() {
    Fronts();
    Pulls();
    Gaps();
    Boxes();
    Slides();
    Members();
    return std::move(sections_);
  }

 private:
  std::string In(Length length) const { return FormatLength(length, bank_.units); }
  const Space& SpaceAt(int index) const { return bank_.spaces[static_cast<std::size_t>(index)]; }

  void Put(std::string_view heading, std::string_view remark, TextTable table) {
    sections_.push_back({std::string(heading), remark, std::move(table)});
  }
  static std::string Label(const std::string& text) {
    return Shortened(Printable(text), kMostOfLabel);
  }

  void Fronts() {
    TextTable table({{"", false},
                     {"name", false, true},
                     {"width"},
                     {"height"},
                     {"thick"},
                     {"left"},
                     {"bottom"},
                     {"material", false, true}});
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      const Rect& r = space.front.rect;
      table.Row({ToText(space.id), Label(space.name), In(r.width), In(r.height),
                 In(space.front.thickness), In(r.x), In(r.y), Label(space.front.material)});
    }
    if (table.empty()) return;
    Put("Fronts", Word(bank_.style), std::move(table));
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
    TextTable table(
        {{"hole"}, {"from the left edge"}, {"from the lower edge"}, {"fronts", false, true}});
    for (const Hole& hole : holes) {
      table.Row({std::to_string(hole.number), In(hole.across), In(hole.up), hole.fronts.ToText()});
    }
    if (table.empty()) return;
    Put("Pull holes", "centers, on the front", std::move(table));
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
      Put("Gaps", "bottom up, then left to right", std::move(table));
    }
    TextTable overlaps({{"edge", false}, {"overlay"}, {"fronts", false, true}});
    for (const Edge edge : kEdges) OverlapsAt(edge, overlaps);
    if (overlaps.empty()) return;
    Put("Overlays", "beyond the opening's edge", std::move(overlaps));
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
    TextTable table({{"", false},
                     {"width"},
                     {"height"},
                     {"depth"},
                     {"inside w"},
                     {"inside h"},
                     {"inside d"},
                     {"left"},
                     {"bottom"},
                     {"joint", false}});
    for (const Space& space : bank_.spaces) {
      if (!space.HasBox()) continue;
      const Box& b = space.box;
      table.Row({ToText(space.id), In(b.width), In(b.height), In(b.depth), In(b.inside_width),
                 In(b.inside_height), In(b.inside_depth), In(b.x), In(b.y),
                 std::string(Word(b.build.joint))});
    }
    if (table.empty()) return;
    Put("Boxes", "outer sizes, then inside", std::move(table));
  }

  void Slides() {
    TextTable table({{"", false},
                     {"slide", false},
                     {"length"},
                     {"line above opening's bottom"},
                     {"above the box's lower edge"}});
    for (const Space& space : bank_.spaces) {
      if (!space.HasBox()) continue;
      const Slide& s = space.slide;
      table.Row(
          {ToText(space.id), std::string(Word(s.type)), In(s.length), In(s.line_y), In(s.line)});
    }
    if (table.empty()) return;
    Put("Slide lines", {}, std::move(table));
  }

  void Members() {
    TextTable table(
        {{"", false}, {"", false}, {"left"}, {"bottom"}, {"width"}, {"height"}, {"depth"}});
    for (const Divider& d : bank_.dividers) {
      table.Row({ToText(d), d.partition ? "partition" : "divider", In(d.rect.x), In(d.rect.y),
                 In(d.rect.width), In(d.rect.height), In(d.depth)});
    }
    if (!table.empty()) {
      Put("Dividers and partitions", "their clear part, seen from the front", std::move(table));
    }
    TextTable opens(
        {{"", false}, {"name", false, true}, {"width"}, {"height"}, {"left"}, {"bottom"}});
    for (const Space& space : bank_.spaces) {
      if (space.id.kind != SpaceKind::kOpen) continue;
      const Rect& r = space.cell;
      opens.Row({ToText(space.id), Label(space.name), In(r.width), In(r.height), In(r.x), In(r.y)});
    }
    if (opens.empty()) return;
    Put("Open spaces", {}, std::move(opens));
  }

  const Bank& bank_;
  std::vector<BankTable> sections_;
};

}  // namespace

std::vector<BankTable> BankTables(const Bank& bank) { return Tables(bank).Run(); }

}  // namespace tillwright
