import demonstration from '../../examples/demonstration.tonne?raw';
import { changeInput, explain, openCase, spreadOf } from '../../src/index.ts';
import { evaluateDecimal } from '../../src/kernel/evaluate/decimal.ts';
import { evaluateFloat, floatProgram } from '../../src/kernel/evaluate/float.ts';
import { buildModel } from '../../src/paper/model.ts';
import { figuresTable } from '../../src/report/text-table.ts';
import { Values } from '../../src/study/values.ts';
import { medianTime } from './median-time.ts';
import { straightLine } from './straight-line.ts';

// Speeds of the engine on the demonstration case. They are reported and never asserted: machines differ, and ratios within one run tell more.
interface Measure {
  readonly name: string;
  readonly call: () => unknown;
  /** The longest it should take, in milliseconds, on a machine of today. */
  readonly bar?: number;
}

const opened = openCase(demonstration);
if (!opened.ok) throw new Error('The demonstration case cannot be opened');
const open = opened.value;
const { graph } = open.model;
const program = floatProgram(graph);
const room = new Float64Array(graph.nodes.length);
const noChanges = new Map<string, string>();
const steps = graph.nodes.filter(({ operation }) => operation.op !== 'input' && operation.op !== 'constant').length;

const measures: readonly Measure[] = [
  { name: 'building the model', call: () => buildModel(open.content) },
  { name: 'all figures in decimals', call: () => evaluateDecimal(graph), bar: 5 },
  { name: 'all figures in floating point', call: () => evaluateFloat(program, noChanges, room), bar: 0.05 },
  { name: 'reading and opening the file', call: () => openCase(demonstration) },
  { name: 'changing one price', call: () => changeInput(open, 'price.electricity', '0.12') },
  // Values are asked anew each time: otherwise the second spread would find all its decimals ready.
  { name: 'the spread', call: () => spreadOf({ ...open, values: new Values(graph) }) },
  { name: 'the working of the whole cost', call: () => explain(open, 'recovered.cost.total') },
];

const handWritten = medianTime(straightLine(steps));
const rows = measures.map(({ name, call, bar }) => {
  const time = medianTime(call);
  return [name, written(time), Math.round(time / handWritten).toLocaleString('en'), verdict(time, bar)];
});

console.log(
  `The demonstration case: ${String(graph.nodes.length)} steps, ${String(steps)} of them arithmetic, ${String(graph.inputs.length)} inputs. Node ${process.version}.\n`,
);
console.log(
  figuresTable(
    ['median time of', 'one call', 'times the loop', 'bar'],
    [[`a loop of ${String(steps)} multiply-adds by hand`, written(handWritten), '1', ''], [], ...rows],
  ),
);

function written(milliseconds: number): string {
  return milliseconds < 0.1 ? `${(milliseconds * 1000).toPrecision(3)} us` : `${milliseconds.toPrecision(3)} ms`;
}

function verdict(time: number, bar: number | undefined): string {
  if (bar === undefined) return '';
  return `${time < bar ? 'under' : 'OVER'} ${written(bar)}`;
}
