#!/usr/bin/env python3
"""Examples worked by hand, each checked to the picometre."""

import json
import unittest
from fractions import Fraction

from apportion import Graduate, Size, apportion
from lengths import PM_PER_INCH, PM_PER_MM, Refused, mm_text, read_length_text
from random_specs import random_spec
from reckon import reckon_text

OPENING = {"width": "15 3/8", "height": "24 3/4", "depth": "21 3/4"}
METRIC = {"units": "mm", "opening": {"width": 400, "height": 500, "depth": 500}}


def inch(text):
    return int(Fraction(text) * PM_PER_INCH)


def mm(text):
    return int(Fraction(str(text)) * PM_PER_MM)


def solve(**spec):
    return reckon_text(json.dumps(spec))


def by_id(result, key):
    return {item["id"]: item for item in result[key]}


def gap_sizes(result):
    return {(g["from"], g["to"]): g["size_mm"] for g in result["gaps"]}


def heights(result):
    return [drawer["front"]["height_mm"] for drawer in result["drawers"]]


class LengthText(unittest.TestCase):
    def test_every_form_of_fifteen_and_three_eighths(self):
        for text in ("15 3/8", "15-3/8", '15 3/8"', "15 3/8 in", "15.375", "390.525 mm", "39.0525 cm",
                     "0.390525 m", "1' 3 3/8\"", "1 ft 3 3/8 in", "1\u2032 3 3/8\u2033", "123/8", "15-3/8 inches"):
            self.assertEqual(read_length_text(text, "in"), 390525000000, text)

    def test_a_bare_number_is_in_the_specs_unit(self):
        self.assertEqual(read_length_text("3/4", "mm"), mm("0.75"))
        self.assertEqual(read_length_text("-1/4", "in"), -inch("1/4"))

    def test_refused(self):
        for text in ("1/3", "1e3", "", "3 furlongs", "12 1/", "1/0", "101 m", "--1", "1.2.3", "NaN"):
            with self.assertRaises(Refused, msg=text):
                read_length_text(text, "in")

    def test_a_third_of_a_foot_is_exact(self):
        self.assertEqual(read_length_text("1/3 ft", "in"), inch("4"))

    def test_display(self):
        self.assertEqual(mm_text(-mm("0.5")), "-0.5")
        self.assertEqual(mm_text(1), "0.000000001")


class Apportioning(unittest.TestCase):
    def split(self, length, sizes, **graduate):
        return apportion(length, 10, sizes, Graduate(**graduate))

    def test_ties_go_to_the_later_child_and_the_sliver_is_left(self):
        # 807 = 80 tens and 7; 26.67 tens each, so two tens go to the last two.
        self.assertEqual(self.split(807, [Size()] * 3), ([260, 270, 270], 7))

    def test_bounds_are_rounded_before_they_bind(self):
        # min 401 becomes 410; the other two share 39 tens, the odd one to the later.
        self.assertEqual(self.split(800, [Size(least=401), Size(), Size()]), ([410, 190, 200], 0))
        # max 99 becomes 90.
        self.assertEqual(self.split(300, [Size(most=99), Size()]), ([90, 210], 0))

    def test_exact_children_are_not_rounded(self):
        self.assertEqual(self.split(300, [Size(exact=103), Size()]), ([103, 190], 7))
        self.assertEqual(self.split(300, [Size(exact=103), Size(exact=200)]), ([103, 200], -3))

    def test_arithmetic(self):
        # 3m + 3 * 25 = 600 gives m = 175: 175, 200, 225, the five going to the later of equals.
        self.assertEqual(self.split(600, [Size()] * 3, scheme="arithmetic", step=25)[0], [170, 200, 230])
        # first 100: step = 2 (600 - 300) / 6 = 100.
        self.assertEqual(self.split(600, [Size()] * 3, scheme="arithmetic", first=100)[0], [100, 200, 300])

    def test_geometric(self):
        self.assertEqual(self.split(700, [Size()] * 3, scheme="geometric", ratio=Fraction(2))[0], [100, 200, 400])
        self.assertEqual(self.split(700, [Size()] * 3, scheme="geometric", first=100)[0], [100, 200, 400])
        with self.assertRaises(Refused):
            self.split(700, [Size()] * 3, scheme="geometric", first=700)

    def test_shares_skip_exact_children(self):
        shares = [Fraction(1), Fraction(9), Fraction(3)]
        sizes = [Size(), Size(exact=200), Size()]
        self.assertEqual(self.split(600, sizes, scheme="shares", shares=shares)[0], [100, 200, 300])

    def test_one_flexible_child_takes_all(self):
        self.assertEqual(self.split(600, [Size()], scheme="geometric", first=10)[0], [600])

    def test_no_level(self):
        for sizes in ([Size(least=400)] * 2, [Size(most=100)] * 2, [Size(least=55, most=59), Size()]):
            with self.assertRaises(Refused):
                self.split(600, sizes)
        with self.assertRaises(Refused):
            self.split(20, [Size()] * 3)


