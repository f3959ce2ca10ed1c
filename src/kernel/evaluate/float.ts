import type { Bounds, OperationName } from '../expression/operation.ts';
import type { Graph } from '../graph/graph.ts';
import { inForce } from '../graph/input-declaration.ts';
import type { Changes } from './decimal.ts';

/** A graph laid out flat for fast work with ordinary floating-point numbers. A value that cannot be worked out is NaN. */
export interface FloatProgram {
  readonly codes: Uint8Array;
  /** Arguments of step i stand at `args[starts[i]] .. args[starts[i + 1] - 1]`; for an input the argument is its place among the inputs. */
  readonly starts: Int32Array;
  readonly args: Int32Array;
  readonly constants: Float64Array;
  readonly bounds: readonly (Bounds | null)[];
  readonly inputIds: readonly string[];
  readonly inputFactors: Float64Array;
  readonly inputValues: Float64Array;
}

const codes: { readonly [Name in OperationName]: number } = {
  input: 0, constant: 1, later: 2, same: 2, sum: 3, subtract: 4, multiply: 5, divide: 6, power: 7, lesser: 8, greater: 9, whenAbove: 10, within: 11,
};

/** Lays the graph out once per shape. */
export function floatProgram(graph: Graph): FloatProgram {
  const inputPlaces = new Map(graph.inputs.map((input, place) => [input.id, place]));
  const flat: number[] = [];
  const starts: number[] = [];
  for (const { operation, args } of graph.nodes) {
    starts.push(flat.length);
    if (operation.op === 'input') flat.push(inputPlaces.get(operation.key) ?? -1);
    else flat.push(...args);
  }
  starts.push(flat.length);
  return {
    codes: Uint8Array.from(graph.nodes, (node) => codes[node.operation.op]),
    starts: Int32Array.from(starts),
    args: Int32Array.from(flat),
    constants: Float64Array.from(graph.nodes, ({ operation }) => (operation.op === 'constant' ? Number(operation.digits) : 0)),
    bounds: graph.nodes.map(({ operation }) => (operation.op === 'within' ? operation.bounds : null)),
    inputIds: graph.inputs.map((input) => input.id),
    inputFactors: Float64Array.from(graph.inputs, (input) => Number(input.factor)),
    inputValues: Float64Array.from(graph.inputs, (input) => Number(inForce(input) ?? NaN)),
  };
}

/** Works out every quantity. The array that is returned belongs to the caller; pass it back in `into` to use its room again. */
export function evaluateFloat(program: FloatProgram, changes: Changes = new Map(), into = new Float64Array(program.codes.length)): Float64Array {
  const given = changes.size === 0 ? program.inputValues : program.inputValues.map((value, place) => changedTo(program, place, changes) ?? value);
  for (let step = 0; step < program.codes.length; step += 1) into[step] = result(program, step, given, into);
  return into;
}

function changedTo(program: FloatProgram, place: number, changes: Changes): number | undefined {
  const digits = changes.get(program.inputIds[place] ?? '');
  return digits === undefined ? undefined : Number(digits);
}

function result(program: FloatProgram, step: number, given: Float64Array, values: Float64Array): number {
  const start = program.starts[step] ?? 0;
  const first = program.args[start] ?? 0;
  const a = values[first] ?? NaN;
  const b = values[program.args[start + 1] ?? 0] ?? NaN;
  switch (program.codes[step]) {
    case codes.input:
      return (given[first] ?? NaN) * (program.inputFactors[first] ?? NaN);
    case codes.constant:
      return program.constants[step] ?? NaN;
    case codes.same:
      return a;
    case codes.sum:
      return sum(program, start, program.starts[step + 1] ?? start, values);
    case codes.subtract:
      return a - b;
    case codes.multiply:
      return a * b;
    case codes.divide:
      return b === 0 ? NaN : a / b;
    case codes.power:
      return finite(Math.pow(a, b));
    case codes.lesser:
      return Math.min(a, b);
    case codes.greater:
      return Math.max(a, b);
    case codes.whenAbove:
      return Number.isNaN(a) || Number.isNaN(b) ? NaN : (values[program.args[start + (a > b ? 2 : 3)] ?? 0] ?? NaN);
    default:
      return isWithin(a, program.bounds[step] ?? {}) ? a : NaN;
  }
}

function sum(program: FloatProgram, start: number, end: number, values: Float64Array): number {
  let amount = 0;
  for (let at = start; at < end; at += 1) amount += values[program.args[at] ?? 0] ?? NaN;
  return amount;
}

function finite(value: number): number {
  return Number.isFinite(value) ? value : NaN;
}

function isWithin(value: number, { least, most, above, below }: Bounds): boolean {
  if (least !== undefined && value < Number(least)) return false;
  if (most !== undefined && value > Number(most)) return false;
  if (above !== undefined && value <= Number(above)) return false;
  return !(below !== undefined && value >= Number(below));
}
