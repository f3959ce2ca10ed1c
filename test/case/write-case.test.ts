import { describe, expect, it } from 'vitest';
import type { Case } from '../../src/case/case.ts';
import { writeCase } from '../../src/case/write-case.ts';
import { caseIn, sampleText, textOfFile } from './sample-case.ts';

const texts = [
  ['the sample', sampleText],
  ['the demonstration', textOfFile('examples/demonstration.tonne')],
] as const;

function withInputs(inputs: Case['inputs']): Case {
  return { ...caseIn(sampleText), inputs };
}

describe('writing a case', () => {
  it.each(texts)('loses nothing of %s', (_, text) => {
    expect(caseIn(writeCase(caseIn(text)))).toEqual(caseIn(text));
  });

  it.each(texts)('is stable for %s: what was written is written again', (_, text) => {
    const once = writeCase(caseIn(text));

    expect(writeCase(caseIn(once))).toBe(once);
  });

  it('sorts the inputs and gives each a line', () => {
    const found = caseIn(texts[1][1]);
    const lines = writeCase(found)
      .split('\n')
      .filter((line) => line.startsWith('    "') && line.includes('{"value":'));

    const ids = lines.map((line) => line.slice(5, line.indexOf('"', 5)));
    expect(ids).toEqual(Object.keys(found.inputs).sort());
    expect(lines[0]).toMatch(/^ {4}"[^"]+": \{"value":"[^"]+","unit":"[^"]+","status":"[^"]+","source":"[^"]+"\},$/);
  });

  it('does not depend on the order in which keys were set', () => {
    const found = caseIn(sampleText);
    const shuffled = JSON.parse(JSON.stringify(found, Object.keys(flatKeys(found)).sort())) as Case;

    expect(JSON.stringify(shuffled)).not.toBe(JSON.stringify(found));
    expect(writeCase(shuffled)).toBe(writeCase(found));
  });

  it('leaves out keys that are set to nothing', () => {
    const found = caseIn(sampleText);
    const [first, ...rest] = found.materials;
    const text = writeCase({ ...found, materials: [{ ...first, like: undefined } as never, ...rest] });

    expect(text).not.toContain('"like": "ukp"');
    expect(caseIn(text).materials[0]).not.toHaveProperty('like');
  });

  it('differs in one line where two cases differ in one figure', () => {
    const found = caseIn(sampleText);
    const other = { ...found, inputs: { ...found.inputs, 'price.heat': { value: '17', unit: 'EUR/GJ' } } };
    const [before, after] = [writeCase(found).split('\n'), writeCase(other).split('\n')];

    expect(after).toHaveLength(before.length);
    expect(after.filter((line, place) => line !== before[place])).toEqual([
      '    "price.heat": {"value":"17","unit":"EUR/GJ"},',
    ]);
  });

  it('adds one line for one more figure in the middle', () => {
    const found = caseIn(sampleText);
    const other = { ...found, inputs: { ...found.inputs, 'price.fuel': { value: '12', unit: 'EUR/GJ' } } };
    const before = new Set(writeCase(found).split('\n'));

    expect(
      writeCase(other)
        .split('\n')
        .filter((line) => !before.has(line)),
    ).toEqual(['    "price.fuel": {"value":"12","unit":"EUR/GJ"},']);
  });

  it('writes a case without figures', () => {
    const text = writeCase(withInputs({}));

    expect(text.endsWith('"inputs": {}\n}\n')).toBe(true);
    expect(caseIn(text).inputs).toEqual({});
  });

  it.each(['US$$ 5', '$&', "$'", '$1', '$<name>', '\\', '"', '\u2028', '"inputs": {}\n}', 'ends }', '𝄞', '\uD834'])(
    'keeps the text %j in sources, notes and labels',
    (words) => {
      const found = withInputs({ 'price.heat': { value: '16', unit: 'EUR/GJ', source: words } });
      const noted: Case = { ...found, note: words, title: words };

      expect(caseIn(writeCase(noted))).toEqual(noted);
      expect(caseIn(writeCase({ ...noted, inputs: {} }))).toEqual({ ...noted, inputs: {} });
    },
  );

  it('begins with what the file is, and ends with a line end', () => {
    expect(writeCase(caseIn(sampleText))).toMatch(/^\{\n {2}"format": "tonne",\n {2}"version": 1,\n {2}"title": /);
    expect(writeCase(caseIn(sampleText))).toMatch(/\n\}\n$/);
  });
});

/** Every key that occurs anywhere, so that JSON.stringify can be told an order for all of them. */
function flatKeys(value: unknown): Record<string, true> {
  if (typeof value !== 'object' || value === null) return {};
  return Object.entries(value).reduce<Record<string, true>>(
    (keys, [key, inner]) => ({ ...keys, [key]: true, ...flatKeys(inner) }),
    {},
  );
}
