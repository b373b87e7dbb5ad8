#include "read/case_reader.h"

namespace tillwright {
namespace {

bool IsNone(const JsonValue& value) {
  return value.kind == JsonValue::Kind::kString && value.text == "none";
}

class CaseReader {
 public:
  CaseReader(ObjectReader& reader, CaseSpec& out)
      : o_(reader), context_(reader.context()), out_(out) {}

  void Run() {
    o_.RequiredLength("width", out_.width);
    ReadWorktop();
    ReadMadeUp();
    o_.LengthOf("side", Sign::kPositive, out_.side);
    o_.LengthOf("bottom", Sign::kPositive, out_.bottom);
    o_.LengthOf("raise", Sign::kZeroOrMore, out_.raise);
    o_.Text("material", out_.material);
    ReadTop();
    Object("joint", "case-joint", [&](ObjectReader& joint) {
      joint.Choice("type", out_.joint.type);
      joint.LengthOf("depth", Sign::kPositive, out_.joint.depth);
      joint.LengthOf("tongue", Sign::kPositive, out_.joint.tongue);
      joint.Choice("fixing", out_.joint.fixing);
    });
    if (const JsonValue* value = o_.Find("back")) ReadBack(*value);
    ReadStretchers();
    ReadBase();
    ReadFrames();
  }

 private:
  template <class F>
  void Object(std::string_view key, std::string_view object, F read) {
    const JsonValue* value = o_.Find(key);
    if (value == nullptr) return;
    ObjectReader reader(context_, *value, object);
    if (reader.ok()) read(reader);
  }

  void Conflict(std::string_view key, std::string message, std::string hint) {
    ReportError(context_.diagnostics, DiagnosticCode::kConflict, o_.KeyPlace(key),
                std::move(message), std::move(hint));
  }

  void ReadWorktop() {
    Object("worktop", "worktop", [&](ObjectReader& worktop) {
      WorktopSpec& out = out_.worktop;
      out.typed = true;
      out.place = worktop.place();
      worktop.RequiredLength("thickness", out.thickness);
      worktop.LengthOf("height", Sign::kPositive, out.height);
      worktop.LengthOf("leg", Sign::kPositive, out.leg);
      worktop.LengthOf("depth", Sign::kPositive, out.depth);
      worktop.LengthOf("width", Sign::kPositive, out.width);
      worktop.LengthOf("left", Sign::kZeroOrMore, out.left);
      worktop.Text("material", out.material);
      if (out.width.typed && !out.depth.typed) {
        ReportError(context_.diagnostics, DiagnosticCode::kMissingKey, worktop.place(),
                    "a worktop whose width is given needs its depth too",
                    "add \"depth\": …, or remove \"width\"");
      }
    });
  }

  // Height and depth, which may be left out where the worktop tells them.
  void ReadMadeUp() {
    const WorktopSpec& worktop = out_.worktop;
    if (o_.Has("height") || !(worktop.height.typed || worktop.leg.typed)) {
      o_.RequiredLength("height", out_.height);
    }
    if (o_.Has("depth") || !worktop.depth.typed) o_.RequiredLength("depth", out_.depth);
  }

  void ReadTop() {
    const JsonValue* top = o_.Find("top");
    if (top == nullptr) return;
    out_.top_place = top->place;
    out_.top_none = IsNone(*top);
    if (!out_.top_none) ReadLength(context_, *top, Sign::kPositive, out_.top);
  }

  void ReadBack(const JsonValue& value) {
    BackSpec& out = out_.back;
    if (IsNone(value)) {
      out.fit = {BackFit::kNone, value.place};
      return;
    }
    ObjectReader back(context_, value, "back");
    back.Choice("fit", out.fit);
    back.LengthOf("thickness", Sign::kPositive, out.thickness);
    back.LengthOf("lap", Sign::kPositive, out.lap);
    back.LengthOf("inset", Sign::kZeroOrMore, out.inset);
    back.LengthOf("depth", Sign::kPositive, out.depth);
    back.LengthOf("play", Sign::kZeroOrMore, out.play);
    back.Text("material", out.material);
  }

  void ReadStretchers() {
    Object("stretchers", "stretchers", [&](ObjectReader& stretchers) {
      out_.stretchers.typed = true;
      out_.stretchers.place = stretchers.place();
      stretchers.LengthOf("width", Sign::kPositive, out_.stretchers.width);
      if (!out_.top_none) return;
      Conflict("stretchers", "stretchers take the place of the top, but \"top\" is \"none\"",
               "give \"top\" as their thickness, or remove \"stretchers\"");
    });
  }

  void ReadBase() {
    Object("toe_kick", "toe-kick", [&](ObjectReader& kick) {
      out_.toe_kick.typed = true;
      out_.toe_kick.place = kick.place();
      kick.LengthOf("height", Sign::kPositive, out_.toe_kick.height);
      kick.LengthOf("setback", Sign::kPositive, out_.toe_kick.setback);
      if (!o_.Has("raise")) return;
      Conflict("raise", "the toe kick's height already raises the bottom",
               "remove \"raise\", and give the height in \"toe_kick\"");
    });
    Object("feet", "feet", [&](ObjectReader& feet) {
      out_.feet.typed = true;
      out_.feet.place = feet.place();
      feet.LengthOf("height", Sign::kPositive, out_.feet.height);
      feet.LengthOf("setback", Sign::kZeroOrMore, out_.feet.setback);
      feet.WholeNumber("count", 1, 1000, out_.feet.count);
      if (!out_.toe_kick.typed) return;
      Conflict("feet", "a case with a toe kick stands on its sides, not on feet",
               "remove \"feet\" or \"toe_kick\"");
    });
  }

  void ReadFrames() {
    Object("face_frame", "face-frame", [&](ObjectReader& frame) {
      FaceFrameSpec& out = out_.face_frame;
      out.typed = true;
      out.place = frame.place();
      frame.LengthOf("thickness", Sign::kPositive, out.thickness);
      frame.LengthOf("stile", Sign::kPositive, out.stile);
      frame.LengthOf("rail", Sign::kPositive, out.rail);
      frame.LengthOf("bottom_rail", Sign::kPositive, out.bottom_rail);
      frame.LengthOf("overlap", Sign::kZeroOrMore, out.overlap);
      frame.LengthOf("blocking", Sign::kPositive, out.blocking);
      frame.Text("material", out.material);
    });
    Object("web_frame", "web-frame", [&](ObjectReader& frame) {
      out_.web_frame.typed = true;
      out_.web_frame.place = frame.place();
      frame.LengthOf("rail", Sign::kPositive, out_.web_frame.rail);
      frame.LengthOf("runner", Sign::kPositive, out_.web_frame.runner);
      frame.LengthOf("tenon", Sign::kPositive, out_.web_frame.tenon);
      frame.Text("material", out_.web_frame.material);
    });
  }

  ObjectReader& o_;
  ReadContext& context_;
  CaseSpec& out_;
};

}  // namespace

void ReadCase(ObjectReader& reader, CaseSpec& out) { CaseReader(reader, out).Run(); }

}  // namespace tillwright
