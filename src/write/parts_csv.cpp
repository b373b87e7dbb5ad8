#include "text/utf8_width.h"
#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/csv.h"
#include "write/cut_notes.h"

namespace tillwright {

std::string CutListCsv(const Bank& bank, const std::vector<CutLine>& lines) {
  Csv csv;
  csv.Text("part").Text("pieces").Text("mirrored");
  for (const char* name : {"length", "width", "thickness", "rough_length", "rough_width"}) {
    csv.LengthHeads(name);
  }
  csv.Text("material")
      .Text("grain")
      .Text("edge_band")
      .Text("boards")
      .Text("cuts")
      .Text("run")
      .EndRow();
  for (const CutLine& line : lines) {
    csv.Text(line.label).Number(line.kind.count).Number(line.kind.mirrored);
    for (const Length length :
         {line.length, line.width, line.thickness, line.rough_length, line.rough_width}) {
      csv.Lengths(length, bank.units);
    }
    csv.Text(Printable(line.material)).Text(Word(line.grain)).Text(line.banding.where);
    csv.Text(BoardWords(line, bank.units));
    csv.Text(AllCutWords(bank, bank.parts[line.kind.parts.front()]));
    csv.Text(RunLabels(line)).EndRow();
  }
  return csv.Take();
}

std::string HardwareCsv(const Bank& bank, const std::vector<HardwareLine>& lines) {
  Csv csv;
  csv.Text("kind").Text("what").Text("amount").Text("unit").LengthHeads("length");
  csv.Text("length_is").Text("estimate").Text("for").Text("remark").EndRow();
  for (const HardwareLine& line : lines) {
    csv.Text(ToText(line.kind)).Text(Printable(line.what)).Number(line.amount);
    csv.Text(ToText(line.unit));
    if (line.length.IsZero()) {
      csv.EmptyLengths().Text("");
    } else {
      csv.Lengths(line.length, bank.units).Text(line.suggested ? "suggested" : "given");
    }
    csv.Text(line.estimate ? "yes" : "no").Text(line.use).Text(line.remark).EndRow();
  }
  return csv.Take();
}

}  // namespace tillwright
