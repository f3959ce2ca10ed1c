import { area, curveBumpX } from 'd3-shape';
import type { Lane, Ribbon } from './flow-layout.ts';

// A stream thinner than this is still drawn: as a hairline.
const hairline = 0.3;

const stream = area<{ readonly x: number; readonly top: number; readonly bottom: number }>()
  .x(({ x }) => x)
  .y0(({ top }) => top)
  .y1(({ bottom }) => bottom);
const bending = area<{ readonly x: number; readonly y: number; readonly width: number }>()
  .x(({ x }) => x)
  .y0(({ y }) => y)
  .y1(({ y, width }) => y + Math.max(width, hairline))
  .curve(curveBumpX);

export function lanePath({ top, points }: Lane): string {
  return stream(points.map(({ x, width }) => ({ x, top, bottom: top + width }))) ?? '';
}

export function ribbonPath({ from, to, width }: Ribbon): string {
  return bending([from, to].map(({ x, y }) => ({ x, y, width }))) ?? '';
}