class OverlayBank(unittest.TestCase):
    def test_four_equal_drawers(self):
        # 24 3/4 + 2 * 5/8 - 3 * 1/8 = 25 5/8, a quarter of it 6 13/32.
        result = solve(opening=OPENING, drawers=[{}] * 4)
        self.assertEqual(heights(result), [inch("205/32")] * 4)
        drawers = by_id(result, "drawers")
        self.assertEqual(drawers["D4"]["front"]["y_mm"], -inch("5/8"))
        self.assertEqual(drawers["D4"]["front"]["x_mm"], -inch("5/8"))
        self.assertEqual(drawers["D4"]["front"]["width_mm"], inch("16") + inch("5/8"))
        # Its cell ends at the middle of the gap: 6 13/32 - 5/8 + 1/16 = 5 27/32.
        self.assertEqual(drawers["D4"]["cell"]["height_mm"], inch("187/32"))
        box = drawers["D4"]["box"]
        self.assertEqual(box["height_mm"], inch("187/32") - inch("3/4"))
        self.assertEqual(box["width_mm"], inch("14") + inch("3/8"))
        self.assertEqual(box["inside_width_mm"], inch("13") + inch("3/8"))
        self.assertEqual(drawers["D4"]["slide"]["length_mm"], inch("20"))
        self.assertEqual(drawers["D4"]["slide"]["line_y_mm"], inch("1/4") + inch("7/8"))
        self.assertEqual(len(result["overlaps"]), 10)
        self.assertEqual(gap_sizes(result), {(f"D{n + 1}", f"D{n}"): inch("1/8") for n in (1, 2, 3)})

    def test_the_documented_example(self):
        result = solve(
            opening=OPENING,
            box={"corner": {"joint": "rabbet", "depth": "1/4"}},
            graduate={"scheme": "geometric", "ratio": 1.3},
            drawers=[{}, {}, {"name": "Paper", "min": "8"}],
        )
        # 824/32 by 1 : 1.3 : 1.69 is 206.52, 268.47, 349.02.
        self.assertEqual(heights(result), [inch("207/32"), inch("268/32"), inch("349/32")])
        parts = by_id(result, "parts")
        self.assertEqual(parts["D1.box_front"]["length_mm"], inch("13") + inch("7/8"))
        self.assertEqual(parts["D1.side"]["count"], 2)
        # Inside 13 3/8 by 19, the panel 7/16 more each way; the longer side is its length.
        self.assertEqual(parts["D1.bottom"]["width_mm"], inch("13") + inch("13/16"))
        self.assertEqual(parts["D1.bottom"]["length_mm"], inch("19") + inch("7/16"))

    def test_the_sliver_takes_from_the_bottom_and_from_both_sides(self):
        result = solve(**METRIC, round="1", fronts={"overlay": 0.3, "gap": 0}, drawers=[{}, {}])
        front = result["drawers"][1]["front"]
        self.assertEqual(front["y_mm"], mm("0.3"))  # 0.6 left over at the lower edge
        self.assertEqual((front["x_mm"], front["width_mm"]), (0, mm(400)))

    def test_a_divider_stands_round_the_middle_of_the_gap(self):
        result = solve(opening=OPENING, divider="3/4", drawers=[{}] * 2)
        gap_middle = result["drawers"][1]["front"]["y_mm"] + result["drawers"][1]["front"]["height_mm"] + inch("1/16")
        self.assertEqual(result["dividers"][0]["y_mm"], gap_middle - inch("3/8"))
        self.assertEqual(result["drawers"][1]["cell"]["height_mm"], gap_middle - inch("3/8"))


