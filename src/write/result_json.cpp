#include "tillwright/words.h"
#include "tillwright/write.h"
#include "write/case_keys.h"
#include "write/gap_keys.h"
#include "write/json_text.h"
#include "write/part_keys.h"

namespace tillwright {
namespace {

class ResultWriter {
 public:
  // With `keys`, the result of the gap check.
  explicit ResultWriter(const Bank& bank, const GapKeys* keys = nullptr)
      : bank_(bank), keys_(keys), json_(2048 + bank.spaces.size() * 3500) {}

  std::string Run(const std::vector<Finding>& findings) {
    json_.BreakLines(2).Open('{');
    json_.Text("format", "tillwright-result/1");
    json_.Text("title", bank_.title);
    json_.Text("units", Word(bank_.units));
    json_.Millimeters("round_mm", bank_.round);
    Openings();
    json_.Open("drawers", '[');
    for (const Space& space : bank_.spaces) {
      if (space.HasBox()) Drawer(space);
    }
    json_.Close();
    Others();
    Gaps();
    json_.Open("parts", '[');
    for (const Part& part : bank_.parts) WritePart(part);
    json_.Close();
    if (keys_ != nullptr) keys_->OfBank(json_);
    Checks(findings);
    json_.Flag("ok", !HasFailure(findings));
    json_.Close();
    std::string text = json_.Take();
    text += '\n';
    return text;
  }

 private:
  void Openings() {
    json_.Open("opening", '{');
    json_.Millimeters("width_mm", bank_.opening_width);
    json_.Millimeters("height_mm", bank_.opening_height);
    json_.Millimeters("depth_mm", bank_.opening_depth);
    json_.Close();
    if (bank_.casework) AddCaseKeys(json_, bank_);
  }

  void RectKeys(const Rect& r) {
    json_.Millimeters("x_mm", r.x).Millimeters("y_mm", r.y);
    json_.Millimeters("width_mm", r.width).Millimeters("height_mm", r.height);
  }

  void FrontKeys(const Front& front) {
    json_.Open("front", '{');
    RectKeys(front.rect);
    json_.Millimeters("thickness_mm", front.thickness);
    if (!front.pulls.empty()) Pulls(front.pulls);
    json_.Close();
  }

  void Pulls(const std::vector<PullHole>& holes) {
    json_.Open("pulls", '[');
    for (const PullHole& hole : holes) {
      json_.Open('{').Millimeters("x_mm", hole.x).Millimeters("y_mm", hole.y).Close();
    }
    json_.Close();
  }

  void Head(const Space& space) {
    json_.Open('{').Text("id", ToText(space.id));
    if (!space.name.empty()) json_.Text("name", space.name);
  }

  void Drawer(const Space& space) {
    Head(space);
    FrontKeys(space.front);
    json_.Open("cell", '{');
    RectKeys(space.cell);
    json_.Close();
    json_.Open("slide", '{').Text("type", Word(space.slide.type));
    json_.Millimeters("length_mm", space.slide.length);
    json_.Millimeters("line_y_mm", space.slide.line_y).Close();
    BoxKeys(space.box);
    json_.Close();
  }

  void BoxKeys(const Box& box) {
    json_.Open("box", '{');
    json_.Millimeters("x_mm", box.x).Millimeters("y_mm", box.y).Millimeters("z_mm", box.z);
    json_.Millimeters("width_mm", box.width).Millimeters("height_mm", box.height);
    json_.Millimeters("depth_mm", box.depth);
    json_.Millimeters("inside_width_mm", box.inside_width);
    json_.Millimeters("inside_depth_mm", box.inside_depth);
    json_.Millimeters("inside_height_mm", box.inside_height);
    json_.Close();
  }

