import { describe, expect, it } from 'vitest';
import type { Case } from '../../src/case/case.ts';
import { type OpenCase, changeInput, restoreDefault, startCase } from '../../src/index.ts';
import { workOut } from '../../src/study/open-case.ts';
import { type Caution, cautionsOf } from '../../src/study/warnings.ts';
import { demonstration, valueOf } from '../examples/demonstration.ts';
import { smallCase } from '../support/small-case.ts';

const whole = demonstration();
const ofKind = <Kind extends Caution['kind']>(open: OpenCase, kind: Kind) =>
  cautionsOf(open).filter((caution): caution is Extract<Caution, { kind: Kind }> => caution.kind === kind);
const withFigures = (figures: Readonly<Record<string, string>>, from = whole): OpenCase =>
  Object.entries(figures).reduce((open, [id, typed]) => valueOf(changeInput(open, id, typed)), from);

describe('a missing figure', () => {
  it('is told with its place, and what fails for want of it is not told again', () => {
    const open = valueOf(restoreDefault(whole, 'recovered.mixed.share'));

    expect(ofKind(open, 'no figure')).toEqual([
      {
        kind: 'no figure',
        about: 'recovered.mixed.share',
        label: 'Share of the dry fresh stock',
        where: 'Recovered middle ply, Mixed papers and boards',
        unit: '%',
      },
    ]);
    expect(ofKind(open, 'cannot be worked out')).toEqual([]);
  });

  it('is not told of a whole case', () => {
    expect(ofKind(whole, 'no figure')).toEqual([]);
  });
});

describe('what cannot be worked out', () => {
  it('is told once, where it began, with the reason', () => {
    // 95 % and 20 % leave -15 % for the balancing line.
    const open = withFigures({ 'virgin.bskp.share': '95' });

    expect(ofKind(open, 'cannot be worked out')).toEqual([
      {
        kind: 'cannot be worked out',
        about: 'virgin.bctmp.share',
        label: 'Share of the dry fresh stock',
        where: 'Virgin middle ply, Bleached chemi-thermomechanical',
        reason: { kind: 'outside', value: '-0.15', bounds: { least: '0' } },
      },
    ]);
  });

  it('is told for each place where something goes wrong by itself', () => {
    const open = withFigures({ 'virgin.bskp.share': '95', 'recovered.bskp.share': '80' });

    expect(ofKind(open, 'cannot be worked out').map(({ about }) => about)).toEqual([
      'virgin.bctmp.share',
      'recovered.bctmp.share',
    ]);
  });

  it('names the stage that leaves nothing of a line', () => {
    const stages = ['first', 'second', 'third'].map((id) => ({ id, like: 'pumps', label: `The ${id}` }));
    const open = valueOf(workOut(smallCase({ stages, figures: { 'mill.line.second.removal.fibre': '100 %' } })));

    expect(ofKind(open, 'cannot be worked out')).toMatchObject([{ about: 'mill.line.yield', emptiedBy: 'The second' }]);
  });

  it('does not count the branch of a choice that is not taken', () => {
    // At a rate of nothing the annuity would divide by nothing; the even charge is taken instead.
    const open = withFigures({ 'capital.rate': '0', 'capital.inflation': '0' });

    expect(open.values.number('recovered.capitalFactor')).toBeCloseTo(1 / 15, 12);
    expect(ofKind(open, 'cannot be worked out')).toEqual([]);
  });
});

describe('an unusual figure', () => {
  it.each([
    { given: '0.088', told: true },
    { given: '0.089', told: false },
    { given: '0.276', told: false },
    { given: '0.2761', told: true },
  ])('$given EUR/kWh for electricity, usual 0.089 to 0.276: $told', ({ given, told }) => {
    const open = withFigures({ 'price.electricity': given });
    const usual = open.model.graph.inputs.find(({ id }) => id === 'price.electricity')?.usual;
    expect([usual?.low, usual?.high]).toEqual(['0.089', '0.276']);

    const found = ofKind(open, 'unusual figure').filter(({ about }) => about === 'price.electricity');
    expect(found.map((caution) => caution.given)).toEqual(told ? [given] : []);
  });

  it('is not told of a default, nor of an input that has no usual range', () => {
    expect(ofKind(withFigures({ 'product.tonnes': '1' }), 'unusual figure').map(({ about }) => about)).toEqual([
      'capital.inflation',
    ]);
    const usual = valueOf(restoreDefault(whole, 'capital.inflation'));
    expect(ofKind(usual, 'unusual figure')).toEqual([]);
  });
});

