import type { Origin } from '../../case/case.ts';
import { type Quantity, total } from '../../kernel/expression/quantity.ts';
import type { Plant } from '../plant.ts';
import type { Sheet } from '../sheet.ts';

/**
 * ISO 14021: recycled content = stock of pre- and post-consumer lines over (P + A + S), dry, after losses. Own broke never counts, and
 * additives stand in the denominator. Within a line each grade counts by what it brings to the stock, not by what was fed.
 */
export function recycledContent(sheet: Sheet, plant: Plant): void {
  const { route, machine } = plant;
  const where = route.label;
  const of = (origin: Origin): Quantity => total(stockBy(sheet, plant, origin), 'bdt/t');
  const [post, pre] = [of('post-consumer'), of('pre-consumer')];
  const all = total([machine.stock, machine.wetEndAdditives, machine.surfaceAdditives], 'bdt/t');
  const define = (name: string, label: string, part: Quantity, whole: Quantity, note: string): void => {
    sheet.define(`${route.id}.recycled.${name}`, label, '1', part.dividedBy(whole), { where, note, shownIn: '%' });
  };
  define(
    'content',
    'Recycled content',
    post.plus(pre),
    all,
    'Recovered stock over stock and additives (ISO 14021); broke does not count.',
  );
  define('postConsumer', 'Recycled content, post-consumer', post, all, 'Post-consumer stock over stock and additives.');
  define('preConsumer', 'Recycled content, pre-consumer', pre, all, 'Pre-consumer stock over stock and additives.');
  define(
    'fibreOnly',
    'Recovered share of the fibre alone',
    post.plus(pre),
    machine.stock,
    'Recovered stock over all fresh fibre stock; not the recycled content.',
  );
}

/** Stock of one origin from every line, each grade by its own share of the stock. */
function stockBy(sheet: Sheet, { lines }: Plant, origin: Origin): readonly Quantity[] {
  const origins = new Map(sheet.case.materials.map((material) => [material.id, material.origin]));
  return lines.flatMap((line) =>
    line.gradeStock
      .filter((grade) => origins.get(grade.material) === origin)
      .map((grade) => line.stock.times(grade.share)),
  );
}
