#include "draw/stick/templates.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "bank/id_list.h"
#include "draw/stick/axis_marks.h"
#include "draw/stick/template_tools.h"
#include "sheet/hatch.h"
#include "spec/kinds.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr double kBeside = 12;  // mm of paper beside the outermost hole
constexpr double kLeastBeside = 4.5;
using Sizes = std::vector<TemplateCanvas::Size>;

// Drawers for which one template serves.
struct Served {
  IdList ids;
  const Space* first = nullptr;
};

// Spaces with the same key, in reading order.
template <class Key>
std::vector<Served> Alike(const Bank& bank, Key key) {
  std::vector<Served> groups;
  for (const Space& space : bank.spaces) {
    const auto own = key(space);
    if (!own) continue;
    const auto same = std::ranges::find_if(
        groups, [&](const Served& served) { return key(*served.first) == own; });
    Served& served = same == groups.end() ? groups.emplace_back() : *same;
    if (served.first == nullptr) served.first = &space;
    served.ids.Add(ToText(space.id));
  }
  return groups;
}

class TemplateMaker {
 public:
  TemplateMaker(const Bank& bank, const StripStyle& style, const ScrewRow& screws,
                const PieceRoom& room, const TextMetrics& metrics)
      : bank_(bank), style_(style), screws_(screws), room_(room), metrics_(metrics) {}

  std::vector<Template> Make() {
    for (const Served& served : Alike(bank_, PullKey)) Pull(served);
    for (const Served& served : Alike(bank_, SlideKey)) Slide(served);
    for (const Served& served : Alike(bank_, GrooveKey)) Groove(served);
    return std::move(templates_);
  }

 private:
  std::string Text(Length length) const { return FormatWithUnit(length, bank_.units); }

  // --- Pulls ---

  using PullPlace = std::optional<std::pair<Length, std::vector<Length>>>;
  // Below the top edge, and from the front's left edge.
  static PullPlace PullKey(const Space& space) {
    if (!space.HasFront() || space.front.pulls.empty()) return std::nullopt;
    std::pair<Length, std::vector<Length>> key;
    key.first = space.front.rect.Top() - space.front.pulls[0].y;
    for (const PullHole& hole : space.front.pulls)
      key.second.push_back(hole.x - space.front.rect.x);
    return key;
  }

  // The holes from the front's left end; where the paper is too narrow, those of one pull, which
  // are the left half of them.
  void Pull(const Served& served) {
    const Space& space = *served.first;
    const std::string id = ToText(space.id);
    const Front& front = space.front;
    TemplateCanvas canvas(style_, metrics_);
    std::size_t holes = front.pulls.size();
    const auto span = [&] { return front.pulls[holes - 1].x - front.pulls[0].x; };
    while (holes > 1 && canvas.X(span()) > room_.width - 60) holes /= 2;
    const Length down = front.rect.Top() - front.pulls[0].y;
    const bool from_top = canvas.Y(down) + kBeside + 40 <= room_.height;
    const double right = canvas.X(span()) + 2 * kBeside;
    const double y = from_top ? canvas.Y(down) : kBeside;
    Outline(canvas, right, y + kBeside, from_top ? Pen::kCutLine : Pen::kTrimLine);
    canvas.Line(0, y, right, y, Pen::kCenter);
    Sizes across;
    for (std::size_t i = 0; i < holes; ++i) {
      canvas.Hole(kBeside + canvas.X(front.pulls[i].x - front.pulls[0].x), y);
      const std::string path = Under(id, "front.pull." + std::to_string(i + 1) + ".next");
      if (i + 1 < holes) across.push_back({front.pulls[i + 1].x - front.pulls[i].x, path});
    }
    if (!across.empty()) canvas.Chain(PaperSide::kAbove, kBeside, 0, across);
    const std::string below = Under(id, "front.pull.1.above");
    if (from_top) canvas.Chain(PaperSide::kRight, 0, right, {{down, below}});
    Add(canvas, "pull", "PULL HOLES: front " + served.ids.ToText(),
        PullWords(front, holes, down, from_top));
  }

  std::vector<std::string> PullWords(const Front& front, std::size_t holes, Length down,
                                     bool from_top) const {
    std::vector<std::string> words;
    words.push_back(from_top
                        ? "Top edge of the paper on the top edge of the front."
                        : "The line of holes is " + Text(down) + " below the front's top edge.");
    std::string sentence =
        "First hole " + Text(front.pulls[0].x - front.rect.x) + " from the front's left end";
    if (holes < front.pulls.size()) {
      sentence += ", then " + Text(front.pulls[holes].x - front.rect.x) + " for the other pull";
    }
    words.push_back(sentence + ".");
    words.emplace_back(
        "Mark the centers with an awl, back the front with scrap, drill from the show face.");
    return words;
  }

  // --- Slides ---

  using SlidePlace = std::optional<std::tuple<SlideType, Length, Length>>;
  static SlidePlace SlideKey(const Space& space) {
    if (!space.HasBox() || !ScrewsIntoSide(space.slide.type)) return std::nullopt;
    return std::tuple(space.slide.type, space.slide.length, space.box.z);
  }

