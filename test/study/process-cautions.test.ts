import { describe, expect, it } from 'vitest';
import type { Case, Stage } from '../../src/case/case.ts';
import { type OpenCase, changeInput } from '../../src/index.ts';
import { workOut } from '../../src/study/open-case.ts';
import { type ProcessCaution, processCautions } from '../../src/study/process-cautions.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { smallCase } from '../support/small-case.ts';

const whole = demonstration();
const withFigures = (figures: Readonly<Record<string, string>>, from = whole): OpenCase =>
  Object.entries(figures).reduce((open, [id, typed]) => valueOf(changeInput(open, id, typed)), from);
const ofKind = <Kind extends ProcessCaution['kind']>(open: OpenCase, kind: Kind) =>
  processCautions(open).filter((caution): caution is Extract<ProcessCaution, { kind: Kind }> => caution.kind === kind);

/** The demonstration case with other stages in the line of mixed papers. */
function withTrain(change: (stages: readonly Stage[]) => readonly Stage[]): OpenCase {
  const content: Case = {
    ...whole.content,
    routes: whole.content.routes.map((route) => ({
      ...route,
      lines: route.lines.map((line) => (line.id === 'mixed' ? { ...line, stages: change(line.stages) } : line)),
    })),
  };
  return valueOf(workOut(content));
}

describe('an unusual line yield', () => {
  // Usual for board: 88 to 95 %. Of mixed papers with much unusable matter less remains.
  it('is told of a recovered line, with what is usual', () => {
    const open = withFigures({ 'material.mixed.lights': '12' });
    const value = open.values.number('recovered.mixed.yield') * 100;
    expect(value).toBeLessThan(88);

    expect(ofKind(open, 'unusual yield')).toEqual([
      {
        kind: 'unusual yield',
        about: 'recovered.mixed.yield',
        where: 'Recovered middle ply, Mixed papers and boards',
        value,
        low: 88,
        high: 95,
      },
    ]);
  });

  it('is not told of a usual one, nor of virgin pulp, which loses next to nothing', () => {
    expect(whole.values.number('virgin.bskp.yield') * 100).toBeGreaterThan(95);
    expect(ofKind(whole, 'unusual yield')).toEqual([]);
  });
});

describe('a drum pulper', () => {
  const drum = withTrain(([first, ...rest]) => [{ ...first!, like: 'drum' }, ...rest]);

  it('is told what does not suit it: wires, and wet-strength paper', () => {
    // 0.3 % of wire and 2.8 % of wet-strength paper come with mixed papers; a drum bears 0.1 % and 2 %.
    expect(ofKind(drum, 'unsuited to a drum').map(({ component, share }) => [component, share.toFixed(3)])).toEqual([
      ['wire', '0.300'],
      ['wetStrength', '2.800'],
    ]);
  });

  it('is not told where the furnish has less', () => {
    const clean = withFigures({ 'material.mixed.wire': '0.05', 'material.mixed.wetStrength': '1' }, drum);

    expect(ofKind(clean, 'unsuited to a drum')).toEqual([]);
  });

  it('is not told of a vat', () => {
    expect(ofKind(whole, 'unsuited to a drum')).toEqual([]);
  });
});

describe('a residue in the own boiler', () => {
  it('is told when it gives too little heat as fired to burn by itself', () => {
    const open = withFigures({ 'residue.primary.to.boiler': '50 %' });

    // Primary sludge of the recovered route holds more ash: 4.46 GJ a wet tonne as fired, against 4.90 of the virgin route.
    expect(open.values.number('virgin.residue.primary.firedValue')).toBeGreaterThan(4.5);
    expect(ofKind(open, 'burns badly')).toEqual([
      {
        kind: 'burns badly',
        about: 'recovered.residue.primary.firedValue',
        where: 'Recovered middle ply',
        label: 'Effluent primary sludge',
        value: open.values.number('recovered.residue.primary.firedValue'),
      },
    ]);
    expect(open.values.number('recovered.residue.primary.firedValue')).toBeLessThan(4.5);
  });

  it('is not told when it burns well, or goes elsewhere', () => {
    expect(whole.values.number('recovered.residue.coarse.firedValue')).toBeGreaterThan(4.5);
    expect(ofKind(whole, 'burns badly')).toEqual([]);
  });
});

