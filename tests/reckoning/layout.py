"""The layout tree: read, then placed front and clear region by region
(the model's sections 3 and 4)."""

from dataclasses import dataclass, field

from apportion import Graduate, Size, apportion
from lengths import Refused, floor_to, half
from settings import read_own
from spec_text import Keys, check_length

MAX_DEPTH = 64
MAX_DRAWERS = 10_000
SIZE_KEYS = ("exact", "min", "max", "weight")
NODE_KEYS = ("graduate", "divider", "gap")
LEAF_KINDS = ("drawer", "blank", "open")
LEAF_KEYS = {
    "drawer": ("name", "box", "slides", "front", "contents", "load"),
    "blank": ("name", "front"),
    "open": ("name",),
}
SCHEME_KEYS = {
    "equal": (),
    "shares": ("shares",),
    "arithmetic": ("step", "first"),
    "geometric": ("ratio", "first"),
}


@dataclass
class Rect:
    """Lower left corner and size, axis by axis: 'x' and 'y'."""

    at: dict
    size: dict

    def with_span(self, axis, start, end):
        return Rect({**self.at, axis: start}, {**self.size, axis: end - start})

    def start(self, axis):
        return self.at[axis]

    def end(self, axis):
        return self.at[axis] + self.size[axis]


@dataclass
class Divider:
    id: str
    kind: str
    rect: Rect
    thickness: int


@dataclass
class Node:
    kind: str  # rows, columns, drawer, blank, open
    size: Size
    children: list = field(default_factory=list)
    graduate: Graduate = None
    divider: object = None  # None: by the default rule; "none"; or a thickness
    gap: int = None  # between the children's fronts
    own: object = None  # a drawer's or a blank's own keys
    name: str = None
    settings: object = None
    id: str = None
    front: Rect = None
    clear: Rect = None
    dividers: list = field(default_factory=list)

    def leaves(self):
        if not self.children:
            return [self]
        return [leaf for child in self.children for leaf in child.leaves()]


# ---- reading -------------------------------------------------------------


def read_tree(spec, gap):
    """The tree of a spec's `layout`, or of its plain list of drawers."""
    if ("layout" in spec) == ("drawers" in spec):
        raise Refused("one of 'layout' and 'drawers' is wanted")
    if "layout" in spec:
        for key in NODE_KEYS:
            if key in spec:
                raise Refused(f"/{key}: with a layout it stands in the nodes")
        root = read_node(spec.value["layout"], "/layout", spec.unit, gap, 1)
        if root.size != Size():
            raise Refused("/layout: the root has no split to take a size along")
    else:
        root = read_plain_list(spec, gap)
    if sum(leaf.kind == "drawer" for leaf in root.leaves()) > MAX_DRAWERS:
        raise Refused("more than 10,000 drawers")
    return root


def read_plain_list(spec, gap):
    listed = spec.value["drawers"]
    if not isinstance(listed, list) or not listed:
        raise Refused("/drawers: a list of drawers is wanted")
    children = [
        read_leaf("drawer", value, {}, f"/drawers/{i}", spec.unit) for i, value in enumerate(listed)
    ]
    return finish_node("rows", spec, children, Size(), gap)


def read_node(value, path, unit, gap, depth):
    if depth > MAX_DEPTH:
        raise Refused(f"{path}: nested deeper than {MAX_DEPTH} levels")
    if not isinstance(value, dict):
        raise Refused(f"{path}: an object is wanted")
    kinds = [kind for kind in ("rows", "columns") + LEAF_KINDS if kind in value]
    if len(kinds) != 1:
        raise Refused(f"{path}: one of rows, columns, drawer, blank and open is wanted")
    kind = kinds[0]
    if kind in LEAF_KINDS:
        keys = Keys(value, path, unit, (kind,) + SIZE_KEYS)
        beside = {key: keys.value[key] for key in SIZE_KEYS if key in keys}
        return read_leaf(kind, value[kind], beside, f"{path}/{kind}", unit)
    keys = Keys(value, path, unit, (kind,) + SIZE_KEYS + NODE_KEYS)
    if not isinstance(value[kind], list) or not value[kind]:
        raise Refused(f"{path}/{kind}: a list is wanted")
    children = [
        read_node(child, f"{path}/{kind}/{i}", unit, gap, depth + 1)
        for i, child in enumerate(value[kind])
    ]
    return finish_node(kind, keys, children, read_size(keys), gap)