describe('a list price', () => {
  const asList = (id: string): Case => ({
    ...whole.content,
    materials: whole.content.materials.map((material) =>
      material.id === id ? { ...material, price: { ...material.price, kind: 'list' as const } } : material,
    ),
  });

  it('without a discount is told, once for the material', () => {
    const open = valueOf(workOut(asList('bskp')));

    expect(ofKind(open, 'list price')).toEqual([
      { kind: 'list price', about: 'material.bskp.price', material: 'Bleached softwood kraft', origin: 'virgin' },
    ]);
  });

  it('of recovered paper is told as such', () => {
    const open = valueOf(workOut(asList('mixed')));

    expect(ofKind(open, 'list price')).toMatchObject([{ about: 'material.mixed.price', origin: 'post-consumer' }]);
  });

  it('with a discount is not', () => {
    const open = withFigures({ 'material.bskp.discount': '12 %' }, valueOf(workOut(asList('bskp'))));

    expect(ofKind(open, 'list price')).toEqual([]);
  });

  it('of a material that no route buys is not', () => {
    const content = asList('bskp');
    const spare = { ...content.materials[0]!, id: 'spare' };
    const open = valueOf(workOut({ ...whole.content, materials: [...whole.content.materials, spare] }));

    expect(ofKind(open, 'list price')).toEqual([]);
  });
});

describe('a water balance that cannot be', () => {
  it('is told of the route whose fresh water is too little', () => {
    const [caution, ...more] = ofKind(withFigures({ 'virgin.machine.freshWater': '0.5' }), 'effluent below nothing');

    expect(more).toEqual([]);
    expect(caution).toMatchObject({ about: 'virgin.water.effluent', route: 'Virgin middle ply' });
    expect(Number(caution?.value)).toBeLessThan(0);
  });

  it('is not looked for where the effluent is given', () => {
    const open = valueOf(workOut(smallCase({ stages: [{ id: 'slush', like: 'pumps' }] })));

    expect(open.content.routes.map(({ water }) => water)).toEqual(['effluent given', 'effluent given']);
    expect(ofKind(open, 'effluent below nothing')).toEqual([]);
  });
});

describe('an additive that nobody pays for', () => {
  const without = (place: 'wet end' | 'surface'): OpenCase =>
    valueOf(
      workOut({
        ...whole.content,
        routes: whole.content.routes.map((route) =>
          route.id === 'virgin'
            ? { ...route, additives: route.additives.filter((additive) => additive.place !== place) }
            : route,
        ),
      }),
    );

  it.each([
    { place: 'wet end', about: 'virgin.machine.wetEndAdditives' },
    { place: 'surface', about: 'virgin.machine.surfaceAdditives' },
  ] as const)('is told where the machine adds at the $place', ({ place, about }) => {
    expect(ofKind(without(place), 'unpriced additive')).toEqual([
      { kind: 'unpriced additive', about, route: 'Virgin middle ply', place },
    ]);
  });

  it('is not told where the machine adds nothing', () => {
    const open = withFigures({ 'virgin.machine.surfaceShare': '0' }, without('surface'));

    expect(ofKind(open, 'unpriced additive')).toEqual([]);
  });
});

it('points with every caution at something that can be opened', () => {
  const open = withFigures({ 'virgin.bskp.share': '95', 'recovered.machine.freshWater': '0.5', 'price.water': '99' });
  const cautions = cautionsOf(open);

  expect(cautions.length).toBeGreaterThan(3);
  for (const { about } of cautions) expect(open.model.graph.positions.has(about), about).toBe(true);
});

describe('a recovered line that costs no people, maintenance or capital', () => {
  const started = valueOf(
    startCase({
      title: 'New',
      virgin: 'kraftliner',
      recovered: 'testliner',
      tonnesPerYear: '100000',
      currency: 'EUR',
      priceYear: '2024',
    }),
  );

  it('is told of in a new case, and no longer once somebody enters any of them, nothing among them', () => {
    expect(ofKind(started, 'before new plant')).toEqual([
      { kind: 'before new plant', about: 'recovered.labour', route: 'Recovered' },
    ]);
    for (const what of ['capital', 'labour', 'maintenance']) {
      expect(ofKind(withFigures({ [`recovered.${what}`]: '0' }, started), 'before new plant'), what).toEqual([]);
    }
  });

  it('is nothing to tell in the demonstration', () => {
    expect(ofKind(whole, 'before new plant')).toEqual([]);
  });
});
