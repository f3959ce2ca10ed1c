import { describe, expect, it } from 'vitest';
import { basisChoices, caseText, editStructure, footprint, openCase, restoreDefault } from '../../src/index.ts';
import { demonstration, problemsOf, valueOf } from '../examples/demonstration.ts';

const given = demonstration();

describe('changing what a footprint rests on', () => {
  it('takes the grid of another country, and goes back to the usual one', () => {
    const french = valueOf(editStructure(given, { kind: 'set basis', basis: { grid: 'FRA' } }));
    // 0.04418 kg/kWh instead of 0.21302 (@tgwf/co2 0.19.0).
    expect(french.values.exact('carbon.grid')).toBe('0.04418');
    expect(french.content.basis).toEqual({ grid: 'FRA' });
    expect(valueOf(openCase(caseText(french))).content).toEqual(french.content);

    const back = valueOf(editStructure(french, { kind: 'set basis', basis: { grid: null } }));
    expect(caseText(back)).toBe(caseText(given));
  });

  it('leaves what else was chosen as it is', () => {
    const first = valueOf(editStructure(given, { kind: 'set basis', basis: { gwp: 'AR6' } }));
    const both = valueOf(editStructure(first, { kind: 'set basis', basis: { climate: 'tropical-dry' } }));

    expect(both.content.basis).toEqual({ gwp: 'AR6', climate: 'tropical-dry' });
    expect(both.values.exact('landfill.gwp')).toBe('27');
    expect(both.values.exact('landfill.k')).toBe('0.045');
  });

  it('refuses a grid that the list does not hold', () => {
    const refused = problemsOf(editStructure(given, { kind: 'set basis', basis: { grid: 'ATLANTIS' } }));

    expect(refused.map(({ kind }) => kind)).toEqual(['unknown reference']);
  });

  it('leaves a factor that somebody wrote in force, until it is given up', () => {
    const coal = valueOf(editStructure(given, { kind: 'set basis', basis: { fuel: 'coal' } }));
    expect(coal.values.exact('carbon.fuel')).toBe('56.1');

    expect(valueOf(restoreDefault(coal, 'carbon.fuel')).values.exact('carbon.fuel')).toBe('94.333');
  });

  it('offers nothing that would be refused, and every name once', () => {
    const { fuels, grids, gwps, climates } = basisChoices();
    const keyed = { fuel: fuels, climate: climates, grid: [grids[0], grids.at(-1)] };
    for (const [what, choices] of Object.entries(keyed))
      for (const choice of choices)
        valueOf(editStructure(given, { kind: 'set basis', basis: { [what]: choice?.key } }));
    for (const gwp of gwps)
      expect(footprint(valueOf(editStructure(given, { kind: 'set basis', basis: { gwp } }))).basis.gwp).toBe(gwp);

    for (const choices of [fuels, climates, grids])
      expect(new Set(choices.map(({ name }) => name)).size).toBe(choices.length);
    expect(fuels.map(({ name }) => name)).toContain('Natural gas');
  });
});