def read_leaf(kind, value, beside, path, unit):
    keys = Keys(value, path, unit, LEAF_KEYS[kind] + SIZE_KEYS)
    for key in beside:
        if key in keys:
            raise Refused(f"{path}/{key}: the same key stands beside the leaf")
    size = read_size(Keys({**keys.value, **beside}, path, unit, LEAF_KEYS[kind] + SIZE_KEYS))
    own = read_own(keys) if kind != "open" else None
    return Node(kind, size, own=own, name=keys.text("name"))


def read_size(keys):
    size = Size(keys.length("exact"), keys.length("min"), keys.length("max"), keys.ratio("weight"))
    if size.exact is not None and (size.least, size.most, size.weight) != (None, None, None):
        raise Refused(f"{keys.path}: 'exact' stands alone")
    return size


def finish_node(kind, keys, children, size, gap):
    divider = keys.value.get("divider")
    if divider is not None and divider != "none":
        divider = check_length(divider, f"{keys.path}/divider", keys.unit)
    graduate = read_graduate(keys, len(children))
    if graduate.scheme != "equal" and any(child.size.weight is not None for child in children):
        raise Refused(f"{keys.path}: 'weight' goes with the equal scheme only")
    if graduate.alike:
        for child in children:
            if child.size.exact is None and child.size != Size():
                raise Refused(f"{keys.path}: 'alike' and sizes of its own exclude one another")
    return Node(kind, size, children, graduate, divider, keys.length("gap", gap, zero=True))


def read_graduate(node_keys, count):
    if "graduate" not in node_keys:
        return Graduate()
    keys = node_keys.child("graduate", ("scheme", "shares", "step", "first", "ratio", "alike"))
    scheme = keys.choice("scheme", tuple(SCHEME_KEYS), "equal")
    typed = [key for key in keys.value if key not in ("scheme", "alike")]
    alike = keys.flag("alike") or False
    if alike and scheme != "equal":
        raise Refused(f"{keys.path}: alike goes with equal")
    if any(key not in SCHEME_KEYS[scheme] for key in typed):
        raise Refused(f"{keys.path}: {scheme} has no such key")
    if scheme != "equal" and len(typed) != 1:
        raise Refused(f"{keys.path}: {scheme} wants one of {SCHEME_KEYS[scheme]}")
    return Graduate(
        scheme,
        shares=read_shares(keys, count),
        step=keys.length("step", zero=True, negative=True),
        first=keys.length("first"),
        ratio=keys.ratio("ratio"),
        alike=alike,
    )


def read_shares(keys, count):
    if "shares" not in keys:
        return None
    listed = keys.value["shares"]
    if not isinstance(listed, list) or len(listed) != count:
        raise Refused(f"{keys.path}/shares: one entry for every child is wanted")
    return [Keys({"share": share}, keys.path, keys.unit, ("share",)).ratio("share") for share in listed]


# ---- placing -------------------------------------------------------------


@dataclass
class Rules:
    """What placing needs to know of the whole bank."""

    increment: int
    inset: bool
    edge: dict  # gaps to the opening's edges, inset
    member: int  # default thickness of a divider or partition
    grid: int = None


def divider_thickness(node, rules):
    """Thickness of what stands between a node's children; 0 for nothing."""
    if node.divider == "none" or len(node.children) < 2:
        return 0
    if node.divider is not None:
        return node.divider
    return rules.member if wants_divider(node) else 0


def wants_divider(node):
    if node.kind == "columns":
        hung = ("side-mount", "undermount", "wood-runner")
        return any(leaf.kind == "drawer" and leaf.settings.slide_type in hung for leaf in node.leaves())
    stood = ("center-mount", "wood-runner")
    return any(
        child.kind == "columns" or (child.kind == "drawer" and child.settings.slide_type in stood)
        for child in node.children
    )


def place(node, front, clear, rules, split_axes=frozenset(), grid=None):
    """Gives every node of the tree its front and clear rectangle."""
    node.clear = clear
    if not node.children:
        node.front = front_of_leaf(front, split_axes, rules)
        return
    node.front = front
    axis = "y" if node.kind == "rows" else "x"
    thickness = divider_thickness(node, rules)
    between = space_between(node, axis, thickness, rules)
    fronts = split_fronts(node, axis, between, rules, grid)
    clears = split_clears(node, axis, fronts, thickness, rules)
    for child, child_front, child_clear in zip(node.children, fronts, clears):
        place(child, child_front, child_clear, rules, split_axes | {axis})


def front_of_leaf(region, split_axes, rules):
    """An axis no node above splits is a split with one child: floor, then remainder."""
    front = region
    for axis in {"x", "y"} - split_axes:
        size = floor_to(region.size[axis], rules.increment)
        if size <= 0:
            raise Refused(f"nothing is left for a front along {axis}")
        remainder = region.size[axis] - size
        start = region.at[axis] + (half(remainder) if axis == "x" else remainder)
        front = front.with_span(axis, start, start + size)
    return front


