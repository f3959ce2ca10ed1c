/** A figure by which the products of two routes are told apart. */
export interface ProductRow {
  readonly label: string;
  readonly idOf: (routeId: string) => string;
  readonly factor: number;
  readonly decimals: number;
  readonly unit: string;
}

export const productRows: readonly ProductRow[] = [
  { label: 'Ash', idOf: (route) => `${route}.productAsh`, factor: 100, decimals: 1, unit: '%' },
  { label: 'Moisture', idOf: () => 'product.moisture', factor: 100, decimals: 1, unit: '%' },
  {
    label: 'Tonnes for the same service',
    idOf: (route) => `${route}.machine.serviceFactor`,
    factor: 1,
    decimals: 3,
    unit: 't',
  },
  {
    label: 'Fibre and fines in a tonne',
    idOf: (route) => `${route}.product.fibre`,
    factor: 1,
    decimals: 3,
    unit: 'bdt',
  },
];
