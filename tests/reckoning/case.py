"""The case, or the bare opening, and the edges fronts run to (the model's section 7)."""

from dataclasses import dataclass

from lengths import Refused, floor_to
from settings import default_length
from spec_text import Keys, check_length

EDGES = ("top", "bottom", "left", "right")
CASE_KEYS = ("width", "height", "depth", "side", "bottom", "top", "raise", "joint", "back", "material", "web_frame")
CASE_JOINTS = ("butt", "dado", "rabbet", "tongue-and-dado")
JOINT_KEYS = ("type", "depth", "tongue", "fixing")
WEB_KEYS = ("rail", "runner", "tenon", "free", "rails", "material", "front")
BACK_KEYS = ("thickness", "fit", "lap", "inset", "depth", "play", "material")
BACK_ONLY = {"lap": ("rabbet",), "inset": ("groove",), "depth": ("groove",), "play": ("rabbet", "groove")}


@dataclass
class Opening:
    width: int
    height: int
    depth: int


@dataclass
class Back:
    fit: str  # "none" when the case has no back
    thickness: int = 0
    lap: int = 0
    inset: int = 0
    groove: int = 0
    play: int = 0


@dataclass
class Case:
    width: int
    height: int
    depth: int
    side: int
    bottom: int
    top: int  # 0 where a worktop closes the case
    raised: int
    joint_reach: int  # how far a member runs into each side: r, or 0 when butted
    joint: str
    tongue: int  # of a tongue-and-dado joint as typed; None: a third of the thinnest member
    back: Back
    material: str = ""
    web: dict = None  # of web frames: rail, runner, tenon, free (None: by the season), rails, front
    opening: Opening = None

    def thickness_at(self, edge):
        return {"top": self.top, "bottom": self.bottom, "left": self.side, "right": self.side}[edge]


def required(keys, *names):
    for name in names:
        if name not in keys:
            raise Refused(f"{keys.path}: '{name}' is missing")
    return [keys.length(name) for name in names]


def positive(value, what):
    if value <= 0:
        raise Refused(f"nothing is left for {what}: {value} pm")
    return value


def read_opening(keys):
    return Opening(*required(keys, "width", "height", "depth"))


def read_case(keys, increment):
    units = keys.unit
    board = default_length(units, 3 / 4, 18)
    joint_keys = keys.child("joint", JOINT_KEYS)
    width, height, depth = required(keys, "width", "height", "depth")
    side = keys.length("side", board)
    case = Case(
        width=width,
        height=height,
        depth=depth,
        side=side,
        bottom=keys.length("bottom", board),
        top=0 if keys.value.get("top") == "none" else keys.length("top", board),
        raised=keys.length("raise", 0, zero=True),
        joint_reach=read_joint_reach(joint_keys, side, increment),
        joint=joint_keys.choice("type", CASE_JOINTS, "butt"),
        tongue=joint_keys.length("tongue"),
        back=read_back(keys, side),
        material=keys.text("material") or "",
        web=read_web_frame(keys) if "web_frame" in keys else None,
    )
    case.opening = Opening(
        positive(width - 2 * side, "the opening's width"),
        positive(height - case.raised - case.bottom - case.top, "the opening's height"),
        positive(depth - back_allowance(case.back), "the opening's depth"),
    )
    return case


def read_web_frame(case_keys):
    keys = case_keys.child("web_frame", WEB_KEYS)
    rail = keys.length("rail", default_length(keys.unit, 5 / 2, 60))
    rails = keys.choice("rails", ("front", "both"))
    if rails and any(key in keys for key in ("runner", "tenon", "free")):
        raise Refused(f"{keys.path}: open rails have no runners")
    return {
        "rail": rail,
        "runner": keys.length("runner", rail),
        "tenon": keys.length("tenon", default_length(keys.unit, 3 / 8, 10)),
        "free": keys.length("free", zero=True),
        "rails": rails,
        "front": keys.text("front"),
    }


