"""Boxes made alike (the model's section 10.3): the flexible drawers of a node whose fronts are
alike take the smallest of their sizes along the split, when none is much larger."""

from dataclasses import replace

from box import box_height, widths
from lengths import Refused
from settings import default_length


def with_likeness(root, q, units):
    """Every leaf, and what its box takes from others: 'ends' or 'height', or nothing."""
    taken = {}
    walk(root, q, default_length(units, 1 / 16, 1.5), taken)
    return [(leaf, taken.get(leaf.id, {})) for leaf in root.leaves()]


def walk(node, q, within, taken):
    if node.children and node.graduate.alike:
        for kin in kindred([c for c in node.children if c.kind == "drawer" and c.size.exact is None]):
            level(node.kind, kin, q, within, taken)
    for child in node.children:
        walk(child, q, within, taken)


def kindred(drawers):
    """Those whose keys of box and slide say the same; the front's own do not matter."""
    groups = []
    for drawer in drawers:
        keys = replace(drawer.settings, front=0, front_grain="")
        mates = next((group for first, group in groups if first == keys), None)
        if mates is None:
            groups.append((keys, mates := []))
        mates.append(drawer)
    return [group for _, group in groups]


def level(kind, drawers, q, within, taken):
    sizes = {}
    for drawer in drawers:
        try:
            if kind == "rows":
                sizes[drawer.id] = box_height(drawer.settings, drawer.clear.size["y"], q)
            else:
                sizes[drawer.id] = widths(drawer.settings, drawer.clear.size["x"], q)[1]
        except Refused:
            continue
    if sizes and max(sizes.values()) - min(sizes.values()) <= within:
        for name in sizes:
            taken[name] = {"height" if kind == "rows" else "ends": min(sizes.values())}
