"""Seeded random specs for the gap check: the random specs of the sizing with
tolerances, limits, seasons, measured sizes and spacers on top.
"""

import sys

from random_specs import Maker, Raw, deep, leaves_of, make_spec, shuffled, write_json

WOODS = ("cherry", "black walnut", "soft maple", "hard maple", "white oak", "red oak", "oak", "beech",
         "white pine", "birch plywood", "MDF", "teak")


def tolerances(maker):
    tolerance = {}
    for key in ("cut", "place", "opening"):
        maker.maybe(tolerance, key, 0.5, lambda: maker.pick((maker.say(maker.size(0.1, 1)), Raw("0"))))
    return tolerance


def moisture(maker):
    if maker.chance(0.6):
        return Raw(str(maker.pick((5, 6, 7.5, 8, 9.2, 11, 13))))
    degrees = maker.pick(("70 F", "21 C", "68 F", "5 C", "35.5 C"))
    return {"temperature": degrees, "humidity": Raw(str(maker.pick((25, 40, 55.5, 75, 90))))}


def measured(maker, root, height_mm, width_mm):
    found = {}
    around = lambda mm, by: maker.say(maker.size(mm - by, mm + by))
    maker.maybe(found, "width", 0.6, lambda: [
        {"at": maker.say(maker.size(1, height_mm)), "size": around(width_mm, 4)}
        for _ in range(maker.random.randint(1, 4))
    ])
    if maker.chance(0.5):
        found["height"] = {}
        for side in maker.pick((("left",), ("right",), ("left", "right"))):
            found["height"][side] = around(height_mm, 4)
    if maker.chance(0.5):
        across = (height_mm**2 + width_mm**2) ** 0.5
        found["diagonals"] = {key: around(across, 5) for key in ("rising", "falling")}
    drawers = sum(leaf.kind == "drawer" for leaf in leaves_of(root))
    if drawers and maker.chance(0.5):
        found["fronts"] = {
            f"D{n}": {key: maker.say(maker.size(100, 400)) for key in ("width", "height") if maker.chance(0.6)}
            for n in range(1, drawers + 1)
            if maker.chance(0.3)
        }
    return found


def spacers(maker):
    kinds = maker.random.randint(1, 4)
    return [
        {"name": f"kind {n}", "thickness": maker.say(maker.size(0.2, 3)), "count": Raw(str(maker.random.randint(1, 5)))}
        for n in range(kinds)
    ]


def random_check_spec(seed):
    """The text of one spec."""
    maker = Maker(seed)
    spec, root = make_spec(maker)
    maker.maybe(spec, "tolerance", 0.7, lambda: tolerances(maker))
    maker.maybe(spec, "setting", 0.7, lambda: maker.pick(("spaced", "centred")))
    if maker.chance(0.6):
        spec["season"] = {key: moisture(maker) for key in ("made", "dry", "humid") if maker.chance(0.85)}
        fronts = deep(spec, "fronts")
        fronts["material"] = maker.pick(WOODS)
        maker.maybe(fronts, "cut", 0.5, lambda: maker.pick(("flat", "quarter")))
        maker.maybe(fronts, "held", 0.5, lambda: maker.pick(("middle", "bottom")))
        maker.maybe(fronts, "grain", 0.4, lambda: maker.pick(("horizontal", "vertical")))
    if maker.chance(0.5):
        deep(spec, "box", "side")["material"] = maker.pick(WOODS)
    maker.maybe(spec, "measured", 0.6, lambda: measured(maker, root, root.height, root.width))
    maker.maybe(spec, "spacers", 0.4, lambda: spacers(maker))
    return write_json(maker, shuffled(maker, spec)) + "\n"


if __name__ == "__main__":
    print(random_check_spec(int(sys.argv[1]) if len(sys.argv) > 1 else 0), end="")
