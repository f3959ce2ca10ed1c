import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import { findRepeatedKeys } from '../../src/case/repeated-keys.ts';
import { problemsOf, sampleText } from './sample-case.ts';

describe('a key that stands twice in one group', () => {
  it('is told rather than decided by chance', () => {
    const text = sampleText.replace(
      '\n  "inputs": {',
      '\n  "inputs": {\n"price.heat": {"value":"20","unit":"EUR/GJ"},',
    );

    expect(problemsOf(readCase(text))).toEqual([{ kind: 'said twice', path: 'inputs', given: 'price.heat' }]);
  });

  it.each([
    ['at the top', '{"a":1,"b":2,"a":3}', '', 'a'],
    ['in a group in a list', '{"list":[1,{"x":0},{"x":1,"y":[{}],"x":2}]}', 'list.2', 'x'],
    ['in the first group of a list', '[{"x":1,"x":2}]', '0', 'x'],
    ['spelt with an escape', '{"price":1,"\\u0070rice":2}', '', 'price'],
    ['with a quotation mark in it', '{"a\\"b":1,"a\\"b":2}', '', 'a"b'],
    ['with a meaning to JavaScript', '{"__proto__":1,"__proto__":2}', '', '__proto__'],
    ['inside a group of its own name', '{"a":{"a":{"b":1,"b":2}}}', 'a.a', 'b'],
  ])('is found %s', (_, text, path, given) => {
    expect(findRepeatedKeys(text)).toEqual([{ kind: 'said twice', path, given }]);
  });

  it.each([
    '{"a":"a","b":"a,\\"a\\":"}',
    '[{"a":1},{"a":1}]',
    '{"a":{"a":1},"b":{"a":1}}',
    '{"a":["a","a"],"b":"{\\"a\\":1,\\"a\\":2}"}',
    '{"a":"ends with a backslash \\\\","b":1}',
    '"a"',
    '{}',
    '[]',
    '12',
  ])('is not seen in %s', (text) => {
    expect(() => JSON.parse(text) as unknown).not.toThrow();
    expect(findRepeatedKeys(text)).toEqual([]);
  });
});
