#include "write/work_steps.h"

#include <algorithm>
#include <utility>

#include "spec/kinds.h"
#include "spec/materials.h"
#include "tillwright/length_text.h"
#include "tillwright/parts.h"
#include "tillwright/words.h"

namespace tillwright {
namespace {

constexpr const char* kSaw =
    "Keep the guard and riving knife on; use a push stick for anything narrower than your hand; "
    "stand out of the line of kickback; wear eye, ear and dust protection.";
constexpr const char* kRouter =
    "Feed against the bit's rotation; wear eye, ear and dust protection. Hold small parts in a "
    "jig, never in your hand.";

bool HasBoxes(const Bank& bank) { return std::ranges::any_of(bank.spaces, &Space::HasBox); }

template <class Is>
bool AnyBox(const Bank& bank, Is is) {
  return std::ranges::any_of(bank.spaces,
                             [&](const Space& space) { return space.HasBox() && is(space); });
}

bool HasSolidWood(const Bank& bank) {
  return std::ranges::any_of(bank.parts,
                             [](const Part& part) { return IsSolidWood(part.material); });
}

class Steps {
 public:
  explicit Steps(const Bank& bank) : bank_(bank) {}

  std::vector<WorkStep> Run() {
    Prepare();
    if (bank_.casework) Case();
    Members();
    if (HasBoxes(bank_)) Boxes();
    Fronts();
    Finish();
    return std::move(steps_);
  }

 private:
  std::string In(Length length) const { return FormatLength(length, bank_.units); }

  // Kinds of parts as the cut list calls them: "case side; case bottom; divider H1, H2".
  std::string Labels(bool (*is)(const Part&)) const {
    std::string labels;
    for (const PartKind& kind : PartKinds(bank_)) {
      if (!is(bank_.parts[kind.parts.front()])) continue;
      if (!labels.empty()) labels += "; ";
      labels += PartKindLabel(bank_, kind);
    }
    return labels;
  }

  void Add(std::string title, std::vector<std::string> lines,
           std::vector<std::string> cautions = {}) {
    steps_.push_back({std::move(title), std::move(lines), std::move(cautions)});
  }

  void Prepare() {
    Add("Measure the site and the stock",
        {bank_.casework ? "Measure where the piece will go, in three places each way."
                        : "Measure the opening at three heights, at the left and the right, and "
                          "both diagonals.",
         "Measure the boards, sheets and slides you have; if one differs from the spec, change the "
         "spec and make this packet again."});
    Add("Print the story sticks and check their scale",
        {"Print at actual size, one-sided, and measure the bars on each page before you trust a "
         "mark; then glue the strips to a straight batten."});
    if (HasSolidWood(bank_)) {
      Add("Rough-cut the solid wood",
          {"Cut solid parts long and wide, let them rest in the shop, then joint, plane and saw "
           "them to size.",
           "Glue up panels wider than your boards first."},
          {kSaw,
           "Stressed boards can pinch the blade: keep the riving knife in; if the kerf closes, "
           "stop the saw and wedge it open."});
    }
  }

  void Case() {
    const CaseBuild& c = *bank_.casework;
    Add("Cut the case parts",
        {"Cut matching parts at one setting, so matching parts come out identical. In the cut "
         "list: " +
             Labels([](const Part& part) { return part.space < 0 && part.divider < 0; }) + ".",
         "Mark the face, the front edge, and left or right on each."},
        {kSaw, "A full sheet is heavy and flexes: break it down with a helper or a track saw."});
    std::vector<std::string> lines;
    if (Facts(c.joint).cut) {
      lines.push_back(
          "Lay out the joints from the heights stick on both sides at once, and cut them " +
          In(c.joint_depth) + " deep.");
    }
    if (Facts(c.joint).tongue) {
      lines.push_back("Cut every dado " + In(c.tongue) +
                      " wide at one setting; then rabbet a scrap of the same thickness until its "
                      "tongue slides in by hand, and cut the ends of the members at that setting.");
    }
    if (Facts(c.back).cut) {
      lines.push_back("Cut the " + std::string(Word(c.back)) +
                      " for the back; test it with a scrap of the back itself.");
    }
    if (!lines.empty()) Add("Cut the case joinery", std::move(lines), {kRouter});
    Add("Assemble the case",
        {"Dry-fit, glue and clamp; make the diagonals equal before the glue sets.",
         "Check the opening against the sticks: " + In(bank_.opening_width) + " wide, " +
             In(bank_.opening_height) + " high."},
        {"Ventilate the room while glue and finish dry."});
  }

