"""One drawer's slide, box and parts (the model's sections 5 and 6)."""

from dataclasses import dataclass

from lengths import Refused, floor_to, half


@dataclass
class Box:
    x: int
    y: int
    z: int
    width: int
    height: int
    depth: int
    inside_width: int
    inside_depth: int
    inside_height: int
    slide_length: int
    line_y: int
    end_length: int
    side_length: int
    board_height: int  # of sides and front end
    back_height: int
    panel_width: int  # side to side
    panel_depth: int


def slide_length(s, opening_depth, inset, increment):
    if s.length != "auto":
        return s.length
    usable = opening_depth - (s.front if inset else 0)
    if s.lengths is None:
        return need(floor_to(usable - s.behind, increment), "the slide's length")
    fitting = [
        length
        for length in s.lengths
        if length + s.behind <= usable and (s.depth is None or length <= s.depth)
    ]
    if not fitting:
        raise Refused(f"no slide length fits a usable depth of {usable} pm")
    return max(fitting)


def widths(s, cell_width, q):
    """Outer width of the box and length of its ends."""
    if s.slide_type == "undermount":
        target = cell_width - s.deduct + 2 * s.side
    else:
        target = cell_width - 2 * s.clearance
    taken = {
        "butt": 2 * s.side,
        "rabbet": 2 * (s.side - s.joint_depth),
        "dado": 2 * (s.side - s.joint_depth),
    }.get(s.joint, 0)
    ends = floor_to(target - taken, q)
    return ends + taken, ends


def box_height(s, cell_height, q):
    room = cell_height - s.below - s.above
    if s.height is not None:
        return s.height
    if s.heights is not None:
        fitting = [height for height in s.heights if height <= room]
        if not fitting:
            raise Refused(f"no stock height fits {room} pm")
        return max(fitting)
    return floor_to(room, q)


def panel_size(s, inside_width, inside_depth, width, depth, q):
    if s.fit == "applied":
        return width, depth
    wider = 2 * s.groove - 2 * s.play
    across = floor_to(inside_width + wider, q)
    if s.fit == "groove" and s.open_back:
        return across, floor_to(inside_depth + s.groove + s.end - s.play, q)
    return across, floor_to(inside_depth + wider, q)


def solve_box(s, cell, opening_depth, inset, q, alike):
    """`alike` holds the 'ends' or the 'height' that boxes made alike all take."""
    length = slide_length(s, opening_depth, inset, q)
    depth = s.depth if s.depth is not None else length
    width, ends = widths(s, cell.size["x"], q)
    beside = width - ends
    ends = min(ends, alike.get("ends", ends))
    width = ends + beside
    height = box_height(s, cell.size["y"], q)
    height = min(height, alike.get("height", height))
    inside_width = width - 2 * s.side
    inside_depth = depth - 2 * s.end - s.setback
    up = s.up if s.fit == "groove" else 0
    board_height = height - (s.bottom if s.fit == "applied" else 0)
    inside_height = height - up - s.bottom
    across, along = panel_size(s, inside_width, inside_depth, width, depth, q)
    y = cell.start("y") + s.below
    box = Box(
        x=cell.start("x") + half(cell.size["x"] - width),
        y=y,
        z=s.front if inset else 0,
        width=need(width, "the box's width"),
        height=need(height, "the box's height"),
        depth=need(depth, "the box's depth"),
        inside_width=need(inside_width, "the width inside"),
        inside_depth=need(inside_depth, "the depth inside"),
        inside_height=need(inside_height, "the height inside"),
        slide_length=length,
        line_y=y + s.line,
        end_length=need(ends, "the ends"),
        side_length=need(depth - (2 * s.lap if s.joint == "half-blind-dovetail" else 0), "the sides"),
        board_height=need(board_height, "the sides' height"),
        back_height=inside_height if s.open_back and s.fit == "groove" else board_height,
        panel_width=need(across, "the bottom panel"),
        panel_depth=need(along, "the bottom panel"),
    )
    return box


def need(value, what):
    if value <= 0:
        raise Refused(f"no room for {what}: {value} pm")
    return value
