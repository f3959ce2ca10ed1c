import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCase } from '../../src/case/read-case.ts';
import { writeCase } from '../../src/case/write-case.ts';
import { problemsOf, sample } from './sample-case.ts';
import { schemaKeys, spotsOf } from './schema-keys.ts';

const anyValue = fc.oneof(
  fc.constantFrom<unknown>(null, true, 0, -1, 1e308, '', 'constructor', '__proto__', [], {}, [[]], [null], { id: 1 }),
  fc.string({ maxLength: 12 }),
  fc.jsonValue({ maxDepth: 3 }),
);
const edit = fc.oneof(
  fc.record({ kind: fc.constant('delete' as const), where: fc.nat() }),
  fc.record({ kind: fc.constant('retype' as const), where: fc.nat(), value: anyValue }),
  fc.record({ kind: fc.constant('add' as const), where: fc.nat(), name: fc.string({ maxLength: 8 }), value: anyValue }),
  fc.record({ kind: fc.constant('swap' as const), where: fc.nat(), other: fc.nat() }),
);

type Edit = typeof edit extends fc.Arbitrary<infer Value> ? Value : never;

function apply(content: unknown, change: Edit): void {
  const spots = spotsOf(content);
  const spot = spots[change.where % Math.max(1, spots.length)];
  if (spot === undefined) return;
  if (change.kind === 'retype') spot.parent[spot.key] = change.value;
  else if (change.kind === 'add') spot.parent[change.name] = change.value;
  else if (change.kind === 'swap') spot.parent[spot.key] = structuredClone(spots[change.other % spots.length]?.parent);
  else if (Array.isArray(spot.parent)) spot.parent.splice(Number(spot.key), 1);
  // eslint-disable-next-line @typescript-eslint/no-dynamic-delete -- taking away any key is what this test is about
  else delete spot.parent[spot.key];
}

describe('a case file with random damage', () => {
  it('is read or refused, and what is read is a case', () => {
    let read = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 3 }), (edits) => {
        const content = sample();
        for (const change of edits) apply(content, change);
        const text = JSON.stringify(content);
        const outcome = readCase(text);

        if (!outcome.ok) {
          expect(outcome.problems.length).toBeGreaterThan(0);
          return;
        }
        read += 1;
        // Nothing was lost, dropped or turned into something else on the way in, and the way out leads back.
        const { format: _format, version: _version, ...rest } = content;
        expect(outcome.value).toEqual(JSON.parse(JSON.stringify(rest)));
        expect(readCase(writeCase(outcome.value))).toEqual(outcome);
      }),
      { numRuns: 250 },
    );
    // Some edits are harmless (a label, an optional key): a reader that refused everything would not pass.
    expect(read).toBeGreaterThan(0);
  });

  it('is refused after every single deletion, but for what is optional', () => {
    const needed = new Set(schemaKeys.filter(({ isOptional }) => !isOptional).map(({ path }) => path));
    const deleted = new Set<string>();
    spotsOf(sample()).forEach(({ path }, where) => {
      if (!needed.has(path)) return;
      const content = sample();
      apply(content, { kind: 'delete', where });
      const problems = problemsOf(readCase(JSON.stringify(content)));

      expect([path, problems[0]?.kind]).toEqual([path, path === '.format' ? 'not a case' : 'missing']);
      deleted.add(path);
    });
    expect(deleted).toEqual(needed);
  });

  it('is read after every deletion of what is optional', () => {
    const optional = new Set(schemaKeys.filter(({ isOptional }) => isOptional).map(({ path }) => path));
    const deleted = new Set<string>();
    spotsOf(sample()).forEach(({ path }, where) => {
      if (!optional.has(path)) return;
      const content = sample();
      apply(content, { kind: 'delete', where });

      expect([path, problemsOf(readCase(JSON.stringify(content)))]).toEqual([path, []]);
      deleted.add(path);
    });
    expect(deleted).toEqual(optional);
  });

  it('is refused after every value was turned into a number, but for what is one', () => {
    const count = spotsOf(sample()).length;
    for (let where = 0; where < count; where += 1) {
      const content = sample();
      const spot = spotsOf(content)[where];
      if (spot === undefined || spot.key === 'version') continue;
      apply(content, { kind: 'retype', where, value: 7.5 });

      expect([spot.key, readCase(JSON.stringify(content)).ok]).toEqual([spot.key, false]);
    }
  });

  it('never makes the reader throw, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.array(fc.nat(0xffff), { maxLength: 60 }).map((units) => String.fromCharCode(...units)),
          fc.json(),
        ),
        (text) => {
          expect(readCase(text).ok).toBe(false);
        },
      ),
      { numRuns: 300 },
    );
  });
});
