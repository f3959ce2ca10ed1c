import type { Lot } from '../../case/lots.ts';
import { freshId } from '../../case/edits/lists.ts';
import { paperGrades } from '../../paper/materials/en-643.ts';
import type { OpenCase } from '../open-case.ts';
import { lotLine } from './lot-line.ts';

/** A lot with nothing said of it but what is usual: the grade nearest to the paper of the line, as received, settled on the dry basis. */
export function newLot(open: OpenCase, label: string): Lot {
  const { content } = open;
  const material = content.materials.find(({ id }) => id === lotLine(open)?.material);
  const grade = [...paperGrades.values()].find(({ like }) => like === material?.like);
  const taken = (content.lots?.offers ?? []).map(({ id }) => id);
  return {
    id: freshId('lot', taken),
    label,
    ...(grade === undefined ? {} : { grade: grade.code }),
    basis: 'as received',
    settlement: 'dry basis',
    delivery: 'ex works',
    figures: {},
  };
}
