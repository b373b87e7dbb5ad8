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
    "Guard and riving knife on; a push stick for anything narrower than your hand is wide; stand "
    "out of the line of kickback.";
constexpr const char* kRouter =
    "Feed against the bit's turning; small parts in a jig, never in the hand; eyes, ears and dust "
    "looked after.";

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
    Add("Measure what is there",
        {bank_.casework ? "Measure where the piece will stand, in three places each way."
                        : "Measure the opening at three heights, at the left and the right, and "
                          "both diagonals.",
         "Measure the boards, sheets and slides you have; when one differs from the spec, change "
         "the spec and make this packet again."});
    Add("Print the sticks and prove their scale",
        {"Print at actual size, one-sided, and measure the bars on each page before you trust a "
         "mark; then glue the strips to a straight batten."});
    if (HasSolidWood(bank_)) {
      Add("Rough out the solid wood",
          {"Cut solid parts over-long and over-wide, let them rest in the shop, then plane and "
           "saw them to size.",
           "Glue up panels wider than your boards first."},
          {kSaw,
           "Boards with tension close on the blade: keep the riving knife in, and wedge the "
           "cut if it closes."});
    }
  }

  void Case() {
    const CaseBuild& c = *bank_.casework;
    Add("Cut the case parts",
        {"Cut them together, so that parts of one size are of one size. In the cut list: " +
             Labels([](const Part& part) { return part.space < 0 && part.divider < 0; }) + ".",
         "Mark face side, front edge, left and right on each."},
        {kSaw, "A full sheet is heavy and whips: break it down with help or with a track saw."});
    std::vector<std::string> lines;
    if (Facts(c.joint).cut) {
      lines.push_back(
          "Lay out the joints from the heights stick, both sides together, and cut them " +
          In(c.joint_depth) + " deep.");
    }
    if (Facts(c.joint).tongue) {
      lines.push_back("Cut every groove " + In(c.tongue) +
                      " wide with one setting; then rabbet the members' ends until a tongue of "
                      "scrap slides in by hand.");
    }
    if (Facts(c.back).cut) {
      lines.push_back("Cut the " + std::string(Word(c.back)) +
                      " for the back; try it with an offcut of the back itself.");
    }
    if (!lines.empty()) Add("Joint the case", std::move(lines), {kRouter});
    Add("Put the case together",
        {"Dry-fit, glue, clamp; equal diagonals before the glue grabs.",
         "Check the opening against the sticks: " + In(bank_.opening_width) + " wide, " +
             In(bank_.opening_height) + " high."},
        {"Air the room while glue and finish dry."});
  }

  void Members() {
    if (bank_.dividers.empty()) return;
    Add("Fit dividers and partitions",
        {"Set each to its lines on the sticks, front edges flush. In the cut list: " +
         Labels([](const Part& part) { return part.divider >= 0; }) + "."});
  }

  void Boxes() {
    Add("Mark and fix the slides",
        {AnyBox(bank_, [](const Space& s) { return Facts(s.slide.type).sold == SoldAs::kNot; })
             ? "Fix the runners level and parallel; a drawer that binds is a runner out of true."
             : "Mark each slide line on the case from the heights stick, left and right from the "
               "same end; screw the slides to their lines."},
        {"Screws shorter than the side is thick: a point that comes through finds a hand."});
    Add("Cut the box parts",
        {"Cut all box sides to one stop, then all front and back ends to another; label them as "
         "the cut list does."},
        {kSaw, "Short ends are small parts: hold them with a sled and a clamp, not with fingers."});
    Joints();
    Add("Put the boxes together",
        {"Dry-fit one box and try it in its cell before you glue any.",
         AnyBox(bank_, [](const Space& s) { return s.box.solid_bottom; })
             ? "Glue the corners only: a solid bottom must be free to move in its groove."
             : "Equal diagonals, and no twist on a flat table."});
    Add("Hang the boxes", {"Each must run freely over its whole length before its front goes on."});
  }

  void Joints() {
    std::vector<std::string> lines;
    const bool joined =
        AnyBox(bank_, [](const Space& s) { return Facts(s.box.build.joint).cut.has_value(); });
    if (joined) lines.emplace_back("Cut the corner joints on scrap of the same thickness first.");
    if (AnyBox(bank_,
               [](const Space& s) { return Facts(s.box.build.fit).cut == CutKind::kGroove; })) {
      lines.emplace_back("Run every bottom groove with one setting; try the real bottom in it.");
    }
    if (AnyBox(bank_,
               [](const Space& s) { return Facts(s.box.build.fit).cut == CutKind::kRabbet; })) {
      lines.emplace_back("Cut the rabbets for the bottoms with one setting.");
    }
    if (!lines.empty()) Add("Cut joints and grooves", std::move(lines), {kRouter});
  }

  void Fronts() {
    if (std::ranges::none_of(bank_.spaces, &Space::HasFront)) return;
    Add("Cut the fronts last",
        {"Measure the finished opening again; when it differs, put that under \"measured\" in the "
         "spec and let the check say what to cut now.",
         bank_.match == FrontMatch::kNone
             ? "Cut all fronts from one run of grain where it shows."
             : "Before you cut a run of fronts apart, mark their order on its show face: a "
               "carpenter's triangle in chalk across all of it, its point at the first front. Keep "
               "every front that way up and round."},
        {kSaw});
    Add("Set the fronts",
        {std::string("Work from the lowest front up, with spacers of the gap between (") +
             std::string(Word(bank_.style)) + " fronts).",
         "Fix each with two screws from inside, try it, even the gaps with thin shims, then fix "
         "the rest."},
        {"Screws that leave wood before the show face: set a stop on the driver."});
    const bool pulls =
        std::ranges::any_of(bank_.spaces, [](const Space& s) { return !s.front.pulls.empty(); });
    if (pulls) {
      Add("Drill for the pulls", {"Use the full-scale template, from the show face, with a backing "
                                  "board behind."});
    }
  }

  void Finish() {
    Add("Finish and anchor",
        {"Take drawers and slides out, finish all faces alike, hang everything again.",
         "Fix the piece to the wall before it is loaded; heavy things in the lowest drawers."},
        {"A piece with several open drawers tips. Anchor it; keep children from climbing it.",
         "Rags with oil finish catch fire by themselves: spread them out or keep them under "
         "water."});
  }

  const Bank& bank_;
  std::vector<WorkStep> steps_;
};

}  // namespace

std::vector<WorkStep> WorkSteps(const Bank& bank) { return Steps(bank).Run(); }

}  // namespace tillwright