  // Holes along the slide line, from the case's front edge, as many as the paper holds.
  void Slide(const Served& served) {
    const Space& space = *served.first;
    const std::string id = ToText(space.id);
    TemplateCanvas canvas(style_, metrics_);
    constexpr double kHalf = 16;  // mm of paper above and below the line
    const Length first = space.box.z + screws_.setback;
    // On a narrow roll the paper ends close behind the first hole.
    const double beside = std::clamp(room_.width - canvas.X(first) - 3, kLeastBeside, kBeside);
    Length last = first;
    while (last + screws_.pitch < space.box.z + space.slide.length &&
           canvas.X(last + screws_.pitch) + kBeside + 6 <= room_.width) {
      last += screws_.pitch;
    }
    const double right = canvas.X(last) + beside;
    const auto x = [&](double from_edge) { return style_.mirror ? right - from_edge : from_edge; };
    Outline(canvas, right, 2 * kHalf, Pen::kTrimLine);
    canvas.Line(x(0), 0, x(0), 2 * kHalf, Pen::kCutLine);
    canvas.Line(0, kHalf, right, kHalf, Pen::kCenter);
    Sizes sizes{{first, ""}};
    for (Length at = first; at <= last; at += screws_.pitch) {
      canvas.Hole(x(canvas.X(at)), kHalf);
      if (at > first) sizes.push_back({screws_.pitch, ""});
    }
    if (style_.mirror) std::ranges::reverse(sizes);
    canvas.Chain(PaperSide::kAbove, style_.mirror ? x(canvas.X(last)) : 0, 0, sizes);
    Add(canvas, "slide", "SLIDE SCREWS: " + SlidesOn() + served.ids.ToText(),
        {std::string("Cut edge on the front edge of the case, the line on the slide line from the "
                     "stick. ") +
             (style_.mirror ? "This is the right-hand side." : "This is the left-hand side.") +
             " Turn over for the other.",
         "The first hole " + FormatWithUnit(screws_.setback, Unit::kMillimeter) +
             (space.box.z.IsZero() ? " in" : " behind the inset front") + ", then every " +
             FormatWithUnit(screws_.pitch, Unit::kMillimeter) +
             ": common practice. Follow your slide's own holes and the slide maker's sheet."});
  }

  // What the screws go into: the side of a case, or what the opening is in.
  std::string SlidesOn() const { return bank_.casework ? "case side, for " : "for "; }

  // --- Groove ---

  using GroovePlace = std::optional<std::tuple<BottomFit, Length, Length, Length, Length, Length>>;
  static GroovePlace GrooveKey(const Space& space) {
    if (!space.HasBox()) return std::nullopt;
    const BoxBuild& b = space.box.build;
    return std::tuple(b.fit, b.side, b.bottom, b.groove, b.up, Length());
  }

  // The lower edge of a box side, cut across, its inside at the right.
  void Groove(const Served& served) {
    const std::string id = ToText(served.first->id);
    const BoxBuild& b = served.first->box.build;
    if (!Facts(b.fit).cut) return;
    TemplateCanvas canvas(style_, metrics_);
    const Length up = Facts(b.fit).set_up ? b.up : Length();
    const double top = 0;
    const double foot = std::max(40.0, canvas.Y(up + b.bottom) + 14);
    const double upper = foot - canvas.Y(up + b.bottom);
    const double lower = foot - canvas.Y(up);
    const double side = canvas.X(b.side);
    const double into = canvas.X(b.side - b.groove);
    Polyline outline{{{0, top}, {side, top}, {side, upper}, {into, upper}, {into, lower}},
                     true,
                     Pen::kDetailCut,
                     Tone::kNone};
    if (up > Length()) {
      outline.points.push_back({side, lower});
      outline.points.push_back({side, foot});
    } else {
      outline.points.push_back({into, foot});
    }
    outline.points.push_back({0, foot});
    canvas.group().primitives.emplace_back(outline);
    canvas.group().primitives.emplace_back(
        HatchAtAngle(AreaOf(outline.points), 45, 1.6, Pen::kDetailHatch));
    canvas.Chain(PaperSide::kAbove, 0, top,
                 {{b.side - b.groove, ""}, {b.groove, Under(id, "groove.depth")}});
    Sizes heights{{b.bottom, Under(id, "groove.width")}};
    if (up > Length()) heights.push_back({up, Under(id, "groove.up")});
    canvas.Chain(PaperSide::kRight, upper, side, heights);
    const std::string word = up > Length() ? "GROOVE" : "RABBET";
    Add(canvas, "groove", word + ": box side " + served.ids.ToText(),
        {"Section at full size: lower edge at the bottom, inside at the right. Set the fence and "
         "cutter to it, then cut a scrap and test it with your own bottom panel."});
  }

  static void Outline(TemplateCanvas& canvas, double right, double bottom, Pen upper) {
    canvas.Line(0, 0, right, 0, upper);
    canvas.Line(0, 0, 0, bottom, Pen::kTrimLine);
    canvas.Line(right, 0, right, bottom, Pen::kTrimLine);
    canvas.Line(0, bottom, right, bottom, Pen::kTrimLine);
  }

  void Add(TemplateCanvas& canvas, const std::string& kind, const std::string& title,
           const std::vector<std::string>& words) {
    const std::string id = "template-" + kind + "-" + std::to_string(templates_.size() + 1);
    templates_.push_back(canvas.Finish(id, title, words, room_.width));
  }

  const Bank& bank_;
  const StripStyle& style_;
  const ScrewRow& screws_;
  const PieceRoom& room_;
  const TextMetrics& metrics_;
  std::vector<Template> templates_;
};

}  // namespace

std::vector<Template> TemplatesOf(const Bank& bank, const StripStyle& style, const ScrewRow& screws,
                                  const PieceRoom& room, const TextMetrics& metrics) {
  return TemplateMaker(bank, style, screws, room, metrics).Make();
}

}  // namespace tillwright
