import { demonstration } from '../../examples/demonstration.ts';
import type { OpenCase } from '../../../src/study/open-case.ts';

/** The demonstration without lots of its own. */
export function openDemonstration(): OpenCase {
  const open = demonstration();
  const { lots: _lots, ...content } = open.content;
  return { ...open, content };
}
