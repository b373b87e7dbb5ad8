#include "read/case_reader.h"

namespace tillwright {
namespace {

class CaseReader {
 public:
  CaseReader(ObjectReader& reader, CaseSpec& out)
      : o_(reader), context_(reader.context()), out_(out) {}

  void Run() {
    o_.ReadInto(out_);
    MadeUp();
    Top();
    if (const JsonValue* value = o_.Find("back")) Back(*value);
    if (out_.web_frame.rails.typed) NoRunners();
    Agree();
  }

 private:
  // Height and depth, which may be left out where the worktop tells them.
  void MadeUp() {
    const WorktopSpec& worktop = out_.worktop;
    if (o_.Has("height") || !(worktop.height.typed || worktop.leg.typed)) {
      o_.RequiredLength("height", out_.height);
    }
    if (o_.Has("depth") || !worktop.depth.typed) o_.RequiredLength("depth", out_.depth);
    if (!worktop.width.typed || worktop.depth.typed) return;
    ReportError(context_.diagnostics, DiagnosticCode::kMissingKey, worktop.place,
                "a worktop whose width is given needs its depth too",
                "add \"depth\": …, or remove \"width\"");
  }

  void Top() {
    const JsonValue* top = o_.Find("top");
    if (top == nullptr) return;
    out_.top_place = top->place;
    out_.top_none = IsNone(*top);
    if (!out_.top_none) ReadLength(context_, *top, Sign::kPositive, out_.top);
  }

  void Back(const JsonValue& value) {
    if (IsNone(value)) {
      out_.back.fit = {BackFit::kNone, value.place};
    } else {
      ObjectReader(context_, value, "back").ReadInto(out_.back);
    }
  }

  // Open rails have nothing of runners.
  void NoRunners() {
    const WebFrameSpec& web = out_.web_frame;
    const auto refuse = [&](const Entry<Length>& typed, std::string_view key) {
      if (!typed.typed) return;
      ReportError(context_.diagnostics, DiagnosticCode::kNotApplicable, typed.place,
                  "\"" + std::string(key) + "\" belongs to web frames with runners",
                  "remove \"rails\", or this");
    };
    refuse(web.runner, "runner");
    refuse(web.tenon, "tenon");
    refuse(web.free, "free");
  }

  // What excludes one another.
  void Agree() {
    if (out_.stretchers.typed && out_.top_none) {
      Conflict("stretchers", "stretchers take the place of the top, but \"top\" is \"none\"",
               "give \"top\" as their thickness, or remove \"stretchers\"");
    }
    if (out_.toe_kick.typed && o_.Has("raise")) {
      Conflict("raise", "the toe kick's height already raises the bottom",
               "remove \"raise\", and give the height in \"toe_kick\"");
    }
    if (out_.feet.typed && out_.toe_kick.typed) {
      Conflict("feet", "a case with a toe kick stands on its sides, not on feet",
               "remove \"feet\" or \"toe_kick\"");
    }
  }

  void Conflict(std::string_view key, std::string message, std::string hint) {
    ReportError(context_.diagnostics, DiagnosticCode::kConflict, o_.KeyPlace(key),
                std::move(message), std::move(hint));
  }

  ObjectReader& o_;
  ReadContext& context_;
  CaseSpec& out_;
};

}  // namespace

void ReadCase(ObjectReader& reader, CaseSpec& out) { CaseReader(reader, out).Run(); }

}  // namespace tillwright