class InsetBank(unittest.TestCase):
    def test_dividers(self):
        # 500 - 6 - (18 + 6) = 470, so 235 each.
        result = solve(**METRIC, fronts={"style": "inset"}, divider=18, drawers=[{}] * 2)
        drawers = by_id(result, "drawers")
        self.assertEqual(heights(result), [mm(235)] * 2)
        self.assertEqual(drawers["D1"]["front"]["y_mm"], mm(262))
        self.assertEqual((drawers["D1"]["cell"]["y_mm"], drawers["D1"]["cell"]["height_mm"]), (mm(259), mm(241)))
        self.assertEqual(drawers["D2"]["cell"]["height_mm"], mm(241))
        sizes = gap_sizes(result)
        self.assertEqual(sizes[("D2", "H1")], mm(3))
        self.assertEqual(sizes[("H1", "D1")], mm(3))
        self.assertNotIn(("D2", "D1"), sizes)
        self.assertEqual(sizes[("opening.bottom", "D2")], mm(3))
        self.assertEqual(sizes[("D1", "opening.right")], mm(3))
        self.assertEqual(drawers["D1"]["box"]["z_mm"], mm(19))
        # 500 - 19 - 13 = 468: the 450 mm slide.
        self.assertEqual(drawers["D1"]["slide"]["length_mm"], mm(450))

    def test_columns_get_a_partition_and_rows_above_them_a_divider(self):
        columns = {"columns": [{"drawer": {}}, {"blank": {}}, {"open": {}}]}
        result = solve(opening=OPENING, layout={"rows": [{"drawer": {}}, columns]})
        kinds = [(d["id"], d["kind"]) for d in result["dividers"]]
        self.assertEqual(kinds, [("H1", "divider"), ("V1", "partition"), ("V2", "partition")])
        self.assertEqual([b["id"] for b in result["blanks"]], ["B1"])
        self.assertEqual(
            {(g["from"], g["to"]) for g in result["gaps"]}, {("D2", "D1"), ("B1", "D1"), ("D2", "B1")}
        )


