import { describe, expect, it } from 'vitest';
import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import type { RouteOutline } from '../../../renderer/engine/route-outline.ts';
import { givenQualities, missingQualities } from '../../../renderer/screens/lines/quality-figures.ts';
import { demonstration } from '../open-demonstration.ts';

function opened(): { readonly desk: EngineDesk; readonly route: () => RouteOutline } {
  const desk = new EngineDesk();
  desk.answer('open', { text: demonstration });
  const route = (): RouteOutline => {
    const found = desk.answer('line', { route: 'virgin', line: 'bskp' }).routes.find(({ id }) => id === 'virgin');
    if (found === undefined) throw new Error('The demonstration has no route "virgin".');
    return found;
  };
  return { desk, route };
}

describe('figures of quality that a route can have', () => {
  it('are all taken by the engine in the unit they are offered in, in any order', () => {
    const { desk, route } = opened();
    const offered = missingQualities(route(), {});

    expect(offered).toHaveLength(3 * 5 + 2 + 4 * 3);
    for (const { id, unit } of offered) {
      const answer = desk.answer('change', { id, typed: `1 ${unit === '1' ? '' : unit}` });
      expect(answer.kind === 'case' ? answer.state.spread.inputs[id]?.unit : answer.sentences.join(), id).toBe(unit);
    }
  });

  it('move from those to be added to those that are given', () => {
    const { desk, route } = opened();
    const answer = desk.answer('change', { id: 'virgin.bskp.brightness', typed: '87' });
    const inputs = answer.kind === 'case' ? answer.state.spread.inputs : {};

    // The other lines are asked for theirs.
    expect(givenQualities(route(), inputs).map(({ label, value }) => [label, value])).toEqual([
      ['Bleached softwood kraft: brightness', '87'],
      ['Bleached hardwood kraft: brightness', ''],
      ['Bleached chemi-thermomechanical: brightness', ''],
    ]);
    expect(missingQualities(route(), inputs).some(({ id }) => id.endsWith('brightness'))).toBe(true);
    expect(missingQualities(route(), inputs).map(({ id }) => id)).not.toContain('virgin.bhkp.brightness');
  });

  it('come back as results of every route, and the choice of service with its route', () => {
    const { desk, route } = opened();
    const { quality } = desk.answer('line', { route: 'virgin', line: 'bskp' });

    expect(quality.map(({ label }) => label)).toContain('Dissolved matter in the water loop');
    expect(route().service).toBe('as given');
  });
});
