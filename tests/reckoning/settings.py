"""What one drawer is to be made of: the bank's keys, the drawer's own merged
over them, and the defaults (the model's sections 5 and 6)."""

from dataclasses import dataclass, field
from fractions import Fraction

from lengths import PM_PER_INCH, PM_PER_MM, Refused

SLIDE_TYPES = ("side-mount", "undermount", "center-mount", "wood-runner")
JOINTS = ("butt", "rabbet", "dado", "half-blind-dovetail", "through-dovetail", "finger")
FITS = ("groove", "rabbet", "applied")
GRAINS = ("horizontal", "vertical")

SLIDE_KEYS = ("type", "length", "lengths", "behind", "line", "clearance", "deduct", "side_max")
CORNER_KEYS = ("joint", "depth", "lap", "back_setback")
BOTTOM_KEYS = ("thickness", "fit", "material", "depth", "play", "up", "open_back")
BOX_KEYS = ("side", "end", "corner", "bottom", "clear_above", "clear_below", "height", "heights", "depth")
FRONT_KEYS = ("thickness", "material", "grain", "cut", "held", "pull")

# Keys that only some choices have: key -> the choices that have it.
SLIDE_ONLY = {
    "clearance": ("side-mount", "center-mount", "wood-runner"),
    "deduct": ("undermount",),
    "side_max": ("undermount",),
}
CORNER_ONLY = {
    "depth": ("rabbet", "dado"),
    "lap": ("half-blind-dovetail",),
    "back_setback": ("butt", "rabbet", "dado"),
}
BOTTOM_ONLY = {
    "depth": ("groove", "rabbet"),
    "play": ("groove", "rabbet"),
    "up": ("groove",),
    "open_back": ("groove",),
}

SPECIES_WORDS = (
    "alder ash aspen basswood beech birch butternut cedar cherry chestnut cypress elm fir hickory "
    "larch mahogany maple oak pine poplar redwood spruce sycamore teak walnut"
).split()
PANEL_WORDS = ("plywood", "ply", "mdf", "particleboard", "chipboard", "hardboard", "osb", "melamine", "veneer")


def default_length(units, inches, millimetres):
    """A default that differs between inch and millimetre specs; both are decimals as typed."""
    if units == "in":
        return int(Fraction(str(inches)) * PM_PER_INCH)
    return int(Fraction(str(millimetres)) * PM_PER_MM)


@dataclass
class Own:
    """The keys typed in one place, already read; absent keys are absent."""

    slides: dict = field(default_factory=dict)
    side: dict = field(default_factory=dict)
    end: dict = field(default_factory=dict)
    corner: dict = field(default_factory=dict)
    bottom: dict = field(default_factory=dict)
    box: dict = field(default_factory=dict)
    front: dict = field(default_factory=dict)


def given(pairs):
    return {key: value for key, value in pairs.items() if value is not None}


def read_slides(keys):
    auto = keys.value.get("length") == "auto"
    return given({
        "type": keys.choice("type", SLIDE_TYPES),
        "length": "auto" if auto else keys.length("length"),
        "lengths": keys.lengths("lengths"),
        "behind": keys.length("behind", zero=True),
        "line": keys.length("line", zero=True),
        "clearance": keys.length("clearance", zero=True),
        "deduct": keys.length("deduct", zero=True),
        "side_max": keys.length("side_max"),
    })


def read_board(keys):
    return given({"thickness": keys.length("thickness"), "material": keys.text("material")})


def read_corner(keys):
    return given({
        "joint": keys.choice("joint", JOINTS),
        "depth": keys.length("depth"),
        "lap": keys.length("lap"),
        "back_setback": keys.length("back_setback", zero=True),
    })


def read_bottom(keys):
    return given({
        "thickness": keys.length("thickness"),
        "fit": keys.choice("fit", FITS),
        "material": keys.text("material"),
        "depth": keys.length("depth"),
        "play": keys.length("play", zero=True),
        "up": keys.length("up", zero=True),
        "open_back": keys.flag("open_back"),
    })


def check_pull(keys):
    """Holes for pulls change no size; their keys are read, and no more."""
    if keys.value.get("pull", "none") == "none":
        return
    pull = keys.child("pull", ("centers", "down", "count"))
    pull.length("centers", zero=True)
    pull.length("down")
    if pull.value.get("count", "1") not in ("1", "2"):
        raise Refused(f"{pull.path}/count: 1 or 2 pulls stand on a front")


def read_front(keys):
    check_pull(keys)
    return given({
        "thickness": keys.length("thickness"),
        "material": keys.text("material"),
        "grain": keys.choice("grain", GRAINS),
    })


def read_own(keys, front_key="front", front_known=FRONT_KEYS):
    """Reads `slides`, `box` and the front keys from the bank or one drawer."""
    box = keys.child("box", BOX_KEYS)
    return Own(
        slides=read_slides(keys.child("slides", SLIDE_KEYS)),
        side=read_board(box.child("side", ("thickness", "material"))),
        end=read_board(box.child("end", ("thickness", "material"))),
        corner=read_corner(box.child("corner", CORNER_KEYS)),
        bottom=read_bottom(box.child("bottom", BOTTOM_KEYS)),
        box=given({
            "clear_above": box.length("clear_above", zero=True),
            "clear_below": box.length("clear_below", zero=True),
            "height": box.length("height"),
            "heights": box.lengths("heights"),
            "depth": box.length("depth"),
        }),
        front=read_front(keys.child(front_key, front_known)),
    )


def refuse_foreign(own, choice, only, what):
    """A typed key that the effective choice does not have is an error."""
    for key in own:
        if key in only and choice not in only[key]:
            raise Refused(f"{what} {choice} has no '{key}'")


