import type { Bounds, OperationName, OperationOf } from '../../kernel/expression/operation.ts';
import { type Piece, single, within } from './piece.ts';

type Step<Name extends OperationName> = (operation: OperationOf<Name>, args: readonly Piece[]) => Piece;
type Reading = { readonly [Name in Exclude<OperationName, 'input' | 'constant'>]: Step<Name> };

const nothing = single('0');
const sum = (text: string): Piece => ({ text, strength: 'sum' });
const product = (text: string): Piece => ({ text, strength: 'product' });
const isOne = ({ text }: Piece): boolean => text === '1';

/**
 * The reading of a graph as spreadsheet formulas. All functions are in ECMA-376 (2006) and thereby in every spreadsheet since. What fails
 * in the program is an error here: `NA()` outside bounds, `#DIV/0!` and `#NUM!` from the spreadsheet's own arithmetic; errors pass through
 * every operation, and `IF` looks only at the branch it takes.
 */
const reading: Reading = {
  later: (_, [of = nothing]) => of,
  same: (_, [of = nothing]) => of,
  // Terms with plus signs, and no SUM: that would pass over a cell that holds words.
  sum: (_, terms) => (terms.length === 0 ? nothing : sum(terms.map((term) => within(term, 'sum')).join('+'))),
  subtract: (_, [left = nothing, right = nothing]) =>
    sum(left.text === '0' ? `-${within(right, 'product')}` : `${within(left, 'sum')}-${within(right, 'product')}`),
  multiply: (_, [left = nothing, right = nothing]) => {
    if (isOne(left)) return right;
    return isOne(right) ? left : product(`${within(left, 'product')}*${within(right, 'power')}`);
  },
  divide: (_, [left = nothing, right = nothing]) =>
    isOne(right) ? left : product(`${within(left, 'product')}/${within(right, 'power')}`),
  power: (_, [base = nothing, exponent = nothing]) => powerOf(base, exponent),
  lesser: (_, args) => single(`MIN(${args.map(({ text }) => text).join(',')})`),
  greater: (_, args) => single(`MAX(${args.map(({ text }) => text).join(',')})`),
  whenAbove: (_, [value = nothing, limit = nothing, above = nothing, otherwise = nothing]) =>
    single(`IF(${value.text}>${limit.text},${above.text},${otherwise.text})`),
  within: ({ bounds }, [value = nothing]) => {
    const tests = boundTests(value, bounds);
    if (tests.length === 0) return value;
    const all = tests.length === 1 ? (tests[0] ?? '') : `AND(${tests.join(',')})`;
    return single(`IF(${all},${value.text},NA())`);
  },
};

/** One operation, over what its arguments read as. */
export function formulaStep(operation: OperationOf<keyof Reading>, args: readonly Piece[]): Piece {
  const step = reading[operation.op] as Step<keyof Reading>;
  return step(operation, args);
}

const isNumber = ({ text }: Piece): boolean => /^\d+(\.\d+)?$/u.test(text);

/** Whether a power needs its base and exponent twice: only of a 0 that stands there in person is known that 0^0 does not come up. */
function repeatsPower(base: Piece, exponent: Piece): boolean {
  return !(isNumber(exponent) && Number(exponent.text) !== 0) && !(isNumber(base) && Number(base.text) !== 0);
}

/** 0^0 is 1 in the program and in some spreadsheets, and an error in others; a base that failed must fail all the same. */
function powerOf(base: Piece, exponent: Piece): Piece {
  const plain = `${within(base, 'single')}^${within(exponent, 'single')}`;
  if (!repeatsPower(base, exponent)) return { text: plain, strength: 'power' };
  return single(`IF(${exponent.text}=0,1+0*${within(base, 'power')},${plain})`);
}

/**
 * Name of the cell that holds what binary numbers may round off. A share that takes what others leave comes to nothing in decimals, and in
 * binary numbers to nothing give or take the last digit: that keeps a limit of nothing.
 */
export const roundingName = 'rounding_off';

/** Far below what any figure is known to. */
export const roundingOff = 1e-12;

function boundTests({ text }: Piece, { least, most, above, below }: Bounds): readonly string[] {
  const tests: string[] = [];
  if (least !== undefined) tests.push(`${text}>=${least === '0' ? '' : least}-${roundingName}`);
  if (most !== undefined) tests.push(`${text}<=${most}+${roundingName}`);
  if (above !== undefined) tests.push(`${text}>${above}`);
  if (below !== undefined) tests.push(`${text}<${below}`);
  return tests;
}
