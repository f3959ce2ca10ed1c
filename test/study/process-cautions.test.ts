import { describe, expect, it } from 'vitest';
import type { Stage } from '../../src/case/case.ts';
import { type OpenCase, changeInput, problemSentence } from '../../src/index.ts';
import { selfSustainingFire, usualEdgeLoad, usualLineYields } from '../../src/paper/usual-results.ts';
import { workOut } from '../../src/study/open-case.ts';
import type { ProcessCaution } from '../../src/study/process-caution.ts';
import { processCautions } from '../../src/study/process-cautions.ts';
import { processCautionSentence } from '../../src/wording/process-caution-sentence.ts';
import { demonstration, problemsOf, valueOf } from '../examples/demonstration.ts';
import { type SmallCase, smallCase } from '../support/small-case.ts';

type Figures = Readonly<Record<string, string>>;
const slush: readonly Stage[] = [{ id: 'slush', like: 'pumps' }];
const worked = (figures: Figures, more: Partial<SmallCase> = {}): OpenCase =>
  valueOf(workOut(smallCase({ stages: slush, ...more, figures })));

function ofKind<Kind extends ProcessCaution['kind']>(open: OpenCase, kind: Kind) {
  return processCautions(open).filter((each): each is Extract<ProcessCaution, { kind: Kind }> => each.kind === kind);
}

describe('a line yield', () => {
  const yieldOf = (lost: string, origin: 'post-consumer' | 'pre-consumer' | 'virgin' = 'post-consumer') =>
    ofKind(worked({ 'mill.line.slush.removal.fibre': lost }, { materials: [{ origin }] }), 'unusual yield').filter(
      ({ about }) => about === 'mill.line.yield',
    );

  it.each([
    { lost: '3.9 %', told: true },
    { lost: '4.1 %', told: false },
    { lost: '11.9 %', told: false },
    { lost: '12.1 %', told: true },
  ])('that loses $lost where 4 to 12 % are usual for liner: remarked on is $told', ({ lost, told }) => {
    expect(usualLineYields.get('liner')).toEqual({ low: 88, high: 96 });
    expect(yieldOf(lost)).toHaveLength(told ? 1 : 0);
  });

  it('says what, where, and what is usual', () => {
    const [caution] = yieldOf('20 %', 'pre-consumer');

    expect(caution).toMatchObject({ where: 'Mill, Line', low: 88, high: 96 });
    expect(caution?.value).toBeCloseTo(80, 10);
    expect(processCautionSentence(caution!)).toMatch(/^Mill, Line: a line yield of 80 % is outside .* 88 to 96 %/u);
  });

  it('of virgin pulp is held against no range of recovered paper', () => {
    expect(yieldOf('0.1 %', 'virgin')).toEqual([]);
  });

  it('that cannot be worked out is no remark but a failure of its own', () => {
    expect(yieldOf('100 %')).toEqual([]);
  });
});

describe('a drum pulper', () => {
  const drum = (figures: Figures, before: readonly Stage[] = []) =>
    ofKind(worked(figures, { stages: [...before, { id: 'pulp', like: 'drum' }] }), 'unsuited to a drum');

  it.each([
    { component: 'wire', share: '0.1 %', told: 0 },
    { component: 'wire', share: '0.11 %', told: 1 },
    { component: 'wetStrength', share: '2 %', told: 0 },
    { component: 'wetStrength', share: '2.1 %', told: 1 },
  ])('fed with $share of $component is remarked on $told times', ({ component, share, told }) => {
    expect(drum({ [`material.paper.${component}`]: share })).toHaveLength(told);
  });

  it('is told the share of what comes to it, after what the stages before took out', () => {
    // 0.08 % of the paper is wire; half of the mass, all ash, goes before the drum: 0.08/0.5 = 0.16 %.
    const [caution, ...more] = drum(
      { 'material.paper.wire': '0.08 %', 'material.paper.ash': '50 %', 'mill.line.sift.removal.ash': '100 %' },
      [{ id: 'sift', like: 'pumps' }],
    );

    expect(more).toEqual([]);
    expect(caution?.share).toBeCloseTo(0.16, 12);
  });
});

describe('a residue in the own boiler', () => {
  // Fibre of 17 GJ a dry tonne: 17 d - 2.443 (1 - d) per wet tonne is 4.5 at a dryness of 35.708 %, and nothing at 12.565 %.
  const burnt = (dryness: string, share = '100 %') =>
    worked(
      {
        'mill.line.slush.removal.fibre': '10 %',
        'residue.coarse.to.boiler': share,
        'residue.coarse.dryness': dryness,
        'heatingValue.fibre': '17 GJ/bdt',
      },
      {
        destinations: [
          { id: 'tip', label: 'Tip', kind: 'gate-fee plant' },
          { id: 'boiler', label: 'Own boiler', kind: 'own boiler' },
        ],
      },
    );
  const burning = (dryness: string, share?: string) => ofKind(burnt(dryness, share), 'burns badly');

  it.each([
    { dryness: '36 %', told: 0 },
    { dryness: '35 %', told: 1 },
    { dryness: '12 %', told: 1 },
  ])('at a dryness of $dryness is remarked on $told times', ({ dryness, told }) => {
    expect(selfSustainingFire).toBe(4.5);
    expect(burning(dryness)).toHaveLength(told);
  });

  it('that is too wet to give any heat is told to take heat', () => {
    const [caution] = burning('10 %');

    expect(caution?.value).toBeCloseTo(17 * 0.1 - 2.443 * 0.9, 10);
    expect(processCautionSentence(caution!)).toContain('too wet to burn');
  });

  it('takes heat from the boiler where all residues together give less than nothing, and that is told', () => {
    const [cold, ...more] = ofKind(burnt('10 %'), 'heat below nothing');

    expect(more).toEqual([]);
    expect(cold).toMatchObject({ about: 'mill.heat.fromResidues', where: 'Mill' });
    expect(cold?.value).toBe(burnt('10 %').values.number('mill.heat.fromResidues'));
    expect(ofKind(burnt('40 %'), 'heat below nothing')).toEqual([]);
  });

  it('is not looked at where nothing of it is burned', () => {
    expect(burning('10 %', '0 %')).toEqual([]);
  });
});

