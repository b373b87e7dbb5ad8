#include "draw/sheets/sheets_table.h"

#include <algorithm>
#include <array>
#include <functional>
#include <map>

#include "draw/sheets/composer.h"
#include "draw/sheets/view_table.h"
#include "sheet/rich_text.h"
#include "tillwright/dimensions.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr double kWidth = 58;   // mm, of a column
constexpr double kCap = 2.0;    // mm, sizes
constexpr double kSmall = 1.8;  // mm, what has them
constexpr double kPitch = 4.6;  // mm, from row to row
constexpr double kLines = 3.4;  // mm, from line to line of one row

// --- What stands in the table
// ---------------------------------------------------------------------

// Things of one size: their names in order, and the paths of their numbers.
struct Sized {
  std::string paths;
  std::vector<std::string> things;
  bool is_rule = false;  // nearly everything has it
};
// Keyed by the sizes themselves, the largest first.
using SizeMap = std::map<std::vector<Length>, Sized, std::greater<>>;
// Names of things along each edge, keyed likewise.
using EdgeNames = std::array<std::vector<std::string>, 4>;
using EdgeMap = std::map<std::vector<Length>, EdgeNames, std::greater<>>;

// "D" and 7 of "D7"; 0 for other names.
int NumberOf(const std::string& thing) {
  int number = 0;
  for (std::size_t i = 1; i < thing.size(); ++i) {
    if (thing[i] < '0' || thing[i] > '9') return 0;
    number = 10 * number + (thing[i] - '0');
  }
  return thing.size() > 1 && thing.size() < 8 ? number : 0;
}

bool Follows(const std::string& a, const std::string& b) {
  return NumberOf(a) > 0 && a[0] == b[0] && NumberOf(b) == NumberOf(a) + 1;
}

// "D1–D3, D5"
std::string Listed(const std::vector<std::string>& things) {
  std::string text;
  for (std::size_t i = 0; i < things.size(); ++i) {
    std::size_t last = i;
    while (last + 1 < things.size() && Follows(things[last], things[last + 1])) ++last;
    if (!text.empty()) text += ", ";
    text += things[i];
    if (last == i) continue;
    text += last == i + 1 ? ", " : "\u2013";
    text += things[last];
    i = last;
  }
  return text;
}

class TableMaker {
 public:
  TableMaker(const Bank& bank, const PathSet& shown) : bank_(bank), shown_(shown) {}

  std::vector<TableSection> Make() {
    Fronts();
    Gaps();
    Overlaps();
    Boxes();
    Slides();
    Members();
    Pulls();
    return std::move(sections_);
  }

 private:
  bool IsShown(const std::string& path) const { return shown_.contains(path); }

  static void Put(SizeMap& map, std::vector<Length> sizes, const std::string& paths,
                  std::string thing) {
    Sized& sized = map[std::move(sizes)];
    if (!sized.paths.empty()) sized.paths += ' ';
    sized.paths += paths;
    sized.things.push_back(std::move(thing));
  }

  // `words`: between and after the numbers of a size.
  void AddSection(std::string heading, const SizeMap& map, const std::vector<std::string>& words) {
    if (map.empty()) return;
    TableSection& section = sections_.emplace_back();
    section.heading = std::move(heading);
    for (const auto& [sizes, sized] : map) {
      TableRow& row = section.rows.emplace_back();
      for (std::size_t i = 0; i < sizes.size(); ++i) {
        row.size += FormatLength(sizes[i], bank_.units);
        if (i < words.size()) row.size += words[i];
      }
      row.paths = sized.paths;
      row.things = Listed(sized.things);
    }
  }

  void Fronts() {
    SizeMap map;
    for (const Space& space : bank_.spaces) {
      if (!space.HasFront()) continue;
      const std::string id = ToText(space.id);
      const std::string width = id + ".front.width";
      const std::string height = id + ".front.height";
      if (IsShown(width) && IsShown(height)) continue;
      Put(map, {space.front.rect.width, space.front.rect.height}, width + ' ' + height, id);
    }
    AddSection("FRONTS, WIDTH \u00d7 HEIGHT", map, {" \u00d7 "});
  }