def lower_and_upper_edge(axis, rules):
    names = ("left", "right") if axis == "x" else ("bottom", "top")
    return rules.edge[names[0]], rules.edge[names[1]]


def space_between(node, axis, thickness, rules):
    """What separates two neighbouring fronts."""
    if rules.inset and thickness:
        return thickness + sum(lower_and_upper_edge(axis, rules))
    return node.gap


def split_fronts(node, axis, between, rules, grid):
    """The children's front regions, in the children's order."""
    region = node.front
    sizes = [child.size for child in node.children]
    if grid:
        lengths, left_over = apportion_pitches(region.size[axis], grid, node, sizes)
    else:
        shared = region.size[axis] - (len(sizes) - 1) * between
        lengths, left_over = apportion(shared, rules.increment, sizes, node.graduate)
    result = []
    if axis == "x":
        at = region.start("x") + half(left_over)
        for length in lengths:
            result.append(region.with_span("x", at, at + length))
            at += length + between
        return result
    at = region.end("y") - (left_over - half(left_over) if grid else 0)
    for length in lengths:
        result.append(region.with_span("y", at - length, at))
        at -= length + between
    return result


def apportion_pitches(length, grid, node, sizes):
    """The 32 mm system: whole pitches, each a front and one gap, share the height."""
    gap, graduate = node.gap, node.graduate

    def more(value):
        return None if value is None else value + gap

    pitches = [Size(more(s.exact), more(s.least), more(s.most), s.weight) for s in sizes]
    turned = Graduate(
        graduate.scheme, graduate.shares, graduate.step, more(graduate.first), graduate.ratio, graduate.alike
    )
    shares, left_over = apportion(length + gap, grid, pitches, turned)
    lengths = [share - gap for share in shares]
    if min(lengths) <= 0:
        raise Refused("a front of zero on the grid")
    return lengths, left_over


def split_clears(node, axis, fronts, thickness, rules):
    """The children's clear regions; the outer ends are the parent's."""
    forward = list(range(len(fronts)))
    order = forward if axis == "x" else forward[::-1]  # lower or left child first
    starts, ends = {}, {}
    starts[order[0]] = node.clear.start(axis)
    ends[order[-1]] = node.clear.end(axis)
    for lower, upper in zip(order, order[1:]):
        low = fronts[lower].end(axis)
        high = fronts[upper].start(axis)
        ends[lower], starts[upper] = clear_ends(low, high, axis, thickness, rules)
        if thickness:
            add_divider(node, axis, ends[lower], thickness)
    if axis == "y":
        node.dividers.reverse()  # listed top to bottom
    return [node.clear.with_span(axis, starts[i], ends[i]) for i in forward]


def clear_ends(low, high, axis, thickness, rules):
    """Where the lower region ends and the upper one starts between two fronts."""
    if rules.inset and thickness:
        # The lower front keeps the opening's upper edge gap to the divider.
        lower_face = low + lower_and_upper_edge(axis, rules)[1]
        return lower_face, lower_face + thickness
    middle = low + half(high - low)
    lower_face = middle - half(thickness)
    return lower_face, lower_face + thickness


def add_divider(node, axis, start, thickness):
    rect = node.clear.with_span(axis, start, start + thickness)
    kind = "divider" if axis == "y" else "partition"
    node.dividers.append(Divider(None, kind, rect, thickness))


def number(root):
    """D1, B1, O1 in reading order; H1, V1 as the tree is walked depth first."""
    counts = {}

    def next_id(letter):
        counts[letter] = counts.get(letter, 0) + 1
        return f"{letter}{counts[letter]}"

    def walk(node):
        if not node.children:
            node.id = next_id({"drawer": "D", "blank": "B", "open": "O"}[node.kind])
        for divider in node.dividers:
            divider.id = next_id("H" if divider.kind == "divider" else "V")
        for child in node.children:
            walk(child)

    walk(root)


def touching(node, side):
    """The leaves of a tree that lie on one of its sides."""
    axis_kind = "rows" if side in ("top", "bottom") else "columns"
    if not node.children:
        return [node]
    if node.kind != axis_kind:
        return [leaf for child in node.children for leaf in touching(child, side)]
    end = 0 if side in ("top", "left") else -1
    return touching(node.children[end], side)


def all_nodes(node):
    yield node
    for child in node.children:
        yield from all_nodes(child)
