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
    KeyRow{"$schema", "text", "Where an editor finds this schema; not used otherwise.", kNone},
    KeyRow{"title", "text", "What the piece is called on sheets and lists.", kNone,
           kInto<&Spec::title>},
    KeyRow{"units", "choice:units", "What a bare number means, and how results are shown.", "in"},
    KeyRow{"round", "length", "Shop increment: parts are cut to whole multiples of it.",
           defaults::kRound, kInto<&Spec::round>},
    KeyRow{"opening", "opening", "The clear space the bank lives in.", kNone},
    KeyRow{"case", "case", "The case from its outer sizes, instead of the opening.", kNone},
    KeyRow{"fronts", "fronts", "The fronts: style, thickness, gaps, overlays or edges.", kNone},
    KeyRow{"slides", "slides", "What the drawers run on.", kNone},
    KeyRow{"box", "box", "How the drawer boxes are made.", kNone},
    KeyRow{"screws", "screws", "Lengths of the screws at hand, to be checked.", kNone,
           kInto<&Spec::screws>},
    KeyRow{"allowance", "allowance", "What solid parts are sawn larger than finished.",
           "1 by 1/4 in, or 25 by 6 mm", kInto<&Spec::allowance>},
    KeyRow{"glue_up", "glue-up", "Boards that solid parts wider than one are glued up from.",
           "the widest of \"stock\"", kInto<&Spec::glue_up>},
    KeyRow{"edge_band", "edge-band", "Bands on the edges of sheet parts that are seen.", "none",
           kInto<&Spec::edge_band>},
    KeyRow{"graduate", "graduate", "How the fronts of \"drawers\" share the height.", "equal"},
    KeyRow{"divider", "divider", "Thickness of dividers between \"drawers\", or \"none\".",
           "none, but where drawers need something to stand on"},
    KeyRow{"gap", "length-or-zero", "Gap between the fronts of \"drawers\".", "fronts.gap",
           kInto<&LayoutNode::gap>},
    KeyRow{"grid", "length",
           "Every front's size plus one gap is a multiple of this (32 mm system).", kNone,
           kInto<&Spec::grid>},
    KeyRow{"drawers", "list:drawer", "The drawers, top to bottom.", kNone},
    KeyRow{"layout", "node", "A tree of rows and columns, instead of \"drawers\".", kNone},
    KeyRow{"tolerance", "tolerance", "How true parts are cut and set.", kNone,
           kInto<&Spec::tolerance>},
    KeyRow{"setting", "choice:setting", "How fronts are set: from spacers, or each to its line.",
           "spaced", kInto<&Spec::setting>},
    KeyRow{"limits", "limits", "The least and greatest that any gap may become.", kNone,
           kInto<&Spec::limits>},
    KeyRow{"season", "season", "Moisture of the wood when made, and at its driest and dampest.",
           kNone},
    KeyRow{"measured", "measured", "What was measured on the piece as it stands.", kNone},
    KeyRow{"spacers", "list:spacer", "Spacers and shims at hand.", kNone},
    KeyRow{"stock", "stock-list", "The sheets and boards that parts are cut from.",
           "sheets 96 by 48 in (2440 by 1220 mm), boards 96 by 6 in (2400 by 150 mm)"},
};

constexpr std::array kOpeningKeys{
    KeyRow{"width", "length", "Between the case sides.", kNone, kInto<&OpeningSpec::width>,
           kRequired},
    KeyRow{"height", "length", "From the case bottom's upper face to the underside of the top.",
           kNone, kInto<&OpeningSpec::height>, kRequired},
    KeyRow{"depth", "length", "From the case's front edges to the inside of the back.", kNone,
           kInto<&OpeningSpec::depth>, kRequired},
};