describe('a limit for the product', () => {
  it.each([
    { limit: 'recovered.limit.ash', figure: '1 %', about: 'recovered.productAsh', unit: '%' },
    {
      limit: 'recovered.limit.macroStickies',
      figure: '0.000001',
      about: 'recovered.product.macroStickies',
      unit: 'kg/t',
    },
    { limit: 'recovered.limit.dirt', figure: '0.000001', about: 'recovered.product.dirt', unit: 'kg/t' },
  ])('$limit is told when it is exceeded, and not when it is kept', ({ limit, figure, about, unit }) => {
    const scale = unit === '%' ? 100 : 1;
    const value = whole.values.number(about) * scale;
    expect(value).toBeGreaterThan(0);

    const [caution, ...more] = ofKind(withFigures({ [limit]: figure }), 'above limit');
    expect(more).toEqual([]);
    expect(caution).toMatchObject({ about, unit, where: 'Recovered middle ply', limit: Number.parseFloat(figure) });
    expect(caution?.value).toBeCloseTo(value, 12);
    expect(ofKind(withFigures({ [limit]: String(value * 1.01) }), 'above limit')).toEqual([]);
  });

  it('that nobody set is not looked at', () => {
    expect(ofKind(whole, 'above limit')).toEqual([]);
  });
});

describe('a delivery above the moisture at which it is refused', () => {
  it('is told, and one below it is not', () => {
    const refusal = { 'material.mixed.moistureRefusal': '15 %' };

    expect(ofKind(withFigures({ ...refusal, 'material.mixed.moisture': '16' }), 'too wet to accept')).toEqual([
      {
        kind: 'too wet to accept',
        about: 'material.mixed.moisture',
        where: 'Mixed papers and boards',
        value: 16,
        limit: 15,
      },
    ]);
    expect(ofKind(withFigures({ ...refusal, 'material.mixed.moisture': '15' }), 'too wet to accept')).toEqual([]);
  });
});

describe('a refiner', () => {
  it('is told an edge load outside what is usual, where the length of its cutting edges is known', () => {
    const refined = (edgeLength: string): OpenCase =>
      valueOf(
        workOut(
          smallCase({
            stages: [
              { id: 'refiner', like: 'refiner-sw', power: 'net and no-load' },
              { id: 'pumps', like: 'pumps' },
            ],
            figures: { 'mill.line.refiner.noLoad': '100 kW', 'mill.line.refiner.edgeLength': `${edgeLength} km/s` },
          }),
        ),
      );
    // 1 kW of net power over 1 km/s is 1 J/m.
    const one = refined('1');
    const power = one.values.number('mill.line.refiner.net') * one.values.number('mill.line.refiner.throughput');
    expect(one.values.number('mill.line.refiner.edgeLoad')).toBeCloseTo(power, 6);

    expect(ofKind(refined(String(power / 2)), 'edge load')).toEqual([]);
    expect(ofKind(refined(String(power / 5)), 'edge load')).toMatchObject([
      { about: 'mill.line.refiner.edgeLoad', where: 'Mill, Line', low: 0.2, high: 4.2 },
    ]);
    expect(ofKind(refined(String(power * 10)), 'edge load').map(({ value }) => value.toFixed(3))).toEqual(['0.100']);
  });
});

describe('figures from memory', () => {
  it('are counted, and replaced ones no longer', () => {
    const [before] = ofKind(whole, 'from memory');
    const recalled = whole.model.graph.inputs.filter(
      ({ given, usual }) => (given?.provenance ?? usual.provenance).status === 'memory',
    );
    expect(before?.count).toBe(recalled.length);
    expect(before?.labels).toEqual(recalled.map(({ label }) => label));

    const first = recalled[0]!;
    const measured = { status: 'measured', source: 'Own laboratory' } as const;
    const after = valueOf(changeInput(whole, first.id, first.usual.value ?? '', measured));
    expect(ofKind(after, 'from memory')[0]?.count ?? 0).toBe(recalled.length - 1);
  });
});
