import type { EventEmitter } from 'node:events';

/** Emits an event whose listeners may call preventDefault, and says whether one did. */
export function isPrevented(emitter: EventEmitter, name: string, details: object = {}): boolean {
  let prevented = false;
  const event = {
    ...details,
    preventDefault: () => {
      prevented = true;
    },
  };
  emitter.emit(name, event);
  return prevented;
}
