import { type Tape, steps } from './tape.ts';

/**
 * Slope of one result by every input, in one sweep backwards over the tape. `values` must have been run. Slopes are in the units the graph
 * reckons in; a choice or a limit passes the slope of the branch in force. NaN where the result is no number.
 */
export function slopesOf(tape: Tape, values: Float64Array, result: number): Float64Array {
  const slopes = new Float64Array(tape.slots);
  slopes[result] = 1;
  for (let step = tape.codes.length - 1; step >= 0; step -= 1) {
    const slope = slopes[tape.firstStep + step]!;
    if (slope !== 0) handBack(tape, values, slopes, step, slope);
  }
  return slopes.slice(0, tape.inputIds.length);
}

/** Hands the slope of a step on to what it was made of. */
function handBack(tape: Tape, values: Float64Array, slopes: Float64Array, step: number, slope: number): void {
  const first = tape.first[step]!;
  const second = tape.second[step]!;
  const a = values[first]!;
  const b = values[second]!;
  switch (tape.codes[step]) {
    case steps.add:
      slopes[first]! += slope;
      slopes[second]! += slope;
      return;
    case steps.subtract:
      slopes[first]! += slope;
      slopes[second]! -= slope;
      return;
    case steps.multiply:
      slopes[first]! += slope * b;
      slopes[second]! += slope * a;
      return;
    case steps.divide:
      slopes[first]! += slope / b;
      slopes[second]! -= (slope * a) / (b * b);
      return;
    case steps.power:
      slopes[first]! += slope * b * Math.pow(a, b - 1);
      if (a > 0) slopes[second]! += slope * Math.log(a) * Math.pow(a, b);
      return;
    case steps.lesser:
      slopes[a <= b ? first : second]! += slope;
      return;
    case steps.greater:
      slopes[a >= b ? first : second]! += slope;
      return;
    case steps.whenAbove:
      slopes[a > b ? tape.third[step]! : tape.fourth[step]!]! += slope;
      return;
    default:
      slopes[first]! += slope;
  }
}
