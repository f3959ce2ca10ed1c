import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import { writeCase } from '../../src/case/write-case.ts';
import { caseText, compare, openCase, spreadOf } from '../../src/index.ts';
import { checksOf } from '../../src/study/checks.ts';
import { cautionsOf } from '../../src/study/warnings.ts';
import { demonstrationText, valueOf } from './demonstration.ts';

// Tests run from the root of the project.
const folder = 'examples/';
const examples = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.tonne'))
  .sort()
  .map((name) => ({ name, text: readFileSync(`${folder}${name}`, 'utf8') }));

it('there are examples, the demonstration case among them', () => {
  expect(examples.map(({ name }) => name)).toContain('demonstration.tonne');
  expect(examples.find(({ name }) => name === 'demonstration.tonne')?.text).toBe(demonstrationText);
});

describe.each(examples)('the example $name', ({ text }) => {
  const open = valueOf(openCase(text));

  it('has no gap, and every figure can be worked out', () => {
    expect(open.gaps).toEqual([]);
    expect(cautionsOf(open).filter(({ kind }) => kind === 'cannot be worked out')).toEqual([]);
  });

  it('keeps every law', () => {
    expect(checksOf(open).filter(({ kept }) => !kept)).toEqual([]);
  });

  it('stands in the canonical form in which it would be saved', () => {
    expect(writeCase(valueOf(readCase(text)))).toBe(text);
    expect(caseText(open)).toBe(text);
  });

  it('compares two routes that cost something', () => {
    const { routes } = compare(open);

    expect(routes.length).toBeGreaterThanOrEqual(2);
    for (const { id, totals } of routes) expect(totals.costPerTonne, id).toBeGreaterThan(0);
    expect(spreadOf(open).difference.shownPerTonne).not.toBe('');
  });

  it('says of every figure it gives where it comes from', () => {
    for (const [id, { status, source }] of Object.entries(open.content.inputs)) {
      expect(status, id).toBeDefined();
      expect(source ?? '', id).not.toBe('');
    }
  });
});

it('the demonstration names nothing real: every figure it gives is marked as invented', () => {
  const { inputs, note } = valueOf(readCase(demonstrationText));

  expect(Object.keys(inputs).length).toBeGreaterThan(20);
  for (const [id, { status, source }] of Object.entries(inputs)) {
    expect(status, id).toBe('invented');
    expect(source, id).toBe('Demonstration');
  }
  expect(note).toMatch(/invented/u);
});
