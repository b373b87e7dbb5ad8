"""Length text read into whole picometres, exactly.

A length is a Python int of picometres throughout the reckoning, so a sum of
parts closes exactly and nothing here ever needs a tolerance.
"""

import re
from fractions import Fraction

PM_PER_MM = 10**9
PM_PER_INCH = 254 * 10**8
LIMIT = 100 * 10**12  # 100 m

UNIT_PM = {
    "mm": PM_PER_MM,
    "cm": 10 * PM_PER_MM,
    "m": 1000 * PM_PER_MM,
    "in": PM_PER_INCH,
    "inch": PM_PER_INCH,
    "inches": PM_PER_INCH,
    '"': PM_PER_INCH,
    "ft": 12 * PM_PER_INCH,
    "foot": 12 * PM_PER_INCH,
    "feet": 12 * PM_PER_INCH,
    "'": 12 * PM_PER_INCH,
}
FOOT_UNITS = ("feet", "foot", "ft", "'")
INCH_UNITS = ("inches", "inch", "in", '"')

# Typographic primes, and the quotation marks that stand in for them.
PRIMES = str.maketrans({"\u2032": "'", "\u2019": "'", "\u2033": '"', "\u201d": '"'})

QUANTITY = r"(?:(?:\d+(?:\s+|-))?\d+/\d+|\d+(?:\.\d+)?|\.\d+)"
ONE_UNIT = re.compile(
    rf"(?P<sign>-?)(?P<amount>{QUANTITY})\s*(?P<unit>mm|cm|m|inches|inch|in|\"|feet|foot|ft|')?"
)
FEET_AND_INCHES = re.compile(
    rf"(?P<sign>-?)(?P<feet>{QUANTITY})\s*(?:feet|foot|ft|')\s*(?P<inches>{QUANTITY})\s*(?:inches|inch|in|\")?"
)


class Refused(Exception):
    """The spec is wrong; the text says why."""


class Number(str):
    """A JSON number that keeps the text it was written with."""


def read_quantity(text):
    """'15', '3/8', '15 3/8', '15-3/8' or '15.375' as a Fraction."""
    whole, _, fraction = re.sub(r"[\s-]+", " ", text).rpartition(" ")
    if "/" in fraction:
        top, bottom = fraction.split("/")
        if int(bottom) == 0:
            raise Refused(f"'{text}' divides by zero")
        return Fraction(int(whole or 0)) + Fraction(int(top), int(bottom))
    return Fraction(fraction)


def read_length_text(text, spec_unit):
    """The picometres that `text` means; a bare number is in `spec_unit`."""
    clean = text.translate(PRIMES).strip()
    single = ONE_UNIT.fullmatch(clean)
    double = FEET_AND_INCHES.fullmatch(clean)
    if single:
        value = read_quantity(single["amount"]) * UNIT_PM[single["unit"] or spec_unit]
    elif double:
        value = read_quantity(double["feet"]) * UNIT_PM["ft"] + read_quantity(double["inches"]) * UNIT_PM["in"]
    else:
        raise Refused(f"'{text}' is not a length")
    if (single or double)["sign"]:
        value = -value
    if value.denominator != 1:
        raise Refused(f"'{text}' is not exact in picometres")
    if abs(value) > LIMIT:
        raise Refused(f"'{text}' is past 100 m")
    return int(value)


def read_ratio_text(value):
    """A ratio or weight: a number, or a text such as '4/3'; above zero."""
    if not isinstance(value, str) or not re.fullmatch(r"\d+(?:\.\d+)?|\d+/\d+", value.strip()):
        raise Refused(f"{value!r} is not a ratio")
    text = value.strip()
    if "/" in text and int(text.split("/")[1]) == 0:
        raise Refused(f"'{text}' divides by zero")
    ratio = Fraction(text)
    if ratio <= 0:
        raise Refused(f"{text} is not above zero")
    return ratio


def floor_to(value, increment):
    """floor_q: the largest multiple of `increment` not above `value`."""
    return value // increment * increment


def ceil_to(value, increment):
    return -(-value // increment) * increment


def half(value):
    """The left or lower share of a length cut in two."""
    return value // 2


def mm_text(pm):
    """Exact millimetres with no trailing zeros."""
    sign = "-" if pm < 0 else ""
    whole, rest = divmod(abs(pm), PM_PER_MM)
    decimals = f"{rest:09d}".rstrip("0")
    return f"{sign}{whole}.{decimals}" if decimals else f"{sign}{whole}"