  // Gaps to the opening edge by edge, those between fronts one by one.
  void Gaps() {
    SizeMap map;
    EdgeMap edges;
    for (const Gap& gap : bank_.gaps) {
      const std::string path = GapPath(bank_, gap);
      if (IsShown(path)) continue;
      const bool from = gap.from.kind == GapEnd::Kind::kOpening;
      const bool to = gap.to.kind == GapEnd::Kind::kOpening;
      if (from || to) {
        const GapEnd& edge = from ? gap.from : gap.to;
        edges[{gap.size}][static_cast<std::size_t>(edge.index)].push_back(
            ToText(bank_, from ? gap.to : gap.from));
        Put(map, {gap.size}, path, {});
      } else {
        Put(map, {gap.size}, path, ToText(bank_, gap.from) + "/" + ToText(bank_, gap.to));
      }
    }
    NameRuleAndExceptions(map);
    for (auto& [size, ids] : edges) {
      Sized& sized = map[size];
      if (sized.is_rule) continue;
      std::erase(sized.things, std::string());
      std::ranges::move(EdgesListed(ids), std::back_inserter(sized.things));
    }
    AddSection("GAPS", map, {});
  }

  // Where one size is the rule, only the exceptions are named.
  void NameRuleAndExceptions(SizeMap& map) const {
    constexpr std::size_t kMany = 9;
    std::size_t most = 0;
    for (const auto& [size, sized] : map) most = std::max(most, sized.things.size());
    if (most < kMany) return;
    for (auto& [size, sized] : map) {
      if (sized.things.size() != most) continue;
      sized.things = {map.size() == 1 && most == bank_.gaps.size() ? "all gaps" : "all others"};
      sized.is_rule = true;
      return;
    }
  }

  // Edge by edge, fronts that cover it alike together.
  void Overlaps() {
    SizeMap map;
    EdgeMap edges;
    for (const Overlap& overlap : bank_.overlaps) {
      const std::string id = ToText(bank_.spaces[static_cast<std::size_t>(overlap.space)].id);
      const std::string path = "overlap." + id + '.' + std::string(Word(overlap.edge));
      if (IsShown(path)) continue;
      Put(map, {overlap.size}, path, {});
      edges[{overlap.size}][static_cast<std::size_t>(overlap.edge)].push_back(id);
    }
    for (auto& [size, sized] : map) sized.things = EdgesListed(edges[size]);
    AddSection("OVERLAY", map, {});
  }

  // "D1–D3 left and right": neighbors in the list with the same fronts share them.
  static std::vector<std::string> EdgesListed(EdgeNames ids) {
    for (std::vector<std::string>& names : ids) {
      std::ranges::sort(names, {},
                        [](const std::string& name) { return std::pair(name[0], NumberOf(name)); });
    }
    std::vector<std::string> things;
    for (const Edge edge : kEdges) {
      const auto i = static_cast<std::size_t>(edge);
      if (ids[i].empty()) continue;
      const bool same = i > 0 && ids[i] == ids[i - 1];
      const std::string word(Word(edge));
      if (same) {
        things.back() += " and " + word;
      } else {
        things.push_back(Listed(ids[i]) + ' ' + word);
      }
    }
    return things;
  }

  void Boxes() {
    SizeMap map;
    for (const Space& space : bank_.spaces) {
      if (!space.HasBox()) continue;
      const std::string id = ToText(space.id) + ".box.";
      Put(map, {space.box.width, space.box.height, space.box.depth},
          id + "width " + id + "height " + id + "depth", ToText(space.id));
    }
    AddSection("BOXES, WIDTH \u00d7 HEIGHT \u00d7 DEPTH", map, {" \u00d7 ", " \u00d7 "});
  }

  void Slides() {
    SizeMap map;
    for (const Space& space : bank_.spaces) {
      const std::string path = ToText(space.id) + ".slide.length";
      if (!space.HasBox() || IsShown(path)) continue;
      Put(map, {space.slide.length}, path, ToText(space.id));
    }
    AddSection("SLIDES", map, {});
  }

  void Members() {
    SizeMap map;
    for (const Divider& member : bank_.dividers) {
      const std::string id = ToText(member);
      const std::string path = id + ".thickness";
      if (IsShown(path)) continue;
      Put(map, {member.partition ? member.rect.width : member.rect.height}, path, id);
    }
    AddSection("DIVIDERS (H) AND PARTITIONS (V), THICKNESS", map, {});
  }

