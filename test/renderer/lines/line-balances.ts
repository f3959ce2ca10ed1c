import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import type { InputView, LineBalance } from '../../../src/index.ts';
import { demonstration } from '../open-demonstration.ts';

export interface BalancedLine {
  readonly name: string;
  readonly balance: LineBalance;
  readonly inputs: Readonly<Record<string, InputView>>;
}

/** Lines of 4, 8, 13 and 17 stages: those of the demonstration, and of new cases for newsprint and for white printing paper. */
export function someLines(): readonly BalancedLine[] {
  const start = (recovered: string): EngineDesk => {
    const desk = new EngineDesk();
    const virgin = `${recovered}-virgin`;
    const wanted = { title: recovered, tonnesPerYear: '100000', currency: 'EUR', priceYear: '2024' };
    desk.answer('start', { ...wanted, virgin, recovered });
    return desk;
  };
  const opened = new EngineDesk();
  opened.answer('open', { text: demonstration });
  return [
    ...linesOf(opened, 'demonstration'),
    ...linesOf(start('newsprint'), 'newsprint'),
    ...linesOf(start('printing'), 'printing'),
  ];
}

function linesOf(desk: EngineDesk, name: string): readonly BalancedLine[] {
  // Answers the case again without changing it, with all its inputs.
  const state = desk.answer('restore', { id: 'nothing' });
  if (state.kind === 'refused') throw new Error(state.sentences.join(' '));
  const { inputs } = state.state.spread;
  const { routes } = desk.answer('line', { route: '', line: '' });
  return routes.flatMap((route) =>
    route.lines.flatMap((line) => {
      const { balance } = desk.answer('line', { route: route.id, line: line.id });
      return balance === null ? [] : [{ name: `${name}, ${route.id}, ${line.id}`, balance, inputs }];
    }),
  );
}
