"""Dividers made as frames (the model's section 10.4): rails at the front and the rear, and between
them runners that leave their rear tenons room. Banks without partitions only."""

from fractions import Fraction

from gaps import coefficient, read_moisture
from lengths import Refused, ceil_to


def free_behind(case, spec_value, increment):
    """As typed, or what solid sides shrink over their depth from made to dry, up to the increment."""
    if case.web["free"] is not None:
        return case.web["free"]
    season = {key: read_moisture(v) for key, v in spec_value.get("season", {}).items()}
    shrinks = coefficient(case.material, "flat") * (season.get("made", 8.0) - season.get("dry", 6.0))
    if shrinks <= 0:
        return 0
    return ceil_to(round(Fraction(case.depth) * Fraction(shrinks)), increment)


def frame_parts(divider, length, depth, case, free):
    """Role, suffix of the id, count, length and width of one frame's parts."""
    web = case.web
    between = depth - 2 * web["rail"]
    if between <= 0 or free >= between:
        raise Refused(f"{divider.id}: no room between the rails")
    rails = 1 if web["rails"] == "front" else 2
    if web["front"] is None:
        found = [("web rail", "web_rail", rails, length, web["rail"])]
    else:
        found = [("web rail", "web_rail_front", 1, length, web["rail"])]
        found += [("web rail", "web_rail", 1, length, web["rail"])] * (rails - 1)
    if web["rails"] is None:
        found.append(("web runner", "web_runner", 2, between + 2 * web["tenon"] - free, web["runner"]))
    return found
