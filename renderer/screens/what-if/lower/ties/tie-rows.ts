import { npvId, type BreakEven, type Sensitivity, type Spread } from '../../../../../src/index.ts';
import { formatNumber } from '../../../../../src/wording/number-format.ts';
import { lowerFirst } from '../../../../numbers/letter-case.ts';
import type { NumberStyle } from '../../../../numbers/number-style.ts';
import { fullName, shortWhere } from '../../tornado/input-name.ts';
import { routeWords } from '../../tornado/result-words.ts';
import { winningSide } from '../../tornado/winning-side.ts';

/** One input and where it alone makes the result nothing, which is where two routes tie, in words and figures as they are shown. */
export interface TieRow {
  readonly id: string;
  readonly label: string;
  /** Where it belongs, short; "" for an input of the whole case. */
  readonly where: string;
  readonly name: string;
  /** The same with its place first, which tells prices apart where there is little room: "Mixed papers, net price agreed". */
  readonly place: string;
  readonly today: string;
  /** Every tie, from low to high; none is said as none. */
  readonly ties: readonly string[];
  readonly unit: string;
  /** How far the nearest tie is from today: "−12 %". */
  readonly away: string;
  /** What turns beyond it: "virgin wins below", "the plan loses above". */
  readonly wins: string;
  readonly likely: Likely | null;
  /** The range that was searched: "from 20 to 170 €/adt". */
  readonly searched: string;
  /** The nearest tie; null where there is none. */
  readonly nearest: number | null;
}

export const likelyWords = {
  usual: 'within usual range',
  beyond: 'beyond usual range',
  unknown: 'no usual range is known',
} as const;
export type Likely = keyof typeof likelyWords;

/** Inputs that tie first, each group in the order of their swings. */
export function tieRows(
  ties: readonly BreakEven[],
  sensitivity: Sensitivity,
  spread: Spread,
  numbers: NumberStyle,
): readonly TieRow[] {
  const rows = ties.map((tie) => tieRow(tie, sensitivity, spread, numbers));
  return [...rows.filter(({ nearest }) => nearest !== null), ...rows.filter(({ nearest }) => nearest === null)];
}

function tieRow(tie: BreakEven, { base, result }: Sensitivity, spread: Spread, numbers: NumberStyle): TieRow {
  const { id, label, where, figure, crossings } = tie;
  const nearest = nearestTo(figure, crossings);
  const unit = numbers.unit(tie.unit);
  const range = `from ${numbers.driver(tie.from)} to ${numbers.driver(tie.to)}`;
  return {
    id,
    label,
    where: shortWhere(where, spread),
    name: fullName({ label, where }),
    place: where === '' ? label : `${where}, ${lowerFirst(label)}`,
    today: numbers.digits(spread.inputs[id]?.value ?? String(figure)),
    ties: crossings.map((at) => numbers.driver(at)),
    unit,
    away: nearest === null ? '' : awayText(nearest, figure, unit, numbers.locale),
    wins: nearest === null ? '' : winsBeyond(tie, nearest, base, wordsOf(result, spread), numbers),
    likely: nearest === null ? null : tie.usual === null ? 'unknown' : tie.usual ? 'usual' : 'beyond',
    searched: unit === '' ? range : `${range} ${unit}`,
    nearest,
  };
}

function nearestTo(figure: number, crossings: readonly number[]): number | null {
  const [first] = crossings;
  if (first === undefined) return null;
  return crossings.reduce((best, at) => (Math.abs(at - figure) < Math.abs(best - figure) ? at : best), first);
}

/** In per cent of the figure of today; in its own unit where that is nothing. */
function awayText(at: number, figure: number, unit: string, locale: string): string {
  if (figure === 0) return `${formatNumber(at, { locale, significant: 3, sign: true })}\u00a0${unit}`.trim();
  const percent = ((at - figure) / Math.abs(figure)) * 100;
  const decimals = Math.abs(percent) < 9.95 ? 1 : 0;
  return `${formatNumber(percent, { locale, decimals, sign: true })}\u00a0%`;
}

/** What is said where either side wins: "virgin wins". */
interface Words {
  readonly with: string;
  readonly base: string;
  readonly winsBelow: boolean;
}

function wordsOf(result: string, spread: Spread): Words {
  if (result === npvId) return { with: 'the plan pays', base: 'the plan loses', winsBelow: false };
  const { base, other } = routeWords(spread);
  const wins = result === 'difference.footprint.total' ? 'emits less' : 'wins';
  return { with: `${other} ${wins}`, base: `${base} ${wins}`, winsBelow: true };
}

/** Beyond the nearest tie the side that loses today wins, as far as the next tie. */
function winsBeyond(tie: BreakEven, nearest: number, base: number, words: Words, numbers: NumberStyle): string {
  const today = winningSide(base, words.winsBelow);
  if (today === null || nearest === tie.figure) return '';
  const turned = today === 'with' ? words.base : words.with;
  const isAbove = nearest > tie.figure;
  const beyond = tie.crossings.filter((at) => (isAbove ? at > nearest : at < nearest));
  const next = isAbove ? beyond[0] : beyond.at(-1);
  if (next === undefined) return `${turned} ${isAbove ? 'above' : 'below'}`;
  const [low, high] = isAbove ? [nearest, next] : [next, nearest];
  return `${turned} from ${numbers.driver(low)} to ${numbers.driver(high)}`;
}