def check_own(own, slide_type, joint, fit):
    refuse_foreign(own.slides, slide_type, SLIDE_ONLY, "slide")
    refuse_foreign(own.corner, joint, CORNER_ONLY, "joint")
    refuse_foreign(own.bottom, fit, BOTTOM_ONLY, "bottom")


def choices(own):
    """The slide type, joint and fit of one place, with the defaults."""
    return (
        own.slides.get("type", "side-mount"),
        own.corner.get("joint", "butt"),
        own.bottom.get("fit", "groove"),
    )


def without(values, keys):
    return {key: value for key, value in values.items() if key not in keys}


def kept(values, choice, only):
    return {k: v for k, v in values.items() if k not in only or choice in only[k]}


def merge(bank, own):
    """The drawer's own keys over the bank's, dropping what a changed choice ends."""
    bank_type, bank_joint, bank_fit = choices(bank)
    slide_type = own.slides.get("type", bank_type)
    joint = own.corner.get("joint", bank_joint)
    fit = own.bottom.get("fit", bank_fit)
    check_own(own, slide_type, joint, fit)
    slides, box, bottom = bank.slides, bank.box, bank.bottom
    if slide_type != bank_type:
        slides = {}
        box = without(box, ("clear_below", "clear_above"))
        bottom = without(bottom, ("up",))
    if "heights" in own.box:
        box = without(box, ("height",))
    return Own(
        slides={**slides, **own.slides},
        side={**bank.side, **own.side},
        end={**bank.end, **own.end},
        corner={**kept(bank.corner, joint, CORNER_ONLY), **own.corner},
        bottom={**kept(bottom, fit, BOTTOM_ONLY), **own.bottom},
        box={**box, **own.box},
        front={**bank.front, **own.front},
    )


# Per slide type: default (inch, mm) of clearance, below, above, behind, up, line.
SLIDE_DEFAULTS = {
    "side-mount": ((1 / 2, 12.7), (1 / 4, 6), (1 / 2, 13), (1 / 2, 13), (1 / 4, 6), (7 / 8, 22)),
    "undermount": (None, (9 / 16, 14), (1 / 4, 7), (3 / 4, 19), (1 / 2, 13), (0, 0)),
    "center-mount": ((1 / 8, 3), (1 / 4, 6), (1 / 4, 6), (1 / 2, 13), (1 / 2, 13), (0, 0)),
    "wood-runner": ((1 / 32, 1), (0, 0), (1 / 8, 3), (1 / 2, 13), (1 / 4, 6), (0, 0)),
}
UNDERMOUNT_DEDUCT = 42 * PM_PER_MM


@dataclass
class Settings:
    """Everything one drawer's box is reckoned from; nothing left to default."""

    slide_type: str
    clearance: int
    deduct: int
    length: object  # picometres, or "auto"
    lengths: list  # None: a wood runner of any length
    behind: int
    line: int
    below: int
    above: int
    side: int
    end: int
    joint: str
    joint_depth: int
    lap: int
    setback: int
    fit: str
    bottom: int
    groove: int
    play: int
    up: int
    open_back: bool
    bottom_solid: bool
    materials: tuple  # of sides, ends and bottom
    height: int
    heights: list
    depth: int
    front: int
    front_grain: str


def series(slide_type, units):
    if units == "in" and slide_type == "undermount":
        return [n * PM_PER_INCH for n in (9, 12, 15, 18, 21)]
    if units == "in":
        return [n * PM_PER_INCH for n in range(10, 29, 2)]
    return [n * PM_PER_MM for n in range(250, 701, 50)]


def is_solid(material):
    words = (material or "").lower()
    return any(w in words for w in SPECIES_WORDS) and not any(w in words for w in PANEL_WORDS)


def resolve(own, units):
    """Fills every default in; defaults that follow another value do so after merging."""
    slide_type, joint, fit = choices(own)
    clearance, below, above, behind, up, line = (
        default_length(units, *pair) if pair else None for pair in SLIDE_DEFAULTS[slide_type]
    )
    any_length = slide_type == "wood-runner" and "lengths" not in own.slides
    side = own.side.get("thickness", default_length(units, 1 / 2, 12))
    end = own.end.get("thickness", side)
    return Settings(
        slide_type=slide_type,
        clearance=own.slides.get("clearance", clearance),
        deduct=own.slides.get("deduct", UNDERMOUNT_DEDUCT),
        length=own.slides.get("length", "auto"),
        lengths=None if any_length else own.slides.get("lengths", series(slide_type, units)),
        behind=own.slides.get("behind", behind),
        line=own.slides.get("line", line),
        below=own.box.get("clear_below", below),
        above=own.box.get("clear_above", above),
        side=side,
        end=end,
        joint=joint,
        joint_depth=own.corner.get("depth", side // 2),
        lap=own.corner.get("lap", end // 4),
        setback=own.corner.get("back_setback", 0),
        fit=fit,
        bottom=own.bottom.get("thickness", default_length(units, 1 / 4, 6)),
        groove=own.bottom.get("depth", default_length(units, 1 / 4, 6)),
        play=own.bottom.get("play", default_length(units, 1 / 32, 0.8)),
        up=own.bottom.get("up", up),
        open_back=own.bottom.get("open_back", False),
        bottom_solid=is_solid(own.bottom.get("material")),
        materials=(
            own.side.get("material"),
            own.end.get("material", own.side.get("material")),
            own.bottom.get("material"),
        ),
        height=own.box.get("height"),
        heights=own.box.get("heights"),
        depth=own.box.get("depth"),
        front=own.front.get("thickness", default_length(units, 3 / 4, 19)),
        front_grain=own.front.get("grain", "horizontal"),
    )
