import { describe, expect, it } from 'vitest';
import { Decimal } from '../../src/kernel/evaluate/decimal-settings.ts';
import { parseUnit } from '../../src/kernel/units/unit.ts';
import sourceRows from '../../src/paper/defaults/sources.json' with { type: 'json' };
import { provenanceOf } from '../../src/paper/figure.ts';
import { type PlacedFigure, defaultFigures } from './default-figures.ts';

interface SourceRow {
  readonly quantity: string;
  readonly low?: number;
  readonly typical?: number;
  readonly high?: number;
  readonly unit: string;
  readonly status: string;
  readonly title: string;
  readonly publisher?: string;
  readonly locator?: string;
  readonly address?: string;
}

const sources = new Map<string, SourceRow>(Object.entries(sourceRows));
const statuses = ['measured', 'definition', 'read', 'derived', 'memory', 'practice', 'invented', 'none'];

/** Places of the figures that break a rule: a test says none. */
function breaking(keeps: (figure: PlacedFigure['figure']) => boolean): string[] {
  return defaultFigures.filter(({ figure }) => !keeps(figure)).map(({ place }) => place);
}

describe('every default figure', () => {
  it('is found by this test', () => {
    expect(defaultFigures.length).toBeGreaterThan(500);
  });

  it('is written in plain digits', () => {
    const plain = /^-?\d+(\.\d+)?$/;

    expect(breaking(({ value, low, high }) => [value, low, high].every((digits) => plain.test(digits)))).toEqual([]);
  });

  it('lies between its low and its high', () => {
    expect(
      breaking(
        ({ value, low, high }) =>
          new Decimal(low).lessThanOrEqualTo(value) && new Decimal(value).lessThanOrEqualTo(high),
      ),
    ).toEqual([]);
  });

  it('has a unit, written as the program writes it', () => {
    expect(breaking(({ unit }) => parseUnit(unit).text === unit)).toEqual([]);
  });

  it('is common practice or has a row of the sources', () => {
    expect(breaking(({ source }) => source === 'practice' || sources.has(source))).toEqual([]);
  });

  it('has a status that there is', () => {
    expect(breaking(({ status }) => statuses.includes(status))).toEqual([]);
  });

  it('was read or remembered only where its source was, and derived only from such a source', () => {
    const isHonest = ({ status, source }: PlacedFigure['figure']): boolean => {
      const row = sources.get(source)?.status ?? 'none';
      if (status === 'derived') return ['read', 'memory', 'derived'].includes(row);
      return !['read', 'memory', 'measured'].includes(status) || row === status;
    };

    expect(breaking(isHonest)).toEqual([]);
  });

  it('is common practice, or holds by definition, where it has no source', () => {
    expect(
      breaking(({ status, source }) => source !== 'practice' || ['practice', 'definition'].includes(status)),
    ).toEqual([]);
  });

  it('has a note, if it has one, that is a short phrase', () => {
    const isPhrase = ({ note }: PlacedFigure['figure']): boolean =>
      note === undefined || (note.length > 3 && note.length <= 130 && !/[.!?]$|[.!?] [A-Z]/.test(note));

    expect(breaking(isPhrase)).toEqual([]);
  });

  it('names in its note no row that is missing', () => {
    const named = (note = ''): string[] => note.match(/\b(?:[A-Z]\d{2}|[A-Z]+-[A-Z]+|[a-z\d]+(?:_[a-z\d]+)+)\b/g) ?? [];

    expect(defaultFigures.flatMap(({ figure }) => named(figure.note).filter((id) => !sources.has(id)))).toEqual([]);
  });

  it('has nothing else', () => {
    const basis = ['label', 'year', 'boundary', 'biogenic', 'allocation', 'gwp', 'verify'];
    const keys = new Set(['value', 'low', 'high', 'unit', 'source', 'status', 'note', ...basis]);

    expect(breaking((figure) => Object.keys(figure).every((key) => keys.has(key)))).toEqual([]);
  });
});

