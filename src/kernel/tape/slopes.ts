import { machineWith } from './machine.ts';
import type { Tape } from './tape.ts';

/**
 * Slope of one result by every input, in one sweep forwards and one backwards over the tape. `values` holds inputs and fixed numbers in its
 * first slots; the value of the result is put into its own. Slopes are in the units the graph reckons in; a choice or a limit passes the
 * slope of the branch in force. NaN where the result is no number. They are written into `slopes`, if given.
 */
export function slopesOf(
  tape: Tape,
  values: Float64Array,
  result: number,
  slopes: Float64Array = new Float64Array(tape.inputIds.length),
): Float64Array {
  const machine = machineWith(tape);
  const { rooms } = machine;
  rooms.values.set(values.subarray(0, tape.firstStep));
  machine.run();
  rooms.slopes.fill(0, 0, tape.slots);
  rooms.slopes[result] = 1;
  machine.handBack();
  values[result] = rooms.values[result]!;
  slopes.set(rooms.slopes.subarray(0, tape.inputIds.length));
  return slopes;
}
