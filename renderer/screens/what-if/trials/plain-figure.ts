import { unitLabel } from '../../../../src/wording/unit-label.ts';

type Figure =
  { readonly kind: 'figure'; readonly digits: string } | { readonly kind: 'refused'; readonly sentence: string };

/** Takes the unit off a figure as it was typed; only that of the input may stand there, for nothing is converted here. */
export function plainFigure(typed: string, unit: string): Figure {
  const [digits = '', ...rest] = typed.split(' ');
  const named = rest.join('');
  if (named === '' || [unit, unitLabel(unit)].some((each) => bare(each) === bare(named)))
    return { kind: 'figure', digits };
  const label = unitLabel(unit);
  return {
    kind: 'refused',
    sentence: `Give it ${label === '' ? 'as a plain number' : `in ${label}`}, not in “${named}”.`,
  };
}

function bare(unit: string): string {
  return unit.replaceAll(/\s/gu, '').toLowerCase();
}

/** A number as one would write it: without the dust of binary fractions. */
export function plainText(value: number): string {
  return String(Number(value.toPrecision(12)));
}
