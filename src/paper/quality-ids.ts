/** What the product carries on from its stock, and the limit somebody set for it, if anybody did. */
export const qualities = [
  { id: 'ash', label: 'Ash of the product', limit: 'Ash, at most', sense: 'at most', unit: '%' },
  {
    id: 'dirt',
    label: 'Ink specks over 100 µm in the product',
    limit: 'Ink specks over 100 µm, at most',
    sense: 'at most',
    unit: 'kg/t',
  },
  {
    id: 'macroStickies',
    label: 'Macro-stickies in the product',
    limit: 'Macro-stickies, at most',
    sense: 'at most',
    unit: 'kg/t',
  },
  { id: 'brightness', label: 'Brightness of the stock', limit: 'Brightness, at least', sense: 'at least', unit: '%' },
] as const;

export type QualityId = (typeof qualities)[number]['id'];

export const qualityIdOf = (routeId: string, quality: QualityId): string =>
  quality === 'ash' ? `${routeId}.productAsh` : `${routeId}.product.${quality}`;
export const limitIdOf = (routeId: string, quality: QualityId): string => `${routeId}.limit.${quality}`;
