#include "write/case_keys.h"

#include "spec/kinds.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

class CaseKeys {
 public:
  CaseKeys(JsonText& json, const Bank& bank) : json_(json), bank_(bank), c_(*bank.casework) {}

  void Add() {
    json_.Open("case", '{');
    Sizes();
    Joint();
    Back();
    if (c_.stretchers) Object("stretchers", {{"width_mm", c_.stretcher_width}});
    Base();
    if (c_.frame) Frame(*c_.frame);
    if (c_.web) {
      WebFrames(*c_.web);
    }
    if (c_.worktop) TheWorktop(*c_.worktop);
    Pieces();
    json_.Close();
  }

 private:
  struct Size {
    std::string_view key;
    Length value;
  };

  void All(std::initializer_list<Size> sizes) {
    for (const Size& size : sizes) json_.Millimeters(size.key, size.value);
  }
  void Object(std::string_view key, std::initializer_list<Size> sizes) {
    json_.Open(key, '{');
    All(sizes);
    json_.Close();
  }

  // Outer sizes, and where its lower left front corner lies; the floor is under the feet.
  void Sizes() {
    All({{"width_mm", c_.width},
         {"height_mm", c_.height},
         {"depth_mm", c_.depth},
         {"side_mm", c_.side},
         {"bottom_mm", c_.bottom},
         {"top_mm", c_.top},
         {"raise_mm", c_.raise},
         {"back_allowance_mm", c_.back_allowance},
         {"x_mm", -c_.side_in - c_.side},
         {"y_mm", -c_.base},
         {"z_mm", c_.front_in},
         {"floor_mm", -c_.base - c_.feet}});
  }

  void Joint() {
    json_.Open("joint", '{').Text("type", Word(c_.joint)).Text("fixing", Word(c_.fixing));
    if (Facts(c_.joint).cut) json_.Millimeters("depth_mm", c_.joint_depth);
    if (Facts(c_.joint).tongue) json_.Millimeters("tongue_mm", c_.tongue);
    json_.Close();
  }

  // The panel where it lies: in the middle of its channels.
  void Back() {
    if (!Facts(c_.back).there) return;
    const bool applied = Facts(c_.back).behind;
    const Length room = applied ? c_.height : c_.inside_height + c_.bottom + c_.top;
    const Length low = applied ? -c_.base : -c_.low_in - c_.bottom;
    json_.Open("back", '{').Text("fit", Word(c_.back));
    All({{"thickness_mm", c_.back_thickness},
         {"x_mm", HalfBelow(bank_.opening_width - c_.panel_width)},
         {"y_mm", low + HalfBelow(room - c_.panel_height)},
         {"z_mm", applied ? c_.front_in + c_.depth : bank_.opening_depth},
         {"width_mm", c_.panel_width},
         {"height_mm", c_.panel_height}});
    json_.Close();
  }

  void Base() {
    if (!c_.kick_setback.IsZero()) {
      Object("toe_kick", {{"height_mm", c_.raise}, {"setback_mm", c_.kick_setback}});
    }
    if (c_.feet.IsZero()) return;
    json_.Open("feet", '{').Number("count", c_.feet_count);
    json_.Millimeters("height_mm", c_.feet);
    json_.Millimeters("setback_mm", c_.feet_setback).Close();
  }

  // Its outer edges, and the widths of its members.
  void Frame(const FaceFrame& frame) {
    const Length low = c_.kick_setback.IsZero() ? -c_.base : c_.raise - c_.base;
    Object("face_frame", {{"thickness_mm", frame.thickness},
                          {"x_mm", -frame.stile},
                          {"y_mm", low},
                          {"width_mm", bank_.opening_width + 2 * frame.stile},
                          {"height_mm", c_.height - c_.base - low},
                          {"stile_mm", frame.stile},
                          {"rail_mm", frame.rail},
                          {"bottom_rail_mm", frame.bottom_rail},
                          {"overlap_mm", frame.overlap},
                          {"blocking_mm", frame.blocking}});
  }

  void WebFrames(const WebFrame& web) {
    json_.Open("web_frame", '{').Millimeters("rail_mm", web.rail);
    if (web.open) {
      json_.Text("rails", Word(*web.open));
    } else {
      All({{"runner_mm", web.runner}, {"tenon_mm", web.tenon}, {"free_mm", web.free}});
    }
    json_.Close();
  }

  // As far as it is given; its place is among the pieces.
  void TheWorktop(const Worktop& worktop) {
    json_.Open("worktop", '{').Millimeters("thickness_mm", worktop.thickness);
    if (!worktop.leg.IsZero()) {
      All({{"leg_mm", worktop.leg}, {"height_mm", worktop.leg + worktop.thickness}});
    }
    if (!worktop.width.IsZero()) {
      All({{"width_mm", worktop.width},
           {"left_mm", worktop.left},
           {"right_mm", worktop.width - worktop.left - c_.width}});
    }
    if (!worktop.depth.IsZero()) json_.Millimeters("depth_mm", worktop.depth);
    json_.Close();
  }

  void Pieces() {
    if (bank_.pieces.empty()) return;
    json_.Open("pieces", '[');
    for (const CasePiece& piece : bank_.pieces) {
      Part part;
      part.role = piece.role;
      part.space = piece.space;
      part.divider = piece.divider;
      part.takes = piece.takes;
      part.ahead = piece.ahead;
      const Block& b = piece.block;
      json_.Open('{').Text("part", PartId(bank_, part));
      All({{"x_mm", b.x},
           {"y_mm", b.y},
           {"z_mm", b.z},
           {"width_mm", b.width},
           {"height_mm", b.height},
           {"depth_mm", b.depth}});
      json_.Close();
    }
    json_.Close();
  }

  JsonText& json_;
  const Bank& bank_;
  const CaseBuild& c_;
};

}  // namespace

void AddCaseKeys(JsonText& json, const Bank& bank) { CaseKeys(json, bank).Add(); }

}  // namespace tillwright