  // Blanks, open spaces and members, where there are any.
  void Others() {
    List("blanks", SpaceKind::kBlank, [&](const Space& space) { FrontKeys(space.front); });
    List("opens", SpaceKind::kOpen, [&](const Space& space) { RectKeys(space.cell); });
    if (bank_.dividers.empty()) return;
    json_.Open("dividers", '[');
    for (const Divider& divider : bank_.dividers) {
      json_.Open('{').Text("id", ToText(divider));
      json_.Text("kind", divider.partition ? "partition" : "divider");
      RectKeys(divider.rect);
      json_.Millimeters("depth_mm", divider.depth).Close();
    }
    json_.Close();
  }

  template <class F>
  void List(std::string_view key, SpaceKind kind, F write) {
    bool open = false;
    for (const Space& space : bank_.spaces) {
      if (space.id.kind != kind) continue;
      if (!open) json_.Open(key, '[');
      open = true;
      Head(space);
      write(space);
      json_.Close();
    }
    if (open) json_.Close();
  }

  void Gaps() {
    std::size_t stack = 0;  // the gap check lists gaps, then overlaps
    const auto more = [&] {
      if (keys_ != nullptr) keys_->OfStack(json_, stack++);
      json_.Close();
    };
    json_.Open("gaps", '[');
    for (const Gap& gap : bank_.gaps) {
      json_.Open('{').Text("axis", gap.axis == Axis::kY ? "y" : "x");
      json_.Text("from", ToText(bank_, gap.from)).Text("to", ToText(bank_, gap.to));
      json_.Millimeters("size_mm", gap.size);
      more();
    }
    json_.Close();
    if (bank_.style != FrontStyle::kOverlay) return;
    json_.Open("overlaps", '[');
    for (const Overlap& overlap : bank_.overlaps) {
      const Space& space = bank_.spaces[static_cast<std::size_t>(overlap.space)];
      json_.Open('{').Text("drawer", ToText(space.id)).Text("edge", Word(overlap.edge));
      json_.Millimeters("size_mm", overlap.size);
      more();
    }
    json_.Close();
  }

  void WritePart(const Part& part) {
    json_.Open('{').Text("id", PartId(bank_, part)).Text("for", PartFor(bank_, part));
    json_.Text("role", ToText(part.role)).Number("count", part.count);
    json_.Millimeters("length_mm", part.length).Millimeters("width_mm", part.width);
    json_.Millimeters("thickness_mm", part.thickness);
    json_.Text("material", part.material).Text("grain", Word(part.grain));
    AddNotchKeys(json_, part.notch);
    AddCutKeys(json_, part.cuts);
    json_.Close();
  }

  void Checks(const std::vector<Finding>& findings) {
    json_.Open("checks", '[');
    for (const Finding& finding : findings) {
      json_.Open('{').Text("code", ToText(finding.code)).Text("level", ToText(finding.level));
      json_.Text("subject", finding.subject).Text("message", finding.message);
      Figure("value", finding.value);
      Figure("limit", finding.limit);
      if (finding.measure) Weigh(*finding.measure);
      json_.Text("source", finding.source).Close();
    }
    json_.Close();
  }

  void Weigh(const Measure& measure) {
    json_.Open("measure", '{').Key("value").Decimal(measure.value);
    if (measure.limit) json_.Key("limit").Decimal(*measure.limit);
    json_.Text("unit", measure.unit).Close();
  }

  // Figures of checks are millimeters too.
  void Figure(std::string_view key, const std::optional<Length>& figure) {
    json_.Key(key);
    if (figure) {
      json_.Millimeters(*figure);
    } else {
      json_.Null();
    }
  }

  const Bank& bank_;
  const GapKeys* keys_;
  JsonText json_;
};

}  // namespace

std::string ResultJson(const Bank& bank, const std::vector<Finding>& findings) {
  return ResultWriter(bank).Run(findings);
}

std::string CheckJson(const Spec& spec, const Bank& bank, const GapCheck& check,
                      const std::vector<Finding>& findings) {
  const GapKeys keys(spec, bank, check);
  return ResultWriter(bank, &keys).Run(findings);
}

}  // namespace tillwright
