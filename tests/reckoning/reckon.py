#!/usr/bin/env python3
"""An independent second reckoning of `tillwright size --json`.

It is written from the model's text alone and shares nothing with the program,
so that the two can be held against each other, number by number.

    reckon.py SPEC     prints the result as JSON; exit 3 when the spec is refused
"""

import json
import sys
from dataclasses import dataclass

from box import solve_box
from likeness import with_likeness
from case import (
    CASE_KEYS,
    EDGES,
    back_panel,
    read_case,
    read_edge_gaps,
    read_opening,
    read_overlay,
    tongue_of,
    under_worktop,
)
from layout import Rect, Rules, all_nodes, divider_thickness, number, place, read_tree, touching
from lengths import Refused, mm_text
from settings import FRONT_KEYS, check_own, choices, default_length, merge, read_own, resolve
from spec_text import Keys, read_json
from web_frame import frame_parts, free_behind

TOP_KEYS = (
    "title units round opening case fronts slides box graduate drawers layout divider gap grid "
    "tolerance setting limits season measured spacers screws"
).split()
FRONTS_KEYS = FRONT_KEYS + ("style", "gap", "overlay", "edge")


@dataclass
class Bank:
    """A solved bank, before it is written out."""

    units: str
    increment: int
    inset: bool
    opening: object
    case: object
    root: object
    boxes: dict  # drawer id -> Box
    tongue: int  # of the case's tongues; 0 with another joint
    free: int  # behind the runners of web frames
    limits: tuple  # the least and the greatest a gap may be


def reckon_text(text):
    """The result of a spec's text; Refused when the spec is wrong."""
    return result_of(solve(read_json(text)))


def solve(value):
    spec = Keys(value, "", "in", TOP_KEYS)
    units = spec.unit = spec.choice("units", ("in", "mm"), "in")
    spec.text("title")
    check_screws(spec.child("screws", ("front", "slide", "pocket")))
    increment = spec.length("round", default_length(units, 1 / 32, 0.5))
    if ("opening" in spec) == ("case" in spec):
        raise Refused("one of 'opening' and 'case' is wanted")
    case, opening = None, None
    if "case" in spec:
        case = read_case(spec.child("case", CASE_KEYS), increment)
        opening = case.opening
    else:
        opening = read_opening(spec.child("opening", ("width", "height", "depth")))
    fronts = spec.child("fronts", FRONTS_KEYS)
    inset = fronts.choice("style", ("overlay", "inset"), "overlay") == "inset"
    root = read_tree(spec, fronts.length("gap", default_length(units, 1 / 8, 3), zero=True))
    settle(root, spec, units)
    rules, front = rules_and_front(spec, fronts, inset, case, opening, increment)
    clear = Rect({"x": 0, "y": 0}, {"x": opening.width, "y": opening.height})
    refuse_off_grid(spec, root, rules)
    place(root, front, clear, rules, grid=rules.grid)
    number(root)
    boxes = {
        leaf.id: solve_box(leaf.settings, leaf.clear, opening.depth, inset, increment, alike)
        for leaf, alike in with_likeness(root, increment, units)
        if leaf.kind == "drawer"
    }
    tongue = 0
    if case and case.joint == "tongue-and-dado":
        members = [d.thickness for node in all_nodes(root) for d in node.dividers]
        tongue = tongue_of(case, members, increment, units)
    free = free_behind(case, value, increment) if case and case.web else 0
    limits = spec.child("limits", ("least", "greatest"))
    least = limits.length("least", default_length(units, 1 / 32, 0.8), zero=True)
    most = limits.length("greatest", default_length(units, 3 / 16, 4.8))
    return Bank(units, increment, inset, opening, case, root, boxes, tongue, free, (least, most))


def check_screws(keys):
    """Screws change no size."""
    for key in ("front", "slide", "pocket"):
        keys.length(key)


def settle(root, spec, units):
    """Merges and fills the settings of every leaf that has a front."""
    bank = read_own(spec, "fronts", FRONTS_KEYS)
    check_own(bank, *choices(bank))
    for leaf in root.leaves():
        if leaf.own is not None:
            leaf.settings = resolve(merge(bank, leaf.own), units)


