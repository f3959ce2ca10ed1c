/**
 * The normal score below which the share `p` of a standard normal distribution lies, to about one part in 1e15. -Infinity at 0, Infinity
 * at 1, NaN outside. Near 1 the share itself has lost the rest: take the negative quantile of the rest instead.
 * Source: Wichura, "Algorithm AS 241: The percentage points of the normal distribution", Applied Statistics 37 (1988) 477-484, PPND16.
 */
export function normalQuantile(p: number): number {
  const fromMiddle = p - 0.5;
  if (Math.abs(fromMiddle) <= 0.425) {
    const within = 0.180625 - fromMiddle * fromMiddle;
    return (fromMiddle * polynomial(middleAbove, within)) / polynomial(middleBelow, within);
  }
  if (!(p > 0 && p < 1)) return p === 0 ? -Infinity : p === 1 ? Infinity : NaN;
  const depth = Math.sqrt(-Math.log(fromMiddle < 0 ? p : 1 - p));
  const size =
    depth <= 5
      ? polynomial(tailAbove, depth - 1.6) / polynomial(tailBelow, depth - 1.6)
      : polynomial(farAbove, depth - 5) / polynomial(farBelow, depth - 5);
  return fromMiddle < 0 ? -size : size;
}

/** Degree seven, coefficients from the highest down; written out, because every draw needs it. */
function polynomial(c: readonly number[], x: number): number {
  return ((((((c[0]! * x + c[1]!) * x + c[2]!) * x + c[3]!) * x + c[4]!) * x + c[5]!) * x + c[6]!) * x + c[7]!;
}

// Within 0.425 of the middle, by 0.425^2 less the square of the distance.
const middleAbove = [
  2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457, 13731.693765509461125,
  1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
];
const middleBelow = [
  5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867, 5394.1960214247511077,
  687.1870074920579083, 42.313330701600911252, 1,
];
// Farther out, by the depth sqrt(-ln p): to 5, which is p = 1.4e-11, and beyond.
const tailAbove = [
  7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
  3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
];
const tailBelow = [
  1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
  0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
];
const farAbove = [
  2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
  0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
];
const farBelow = [
  2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
  0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
];

const perRootTwoPi = 0.3989422804014327;

/** The standard normal density at `z`. */
export function normalDensity(z: number): number {
  return perRootTwoPi * halfSquareFall(Math.abs(z));
}

/**
 * The share of a standard normal distribution that lies below `z`, to about one part in 1e15 down to -37.5, where it leaves the normal
 * doubles. Above 0 the rest (the share above z) is what `normalCumulative(-z)` gives to full precision.
 * Source: Cody, "Rational Chebyshev approximations for the error function", Mathematics of Computation 23 (1969) 631-637, in the form
 * for the normal distribution of Cody, "Algorithm 715: SPECFUN", ACM Transactions on Mathematical Software 19 (1993) 22-32, ANORM.
 */
export function normalCumulative(z: number): number {
  const size = Math.abs(z);
  if (size <= 0.66291) {
    const s = z * z;
    const above =
      (((0.065682337918207449113 * s + 2.2352520354606839287) * s + 161.02823106855587881) * s +
        1067.6894854603709582) *
        s +
      18154.981253343561249;
    const below =
      (((s + 47.20258190468824187) * s + 976.09855173777669322) * s + 10260.932208618978205) * s +
      45507.789335026729956;
    return 0.5 + (z * above) / below;
  }
  const tail = halfSquareFall(size) * (size <= 5.656854248 ? tailShare(size) : farTailShare(size));
  return z < 0 ? tail : 1 - tail;
}

/**
 * exp(-z^2/2). Beyond 4 the square is split at a sixteenth, whose own square is exact, for exp would enlarge the rounding of a large square
 * (below 4 by no more than 8 units in the last place).
 */
function halfSquareFall(size: number): number {
  if (size < 4) return Math.exp(-0.5 * size * size);
  if (size > 40) return 0;
  const coarse = Math.trunc(size * 16) / 16;
  return Math.exp(-0.5 * coarse * coarse) * Math.exp(-0.5 * (size - coarse) * (size + coarse));
}

// The tail over exp(-z^2/2), up to the root of 32: the highest power apart, the rest by the polynomial of degree seven.
const shareAbove = [
  1.0765576773720192317e-8, 0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979, 597.27027639480026226,
  2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124,
];
const shareBelow = [
  1, 22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755, 18615.571640885098091,
  34900.952721145977266, 38912.003286093271411,
];

function tailShare(z: number): number {
  return (
    (polynomial(shareAbove, z) * z + 9842.7148383839780218) / (polynomial(shareBelow, z) * z + 19685.429676859990727)
  );
}

// Beyond the root of 32, by the inverse square.
const farShareAbove = [
  0, 0, 0.02307344176494017303, 0.21589853405795699, 0.1274011611602473639, 0.022235277870649807,
  0.001421619193227893466, 2.9112874951168792e-5,
];
const farShareBelow = [
  0, 0, 1, 1.28426009614491121, 0.468238212480865118, 0.0659881378689285515, 0.00378239633202758244,
  7.29751555083966205e-5,
];

function farTailShare(z: number): number {
  const inverse = 1 / (z * z);
  const ratio = polynomial(farShareAbove, inverse) / polynomial(farShareBelow, inverse);
  return (perRootTwoPi - inverse * ratio) / z;
}
