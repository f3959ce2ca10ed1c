import { backwardIn } from './backward.ts';
import { forwardIn } from './forward.ts';
import { type Rooms, makeRooms } from './rooms.ts';
import type { Tape } from './tape.ts';

/** Works a tape that is laid into its rooms: put inputs and fixed numbers into `rooms.values`, run, and take the values out. */
export interface Machine {
  readonly rooms: Rooms;
  lay(tape: Tape): void;
  run(): void;
  /** Hands the slopes in `rooms.slopes` back from the last step to the inputs. The tape must have been run. */
  handBack(): void;
}

/** Room for most cases; a larger tape gets a larger machine. Rooms that nothing was put into take no memory. */
const usualSize = 2 ** 16;

let machine = makeMachine(usualSize);

/** The machine with a tape in it. */
export function machineWith(tape: Tape): Machine {
  if (tape.slots > machine.rooms.size) machine = makeMachine(2 * tape.slots);
  machine.lay(tape);
  return machine;
}

function makeMachine(size: number): Machine {
  const rooms = makeRooms(size);
  const forward = forwardIn(rooms);
  const backward = backwardIn(rooms);
  const { codes, ends } = rooms;
  let laid: Tape | null = null;
  let stretches = 0;
  let firstStep = 0;

  return {
    rooms,
    lay(tape) {
      if (tape === laid) return;
      rooms.codes.set(tape.codes);
      rooms.first.set(tape.first);
      rooms.second.set(tape.second);
      rooms.third.set(tape.third);
      rooms.fourth.set(tape.fourth);
      rooms.ends.set(tape.ends);
      stretches = tape.ends.length;
      firstStep = tape.firstStep;
      laid = tape;
    },
    run() {
      let from = 0;
      for (let stretch = 0; stretch < stretches; stretch += 1) {
        const end = ends[stretch]!;
        forward(codes[from]!, from, end, firstStep);
        from = end;
      }
    },
    handBack() {
      for (let stretch = stretches - 1; stretch >= 0; stretch -= 1) {
        const from = stretch === 0 ? 0 : ends[stretch - 1]!;
        backward(codes[from]!, from, ends[stretch]!, firstStep);
      }
    },
  };
}
