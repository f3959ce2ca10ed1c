import type { Bounds, OperationName } from '../expression/operation.ts';
import type { Graph } from '../graph/graph.ts';
import { inForce } from '../graph/input-declaration.ts';
import type { Changes } from './decimal.ts';

/**
 * A graph laid out flat for fast work with ordinary floating-point numbers. A value that cannot be worked out is NaN. Studies work on tapes
 * (kernel/tape); this plain reading of every node is what tapes are held against in tests and timed against in the bench.
 */
export interface FloatProgram {
  /** What each step does; the numbers are those of `codes`. */
  readonly steps: Uint8Array;
  /** Arguments of step i stand at `args[starts[i]] .. args[starts[i + 1] - 1]`; for an input the argument is its place among the inputs. */
  readonly starts: Int32Array;
  readonly args: Int32Array;
  readonly constants: Float64Array;
  readonly bounds: readonly (Bounds | null)[];
  readonly inputPlaces: ReadonlyMap<string, number>;
  readonly inputFactors: Float64Array;
  /** The figures in force, in the units the graph reckons in. */
  readonly inputValues: Float64Array;
}

const codes: { readonly [Name in OperationName]: number } = {
  input: 0,
  constant: 1,
  later: 2,
  same: 2,
  sum: 3,
  subtract: 4,
  multiply: 5,
  divide: 6,
  power: 7,
  lesser: 8,
  greater: 9,
  whenAbove: 10,
  within: 11,
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
    steps: Uint8Array.from(graph.nodes, (node) => codes[node.operation.op]),
    starts: Int32Array.from(starts),
    args: Int32Array.from(flat),
    constants: Float64Array.from(graph.nodes, ({ operation }) =>
      operation.op === 'constant' ? Number(operation.digits) : 0,
    ),
    bounds: graph.nodes.map(({ operation }) => (operation.op === 'within' ? operation.bounds : null)),
    inputPlaces,
    inputFactors: Float64Array.from(graph.inputs, (input) => Number(input.factor)),
    inputValues: Float64Array.from(graph.inputs, (input) => Number(inForce(input) ?? NaN) * Number(input.factor)),
  };
}

/**
 * Works out every quantity. The array that is returned belongs to the caller; pass it back in `values` to use its room again.
 * One plain loop over typed arrays: every position it reads was laid out by `floatProgram`, hence the assertions.
 */
export function evaluateFloat(
  program: FloatProgram,
  changes: Changes = new Map(),
  values: Float64Array = new Float64Array(program.steps.length),
): Float64Array {
  const { steps, starts, args, constants } = program;
  const given = changes.size === 0 ? program.inputValues : changed(program, changes);
  for (let step = 0; step < steps.length; step += 1) {
    const start = starts[step]!;
    switch (steps[step]) {
      case codes.input:
        values[step] = given[args[start]!]!;
        break;
      case codes.constant:
        values[step] = constants[step]!;
        break;
      case codes.same:
        values[step] = values[args[start]!]!;
        break;
      case codes.sum: {
        let sum = 0;
        for (let at = start; at < starts[step + 1]!; at += 1) sum += values[args[at]!]!;
        values[step] = sum;
        break;
      }
      case codes.subtract:
        values[step] = values[args[start]!]! - values[args[start + 1]!]!;
        break;
      case codes.multiply:
        values[step] = values[args[start]!]! * values[args[start + 1]!]!;
        break;
      case codes.divide: {
        const divisor = values[args[start + 1]!]!;
        values[step] = divisor === 0 ? NaN : values[args[start]!]! / divisor;
        break;
      }
      case codes.power:
        values[step] = power(values[args[start]!]!, values[args[start + 1]!]!);
        break;
      case codes.lesser:
        values[step] = Math.min(values[args[start]!]!, values[args[start + 1]!]!);
        break;
      case codes.greater:
        values[step] = Math.max(values[args[start]!]!, values[args[start + 1]!]!);
        break;
      case codes.whenAbove:
        values[step] = chosen(
          values[args[start]!]!,
          values[args[start + 1]!]!,
          values[args[start + 2]!]!,
          values[args[start + 3]!]!,
        );
        break;
      default:
        values[step] = isWithin(values[args[start]!]!, program.bounds[step] ?? {}) ? values[args[start]!]! : NaN;
    }
  }
  return values;
}

function changed(program: FloatProgram, changes: Changes): Float64Array {
  const given = program.inputValues.slice();
  for (const [id, digits] of changes) {
    const place = program.inputPlaces.get(id);
    if (place !== undefined) given[place] = Number(digits) * program.inputFactors[place]!;
  }
  return given;
}

function chosen(value: number, limit: number, above: number, otherwise: number): number {
  if (Number.isNaN(value) || Number.isNaN(limit)) return NaN;
  return value > limit ? above : otherwise;
}

/** Anything to the power 0 is 1 for the machine, even what could not be worked out; here that stays a failure. */
function power(base: number, exponent: number): number {
  const result = Number.isNaN(base) ? NaN : Math.pow(base, exponent);
  return Number.isFinite(result) ? result : NaN;
}

function isWithin(value: number, { least, most, above, below }: Bounds): boolean {
  if (least !== undefined && value < Number(least)) return false;
  if (most !== undefined && value > Number(most)) return false;
  if (above !== undefined && value <= Number(above)) return false;
  return !(below !== undefined && value >= Number(below));
}