def read_joint_reach(keys, side, increment):
    joint = keys.choice("type", CASE_JOINTS, "butt")
    keys.choice("fixing", ("pocket-screws", "dowels", "glue"))
    depth = keys.length("depth", floor_to(side // 3, increment))
    if joint == "butt":
        if "depth" in keys:
            raise Refused("a butt joint has no depth")
        depth = 0
    if "tongue" in keys and joint != "tongue-and-dado":
        raise Refused(f"a {joint} joint has no tongue")
    return depth


def tongue_of(case, members, increment, units):
    """Thickness of a tongue-and-dado joint's tongues, `members` being what is let in besides bottom and top."""
    thinnest = min([case.bottom] + ([case.top] if case.top else []) + members)
    least = min(default_length(units, 1 / 8, 3), thinnest // 2)
    tongue = max(floor_to(thinnest // 3, increment), least) if case.tongue is None else case.tongue
    if tongue >= thinnest:
        raise Refused(f"a tongue of {tongue} pm leaves no shoulder")
    return tongue


def read_back(case_keys, side):
    if case_keys.value.get("back") == "none":
        return Back("none")
    keys = case_keys.child("back", BACK_KEYS)
    units = keys.unit
    fit = keys.choice("fit", ("rabbet", "groove", "applied"), "rabbet")
    for key, fits in BACK_ONLY.items():
        if key in keys and fit not in fits:
            raise Refused(f"a back that is {fit} has no '{key}'")
    return Back(
        fit=fit,
        thickness=keys.length("thickness", default_length(units, 1 / 4, 6)),
        lap=keys.length("lap", side // 2),
        inset=keys.length("inset", default_length(units, 1 / 2, 12), zero=True),
        groove=keys.length("depth", default_length(units, 1 / 4, 6)),
        play=keys.length("play", default_length(units, 1 / 32, 0.8), zero=True),
    )


def back_allowance(back):
    return {
        "none": 0,
        "rabbet": back.thickness,
        "groove": back.inset + back.thickness,
        "applied": 0,
    }[back.fit]


def back_panel(case, increment):
    """Width and height of the back panel; it covers the rear edges of bottom and top."""
    back, opening = case.back, case.opening
    if back.fit == "applied":
        return case.width, case.height
    reach = back.lap if back.fit == "rabbet" else back.groove
    width = opening.width + 2 * reach - 2 * back.play
    height = opening.height + case.bottom + case.top - 2 * back.play
    return floor_to(width, increment), floor_to(height, increment)


def under_worktop(case):
    """Whether a worktop closes the case, so that the fronts have a gap over them, not an edge."""
    return case is not None and case.top == 0


def read_overlay(fronts, case, gap):
    """Overlay of each edge, from one length for all or an object of edges; `gap` lies between fronts."""
    default = default_length(fronts.unit, 5 / 8, 16)
    topless = under_worktop(case)
    value = fronts.value.get("overlay", {})
    if is_edge_object(value):
        keys = Keys(value, f"{fronts.path}/overlay", fronts.unit, EDGES)
        unset = {edge: -gap if topless and edge == "top" else default for edge in EDGES}
        return {
            edge: read_overlay_edge(keys.value[edge], edge, case, fronts) if edge in keys else unset[edge]
            for edge in EDGES
        }
    every = {edge: read_overlay_edge(value, edge, case, fronts) for edge in EDGES}
    if topless and isinstance(value, str) and value != "flush":
        every["top"] = -gap  # a length for the case's edges, and there is none
    return every


def is_edge_object(value):
    return isinstance(value, dict) and "reveal" not in value


def read_overlay_edge(value, edge, case, fronts):
    path = f"{fronts.path}/overlay/{edge}"
    if value == "flush" or isinstance(value, dict):
        if case is None:
            raise Refused(f"{path}: only a case has an edge to end flush with")
        if value == "flush":
            return case.thickness_at(edge)
        keys = Keys(value, path, fronts.unit, ("reveal",))
        if "reveal" not in keys:
            raise Refused(f"{path}: a reveal is wanted")
        return case.thickness_at(edge) - keys.length("reveal", zero=True)
    return check_length(value, path, fronts.unit, zero=True, negative=True)


def read_edge_gaps(fronts):
    """Inset: the gap each edge of the opening keeps."""
    default = default_length(fronts.unit, 1 / 8, 3)
    value = fronts.value.get("edge", {})
    if isinstance(value, dict):
        keys = Keys(value, f"{fronts.path}/edge", fronts.unit, EDGES)
        return {edge: keys.length(edge, default, zero=True) for edge in EDGES}
    gap = check_length(value, f"{fronts.path}/edge", fronts.unit, zero=True)
    return dict.fromkeys(EDGES, gap)
