#include "dimension/fields.h"

#include "spec/kinds.h"
#include "tillwright/dimensions.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

// One solved dimension of a thing: its name, where it is, and whether the thing has it.
template <class Thing>
struct Solved {
  std::string_view name;
  Length Thing::*value;
  bool (*when)(const Thing&) = nullptr;
};

template <class Thing, std::size_t N>
void AddSolved(const Solved<Thing> (&rows)[N], const Thing& thing, std::string_view head,
               Fields& out) {
  for (const Solved<Thing>& row : rows) {
    if (!out.Want(head, row.name) || (row.when != nullptr && !row.when(thing))) continue;
    out.push_back({std::string(head) += row.name, thing.*row.value, {}});
  }
}

// One that is made of others.
struct Made {
  std::string_view name;
  std::string_view formula;
};

template <std::size_t N>
void AddMade(const Made (&rows)[N], Fields& out) {
  for (const Made& row : rows) {
    if (out.Want("", row.name)) {
      out.push_back({std::string(row.name), {}, std::string(row.formula)});
    }
  }
}

// --- The opening and the case -------------------------------------------------------------------

constexpr Solved<Bank> kBankRows[] = {{"round", &Bank::round},
                                      {"opening.width", &Bank::opening_width},
                                      {"opening.height", &Bank::opening_height},
                                      {"opening.depth", &Bank::opening_depth}};

bool Framed(const CaseBuild& c) { return c.frame.has_value(); }
bool HasBack(const CaseBuild& c) { return Facts(c.back).there; }
bool SetIn(const CaseBuild& c) { return Facts(c.back).inset; }
bool Tongued(const CaseBuild& c) { return Facts(c.joint).tongue; }
bool Kicked(const CaseBuild& c) { return !c.kick_setback.IsZero(); }
bool Footed(const CaseBuild& c) { return !c.feet.IsZero(); }

constexpr Solved<CaseBuild> kCaseRows[] = {
    {"width", &CaseBuild::width},
    {"height", &CaseBuild::height},
    {"depth", &CaseBuild::depth},
    {"side", &CaseBuild::side},
    {"bottom", &CaseBuild::bottom},
    {"top", &CaseBuild::top},
    {"raise", &CaseBuild::raise},
    {"back_allowance", &CaseBuild::back_allowance},
    {"member_length", &CaseBuild::member_length},
    {"joint.depth", &CaseBuild::joint_depth,
     [](const CaseBuild& c) { return Facts(c.joint).cut.has_value(); }},
    {"joint.tongue", &CaseBuild::tongue, Tongued},
    {"back.thickness", &CaseBuild::back_thickness, HasBack},
    {"back.play", &CaseBuild::back_play, HasBack},
    {"back.width", &CaseBuild::panel_width, HasBack},
    {"back.height", &CaseBuild::panel_height, HasBack},
    {"back.lap", &CaseBuild::back_lap, [](const CaseBuild& c) { return Facts(c.back).lap; }},
    {"back.inset", &CaseBuild::back_inset, SetIn},
    {"back.depth", &CaseBuild::back_depth, SetIn},
    {"stretchers.width", &CaseBuild::stretcher_width,
     [](const CaseBuild& c) { return c.stretchers; }},
    {"toe_kick.height", &CaseBuild::raise, Kicked},
    {"toe_kick.setback", &CaseBuild::kick_setback, Kicked},
    {"feet.height", &CaseBuild::feet, Footed},
    {"feet.setback", &CaseBuild::feet_setback, Footed},
    {"side_in", &CaseBuild::side_in, Framed},
    {"low_in", &CaseBuild::low_in, Framed},
    {"high_in", &CaseBuild::high_in, Framed},
};

constexpr Solved<CaseBuild> kInsideRows[] = {{"width", &CaseBuild::inside_width},
                                             {"height", &CaseBuild::inside_height},
                                             {"depth", &CaseBuild::inside_depth}};

constexpr Solved<FaceFrame> kFrameRows[] = {
    {"thickness", &FaceFrame::thickness}, {"stile", &FaceFrame::stile},
    {"rail", &FaceFrame::rail},           {"bottom_rail", &FaceFrame::bottom_rail},
    {"overlap", &FaceFrame::overlap},     {"blocking", &FaceFrame::blocking}};

