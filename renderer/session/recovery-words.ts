import type { LeftDraft } from '../../electron/host.ts';
import type { NumberStyle } from '../numbers/number-style.ts';
import type { DraftDifferences } from './draft-differences.ts';

/** What is to be known about the file of a draft, and where a save will go. */
export function fileSentence({ name, file }: Pick<LeftDraft, 'name' | 'file'>): string {
  const named = name === null ? 'Its file' : `“${name}”`;
  const apart = 'It opens as a case of its own, and that file stays as it is.';
  switch (file) {
    case 'none':
      return 'It has no file yet. It opens as it was, and saving asks for a place.';
    case 'same':
      return `${named} is as it was when this work began. Going on opens it with these changes, not yet saved:`;
    case 'newer':
      return `${named} was saved again after this was kept, perhaps with the same work. ${apart} The draft differs in:`;
    case 'changed':
      return `${named} was changed by another program since. ${apart} The draft differs in:`;
    case 'gone':
      return `${named} cannot be read now. ${apart}`;
  }
}

const mostLines = 8;

const partNames: Readonly<Record<string, string>> = {
  title: 'The title',
  note: 'The note',
  currency: 'The currency',
  priceYear: 'The year of the prices',
  product: 'The product',
  materials: 'The materials',
  chemicals: 'The chemicals',
  destinations: 'The destinations',
  routes: 'The routes and their lines',
  compare: 'Which routes are compared',
  investment: 'The investment plan',
};

/** A line for each figure that differs and for each other part, a few of them, then how many more. */
export function differenceLines(
  { figures, parts }: DraftDifferences,
  labelOf: (id: string) => string,
  numbers: Pick<NumberStyle, 'digits' | 'unit'>,
): readonly string[] {
  const shown = (figure: string | null): string => {
    if (figure === null) return 'the default';
    const [digits = '', unit = ''] = figure.split(' ', 2);
    return /^-?\d+(?:\.\d+)?$/u.test(digits) ? `${numbers.digits(digits)} ${unitWords(unit)}`.trim() : figure;
  };
  // The file may hold anything, also a unit that is none.
  const unitWords = (unit: string): string => {
    try {
      return unit === '' ? '' : numbers.unit(unit);
    } catch {
      return unit;
    }
  };
  const lines = [
    ...parts.map((part) => partNames[part] ?? `The part “${part}”`),
    ...figures.map(({ id, before, after }) => `${labelOf(id)}: ${shown(after)}, in the file ${shown(before)}`),
  ];
  const more = lines.length - mostLines;
  return more > 1 ? [...lines.slice(0, mostLines), `${String(more)} more`] : lines;
}