def rules_and_front(spec, fronts, inset, case, opening, increment):
    """The rules of placing and the root's front region."""
    if inset and "overlay" in fronts or not inset and "edge" in fronts:
        raise Refused("'overlay' goes with overlay fronts and 'edge' with inset ones")
    edge = read_edge_gaps(fronts) if inset else None
    gap = fronts.length("gap", default_length(spec.unit, 1 / 8, 3), zero=True)
    grow = {e: -edge[e] for e in EDGES} if inset else read_overlay(fronts, case, gap)
    member = case.side if case else default_length(spec.unit, 3 / 4, 18)
    front = Rect(
        {"x": -grow["left"], "y": -grow["bottom"]},
        {
            "x": opening.width + grow["left"] + grow["right"],
            "y": opening.height + grow["bottom"] + grow["top"],
        },
    )
    return Rules(increment, inset, edge, member, spec.length("grid")), front


def refuse_off_grid(spec, root, rules):
    if rules.grid and (root.kind != "rows" or divider_thickness(root, rules)):
        raise Refused("/grid: only where the root is rows without dividers")


# ---- the result ----------------------------------------------------------


def result_of(bank):
    opening = bank.opening
    leaves = bank.root.leaves()
    result = {
        "units": bank.units,
        "round_mm": bank.increment,
        "opening": {"width_mm": opening.width, "height_mm": opening.height, "depth_mm": opening.depth},
        "drawers": [drawer_result(leaf, bank.boxes[leaf.id]) for leaf in leaves if leaf.kind == "drawer"],
        "blanks": [
            {"id": leaf.id, "front": front_result(leaf)} for leaf in leaves if leaf.kind == "blank"
        ],
        "opens": [{"id": leaf.id, **rect_result(leaf.clear)} for leaf in leaves if leaf.kind == "open"],
        "dividers": [
            {"id": d.id, "kind": d.kind, **rect_result(d.rect), "depth_mm": opening.depth}
            for node in all_nodes(bank.root)
            for d in node.dividers
        ],
        "gaps": gaps_of(bank),
        "overlaps": overlaps_of(bank),
        "parts": parts_of(bank),
    }
    result["checks"] = list(gap_checks(bank, result["gaps"], result["overlaps"]))
    return result


def gap_checks(bank, gaps, overlaps):
    """What the limits of a gap, and slots into the case, come to: code, subject, level."""
    least, most = bank.limits
    for one in gaps:
        size, behind = one["size_mm"], one["behind"]
        subject = f"{one['from']} to {one['to']}"
        wide = size > most and behind is None
        nothing = one["to"] == "worktop" and size <= 0
        yield {"code": "gap", "subject": subject, "level": "fail" if size < least or nothing or wide else "pass"}
        if behind is not None:
            yield {"code": "bare", "subject": subject, "level": "fail" if size > behind else "pass"}
    for one in overlaps:
        if one["size_mm"] < 0:
            yield {"code": "bare", "subject": f"{one['drawer']} {one['edge']}", "level": "fail"}


def rect_result(rect):
    return {
        "x_mm": rect.at["x"],
        "y_mm": rect.at["y"],
        "width_mm": rect.size["x"],
        "height_mm": rect.size["y"],
    }


def front_result(leaf):
    return {**rect_result(leaf.front), "thickness_mm": leaf.settings.front}


def drawer_result(leaf, box):
    return {
        "id": leaf.id,
        "front": front_result(leaf),
        "cell": rect_result(leaf.clear),
        "slide": {
            "type": leaf.settings.slide_type,
            "length_mm": box.slide_length,
            "line_y_mm": box.line_y,
        },
        "box": {
            "x_mm": box.x,
            "y_mm": box.y,
            "z_mm": box.z,
            "width_mm": box.width,
            "height_mm": box.height,
            "depth_mm": box.depth,
            "inside_width_mm": box.inside_width,
            "inside_depth_mm": box.inside_depth,
            "inside_height_mm": box.inside_height,
        },
    }


def gap(axis, lower, upper, size, behind=None):
    """`behind` is the thickness of a member whose edge stands behind an overlay gap."""
    return {"axis": axis, "from": lower, "to": upper, "size_mm": size, "behind": behind}


