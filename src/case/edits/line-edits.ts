import type { Case, Line, Route } from '../case.ts';
import { withInputsCopied, withoutInputsOf } from './given-inputs.ts';
import { copyLabel, freshId, idsOf, inserted, moved } from './lists.ts';
import { lineOf, onLine, onRoute } from './parts.ts';

/** A new line joins with no share yet: what it takes, the balancing line gives. */
export function addLine(content: Case, routeId: string, line: Line): Case {
  const route = content.routes.find((each) => each.id === routeId);
  if (route === undefined) return content;
  const id = freshId(line.id, idsOf(route.lines));
  return withShare(
    onRoute(content, routeId, (found) => ({ ...found, lines: [...found.lines, { ...line, id }] })),
    routeId,
    id,
    '0',
  );
}

/** The last line of a route stays. Where the balancing line goes, the first that is left takes its part. */
export function removeLine(content: Case, routeId: string, lineId: string): Case {
  const route = content.routes.find((each) => each.id === routeId);
  const [next] = route?.lines.filter((each) => each.id !== lineId) ?? [];
  if (route === undefined || next === undefined) return content;
  const balance = route.balance === lineId ? next.id : route.balance;
  const left = onRoute(content, routeId, (found) => ({
    ...found,
    balance,
    lines: found.lines.filter((each) => each.id !== lineId),
  }));
  return withoutShare({ ...left, inputs: withoutInputsOf(content.inputs, `${routeId}.${lineId}`) }, routeId, balance);
}

export function duplicateLine(content: Case, routeId: string, lineId: string): Case {
  const original = lineOf(content, routeId, lineId);
  const route = content.routes.find((each) => each.id === routeId);
  if (original === undefined || route === undefined) return content;
  const id = freshId(lineId, idsOf(route.lines));
  const at = route.lines.indexOf(original) + 1;
  const longer = onRoute(content, routeId, (found) => ({
    ...found,
    lines: inserted(found.lines, at, { ...original, id, label: copyLabel(original.label) }),
  }));
  const inputs = withInputsCopied(content.inputs, `${routeId}.${lineId}`, `${routeId}.${id}`);
  return withShare({ ...longer, inputs }, routeId, id, '0');
}

export function moveLine(content: Case, routeId: string, lineId: string, to: number): Case {
  return onRoute(content, routeId, (route) => ({ ...route, lines: moved(route.lines, lineId, to) }));
}

/** Lets another line take what the rest leaves. The one that did so keeps the share it had, which `share` says in per cent. */
export function balanceBy(content: Case, routeId: string, lineId: string, share: string): Case {
  const route = content.routes.find((each) => each.id === routeId);
  if (route === undefined || route.balance === lineId || !route.lines.some((each) => each.id === lineId))
    return content;
  const kept = withShare(content, routeId, route.balance, share);
  return withoutShare(
    onRoute(kept, routeId, (found): Route => ({ ...found, balance: lineId })),
    routeId,
    lineId,
  );
}

/** The first grade of a recipe takes what the others leave, so a new one starts with nothing. */
export function addGrade(content: Case, routeId: string, lineId: string, material: string): Case {
  const line = lineOf(content, routeId, lineId);
  if (line === undefined || line.recipe.some((grade) => grade.material === material)) return content;
  const wider = onLine(content, routeId, lineId, (found) => ({ ...found, recipe: [...found.recipe, { material }] }));
  const id = `${routeId}.${lineId}.grade.${material}.share`;
  return { ...wider, inputs: { ...wider.inputs, [id]: { value: '0', unit: '%' } } };
}

export function removeGrade(content: Case, routeId: string, lineId: string, material: string): Case {
  const line = lineOf(content, routeId, lineId);
  const left = line?.recipe.filter((grade) => grade.material !== material) ?? [];
  const [first] = left;
  if (first === undefined) return content;
  const narrower = onLine(content, routeId, lineId, (found) => ({ ...found, recipe: left }));
  const without = withoutInputsOf(content.inputs, `${routeId}.${lineId}.grade.${material}`);
  return { ...narrower, inputs: withoutInputsOf(without, `${routeId}.${lineId}.grade.${first.material}`) };
}

function withShare(content: Case, routeId: string, lineId: string, value: string): Case {
  return { ...content, inputs: { ...content.inputs, [`${routeId}.${lineId}.share`]: { value, unit: '%' } } };
}

function withoutShare(content: Case, routeId: string, lineId: string): Case {
  return { ...content, inputs: withoutInputsOf(content.inputs, `${routeId}.${lineId}.share`) };
}