  void Members() {
    if (bank_.dividers.empty()) return;
    Add("Fit dividers and partitions",
        {"Set each one to its lines on the sticks, front edges flush. In the cut list: " +
         Labels([](const Part& part) { return part.divider >= 0; }) + "."});
  }

  void Boxes() {
    Add("Lay out and mount the slides",
        {AnyBox(bank_, [](const Space& s) { return Facts(s.slide.type).sold == SoldAs::kNot; })
             ? "Mount the runners level and parallel; if a drawer binds, a runner is out of line."
             : "Mark each slide line on the case from the heights stick, left and right from the "
               "same end; screw the slides on at their lines."},
        {"Use screws shorter than the wood is thick; a protruding point will cut you."});
    Add("Cut the box parts",
        {"Cut all box sides against one stop, then all box fronts and backs against another; label "
         "them as in the cut list."},
        {kSaw,
         "Short box fronts and backs are small parts: hold them in a sled with a clamp, not with "
         "your fingers."});
    Joints();
    Add("Assemble the boxes",
        {"Dry-fit one box and try it in its opening before you glue any.",
         AnyBox(bank_, [](const Space& s) { return s.box.solid_bottom; })
             ? "Glue the corners only: a solid bottom must be free to move in its groove."
             : "Make the diagonals equal, and check for twist on a flat surface."});
    Add("Mount the boxes", {"Each must run freely over its full travel before its front goes on."});
  }

  void Joints() {
    std::vector<std::string> lines;
    const bool joined =
        AnyBox(bank_, [](const Space& s) { return Facts(s.box.build.joint).cut.has_value(); });
    if (joined) lines.emplace_back("Test the corner joints on scrap of the same thickness first.");
    if (AnyBox(bank_,
               [](const Space& s) { return Facts(s.box.build.fit).cut == CutKind::kGroove; })) {
      lines.emplace_back("Cut every bottom groove at one setting; test it with the bottom itself.");
    }
    if (AnyBox(bank_,
               [](const Space& s) { return Facts(s.box.build.fit).cut == CutKind::kRabbet; })) {
      lines.emplace_back("Cut the rabbets for the bottoms at one setting.");
    }
    if (!lines.empty()) Add("Cut joints and grooves", std::move(lines), {kRouter});
  }

  void Fronts() {
    if (std::ranges::none_of(bank_.spaces, &Space::HasFront)) return;
    Add("Cut the fronts last",
        {"Measure the finished opening again; if it differs, write that under \"measured\" in the "
         "spec and run the check: it says what size to cut now.",
         bank_.match == FrontMatch::kNone
             ? "Where the grain shows, cut all fronts from one board or sheet."
             : "Before you cut a run of fronts apart, mark their order on the show face: a "
               "carpenter's triangle in chalk across the whole run, pointing at the first front. "
               "Keep every front facing and oriented that way."},
        {kSaw});
    Add("Set the fronts",
        {std::string("Work from the lowest front up, with spacers as thick as the gap (") +
             std::string(Word(bank_.style)) + " fronts).",
         "Hold each with two screws from inside, check it, even the gaps with thin shims, then "
         "drive the rest."},
        {"Use screws short enough not to break through the show face; set the clutch on the "
         "driver."});
    const bool pulls =
        std::ranges::any_of(bank_.spaces, [](const Space& s) { return !s.front.pulls.empty(); });
    if (pulls) {
      Add("Drill for the pulls",
          {"Use the full-scale template, drill from the show face, with a backing board behind."});
    }
  }

  void Finish() {
    Add("Finish and anchor",
        {"Take out the drawers and slides, finish all faces equally, and mount everything again.",
         "Anchor the piece to the wall before you load it; put heavy things in the lowest "
         "drawers."},
        {"A piece with several drawers open can tip over. Anchor it; never let children climb on "
         "it.",
         "Oily rags can self-ignite: spread them flat outdoors to dry, or store them under water "
         "in a closed metal can."});
  }

  const Bank& bank_;
  std::vector<WorkStep> steps_;
};

}  // namespace

std::vector<WorkStep> WorkSteps(const Bank& bank) { return Steps(bank).Run(); }

}  // namespace tillwright
