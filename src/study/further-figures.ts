import type { FurtherFigure } from '../paper/sheet.ts';
import type { OpenCase } from './open-case.ts';

/** Figures that count for nothing until they are given. Stages take one for every component: those come last, and do not bury the rest. */
export function furtherFigures(open: OpenCase): readonly FurtherFigure[] {
  return [...ofCase(open), ...open.model.further.filter((each) => isOfRoute(open, each))];
}

/** Those that belong beside some figures: of the same material, residue, boiler or kind of price. Those of stages are offered with their stage. */
export function furtherBeside(open: OpenCase, ids: readonly string[]): readonly FurtherFigure[] {
  const places = new Set(ids.filter((id) => id.includes('.')).map((id) => id.slice(0, id.lastIndexOf('.') + 1)));
  return ofCase(open).filter(({ id }) => [...places].some((place) => id.startsWith(place)));
}

function ofCase(open: OpenCase): readonly FurtherFigure[] {
  return open.model.further.filter((each) => !isOfRoute(open, each));
}

function isOfRoute({ content }: OpenCase, { id }: FurtherFigure): boolean {
  return content.routes.some((route) => id.startsWith(`${route.id}.`));
}
