"""The gap check reckoned again from the rules: every gap and overlap as a list of
what it depends on, and from that list the worst case, the root-sum-square, the
seasons and the size as measured.

Lengths are whole picometres; coefficients are Fractions, so that halves are
exact. Movement of wood and root-sum-squares are floats.
"""

import math
from dataclasses import dataclass, field
from fractions import Fraction

from lengths import PM_PER_INCH, PM_PER_MM
from settings import default_length

HALF = Fraction(1, 2)

# Wood Handbook, table 13-5: radial and tangential change per % of moisture; and the
# words that tell kin apart, the one that moves most first.
WOODS = {
    "alder": [((), 0.00151, 0.00256)],
    "ash": [((), 0.00169, 0.00274)],
    "aspen": [((), 0.00119, 0.00234)],
    "basswood": [((), 0.00230, 0.00330)],
    "beech": [((), 0.00190, 0.00431)],
    "birch": [((), 0.00256, 0.00338)],
    "cherry": [((), 0.00126, 0.00248)],
    "maple": [(("hard", "sugar"), 0.00165, 0.00353), (("soft", "red"), 0.00137, 0.00289)],
    "oak": [(("red",), 0.00158, 0.00369), (("white",), 0.00180, 0.00365)],
    "walnut": [((), 0.00190, 0.00274)],
    "pine": [(("ponderosa",), 0.00133, 0.00216), (("white",), 0.00071, 0.00212)],
    "teak": [((), 0.00101, 0.00186)],
}
PANELS = ("plywood", "mdf", "hardboard", "veneer")


def coefficient(material, cut):
    words = (material or "").lower().replace("-", " ").split()
    if any(word in PANELS for word in words):
        return 0.0
    for word in words:
        for kinds, radial, tangential in WOODS.get(word, []):
            kin = WOODS[word]
            named = [row for row in kin if set(row[0]) & set(words)]
            _, radial, tangential = named[0] if named else kin[0]
            return radial if cut == "quarter" else tangential
    return 0.0


def equilibrium(celsius, humidity):
    """The handbook's equation 4-5."""
    t, h = celsius, humidity / 100
    w = 349 + 1.29 * t + 0.0135 * t**2
    k = 0.805 + 0.000736 * t - 0.00000273 * t**2
    k1 = 6.27 - 0.00938 * t - 0.000303 * t**2
    k2 = 1.91 + 0.0407 * t - 0.000293 * t**2
    kh = k * h
    wet = (k1 * kh + 2 * k1 * k2 * kh**2) / (1 + k1 * kh + k1 * k2 * kh**2)
    return 1800 / w * (kh / (1 - kh) + wet)


@dataclass
class Inputs:
    """What a spec says for the gap check, defaults filled in."""

    cut: int
    place: int
    opening: int
    spaced: bool
    least: int
    greatest: int
    moisture: dict = None  # made, dry, humid in %
    measured: dict = None
    spacers: list = field(default_factory=list)
    material: str = ""
    sawn: str = "flat"
    grain: str = "horizontal"
    held: str = "middle"


def length_of(spec, value):
    """A length typed under any key: reading is the sizing's business."""
    from spec_text import check_length

    return check_length(value, "", spec.unit, zero=True)


def read_moisture(value):
    if not isinstance(value, dict):
        return float(str(value).rstrip("%"))
    text = value["temperature"].strip()
    degrees = float(text.rstrip("FfCc °"))
    celsius = (degrees - 32) * 5 / 9 if text[-1] in "Ff" else degrees
    return equilibrium(celsius, float(str(value["humidity"]).rstrip("%")))


