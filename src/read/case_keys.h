// The keys of the case and of what belongs to it; keys.cpp has the rest.
#ifndef TILLWRIGHT_READ_CASE_KEYS_H_
#define TILLWRIGHT_READ_CASE_KEYS_H_

#include <array>

#include "read/key_target.h"

namespace tillwright {

inline constexpr std::array kCaseKeys{
    KeyRow{"width", "length", "Outer width.", kNone, kInto<&CaseSpec::width>, kRequired},
    KeyRow{"height", "length", "Outer height; without a top, up to the underside of the worktop.",
           kNone},
    KeyRow{"depth", "length", "Outer depth, without an applied back.", kNone},
    KeyRow{"side", "length", "Thickness of the sides.", defaults::kCaseStock,
           kInto<&CaseSpec::side>},
    KeyRow{"bottom", "length", "Thickness of the bottom.", defaults::kCaseStock,
           kInto<&CaseSpec::bottom>},
    KeyRow{"top", "case-top", "Thickness of the top, or \"none\" when a worktop closes the case.",
           defaults::kCaseStock},
    KeyRow{"raise", "length-or-zero",
           "How far the bottom is raised above the lower ends of the sides.", "0",
           kInto<&CaseSpec::raise>},
    KeyRow{"joint", "case-joint", "How the bottom, top, dividers and partitions meet the sides.",
           "butt", kInto<&CaseSpec::joint>},
    KeyRow{"back", "case-back", "The back, or \"none\".", "1/4 in (6 mm) in a rabbet"},
    KeyRow{"material", "text", "What the case is made of.", kNone, kInto<&CaseSpec::material>},
    KeyRow{"stretchers", "stretchers", "Two rails across the case instead of a top.", kNone,
           kInto<&CaseSpec::stretchers>},
    KeyRow{"toe_kick", "toe-kick", "A board set back under the case; it raises the bottom.", kNone,
           kInto<&CaseSpec::toe_kick>},
    KeyRow{"feet", "feet", "Feet under the case.", kNone, kInto<&CaseSpec::feet>},
    KeyRow{"face_frame", "face-frame",
           "Stiles and rails on the front; the bank is sized to their opening.", kNone,
           kInto<&CaseSpec::face_frame>},
    KeyRow{"web_frame", "web-frame", "Dividers made as frames of rails and runners.", kNone,
           kInto<&CaseSpec::web_frame>},
    KeyRow{"worktop", "worktop", "The worktop above the case.", kNone, kInto<&CaseSpec::worktop>},
};

inline constexpr std::array kStretcherKeys{
    KeyRow{"width", "length", "Width of each; they are as thick as the top.", defaults::kStretcher,
           kInto<&StretcherSpec::width>},
};

inline constexpr std::array kToeKickKeys{
    KeyRow{"height", "length", "From the floor to the bottom's lower face.", defaults::kKickHeight,
           kInto<&ToeKickSpec::height>},
    KeyRow{"setback", "length", "From the case's front to the board.", defaults::kKickSetback,
           kInto<&ToeKickSpec::setback>},
};

inline constexpr std::array kFeetKeys{
    KeyRow{"height", "length", "From the floor to the case.", defaults::kFootHeight,
           kInto<&FeetSpec::height>},
    KeyRow{"setback", "length-or-zero", "From the case's front to the foremost feet.", "0",
           kInto<&FeetSpec::setback>},
    KeyRow{"count", "count", "How many.", "4; 6 under a case wider than 36 in (900 mm)",
           kInto<&FeetSpec::count>},
};

inline constexpr std::array kFaceFrameKeys{
    KeyRow{"thickness", "length", "Thickness.", defaults::kFrameThickness,
           kInto<&FaceFrameSpec::thickness>},
    KeyRow{"stile", "length", "Width of the stiles.", defaults::kFrameWidth,
           kInto<&FaceFrameSpec::stile>},
    KeyRow{"rail", "length", "Width of the top rail.", defaults::kFrameWidth,
           kInto<&FaceFrameSpec::rail>},
    KeyRow{"bottom_rail", "length", "Width of the bottom rail.", "as the top rail",
           kInto<&FaceFrameSpec::bottom_rail>},
    KeyRow{"overlap", "length-or-zero",
           "How far the stiles extend past the outer faces of the sides.", "0",
           kInto<&FaceFrameSpec::overlap>},
    KeyRow{"blocking", "length",
           "Height of the blocks behind the stiles that the slides are screwed to.",
           defaults::kBlocking, kInto<&FaceFrameSpec::blocking>},
    KeyRow{"material", "text", "What it is made of.", "as the case",
           kInto<&FaceFrameSpec::material>},
};

inline constexpr std::array kWebFrameKeys{
    KeyRow{"rail", "length", "Width of the front and back rails.", defaults::kWebRail,
           kInto<&WebFrameSpec::rail>},
    KeyRow{"runner", "length", "Width of the runners.", "as the rails",
           kInto<&WebFrameSpec::runner>},
    KeyRow{"tenon", "length", "Length of the runners' tenons, which fit the grooves in the rails.",
           defaults::kWebTenon, kInto<&WebFrameSpec::tenon>},
    KeyRow{"free", "length-or-zero",
           "Room behind the rear tenons of the runners, which are not glued.",
           "how much solid sides shrink from made to dry, up to the shop increment; otherwise 0",
           kInto<&WebFrameSpec::free>},
    KeyRow{"rails", "choice:open-rails",
           "Rails without runners, for drawers on slides: at the front, or at front and rear.",
           kNone, kInto<&WebFrameSpec::rails>},
    KeyRow{"material", "text", "What it is made of.", "as the case",
           kInto<&WebFrameSpec::material>},
    KeyRow{"front", "text", "What its front rail is made of.", "as the others",
           kInto<&WebFrameSpec::front>},
};

inline constexpr std::array kWorktopKeys{
    KeyRow{"thickness", "length", "Thickness.", kNone, kInto<&WorktopSpec::thickness>, kRequired},
    KeyRow{"height", "length", "Its top surface above the floor.", "leg plus thickness",
           kInto<&WorktopSpec::height>},
    KeyRow{"leg", "length", "Its own legs, from the floor to its underside.",
           "height minus thickness", kInto<&WorktopSpec::leg>},
    KeyRow{"depth", "length", "From its front edge to its rear edge.", kNone,
           kInto<&WorktopSpec::depth>},
    KeyRow{"width", "length",
           "From its left end to its right; given, the worktop is one of the parts.", kNone,
           kInto<&WorktopSpec::width>},
    KeyRow{"left", "length-or-zero", "How far it extends past the left side of the case.", "0",
           kInto<&WorktopSpec::left>},
    KeyRow{"material", "text", "What it is made of.", kNone, kInto<&WorktopSpec::material>},
};

inline constexpr std::array kCaseJointKeys{
    KeyRow{"type", "choice:case-joint", "The joint.", "butt", kInto<&CaseJointSpec::type>},
    KeyRow{"depth", "length", "How deep the dado or rabbet is cut into the sides.",
           "a third of the side, down to the shop increment", kInto<&CaseJointSpec::depth>},
    KeyRow{"tongue", "length",
           "Tongue and dado: thickness of the tongues, and so width of the dadoes.",
           "a third of the thinnest part with tongues, down to the shop increment",
           kInto<&CaseJointSpec::tongue>},
    KeyRow{"fixing", "choice:case-fixing", "What holds the case joints.",
           "pocket-screws in butt joints, otherwise glue", kInto<&CaseJointSpec::fixing>},
};

inline constexpr std::array kCaseBackKeys{
    KeyRow{"fit", "choice:back-fit", "How the back is attached.", "rabbet", kInto<&BackSpec::fit>},
    KeyRow{"thickness", "length", "Thickness, as measured.", defaults::kBackThickness,
           kInto<&BackSpec::thickness>},
    KeyRow{"lap", "length", "Rabbet: how far it is cut into the thickness of the side.",
           "half the side", kInto<&BackSpec::lap>},
    KeyRow{"inset", "length-or-zero", "Groove: how far forward of the rear edge.",
           defaults::kBackInset, kInto<&BackSpec::inset>},
    KeyRow{"depth", "length", "Groove: its depth.", defaults::kGrooveDepth,
           kInto<&BackSpec::depth>},
    KeyRow{"play", "length-or-zero", "Play at each edge of a back in a rabbet or groove.",
           defaults::kPlay, kInto<&BackSpec::play>},
    KeyRow{"material", "text", "What the back is made of.", kNone, kInto<&BackSpec::material>},
};

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_CASE_KEYS_H_
