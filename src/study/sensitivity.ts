import { type InputDeclaration, inForce } from '../kernel/graph/input-declaration.ts';
import { slopesOf } from '../kernel/tape/slopes.ts';
import { inputPlace } from '../kernel/tape/tape.ts';
import { type InputRange, type RangeMethod, conventionalShare, inputRange } from './input-range.ts';
import type { OpenCase } from './open-case.ts';
import { ResultTape } from './result-tape.ts';

/** What one input does to a result when it moves over its range alone. Figures in the input's entry unit, results in the result's unit. */
export interface Swing extends InputRange {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly unit: string;
  readonly figure: number;
  readonly atLow: number;
  readonly atHigh: number;
  /** Distance between the farthest of the base and both ends. */
  readonly swing: number;
  /** Slope of the result by the input, per entry unit, at the figures in force. */
  readonly slope: number;
  /** Per cent of the result per per cent of the input; null where the result or the input is nothing. */
  readonly elasticity: number | null;
  /** Both ends move the result the same way: the extremes of the result lie inside, not at the ends. */
  readonly sameWay: boolean;
  /** The sign of the result changes within the range. */
  readonly flips: boolean;
  readonly restsOn: RestsOn;
}

export type RestsOn = 'measured' | 'sourced' | 'rule of thumb';

export interface Sensitivity {
  readonly result: string;
  readonly base: number;
  readonly method: RangeMethod;
  readonly share: number;
  /** By swing, largest first; those on the convention stand apart and never in a verdict. */
  readonly judged: readonly Swing[];
  readonly conventional: readonly Swing[];
  /** Share of all swings by what the inputs rest on. */
  readonly rests: Readonly<Record<RestsOn, number>>;
}

// What the two ends of an input that cancels out differ by is the rounding of floating-point numbers, and no swing.
const noise = 1e-9;

/** One-way sensitivity of a result to every input that reaches it. */
export function sensitivity(
  open: OpenCase,
  resultId: string,
  method: RangeMethod = 'usual range',
  share: number = conventionalShare,
): Sensitivity {
  const tape = new ResultTape(open, resultId);
  const slopes = slopesOf(tape.tape, tape.base, tape.slot);
  const swings = open.model.graph.inputs
    .filter((input) => tape.reaches(input.id))
    .flatMap((input): Swing[] => {
      const range = inputRange(input, method, share);
      const slope = slopes[inputPlace(tape.tape, input.id)] ?? NaN;
      return range === null ? [] : [swingOf(tape, input, range, slope * Number(input.factor))];
    })
    .filter((swing) => swing.swing > noise * Math.abs(tape.baseValue))
    .sort((a, b) => b.swing - a.swing || (a.id < b.id ? -1 : 1));
  const total = swings.reduce((sum, each) => sum + each.swing, 0);
  const restOf = (kind: RestsOn): number =>
    total === 0 ? 0 : swings.filter((each) => each.restsOn === kind).reduce((sum, each) => sum + each.swing, 0) / total;
  return {
    result: resultId,
    base: tape.baseValue,
    method,
    share,
    judged: swings.filter((each) => !each.convention),
    conventional: swings.filter((each) => each.convention),
    rests: { measured: restOf('measured'), sourced: restOf('sourced'), 'rule of thumb': restOf('rule of thumb') },
  };
}

function swingOf(tape: ResultTape, input: InputDeclaration, range: InputRange, slope: number): Swing {
  const figure = Number(inForce(input));
  const [atLow, atHigh, base] = [tape.at(input.id, range.low), tape.at(input.id, range.high), tape.baseValue];
  const reached = [atLow, atHigh, base].filter((value) => Number.isFinite(value));
  return {
    ...range,
    id: input.id,
    label: input.label,
    where: input.where ?? '',
    unit: input.entryUnit,
    figure,
    atLow,
    atHigh,
    swing: Math.max(...reached) - Math.min(...reached),
    slope,
    elasticity: base === 0 || figure === 0 ? null : (slope * figure) / base,
    sameWay: figure >= range.low && figure <= range.high && (atLow - base) * (atHigh - base) > 0,
    flips: reached.some((value) => value * base < 0),
    restsOn: restsOn(input),
  };
}

function restsOn(input: InputDeclaration): RestsOn {
  const { status } = input.given?.provenance ?? input.usual.provenance;
  if (status === 'measured') return 'measured';
  return status === 'read' || status === 'derived' || status === 'definition' ? 'sourced' : 'rule of thumb';
}
