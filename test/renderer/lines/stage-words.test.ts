import { expect, it } from 'vitest';
import { choices } from '../../../renderer/engine/choices.ts';
import { safetyLine } from '../../../renderer/screens/lines/safety-line.ts';
import { byVerb, choiceLabel, wordsOf } from '../../../renderer/screens/lines/stage-words.ts';
import type { InputView } from '../../../src/index.ts';

it('offers every stage of the list once, and no two under one name', () => {
  const offered = byVerb(choices().stages).flatMap(([, stages]) => stages);

  expect(offered).toHaveLength(choices().stages.length);
  expect(new Set(offered.map(choiceLabel)).size).toBe(offered.length);
});

it('has a verb for every stage of the list', () => {
  for (const { kind, label } of choices().stages) expect(wordsOf({ kind, label }).verb).not.toBe('Treat');
});

const dosed = (chemical: string, value: string): InputView[] => [
  { id: `recovered.a.bleach.dose.${chemical}`, value } as InputView,
];

it('warns of caustic where it is dosed, and leaves the decision to local codes', () => {
  expect(safetyLine('flotation cell', dosed('caustic', '5'))).toBe(
    'Caustic soda burns skin and eyes. Local codes and licensed practice decide.',
  );
});

it('says nothing where nothing is dosed and nobody climbs in', () => {
  expect(safetyLine('flotation cell', dosed('caustic', '0'))).toBe('');
});

it('warns of confined spaces at pulpers', () => {
  expect(safetyLine('vat pulper', [])).toContain('confined spaces');
});
