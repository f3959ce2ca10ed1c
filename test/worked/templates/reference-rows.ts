/** What is told of a template, each in the unit its name says; shares are per cent of the dry feed of its lines. */
export type Measure =
  | 'line yield, %'
  | 'fibre lost, %'
  | 'rejects, %'
  | 'sludge, %'
  | 'preparation, kWh per t of stock'
  | 'refining, kWh per t of stock'
  | 'mill electricity, kWh/t'
  | 'preparation, GJ per t of stock'
  | 'mill heat, GJ/t'
  | 'raw oxygen demand, kg/t'
  | 'evaporation, m3/t';

/** A published or customary range, and why the template lies outside it, where it does. */
export interface ReferenceRow {
  readonly measure: Measure;
  readonly low: number;
  readonly high: number;
  readonly source: string;
  readonly outsideBecause?: string;
}

export interface TemplateRows {
  readonly template: string;
  readonly beside: string;
  readonly rows: readonly ReferenceRow[];
  /** Measures for which nothing was found, not even a rule of thumb. */
  readonly nothingFoundFor: readonly Measure[];
}

const planning = 'common practice, no source';
const handbook = 'Handbook of Paper and Board, Wiley-VCH 2006, waste table, sum of its rows, from memory';
const bestTechniques =
  'reference document on best available techniques, European Commission 2001, chapter 5, from memory';
const benchmark =
  'Thorp, Forum on Energy, Appleton 2006, benchmark table, read, per tonne of paper; 15 % either way is ours';
const evaporation = 'water evaporated in drying containerboard, trade text, read';

const row = (measure: Measure, low: number, high: number, source: string, outsideBecause?: string): ReferenceRow => ({
  measure,
  low,
  high,
  source,
  ...(outsideBecause === undefined ? {} : { outsideBecause }),
});

const noBenchmark = ['preparation, GJ per t of stock'] as const;
/** Losses of market pulp and its refining: softwood 60 to 150, hardwood and mechanical pulp 20 to 80 kWh, weighed by their shares. */
const virginRows = (refining: readonly [number, number], yieldOutside?: string): readonly ReferenceRow[] => [
  row('line yield, %', 98, 99.8, planning, yieldOutside),
  row('fibre lost, %', 0.2, 2, planning),
  row('refining, kWh per t of stock', ...refining, planning),
];
const dissolvedLeaves = '1.8 % of mechanical pulp is dissolved matter, which is no stock';

export const templateRows: readonly TemplateRows[] = [
  {
    template: 'testliner',
    beside: 'kraftliner',
    rows: [
      row('line yield, %', 90, 96, planning),
      row('rejects, %', 4, 8, handbook),
      row('sludge, %', 0, 1, handbook),
      row('preparation, kWh per t of stock', 100, 250, planning),
      row('preparation, GJ per t of stock', 0.79, 1.07, benchmark),
      row('mill electricity, kWh/t', 700, 800, bestTechniques),
      row('mill heat, GJ/t', 6, 6.5, bestTechniques),
      row('raw oxygen demand, kg/t', 10, 30, planning),
      row('evaporation, m3/t', 1, 1.5, evaporation),
    ],
    nothingFoundFor: [],
  },
  { template: 'kraftliner', beside: 'testliner', rows: virginRows([60, 150]), nothingFoundFor: noBenchmark },
  {
    template: 'newsprint',
    beside: 'newsprint-virgin',
    rows: [
      row('line yield, %', 80, 88, planning),
      row('rejects, %', 4, 7, handbook),
      row('sludge, %', 10, 18, handbook),
      row('preparation, kWh per t of stock', 250, 450, planning),
      row('mill electricity, kWh/t', 1000, 1500, bestTechniques),
      row('mill heat, GJ/t', 4, 6.5, bestTechniques),
      row('raw oxygen demand, kg/t', 12, 30, planning),
    ],
    nothingFoundFor: noBenchmark,
  },
  {
    template: 'newsprint-virgin',
    beside: 'newsprint',
    // 85 % mechanical and 15 % softwood pulp.
    rows: virginRows([26, 90.5]),
    nothingFoundFor: noBenchmark,
  },
  {
    template: 'tissue',
    beside: 'tissue-virgin',
    rows: [
      row('line yield, %', 55, 80, planning),
      row('rejects, %', 4, 7, handbook),
      row('sludge, %', 23, 38, handbook),
      row('preparation, kWh per t of stock', 300, 550, planning),
      row('preparation, GJ per t of stock', 1.78, 2.41, benchmark),
      row('mill electricity, kWh/t', 1200, 1400, bestTechniques),
      row('mill heat, GJ/t', 7, 12, bestTechniques),
      row(
        'raw oxygen demand, kg/t',
        10,
        20,
        planning,
        'office paper brings 1.3 % of dissolved matter, and bleaching dissolves 0.5 % of the fibre and 1.5 % of the fines',
      ),
    ],
    nothingFoundFor: [],
  },
  // 70 % hardwood and 30 % softwood pulp.
  { template: 'tissue-virgin', beside: 'tissue', rows: virginRows([32, 101]), nothingFoundFor: noBenchmark },
  {
    template: 'printing',
    beside: 'printing-virgin',
    rows: [
      row('line yield, %', 60, 70, planning),
      row('rejects, %', 4, 6, handbook),
      row('sludge, %', 27, 40, handbook),
      row('preparation, kWh per t of stock', 300, 550, planning),
      row('raw oxygen demand, kg/t', 12, 35, planning),
    ],
    nothingFoundFor: ['mill electricity, kWh/t', 'mill heat, GJ/t', ...noBenchmark],
  },
  // 75 % hardwood and 25 % softwood pulp.
  { template: 'printing-virgin', beside: 'printing', rows: virginRows([30, 97.5]), nothingFoundFor: noBenchmark },
  {
    template: 'board-middle',
    beside: 'board-middle-virgin',
    rows: [
      row('line yield, %', 88, 95, planning),
      row('rejects, %', 4, 8, handbook),
      row('sludge, %', 0, 1, handbook),
      row('preparation, kWh per t of stock', 100, 250, planning),
      row('mill electricity, kWh/t', 900, 1000, bestTechniques),
      row('mill heat, GJ/t', 8, 9, bestTechniques),
      row('raw oxygen demand, kg/t', 10, 30, planning),
    ],
    nothingFoundFor: noBenchmark,
  },
  {
    template: 'board-middle-virgin',
    beside: 'board-middle',
    rows: virginRows([20, 80], dissolvedLeaves),
    nothingFoundFor: noBenchmark,
  },
  {
    template: 'moulded',
    beside: 'moulded-virgin',
    rows: [
      row('line yield, %', 88, 97, planning),
      row(
        'preparation, kWh per t of stock',
        100,
        250,
        'common practice for liner and board, no source',
        'the train is short: no fine screens, no cleaners, no thickener',
      ),
      row('raw oxygen demand, kg/t', 10, 30, planning),
    ],
    nothingFoundFor: ['rejects, %', 'sludge, %', 'mill electricity, kWh/t', 'mill heat, GJ/t', ...noBenchmark],
  },
  // 60 % unbleached kraft and 40 % mechanical pulp, both through the gentle refiner.
  { template: 'moulded-virgin', beside: 'moulded', rows: virginRows([20, 80]), nothingFoundFor: noBenchmark },
];
