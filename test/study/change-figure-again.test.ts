import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type OpenCase, changeInput, openCase, workOut } from '../../src/study/open-case.ts';
import { caseText } from '../../src/study/case-text.ts';
import { Dice } from '../support/dice.ts';

function opened(name: string): OpenCase {
  const read = openCase(readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

// Typing over a figure keeps the model and changes the one figure in it; building the model anew must come to the same.
describe('a figure that was given before and is given again', () => {
  test.each(['demonstration.tonne', 'plan.tonne', 'newsprint.tonne'])(
    'is worked out as in a case built anew: %s',
    (name) => {
      const dice = new Dice(61);
      // A carbon factor is refused without a source, which is another test.
      const given = Object.keys(opened(name).content.inputs).filter((id) => !id.includes('carbon'));
      let open = opened(name);
      for (let edit = 0; edit < 25; edit += 1) {
        const id = dice.pick(given);
        const typed = dice.digits(0.5, 90);
        const changed = changeInput(open, id, typed);
        const anew = workOut({
          ...open.content,
          inputs: { ...open.content.inputs, [id]: { ...open.content.inputs[id]!, value: typed } },
        });

        expect(changed.ok, `${id} = ${typed}`).toBe(anew.ok);
        if (!changed.ok || !anew.ok) {
          expect(changed.ok ? [] : changed.problems).toEqual(anew.ok ? [] : anew.problems);
          continue;
        }
        for (const result of ['difference.total', 'difference.footprint.total', 'difference.withoutPolicy'])
          expect(changed.value.values.exact(result), `${id} = ${typed}: ${result}`).toBe(
            anew.value.values.exact(result),
          );
        expect(changed.value.gaps).toEqual(anew.value.gaps);
        open = changed.value;
      }
      expect(openCase(caseText(open)).ok).toBe(true);
    },
  );

  test('keeps the shape of the calculation: nothing is built anew', () => {
    const open = opened('demonstration.tonne');
    const changed = changeInput(open, 'price.electricity', '0.2');

    expect(changed.ok && changed.value.model.graph.nodes).toBe(open.model.graph.nodes);
  });

  test('of a carbon factor is judged with its source, as the first time', () => {
    const open = opened('demonstration.tonne');

    expect(changeInput(open, 'carbon.fuel', '60')).toMatchObject({ ok: false, problems: [{ kind: 'no source' }] });
  });

  test('in another unit is kept in its own', () => {
    const changed = changeInput(opened('demonstration.tonne'), 'price.electricity', '120 EUR/MWh');

    expect(changed.ok && changed.value.content.inputs['price.electricity']?.value).toBe('0.12');
  });
});
