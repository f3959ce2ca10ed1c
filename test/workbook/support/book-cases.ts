import newsprintText from '../../../examples/newsprint.tonne?raw';
import planText from '../../../examples/plan.tonne?raw';
import { openCase } from '../../../src/index.ts';
import { type OpenCase, workOut } from '../../../src/study/open-case.ts';
import { demonstration, valueOf } from '../../examples/demonstration.ts';
import { templateCase } from '../../support/template-case.ts';

/** The demonstration cases and every template beside the one it replaces, by name. */
export function bookCases(): readonly (readonly [name: string, open: OpenCase])[] {
  return [
    ['demonstration', demonstration()],
    ['plan', planCase()],
    ['newsprint example', valueOf(openCase(newsprintText))],
    ...pairs.map(([used, base]) => [used, valueOf(workOut(templateCase(used, base)))] as const),
  ];
}

export function planCase(): OpenCase {
  return valueOf(openCase(planText));
}

const pairs = [
  ['testliner', 'kraftliner'],
  ['newsprint', 'newsprint-virgin'],
  ['tissue', 'tissue-virgin'],
  ['printing', 'printing-virgin'],
  ['board-middle', 'board-middle-virgin'],
  ['moulded', 'moulded-virgin'],
] as const;