def read_inputs(spec):
    value, units = spec.value, spec.unit
    get = lambda group, key, inch, mm: (
        length_of(spec, value[group][key]) if key in value.get(group, {}) else default_length(units, inch, mm)
    )
    fronts = value.get("fronts", {})
    inputs = Inputs(
        cut=get("tolerance", "cut", 1 / 64, 0.4),
        place=get("tolerance", "place", 1 / 64, 0.4),
        opening=get("tolerance", "opening", 1 / 32, 0.8),
        spaced=value.get("setting", "spaced") == "spaced",
        least=get("limits", "least", 1 / 32, 0.8),
        greatest=get("limits", "greatest", 3 / 16, 4.8),
        material=fronts.get("material", ""),
        sawn=fronts.get("cut", "flat"),
        grain=fronts.get("grain", "horizontal"),
        held=fronts.get("held", "middle"),
    )
    if "season" in value:
        typed = {key: read_moisture(v) for key, v in value["season"].items()}
        inputs.moisture = {"made": 8.0, "dry": 6.0, "humid": 11.0, **typed}
    if "measured" in value:
        inputs.measured = read_measured(spec, value["measured"])
    for spacer in value.get("spacers", []):
        inputs.spacers.append((length_of(spec, spacer["thickness"]), int(spacer.get("count", 1))))
    return inputs


def read_measured(spec, value):
    read = lambda v: length_of(spec, v)
    sizes = lambda parts: {i: {k: read(v) for k, v in part.items()} for i, part in parts.items()}
    widths = {}
    for width in value.get("width", []):  # measured twice at one height, the smaller counts
        at, size = read(width["at"]), read(width["size"])
        widths[at] = min(size, widths.get(at, size))
    return {
        "width": sorted(widths.items()),
        "height": {k: read(v) for k, v in value.get("height", {}).items()},
        "diagonals": {k: read(v) for k, v in value.get("diagonals", {}).items()},
        "fronts": sizes(value.get("fronts", {})),
        "boxes": sizes(value.get("boxes", {})),
    }


# ---- the opening as measured ---------------------------------------------


def on_line(points, at):
    """A measured size between its neighbours in a straight line; floor of a picometre."""
    if at <= points[0][0]:
        return points[0][1]
    for (a, size_a), (b, size_b) in zip(points, points[1:]):
        if a <= at <= b and a != b:
            return size_a + (size_b - size_a) * (at - a) // (b - a)
    return points[-1][1]


def least_on_line(points, start, end):
    inside = [size for at, size in points if start < at < end]
    return min([on_line(points, start), on_line(points, end)] + inside)


def width_points(bank, inputs):
    found = (inputs.measured or {}).get("width")
    return found or [(0, bank.opening.width)]


def height_points(bank, inputs):
    sides = (inputs.measured or {}).get("height") or {}
    left = sides.get("left", sides.get("right", bank.opening.height))
    right = sides.get("right", left)
    return [(0, left), (bank.opening.width, right)]


def lean_of(bank, inputs):
    """(d1 squared - d2 squared) / (4 W), W the mean of bottom and top; None without diagonals."""
    d = (inputs.measured or {}).get("diagonals") or {}
    if "rising" not in d or "falling" not in d:
        return None
    widths, heights = width_points(bank, inputs), height_points(bank, inputs)
    top = (heights[0][1] + heights[1][1]) // 2
    both = on_line(widths, 0) + on_line(widths, top)
    return (d["rising"] ** 2 - d["falling"] ** 2) // (2 * both)


# ---- lists ---------------------------------------------------------------


@dataclass
class Part:
    """One thing a gap depends on."""

    factor: Fraction
    tolerance: int = 0
    deviation: int = 0
    dry: float = 0.0
    humid: float = 0.0


