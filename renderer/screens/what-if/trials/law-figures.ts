import type { DistributionLaw, GivenDistribution } from '../../../../src/index.ts';

export type FigureKey = 'low' | 'mode' | 'high' | 'mean' | 'deviation';

export interface LawFigure {
  readonly key: FigureKey;
  readonly label: string;
  /** What stands in for it where nobody gives it: the figure in force, or no bound at all. */
  readonly without: 'needed' | 'figure in force' | 'no bound';
}

const low: LawFigure = { key: 'low', label: 'low', without: 'needed' };
const high: LawFigure = { key: 'high', label: 'high', without: 'needed' };
const likely: LawFigure = { key: 'mode', label: 'most likely', without: 'figure in force' };
const aroundMean: readonly LawFigure[] = [
  { key: 'mean', label: 'mean', without: 'figure in force' },
  { key: 'deviation', label: 'deviation', without: 'needed' },
  { key: 'low', label: 'not below', without: 'no bound' },
  { key: 'high', label: 'not above', without: 'no bound' },
];

/** What each law is drawn from, in the order it is written. A discrete one has its values instead. */
export const lawFigures: Readonly<Record<DistributionLaw, readonly LawFigure[]>> = {
  fixed: [],
  uniform: [low, high],
  triangular: [low, likely, high],
  PERT: [low, likely, high],
  normal: aroundMean,
  lognormal: aroundMean,
  discrete: [],
};

/** What is known of an input without being told: as far as it goes, and how widely it was drawn. */
export interface KnownReach {
  readonly figure: string;
  readonly low: string;
  readonly high: string;
  readonly deviation: string;
}

/** Another law for an input. Figures that it shares with the one before stay, those that it needs are taken from what is known, the rest go. */
export function withLaw(given: GivenDistribution, law: DistributionLaw, known: KnownReach): GivenDistribution {
  const { drawn, persistence } = given;
  const figures = lawFigures[law].flatMap(({ key, without }) => {
    const kept = given[key] ?? (without === 'needed' ? endsOf(given, known)[key] : undefined);
    return kept === undefined || kept === '' ? [] : [[key, kept] as const];
  });
  return {
    law,
    ...Object.fromEntries(figures),
    ...(law === 'discrete' ? { values: given.values ?? threeValues(given, known) } : {}),
    ...(drawn === undefined ? {} : { drawn }),
    ...(persistence === undefined ? {} : { persistence }),
  };
}

function endsOf({ values }: GivenDistribution, known: KnownReach): Partial<Record<FigureKey, string>> {
  if (values === undefined) return known;
  const rising = values.map(({ value }) => value).sort((a, b) => Number(a) - Number(b));
  return { ...known, low: rising[0] ?? known.low, high: rising.at(-1) ?? known.high };
}

/** Both ends and the figure in force, equally likely until somebody says otherwise. */
function threeValues({ low: least, high: most }: GivenDistribution, known: KnownReach) {
  const values = [least ?? known.low, known.figure, most ?? known.high].filter((value) => value !== '');
  return [...new Set(values)].map((value) => ({ value, weight: '1' }));
}
