import type { Case, Line, Route } from '../../case/case.ts';
import { kindOfLines } from '../../case/route-kind.ts';
import { compileTape } from '../../kernel/tape/compile.ts';
import { runTape } from '../../kernel/tape/run.ts';
import { freshSlots, resultSlot } from '../../kernel/tape/tape.ts';
import { buildModel } from '../../paper/model.ts';
import type { OpenCase } from '../open-case.ts';
import { onlyRoute } from './lot-case.ts';
import { type LotLine, largestLine } from './lot-line.ts';

/** The lot's share of the furnish made from virgin pulp instead. */
export interface VirginInstead {
  readonly label: string;
  /** Whether it is the whole base route, which only a furnish of one line may be held against. */
  readonly isWholeRoute: boolean;
  /** Cost of a tonne of product. */
  readonly cost: number;
  /** kgCO2e per tonne of product. */
  readonly carbon: number;
}

/**
 * What a tonne costs with virgin pulp in the lot's share: that of the line of the same route that gives way when a
 * share moves, else of the base route, with its own train. A line that is the whole furnish of its route is held against the whole virgin route, machine and all. Null where there
 * is no virgin line.
 */
export function virginInstead(open: OpenCase, place: LotLine): VirginInstead | null {
  const { content, values } = open;
  const base = content.routes.find(({ id }) => id === content.compare.base);
  if (place.route.lines.length === 1 && base !== undefined && base.id !== place.route.id && isVirgin(content, base)) {
    const [cost, carbon] = [values.number(`${base.id}.cost.total`), values.number(`${base.id}.footprint.total`)];
    return { label: base.label, isWholeRoute: true, cost, carbon };
  }
  for (const route of [place.route, ...(base === undefined ? [] : [base]), ...content.routes]) {
    const line = virginLine(open, route);
    if (line !== null) return inSameShare(content, place, route, line);
  }
  return null;
}

/** The balancing line where it is virgin, since it gives way when another share moves; else the largest virgin line. */
function virginLine(open: OpenCase, route: Route): Line | null {
  const balance = route.lines.find(({ id }) => id === route.balance);
  const gives = balance !== undefined && kindOfLines([balance], open.content.materials) === 'virgin';
  return gives ? balance : largestLine(open, route, 'virgin');
}

function isVirgin(content: Case, route: Route): boolean {
  return kindOfLines(route.lines, content.materials) === 'virgin';
}

function inSameShare(content: Case, place: LotLine, route: Route, virgin: Line): VirginInstead {
  const { graph } = buildModel(onlyRoute(withLine(content, place, route, virgin), place.route.id));
  const ids = [`${place.route.id}.cost.total`, `${place.route.id}.footprint.total`] as const;
  const tape = compileTape(graph, ids);
  const slots = freshSlots(tape);
  runTape(tape, slots);
  const [cost = NaN, carbon = NaN] = ids.map((id) => slots[resultSlot(tape, id)] ?? NaN);
  return { label: virgin.label, isWholeRoute: false, cost, carbon };
}

/** The train and the recipe of the virgin line, with its figures, under the name and in the share of the lot's line. */
function withLine(content: Case, place: LotLine, from: Route, virgin: Line): Case {
  const own = `${place.route.id}.${place.line.id}.`;
  const theirs = `${from.id}.${virgin.id}.`;
  const kept = Object.entries(content.inputs).filter(([id]) => !id.startsWith(own) || id === `${own}share`);
  const taken = Object.entries(content.inputs)
    .filter(([id]) => id.startsWith(theirs) && id !== `${theirs}share`)
    .map(([id, given]) => [`${own}${id.slice(theirs.length)}`, given] as const);
  const line: Line = { ...virgin, id: place.line.id };
  return {
    ...content,
    routes: content.routes.map((route) =>
      route.id !== place.route.id
        ? route
        : { ...route, lines: route.lines.map((each) => (each.id === line.id ? line : each)) },
    ),
    inputs: Object.fromEntries([...kept, ...taken]),
  };
}
