import { beforeEach, describe, expect, it } from 'vitest';
import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import type { CaseAnswer } from '../../../renderer/engine/messages.ts';
import { optionsOf } from '../../../renderer/screens/lines/stage-choices.ts';
import { missingFigures } from '../../../renderer/screens/lines/missing-figures.ts';
import type { Edit, InputView, StageBalance, StageOptions } from '../../../src/index.ts';

/** A line for white printing paper, which has a stage of every kind that has a choice of its own. */
const desk = new EngineDesk();
const started = desk.answer('start', {
  title: 'White',
  virgin: 'printing-virgin',
  recovered: 'printing',
  tonnesPerYear: '90000',
  currency: 'EUR',
  priceYear: '2024',
});
const [, recovered] = desk.answer('line', { route: '', line: '' }).routes;
const lineId = recovered?.lines[0]?.id ?? '';
const places = (recovered?.lines[0]?.stages ?? []).map((_, place) => place);

const text = started.kind === 'case' ? started.state.text : '';
let now: CaseAnswer;

beforeEach(() => {
  now = desk.answer('open', { text });
});

interface Looked {
  readonly stage: StageBalance;
  readonly inputs: readonly InputView[];
  readonly options: ReturnType<typeof optionsOf>;
}

function look(place: number, answer: CaseAnswer): Looked {
  const { balance, routes } = desk.answer('line', { route: 'recovered', line: lineId });
  const stage = balance?.stages[place];
  const setUp = routes.find(({ id }) => id === 'recovered')?.lines[0]?.stages[place];
  if (stage === undefined || setUp === undefined || answer.kind === 'refused')
    throw new Error('There is no such stage.');
  const inputs = Object.values(answer.state.spread.inputs).filter(({ id }) => id.startsWith(`${stage.id}.`));
  return { stage, inputs, options: optionsOf(stage, setUp, inputs) };
}

describe('every choice that a stage offers', () => {
  const offered = places.flatMap((place) =>
    look(place, started).options.flatMap((option) =>
      option.answers.map(({ value, options }) => ({ place, key: option.key, value, options })),
    ),
  );

  it('covers single stages, their accepts, the law, the heat, the filtrate', () => {
    const keys = new Set(offered.map(({ key }) => key));

    for (const key of ['levels', 'forward 2', 'law', 'heat', 'steam', 'filtrate']) expect(keys).toContain(key);
  });

  it.each(offered)(
    'is taken by the engine and then shown: stage $place, $key, $value',
    ({ place, key, value, options }) => {
      const { stage } = look(place, now).stage;
      const edit: Edit = {
        kind: 'set up stage',
        route: 'recovered',
        line: lineId,
        stage,
        options: options satisfies StageOptions,
      };
      now = desk.answer('structure', { edit });
      expect(now.kind).toBe('case');

      const after = look(place, now).options.find((option) => option.key === key);
      expect(after?.value).toBe(value);
    },
  );
});

describe('a figure for a component that has none', () => {
  it.each(places)('can be given wherever stage %d offers it', (place) => {
    const { stage, inputs } = look(place, now);
    // One component that follows the water, one that follows the fibre, and what is no component.
    const missing = missingFigures(stage, inputs).filter(({ id }) => /ash|wetStrength|heat/u.test(id));

    expect(missing.length).toBeGreaterThan(0);
    for (const { id: input } of missing) {
      const answer = desk.answer('change', { id: input, typed: '0.01' });
      if (answer.kind === 'refused') throw new Error(answer.sentences.join(' '));
      expect(answer.state.spread.inputs[input]?.value).toBe('0.01');
      desk.answer('open', { text });
    }
  });

  it('is no longer offered by a second law once one is written', () => {
    const place = 2;
    const { stage } = look(place, now);
    now = desk.answer('change', { id: `${stage.id}.quotient.ash`, typed: '0.2' });
    const after = look(place, now);

    expect(missingFigures(after.stage, after.inputs).filter((figure) => figure.id.endsWith('.ash'))).toEqual([]);
  });
});
