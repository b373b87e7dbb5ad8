#!/usr/bin/env python3
"""Holds `tillwright check --json` against the gap check reckoned in gaps.py, on
random specs or on those named with --spec. The exit status is 1 when any differ.
"""

import argparse
import json
import os
import random
import subprocess
import sys
import tempfile

from gaps import LEVELS, check_of
from lengths import Refused
from random_checks import random_check_spec
from reckon import TOP_KEYS, gaps_of, overlaps_of, read_spec_file, solve
from spec_text import Keys, read_json

TOLERANCE_MM = 2e-9  # the program's doubles are shown to the picometre
ACCEPTED, REFUSED = (0, 1), 3
SHOWN_PER_SPEC = 20


def ours(text):
    value = read_json(text)
    bank = solve(value)
    spec = Keys(value, "", "in", TOP_KEYS)
    spec.unit = bank.units
    return check_of(spec, bank, gaps_of(bank), overlaps_of(bank))


def theirs(result):
    """The same figures of the program's result, under the same names."""
    found = {}
    for gap in result["gaps"]:
        take(found, f"gap {gap['axis']} {gap['from']} > {gap['to']}", gap)
    for overlap in result.get("overlaps", []):
        take(found, f"overlap {overlap['drawer']} {overlap['edge']}", overlap)
    if "lean_mm" in result:
        found["lean_mm"] = result["lean_mm"]
    for check in result["checks"]:
        if check["code"] == "box-moves" and " to " not in check["subject"]:
            name = f"sides of {check['subject']}"
            found |= {f"{name} rise": check["value"], f"{name} room": check["limit"]}
            found[f"{name} level"] = LEVELS.index(check["level"])
    for cell in result.get("measured_cells", []):
        found[f"{cell['drawer']} cell as measured"] = cell["width_mm"]
    return found


def take(found, name, stack):
    for group in ("worst", "rss", "season"):
        for key, value in stack.get(group, {}).items():
            if key != "least_to_leave_mm":
                found[f"{name} {group}.{key}"] = value
    if "measured_mm" in stack:
        found[f"{name} measured_mm"] = stack["measured_mm"]
    if "shims" in stack:
        found[f"{name} shim_error_mm"] = abs(stack["shim_error_mm"])
        found[f"{name} shim pieces"] = sum(shim["count"] for shim in stack["shims"])


def differences(here, there):
    found = []
    for name in list(here) + [name for name in there if name not in here]:
        a, b = here.get(name), there.get(name)
        if a is None or b is None or abs(float(a) - float(b)) > TOLERANCE_MM:
            found.append(f"{name}: reckoning {a}, program {b}")
    return found


def compare(binary, path):
    """What differs on one spec, and whether it was accepted."""
    try:
        here = ours(read_spec_file(path))
    except Refused:
        here = None
    done = subprocess.run([binary, "check", path, "--json"], capture_output=True, text=True, timeout=120, check=False)
    if done.returncode not in ACCEPTED + (REFUSED,):
        return [f"exit status {done.returncode}: {done.stderr[-300:]}"], False
    if (done.returncode == REFUSED) != (here is None):
        return [f"verdict: exit status {done.returncode}, reckoning {'refuses' if here is None else 'accepts'}"], False
    return ([], False) if here is None else (differences(here, theirs(json.loads(done.stdout))), True)


def paths(options):
    if options.spec:
        yield from options.spec
        return
    seed = options.seed if options.seed is not None else random.randrange(10**6)
    folder = tempfile.mkdtemp(prefix="check-reckoning-")
    print(f"seed {seed}, {options.count} specs in {folder}")
    for number in range(seed, seed + options.count):
        path = os.path.join(folder, f"spec-{number}.json")
        with open(path, "w", encoding="utf-8") as file:
            file.write(random_check_spec(number))
        yield path


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("binary")
    parser.add_argument("--count", type=int, default=200)
    parser.add_argument("--seed", type=int)
    parser.add_argument("--spec", nargs="+", metavar="FILE")
    options = parser.parse_args()
    binary, accepted, differing = os.path.abspath(options.binary), 0, 0
    for path in paths(options):
        found, ok = compare(binary, path)
        accepted += ok
        if found:
            differing += 1
            print(f"{path}: {len(found)} differences")
            print("".join(f"  {line}\n" for line in found[:SHOWN_PER_SPEC]), end="")
        elif not options.spec:
            os.remove(path)
    print(f"{accepted} specs checked on both sides; {differing} differ")
    return 1 if differing else 0


if __name__ == "__main__":
    sys.exit(main())
