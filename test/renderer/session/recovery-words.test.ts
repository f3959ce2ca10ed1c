import { describe, expect, it } from 'vitest';
import { NumberStyle } from '../../../renderer/numbers/number-style.ts';
import { draftDifferences } from '../../../renderer/session/draft-differences.ts';
import { differenceLines, fileSentence } from '../../../renderer/session/recovery-words.ts';
import { demonstration } from '../open-demonstration.ts';

const numbers = new NumberStyle('de-DE', 'EUR');
const changed = (change: (content: Record<string, unknown> & { inputs: Record<string, object> }) => void) => {
  const content = JSON.parse(demonstration) as Record<string, unknown> & { inputs: Record<string, object> };
  change(content);
  return JSON.stringify(content);
};

describe('how a draft differs from its file', () => {
  it('is nothing where both are the same case, however they are written', () => {
    expect(
      draftDifferences(
        demonstration,
        changed(() => undefined),
      ),
    ).toEqual({ figures: [], parts: [] });
  });

  it('is told by figure, with new ones and ones that went, and by part', () => {
    const draft = changed((content) => {
      content['title'] = 'Another';
      content.inputs['material.mixed.price'] = { value: '1137.5', unit: 'EUR/t-ar' };
      content.inputs['price.steam'] = { value: '30', unit: 'EUR/GJ' };
    });
    const differences = draftDifferences(demonstration, draft);

    expect(differences?.parts).toEqual(['title']);
    expect(differences?.figures.map(({ id }) => id)).toContain('price.steam');
    const lines = differenceLines(differences!, (id) => `[${id}]`, numbers);
    expect(lines[0]).toBe('The title');
    expect(lines).toContainEqual(
      expect.stringContaining('[material.mixed.price]: 1.137,5 €/t as received, in the file '),
    );
    expect(lines).toContainEqual(expect.stringContaining('[price.steam]: 30 €/GJ, in the file the default'));
  });

  it('is cut short where it is long, and says by how much', () => {
    const draft = changed((content) => {
      for (const id of Object.keys(content.inputs)) content.inputs[id] = { value: '1', unit: '' };
    });

    const lines = differenceLines(draftDifferences(demonstration, draft)!, (id) => id, numbers);

    expect(lines).toHaveLength(9);
    expect(lines.at(-1)).toMatch(/^\d+ more$/u);
  });

  it.each(['', '[]', 'null', '{"inputs": '])('is not told where the file holds %j, which is no case', (text) => {
    expect(draftDifferences(text, demonstration)).toBeNull();
  });

  it('takes strange names for names', () => {
    const strange = '{"inputs": {"__proto__": {"value": "1", "unit": "x"}, "constructor": 5}}';

    expect(draftDifferences('{"inputs": {}}', strange)?.figures).toEqual([
      { id: '__proto__', before: null, after: '1 x' },
    ]);
  });
});

it('says of each state of the file where a save will go', () => {
  const sentence = (file: 'none' | 'same' | 'newer' | 'changed' | 'gone') =>
    fileSentence({ name: file === 'none' ? null : 'mill.tonne', file });

  expect(sentence('none')).toContain('saving asks for a place');
  expect(sentence('same')).toContain('“mill.tonne” is as it was');
  for (const file of ['newer', 'changed', 'gone'] as const)
    expect(sentence(file)).toContain('that file stays as it is');
});