constexpr Solved<WebFrame> kWebRows[] = {{"rail", &WebFrame::rail},
                                         {"runner", &WebFrame::runner},
                                         {"tenon", &WebFrame::tenon},
                                         {"free", &WebFrame::free}};

bool Wide(const Worktop& w) { return !w.width.IsZero(); }

constexpr Solved<Worktop> kWorktopRows[] = {
    {"thickness", &Worktop::thickness},
    {"leg", &Worktop::leg, [](const Worktop& w) { return !w.leg.IsZero(); }},
    {"width", &Worktop::width, Wide},
    {"left", &Worktop::left, Wide},
    {"depth", &Worktop::depth, [](const Worktop& w) { return !w.depth.IsZero(); }}};

// Its lower left front corner; the floor is under the feet.
constexpr Made kCaseSums[] = {
    {"case.base", "case.raise + case.bottom + case.low_in?"},
    {"case.x", "0 - case.side_in? - case.side"},
    {"case.y", "0 - case.base"},
    {"case.z", "case.face_frame.thickness?"},
    {"case.floor", "0 - case.base - case.feet.height?"},
};

constexpr Made kUnframed[] = {{"case.inside_width", "opening.width"},
                              {"case.inside_height", "opening.height"},
                              {"case.inside_depth", "opening.depth"}};

constexpr Made kFrameSums[] = {
    {"case.face_frame.x", "0 - case.face_frame.stile"},
    {"case.face_frame.width", "opening.width + 2 x case.face_frame.stile"},
    {"case.face_frame.height", "case.height - case.base - case.face_frame.y"},
};

// The back lies in the middle of its channels.
constexpr Made kAppliedBack[] = {
    {"case.back.x", "half of (opening.width - case.back.width)"},
    {"case.back.y", "half of (case.height - case.back.height) - case.base"},
    {"case.back.z", "case.face_frame.thickness? + case.depth"},
};
constexpr Made kBackLetIn[] = {
    {"case.back.x", "half of (opening.width - case.back.width)"},
    {"case.back.y",
     "half of (case.inside_height + case.bottom + case.top - case.back.height) - case.low_in? - "
     "case.bottom"},
    {"case.back.z", "opening.depth"},
};

constexpr Made kWorktopWidths[] = {
    {"case.worktop.right", "case.worktop.width - case.worktop.left - case.width"}};
constexpr Made kWorktopHeight[] = {
    {"case.worktop.height", "case.worktop.leg + case.worktop.thickness"}};

void AddWorktop(const Worktop& worktop, Fields& out) {
  AddSolved(kWorktopRows, worktop, "case.worktop.", out);
  if (Wide(worktop)) AddMade(kWorktopWidths, out);
  if (!worktop.leg.IsZero()) AddMade(kWorktopHeight, out);
}

void AddFrame(const CaseBuild& c, Fields& out) {
  AddSolved(kFrameRows, *c.frame, "case.face_frame.", out);
  AddSolved(kInsideRows, c, "case.inside_", out);
  out.push_back({"case.face_frame.y", {}, Kicked(c) ? "case.raise - case.base" : "0 - case.base"});
  AddMade(kFrameSums, out);
}

void AddCaseFields(const CaseBuild& c, Fields& out) {
  AddSolved(kCaseRows, c, "case.", out);
  AddMade(kCaseSums, out);
  if (c.frame) {
    AddFrame(c, out);
  } else {
    AddMade(kUnframed, out);
  }
  if (c.web) AddSolved(kWebRows, *c.web, "case.web_frame.", out);
  if (c.worktop) AddWorktop(*c.worktop, out);
  if (Facts(c.back).behind) {
    AddMade(kAppliedBack, out);
  } else if (HasBack(c)) {
    AddMade(kBackLetIn, out);
  }
}

// --- Spaces -------------------------------------------------------------------------------------

constexpr Solved<Rect> kRectRows[] = {
    {"x", &Rect::x}, {"y", &Rect::y}, {"width", &Rect::width}, {"height", &Rect::height}};

void AddRect(const Rect& rect, const std::string& name, Fields& out) {
  AddSolved(kRectRows, rect, name, out);
  out.push_back({name + "right", {}, "." + name + "x + ." + name + "width"});
  out.push_back({name + "top", {}, "." + name + "y + ." + name + "height"});
}

bool Under(const Slide& s) { return Facts(s.type).width == WidthRule::kInside; }