class Case(unittest.TestCase):
    def case(self, **more):
        return {"width": "16 7/8", "height": "25 1/2", "depth": 22, **more}

    def test_opening_and_back(self):
        result = solve(case=self.case(top="none"), drawers=[{}])
        self.assertEqual(
            result["opening"],
            {"width_mm": inch("123/8"), "height_mm": inch("99/4"), "depth_mm": inch("87/4")},
        )
        back = by_id(result, "parts")["case.back"]
        # 15 3/8 + 3/4 - 1/16 wide, 24 3/4 + 3/4 - 1/16 high.
        self.assertEqual(back["width_mm"], inch("16") + inch("1/16"))
        self.assertEqual(back["length_mm"], inch("25") + inch("7/16"))
        # Nothing is there to cover at a top closed by a worktop; the front keeps a gap to it.
        self.assertEqual([o for o in result["overlaps"] if o["edge"] == "top"], [])
        gaps = [(g["from"], g["size_mm"]) for g in result["gaps"] if g["to"] == "worktop"]
        self.assertEqual(gaps, [("D1", inch("1/8"))])

    def test_flush_and_reveal(self):
        fronts = {"overlay": {"left": "flush", "right": {"reveal": "1/4"}, "top": "flush", "bottom": "-1/8"}}
        result = solve(case=self.case(), fronts=fronts, drawers=[{}])
        sizes = {o["edge"]: o["size_mm"] for o in result["overlaps"]}
        self.assertEqual(sizes["left"] + sizes["right"], inch("5/4"))
        self.assertEqual((sizes["top"], sizes["bottom"]), (inch("3/4"), -inch("1/8")))

    def test_dado_members(self):
        # A third of 3/4 is 1/4: members run 1/4 into each side.
        result = solve(case=self.case(joint={"type": "dado"}), divider="1/2", drawers=[{}] * 2)
        parts = by_id(result, "parts")
        for name in ("case.bottom", "case.top", "H1"):
            self.assertEqual(parts[name]["length_mm"], inch("127/8"), name)
        self.assertEqual(parts["H1"]["width_mm"], inch("87/4"))

    def test_tongues(self):
        # Members as long as with dados. The divider is the thinnest: a third of 1/2 down to 1/32 is 5/32.
        result = solve(case=self.case(joint={"type": "tongue-and-dado"}), divider="1/2", drawers=[{}] * 2)
        parts = by_id(result, "parts")
        self.assertEqual(parts["H1"]["length_mm"], inch("127/8"))
        (rabbet,) = parts["H1"]["cuts"]
        self.assertEqual((rabbet["width_mm"], rabbet["depth_mm"]), (inch("1/4"), inch("11/32")))
        low, high, _ = parts["case.side"]["cuts"]
        self.assertEqual((low["offset_mm"], low["width_mm"]), (inch("19/32"), inch("5/32")))
        self.assertEqual(high["width_mm"], inch("5/32"))

    def test_a_tongue_needs_a_shoulder(self):
        with self.assertRaises(Refused):
            solve(case=self.case(joint={"type": "tongue-and-dado", "tongue": "3/4"}), drawers=[{}])
        with self.assertRaises(Refused):
            solve(case=self.case(joint={"type": "dado", "tongue": "1/4"}), drawers=[{}])

    def test_pulls_and_screws_change_nothing(self):
        plain = solve(case=self.case(), drawers=[{}])
        more = solve(case=self.case(), drawers=[{"front": {"pull": {"centers": "3"}}}],
                     screws={"front": "1"}, fronts={"pull": "none"})
        self.assertEqual(plain, more)


class Grid(unittest.TestCase):
    def bank(self, height):
        opening = {"width": 400, "height": height, "depth": 500}
        overlay = {"top": 0, "bottom": 0}
        return solve(units="mm", grid=32, opening=opening, fronts={"overlay": overlay}, drawers=[{}] * 3)

    def test_pitches_are_whole_and_the_left_over_is_shared(self):
        # 605 + 3 = 19 pitches: 6, 6, 7.
        self.assertEqual(heights(self.bank(605)), [mm(189), mm(189), mm(221)])
        result = self.bank(620)
        self.assertEqual(heights(result), [mm(189), mm(189), mm(221)])
        self.assertEqual(result["drawers"][2]["front"]["y_mm"], mm("7.5"))

    def test_only_rows_without_dividers(self):
        with self.assertRaises(Refused):
            solve(**METRIC, grid=32, divider=18, drawers=[{}] * 2)