class Lists:
    """The list of every gap and overlap of a solved bank."""

    def __init__(self, bank, inputs):
        self.bank, self.inputs = bank, inputs
        self.leaves = {leaf.id: leaf for leaf in bank.root.leaves()}
        self.fronts = {i: leaf for i, leaf in self.leaves.items() if leaf.kind != "open"}
        self.chains = {}

    def moved(self, front, axis):
        """How much a front's size along an axis changes, dry and humid, in mm."""
        inputs, moisture = self.inputs, self.inputs.moisture
        own = front.own.front if front.own else {}
        grain = own.get("grain", inputs.grain)
        if moisture is None or grain != ("horizontal" if axis == "y" else "vertical"):
            return 0.0, 0.0
        rate = coefficient(own.get("material", inputs.material), inputs.sawn)
        size = front.front.size[axis] / PM_PER_MM
        return tuple(size * rate * (moisture[when] - moisture["made"]) for when in ("dry", "humid"))

    def deviation(self, front, axis):
        made = ((self.inputs.measured or {}).get("fronts") or {}).get(front.id, {})
        key = "height" if axis == "y" else "width"
        return made[key] - front.front.size[axis] if key in made else 0

    def opening_deviation(self, front, axis):
        if self.inputs.measured is None:
            return 0
        across = "x" if axis == "y" else "y"
        span = front.front.start(across), front.front.end(across)
        if axis == "y":
            return least_on_line(height_points(self.bank, self.inputs), *span) - self.bank.opening.height
        return least_on_line(width_points(self.bank, self.inputs), *span) - self.bank.opening.width

    def chain(self, front):
        """The fronts from this one down to the datum."""
        if front.id not in self.chains:
            below = [self.chain(other) for other in self.below(front)]
            longest = max(below, key=len) if below else []
            self.chains[front.id] = [front] + longest
        return self.chains[front.id]

    def below(self, front):
        """Fronts that this one is spaced from; through open spaces, the highest below."""
        found = [self.fronts[lower] for lower, upper in self.stacked if upper == front.id]
        if found or front.id in self.on_an_edge:
            return found
        under = [
            other
            for other in self.fronts.values()
            if other.front.end("y") <= front.front.start("y")
            and min(other.front.end("x"), front.front.end("x")) > max(other.front.start("x"), front.front.start("x"))
        ]
        top = max((other.front.end("y") for other in under), default=None)
        return [other for other in under if other.front.end("y") == top]

    def look(self, gaps, overlaps):
        """Takes note of what stands on what."""
        upright = [(g["from"], g["to"]) for g in gaps if g["axis"] == "y"]
        self.stacked = [(a, b) for a, b in upright if a in self.fronts and b in self.fronts]
        self.on_an_edge = {b for a, b in upright if a not in self.fronts}
        self.on_an_edge |= {o["drawer"] for o in overlaps if o["edge"] == "bottom"}

    def between(self, lower, upper, axis, at_opening):
        """What the space between two fronts depends on; None stands for a fixed edge."""
        i, parts = self.inputs, []
        if axis == "y" and i.spaced:
            if upper is None:
                parts.append(Part(Fraction(1), i.opening, self.opening_deviation(lower, axis) if at_opening else 0))
                parts += [Part(Fraction(-1), i.cut, self.deviation(f, axis)) for f in self.chain(lower)]
        else:
            if upper is None:
                parts.append(Part(Fraction(1), i.opening, self.opening_deviation(lower, axis) if at_opening else 0))
            for front in (lower, upper):
                if front is not None:
                    parts.append(Part(Fraction(1), i.place))
                    parts.append(Part(-HALF, i.cut, self.deviation(front, axis)))
        return parts + self.movement(lower, upper, axis)

    def movement(self, lower, upper, axis):
        at_bottom = self.inputs.held == "bottom" and axis == "y"
        parts = []
        for front, share in ((lower, 1 if at_bottom else HALF), (upper, 0 if at_bottom else HALF)):
            if front is not None:
                dry, humid = self.moved(front, axis)
                parts.append(Part(-Fraction(share), dry=dry, humid=humid))
        return parts


def figures(size, parts, inputs, sign):
    """Every figure of one gap (sign 1) or overlap (sign -1)."""
    spread = sum(abs(p.factor) * p.tolerance for p in parts)
    rss = math.sqrt(sum(float(p.factor * p.tolerance) ** 2 for p in parts)) / PM_PER_MM
    found = {
        "worst.least_mm": (size - spread) / PM_PER_MM,
        "worst.greatest_mm": (size + spread) / PM_PER_MM,
        "rss.least_mm": size / PM_PER_MM - rss,
        "rss.greatest_mm": size / PM_PER_MM + rss,
    }
    if inputs.moisture is not None:
        for when in ("dry", "humid"):
            change = sum(float(p.factor) * getattr(p, when) for p in parts)
            found[f"season.{when}_mm"] = size / PM_PER_MM + sign * change
    if inputs.measured is not None:
        found["measured_mm"] = (size + sign * sum(p.factor * p.deviation for p in parts)) / PM_PER_MM
    if inputs.spacers and sign > 0:
        error, pieces = nearest(inputs.spacers, size)
        found["shim_error_mm"] = abs(error) / PM_PER_MM
        found["shim pieces"] = pieces
    return found