def gaps_of(bank):
    found = []
    for node in all_nodes(bank.root):
        if node.children:
            found += gaps_of_node(node, bank.inset)
    if bank.inset:
        found += gaps_to_opening(bank)
    elif under_worktop(bank.case):
        for leaf in with_fronts(touching(bank.root, "top")):
            found.append(gap("y", leaf.id, "worktop", -beyond_edge(leaf.front, "top", bank.opening)))
    return found


def gaps_of_node(node, inset):
    axis = "y" if node.kind == "rows" else "x"
    near_side, far_side = ("top", "bottom") if axis == "y" else ("right", "left")
    pairs = list(zip(node.children, node.children[1:]))
    if axis == "y":
        pairs = [(lower, upper) for upper, lower in pairs]
    dividers = node.dividers or [None] * len(pairs)
    found = []
    for (lower, upper), divider in zip(pairs, dividers):
        lows, highs = with_fronts(touching(lower, near_side)), with_fronts(touching(upper, far_side))
        if inset and divider:
            face = divider.rect
            found += [gap(axis, a.id, divider.id, face.start(axis) - a.front.end(axis)) for a in lows]
            found += [gap(axis, divider.id, b.id, b.front.start(axis) - face.end(axis)) for b in highs]
            continue
        other = "x" if axis == "y" else "y"
        found += [
            gap(axis, a.id, b.id, b.front.start(axis) - a.front.end(axis), divider and divider.thickness)
            for a in lows
            for b in highs
            if facing(a.front, b.front, other)
        ]
    return found


def with_fronts(leaves):
    return [leaf for leaf in leaves if leaf.kind != "open"]


def facing(a, b, axis):
    """Whether two fronts share more than a point of the other axis."""
    return min(a.end(axis), b.end(axis)) > max(a.start(axis), b.start(axis))


def beyond_edge(front, edge, opening):
    """How far a front reaches beyond one edge of the opening; negative: short of it."""
    return {
        "left": -front.start("x"),
        "right": front.end("x") - opening.width,
        "bottom": -front.start("y"),
        "top": front.end("y") - opening.height,
    }[edge]


def gaps_to_opening(bank):
    found = []
    for edge in EDGES:
        axis = "x" if edge in ("left", "right") else "y"
        for leaf in with_fronts(touching(bank.root, edge)):
            size = -beyond_edge(leaf.front, edge, bank.opening)
            ends = (f"opening.{edge}", leaf.id)
            found.append(gap(axis, *(ends if edge in ("left", "bottom") else ends[::-1]), size))
    return found


def overlaps_of(bank):
    if bank.inset:
        return []
    return [
        {"drawer": leaf.id, "edge": edge, "size_mm": beyond_edge(leaf.front, edge, bank.opening)}
        for edge in EDGES
        if edge != "top" or not under_worktop(bank.case)
        for leaf in with_fronts(touching(bank.root, edge))
    ]


LET_IN = ("case bottom", "case top", "divider", "partition")


# ---- parts ---------------------------------------------------------------


def part(identity, role, length, width, thickness, count=1):
    if min(length, width, thickness) <= 0:
        raise Refused(f"{identity}: no room for the part")
    return {
        "id": identity,
        "role": role,
        "count": count,
        "length_mm": length,
        "width_mm": width,
        "thickness_mm": thickness,
    }


def sheet(identity, role, one, other, thickness):
    """A panel without a grain has its longer side as its length."""
    return part(identity, role, max(one, other), min(one, other), thickness)


def parts_of(bank):
    parts = []
    for leaf in bank.root.leaves():
        if leaf.kind != "open":
            parts.append(front_part(leaf))
        if leaf.kind == "drawer":
            parts += box_parts(leaf.id, leaf.settings, bank.boxes[leaf.id])
    reach = bank.case.joint_reach if bank.case else 0
    for node in all_nodes(bank.root):
        for divider in node.dividers:
            along = "x" if divider.kind == "divider" else "y"
            if divider.rect.size[along] <= 0:
                raise Refused(f"{divider.id}: no room for the part")
            length = divider.rect.size[along] + 2 * reach
            if bank.case and bank.case.web and divider.kind == "divider":
                parts += [
                    part(f"{divider.id}.{suffix}", role, long, wide, divider.thickness, count)
                    for role, suffix, count, long, wide in frame_parts(
                        divider, length, bank.opening.depth, bank.case, bank.free
                    )
                ]
                continue
            parts.append(part(divider.id, divider.kind, length, bank.opening.depth, divider.thickness))
    if bank.case:
        parts += case_parts(bank.case, bank.increment)
    for one in parts:
        if one["role"] in LET_IN:
            one["cuts"] = tongue_cuts(bank, one["thickness_mm"])
        if one["role"] == "case side":
            one["cuts"] = side_cuts(bank)
    return parts


