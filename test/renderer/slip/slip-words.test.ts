import { describe, expect, it } from 'vitest';
import { lowerFirst, upperFirst } from '../../../renderer/numbers/letter-case.ts';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { roundingNote, shownAs } from '../../../renderer/screens/slip/rounding-note.ts';
import { shortEquation } from '../../../renderer/screens/slip/short-equation.ts';
import { workingText } from '../../../renderer/screens/slip/working-text.ts';
import { describeInput, usualRange, whereFrom } from '../../../renderer/fields/describe-input.ts';
import { isOutsideUsual } from '../../../renderer/fields/outside-usual.ts';
import type { Explanation, InputView } from '../../../src/index.ts';
import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import { demonstration, demonstrationSpread } from '../open-demonstration.ts';

const numbers = new NumberStyle('en-GB', 'EUR');
const spread = demonstrationSpread();
const input: InputView = {
  id: 'pulp.price',
  label: 'Price',
  where: 'Pulp',
  value: '472',
  unit: 'EUR/adt',
  low: '250',
  high: '1400',
  allowed: {},
  status: 'practice',
  source: 'Common practice, no source',
  note: '',
  touched: false,
  usual: null,
};

function explained(id: string): Explanation {
  const desk = new EngineDesk();
  desk.answer('open', { text: demonstration });
  const [explanation] = desk.answer('explain', { ids: [id] });
  if (!explanation) throw new Error(`Nothing explains ${id}.`);
  return explanation;
}

describe('the words of the slip', () => {
  it('say that a figure was moved by a cent so that its column adds up', () => {
    const explanation = { ...explained('virgin.cost.total'), value: spread.base.total.perTonne + 0.01 };

    expect(roundingNote(spread, explanation, numbers)).toMatch(
      /^Shown as .+ so that the column adds up; by itself it is/,
    );
    expect(roundingNote(spread, explained('virgin.cost.total'), numbers)).toBe('');
  });

  it('show a figure of the ledger as the ledger does, and leave others to the formatter', () => {
    expect(shownAs(spread, spread.base.total.perTonneId)).toBe(spread.base.total.shownPerTonne);
    expect(shownAs(spread, spread.base.total.perYearId)).toBeNull();
    expect(shownAs(spread, 'virgin.bought.bskp')).toBeNull();
  });

  it('name a long sum instead of writing it out, and say nothing twice', () => {
    const names = Array.from({ length: 9 }, (_, place) => `part ${place}`).join(' + ');

    expect(shortEquation({ words: names, numbers: '1 + 2' })).toEqual({ words: 'Sum of 9 figures', numbers: '' });
    expect(shortEquation({ words: 'dry feed', numbers: '0.5' })).toEqual({ words: 'Dry feed', numbers: '' });
    expect(shortEquation({ words: '1 ÷ 0.9', numbers: '1 ÷ 0.9' })).toEqual({ words: '', numbers: '1 ÷ 0.9' });
    expect(shortEquation({ words: 'feed ÷ yield', numbers: '2 ÷ 0.8' })).toEqual({
      words: 'Feed ÷ yield',
      numbers: '2 ÷ 0.8',
    });
  });

  it('tell the usual range and where a figure comes from', () => {
    expect(describeInput(input, numbers)).toBe('Usual 250 to 1,400\u00a0€/adt. Common practice, no source.');
    expect(usualRange({ ...input, low: null }, numbers)).toBe('Usual: at most 1,400\u00a0€/adt.');
    expect(usualRange({ ...input, high: null }, numbers)).toBe('Usual: at least 250\u00a0€/adt.');
    expect(whereFrom({ ...input, status: 'memory', source: 'Pulp index' })).toBe(
      'From memory, not looked up: Pulp index.',
    );
    expect(whereFrom({ ...input, status: 'none', source: '' })).toBe('No source given.');
  });

  it('ask for a second look at a figure outside its usual range only', () => {
    expect(isOutsideUsual(input)).toBe(false);
    expect(isOutsideUsual({ ...input, value: '249.99' })).toBe(true);
    expect(isOutsideUsual({ ...input, value: '1400.01' })).toBe(true);
    expect(isOutsideUsual({ ...input, value: '' })).toBe(false);
  });

  it('put labels into sentences without breaking names in capitals', () => {
    expect(lowerFirst('Pulp price')).toBe('pulp price');
    expect(lowerFirst('COD load')).toBe('COD load');
    expect(upperFirst('dry feed')).toBe('Dry feed');
  });

  it('copy the working as text, with what is unfolded under it', () => {
    const fibre = explained('virgin.cost.fibre.bskp');
    const bought = explained('virgin.bought.bskp');
    const folded = workingText(fibre, { of: () => null, isUnfolded: () => false }, numbers);
    const unfolded = workingText(fibre, { of: () => bought, isUnfolded: (path) => path.endsWith(bought.id) }, numbers);

    expect(folded.split('\n')[0]).toBe('Bleached softwood kraft, Virgin middle ply: 119.43 €/t');
    expect(folded.split('\n').at(-1)).toContain('Full value 119.42');
    expect(folded.split('\n')).toHaveLength(2 + 2 * fibre.ingredients.length + 1);
    expect(unfolded.split('\n').length).toBeGreaterThan(folded.split('\n').length);
  });
});
