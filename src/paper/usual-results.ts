/** Line yields of recovered lines by machine, per cent, as planned in the trade. Common practice, no source. */
export const usualLineYields: ReadonlyMap<string, { readonly low: number; readonly high: number }> = new Map([
  ['liner', { low: 88, high: 96 }],
  ['newsprint', { low: 80, high: 88 }],
  ['tissue', { low: 55, high: 80 }],
  ['printing', { low: 60, high: 70 }],
  ['board', { low: 88, high: 95 }],
  ['moulded', { low: 88, high: 97 }],
]);

/** Below this a residue does not burn by itself, GJ per wet tonne. Common practice, no source. */
export const selfSustainingFire = 4.5;

/** Specific edge loads that refiners are run at, J/m, from mechanical pulp to long-fibred kraft. Stock preparation slides, rows V12 to V14. */
export const usualEdgeLoad = { low: 0.2, high: 4.2 } as const;

/** A furnish with more than this of wire, or of wet-strength paper, does not suit a drum pulper. Shares of the feed; common practice, no source. */
export const drumBears = { wire: 0.001, wetStrength: 0.02 } as const;