def cut(origin, offset, width, depth):
    return {"from": origin, "offset_mm": offset, "width_mm": width, "depth_mm": depth}


def tongue_cuts(bank, thickness):
    """A rabbet at each end of what is let in leaves its tongue."""
    if not bank.tongue:
        return []
    return [cut("each end", 0, bank.case.joint_reach, thickness - bank.tongue)]


def side_cuts(bank):
    """In a case side: for bottom and top, whole or the tongues along their inside faces, and the back."""
    case, back, cuts = bank.case, bank.case.back, []
    if case.joint != "butt":
        for thickness, inside in ((case.bottom, case.raised + case.bottom), (case.top, case.height - case.top)):
            if not thickness:
                continue
            wide = bank.tongue or thickness
            low = inside - wide if inside == case.raised + case.bottom else inside
            cuts.append(cut("lower edge", low, wide, case.joint_reach))
    if back.fit == "rabbet":
        cuts.append(cut("rear edge", 0, back.thickness, back.lap))
    if back.fit == "groove":
        cuts.append(cut("rear edge", back.inset, back.thickness, back.groove))
    return cuts


def front_part(leaf):
    across, up = leaf.front.size["x"], leaf.front.size["y"]
    s = leaf.settings
    length, width = (across, up) if s.front_grain == "horizontal" else (up, across)
    return part(f"{leaf.id}.front", "front", length, width, s.front)


def box_parts(identity, s, box):
    solid = part(f"{identity}.bottom", "box bottom", box.panel_width, box.panel_depth, s.bottom)
    panel = sheet(f"{identity}.bottom", "box bottom", box.panel_width, box.panel_depth, s.bottom)
    return [
        part(f"{identity}.side", "box side", box.side_length, box.board_height, s.side, 2),
        part(f"{identity}.box_front", "box front", box.end_length, box.board_height, s.end),
        part(f"{identity}.box_back", "box back", box.end_length, box.back_height, s.end),
        solid if s.bottom_solid else panel,
    ]


def case_parts(case, increment):
    opening = case.opening
    across = opening.width + 2 * case.joint_reach
    parts = [
        part("case.side", "case side", case.height, case.depth, case.side, 2),
        part("case.bottom", "case bottom", across, opening.depth, case.bottom),
    ]
    if case.top:
        parts.append(part("case.top", "case top", across, opening.depth, case.top))
    if case.back.fit != "none":
        width, height = back_panel(case, increment)
        parts.append(sheet("case.back", "case back", width, height, case.back.thickness))
    return parts


# ---- running -------------------------------------------------------------


def to_json(value, indent=""):
    """JSON with every *_mm value as an exact decimal."""
    inner = indent + "  "
    if isinstance(value, dict):
        lines = [
            f'{inner}"{k}": {mm_text(v) if k.endswith("_mm") else to_json(v, inner)}' for k, v in value.items()
        ]
        return "{\n" + ",\n".join(lines) + f"\n{indent}}}"
    if isinstance(value, list):
        return "[" + ", ".join(to_json(v, indent) for v in value) + "]"
    return json.dumps(value)


def read_spec_file(path):
    if path == "-":
        return sys.stdin.buffer.read().decode("utf-8")
    with open(path, encoding="utf-8") as file:
        return file.read()


def main(arguments):
    if len(arguments) != 1:
        print(__doc__, file=sys.stderr)
        return 2
    try:
        print(to_json(reckon_text(read_spec_file(arguments[0]))))
    except Refused as refusal:
        print(json.dumps({"refused": str(refusal)}))
        return 3
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
