// The keys of the case and of what belongs to it; keys.cpp has the rest.
#ifndef TILLWRIGHT_READ_CASE_KEYS_H_
#define TILLWRIGHT_READ_CASE_KEYS_H_

#include <array>

#include "tillwright/keys.h"

namespace tillwright {

inline constexpr std::string_view kNone = "";

inline constexpr std::array kCaseKeys{
    KeyRow{"width", "length", "Outer width.", kNone},
    KeyRow{"height", "length", "Outer height; with no top, up to the worktop's underside.", kNone},
    KeyRow{"depth", "length", "Outer depth, without an applied back.", kNone},
    KeyRow{"side", "length", "Thickness of the sides.", "3/4 in, or 18 mm"},
    KeyRow{"bottom", "length", "Thickness of the bottom.", "3/4 in, or 18 mm"},
    KeyRow{"top", "case-top", "Thickness of the top, or \"none\" when a worktop closes the case.",
           "3/4 in, or 18 mm"},
    KeyRow{"raise", "length-or-zero", "How far the bottom is set up above the sides' lower edge.",
           "0"},
    KeyRow{"joint", "case-joint", "How bottom, top and members meet the sides.", "butt"},
    KeyRow{"back", "case-back", "The back, or \"none\".", "1/4 in (6 mm) in a rabbet"},
    KeyRow{"material", "text", "What the case is made of.", kNone},
    KeyRow{"stretchers", "stretchers", "Two rails across the case instead of a top.", kNone},
    KeyRow{"toe_kick", "toe-kick", "A board set back under the case; it sets the bottom up.",
           kNone},
    KeyRow{"feet", "feet", "Feet under the case.", kNone},
    KeyRow{"face_frame", "face-frame",
           "Stiles and rails on the front; their opening is the bank's.", kNone},
    KeyRow{"web_frame", "web-frame", "Dividers made as frames of rails and runners.", kNone},
    KeyRow{"worktop", "worktop", "The worktop that the case stands under.", kNone},
};

inline constexpr std::array kStretcherKeys{
    KeyRow{"width", "length", "Width of each; they are as thick as the top.", "4 in, or 100 mm"},
};

inline constexpr std::array kToeKickKeys{
    KeyRow{"height", "length", "From the floor to the bottom's lower face.", "4 in, or 100 mm"},
    KeyRow{"setback", "length", "From the case's front to the board.", "3 in, or 75 mm"},
};

inline constexpr std::array kFeetKeys{
    KeyRow{"height", "length", "From the floor to the case.", "4 in, or 100 mm"},
    KeyRow{"setback", "length-or-zero", "From the case's front to the foremost feet.", "0"},
    KeyRow{"count", "count", "How many.", "4; 6 under a case wider than 36 in (900 mm)"},
};

inline constexpr std::array kFaceFrameKeys{
    KeyRow{"thickness", "length", "Thickness.", "3/4 in, or 19 mm"},
    KeyRow{"stile", "length", "Width of the stiles.", "1 1/2 in, or 38 mm"},
    KeyRow{"rail", "length", "Width of the top rail.", "1 1/2 in, or 38 mm"},
    KeyRow{"bottom_rail", "length", "Width of the bottom rail.", "as the top rail"},
    KeyRow{"overlap", "length-or-zero", "How far the stiles stand past the sides' outer faces.",
           "0"},
    KeyRow{"blocking", "length",
           "Height of the blocks behind the stiles that slides are screwed to.", "3 in, or 75 mm"},
    KeyRow{"material", "text", "What it is made of.", "as the case"},
};

inline constexpr std::array kWebFrameKeys{
    KeyRow{"rail", "length", "Width of the front and back rails.", "2 1/2 in, or 60 mm"},
    KeyRow{"runner", "length", "Width of the runners.", "as the rails"},
    KeyRow{"tenon", "length", "Length of the runners' tenons, which sit in the rails' grooves.",
           "3/8 in, or 10 mm"},
    KeyRow{"free", "length-or-zero", "Room behind the runners' rear tenons, which are not glued.",
           "what solid sides shrink from made to dry, up to the shop increment; else 0"},
    KeyRow{"rails", "choice:open-rails",
           "Rails and no runners, for drawers on slides: at the front, or at front and rear.",
           kNone},
    KeyRow{"material", "text", "What it is made of.", "as the case"},
    KeyRow{"front", "text", "What its front rail is made of.", "as the others"},
};

inline constexpr std::array kWorktopKeys{
    KeyRow{"thickness", "length", "Thickness.", kNone},
    KeyRow{"height", "length", "Its upper face above the floor.", "leg and thickness"},
    KeyRow{"leg", "length", "Its own legs, from the floor to its underside.",
           "height less thickness"},
    KeyRow{"depth", "length", "From its front edge to its rear.", kNone},
    KeyRow{"width", "length", "From its left end to its right: it is then a part.", kNone},
    KeyRow{"left", "length-or-zero", "How far it runs past the case's left side.", "0"},
    KeyRow{"material", "text", "What it is made of.", kNone},
};

inline constexpr std::array kCaseJointKeys{
    KeyRow{"type", "choice:case-joint", "The joint.", "butt"},
    KeyRow{"depth", "length", "How deep a dado, rabbet or groove goes into the sides.",
           "a third of the side, down to the shop increment"},
    KeyRow{"tongue", "length",
           "Groove: thickness of the tongues on the members' ends, and so width of the grooves.",
           "a third of the thinnest member, down to the shop increment"},
    KeyRow{"fixing", "choice:case-fixing", "What holds the joints of the case.",
           "pocket-screws in butt joints, else glue"},
};

inline constexpr std::array kCaseBackKeys{
    KeyRow{"fit", "choice:back-fit", "How the back is fixed.", "rabbet"},
    KeyRow{"thickness", "length", "Thickness, as measured.", "1/4 in, or 6 mm"},
    KeyRow{"lap", "length", "Rabbet: how far it goes into the side's thickness.", "half the side"},
    KeyRow{"inset", "length-or-zero", "Groove: how far in from the rear.", "1/2 in, or 12 mm"},
    KeyRow{"depth", "length", "Groove: its depth.", "1/4 in, or 6 mm"},
    KeyRow{"play", "length-or-zero", "Play per edge of a back that is let in.",
           "1/32 in, or 0.8 mm"},
    KeyRow{"material", "text", "What the back is made of.", kNone},
};

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_CASE_KEYS_H_
