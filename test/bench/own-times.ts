import demonstration from '../../examples/demonstration.tonne?raw';
import { changeInput, explain, openCase, spreadOf } from '../../src/index.ts';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { compileTape } from '../../src/kernel/tape/compile.ts';
import { buildModel } from '../../src/paper/model.ts';
import { Values } from '../../src/study/values.ts';
import { type BenchCase, resultId, uncompiled } from './bench-case.ts';
import { interleaved } from './interleaved.ts';

/** A time of the program's own, in milliseconds, and the longest it should take on a machine of today. */
export interface OwnTime {
  readonly what: string;
  readonly time: number;
  readonly bar?: number;
}

const barOf: Readonly<Record<string, number>> = { 'all figures in decimals': 5, 'all figures in floating point': 0.05 };
const rounds = 21;

/** What the window and the terminal wait for. */
export function ownTimes({ open }: BenchCase): readonly OwnTime[] {
  const { graph } = open.model;
  const program = floatProgram(graph);
  const room = new Float64Array(graph.nodes.length);
  const noChanges = new Map<string, string>();
  const times = interleaved(
    {
      'building the model': () => buildModel(open.content),
      'all figures in decimals': () => evaluateDecimal(graph),
      'all figures in floating point': () => evaluateFloat(program, noChanges, room),
      'compiling a tape': () => compileTape(uncompiled(open).model.graph, [resultId]),
      'reading and opening the file': () => openCase(demonstration),
      'changing one price': () => changeInput(open, 'price.electricity', '0.12'),
      // Values are asked anew each time: otherwise the second spread would find all its decimals ready.
      'the spread': () => spreadOf({ ...open, values: new Values(graph) }),
      'the working of the whole cost': () => explain(open, 'recovered.cost.total'),
    },
    rounds,
  );
  return Object.entries(times).map(([what, time]) => {
    const bar = barOf[what];
    return bar === undefined ? { what, time } : { what, time, bar };
  });
}
