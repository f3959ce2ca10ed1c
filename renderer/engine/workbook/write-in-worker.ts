import type { WorkbookPlan } from '../../../src/index.ts';
import type { BookWritten } from './messages.ts';

/** Writes a workbook away from the screen, in a worker that lives as long as that takes. */
export function writeInWorker(plan: WorkbookPlan): Promise<Uint8Array> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  return new Promise<Uint8Array>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<BookWritten>) => {
      if ('fault' in data) reject(new Error(data.fault));
      else resolve(data.bytes);
    });
    worker.addEventListener('error', ({ message }) => reject(new Error(message)));
    worker.postMessage(plan);
  }).finally(() => worker.terminate());
}