describe('a refiner', () => {
  // 100 kWh/t net on 12.27 t/h (100,000 t/a in 8150 h) is 1227 kW; over 1000 km/s that is 1.227 J/m.
  const refiner = (edge: string) =>
    ofKind(
      worked(
        {
          'product.hours': '8150 h/a',
          'mill.line.refine.net': '100 kWh/bdt',
          'mill.line.refine.noLoad': '200 kW',
          'mill.line.refine.edgeLength': edge,
        },
        { stages: [{ id: 'refine', like: 'refiner-sw', power: 'net and no-load' }] },
      ),
      'edge load',
    );

  it.each([
    { edge: '1000 km/s', told: [] },
    { edge: '250 km/s', told: [4.908] },
    { edge: '7000 km/s', told: [0.175] },
  ])('with edges of $edge is remarked on for $told J/m', ({ edge, told }) => {
    expect(usualEdgeLoad).toEqual({ low: 0.2, high: 4.2 });
    expect(refiner(edge).map(({ value }) => Number(value.toFixed(3)))).toEqual(told);
  });
});

describe('a limit set for the product', () => {
  const figures = {
    'material.paper.inkLarge': '0.4 %',
    'material.paper.macroStickies': '0.2 %',
    'material.paper.ash': '12 %',
  };

  it.each([
    { limit: 'mill.limit.dirt', over: '3.9 kg/t', at: '4 kg/t', value: 4, unit: 'kg/t' },
    { limit: 'mill.limit.macroStickies', over: '1.9 kg/t', at: '2 kg/t', value: 2, unit: 'kg/t' },
    { limit: 'mill.limit.ash', over: '11.9 %', at: '12 %', value: 12, unit: '%' },
  ])('of $over ($limit) is remarked on at $value $unit, and one of $at is kept', ({ limit, over, at, value, unit }) => {
    const [caution, ...more] = ofKind(worked({ ...figures, [limit]: over }), 'above limit');

    expect(more).toEqual([]);
    expect(caution).toMatchObject({ unit, where: 'Mill' });
    expect(caution?.value).toBeCloseTo(value, 10);
    expect(ofKind(worked({ ...figures, [limit]: at }), 'above limit')).toEqual([]);
  });

  it('that nobody set is not looked for', () => {
    expect(ofKind(worked(figures), 'above limit')).toEqual([]);
  });

  it('below nothing is refused', () => {
    const [problem] = problemsOf(changeInput(worked(figures), 'mill.limit.dirt', '-1'));

    expect(problemSentence(problem)).toContain('at least 0');
  });
});

describe('paper that is wetter than agreed', () => {
  it.each([
    { moisture: '14 %', told: [] },
    { moisture: '16 %', told: [16] },
  ])('with $moisture against a ceiling of 15 %', ({ moisture, told }) => {
    const open = worked({ 'material.paper.moisture': moisture, 'material.paper.moistureRefusal': '15 %' });

    expect(ofKind(open, 'too wet to accept').map(({ value }) => Math.round(value))).toEqual(told);
  });
});

describe('a route whose product serves another way', () => {
  it.each([
    { factor: '1', told: [] },
    { factor: '1.1', told: ['Mill makes 1.1 t for each reference tonne; every figure is per reference tonne.'] },
    { factor: '0.95', told: ['Mill makes 0.95 t for each reference tonne; every figure is per reference tonne.'] },
  ])('with $factor t for each reference tonne is told of: $told', ({ factor, told }) => {
    const open = worked({ 'mill.machine.serviceFactor': factor + ' 1' });

    expect(ofKind(open, 'other service').map(processCautionSentence)).toEqual(told);
  });
});

describe('figures from memory', () => {
  it('are counted and named, until somebody gives one with a source', () => {
    const before = demonstration();
    const [all] = ofKind(before, 'from memory');
    const after = valueOf(
      changeInput(before, 'carbon.inFibre', '0.45', { status: 'read', source: 'Own laboratory, 2026' }),
    );
    const [left] = ofKind(after, 'from memory');

    expect(all?.labels).toContain('Carbon in dry fibre');
    expect(left?.count).toBe((all?.count ?? NaN) - 1);
    expect(left?.labels).not.toContain('Carbon in dry fibre');
  });
});

it('none of them stops a case: every one leaves a cost to be read', () => {
  const open = worked({ 'material.paper.wire': '1 %' }, { stages: [{ id: 'pulp', like: 'drum' }] });

  expect(processCautions(open).length).toBeGreaterThan(1);
  expect(open.values.number('mill.cost.total')).toBeGreaterThan(0);
});
