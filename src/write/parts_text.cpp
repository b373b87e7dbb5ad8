#include "text/utf8_width.h"
#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/cut_notes.h"
#include "write/page_text.h"
#include "write/parts_tables.h"

namespace tillwright {
namespace {

// How many of the pieces are the mirror image of what is drawn.
std::string Hands(const PartKind& kind) {
  if (kind.mirrored == 0) return {};
  return std::to_string(kind.count - kind.mirrored) + "L " + std::to_string(kind.mirrored) + "R";
}

std::string Remark(const HardwareLine& line) {
  std::string text = line.estimate ? "an estimate" : "";
  if (line.suggested && !line.length.IsZero()) text += "length suggested";
  if (!line.remark.empty()) text += (text.empty() ? "" : "; ") + line.remark;
  return text;
}

}  // namespace

std::vector<CutTable> CutTables(const Bank& bank, const std::vector<CutLine>& lines,
                                CutNotes& notes) {
  const auto in = [&](Length length) { return FormatLength(length, bank.units); };
  const auto rough = [&](Length size, Length finished) {
    return size == finished ? std::string() : in(size);
  };
  std::vector<CutTable> tables;
  for (const CutLine& line : lines) {
    const std::string material = line.material.empty() ? "material not given" : line.material;
    std::string heading = FormatWithUnit(line.thickness, bank.units) + ", " + Printable(material);
    if (tables.empty() || tables.back().heading != heading) {
      tables.push_back({std::move(heading), TextTable({{"part", false, true},
                                                       {"pcs"},
                                                       {"hands", false},
                                                       {"length"},
                                                       {"width"},
                                                       {"rough l"},
                                                       {"rough w"},
                                                       {"grain", false},
                                                       {"band", false},
                                                       {"boards", false, true},
                                                       {"cuts", false},
                                                       {"run", false}})});
    }
    tables.back().table.Row(
        {line.label, std::to_string(line.kind.count), Hands(line.kind), in(line.length),
         in(line.width), rough(line.rough_length, line.length), rough(line.rough_width, line.width),
         line.grain == Grain::kNone ? "" : std::string(Word(line.grain)),
         std::string(line.banding.where), BoardWords(line, bank.units),
         notes.Letter(AllCutWords(bank, bank.parts[line.kind.parts.front()])), RunLabels(line)});
  }
  return tables;
}

TextTable RunTable(const Bank& bank, const std::vector<FrontRun>& runs) {
  TextTable table({{"run", false},
                   {"fronts", false, true},
                   {"order", false},
                   {"length"},
                   {"width"},
                   {"fronts join", false}});
  for (const FrontRun& run : runs) {
    table.Row({run.label, FrontsOf(bank, run), std::string(OrderWords(bank.match)),
               FormatLength(run.length, bank.units), FormatLength(run.width, bank.units),
               run.across ? "edge to edge" : "end to end"});
  }
  return table;
}

std::vector<std::string> RunNotes(const Bank& bank, const std::vector<FrontRun>& runs) {
  if (bank.match == FrontMatch::kNone) return {};
  if (runs.empty()) {
    const std::string both =
        bank.match == FrontMatch::kRow ? "side by side" : "one above the other";
    return {"Nothing to match: no two fronts " + both +
            " have the same size there and the same thickness, grain and material."};
  }
  return {
      "Each run is first sawn as one piece of this size, instead of the rough sizes of its fronts; "
      "then the fronts are cut from it in sequence. Each cut takes one kerf out of the figure."};
}

TextTable HardwareTable(const Bank& bank, const std::vector<HardwareLine>& lines) {
  TextTable table({{"", false, true},
                   {"amount"},
                   {"", false},
                   {"length"},
                   {"for", false, true},
                   {"remark", false, true}});
  for (const HardwareLine& line : lines) {
    table.Row({Printable(line.what), std::to_string(line.amount), std::string(ToText(line.unit)),
               line.length.IsZero() ? "" : FormatLength(line.length, bank.units), line.use,
               Remark(line)});
  }
  return table;
}

std::string PartsText(const Bank& bank, const PartsLists& lists, TextStyle style) {
  PageText page(style);
  page.Title(bank);
  CutNotes notes;
  page.Heading("Cut list", "finished sizes, length along the grain; rough where it differs");
  bool first = true;
  for (const CutTable& table : CutTables(bank, lists.cuts, notes)) {
    if (!first) page.Put("\n");
    first = false;
    page.Line(table.heading);
    page.Put(table.table.ToText());
  }
  if (const std::string words = notes.ToText(); !words.empty()) {
    page.Put("\n  Cuts, on the inside unless noted:\n" + words);
  }
  if (!lists.runs.empty()) page.Put("\n" + RunTable(bank, lists.runs).ToText());
  for (const std::string& line : RunNotes(bank, lists.runs)) page.Line(line);
  page.Heading("Hardware", "counts are common practice; follow the slide maker's sheet");
  page.Put(HardwareTable(bank, lists.hardware).ToText());
  page.Cautions();
  return page.Take();
}

}  // namespace tillwright
