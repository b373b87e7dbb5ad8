#include "stock/part_seats.h"
#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/json_text.h"
#include "write/part_keys.h"

namespace tillwright {
namespace {

class PartsWriter {
 public:
  PartsWriter(const Bank& bank, const PartsLists& lists)
      : bank_(bank), lists_(lists), json_(1024 + lists.cuts.size() * 700) {}

  std::string Run() {
    json_.BreakLines(2).Open('{');
    json_.Text("format", "tillwright-parts/1");
    json_.Text("title", bank_.title).Text("units", Word(bank_.units));
    json_.Open("cuts", '[');
    for (const CutLine& line : lists_.cuts) Cut(line);
    json_.Close();
    json_.Open("runs", '[');
    for (const FrontRun& run : lists_.runs) Run(run);
    json_.Close();
    json_.Open("hardware", '[');
    for (const HardwareLine& line : lists_.hardware) Hardware(line);
    json_.Close().Close();
    std::string text = json_.Take();
    text += '\n';
    return text;
  }

 private:
  void Cut(const CutLine& line) {
    const Part& part = bank_.parts[line.kind.parts.front()];
    json_.Open('{').Text("label", line.label).Text("role", ToText(part.role));
    json_.Number("count", line.kind.count).Number("mirrored", line.kind.mirrored);
    json_.Open("ids", '[');
    for (const std::size_t index : line.kind.parts) json_.Text(PartId(bank_, bank_.parts[index]));
    json_.Close();
    json_.Millimeters("length_mm", line.length).Millimeters("width_mm", line.width);
    json_.Millimeters("thickness_mm", line.thickness);
    json_.Millimeters("rough_length_mm", line.rough_length);
    json_.Millimeters("rough_width_mm", line.rough_width);
    json_.Text("material", line.material).Text("grain", Word(line.grain));
    json_.Flag("solid", line.solid).Text("edge_band", line.banding.where);
    if (line.boards > 1) {
      json_.Open("boards_mm", '[');
      for (int i = 0; i < line.boards; ++i) json_.Millimeters(line.board_width);
      json_.Close().Number("joints", line.boards - 1);
    }
    if (!line.runs.empty()) {
      json_.Open("runs", '[');
      for (const std::string& run : line.runs) json_.Text(run);
      json_.Close();
    }
    AddNotchKeys(json_, part.notch);
    AddCutKeys(json_, part.cuts);
    Seats(part);
    json_.Close();
  }

  void Seats(const Part& part) {
    const std::vector<Seat> seats = SeatsIn(bank_, part);
    if (seats.empty()) return;
    json_.Open("seats", '[');
    for (const Seat& seat : seats) {
      const Divider& member = bank_.dividers[static_cast<std::size_t>(seat.member)];
      json_.Open('{').Text("for", ToText(member)).Text("face", SeatFace(part.role, seat));
      json_.Text("from", seat.upright ? "left end" : "lower end");
      json_.Millimeters("offset_mm", seat.offset).Millimeters("width_mm", seat.width);
      json_.Millimeters("depth_mm", seat.depth).Close();
    }
    json_.Close();
  }

  void Run(const FrontRun& run) {
    json_.Open('{').Text("label", run.label).Open("ids", '[');
    for (const std::size_t part : run.parts) json_.Text(PartId(bank_, bank_.parts[part]));
    json_.Close().Text("order", OrderWords(bank_.match));
    json_.Text("way", run.across ? "edge to edge" : "end to end");
    json_.Millimeters("length_mm", run.length).Millimeters("width_mm", run.width).Close();
  }

  void Hardware(const HardwareLine& line) {
    json_.Open('{').Text("kind", ToText(line.kind)).Text("what", line.what);
    json_.Number("amount", line.amount).Text("unit", ToText(line.unit));
    if (!line.length.IsZero()) {
      json_.Millimeters("length_mm", line.length).Flag("suggested", line.suggested);
    }
    json_.Flag("estimate", line.estimate).Text("for", line.use).Text("remark", line.remark);
    json_.Close();
  }

  const Bank& bank_;
  const PartsLists& lists_;
  JsonText json_;
};

}  // namespace

std::string PartsJson(const Bank& bank, const PartsLists& lists) {
  return PartsWriter(bank, lists).Run();
}

}  // namespace tillwright