// What a row is multiplied by to be in the unit of the figure that cites it; 1 where the row says the same in other words.
const conversions: Readonly<Record<string, (row: Decimal) => Decimal>> = {
  'gCO2e/kWh to kgCO2e/kWh': (row) => row.dividedBy(1000),
  'kgCO2/TJ to kgCO2e/GJ': (row) => row.dividedBy(1000),
  // 1 GJ is 1000/3.6 kWh.
  'kgCO2e/kWh to kgCO2e/GJ': (row) => row.times(1000).dividedBy('3.6'),
  'kgCO2/kWh to kgCO2e/GJ': (row) => row.times(1000).dividedBy('3.6'),
  // A short ton is 0.90718474 t.
  'tCO2e/short ton to kgCO2e/t-ar': (row) => row.times(1000).dividedBy('0.90718474'),
  // Global warming potentials over 100 years of the fifth assessment report: 265 for N2O, 28 for fossil-free CH4. From memory.
  'gN2O/t waste to kgCO2e/wet-t': (row) => row.dividedBy(1000).times(265),
  'gCH4/kg waste to kgCO2e/wet-t': (row) => row.times(28),
  '% to tC/bdt': (row) => row.dividedBy(100),
  'kg/t paper to %': (row) => row.dividedBy(10),
  // The water in a tonne that is 90 % dry.
  't bone dry / ADt to %': (row) => new Decimal(100).minus(row.times(100)),
};

function inUnitOf(figure: PlacedFigure['figure'], row: SourceRow, value: number): Decimal {
  const convert = conversions[`${row.unit} to ${figure.unit}`];
  return convert === undefined ? new Decimal(value) : convert(new Decimal(value));
}

describe('a figure that cites a row', () => {
  const added: Readonly<Record<string, string>> = {
    // Tank to wheel 0.07703, which the row gives, and well to tank 0.01799 as the note says.
    'factors.freight': '0.01799',
    // 0.3 kg N2O beside the methane of the row, at 265.
    'carbon-factors.treatment.composting': '79.5',
  };
  const cited = defaultFigures.flatMap(({ place, figure }) => {
    const row = sources.get(figure.source);
    return row === undefined ? [] : [{ place, figure, row }];
  });

  it('is the typical value of the row where it says that it was read there, to three digits', () => {
    const read = cited.filter(({ figure }) => figure.status === 'read' || figure.status === 'memory');
    const wrong = read.filter(({ place, figure, row }) => {
      const typical = inUnitOf(figure, row, row.typical ?? NaN).plus(added[place] ?? '0');
      return !typical.minus(figure.value).abs().lessThanOrEqualTo(typical.times('0.001'));
    });

    expect(read.length).toBeGreaterThan(12);
    expect(wrong.map(({ place }) => place)).toEqual([]);
  });

  it('lies in the range of the row where it is common practice', () => {
    const outside = cited.filter(({ figure, row }) => {
      if (figure.status !== 'practice') return false;
      const low = inUnitOf(figure, row, row.low ?? row.typical ?? NaN);
      const high = inUnitOf(figure, row, row.high ?? row.typical ?? NaN);
      return !(low.lessThanOrEqualTo(figure.value) && high.greaterThanOrEqualTo(figure.value));
    });

    expect(outside.map(({ place }) => place)).toEqual([]);
  });

  it('tells its source in words', () => {
    const told = cited.map(({ place, figure }) => [place, provenanceOf(figure).source] as const);

    expect(told.filter(([, source]) => source.includes('undefined') || source.length < 8)).toEqual([]);
    for (const { figure, row } of cited)
      if (figure.status === 'read') expect(provenanceOf(figure).source).toContain(row.title);
  });
});

describe('every row of the sources', () => {
  const rows = [...sources];

  it('says what it is about, in which unit, and how far it is to be believed', () => {
    const poor = rows.filter(
      ([, row]) => row.title === '' || row.quantity === '' || row.unit === '' || !statuses.includes(row.status),
    );

    expect(poor.map(([id]) => id)).toEqual([]);
  });

  it('has a title', () => {
    expect(rows.filter(([, row]) => row.title.length < 3).map(([id]) => id)).toEqual([]);
  });

  it('gives title, publisher, place and address where it was read or remembered', () => {
    const poor = rows.filter(
      ([, row]) =>
        row.status !== 'practice' &&
        [row.title, row.publisher, row.locator, row.address].some((part) => part === undefined || part.length < 3),
    );

    expect(poor.map(([id]) => id)).toEqual([]);
  });

  it('is in order: low, typical, high, as far as it has them', () => {
    const wrong = rows.filter(([, { low, typical, high }]) => {
      const values = [low, typical, high].filter((value) => value !== undefined);
      return values.length === 0 || values.some((value, place) => place > 0 && value < (values[place - 1] ?? NaN));
    });

    expect(wrong.map(([id]) => id)).toEqual([]);
  });
});