constexpr std::array kFrontsKeys{
    KeyRow{"style", "choice:front-style", "Over the opening's edges, or inside them.", "overlay",
           kInto<&FrontsSpec::style>},
    KeyRow{"thickness", "length", "Thickness of the fronts.", defaults::kFrontThickness,
           kInto<&FrontsSpec::thickness>},
    KeyRow{"gap", "length-or-zero", "Between neighbouring fronts.", defaults::kGap,
           kInto<&FrontsSpec::gap>},
    KeyRow{
        "overlay", "overlay",
        "Overlay: how far fronts cover the case beyond the opening's edge, for all edges or each.",
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
           "Which fronts are cut out of one piece in their order, so that the grain runs on.",
           "none", kInto<&FrontsSpec::match>},
    KeyRow{"pull", "pull-or-none", "The holes for pulls, or \"none\".", "none",
           kInto<&FrontsSpec::pull>},
};

constexpr std::array kPullKeys{
    KeyRow{"centers", "length-or-zero", "Between a pull's two holes; zero: one hole, a knob.", "0",
           kInto<&PullSpec::centers>},
    KeyRow{"down", "length", "From the front's top edge to the holes.", "half the front's height",
           kInto<&PullSpec::down>},
    KeyRow{"count", "pull-count", "Pulls on one front; two stand at a quarter and three quarters.",
           "1; 2 on a front wider than 24 in (610 mm)", kInto<&PullSpec::count>},
};

constexpr std::array kFrontKeys{
    KeyRow{"thickness", "length", "Thickness of this front.", "fronts.thickness",
           kInto<&FrontSpec::thickness>},
    KeyRow{"material", "text", "What this front is made of.", "fronts.material",
           kInto<&FrontSpec::material>},
    KeyRow{"grain", "choice:grain", "Which way its grain runs.", "fronts.grain",
           kInto<&FrontSpec::grain>},
    KeyRow{"pull", "pull-or-none", "Its pull, merged over the bank's, or \"none\".", "fronts.pull",
           kInto<&FrontSpec::pull>},
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
    KeyRow{"lengths", "list:length", "The lengths there are to choose from.",
           "10 to 28 in by 2, or 250 to 700 mm by 50"},
    KeyRow{"clearance", "length-or-zero", "Space at each side of the box (not undermount).",
           "by type: 1/2 in, 1/8 in, 1/32 in", kInto<&SlideSpec::clearance>},
    KeyRow{"deduct", "length-or-zero", "Undermount: the cell less this is the box's inside width.",
           defaults::kDeduct, kInto<&SlideSpec::deduct>},
    KeyRow{"side_max", "length", "Undermount: the thickest box side the slide takes.",
           defaults::kSideMax, kInto<&SlideSpec::side_max>},
    KeyRow{"behind", "length-or-zero", "Space that stays free behind the box.",
           "1/2 in (13 mm); undermount 3/4 in (19 mm)", kInto<&SlideSpec::behind>},
    KeyRow{"line", "length-or-zero", "Height of the slide line above the box's lower edge.",
           "side-mount 7/8 in (22 mm), others 0", kInto<&SlideSpec::line>},
    KeyRow{"rating", "weight", "What a pair of the slides carries.", kNone},
};

constexpr std::array kBoxKeys{
    KeyRow{"side", "stock", "The box sides.", defaults::kBoxSide, kInto<&BoxSpec::side>},
    KeyRow{"end", "stock", "The box ends.", "as the sides", kInto<&BoxSpec::end>},
    KeyRow{"corner", "corner", "How sides and ends meet.", "butt", kInto<&BoxSpec::corner>},
    KeyRow{"bottom", "bottom", "The bottom panel.", "1/4 in (6 mm) in a groove",
           kInto<&BoxSpec::bottom>},
    KeyRow{"clear_below", "length-or-zero", "Space below the box.", "by slide type",
           kInto<&BoxSpec::clear_below>},
    KeyRow{"clear_above", "length-or-zero", "Space above the box.", "by slide type",
           kInto<&BoxSpec::clear_above>},
    KeyRow{"height", "length", "Height of the box, as typed.", "what the cell allows",
           kInto<&BoxSpec::height>},
    KeyRow{"heights", "list:length", "Stock heights: the tallest that fits is taken.", kNone},
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
    KeyRow{"lap", "length", "Half-blind dovetail: left uncut on the ends' outer faces.",
           "a quarter of the end", kInto<&CornerSpec::lap>},
    KeyRow{"back_setback", "length-or-zero",
           "Butt, rabbet and dado: how far the back end stands in from the sides' rear ends.", "0",
           kInto<&CornerSpec::back_setback>},
};

