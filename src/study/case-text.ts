import { writeCase } from '../case/write-case.ts';
import type { OpenCase } from './open-case.ts';

/** The canonical text of an open case, to be saved. */
export function caseText(open: OpenCase): string {
  return writeCase(open.content);
}
