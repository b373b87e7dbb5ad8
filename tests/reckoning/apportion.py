"""Apportioning a length among children, exactly (the model's section 4)."""

from dataclasses import dataclass
from decimal import Decimal, localcontext
from fractions import Fraction

from lengths import Refused, ceil_to, floor_to

ROOT_DIGITS = 60


@dataclass
class Size:
    """What a child asks for along its parent's split."""

    exact: int = None
    least: int = None
    most: int = None
    weight: Fraction = None


@dataclass
class Graduate:
    scheme: str = "equal"
    shares: list = None
    step: int = None
    first: int = None
    ratio: Fraction = None
    alike: bool = False


def apportion(length, increment, sizes, graduate):
    """The children's sizes in order, and the left-over of `length`."""
    free = [i for i, size in enumerate(sizes) if size.exact is None]
    shared = length - sum(size.exact for size in sizes if size.exact is not None)
    result = [size.exact for size in sizes]
    if not free:
        return result, shared
    total = floor_to(shared, increment)
    if total <= 0:
        raise Refused(f"nothing is left to share: too long by {-shared} pm")
    if graduate.alike:
        each = floor_to(total // len(free), increment)
        if each <= 0:
            raise Refused("a size of zero")
        return [each if i in free else made for i, made in enumerate(result)], shared - each * len(free)
    cuts = share_increments(total, increment, [sizes[i] for i in free], graduate, free)
    for i, cut in zip(free, cuts):
        result[i] = cut
    return result, shared - total


def share_increments(total, q, sizes, graduate, free):
    lows, highs = bounds(sizes, q)
    ideals = ideal_sizes(total, lows, highs, sizes, graduate, free)
    cuts = [floor_to(ideal, q) for ideal in ideals]
    rests = [ideal - cut for ideal, cut in zip(ideals, cuts)]
    missing = (total - sum(cuts)) // q
    # The largest remainder first; among equals the later child.
    order = sorted(range(len(cuts)), key=lambda i: (rests[i], i), reverse=True)
    for i in [i for i in order if highs[i] is None or cuts[i] < highs[i]][:missing]:
        cuts[i] += q
    if sum(cuts) != total:
        raise Refused("the bounds leave increments over")
    if min(cuts) <= 0:
        raise Refused("a size of zero")
    return [int(cut) for cut in cuts]


def bounds(sizes, q):
    """Each least size rounded up, each greatest rounded down."""
    lows = [ceil_to(s.least, q) if s.least is not None else 0 for s in sizes]
    highs = [floor_to(s.most, q) if s.most is not None else None for s in sizes]
    for low, high in zip(lows, highs):
        if high is not None and (low > high or high <= 0):
            raise Refused("a min is above its max once rounded to the increment")
    return lows, highs


def ideal_sizes(total, lows, highs, sizes, graduate, free):
    """h of every flexible child: clamp(offset + slope * level) summing to `total`."""
    m = len(free)
    if graduate.scheme == "arithmetic" and m > 1:
        step = graduate.step
        if step is None:
            step = Fraction(2 * (total - m * graduate.first), m * (m - 1))
        return level(total, [i * step for i in range(m)], [Fraction(1)] * m, lows, highs)
    if graduate.scheme == "geometric" and graduate.ratio is None and m > 1:
        weights = powers_of_root(total, graduate.first, m)
        found = level(total, [0] * m, weights, lows, highs)
        return [(2 * h + 1) // 2 for h in found]  # an irrational root is compared rounded to 1 pm
    return level(total, [0] * m, exact_weights(sizes, graduate, free), lows, highs)


def exact_weights(sizes, graduate, free):
    m = len(free)
    if m == 1:
        return [Fraction(1)]
    if graduate.scheme == "shares":
        return [graduate.shares[i] for i in free]
    if graduate.scheme == "geometric":
        return [graduate.ratio**i for i in range(m)]
    return [size.weight if size.weight is not None else Fraction(1) for size in sizes]


def powers_of_root(total, first, m):
    """Powers of the r > 0 with first * (1 + r + ... + r^(m-1)) = total."""
    if total <= first:
        raise Refused("the first size leaves nothing for the others")
    with localcontext() as context:
        context.prec = ROOT_DIGITS
        wanted = Decimal(total) / Decimal(first)
        low, high = Decimal(0), wanted
        for _ in range(4 * ROOT_DIGITS):
            middle = (low + high) / 2
            if sum(middle**i for i in range(m)) < wanted:
                low = middle
            else:
                high = middle
        return [Fraction(high**i) for i in range(m)]


def level(total, offsets, slopes, lows, highs):
    """Solves the piecewise linear sum for its one level and gives every h there."""

    def at(value):
        return [clamp(o + s * value, lo, hi) for o, s, lo, hi in zip(offsets, slopes, lows, highs)]

    if total < sum(lows):
        raise Refused(f"too short by {sum(lows) - total} pm for the min sizes")
    if None not in highs and total > sum(highs):
        raise Refused(f"too long by {total - sum(highs)} pm for the max sizes")
    points = set()
    for offset, slope, low, high in zip(offsets, slopes, lows, highs):
        points.add((low - offset) / slope)
        if high is not None:
            points.add((high - offset) / slope)
    points = sorted(points)
    if sum(at(points[0])) >= total:
        return at(points[0])
    # Below the first point every child is at its min, so the sum meets `total`
    # in the first stretch whose far end reaches it, or after the last point.
    near = points[0]
    for far in points[1:] + [None]:
        if far is None or sum(at(far)) >= total:
            break
        near = far
    beyond = near + 1 if far is None else far
    rise = Fraction(sum(at(beyond)) - sum(at(near))) / (beyond - near)
    return at(near + (total - sum(at(near))) / rise)


def clamp(value, low, high):
    return max(low, value if high is None else min(value, high))