def nearest(spacers, wanted):
    """How near the spacers come to a gap, and with how few pieces."""
    sums = {0: 0}
    for thickness, count in spacers:
        for total, pieces in list(sums.items()):
            for n in range(1, count + 1):
                length = total + n * thickness
                if length > 2 * abs(wanted):
                    break
                sums[length] = min(sums.get(length, pieces + n), pieces + n)
    off = min(abs(total - wanted) for total in sums)
    return off, min(pieces for total, pieces in sums.items() if abs(total - wanted) == off)


def check_of(spec, bank, gaps, overlaps):
    """The figures of the gap check under readable names."""
    inputs = read_inputs(spec)
    lists = Lists(bank, inputs)
    lists.look(gaps, overlaps)
    found = {}
    for g in gaps:
        lower, upper = lists.fronts.get(g["from"]), lists.fronts.get(g["to"])
        parts = lists.between(lower, upper, g["axis"], g["to"].startswith("opening.") or g["to"] == "worktop")
        name = f"gap {g['axis']} {g['from']} > {g['to']}"
        found |= {f"{name} {key}": v for key, v in figures(g["size_mm"], parts, inputs, 1).items()}
    for o in overlaps:
        front, edge = lists.fronts[o["drawer"]], o["edge"]
        axis, upper_edge = "y" if edge in ("top", "bottom") else "x", edge in ("top", "right")
        ends = (front, None) if upper_edge else (None, front)
        parts = lists.between(*ends, axis, True)
        name = f"overlap {o['drawer']} {edge}"
        found |= {f"{name} {key}": v for key, v in figures(o["size_mm"], parts, inputs, -1).items()}
    return found | of_the_whole(bank, inputs) | sides_of(spec, bank, inputs)


LEVELS = ("pass", "note", "warn", "fail")


def sides_of(spec, bank, inputs):
    """Solid sides of boxes against the room above them (the model's section 10.5): how far they rise
    in the humid season, the room, and the level."""
    season = {"made": 8.0, "humid": 11.0, **(inputs.moisture or {})}
    found = {}
    for leaf in bank.root.leaves():
        rate = coefficient(leaf.settings.materials[0], "flat") if leaf.kind == "drawer" else 0
        box = bank.boxes.get(leaf.id)
        room = leaf.clear.end("y") - box.y - box.height if rate else -1
        if room < 0:
            continue
        top = box.y + box.height
        fixed = box.y if leaf.settings.slide_type == "wood-runner" else box.line_y
        moving = top - max(fixed, top - box.board_height)
        rises = moving / PM_PER_MM * rate * (season["humid"] - season["made"])
        left = room / PM_PER_MM - rises
        jams = "fail" if "season" in spec.value else "warn"
        enough = left >= min(inputs.least, room) / PM_PER_MM
        level = "pass" if enough else "warn" if left > 0 else jams
        name = f"sides of {leaf.id}"
        found |= {f"{name} rise": rises, f"{name} room": room / PM_PER_MM, f"{name} level": LEVELS.index(level)}
    return found


def of_the_whole(bank, inputs):
    found = {}
    lean = lean_of(bank, inputs)
    if lean is not None:
        found["lean_mm"] = lean / PM_PER_MM
    if inputs.measured is not None:
        for leaf in bank.root.leaves():
            if leaf.kind == "drawer":
                found[f"{leaf.id} cell as measured"] = measured_cell(bank, inputs, leaf) / PM_PER_MM
    return found


def measured_cell(bank, inputs, leaf):
    clear = leaf.clear
    off = 0
    if clear.end("x") == bank.opening.width:
        span = clear.start("y"), clear.end("y")
        off = least_on_line(width_points(bank, inputs), *span) - bank.opening.width
    return clear.size["x"] + off
