import type { EventEmitter } from 'node:events';

/** Whoever reads may have seen enough ("| head"): then there is nobody left to tell, and the program ends without a complaint. */
export function endWithReader(output: EventEmitter, end: () => void): void {
  output.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code !== 'EPIPE') throw fault;
    end();
  });
}