constexpr Solved<Slide> kSlideRows[] = {
    {"length", &Slide::length},
    {"line_y", &Slide::line_y},
    {"line", &Slide::line},
    {"clearance", &Slide::clearance, [](const Slide& s) { return !Under(s); }},
    {"deduct", &Slide::deduct, Under},
    {"side_max", &Slide::side_max, Under},
    {"behind", &Slide::behind}};

constexpr Solved<Box> kBoxRows[] = {
    {"x", &Box::x},
    {"y", &Box::y},
    {"z", &Box::z},
    {"width", &Box::width},
    {"height", &Box::height},
    {"depth", &Box::depth},
    {"inside_width", &Box::inside_width},
    {"inside_depth", &Box::inside_depth},
    {"inside_height", &Box::inside_height},
    {"side_length", &Box::side_length},
    {"end_length", &Box::end_length},
    {"wood_height", &Box::wood_height},
    {"back_height", &Box::back_height},
    {"panel_width", &Box::panel_width},
    {"panel_depth", &Box::panel_depth},
};

bool LetIn(const BoxBuild& b) { return Facts(b.fit).cut.has_value(); }

constexpr Solved<BoxBuild> kBuildRows[] = {
    {"side.thickness", &BoxBuild::side},
    {"end.thickness", &BoxBuild::end},
    {"bottom.thickness", &BoxBuild::bottom},
    {"bottom.play", &BoxBuild::play, LetIn},
    {"groove.depth", &BoxBuild::groove, LetIn},
    {"groove.up", &BoxBuild::up, [](const BoxBuild& b) { return Facts(b.fit).set_up; }},
    {"corner.depth", &BoxBuild::joint_depth,
     [](const BoxBuild& b) { return !b.joint_depth.IsZero(); }},
    {"corner.lap", &BoxBuild::lap, [](const BoxBuild& b) { return !b.lap.IsZero(); }},
    {"corner.back_setback", &BoxBuild::back_setback},
    {"box.clear_below", &BoxBuild::clear_below},
    {"box.clear_above", &BoxBuild::clear_above},
};

// With what is left between a box and its cell, whatever was asked for.
constexpr Made kBoxSums[] = {
    {"box.right", ".box.x + .box.width"},
    {"box.top", ".box.y + .box.height"},
    {"box.rear", ".box.z + .box.depth"},
    {"box_front.thickness", ".end.thickness"},
    {"box_back.thickness", ".end.thickness"},
    {"groove.width", ".bottom.thickness"},
    {"corner.pin", ".end.thickness - .corner.lap?"},
    {"corner.left", ".side.thickness - .corner.depth?"},
    {"clear.left", ".box.x - .cell.x"},
    {"clear.right", ".cell.right - .box.right"},
    {"clear.below", ".box.y - .cell.y"},
    {"clear.above", ".cell.top - .box.top"},
    {"clear.behind", "opening.depth - .box.rear"},
    {"clear.front_below", ".box.y - .front.y"},
    {"clear.front_above", ".front.top - .box.top"},
};

constexpr Made kOpenSums[] = {
    {"x", ".cell.x"}, {"y", ".cell.y"}, {"width", ".cell.width"}, {"height", ".cell.height"}};

// The places of a front's holes, how far they are from its edges, and from the hole after.
void AddPulls(const Front& front, Fields& out) {
  if (!front.pull_centers.IsZero()) out.push_back({"front.pull.centers", front.pull_centers, {}});
  for (std::size_t i = 0; i < front.pulls.size(); ++i) {
    const std::string hole = "front.pull." + std::to_string(i + 1) + ".";
    out.push_back({hole + "x", front.pulls[i].x, {}});
    out.push_back({hole + "y", front.pulls[i].y, {}});
    out.push_back({hole + "left", {}, "." + hole + "x - .front.x"});
    out.push_back({hole + "right", {}, ".front.right - ." + hole + "x"});
    out.push_back({hole + "below", {}, "." + hole + "y - .front.y"});
    out.push_back({hole + "above", {}, ".front.top - ." + hole + "y"});
    if (i + 1 == front.pulls.size()) continue;
    const std::string next = ".front.pull." + std::to_string(i + 2) + ".x";
    out.push_back({hole + "next", {}, next + " - ." + hole + "x"});
  }
}

// --- Gaps and overlaps --------------------------------------------------------------------------

