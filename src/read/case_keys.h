// The keys of the case and of what belongs to it; keys.cpp has the rest.
#ifndef TILLWRIGHT_READ_CASE_KEYS_H_
#define TILLWRIGHT_READ_CASE_KEYS_H_

#include <array>

#include "tillwright/keys.h"

namespace tillwright {

inline constexpr std::string_view kNone = "";

inline constexpr std::array kCaseKeys{
    KeyRow{"width", "length", "Outer width.", kNone},
    KeyRow{"height", "length", "Outer height; without a top, up to the underside of the worktop.",
           kNone},
    KeyRow{"depth", "length", "Outer depth, without an applied back.", kNone},
    KeyRow{"side", "length", "Thickness of the sides.", "3/4 in, or 18 mm"},
    KeyRow{"bottom", "length", "Thickness of the bottom.", "3/4 in, or 18 mm"},
    KeyRow{"top", "case-top", "Thickness of the top, or \"none\" when a worktop closes the case.",
           "3/4 in, or 18 mm"},
    KeyRow{"raise", "length-or-zero",
           "How far the bottom is raised above the lower ends of the sides.", "0"},
    KeyRow{"joint", "case-joint", "How the bottom, top, dividers and partitions meet the sides.",
           "butt"},
    KeyRow{"back", "case-back", "The back, or \"none\".", "1/4 in (6 mm) in a rabbet"},
    KeyRow{"material", "text", "What the case is made of.", kNone},
    KeyRow{"stretchers", "stretchers", "Two rails across the case instead of a top.", kNone},
    KeyRow{"toe_kick", "toe-kick", "A board set back under the case; it raises the bottom.", kNone},
    KeyRow{"feet", "feet", "Feet under the case.", kNone},
    KeyRow{"face_frame", "face-frame",
           "Stiles and rails on the front; the bank is sized to their opening.", kNone},
    KeyRow{"web_frame", "web-frame", "Dividers made as frames of rails and runners.", kNone},
    KeyRow{"worktop", "worktop", "The worktop above the case.", kNone},
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
    KeyRow{"overlap", "length-or-zero",
           "How far the stiles extend past the outer faces of the sides.", "0"},
    KeyRow{"blocking", "length",
           "Height of the blocks behind the stiles that the slides are screwed to.",
           "3 in, or 75 mm"},
    KeyRow{"material", "text", "What it is made of.", "as the case"},
};

inline constexpr std::array kWebFrameKeys{
    KeyRow{"rail", "length", "Width of the front and back rails.", "2 1/2 in, or 60 mm"},
    KeyRow{"runner", "length", "Width of the runners.", "as the rails"},
    KeyRow{"tenon", "length", "Length of the runners' tenons, which fit the grooves in the rails.",
           "3/8 in, or 10 mm"},
    KeyRow{"material", "text", "What it is made of.", "as the case"},
};

inline constexpr std::array kWorktopKeys{
    KeyRow{"thickness", "length", "Thickness.", kNone},
    KeyRow{"height", "length", "Its top surface above the floor.", "leg plus thickness"},
    KeyRow{"leg", "length", "Its own legs, from the floor to its underside.",
           "height minus thickness"},
    KeyRow{"depth", "length", "From its front edge to its rear edge.", kNone},
    KeyRow{"width", "length",
           "From its left end to its right; given, the worktop is one of the parts.", kNone},
    KeyRow{"left", "length-or-zero", "How far it extends past the left side of the case.", "0"},
    KeyRow{"material", "text", "What it is made of.", kNone},
};

inline constexpr std::array kCaseJointKeys{
    KeyRow{"type", "choice:case-joint", "The joint.", "butt"},
    KeyRow{"depth", "length", "How deep the dado or rabbet is cut into the sides.",
           "a third of the side, down to the shop increment"},
    KeyRow{"tongue", "length",
           "Tongue and dado: thickness of the tongues, and so width of the dadoes.",
           "a third of the thinnest part with tongues, down to the shop increment"},
    KeyRow{"fixing", "choice:case-fixing", "What holds the case joints.",
           "pocket-screws in butt joints, otherwise glue"},
};

inline constexpr std::array kCaseBackKeys{
    KeyRow{"fit", "choice:back-fit", "How the back is attached.", "rabbet"},
    KeyRow{"thickness", "length", "Thickness, as measured.", "1/4 in, or 6 mm"},
    KeyRow{"lap", "length", "Rabbet: how far it is cut into the thickness of the side.",
           "half the side"},
    KeyRow{"inset", "length-or-zero", "Groove: how far forward of the rear edge.",
           "1/2 in, or 12 mm"},
    KeyRow{"depth", "length", "Groove: its depth.", "1/4 in, or 6 mm"},
    KeyRow{"play", "length-or-zero", "Play at each edge of a back in a rabbet or groove.",
           "1/32 in, or 0.8 mm"},
    KeyRow{"material", "text", "What the back is made of.", kNone},
};

}  // namespace tillwright

#endif  // TILLWRIGHT_READ_CASE_KEYS_H_
