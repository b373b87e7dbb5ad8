"""Seeded random specs, varied in every key of the sizing model.

`random_spec(seed)` gives the text of one spec: mostly solvable, some not. The
same seed always gives the same text.
"""

import json
import random
import sys

from lengths import PM_PER_INCH, PM_PER_MM, mm_text

SLIDES = ("side-mount", "undermount", "center-mount", "wood-runner")
JOINTS = ("butt", "rabbet", "dado", "half-blind-dovetail", "through-dovetail", "finger")
SHEETS = ("birch plywood", "MDF", "oak plywood", "hardboard")
SOLIDS = ("cherry", "walnut", "oak", "maple")
SCALE_UP = 3  # cells are grown this much at most beyond what their parts need


class Raw(str):
    """Text that stands in the JSON as it is, without quotes: a number."""


class Maker:
    """One spec in the making, with its own random stream and unit."""

    def __init__(self, seed):
        self.random = random.Random(seed)
        self.units = self.random.choice(("in", "in", "mm"))
        self.tick = PM_PER_INCH // 64 if self.units == "in" else PM_PER_MM // 10

    def chance(self, probability):
        return self.random.random() < probability

    def pick(self, choices):
        return self.random.choice(choices)

    # ---- lengths and their text ----

    def between(self, low_mm, high_mm, coarse=1):
        """A length in picometres, a whole number of the maker's ticks."""
        step = self.tick * coarse
        low = max(1, int(low_mm * PM_PER_MM) // step)
        return self.random.randint(low, max(low, int(high_mm * PM_PER_MM) // step)) * step

    def size(self, low_mm, high_mm):
        """Mostly a length one would measure, now and then an odd one."""
        if self.chance(0.05):
            return self.random.randint(int(low_mm * 10**6), int(high_mm * 10**6)) * 1000
        return self.between(low_mm, high_mm, self.pick((1, 2, 4, 8, 16)))

    def say(self, pm):
        """A length written in one of the forms that mean exactly `pm`."""
        sign, pm = ("-", -pm) if pm < 0 else ("", pm)
        forms = [self.metric_text]
        if pm * 512 % PM_PER_INCH == 0:
            forms += [self.inch_text] * 3
            if pm >= 12 * PM_PER_INCH:
                forms.append(self.feet_text)
        text = self.pick(forms)(pm)
        if isinstance(text, Raw):
            return Raw(sign + text)
        pad = " " if self.chance(0.05) else ""
        return pad + sign + text + pad

    def metric_text(self, pm):
        if self.units == "mm" and self.chance(0.6):
            text = mm_text(pm)
            return Raw(text) if self.chance(0.5) else text
        exponent, unit = self.pick(((9, "mm"), (9, "mm"), (10, "cm"), (12, "m")))
        return decimal_text(pm, exponent) + self.pick(("", " ")) + unit

    def inch_text(self, pm):
        bare = self.units == "in"
        amount, whole_512 = None, pm * 512 // PM_PER_INCH
        if self.chance(0.4):
            amount = decimal_text(whole_512 * 1953125, 9)  # 1/512 in has nine decimals
            if bare and self.chance(0.5):
                return Raw(amount)
        else:
            amount = fraction_text(whole_512, self.pick((" ", " ", "-")), self.chance(0.9))
        units = ['"', " in", "in", " inches", " inch", "\u2033"]
        return amount + self.pick([""] * 6 + units if bare else units)

    def feet_text(self, pm):
        feet, rest = divmod(pm, 12 * PM_PER_INCH)
        foot = self.pick(("'", " ft", " feet", " foot", "\u2032"))
        if rest == 0:
            return f"{feet}{foot}"
        return f"{feet}{foot} " + fraction_text(rest * 512 // PM_PER_INCH, " ", True) + self.pick(('"', " in", "\u2033", " inches"))

    def number(self, low, high, decimals=2):
        """A ratio or weight: a number, or a text such as '4/3'."""
        if self.chance(0.4):
            bottom = self.random.randint(1, 9)
            top = self.random.randint(max(1, int(low * bottom)), max(1, int(high * bottom)))
            return f"{top}/{bottom}"
        value = str(round(self.random.uniform(low, high), decimals))
        return Raw(value) if self.chance(0.7) else value

    def maybe(self, target, key, probability, value):
        """Sets a key by chance; `value` is a function so that it is only drawn when wanted."""
        if self.chance(probability):
            target[key] = value()


def decimal_text(value, places):
    text = str(value).rjust(places + 1, "0")
    return (text[:-places] + "." + text[-places:]).rstrip("0").rstrip(".")


def fraction_text(parts_of_512, joiner, reduced):
    whole, top = divmod(parts_of_512, 512)
    bottom = 512
    while reduced and top and top % 2 == 0:
        top, bottom = top // 2, bottom // 2
    if top == 0:
        return str(whole)
    return f"{whole}{joiner}{top}/{bottom}" if whole else f"{top}/{bottom}"


# ---- writing -------------------------------------------------------------


def write_json(maker, value, indent=""):
    inner = indent + "  "
    if isinstance(value, Raw):
        return str(value)
    if isinstance(value, dict):
        lines = [f"{inner}{comment(maker)}{json.dumps(k)}: {write_json(maker, v, inner)}" for k, v in value.items()]
        return "{\n" + ",\n".join(lines) + f"\n{indent}}}" if lines else "{}"
    if isinstance(value, list):
        lines = [inner + comment(maker) + write_json(maker, v, inner) for v in value]
        return "[\n" + ",\n".join(lines) + f"\n{indent}]" if lines else "[]"
    return json.dumps(value, ensure_ascii=maker.chance(0.5))


def comment(maker):
    if not maker.chance(0.03):
        return ""
    return maker.pick(("/* as measured */ ", "// \"to be checked\"\n", "/* { \"x\": 1 // */ "))


# ---- the parts of a spec -------------------------------------------------


def make_slides(maker, kind, partial):
    """Slide keys of one type; `partial` leaves most out, as a drawer's own keys do."""
    share = 0.15 if partial else 0.25
    keys = {}
    maker.maybe(keys, "behind", share, lambda: maker.say(maker.size(0.5, 30)))
    maker.maybe(keys, "line", share, lambda: maker.say(maker.size(0.5, 50)))
    maker.maybe(keys, "lengths", share, lambda: [maker.say(maker.size(150, 600)) for _ in range(maker.random.randint(1, 5))] + [maker.say(200 * PM_PER_MM)])
    if kind == "undermount":
        maker.maybe(keys, "deduct", share, lambda: maker.say(maker.size(5, 50)))
        maker.maybe(keys, "side_max", share, lambda: maker.say(maker.size(10, 20)))
    else:
        maker.maybe(keys, "clearance", share, lambda: maker.say(maker.size(0.5, 15)))
    if maker.chance(0.5):
        keys["length"] = "auto"
    elif maker.chance(share):
        keys["length"] = maker.say(maker.size(200, 550))
    return keys


def make_corner(maker, joint):
    keys = {}
    if joint in ("rabbet", "dado"):
        maker.maybe(keys, "depth", 0.5, lambda: maker.say(maker.size(2, 9)))
    if joint == "half-blind-dovetail":
        maker.maybe(keys, "lap", 0.5, lambda: maker.say(maker.size(1, 6)))
    if joint in ("butt", "rabbet", "dado"):
        maker.maybe(keys, "back_setback", 0.25, lambda: maker.say(maker.size(0.5, 30)))
    return keys


def make_bottom(maker, fit):
    keys = {}
    maker.maybe(keys, "thickness", 0.4, lambda: maker.say(maker.size(4, 13)))
    maker.maybe(keys, "material", 0.4, lambda: maker.pick(SHEETS + SOLIDS))
    if fit in ("groove", "rabbet"):
        maker.maybe(keys, "depth", 0.4, lambda: maker.say(maker.size(3, 8)))
        maker.maybe(keys, "play", 0.4, lambda: maker.pick((maker.say(maker.size(0.2, 2)), Raw("0"), "0")))
    if fit == "groove":
        maker.maybe(keys, "up", 0.3, lambda: maker.say(maker.size(3, 15)))
        maker.maybe(keys, "open_back", 0.4, lambda: maker.chance(0.7))
    return keys


def make_box(maker, joint, fit, partial):
    """Box keys that suit the joint and the fit; either may be typed or inherited."""
    share = 0.2 if partial else 0.45
    box = {}
    maker.maybe(box, "side", share, lambda: {"thickness": maker.say(maker.size(9, 17))})
    maker.maybe(box, "end", share, lambda: {"thickness": maker.say(maker.size(9, 20))})
    maker.maybe(box, "corner", share, lambda: make_corner(maker, joint))
    maker.maybe(box, "bottom", share, lambda: make_bottom(maker, fit))
    maker.maybe(box, "clear_above", share / 2, lambda: maker.say(maker.size(0.5, 20)))
    maker.maybe(box, "clear_below", share / 2, lambda: maker.say(maker.size(0.5, 20)))
    maker.maybe(box, "height", share / 5, lambda: maker.say(maker.size(50, 120)))
    maker.maybe(box, "heights", share / 4, lambda: [maker.say(maker.size(30, 250)) for _ in range(4)] + [maker.say(25 * PM_PER_MM)])
    maker.maybe(box, "depth", share / 5, lambda: maker.say(maker.size(300, 550)))
    return box


def make_front(maker):
    front = {}
    maker.maybe(front, "thickness", 0.5, lambda: maker.say(maker.size(12, 26)))
    maker.maybe(front, "material", 0.3, lambda: maker.pick(SHEETS + SOLIDS))
    maker.maybe(front, "grain", 0.5, lambda: maker.pick(("horizontal", "vertical")))
    return front


class Bank:
    """The choices every drawer inherits."""

    def __init__(self, maker):
        self.slide = maker.pick(SLIDES)
        self.joint = maker.pick(JOINTS)
        self.fit = maker.pick(("groove", "groove", "rabbet", "applied"))
        self.cell_width = 0


def type_choice(maker, target, key, value, default):
    """Types a choice, or leaves it to the default now and then where that is the same."""
    if value != default or maker.chance(0.5):
        return {key: value, **target}
    return target


def make_bank_keys(maker, bank):
    slides = type_choice(maker, make_slides(maker, bank.slide, False), "type", bank.slide, "side-mount")
    box = make_box(maker, bank.joint, bank.fit, False)
    corner = type_choice(maker, box.get("corner", {}), "joint", bank.joint, "butt")
    bottom = type_choice(maker, box.get("bottom", {}), "fit", bank.fit, "groove")
    return slides, with_filled(box, {"corner": corner, "bottom": bottom})


def with_filled(target, extra):
    return {**target, **{key: value for key, value in extra.items() if value}}


def make_drawer(maker, bank):
    """A drawer's own keys, some of which change the slide type, joint or fit."""
    drawer = {}
    maker.maybe(drawer, "name", 0.2, lambda: maker.pick(("Paper", "Tools", "Pr\u00e9cis \"A\"")))
    slide, joint, fit = bank.slide, bank.joint, bank.fit
    if maker.chance(0.12):
        slide = maker.pick(SLIDES)
        drawer["slides"] = {"type": slide, **make_slides(maker, slide, True)}
    elif maker.chance(0.08):
        drawer["slides"] = make_slides(maker, slide, True)
    if maker.chance(0.2):
        changed_joint, changed_fit = maker.chance(0.4), maker.chance(0.4)
        joint = maker.pick(JOINTS) if changed_joint else joint
        fit = maker.pick(("groove", "rabbet", "applied")) if changed_fit else fit
        box = make_box(maker, joint, fit, True)
        corner = {"joint": joint, **box.get("corner", {})} if changed_joint else {}
        bottom = {"fit": fit, **box.get("bottom", {})} if changed_fit else {}
        drawer["box"] = with_filled(box, {"corner": corner, "bottom": bottom})
    if maker.chance(0.1):
        drawer["front"] = make_front(maker)
    return drawer


# ---- the tree ------------------------------------------------------------


class Branch:
    """A node of the tree with the width and height it would like, in mm."""

    def __init__(self, kind, value, width, height, children=()):
        self.kind, self.value, self.width, self.height = kind, value, width, height
        self.children = children


def make_leaf(maker, bank, kind="drawer"):
    width, height = maker.random.uniform(200, 450), maker.random.uniform(110, 260)
    if kind == "drawer":
        value = make_drawer(maker, bank)
    elif kind == "blank":
        value = {"front": make_front(maker)} if maker.chance(0.2) else {}
    else:
        value = {}
    return Branch(kind, value, width, height)


def make_branch(maker, bank, budget, depth):
    """A branch with about `budget` leaves."""
    if budget <= 1 or depth > 5:
        kind = maker.pick(["drawer"] * 10 + ["blank", "open"])
        leaf = make_leaf(maker, bank, kind)
        if maker.chance(0.03) and depth < 6:
            return join(maker, maker.pick(("rows", "columns")), [leaf])
        return leaf
    count = min(budget, maker.random.randint(2, 6))
    budgets = split_budget(maker, budget, count)
    kind = maker.pick(("rows", "rows", "columns"))
    return join(maker, kind, [make_branch(maker, bank, b, depth + 1) for b in budgets])


def split_budget(maker, budget, count):
    shares = [1] * count
    for _ in range(budget - count):
        shares[maker.pick((0, maker.random.randrange(count)))] += 1
    maker.random.shuffle(shares)
    return shares


def join(maker, kind, children):
    along = "height" if kind == "rows" else "width"
    across = "width" if kind == "rows" else "height"
    n = len(children)
    length = sum(getattr(child, along) for child in children) + 22 * (n - 1)
    sizes = {along: length, across: max(getattr(child, across) for child in children)}
    node = {kind: None}
    maker.maybe(node, "divider", 0.25, lambda: "none" if maker.chance(0.4) else maker.say(maker.size(6, 25)))
    maker.maybe(node, "gap", 0.2, lambda: maker.say(maker.size(*maker.pick(((0.5, 8), (0.5, 8), (10, 30))))))
    branch = Branch(kind, node, sizes["width"], sizes["height"], children)
    add_sizes(maker, branch, along)
    return branch


def add_sizes(maker, branch, along):
    """Gives the children size keys and the node a way to graduate."""
    n = len(branch.children)
    scheme = maker.pick(("equal", "equal", "alike", "shares", "arithmetic", "geometric"))
    average = sum(getattr(child, along) for child in branch.children) / n
    all_exact = maker.chance(0.04)
    exacts = 0
    for child in branch.children:
        size, wish = {}, getattr(child, along)
        if all_exact or (maker.chance(0.08) and exacts < n - 1):
            exacts += 1
            size["exact"] = maker.say(maker.size(wish * 0.9, wish))
        elif scheme != "alike":
            maker.maybe(size, "min", 0.12, lambda: maker.say(maker.size(average * 0.3, average * 0.9)))
            maker.maybe(size, "max", 0.12, lambda: maker.say(maker.size(average * 1.1, average * SCALE_UP)))
            if scheme == "equal":
                maker.maybe(size, "weight", 0.3, lambda: maker.number(0.7, 2))
        place_sizes(maker, child, size)
    graduate = make_graduate(maker, scheme, n, n - exacts, average)
    if graduate is not None:
        branch.value["graduate"] = graduate


def place_sizes(maker, child, size):
    """Size keys stand in a leaf's own object or beside it; in a node, beside its kind."""
    child.beside = {}
    if child.children:
        child.value.update(size)
        return
    for key, value in size.items():
        if maker.chance(0.5):
            child.value[key] = value
        else:
            child.beside[key] = value


def make_graduate(maker, scheme, n, free, average):
    if scheme == "alike":
        return {"alike": True, **({"scheme": "equal"} if maker.chance(0.3) else {})}
    if scheme == "equal":
        return {"scheme": "equal"} if maker.chance(0.2) else ({} if maker.chance(0.02) else None)
    if scheme == "shares":
        return {"scheme": scheme, "shares": [maker.number(0.7, 2) for _ in range(n)]}
    steps = max(1, free - 1)
    if scheme == "arithmetic":
        if maker.chance(0.5):
            step = maker.size(0.5, 0.9 * average / steps)
            step = maker.pick((step, step, -step, 0))
            return {"scheme": scheme, "step": maker.say(step) if step else Raw("0")}
        return {"scheme": scheme, "first": maker.say(maker.size(average * 0.6, average * 1.2))}
    if maker.chance(0.5):
        return {"scheme": scheme, "ratio": maker.number(max(0.3, 1 - 1.2 / steps), 1 + 1.2 / steps)}
    return {"scheme": scheme, "first": maker.say(maker.size(average * 0.6, average * 1.05))}


def tree_value(branch):
    """The JSON of a branch inside a layout."""
    beside = getattr(branch, "beside", {})
    if not branch.children:
        return {branch.kind: branch.value, **beside}
    return {**branch.value, branch.kind: [tree_value(child) for child in branch.children]}


def leaves_of(branch):
    if not branch.children:
        return [branch]
    return [leaf for child in branch.children for leaf in leaves_of(child)]


# ---- opening, case and fronts --------------------------------------------


def make_opening(maker, width, height):
    grown = maker.random.uniform(1.0, 1.15)
    return {
        "width": maker.say(maker.size(width * grown, width * grown + 30)),
        "height": maker.say(maker.size(height * grown, height * grown + 30)),
        "depth": maker.say(maker.size(400, 750)),
    }


def make_case(maker, width, height):
    case = make_opening(maker, width + 40, height + 40)
    for key in ("side", "bottom"):
        maker.maybe(case, key, 0.4, lambda: maker.say(maker.size(12, 30)))
    maker.maybe(case, "top", 0.5, lambda: maker.pick(("none", maker.say(maker.size(12, 30)))))
    maker.maybe(case, "raise", 0.2, lambda: maker.say(maker.size(0.5, 60)))
    maker.maybe(case, "joint", 0.5, lambda: make_case_joint(maker))
    maker.maybe(case, "back", 0.7, lambda: make_back(maker))
    return case


def add_web_frames(maker, spec):
    case = spec["case"]
    maker.maybe(case, "material", 0.7, lambda: maker.pick(("cherry", "white oak", "birch plywood", "beech")))
    web = case["web_frame"] = {}
    maker.maybe(web, "rail", 0.4, lambda: maker.say(maker.size(30, 80)))
    maker.maybe(web, "front", 0.3, lambda: "black walnut")
    if maker.chance(0.3):
        web["rails"] = maker.pick(("front", "both"))
        maker.maybe(web, "tenon", 0.05, lambda: maker.say(maker.size(8, 12)))
    else:
        for key, least, most in (("runner", 20, 70), ("tenon", 5, 15), ("free", 0.5, 9)):
            maker.maybe(web, key, 0.3, lambda: maker.say(maker.size(least, most)))
    if maker.chance(0.5):
        spec["season"] = {key: Raw(str(maker.pick((5, 6, 7.5, 9, 11)))) for key in ("made", "dry") if maker.chance(0.7)}
    maker.maybe(spec, "divider", 0.6, lambda: maker.say(maker.size(12, 25)))


def make_case_joint(maker):
    joint = {"type": maker.pick(("butt", "dado", "rabbet", "tongue-and-dado"))}
    if joint["type"] != "butt":
        maker.maybe(joint, "depth", 0.4, lambda: maker.say(maker.size(3, 10)))
    if joint["type"] == "tongue-and-dado":
        maker.maybe(joint, "tongue", 0.4, lambda: maker.say(maker.size(3, 14)))
    return joint


def make_pull(maker):
    pull = {}
    maker.maybe(pull, "centers", 0.5, lambda: maker.say(maker.size(20, 40)))
    maker.maybe(pull, "count", 0.3, lambda: Raw("1"))
    return pull


def make_back(maker):
    if maker.chance(0.2):
        return "none"
    fit = maker.pick(("rabbet", "groove", "applied"))
    back = {"fit": fit} if fit != "rabbet" or maker.chance(0.5) else {}
    maker.maybe(back, "thickness", 0.5, lambda: maker.say(maker.size(4, 15)))
    if fit == "rabbet":
        maker.maybe(back, "lap", 0.4, lambda: maker.say(maker.size(4, 12)))
    if fit == "groove":
        maker.maybe(back, "inset", 0.4, lambda: maker.say(maker.size(5, 30)))
        maker.maybe(back, "depth", 0.4, lambda: maker.say(maker.size(4, 10)))
    if fit != "applied":
        maker.maybe(back, "play", 0.3, lambda: maker.say(maker.size(0.2, 2)))
    return back


def make_fronts(maker, has_case):
    fronts = make_front(maker)
    maker.maybe(fronts, "pull", 0.15, lambda: make_pull(maker))
    maker.maybe(fronts, "gap", 0.4, lambda: maker.pick((maker.say(maker.size(1, 6)), Raw("0"))))
    if maker.chance(0.4):
        fronts["style"] = "inset"
        maker.maybe(fronts, "edge", 0.6, lambda: edges(maker, lambda: maker.say(maker.size(0.5, 6)), True))
        return fronts
    maker.maybe(fronts, "style", 0.3, lambda: "overlay")
    maker.maybe(fronts, "overlay", 0.7, lambda: edges(maker, lambda: overlay_edge(maker, has_case), False))
    return fronts


def overlay_edge(maker, has_case):
    if has_case and maker.chance(0.3):
        return "flush"
    if has_case and maker.chance(0.3):
        return {"reveal": maker.pick((maker.say(maker.size(0.5, 10)), Raw("0")))}
    return maker.say(maker.pick((1, 1, 1, -1)) * maker.size(2, 17))


def edges(maker, value, inset):
    """One length for all edges, or an object of some of them."""
    if maker.chance(0.4):
        return maker.say(maker.size(0.5, 6 if inset else 17))
    names = [name for name in ("top", "bottom", "left", "right") if maker.chance(0.75)]
    return {name: value() for name in names}


def make_spec(maker):
    bank = Bank(maker)
    spec = {}
    maker.maybe(spec, "title", 0.3, lambda: "Bench // left \"pedestal\" /* oak */")
    if maker.units == "mm" or maker.chance(0.4):
        spec["units"] = maker.units
    maker.maybe(spec, "round", 0.4, lambda: make_round(maker))
    count = maker.pick((1, 2, 3, 3, 4, 4, 5, 6, 7, 8, 10, 14, 20, 28, 40))
    plain = maker.chance(0.45)
    if plain:
        root = join(maker, "rows", [make_leaf(maker, bank) for _ in range(count)])
    else:
        root = make_branch(maker, bank, count, 0)
    has_case = maker.chance(0.4)
    place = make_case if has_case else make_opening
    spec["case" if has_case else "opening"] = place(maker, root.width, root.height)
    maker.maybe(spec, "fronts", 0.85, lambda: make_fronts(maker, has_case))
    if maker.chance(0.15):
        spec["limits"] = {"least": maker.pick((Raw("0"), maker.say(maker.size(0.5, 2)))), "greatest": maker.say(maker.size(3, 9))}
    maker.maybe(spec, "screws", 0.1, lambda: {"front": maker.say(maker.size(20, 40))})
    if has_case and plain and maker.chance(0.4):
        add_web_frames(maker, spec)
    spec["slides"], spec["box"] = make_bank_keys(maker, bank)
    add_tree(maker, spec, root, plain)
    if root.kind == "rows" and maker.chance(0.12):
        add_grid(maker, spec, root, plain)
    for key in ("slides", "box"):
        if not spec[key]:
            del spec[key]
    return spec, root


def add_tree(maker, spec, root, plain):
    if plain:
        node = {key: value for key, value in root.value.items() if key != "rows"}
        spec.update(node)
        spec["drawers"] = [{**leaf.value, **leaf.beside} for leaf in root.children]
    else:
        spec["layout"] = tree_value(root)


def add_grid(maker, spec, root, plain):
    node = spec if plain else spec["layout"]
    if maker.chance(0.9):
        node["divider"] = "none"
    spec["grid"] = maker.pick(("32 mm", maker.say(32 * PM_PER_MM), "16 mm", maker.say(maker.size(10, 40))))


def make_round(maker):
    if maker.chance(0.1):
        return maker.say(maker.size(0.5, 3))
    if maker.units == "in":
        return maker.pick(("1/32", "1/16", "1/64", "1/8", "1 mm", Raw("0.0625")))
    return maker.pick(("1 mm", Raw("0.5"), Raw("1"), Raw("0.1"), "2"))


# ---- mistakes ------------------------------------------------------------


def any_drawer(maker, root):
    found = [leaf for leaf in leaves_of(root) if leaf.kind == "drawer"]
    return maker.pick(found).value if found else {}


def nest(spec, levels):
    """Puts the layout under nodes of a single child: legal, but not without end."""
    for _ in range(levels if "layout" in spec else 0):
        spec["layout"] = {"rows": [spec["layout"]]}


def deep(spec, *path):
    for key in path:
        spec = spec.setdefault(key, {})
    return spec


def mistakes(maker, spec, root):
    """Functions that each make one thing wrong, or nearly wrong."""
    place = "case" if "case" in spec else "opening"
    node = spec["layout"] if "layout" in spec else spec
    drawer = any_drawer(maker, root)
    bad = maker.pick(("1/3", "1e3", Raw("1e3"), "-2", Raw("-2"), Raw("0"), "0", "wide", "12 1/", "1/0", "101 m", "4 ' 5 '", "", "3 furlongs", True, None, "1.2.3"))
    return (
        lambda: deep(spec, place).update(width=bad),
        lambda: deep(spec, "fronts").update(thickness=bad),
        lambda: deep(spec, "box").update(clear_above=maker.pick(("-1/8", Raw("-3"), "1/3"))),
        lambda: deep(spec, place).pop("depth"),
        lambda: deep(spec, "slides").update(deduct="40 mm"),
        lambda: deep(spec, "slides").update(clearance="1/2"),
        lambda: deep(spec, "box", "bottom").update(up=maker.say(8 * PM_PER_MM)),
        lambda: deep(spec, "box", "bottom").update(open_back=False),
        lambda: deep(spec, "box", "corner").update(lap=maker.say(4 * PM_PER_MM)),
        lambda: deep(spec, "box", "corner").update(depth=maker.say(4 * PM_PER_MM)),
        lambda: deep(spec, "box", "corner").update(back_setback=maker.say(4 * PM_PER_MM)),
        lambda: deep(drawer, "slides").update(deduct="40 mm"),
        lambda: deep(drawer, "box", "bottom").update(play=maker.say(PM_PER_MM)),
        lambda: deep(drawer, "box", "corner").update(depth=maker.say(4 * PM_PER_MM)),
        lambda: drawer.update(exact="100 mm", min="90 mm"),
        lambda: drawer.update(min=maker.say(maker.size(100, 300)), max=maker.say(maker.size(90, 200))),
        lambda: drawer.update(min=maker.say(maker.size(500, 2000))),
        lambda: drawer.update(weight=maker.pick((Raw("2"), Raw("0"), "-1", "2/0", "a"))),
        lambda: drawer.update(colour="red"),
        lambda: spec.update(fronts={**spec.get("fronts", {}), "style": "overlay", "overlay": {"left": "flush"}}),
        lambda: spec.update(heigth=1),
        lambda: spec.update(grid="32 mm"),
        lambda: spec.update(units=maker.pick(("cm", "inch"))),
        lambda: spec.update(layout={"rows": [{"drawer": {}}]}, drawers=[{}]),
        lambda: node.update(graduate={"scheme": "arithmetic", "step": "5 mm", "first": "100 mm"}),
        lambda: node.update(graduate={"scheme": "geometric", "ratio": Raw("1.1"), "first": "100 mm"}),
        lambda: node.update(graduate={"scheme": "shares", "shares": [Raw("1"), Raw("2")]}),
        lambda: node.update(graduate={"scheme": "arithmetic", "step": "5 mm", "alike": True}),
        lambda: (node.update(graduate={"alike": True}), drawer.update(min=maker.say(maker.size(50, 90)))),
        lambda: (node.update(graduate={"alike": True}), drawer.update(weight=Raw("2"))),
        lambda: node.update(graduate={"alike": maker.pick(("yes", Raw("1"), False))}),
        lambda: node.update(graduate={"scheme": maker.pick(("geometric", "arithmetic", "shares", "equals"))}),
        lambda: node.update(graduate={"scheme": "arithmetic", "step": maker.say(maker.size(50, 400))}),
        lambda: node.update(graduate={"scheme": "geometric", "first": maker.say(maker.size(50, 1500))}),
        lambda: node.update(divider=maker.pick(("no", "0", "-3 mm", Raw("0")))),
        lambda: spec.get("layout", {}).update(min="50 mm"),
        lambda: spec.update(graduate={"scheme": "equal"}, gap="1/8"),
        lambda: spec.get("layout", {}).update(rows=[]) if "rows" in node else spec.update(drawers=[]),
        lambda: deep(spec, "slides").update(type="side mount"),
        lambda: nest(spec, maker.pick((20, 70))),
        lambda: spec.update(round=maker.pick(("0", "-1/32", "1/3"))),
    )


def random_spec(seed):
    """The text of one spec."""
    maker = Maker(seed)
    spec, root = make_spec(maker)
    if maker.chance(0.15):
        maker.pick(mistakes(maker, spec, root))()
        if "drawers" in spec and root.children and "layout" not in spec:
            refresh_plain(spec, root)
    return write_json(maker, shuffled(maker, spec)) + "\n"


def refresh_plain(spec, root):
    """A plain list was copied from the leaves; bring a changed leaf back in."""
    if len(spec["drawers"]) == len(root.children):
        spec["drawers"] = [{**leaf.beside, **leaf.value} for leaf in root.children]


def shuffled(maker, spec):
    items = list(spec.items())
    if maker.chance(0.3):
        maker.random.shuffle(items)
    return dict(items)


if __name__ == "__main__":
    print(random_spec(int(sys.argv[1]) if len(sys.argv) > 1 else 0), end="")