// Where an end of a gap lies along its axis: the far side of what is before, the near side of what
// comes after.
std::string EndPath(const Bank& bank, const Gap& gap, const GapEnd& end, bool before) {
  const bool y = gap.axis == Axis::kY;
  if (end.kind == GapEnd::Kind::kOpening) {
    if (before) return "0";
    return y ? "opening.height" : "opening.width";
  }
  std::string path = ToText(bank, end);
  path += end.kind == GapEnd::Kind::kSpace ? ".front." : ".";
  if (before) return path += y ? "top" : "right";
  return path += y ? "y" : "x";
}

// How far a front covers the edge of the opening.
std::string_view OverlapFormula(Edge edge) {
  switch (edge) {
    case Edge::kTop:
      return ".front.top - opening.height";
    case Edge::kBottom:
      return "0 - .front.y";
    case Edge::kLeft:
      return "0 - .front.x";
    case Edge::kRight:
      break;
  }
  return ".front.right - opening.width";
}

// The edge of the case, or of its face frame, that fronts cover.
std::string_view EdgePath(const CaseBuild& c, Edge edge) {
  switch (edge) {
    case Edge::kTop:
      return c.frame ? "case.face_frame.rail" : "case.top";
    case Edge::kBottom:
      return c.frame ? "case.face_frame.bottom_rail" : "case.bottom";
    case Edge::kLeft:
    case Edge::kRight:
      break;
  }
  return c.frame ? "case.face_frame.stile" : "case.side";
}

// "." for the id.
std::string Owned(std::string_view formula, const std::string& id) {
  std::string text(formula);
  const std::size_t at = text.find(".front");
  return at == std::string::npos ? text : text.insert(at, id);
}

}  // namespace

std::string GapPath(const Bank& bank, const Gap& gap) {
  return "gap." + ToText(bank, gap.from) + "." + ToText(bank, gap.to);
}

void AddBankFields(const Bank& bank, Fields& out) {
  AddSolved(kBankRows, bank, "", out);
  if (bank.style == FrontStyle::kOverlay) {
    for (const Edge edge : kEdges) {
      out.push_back(
          {"overlay." + std::string(Word(edge)), bank.overlay[static_cast<std::size_t>(edge)], {}});
    }
  }
  if (bank.casework) AddCaseFields(*bank.casework, out);
}

void AddSpaceFields(const Space& space, Fields& out) {
  if (out.WantUnder("cell.")) AddRect(space.cell, "cell.", out);
  if (!space.HasFront()) {
    AddRect(space.region, "space.", out);
    AddMade(kOpenSums, out);
    return;
  }
  if (out.WantUnder("front.")) {
    AddRect(space.front.rect, "front.", out);
    out.push_back({"front.thickness", space.front.thickness, {}});
    AddPulls(space.front, out);
  }
  if (!space.HasBox()) return;
  AddSolved(kSlideRows, space.slide, "slide.", out);
  AddSolved(kBoxRows, space.box, "box.", out);
  AddSolved(kBuildRows, space.box.build, "", out);
  AddMade(kBoxSums, out);
}

void AddMemberFields(const Divider& member, Fields& out) {
  AddRect(member.rect, "", out);
  out.push_back({"length", member.length, {}});
  out.push_back({"depth", member.depth, {}});
  out.push_back({"begin", member.begin, {}});
  out.push_back({"thickness", {}, member.partition ? ".width" : ".height"});
}

void AddGapFields(const Bank& bank, Fields& out) {
  for (const Gap& gap : bank.gaps) {
    const std::string path = GapPath(bank, gap);
    if (!out.Want("", path)) continue;
    const std::string before = EndPath(bank, gap, gap.from, true);
    const std::string after = EndPath(bank, gap, gap.to, false);
    out.push_back({path, gap.size, before == "0" ? after : after + " - " + before});
  }
  for (const Overlap& overlap : bank.overlaps) {
    const std::string id = ToText(bank.spaces[static_cast<std::size_t>(overlap.space)].id);
    const std::string name = id + "." + std::string(Word(overlap.edge));
    out.push_back({"overlap." + name, overlap.size, Owned(OverlapFormula(overlap.edge), id)});
    if (!bank.casework) continue;
    out.push_back({"reveal." + name,
                   {},
                   std::string(EdgePath(*bank.casework, overlap.edge)) + " - overlap." + name});
  }
}

}  // namespace tillwright
