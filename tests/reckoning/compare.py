#!/usr/bin/env python3
"""Holds `tillwright size --json` against the reckoning, number by number.

Random specs are made from a seed, or explicit files are taken with --spec.
Every difference is printed with the spec's path, the field and both values;
the exit status is 1 when there is any. Specs that agree are removed again
unless --keep names a folder for all of them.
"""

import argparse
import json
import os
import random
import subprocess
import sys
import tempfile
from decimal import Decimal

from lengths import PM_PER_MM, Refused, mm_text
from random_specs import random_spec
from reckon import LET_IN, read_spec_file, reckon_text

ACCEPTED, REFUSED = (0, 1), 3
TIMEOUT_SECONDS = 60
SHOWN_PER_SPEC = 40


def compare_spec(binary, path):
    """The differences of one spec, and whether the reckoning accepts it."""
    ours, reason = None, None
    try:
        ours = reckon_text(read_spec_file(path))
    except Refused as refusal:
        reason = str(refusal)
    status, output, errors = run(binary, path)
    if status not in ACCEPTED + (REFUSED,):
        return [f"exit status {status}; {errors.strip()[-300:]}"], ours is not None
    if (status == REFUSED) != (ours is None):
        return [f"verdict: reckoning {verdict(reason)}; program exit {status} {messages(output)}"], ours is not None
    theirs, fault = read_output(output)
    if fault:
        return [fault], ours is not None
    if ours is None:
        return ([] if theirs.get("errors") else ["refused without 'errors' in its JSON"]), False
    return differences(flat(ours), flat(theirs)), True


def run(binary, path):
    try:
        done = subprocess.run(
            [binary, "size", path, "--json"], capture_output=True, text=True, timeout=TIMEOUT_SECONDS, check=False
        )
    except subprocess.TimeoutExpired:
        return "none", "", f"still running after {TIMEOUT_SECONDS} s"
    return done.returncode, done.stdout, done.stderr


def verdict(reason):
    return "accepts" if reason is None else f"refuses ({reason})"


def messages(output):
    value, fault = read_output(output)
    if fault:
        return ""
    return "; ".join(str(error.get("message")) for error in value.get("errors", []))


def read_output(output):
    try:
        value = json.loads(output, parse_float=Decimal, parse_int=Decimal)
    except json.JSONDecodeError as error:
        return None, f"the program's output is not JSON: {error}"
    if not isinstance(value, dict):
        return None, "the program's output is not a JSON object"
    return value, None


# ---- flattening: one entry for each figure -------------------------------


def flat(result):
    """Every compared figure under a readable name, lengths as text of millimetres."""
    figures = {}
    for key in ("units", "round_mm", "opening"):
        add(figures, key, result.get(key))
    for key in ("drawers", "blanks", "opens", "dividers"):
        for item in result.get(key) or []:
            add(figures, str(item.get("id")), without_id(item))
    for item in result.get("gaps") or []:
        put(figures, f"gap {item.get('axis')} {item.get('from')} > {item.get('to')}", item.get("size_mm"))
    for item in result.get("overlaps") or []:
        put(figures, f"overlap {item.get('drawer')} {item.get('edge')}", item.get("size_mm"))
    for item in result.get("checks") or []:
        if item.get("code") in ("gap", "bare"):
            put(figures, f"check {item['code']} {item.get('subject')}", item.get("level"))
    for item in result.get("parts") or []:
        for key in ("role", "count", "length_mm", "width_mm", "thickness_mm"):
            put(figures, f"part {item.get('id')} {key}", item.get(key))
        if item.get("role") in LET_IN + ("case side",):
            for number, made in enumerate(item.get("cuts") or []):
                for key in ("from", "offset_mm", "width_mm", "depth_mm"):
                    put(figures, f"part {item.get('id')} cut {number} {key}", made.get(key))
    return figures


def without_id(item):
    return {key: value for key, value in item.items() if key not in ("id", "name")}


def add(figures, name, value):
    """Adds a value, going into objects; only lengths and texts are figures."""
    if isinstance(value, dict):
        for key, inner in value.items():
            add(figures, f"{name}.{key}", inner)
    elif name.endswith("_mm") or isinstance(value, str):
        put(figures, name, value)


def put(figures, name, value):
    """The reckoning's lengths are picometres (int), the program's are decimals of a millimetre."""
    if name.endswith(" count"):
        text = str(int(value)) if isinstance(value, (int, Decimal)) else str(value)
    elif isinstance(value, int):
        text = mm_text(value)
    elif isinstance(value, Decimal):
        pm = value * PM_PER_MM
        text = mm_text(int(pm)) if pm == int(pm) else str(value)
    else:
        text = str(value)
    figures[name] = f"{figures[name]} and {text}" if name in figures else text


def differences(ours, theirs):
    found = []
    for name in list(ours) + [name for name in theirs if name not in ours]:
        here, there = ours.get(name, "absent"), theirs.get(name, "absent")
        if here != there:
            found.append(f"{name}: reckoning {here}, program {there}")
    return found


# ---- running -------------------------------------------------------------


def parse_arguments():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("binary")
    parser.add_argument("--count", type=int, default=500, help="how many random specs")
    parser.add_argument("--seed", type=int, help="the first random spec's seed")
    parser.add_argument("--keep", metavar="DIR", help="keep every spec in this folder")
    parser.add_argument("--spec", nargs="+", metavar="FILE", help="compare these specs instead")
    return parser.parse_args()


def random_files(options):
    """Writes the random specs one by one; gives their paths."""
    seed = options.seed if options.seed is not None else random.randrange(10**6)
    folder = options.keep or tempfile.mkdtemp(prefix="reckoning-")
    os.makedirs(folder, exist_ok=True)
    print(f"seed {seed}, {options.count} specs in {folder}")
    for number in range(seed, seed + options.count):
        path = os.path.join(folder, f"spec-{number}.json")
        with open(path, "w", encoding="utf-8") as file:
            file.write(random_spec(number))
        yield path


def report(path, found):
    print(f"{path}: {len(found)} differences")
    for line in found[:SHOWN_PER_SPEC]:
        print(f"  {line}")
    if len(found) > SHOWN_PER_SPEC:
        print(f"  … and {len(found) - SHOWN_PER_SPEC} more")


def main():
    options = parse_arguments()
    binary = os.path.abspath(options.binary)
    accepted = refused = differing = 0
    for path in options.spec or random_files(options):
        found, solved = compare_spec(binary, path)
        accepted, refused = accepted + solved, refused + (not solved)
        if found:
            differing += 1
            report(path, found)
        elif not options.spec and not options.keep:
            os.remove(path)
    print(f"{accepted} specs accepted and {refused} refused by the reckoning; {differing} differ")
    return 1 if differing else 0


if __name__ == "__main__":
    sys.exit(main())
