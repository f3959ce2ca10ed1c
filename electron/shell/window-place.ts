import * as v from 'valibot';

export interface Bounds {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where the window last stood; null before it was ever closed. */
export interface WindowPlace {
  readonly bounds: Bounds | null;
  readonly isMaximized: boolean;
}

const whole = v.pipe(v.number(), v.safeInteger());

export const windowPlaceSchema = v.strictObject({
  bounds: v.nullable(v.strictObject({ x: whole, y: whole, width: whole, height: whole })),
  isMaximized: v.boolean(),
});

export const usualPlace: WindowPlace = { bounds: null, isMaximized: false };
