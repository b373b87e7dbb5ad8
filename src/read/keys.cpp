#include "tillwright/keys.h"

#include <algorithm>
#include <array>

#include "read/case_keys.h"
#include "read/check_keys.h"
#include "read/key_target.h"
#include "read/stock_keys.h"
#include "tillwright/diagnostic.h"
#include "tillwright/length_text.h"

namespace tillwright {
namespace {

constexpr std::array kSpecKeys{
    KeyRow{"$schema", "text", "Where an editor finds this schema; otherwise ignored.", kNone},
    KeyRow{"title", "text", "What the piece is called on sheets and lists.", kNone,
           kInto<&Spec::title>},
    KeyRow{"units", "choice:units", "What a bare number means, and how results are shown.", "in"},
    KeyRow{"round", "length", "Shop increment: parts are cut to whole multiples of it.",
           defaults::kRound, kInto<&Spec::round>},
    KeyRow{"opening", "opening", "The clear opening the bank goes in.", kNone},
    KeyRow{"case", "case", "The case by its outer sizes, instead of the opening.", kNone},
    KeyRow{"fronts", "fronts", "The fronts: style, thickness, gaps, overlays or edges.", kNone},
    KeyRow{"slides", "slides", "What the drawers run on.", kNone},
    KeyRow{"box", "box", "How the drawer boxes are made.", kNone},
    KeyRow{"screws", "screws", "Lengths of the screws you have, to be checked.", kNone,
           kInto<&Spec::screws>},
    KeyRow{"allowance", "allowance", "Extra size for rough-cutting solid parts.",
           "1 by 1/4 in, or 25 by 6 mm", kInto<&Spec::allowance>},
    KeyRow{"glue_up", "glue-up", "Board width for gluing up wide solid parts.",
           "the widest of \"stock\"", kInto<&Spec::glue_up>},
    KeyRow{"edge_band", "edge-band", "Banding on the visible edges of sheet parts.", "none",
           kInto<&Spec::edge_band>},
    KeyRow{"graduate", "graduate", "How the fronts of \"drawers\" share the height.", "equal"},
    KeyRow{"divider", "divider", "Thickness of dividers between \"drawers\", or \"none\".",
           "none, unless drawers need something to rest on"},
    KeyRow{"gap", "length-or-zero", "Gap between the fronts of \"drawers\".", "fronts.gap",
           kInto<&LayoutNode::gap>},
    KeyRow{"grid", "length", "Every front plus one gap is a multiple of this (32 mm system).",
           kNone, kInto<&Spec::grid>},
    KeyRow{"drawers", "list:drawer", "The drawers, top to bottom.", kNone},
    KeyRow{"layout", "node", "A tree of rows and columns, instead of \"drawers\".", kNone},
    KeyRow{"tolerance", "tolerance", "How accurately parts are cut and set.", kNone,
           kInto<&Spec::tolerance>},
    KeyRow{"setting", "choice:setting",
           "How fronts are set: from spacers, or each to its own line.", "spaced",
           kInto<&Spec::setting>},
    KeyRow{"limits", "limits", "The minimum and maximum any gap may become.", kNone,
           kInto<&Spec::limits>},
    KeyRow{"season", "season", "Moisture of the wood when made, and at its driest and dampest.",
           kNone},
    KeyRow{"measured", "measured", "What you measured on the piece as built.", kNone},
    KeyRow{"spacers", "list:spacer", "Spacers and shims you have.", kNone},
    KeyRow{"stock", "stock-list", "The sheets and boards that parts are cut from.",
           "sheets 96 by 48 in (2440 by 1220 mm), boards 96 by 6 in (2400 by 150 mm)"},
};

constexpr std::array kOpeningKeys{
    KeyRow{"width", "length", "Between the case sides.", kNone, kInto<&OpeningSpec::width>,
           kRequired},
    KeyRow{"height", "length", "From the top face of the case bottom to the underside of the top.",
           kNone, kInto<&OpeningSpec::height>, kRequired},
    KeyRow{"depth", "length", "From the case's front edges to the inside of the back.", kNone,
           kInto<&OpeningSpec::depth>, kRequired},
};

constexpr std::array kFrontsKeys{
    KeyRow{"style", "choice:front-style", "Over the edges of the opening, or inside it.", "overlay",
           kInto<&FrontsSpec::style>},
    KeyRow{"thickness", "length", "Thickness of the fronts.", defaults::kFrontThickness,
           kInto<&FrontsSpec::thickness>},
    KeyRow{"gap", "length-or-zero", "Between neighboring fronts.", defaults::kGap,
           kInto<&FrontsSpec::gap>},
    KeyRow{"overlay", "overlay",
           "Overlay: how far fronts cover the case past the edge of the opening, for all edges or "
           "each.",
           defaults::kOverlay},
    KeyRow{"edge", "edge", "Inset: the gap to the opening's edge, for all edges or each.",
           defaults::kEdge},
    KeyRow{"material", "text", "What the fronts are made of.", kNone, kInto<&FrontsSpec::material>},
    KeyRow{"grain", "choice:grain", "Which way the grain of the fronts runs.", "horizontal",
           kInto<&FrontsSpec::grain>},
    KeyRow{"cut", "choice:sawn", "How solid fronts were sawn.", "flat", kInto<&FrontsSpec::cut>},
    KeyRow{"held", "choice:held", "Where a front is held while the wood moves.", "middle",
           kInto<&FrontsSpec::held>},
    KeyRow{"match", "choice:match",
           "Which fronts are cut in sequence from one board so the grain continues.", "none",
           kInto<&FrontsSpec::match>},
    KeyRow{"pull", "pull-or-none", "The holes for pulls, or \"none\".", "none",
           kInto<&FrontsSpec::pull>},
};

constexpr std::array kPullKeys{
    KeyRow{"centers", "length-or-zero",
           "Between the two holes of a pull; zero for a knob, one hole.", "0",
           kInto<&PullSpec::centers>},
    KeyRow{"down", "length", "From the front's top edge to the holes.", "half the front's height",
           kInto<&PullSpec::down>},
    KeyRow{"count", "pull-count",
           "Pulls on one front; two are placed at one quarter and three quarters.",
           "1; 2 on a front wider than 24 in (610 mm)", kInto<&PullSpec::count>},
};

constexpr std::array kFrontKeys{
    KeyRow{"thickness", "length", "Thickness of this front.", "fronts.thickness",
           kInto<&FrontSpec::thickness>},
    KeyRow{"material", "text", "What this front is made of.", "fronts.material",
           kInto<&FrontSpec::material>},
    KeyRow{"grain", "choice:grain", "Which way its grain runs.", "fronts.grain",
           kInto<&FrontSpec::grain>},
    KeyRow{"pull", "pull-or-none", "Its pull, overriding the bank's key by key, or \"none\".",
           "fronts.pull", kInto<&FrontSpec::pull>},
};

constexpr std::array kOverlayEdgesKeys{
    KeyRow{"top", "overlay-edge", "Overlay at the top.", defaults::kOverlay},
    KeyRow{"bottom", "overlay-edge", "Overlay at the bottom.", defaults::kOverlay},
    KeyRow{"left", "overlay-edge", "Overlay at the left.", defaults::kOverlay},
    KeyRow{"right", "overlay-edge", "Overlay at the right.", defaults::kOverlay},
};

constexpr std::array kRevealKeys{
    KeyRow{"reveal", "length-or-zero", "The strip of case edge that the front leaves uncovered.",
           kNone, KeyTarget{}, kRequired},
};

constexpr std::array kEdgesKeys{
    KeyRow{"top", "length-or-zero", "Gap at the top.", defaults::kEdge},
    KeyRow{"bottom", "length-or-zero", "Gap at the bottom.", defaults::kEdge},
    KeyRow{"left", "length-or-zero", "Gap at the left.", defaults::kEdge},
    KeyRow{"right", "length-or-zero", "Gap at the right.", defaults::kEdge},
};

constexpr std::array kSlidesKeys{
    KeyRow{"type", "choice:slide", "The kind of slide.", "side-mount", kInto<&SlideSpec::type>},
    KeyRow{"length", "slide-length", "Length of the slides, or \"auto\": the longest that fits.",
           "auto"},
    KeyRow{"lengths", "list:length", "The lengths available.",
           "10 to 28 in by 2, or 250 to 700 mm by 50"},
    KeyRow{"clearance", "length-or-zero", "Space at each side of the box (not undermount).",
           "by type: 1/2 in, 1/8 in, 1/32 in", kInto<&SlideSpec::clearance>},
    KeyRow{"deduct", "length-or-zero",
           "Undermount: the opening width minus this is the inside width of the box.",
           defaults::kDeduct, kInto<&SlideSpec::deduct>},
    KeyRow{"side_max", "length", "Undermount: the thickest box side that fits the slide.",
           defaults::kSideMax, kInto<&SlideSpec::side_max>},
    KeyRow{"behind", "length-or-zero", "Clearance behind the box.",
           "1/2 in (13 mm); undermount 3/4 in (19 mm)", kInto<&SlideSpec::behind>},
    KeyRow{"line", "length-or-zero", "Height of the slide line above the bottom of the box.",
           "side-mount 7/8 in (22 mm), others 0", kInto<&SlideSpec::line>},
    KeyRow{"rating", "weight", "Load rating of a pair of slides.", kNone},
};

constexpr std::array kBoxKeys{
    KeyRow{"side", "stock", "The box sides.", defaults::kBoxSide, kInto<&BoxSpec::side>},
    KeyRow{"end", "stock", "The box front and back.", "as the sides", kInto<&BoxSpec::end>},
    KeyRow{"corner", "corner", "How the sides meet the box front and back.", "butt",
           kInto<&BoxSpec::corner>},
    KeyRow{"bottom", "bottom", "The bottom panel.", "1/4 in (6 mm) in a groove",
           kInto<&BoxSpec::bottom>},
    KeyRow{"clear_below", "length-or-zero", "Space below the box.", "by slide type",
           kInto<&BoxSpec::clear_below>},
    KeyRow{"clear_above", "length-or-zero", "Space above the box.", "by slide type",
           kInto<&BoxSpec::clear_above>},
    KeyRow{"height", "length", "Height of the box, as typed.", "what fits the opening",
           kInto<&BoxSpec::height>},
    KeyRow{"heights", "list:length", "Stock heights: the tallest that fits is used.", kNone},
    KeyRow{"depth", "length", "Depth of the box.", "the slide's length", kInto<&BoxSpec::depth>},
};

constexpr std::array kStockKeys{
    KeyRow{"thickness", "length", "Thickness, as measured.", defaults::kBoxSide,
           kInto<&StockSpec::thickness>},
    KeyRow{"material", "text", "What it is made of.", kNone, kInto<&StockSpec::material>},
};

constexpr std::array kCornerKeys{
    KeyRow{"joint", "choice:corner", "The corner joint.", "butt", kInto<&CornerSpec::joint>},
    KeyRow{"depth", "length", "Rabbet and dado: depth into the sides.", "half the side",
           kInto<&CornerSpec::depth>},
    KeyRow{"lap", "length",
           "Half-blind dovetail: wood left on the outer faces of the box front and back.",
           "a quarter of their thickness", kInto<&CornerSpec::lap>},
    KeyRow{"back_setback", "length-or-zero",
           "Butt, rabbet and dado: how far the box back is set in from the rear ends of the sides.",
           "0", kInto<&CornerSpec::back_setback>},
};

constexpr std::array kBottomKeys{
    KeyRow{"thickness", "length", "Thickness, as measured.", defaults::kBottomThickness,
           kInto<&BottomSpec::thickness>},
    KeyRow{"fit", "choice:bottom-fit", "How the bottom is attached.", "groove",
           kInto<&BottomSpec::fit>},
    KeyRow{"depth", "length", "Groove and rabbet: depth.", defaults::kGrooveDepth,
           kInto<&BottomSpec::depth>},
    KeyRow{"up", "length-or-zero",
           "Groove: height of the groove's lower edge above the bottom of the side.",
           "by slide type: 1/4 in or 1/2 in", kInto<&BottomSpec::up>},
    KeyRow{"play", "length-or-zero", "Groove and rabbet: play at each edge.", defaults::kPlay,
           kInto<&BottomSpec::play>},
    KeyRow{"open_back", "flag", "Groove: the box back stops above the bottom panel.", "false",
           kInto<&BottomSpec::open_back>},
    KeyRow{"material", "text", "What the bottom is made of.", kNone, kInto<&BottomSpec::material>},
};

constexpr std::array kScrewKeys{
    KeyRow{"front", "length", "From inside the box, through the box front, into the front.", kNone,
           kInto<&ScrewSpec::front>},
    KeyRow{"slide", "length", "From the slide into the box side.", kNone, kInto<&ScrewSpec::slide>},
    KeyRow{"pocket", "length", "Pocket screws that join the case.", kNone,
           kInto<&ScrewSpec::pocket>},
};

constexpr std::array kAllowanceKeys{
    KeyRow{"length", "length-or-zero", "Along the grain.", defaults::kAllowanceLength,
           kInto<&AllowanceSpec::length>},
    KeyRow{"width", "length-or-zero", "Across the grain.", defaults::kAllowanceWidth,
           kInto<&AllowanceSpec::width>},
};

constexpr std::array kGlueUpKeys{
    KeyRow{"board", "length", "The widest board you have.", kNone, kInto<&GlueUpSpec::board>,
           kRequired},
    KeyRow{"joint", "length-or-zero", "What jointing takes at each joint.", defaults::kJointing,
           kInto<&GlueUpSpec::joint>},
};

constexpr std::array kEdgeBandKeys{
    KeyRow{"thickness", "length-or-zero", "Thickness: parts are sawn smaller by this.", "0",
           kInto<&EdgeBandSpec::thickness>},
    KeyRow{"material", "text", "What it is made of.", kNone, kInto<&EdgeBandSpec::material>},
    KeyRow{"fronts", "flag", "On all edges of the fronts.", "true", kInto<&EdgeBandSpec::fronts>},
    KeyRow{"case", "flag", "On the front edges of the case, its dividers and partitions.", "true",
           kInto<&EdgeBandSpec::casework>},
    KeyRow{"boxes", "flag", "On the top edges of the boxes.", "false", kInto<&EdgeBandSpec::boxes>},
};

constexpr std::array kGraduateKeys{
    KeyRow{"scheme", "choice:graduation", "How sizes graduate.", "equal",
           kInto<&GraduateSpec::scheme>},
    KeyRow{"step", "signed-length",
           "Arithmetic: each front is this much larger than the one before.", kNone,
           kInto<&GraduateSpec::step>},
    KeyRow{"first", "length", "Arithmetic and geometric: size of the first front.", kNone,
           kInto<&GraduateSpec::first>},
    KeyRow{"ratio", "ratio", "Geometric: each front is this many times the one before.", kNone,
           kInto<&GraduateSpec::ratio>},
    KeyRow{"shares", "list:ratio", "Shares: one weight for every child.", kNone},
    KeyRow{"alike", "flag",
           "Equal: all fronts one size, and boxes too; the remainder is left at the ends.", "false",
           kInto<&GraduateSpec::alike>},
};

constexpr std::array kSizeKeys{
    KeyRow{"exact", "length", "Size of the front along the split, as typed.", kNone,
           kInto<&SizeSpec::exact>},
    KeyRow{"min", "length", "Minimum size of the front along the split.", kNone,
           kInto<&SizeSpec::min>},
    KeyRow{"max", "length", "Maximum size of the front along the split.", kNone,
           kInto<&SizeSpec::max>},
    KeyRow{"weight", "ratio", "Share of the length relative to the others (equal graduation).", "1",
           kInto<&SizeSpec::weight>},
};

// The keys of something that takes its place along a split: its own, and the size keys between.
template <std::size_t Before, std::size_t After>
constexpr auto WithSizeKeys(const std::array<KeyRow, Before>& before,
                            const std::array<KeyRow, After>& after) {
  std::array<KeyRow, Before + kSizeKeys.size() + After> keys{};
  auto end = std::copy(before.begin(), before.end(), keys.begin());
  end = std::copy(kSizeKeys.begin(), kSizeKeys.end(), end);
  std::copy(after.begin(), after.end(), end);
  return keys;
}

constexpr auto kDrawerKeys = WithSizeKeys(
    std::array{
        KeyRow{"name", "text", "A label.", kNone, kInto<&LeafSpec::name>},
    },
    std::array{
        KeyRow{"front", "front", "This front's own keys.", kNone, kInto<&LeafSpec::front>},
        KeyRow{"slides", "slides", "This drawer's own keys, overriding the bank's.", kNone},
        KeyRow{"box", "box", "This drawer's own keys, overriding the bank's.", kNone},
        KeyRow{"contents", "text", "What goes in it.", kNone, kInto<&LeafSpec::contents>},
        KeyRow{"load", "text-or-number", "Weight of its contents.", kNone},
    });

constexpr auto kBlankKeys = WithSizeKeys(
    std::array{
        KeyRow{"name", "text", "A label.", kNone, kInto<&LeafSpec::name>},
    },
    std::array{
        KeyRow{"front", "front", "This front's own keys.", kNone, kInto<&LeafSpec::front>},
    });

constexpr auto kOpenKeys = WithSizeKeys(
    std::array{
        KeyRow{"name", "text", "A label.", kNone, kInto<&LeafSpec::name>},
    },
    std::array<KeyRow, 0>{});

constexpr auto kNodeKeys = WithSizeKeys(
    std::array{
        KeyRow{"rows", "list:node", "Children from top to bottom.", kNone},
        KeyRow{"columns", "list:node", "Children from left to right.", kNone},
        KeyRow{"drawer", "drawer", "A drawer.", kNone},
        KeyRow{"blank", "blank", "A fixed false front.", kNone},
        KeyRow{"open", "open", "An open space.", kNone},
    },
    std::array{
        KeyRow{"graduate", "graduate", "How the children share the length.", "equal"},
        KeyRow{"divider", "divider",
               "Thickness of the dividers or partitions between the children, or \"none\".",
               "as the case sides, where drawers need them"},
        KeyRow{"gap", "length-or-zero", "Gap between the children's fronts.", "fronts.gap",
               kInto<&LayoutNode::gap>},
    });

constexpr std::array kObjects{
    ObjectRow{"spec", "A bank of drawers to size.", kSpecKeys},
    ObjectRow{"opening", "The clear opening the bank goes in.", kOpeningKeys},
    ObjectRow{"case", "The case by its outer sizes.", kCaseKeys},
    ObjectRow{"case-joint", "The joint of the case.", kCaseJointKeys},
    ObjectRow{"back", "The back of the case.", kCaseBackKeys},
    ObjectRow{"stretchers", "Two rails across the case instead of a top.", kStretcherKeys},
    ObjectRow{"toe-kick", "A board set back under the case.", kToeKickKeys},
    ObjectRow{"feet", "Feet under the case.", kFeetKeys},
    ObjectRow{"face-frame", "Stiles and rails on the front of the case.", kFaceFrameKeys},
    ObjectRow{"web-frame", "Dividers built as frames.", kWebFrameKeys},
    ObjectRow{"worktop", "The worktop above the case.", kWorktopKeys},
    ObjectRow{"fronts", "The fronts of the bank.", kFrontsKeys},
    ObjectRow{"front", "One front's own keys.", kFrontKeys},
    ObjectRow{"pull", "The holes for pulls on a front.", kPullKeys},
    ObjectRow{"overlay-edges", "An overlay for each edge.", kOverlayEdgesKeys},
    ObjectRow{"reveal", "An overlay given by what it leaves uncovered.", kRevealKeys},
    ObjectRow{"edges", "An edge gap for each edge.", kEdgesKeys},
    ObjectRow{"slides", "What drawers run on.", kSlidesKeys},
    ObjectRow{"box", "How boxes are made.", kBoxKeys},
    ObjectRow{"stock", "The stock a part is made from.", kStockKeys},
    ObjectRow{"corner", "The corner joint of the boxes.", kCornerKeys},
    ObjectRow{"bottom", "The bottom of the boxes.", kBottomKeys},
    ObjectRow{"screws", "Lengths of screws.", kScrewKeys},
    ObjectRow{"allowance", "Extra size for rough-cutting solid parts.", kAllowanceKeys},
    ObjectRow{"glue-up", "Board width for gluing up wide solid parts.", kGlueUpKeys},
    ObjectRow{"edge-band", "Banding on the visible edges of sheet parts.", kEdgeBandKeys},
    ObjectRow{"graduate", "How fronts share a length.", kGraduateKeys},
    ObjectRow{"drawer", "One drawer.", kDrawerKeys},
    ObjectRow{"blank", "A fixed false front.", kBlankKeys},
    ObjectRow{"open", "An open space.", kOpenKeys},
    ObjectRow{"node", "A node of the layout: rows, columns, or one leaf.", kNodeKeys},
    ObjectRow{"tolerance", "How accurately parts are cut and set.", kToleranceKeys},
    ObjectRow{"limits", "The limits for every gap.", kLimitsKeys},
    ObjectRow{"season", "Moisture over the year, in percent or as the climate that causes it.",
              kSeasonKeys},
    ObjectRow{"climate", "Climate the wood reaches equilibrium in.", kClimateKeys},
    ObjectRow{"measured", "What you measured.", kMeasuredKeys},
    ObjectRow{"width-at", "A width and where it was measured.", kWidthAtKeys},
    ObjectRow{"measured-height", "Heights at both sides.", kMeasuredHeightKeys},
    ObjectRow{"diagonals", "Both diagonals.", kDiagonalsKeys},
    ObjectRow{"measured-part", "Sizes of one part.", kMeasuredPartKeys},
    ObjectRow{"spacer", "One kind of spacer.", kSpacerKeys},
    ObjectRow{"stock-list", "What parts are cut from, and with which saw.", kStockListKeys},
    ObjectRow{"stock-piece", "One kind of sheet or board.", kStockPieceKeys},
    ObjectRow{"defect", "A stretch to cut around.", kDefectKeys},
};

}  // namespace

std::string KeyDefault::Text() const {
  if (length == nullptr) return std::string(words);
  const std::string metric = FormatWithUnit(length->metric, Unit::kMillimeter);
  if (length->inch == length->metric) return metric;
  return FormatWithUnit(length->inch, Unit::kInch) + ", or " + metric;
}

std::span<const ObjectRow> SpecObjects() { return kObjects; }

const ObjectRow& SpecObject(std::string_view name) {
  for (const ObjectRow& row : kObjects) {
    if (row.name == name) return row;
  }
  Bug("no such object of the spec");
}

}  // namespace tillwright
