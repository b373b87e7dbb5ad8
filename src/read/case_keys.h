// The keys of the case and of what belongs to it; keys.cpp has the rest.
#ifndef TILLWRIGHT_READ_CASE_KEYS_H_
#define TILLWRIGHT_READ_CASE_KEYS_H_

#include <array>

#include "read/key_target.h"

namespace tillwright {

inline constexpr std::array kCaseKeys{
    KeyRow{"width", "length", "Outer width.", kNone, kInto<&CaseSpec::width>, kRequired},
    KeyRow{"height", "length", "Outer height; with no top, up to the worktop's underside.", kNone},
    KeyRow{"depth", "length", "Outer depth, without an applied back.", kNone},
    KeyRow{"side", "length", "Thickness of the sides.", defaults::kCaseStock,
           kInto<&CaseSpec::side>},
    KeyRow{"bottom", "length", "Thickness of the bottom.", defaults::kCaseStock,
           kInto<&CaseSpec::bottom>},
    KeyRow{"top", "case-top", "Thickness of the top, or \"none\" when a worktop closes the case.",
           defaults::kCaseStock},
    KeyRow{"raise", "length-or-zero", "How far the bottom is set up above the sides' lower edge.",
           "0", kInto<&CaseSpec::raise>},
    KeyRow{"joint", "case-joint", "How bottom, top and members meet the sides.", "butt",
           kInto<&CaseSpec::joint>},
    KeyRow{"back", "case-back", "The back, or \"none\".", "1/4 in (6 mm) in a rabbet"},
    KeyRow{"material", "text", "What the case is made of.", kNone, kInto<&CaseSpec::material>},
    KeyRow{"stretchers", "stretchers", "Two rails across the case instead of a top.", kNone,
           kInto<&CaseSpec::stretchers>},
    KeyRow{"toe_kick", "toe-kick", "A board set back under the case; it sets the bottom up.", kNone,
           kInto<&CaseSpec::toe_kick>},
    KeyRow{"feet", "feet", "Feet under the case.", kNone, kInto<&CaseSpec::feet>},
    KeyRow{"face_frame", "face-frame",
           "Stiles and rails on the front; their opening is the bank's.", kNone,
           kInto<&CaseSpec::face_frame>},
    KeyRow{"web_frame", "web-frame", "Dividers made as frames of rails and runners.", kNone,
           kInto<&CaseSpec::web_frame>},
    KeyRow{"worktop", "worktop", "The worktop that the case stands under.", kNone,
           kInto<&CaseSpec::worktop>},
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
    KeyRow{"overlap", "length-or-zero", "How far the stiles stand past the sides' outer faces.",
           "0", kInto<&FaceFrameSpec::overlap>},
    KeyRow{"blocking", "length",
           "Height of the blocks behind the stiles that slides are screwed to.",
           defaults::kBlocking, kInto<&FaceFrameSpec::blocking>},
    KeyRow{"material", "text", "What it is made of.", "as the case",
           kInto<&FaceFrameSpec::material>},
};

inline constexpr std::array kWebFrameKeys{
    KeyRow{"rail", "length", "Width of the front and back rails.", defaults::kWebRail,
           kInto<&WebFrameSpec::rail>},
    KeyRow{"runner", "length", "Width of the runners.", "as the rails",
           kInto<&WebFrameSpec::runner>},
    KeyRow{"tenon", "length", "Length of the runners' tenons, which sit in the rails' grooves.",
           defaults::kWebTenon, kInto<&WebFrameSpec::tenon>},
    KeyRow{"free", "length-or-zero", "Room behind the runners' rear tenons, which are not glued.",
           "what solid sides shrink from made to dry, up to the shop increment; else 0",
           kInto<&WebFrameSpec::free>},
    KeyRow{"rails", "choice:open-rails",
           "Rails and no runners, for drawers on slides: at the front, or at front and rear.",
           kNone, kInto<&WebFrameSpec::rails>},
    KeyRow{"material", "text", "What it is made of.", "as the case",
           kInto<&WebFrameSpec::material>},
    KeyRow{"front", "text", "What its front rail is made of.", "as the others",
           kInto<&WebFrameSpec::front>},
};

inline constexpr std::array kWorktopKeys{
    KeyRow{"thickness", "length", "Thickness.", kNone, kInto<&WorktopSpec::thickness>, kRequired},
    KeyRow{"height", "length", "Its upper face above the floor.", "leg and thickness",
           kInto<&WorktopSpec::height>},
    KeyRow{"leg", "length", "Its own legs, from the floor to its underside.",
           "height less thickness", kInto<&WorktopSpec::leg>},
    KeyRow{"depth", "length", "From its front edge to its rear.", kNone,
           kInto<&WorktopSpec::depth>},
    KeyRow{"width", "length", "From its left end to its right: it is then a part.", kNone,
           kInto<&WorktopSpec::width>},
    KeyRow{"left", "length-or-zero", "How far it runs past the case's left side.", "0",
           kInto<&WorktopSpec::left>},
    KeyRow{"material", "text", "What it is made of.", kNone, kInto<&WorktopSpec::material>},
};

inline constexpr std::array kCaseJointKeys{
    KeyRow{"type", "choice:case-joint", "The joint.", "butt", kInto<&CaseJointSpec::type>},
    KeyRow{"depth", "length", "How deep a dado, rabbet or groove goes into the sides.",
           "a third of the side, down to the shop increment", kInto<&CaseJointSpec::depth>},
    KeyRow{"tongue", "length",
           "Groove: thickness of the tongues on the members' ends, and so width of the grooves.",
           "a third of the thinnest member, down to the shop increment",
           kInto<&CaseJointSpec::tongue>},
    KeyRow{"fixing", "choice:case-fixing", "What holds the joints of the case.",
           "pocket-screws in butt joints, else glue", kInto<&CaseJointSpec::fixing>},
};

inline constexpr std::array kCaseBackKeys{
    KeyRow{"fit", "choice:back-fit", "How the back is fixed.", "rabbet", kInto<&BackSpec::fit>},
    KeyRow{"thickness", "length", "Thickness, as measured.", defaults::kBackThickness,
           kInto<&BackSpec::thickness>},
    KeyRow{"lap", "length", "Rabbet: how far it goes into the side's thickness.", "half the side",
           kInto<&BackSpec::lap>},
    KeyRow{"inset", "length-or-zero", "Groove: how far in from the rear.", defaults::kBackInset,
           kInto<&BackSpec::inset>},
    KeyRow{"depth", "length", "Groove: its depth.", defaults::kGrooveDepth,
           kInto<&BackSpec::depth>},
    KeyRow{"play", "length-or-zero", "Play per edge of a back that is let in.", defaults::kPlay,
           kInto<&BackSpec::play>},
    KeyRow{"material", "text", "What the back is made of.", kNone, kInto<&BackSpec::material>},
};

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_CASE_KEYS_H_