class Boxes(unittest.TestCase):
    def drawer(self, own, **bank):
        result = solve(**METRIC, drawers=[own, {}], **bank)
        return by_id(result, "drawers")["D1"], by_id(result, "parts")

    def test_undermount_rules_the_inside(self):
        drawer, _ = self.drawer({}, slides={"type": "undermount"})
        self.assertEqual(drawer["box"]["inside_width_mm"], mm(358))
        self.assertEqual(drawer["box"]["width_mm"], mm(382))

    def test_a_changed_slide_drops_what_went_with_it(self):
        bank = {"slides": {"length": 350, "clearance": 9}, "box": {"clear_below": 20, "bottom": {"up": 9}}}
        drawer, _ = self.drawer({"slides": {"type": "center-mount"}}, **bank)
        self.assertEqual(drawer["slide"]["length_mm"], mm(450))
        self.assertEqual(drawer["box"]["width_mm"], mm(394))
        below = drawer["box"]["y_mm"] - drawer["cell"]["y_mm"]
        self.assertEqual(below, mm(6))
        lost = drawer["box"]["height_mm"] - drawer["box"]["inside_height_mm"]
        self.assertEqual(lost, mm(13 + 6))

    def test_open_back_and_applied_bottoms(self):
        drawer, parts = self.drawer({}, box={"bottom": {"open_back": True}})
        self.assertEqual(parts["D1.box_back"]["width_mm"], drawer["box"]["inside_height_mm"])
        # 374.6 - 24 = 350.6 floored to 350.5 inside; + 12 - 1.6 = 360.9, floored to 360.5.
        self.assertEqual(parts["D1.bottom"]["width_mm"], mm("360.5"))
        # 450 - 24 + 6 + 12 - 0.8 = 443.2, floored to 443.
        self.assertEqual(parts["D1.bottom"]["length_mm"], mm(443))
        drawer, parts = self.drawer({"box": {"bottom": {"fit": "applied"}}}, box={"bottom": {"up": 5}})
        self.assertEqual(parts["D1.side"]["width_mm"], drawer["box"]["height_mm"] - mm(6))
        self.assertEqual(parts["D1.bottom"]["length_mm"], drawer["box"]["depth_mm"])

    def test_half_blind_sides_stop_short_by_the_lap(self):
        _, parts = self.drawer({}, box={"corner": {"joint": "half-blind-dovetail"}})
        self.assertEqual(parts["D1.side"]["length_mm"], mm(450 - 6))
        self.assertEqual(parts["D1.box_front"]["length_mm"], mm("374.5"))

    def test_a_solid_bottom_runs_side_to_side(self):
        _, parts = self.drawer({}, box={"bottom": {"material": "cherry"}})
        self.assertLess(parts["D1.bottom"]["length_mm"], parts["D1.bottom"]["width_mm"])

    def test_a_wood_runner_takes_any_length(self):
        drawer, _ = self.drawer({}, slides={"type": "wood-runner"}, box={"depth": 300})
        self.assertEqual(drawer["slide"]["length_mm"], mm(487))
        self.assertEqual(drawer["box"]["depth_mm"], mm(300))

    def test_stock_heights(self):
        drawer, _ = self.drawer({"box": {"heights": [90, 140, 400]}}, box={"height": 80})
        self.assertEqual(drawer["box"]["height_mm"], mm(140))

    def test_foreign_keys_are_errors(self):
        for own in ({"slides": {"deduct": 40}}, {"box": {"corner": {"depth": 4}}},
                    {"box": {"bottom": {"fit": "rabbet", "up": 4}}}, {"exact": 100, "min": 90}, {"colour": "red"}):
            with self.assertRaises(Refused, msg=own):
                self.drawer(own)


class RandomSpecs(unittest.TestCase):
    def test_the_same_seed_gives_the_same_text(self):
        self.assertEqual(random_spec(7), random_spec(7))

    def test_most_can_be_solved_and_close_exactly(self):
        solved = 0
        for seed in range(150):
            try:
                self.check_closing(reckon_text(random_spec(seed)))
                solved += 1
            except Refused:
                continue
        self.assertGreater(solved, 90)

    def check_closing(self, result):
        """The inside, twice the sides and the clearance make up every cell again."""
        for drawer in result["drawers"]:
            parts = by_id(result, "parts")
            side = parts[f"{drawer['id']}.side"]["thickness_mm"]
            self.assertEqual(drawer["box"]["inside_width_mm"] + 2 * side, drawer["box"]["width_mm"])


if __name__ == "__main__":
    unittest.main()
