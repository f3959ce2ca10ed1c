import { describe, expect, test } from 'vitest';
import { demonstration } from '../../examples/demonstration.ts';
import { footprint } from '../../../src/index.ts';

const open = demonstration();
const number = (id: string): number => open.values.number(id);

describe('the memo on landfill that recovered paper might else have met', () => {
  const [virgin, recovered] = footprint(open).routes;

  // Source: first-order decay, volume 5 chapter 3 of the IPCC guidelines of 2006 (from memory): DOC x DOCf x MCF x F x 16/12 x (1 - R)(1 - OX) x GWP.
  // Of bone-dry paper, fibre, fines and wet-strength paper hold degradable carbon, and dissolved matter a little less.
  test('is degradable carbon bought times 16/12 and the fractions of the landfill, by hand', () => {
    const share = (material: string, part: string): number => {
      const id = `material.${material}.${part}`;
      return open.values.has(id) ? number(id) : 0;
    };
    const carbon = ['supermarket', 'mixed'].map((material) => {
      const fibrous = ['fibre', 'fines', 'wetStrength'].reduce((sum, part) => sum + share(material, part), 0);
      const held =
        fibrous * number('landfill.docFibre') + share(material, 'dissolved') * number('landfill.docDissolved');
      return number(`recovered.bought.${material}`) * held;
    });
    const degradable = carbon.reduce((sum, each) => sum + each, 0);
    const methane =
      degradable *
      1000 *
      number('landfill.docf') *
      number('landfill.mcf') *
      number('landfill.f') *
      (16 / 12) *
      (1 - number('landfill.recovered')) *
      (1 - number('landfill.ox'));

    expect(recovered?.avoidedLandfill.amount).toBeCloseTo(methane * number('landfill.gwp'), 6);
    expect(methane).toBeGreaterThan(0);
  });

  test('is nothing where no recovered paper is bought', () => {
    expect(virgin?.avoidedLandfill.amount).toBe(0);
  });

  test('stands in no sum', () => {
    const causes = recovered?.causes.reduce((sum, { amount }) => sum + amount, 0);

    expect(causes).toBeCloseTo(recovered?.total ?? NaN, 9);
    expect(recovered?.causes.map(({ quantityId }) => quantityId)).not.toContain(recovered?.avoidedLandfill.quantityId);
  });
});
