import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import { at, caseIn, problemsAfter, problemsOf, sample, sampleText, textOfFile } from './sample-case.ts';

describe('reading a case', () => {
  it('reads the demonstration', () => {
    const found = caseIn(textOfFile('examples/demonstration.tonne'));

    expect(found.routes.map((route) => route.id)).toEqual(['virgin', 'recovered']);
    expect(found.compare).toEqual({ base: 'virgin', with: 'recovered' });
    expect(found.inputs['price.electricity']).toMatchObject({ unit: 'EUR/kWh', status: 'invented' });
  });

  it('keeps figures as the digits that were written', () => {
    const content = sample();
    at(content, 'inputs')['price.electricity'] = {
      value: '0.100000000000000000000000000000000000001',
      unit: 'EUR/kWh',
    };

    expect(caseIn(JSON.stringify(content)).inputs['price.electricity']).toEqual({
      value: '0.100000000000000000000000000000000000001',
      unit: 'EUR/kWh',
    });
  });

  it('leaves out what the file leaves out', () => {
    const found = caseIn(sampleText);

    expect(Object.keys(found.routes[0] ?? {})).not.toContain('machine');
    expect(Object.keys(found.inputs['price.electricity'] ?? {})).toEqual(['value', 'unit']);
  });

  it.each([
    ['with a byte order mark', (text: string) => `\uFEFF${text}`],
    ['with line ends of two characters', (text: string) => text.replaceAll('\n', '\r\n')],
    ['on one line', (text: string) => JSON.stringify(JSON.parse(text))],
    ['with its keys in another order', (text: string) => JSON.stringify(reversed(JSON.parse(text)))],
  ])('reads the same case %s', (_, changed) => {
    expect(readCase(changed(sampleText))).toEqual(readCase(sampleText));
  });
});

describe('text that is not a case', () => {
  it.each([
    ['nothing', ''],
    ['blanks', ' \n\t'],
    ['a byte order mark alone', '\uFEFF'],
    ['prose', 'Dear mill, please find enclosed'],
    ['half a file', sampleText.slice(0, 700)],
    ['a file and a half', `${sampleText}{`],
    ['two-byte text read as bytes', '{"format"'.replace(/./gu, '$&\u0000')],
    ['undecodable bytes', '\uFFFD\uFFFE\u0000\u0001'],
    ['a comment', `// mine\n${sampleText}`],
    ['a trailing comma', sampleText.replace('"version": 1,', '"version": 1,,')],
    ['single quotes', "{'format': 'tonne'}"],
  ])('is refused when it is %s', (_, text) => {
    expect(problemsOf(readCase(text))).toEqual([{ kind: 'not text', detail: expect.any(String) as string }]);
  });

  it.each([
    ['null', 'null'],
    ['"tonne"', '"tonne"'],
    ['12', '12'],
    ['[]', '[]'],
    [`[{"format":"tonne"}]`, '[{"format":"tonne"}]'],
    ['nothing', '{}'],
    ['"ton"', '{"format":"ton","version":1}'],
    ['1', '{"format":1}'],
  ])('says that %s is no format', (given, text) => {
    expect(problemsOf(readCase(text))).toEqual([{ kind: 'not a case', given }]);
  });

  it('does not take an inherited format for one', () => {
    expect(problemsOf(readCase('{"__proto__":{"format":"tonne","version":1}}'))).toEqual([
      { kind: 'not a case', given: 'nothing' },
    ]);
  });
});

describe('the version of a file', () => {
  it.each([2, 3, 1e9])('%d is newer than this program, whatever else is in the file', (version) => {
    expect(problemsOf(readCase(JSON.stringify({ format: 'tonne', version, everything: 'else' })))).toEqual([
      { kind: 'newer version', given: String(version), known: 1 },
    ]);
  });

  it.each([
    ['"2"', '2'],
    ['"1"', '1'],
    ['0', 0],
    ['-1', -1],
    ['1.5', 1.5],
    ['null', null],
    ['true', true],
    ['[1]', [1]],
  ])('%s is no version', (given, version) => {
    expect(problemsAfter((content) => (content['version'] = version))).toEqual([
      { kind: 'wrong form', path: 'version', given, allowed: '1' },
    ]);
  });

  it('beyond all numbers is no version', () => {
    expect(problemsOf(readCase(sampleText.replace('"version": 1', '"version": 1e999')))).toEqual([
      { kind: 'wrong form', path: 'version', given: 'Infinity', allowed: '1' },
    ]);
  });

  it('must be there', () => {
    expect(problemsAfter((content) => delete content['version'])).toEqual([{ kind: 'missing', path: 'version' }]);
  });
});

describe('a hostile file', () => {
  it.each([
    ['lists', '['.repeat(100_000)],
    ['groups', '{"a":'.repeat(100_000)],
    ['lists that end', '['.repeat(100_000) + ']'.repeat(100_000)],
  ])('nested 100,000 deep in %s is refused at once', (_, text) => {
    const start = performance.now();
    expect(problemsOf(readCase(text))).toEqual([{ kind: 'too deep', most: 24 }]);
    expect(performance.now() - start).toBeLessThan(500);
  });

  it('may be nested 24 deep, if it is wrong otherwise', () => {
    const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);

    expect(problemsOf(readCase(nested(24)))).toMatchObject([{ kind: 'not a case' }]);
    expect(problemsOf(readCase(nested(25)))).toEqual([{ kind: 'too deep', most: 24 }]);
  });

  it('may have brackets in its text', () => {
    const note = `${'['.repeat(500)} "quoted \\" ${'{'.repeat(500)}`;

    expect(problemsAfter((content) => (content['note'] = note))).toEqual([]);
  });

  it('of more than five million characters is refused unread', () => {
    const blanks = ' '.repeat(5_000_000 - sampleText.length);

    expect(readCase(sampleText + blanks)).toEqual(readCase(sampleText));
    expect(problemsOf(readCase(`${sampleText}${blanks} `))).toEqual([
      { kind: 'too large', bytes: 5_000_001, most: 5_000_000 },
    ]);
  });

  it('of millions of tiny values is refused before it takes up memory', () => {
    const start = performance.now();
    const outcome = readCase(`{"format":"tonne","version":1,"chemicals":[${'0,'.repeat(1_000_000)}0]}`);

    expect(problemsOf(outcome)).toEqual([
      { kind: 'wrong form', path: '', given: '1000003 values', allowed: 'at most 60000 values' },
    ]);
    expect(performance.now() - start).toBeLessThan(1500);
    expect(problemsOf(readCase(`[${'0,'.repeat(59_999)}0]`))).toMatchObject([{ kind: 'not a case' }]);
  });

  it('of thousands of mistakes is answered with the first thousand', () => {
    const problems = problemsAfter((content) => (content['materials'] = Array.from({ length: 5000 }, () => ({}))));

    expect(problems).toHaveLength(1000);
    expect(problems[0]).toEqual({ kind: 'missing', path: 'materials.0.id' });
  });
});

/** The same JSON with the keys of every group turned around. */
function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [key, reversed(inner)]),
  );
}
