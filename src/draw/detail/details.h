// Details: the places a view's scale hides, drawn again at full size inside a circle.
//
// ChooseDetails() looks only at the bank: which constructions it has, each once however many
// drawers share it, the most useful first. A sheet draws the mark of each on the view it belongs to
// and the detail itself beside it; it may leave some out (the last first) and must then leave out
// both.
//
// Letters run from B, since A names the section; a sheet that leaves details out in the middle may
// give the rest new letters before it draws them.
//
//   const std::vector<DetailChoice> choices = ChooseDetails(bank);
//   View plan = PlanSection(bank, space, scale, options, metrics);
//   for (const DetailChoice& choice : choices) {
//     if (choice.parent != ViewKind::kPlan || choice.space != space) continue;
//     if (!NeedsDetail(choice, scale)) continue;
//     const DetailMark mark = MarkOf(choice, plan);   // where, and how large
//     View detail = DetailView(bank, choice, metrics);
//   }
#ifndef TILLWRIGHT_DRAW_DETAIL_DETAILS_H_
#define TILLWRIGHT_DRAW_DETAIL_DETAILS_H_

#include <cstdint>
#include <string>
#include <vector>

#include "draw/views.h"
#include "sheet/scale.h"
#include "tillwright/bank.h"
#include "tillwright/draw.h"
#include "tillwright/text_metrics.h"

namespace tillwright {

enum class DetailKind : std::uint8_t {
  kGap,     // side section: the gap between two fronts above one another, with both boxes
  kEdge,    // side section: the lowest front at the case's bottom, or the highest at its top
  kBottom,  // side section: bottom panel, groove or rabbet, in an end of the box
  kCorner,  // plan: how side and front end meet; at the rear, a back end that stands in
  kBack,    // plan: the case's back in its rabbet or groove
  kJoint,   // front: how the case's bottom is let into its left side, cut parallel to the front
};

struct DetailChoice {
  DetailKind kind = DetailKind::kGap;
  std::string letter;      // of the balloon
  std::string title;       // "GROOVE AND BOTTOM"
  std::string applies_to;  // "ALL DRAWERS", "D1, D3"; empty when it belongs to the case
  std::size_t space = 0;   // index into Bank::spaces: whose construction is drawn; of those that
                           // share it the one whose plan is drawn with section A-A, if it does
  std::size_t other = 0;   // kGap: the space below; otherwise as `space`
  bool rear = false;       // at the back end of the box, not the front end
  // The view that carries the mark. Its axes: side section z to the right, y up; plan x to the
  // right, z up (the front is at the bottom of the paper); front elevation x to the right, y up.
  ViewKind parent = ViewKind::kSide;
  Length right, up;    // center, in the parent's axes
  Scale scale;         // of the detail, 1:1 wherever its circle can hold it
  double radius = 21;  // of its circle, mm on paper
};

[[nodiscard]] std::vector<DetailChoice> ChooseDetails(const Bank& bank);

// False when the view itself already shows as much: its scale is more than half the detail's.
[[nodiscard]] bool NeedsDetail(const DetailChoice& choice, const Scale& parent);

// Where the mark goes on the parent, by View::map: the circle encloses what the detail shows, but
// is never smaller than 3 mm. REQUIRES: `parent` is the choice's parent, drawn from the same bank;
// a plan, of the choice's space.
[[nodiscard]] DetailMark MarkOf(const DetailChoice& choice, const View& parent);

// The detail: everything inside the circle, its dimensions and notes outside, title and balloon
// below. Its name is "detail-b" and so on.
[[nodiscard]] View DetailView(const Bank& bank, const DetailChoice& choice,
                              const TextMetrics& metrics);

// Lays those details on sheets that no view shows large enough.
void PlaceDetails(Composer& composer);

}  // namespace tillwright

#endif  // TILLWRIGHT_DRAW_DETAIL_DETAILS_H_