  // The holes of a front from its left edge, then how far they lie below its upper edge.
  void Pulls() {
    SizeMap map;
    std::size_t most = 0;
    for (const Space& space : bank_.spaces) {
      const Front& front = space.front;
      if (front.pulls.empty()) continue;
      const std::string id = ToText(space.id) + ".front.pull.";
      std::vector<Length> sizes;
      std::string paths;
      for (std::size_t i = 0; i < front.pulls.size(); ++i) {
        sizes.push_back(front.pulls[i].x - front.rect.x);
        paths += id + std::to_string(i + 1) + ".left ";
      }
      sizes.push_back(front.rect.Top() - front.pulls.front().y);
      Put(map, sizes, paths + id + "1.above", ToText(space.id));
      most = std::max(most, front.pulls.size());
    }
    for (std::size_t holes = 1; holes <= most; ++holes) {
      SizeMap alike;
      for (const auto& [sizes, sized] : map) {
        if (sizes.size() == holes + 1) alike[sizes] = sized;
      }
      std::vector<std::string> words(holes - 1, ", ");
      words.push_back(" \u00d7 ");
      AddSection("HOLES FOR PULLS, FROM LEFT \u00d7 FROM TOP", alike, words);
    }
  }

  const Bank& bank_;
  const PathSet& shown_;
  std::vector<TableSection> sections_;
};

// --- How it is set
// --------------------------------------------------------------------------------

// Lines of the table from top to bottom, in columns.
class TableSetter {
 public:
  TableSetter(double height, const TextMetrics& metrics) : height_(height), metrics_(metrics) {}

  std::vector<View> Set(const std::vector<TableSection>& table) {
    for (const TableSection& section : table) {
      heading_ = section.heading;
      if (views_.empty() || !HasRoom(10)) {
        NewColumn();
      } else {
        y_ += 2.5;
        Heading(heading_);
      }
      for (const TableRow& row : section.rows) Row(row);
    }
    for (View& view : views_) view.box = view.outline = Bounds(view.groups.front());
    return std::move(views_);
  }

 private:
  bool HasRoom(double more) const { return y_ + more <= height_; }
  SheetGroup& Group() { return views_.back().groups.front(); }

  void NewColumn() {
    View& view = views_.emplace_back();
    const std::string number = std::to_string(views_.size());
    view.name = views_.size() == 1 ? "sizes" : "sizes-" + number;
    view.title = "SIZES";
    view.scale.name = "";
    AddViewGroup(view, "table", "Sizes", 0);
    y_ = 3;
    const LabelStyle style{
        .cap_height = 2.5, .weight = TextWeight::kBold, .level = TextLevel::kBaseline};
    Group().primitives.push_back(MakePlainLabel(
        metrics_, views_.size() == 1 ? "SIZES" : "SIZES, CONTINUED", style, {0, y_}));
    y_ += 2;
    Heading(heading_);
  }

  void Heading(const std::string& heading) {
    y_ += 2.6;
    const LabelStyle style{.cap_height = 1.5, .level = TextLevel::kBaseline, .max_width = kWidth};
    Group().primitives.push_back(MakePlainLabel(metrics_, heading, style, {0, y_}));
    y_ += 1;
    Group().primitives.push_back(LineOf({0, y_}, {kWidth, y_}, Pen::kCell));
    y_ += 0.6;
  }

  void Row(const TableRow& row) {
    if (!HasRoom(kPitch + 0.5)) NewColumn();
    const double middle = y_ + kPitch / 2;
    const Label size = MakeLabel(metrics_, row.size, {.cap_height = kCap}, {0, middle}, row.paths);
    const double left = std::max(14.0, size.box.right + 2.5);
    Group().primitives.push_back(size);
    const LabelStyle style{.cap_height = kSmall};
    const std::vector<std::string> lines =
        WrapText(metrics_, row.things, style, std::max(kWidth - left, 10.0));
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (i > 0) {
        y_ += kLines;
        if (!HasRoom(kPitch + 0.5)) NewColumn();
      }
      Group().primitives.push_back(
          MakePlainLabel(metrics_, lines[i], style, {left, y_ + kPitch / 2}));
    }
    y_ += kPitch;
  }

  double height_;
  const TextMetrics& metrics_;
  std::vector<View> views_;
  std::string heading_;
  double y_ = 0;
};

}  // namespace

std::vector<TableSection> TableOf(const Bank& bank, const PathSet& shown) {
  return TableMaker(bank, shown).Make();
}

std::vector<View> TableViews(const std::vector<TableSection>& table, double height,
                             const TextMetrics& metrics) {
  return TableSetter(height, metrics).Set(table);
}

void PlaceSizes(Composer& composer) {
  const std::vector<TableSection> table = TableOf(composer.bank(), composer.shown_paths());
  const double height = composer.WholeSheet(Orientation::kLandscape).height;
  for (View& view : TableViews(table, height, composer.metrics())) {
    composer.Put({As(ViewKind::kSizes, std::move(view))}, Orientation::kLandscape);
  }
}

}  // namespace tillwright
