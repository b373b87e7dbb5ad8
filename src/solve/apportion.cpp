#include "solve/apportion.h"

#include <algorithm>
#include <bit>
#include <boost/multiprecision/cpp_int.hpp>
#include <cmath>
#include <numeric>
#include <optional>

#include "solve/geometric.h"
#include "solve/level.h"

namespace tillwright {
namespace {

using BigInt = boost::multiprecision::cpp_int;
using level::FindLevel;
using level::Item;
using level::Level;
using level::State;
using Fault = Apportioned::Fault;

// Weights of at most 60 bits keep every product below 2^126: weight * length * increment count.
constexpr unsigned kMaxBits128 = 60;
// Past this many bits over all weights, an exact answer would take seconds.
constexpr std::uint64_t kMaxBigBits = 64'000'000;

struct Flexible {  // the flexible children: bounds in whole increments, as lengths
  Length low, high;
  bool has_low = false, has_high = false;
  int child = 0;
};

struct Job {
  Length total;      // G
  Length increment;  // q
  std::vector<Flexible> flexible;
};

double Approximate(const Int128& n, const Int128& d) {
  return static_cast<double>(n) / static_cast<double>(d);
}
double Approximate(const BigInt& n, const BigInt& d) {
  const unsigned bits = msb(d);
  const unsigned drop = bits > 100 ? bits - 100 : 0;
  return static_cast<double>(BigInt(n >> drop)) / static_cast<double>(BigInt(d >> drop));
}

std::int64_t ToInt64(const Int128& n) { return static_cast<std::int64_t>(n); }
std::int64_t ToInt64(const BigInt& n) { return n.convert_to<std::int64_t>(); }

// Rounds ideals, given as numerators over one denominator (in pm), to whole increments.
template <class N>
void RoundIdeals(const Job& job, const std::vector<N>& numerators, const N& denominator,
                 Apportioned& out) {
  const N step = denominator * N(job.increment.picometers());
  std::vector<N> remainders(numerators.size());
  Length used;
  for (std::size_t i = 0; i < numerators.size(); ++i) {
    const N whole = FloorDiv<N>(numerators[i], step);
    remainders[i] = numerators[i] - whole * step;
    Share& share = out.shares[static_cast<std::size_t>(job.flexible[i].child)];
    share.base = ToInt64(whole) * job.increment;
    share.size = share.base;
    share.ideal_mm = Approximate(numerators[i], denominator) / 1e9;
    used += share.base;
  }
  std::int64_t missing = (job.total - used).picometers() / job.increment.picometers();
  if (missing <= 0) return;
  std::vector<std::size_t> order(numerators.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::sort(order, [&](std::size_t a, std::size_t b) {
    if (remainders[a] != remainders[b]) return remainders[a] > remainders[b];
    return a > b;  // ties to the later child
  });
  for (const std::size_t i : order) {
    if (missing == 0) break;
    const Flexible& child = job.flexible[i];
    Share& share = out.shares[static_cast<std::size_t>(child.child)];
    if (child.has_high && share.size >= child.high) continue;
    share.extra = true;
    share.size += job.increment;
    --missing;
  }
}

template <class N>
std::vector<Item<N>> ItemsOf(const Job& job, const N& scale) {
  std::vector<Item<N>> items(job.flexible.size());
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Flexible& child = job.flexible[i];
    items[i].has_low = child.has_low;
    items[i].has_high = child.has_high;
    items[i].low = N(child.low.picometers()) * scale;
    items[i].high = N(child.high.picometers()) * scale;
  }
  return items;
}

template <class N>
bool Failed(const Level<N>& level, const N& scale, Apportioned& out) {
  if (level.fault == Fault::kNone) return false;
  out.fault = level.fault;
  out.amount = Length::Picometers(ToInt64(N(level.amount / scale)));
  return true;
}

// The ideal of one item as a numerator over level.denominator * scale (or over scale when nothing
// was free).
template <class N>
N IdealNumerator(const Item<N>& item, const Level<N>& level, const N& unit) {
  switch (item.state) {
    case State::kAtLow:
      return item.low * unit;
    case State::kAtHigh:
      return item.high * unit;
    case State::kFree:
      break;
  }
  return item.slope * level.numerator + item.offset * unit;
}

template <class N>
void ShareOut(const Job& job, std::vector<Item<N>> items, const N& scale, Apportioned& out) {
  const Level<N> level = FindLevel<N>(items, N(job.total.picometers()) * scale);
  if (Failed(level, scale, out)) return;
  const N unit = level.denominator == N(0) ? N(1) : level.denominator;
  std::vector<N> numerators;
  numerators.reserve(items.size());
  for (const Item<N>& item : items) numerators.push_back(IdealNumerator(item, level, unit));
  RoundIdeals<N>(job, numerators, N(unit * scale), out);
}

template <class N>
void ShareByWeights(const Job& job, const std::vector<N>& weights, Apportioned& out) {
  std::vector<Item<N>> items = ItemsOf<N>(job, N(1));
  for (std::size_t i = 0; i < items.size(); ++i) {
    items[i].slope = weights[i];
    // A weight shares nothing below zero, so a child without a least size starts from nothing.
    items[i].has_low = true;
  }
  ShareOut<N>(job, std::move(items), N(1), out);
}

// --- Weights as integers over one denominator ---------------------------------------------------

unsigned Bits(std::int64_t n) {
  return static_cast<unsigned>(std::bit_width(static_cast<std::uint64_t>(n)));
}

// The least common denominator, or nothing past 60 bits.
std::optional<std::int64_t> CommonDenominator(const std::vector<Rational>& weights) {
  std::int64_t common = 1;
  for (const Rational& w : weights) {
    const std::int64_t factor = w.denominator / std::gcd(common, w.denominator);
    if (Bits(common) + Bits(factor) > kMaxBits128) return std::nullopt;
    common *= factor;
  }
  return common;
}

std::optional<std::vector<Int128>> SmallWeights(const std::vector<Rational>& weights) {
  const std::optional<std::int64_t> common = CommonDenominator(weights);
  if (!common) return std::nullopt;
  std::vector<Int128> integers;
  integers.reserve(weights.size());
  Int128 sum = 0;
  for (const Rational& w : weights) {
    integers.push_back(static_cast<Int128>(w.numerator) * (*common / w.denominator));
    sum += integers.back();
  }
  if (sum >> kMaxBits128 != 0) return std::nullopt;
  return integers;
}

std::vector<BigInt> BigWeights(const std::vector<Rational>& weights) {
  BigInt common = 1;
  for (const Rational& w : weights) common = lcm(common, BigInt(w.denominator));
  std::vector<BigInt> integers;
  for (const Rational& w : weights) {
    integers.push_back(BigInt(w.numerator) * (common / w.denominator));
  }
  return integers;
}

void ShareByRationals(const Job& job, const std::vector<Rational>& weights, Apportioned& out) {
  if (const auto small = SmallWeights(weights)) {
    ShareByWeights<Int128>(job, *small, out);
  } else {
    ShareByWeights<BigInt>(job, BigWeights(weights), out);
  }
}

// ratio^i * denominator^(m-1): numerator^i * denominator^(m-1-i), all integers.
template <class N>
std::vector<N> PowerWeights(Rational ratio, std::size_t m) {
  std::vector<N> weights(m, N(1));
  N up(1);
  for (std::size_t i = 1; i < m; ++i) {
    up *= N(ratio.numerator);
    weights[i] = up;
  }
  N down(1);
  for (std::size_t i = m - 1; i-- > 0;) {
    down *= N(ratio.denominator);
    weights[i] *= down;
  }
  return weights;
}

void ShareByRatio(const Job& job, Rational ratio, Apportioned& out) {
  const std::size_t m = job.flexible.size();
  const std::uint64_t bits =
      static_cast<std::uint64_t>(std::max(Bits(ratio.numerator), Bits(ratio.denominator))) * m;
  if (bits + Bits(static_cast<std::int64_t>(m)) <= kMaxBits128) {
    ShareByWeights<Int128>(job, PowerWeights<Int128>(ratio, m), out);
  } else if (bits * m <= kMaxBigBits) {
    ShareByWeights<BigInt>(job, PowerWeights<BigInt>(ratio, m), out);
  } else {
    out.fault = Fault::kTooFine;
  }
}

// --- Arithmetic graduation ----------------------------------------------------------------------

// Sizes mu + i * step, with step = numerator / scale picometers.
void ShareByStep(const Job& job, Int128 step, Int128 scale, Apportioned& out) {
  std::vector<Item<Int128>> items = ItemsOf<Int128>(job, scale);
  for (std::size_t i = 0; i < items.size(); ++i) {
    items[i].slope = 1;
    items[i].offset = static_cast<Int128>(i) * step;
  }
  ShareOut<Int128>(job, std::move(items), scale, out);
}

// step = 2 (G - m first) / (m (m - 1)); with bounds that bind, the first size gives way.
void ShareArithmeticFrom(const Job& job, Length first, Apportioned& out) {
  const auto m = static_cast<Int128>(job.flexible.size());
  const Int128 scale = m * (m - 1);
  const Int128 step = 2 * (static_cast<Int128>(job.total.picometers()) - m * first.picometers());
  ShareByStep(job, step, scale, out);
  if (out.fault != Fault::kNone) return;
  const double ideal = out.shares[static_cast<std::size_t>(job.flexible.front().child)].ideal_mm;
  out.first_moved = std::abs(ideal - ToMillimeters(first)) > 1e-6;  // words only, no size
}

// --- Geometric graduation from the first size ---------------------------------------------------

void ShareGeometricFrom(const Job& job, Length first, Apportioned& out) {
  const std::size_t m = job.flexible.size();
  const auto total = static_cast<double>(job.total.picometers());
  const std::optional<double> ratio = RatioFor(total / static_cast<double>(first.picometers()), m);
  if (!ratio) {
    out.fault = Fault::kNoRatio;
    return;
  }
  std::vector<Item<double>> items = ItemsOf<double>(job, 1.0);
  double power = 1;
  for (Item<double>& item : items) {
    item.slope = power;
    item.has_low = true;
    power *= *ratio;
  }
  const Level<double> level = FindLevel<double>(items, total);
  if (level.fault != Fault::kNone) {
    out.fault = level.fault;
    out.amount = Length::Picometers(std::llround(level.amount));
    return;
  }
  // Ideals are rounded to 1 pm before anything is decided by them.
  const bool free = level.denominator > 0;
  std::vector<Int128> ideals;
  for (const Item<double>& item : items) {
    const double ideal = item.state == State::kAtLow    ? item.low
                         : item.state == State::kAtHigh ? item.high
                         : free ? item.slope * (level.numerator / level.denominator)
                                : 0.0;
    ideals.push_back(static_cast<Int128>(std::llround(ideal)));
  }
  RoundIdeals<Int128>(job, ideals, 1, out);
}

// --- Putting it together ------------------------------------------------------------------------

std::vector<Rational> FlexibleWeights(const Job& job, const std::vector<ApportionChild>& children,
                                      const ApportionScheme& scheme) {
  std::vector<Rational> weights;
  weights.reserve(job.flexible.size());
  for (const Flexible& flexible : job.flexible) {
    const auto child = static_cast<std::size_t>(flexible.child);
    weights.push_back(scheme.scheme == Graduation::kShares ? scheme.shares[child]
                                                           : children[child].weight);
  }
  return weights;
}

void ShareByScheme(const Job& job, const std::vector<ApportionChild>& children,
                   const ApportionScheme& scheme, Apportioned& out) {
  const bool lone = job.flexible.size() == 1;  // every scheme gives a lone child everything
  switch (scheme.scheme) {
    case Graduation::kEqual:
    case Graduation::kShares:
      return ShareByRationals(job, FlexibleWeights(job, children, scheme), out);
    case Graduation::kArithmetic:
      if (lone) return ShareByStep(job, 0, 1, out);
      if (scheme.has_first) return ShareArithmeticFrom(job, scheme.first, out);
      return ShareByStep(job, scheme.step.picometers(), 1, out);
    case Graduation::kGeometric:
      if (lone) return ShareByRatio(job, {1, 1}, out);
      if (scheme.has_first) return ShareGeometricFrom(job, scheme.first, out);
      return ShareByRatio(job, scheme.ratio, out);
  }
}

// Exact children take theirs; the rest become the job. False after a fault.
bool TakeExact(Length length, Length increment, const std::vector<ApportionChild>& children,
               Job& job, Apportioned& out) {
  Length rest = length;
  for (std::size_t i = 0; i < children.size(); ++i) {
    const ApportionChild& child = children[i];
    if (child.is_exact) {
      out.shares[i] = {child.exact, child.exact, false, ToMillimeters(child.exact)};
      rest -= child.exact;
      continue;
    }
    Flexible flexible{CeilTo(child.min, increment), FloorTo(child.max, increment), child.has_min,
                      child.has_max, static_cast<int>(i)};
    if (child.has_min && child.has_max && flexible.low > flexible.high) {
      out.fault = Fault::kCrossed;
      out.child = flexible.child;
      return false;
    }
    job.flexible.push_back(flexible);
  }
  out.all_exact = job.flexible.empty();
  job.increment = increment;
  job.total = out.all_exact ? Length() : FloorTo(rest, increment);
  out.remainder = rest - job.total;
  return true;
}

// Every flexible child as large as all of them can be.
void ShareAlike(const Job& job, Apportioned& out) {
  const auto m = static_cast<std::int64_t>(job.flexible.size());
  const Length each = FloorTo(PartBelow(job.total, m), job.increment);
  const double ideal_mm = ToMillimeters(job.total) / static_cast<double>(m);
  for (const Flexible& flexible : job.flexible) {
    out.shares[static_cast<std::size_t>(flexible.child)] = {each, each, false, ideal_mm};
  }
  out.remainder += job.total - m * each;
}

void RefuseZero(const Job& job, Apportioned& out) {
  for (const Flexible& flexible : job.flexible) {
    if (out.shares[static_cast<std::size_t>(flexible.child)].size > Length()) continue;
    out.fault = Fault::kZero;
    out.child = flexible.child;
    return;
  }
}

}  // namespace

Apportioned Apportion(Length length, Length increment, const std::vector<ApportionChild>& children,
                      const ApportionScheme& scheme) {
  Apportioned out;
  out.shares.resize(children.size());
  Job job;
  job.flexible.reserve(children.size());
  if (!TakeExact(length, increment, children, job, out) || out.all_exact) return out;
  if (job.total <= Length()) {
    out.fault = Fault::kTooLong;
    // At least one increment each is needed.
    out.amount =
        static_cast<std::int64_t>(job.flexible.size()) * increment - (out.remainder + job.total);
    return out;
  }
  if (scheme.alike) {
    ShareAlike(job, out);
  } else {
    ShareByScheme(job, children, scheme, out);
  }
  if (out.fault == Fault::kNone) RefuseZero(job, out);
  return out;
}

}  // namespace tillwright
