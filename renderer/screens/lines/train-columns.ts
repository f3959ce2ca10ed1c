import type { FlowSize } from './flow-scale.ts';

/** Widths of the columns of a train, in pixels; the picture, the heads and the table share them. */
export interface TrainColumns {
  readonly names: number;
  readonly stage: number;
  readonly end: number;
  readonly whole: number;
}

// Narrower than this the name of a stage no longer fits; the train then scrolls sideways.
const narrowestStage = 118;
const narrowestWideStage = 136;
const wideWindow = 1700;

export function columnsFor(room: number, stages: number, windowWidth: number): TrainColumns {
  const isWide = windowWidth >= wideWindow;
  const names = isWide ? 190 : 158;
  const end = isWide ? 118 : 92;
  const stage = Math.max(
    Math.floor((room - names - end) / Math.max(stages, 1)),
    isWide ? narrowestWideStage : narrowestStage,
  );
  return { names, stage, end, whole: names + stage * stages + end };
}

export function sizeFor(column: number, windowWidth: number): FlowSize {
  return windowWidth >= wideWindow
    ? { column, bulk: 74, dirt: 130, line: 17, gap: 5 }
    : { column, bulk: 46, dirt: 84, line: 14, gap: 2 };
}
