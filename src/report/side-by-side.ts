import type { OpenCase } from '../study/open-case.ts';
import { qualityIdOf } from '../paper/quality-ids.ts';
import type { SideBySide } from './spread.ts';

/** What tells two products apart by figures: ash, moisture, tonnes for the same service, and fibre. */
export function sideBySide({ model, values }: OpenCase): readonly SideBySide[] {
  const { baseId, withId } = model.difference;
  const rows: readonly (Omit<SideBySide, 'base' | 'with'> & { readonly idOf: (route: string) => string })[] = [
    { label: 'Ash', unit: '%', decimals: 1, idOf: (route) => qualityIdOf(route, 'ash') },
    { label: 'Moisture', unit: '%', decimals: 1, idOf: () => 'product.moisture' },
    { label: 'Tonnes for the same service', unit: 't', decimals: 3, idOf: (route) => `${route}.machine.serviceFactor` },
    { label: 'Fibre and fines in a tonne', unit: 'bdt', decimals: 3, idOf: (route) => `${route}.fibreInStock` },
  ];
  return rows.map(({ idOf, ...row }) => {
    const side = (id: string) => ({ id, value: values.number(id) * (row.unit === '%' ? 100 : 1) });
    return { ...row, base: side(idOf(baseId)), with: side(idOf(withId)) };
  });
}
