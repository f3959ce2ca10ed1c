import type { WorkbookPlan } from '../../../src/index.ts';
import { writeXlsx } from '../../../src/workbook/write-xlsx.ts';
import type { BookWritten } from './messages.ts';

/** Writes one workbook and is done. The library that writes is large, and only this worker loads it. */
addEventListener('message', (event: MessageEvent<WorkbookPlan>) => {
  writeXlsx(event.data).then(
    (bytes) => postMessage({ bytes } satisfies BookWritten, { transfer: [bytes.buffer] }),
    (fault: unknown) =>
      postMessage({ fault: fault instanceof Error ? fault.message : String(fault) } satisfies BookWritten),
  );
});