constexpr std::array kBottomKeys{
    KeyRow{"thickness", "length", "Thickness, as measured.", defaults::kBottomThickness,
           kInto<&BottomSpec::thickness>},
    KeyRow{"fit", "choice:bottom-fit", "How the bottom is fixed.", "groove",
           kInto<&BottomSpec::fit>},
    KeyRow{"depth", "length", "Groove and rabbet: depth.", defaults::kGrooveDepth,
           kInto<&BottomSpec::depth>},
    KeyRow{"up", "length-or-zero", "Groove: its lower side above the box's lower edge.",
           "by slide type: 1/4 in or 1/2 in", kInto<&BottomSpec::up>},
    KeyRow{"play", "length-or-zero", "Groove and rabbet: play per edge.", defaults::kPlay,
           kInto<&BottomSpec::play>},
    KeyRow{"open_back", "flag", "Groove: the back end stops above the bottom.", "false",
           kInto<&BottomSpec::open_back>},
    KeyRow{"material", "text", "What the bottom is made of.", kNone, kInto<&BottomSpec::material>},
};

constexpr std::array kScrewKeys{
    KeyRow{"front", "length", "From inside the box through its front end into the front.", kNone,
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
    KeyRow{"board", "length", "The widest board at hand.", kNone, kInto<&GlueUpSpec::board>,
           kRequired},
    KeyRow{"joint", "length-or-zero", "What jointing takes at each joint.", defaults::kJointing,
           kInto<&GlueUpSpec::joint>},
};

constexpr std::array kEdgeBandKeys{
    KeyRow{"thickness", "length-or-zero", "Thickness: parts are sawn smaller by it.", "0",
           kInto<&EdgeBandSpec::thickness>},
    KeyRow{"material", "text", "What it is made of.", kNone, kInto<&EdgeBandSpec::material>},
    KeyRow{"fronts", "flag", "On all edges of the fronts.", "true", kInto<&EdgeBandSpec::fronts>},
    KeyRow{"case", "flag", "On the front edges of the case, its dividers and partitions.", "true",
           kInto<&EdgeBandSpec::casework>},
    KeyRow{"boxes", "flag", "On the upper edges of the boxes.", "false",
           kInto<&EdgeBandSpec::boxes>},
};

constexpr std::array kGraduateKeys{
    KeyRow{"scheme", "choice:graduation", "How sizes follow one another.", "equal",
           kInto<&GraduateSpec::scheme>},
    KeyRow{"step", "signed-length", "Arithmetic: each front larger than the one before by this.",
           kNone, kInto<&GraduateSpec::step>},
    KeyRow{"first", "length", "Arithmetic and geometric: size of the first front.", kNone,
           kInto<&GraduateSpec::first>},
    KeyRow{"ratio", "ratio", "Geometric: each front so many times the one before.", kNone,
           kInto<&GraduateSpec::ratio>},
    KeyRow{"shares", "list:ratio", "Shares: one weight for every child.", kNone},
    KeyRow{"alike", "flag",
           "Equal: fronts all of one size, and boxes too; the remainder is left at the ends.",
           "false", kInto<&GraduateSpec::alike>},
};

constexpr std::array kSizeKeys{
    KeyRow{"exact", "length", "Size of the front along the split, as typed.", kNone,
           kInto<&SizeSpec::exact>},
    KeyRow{"min", "length", "Least size of the front along the split.", kNone,
           kInto<&SizeSpec::min>},
    KeyRow{"max", "length", "Greatest size of the front along the split.", kNone,
           kInto<&SizeSpec::max>},
    KeyRow{"weight", "ratio", "Share of the length beside the others (equal graduation).", "1",
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
        KeyRow{"slides", "slides", "This drawer's own keys, merged over the bank's.", kNone},
        KeyRow{"box", "box", "This drawer's own keys, merged over the bank's.", kNone},
        KeyRow{"contents", "text", "What goes into it.", kNone, kInto<&LeafSpec::contents>},
        KeyRow{"load", "text-or-number", "What its contents weigh.", kNone},
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
        KeyRow{"divider", "divider", "Thickness of the members between the children, or \"none\".",
               "as the case's sides where drawers need them"},
        KeyRow{"gap", "length-or-zero", "Gap between the children's fronts.", "fronts.gap",
               kInto<&LayoutNode::gap>},
    });

constexpr std::array kObjects{
    ObjectRow{"spec", "A bank of drawers to be sized.", kSpecKeys},
    ObjectRow{"opening", "The clear space the bank lives in.", kOpeningKeys},
    ObjectRow{"case", "The case from its outer sizes.", kCaseKeys},
    ObjectRow{"case-joint", "The joint of the case.", kCaseJointKeys},
    ObjectRow{"back", "The back of the case.", kCaseBackKeys},
    ObjectRow{"stretchers", "Two rails across the case instead of a top.", kStretcherKeys},
    ObjectRow{"toe-kick", "A board set back under the case.", kToeKickKeys},
    ObjectRow{"feet", "Feet under the case.", kFeetKeys},
    ObjectRow{"face-frame", "Stiles and rails on the front of the case.", kFaceFrameKeys},
    ObjectRow{"web-frame", "Dividers made as frames.", kWebFrameKeys},
    ObjectRow{"worktop", "The worktop that the case stands under.", kWorktopKeys},
    ObjectRow{"fronts", "The fronts of the bank.", kFrontsKeys},
    ObjectRow{"front", "One front's own keys.", kFrontKeys},
    ObjectRow{"pull", "The holes for pulls, on a front.", kPullKeys},
    ObjectRow{"overlay-edges", "An overlay for each edge.", kOverlayEdgesKeys},
    ObjectRow{"reveal", "An overlay given by what it leaves uncovered.", kRevealKeys},
    ObjectRow{"edges", "An edge gap for each edge.", kEdgesKeys},
    ObjectRow{"slides", "What drawers run on.", kSlidesKeys},
    ObjectRow{"box", "How boxes are made.", kBoxKeys},
    ObjectRow{"stock", "Stock of a part.", kStockKeys},
    ObjectRow{"corner", "The corner joint of the boxes.", kCornerKeys},
    ObjectRow{"bottom", "The bottom of the boxes.", kBottomKeys},
    ObjectRow{"screws", "Lengths of screws.", kScrewKeys},
    ObjectRow{"allowance", "What solid parts are sawn larger than finished.", kAllowanceKeys},
    ObjectRow{"glue-up", "Boards that solid parts wider than one are glued up from.", kGlueUpKeys},
    ObjectRow{"edge-band", "Bands on the edges of sheet parts that are seen.", kEdgeBandKeys},
    ObjectRow{"graduate", "How fronts share a length.", kGraduateKeys},
    ObjectRow{"drawer", "One drawer.", kDrawerKeys},
    ObjectRow{"blank", "A fixed false front.", kBlankKeys},
    ObjectRow{"open", "An open space.", kOpenKeys},
    ObjectRow{"node", "A node of the layout: rows, columns, or one leaf.", kNodeKeys},
    ObjectRow{"tolerance", "How true parts are cut and set.", kToleranceKeys},
    ObjectRow{"limits", "What any gap may become.", kLimitsKeys},
    ObjectRow{"season", "Moisture over the year, in percent or as the climate it comes from.",
              kSeasonKeys},
    ObjectRow{"climate", "Air that wood comes to rest in.", kClimateKeys},
    ObjectRow{"measured", "What was measured.", kMeasuredKeys},
    ObjectRow{"width-at", "A width and where it was measured.", kWidthAtKeys},
    ObjectRow{"measured-height", "Heights at both sides.", kMeasuredHeightKeys},
    ObjectRow{"diagonals", "Both diagonals.", kDiagonalsKeys},
    ObjectRow{"measured-part", "Sizes of one part.", kMeasuredPartKeys},
    ObjectRow{"spacer", "One kind of spacer.", kSpacerKeys},
    ObjectRow{"stock-list", "What parts are cut from, and with which saw.", kStockListKeys},
    ObjectRow{"stock-piece", "One kind of sheet or board.", kStockPieceKeys},
    ObjectRow{"flaw", "A stretch to leave out.", kDefectKeys},
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
