import { type LineBalance, compare, formatNumber, lineBalance } from '../index.ts';
import { nearest } from '../paper/nearest.ts';
import { figuresTable, textTable } from '../report/text-table.ts';
import { type Console, Refusal } from './console.ts';
import { type SetOptions, openWithSets } from './open-with-sets.ts';

export interface LineOptions extends SetOptions {
  readonly json?: boolean;
}

/** Prints the balance of one line of a route, or of all its lines: every stage, every component, everything that leaves. */
export function showLine(
  console: Console,
  file: string,
  routeId: string,
  lineId: string | undefined,
  options: LineOptions,
): void {
  const open = openWithSets(file, options);
  const route = compare(open).routes.find((each) => each.id === routeId);
  if (route === undefined)
    throw unknown(
      'route',
      routeId,
      open.content.routes.map((each) => each.id),
    );
  const known = open.content.routes.find((each) => each.id === routeId)?.lines.map((each) => each.id) ?? [];
  if (lineId !== undefined && !known.includes(lineId)) throw unknown('line', lineId, known);
  const balances = known
    .filter((id) => lineId === undefined || id === lineId)
    .flatMap((id) => lineBalance(open, routeId, id) ?? []);
  if (options.json === true) console.say(`${JSON.stringify(lineId === undefined ? balances : balances[0], null, 2)}\n`);
  else console.say(`${balances.map((balance) => page(balance, console.locale)).join('\n\n')}\n`);
}

function unknown(what: string, given: string, known: readonly string[]): Refusal {
  const near = nearest(given, known);
  return new Refusal([
    `There is no ${what} "${given}"; ${near.length > 0 ? 'near to it' : 'known'}: ${(near.length > 0 ? near : known).map((id) => `"${id}"`).join(', ')}.`,
  ]);
}

function page(line: LineBalance, locale: string): string {
  const number = (value: number, decimals: number): string => formatNumber(value, { locale, decimals });
  const head = `${line.routeLabel}: ${line.label}\nline yield ${number(line.yield * 100, 2)} %; fibre yield ${number(line.fibreYield * 100, 2)} %; ${fedTo(line, number)}`;
  const stages = line.stages.map((stage) => [
    stage.label,
    number(stage.entersTotal, 2),
    number(stage.leavesTotal, 2),
    number(stage.electricity, 1),
    number(stage.heat, 3),
    stage.streams.map(({ label, mass }) => `${label} ${number(mass, 2)}`).join('; '),
  ]);
  const present = line.fed.filter(
    ({ component, mass }) => mass !== 0 || line.stock.some((each) => each.component === component && each.mass !== 0),
  );
  const masses = present.map(({ component, label, mass }) => [
    label,
    number(mass, 3),
    ...line.stages.map((stage) => number(stage.leaves.find((each) => each.component === component)?.mass ?? 0, 3)),
    number(line.stock.find((each) => each.component === component)?.mass ?? 0, 3),
  ]);
  const balance = figuresTable(
    ['dry kg in 1,000 kg fed', 'fed', ...line.stages.map((stage) => stage.stage), 'stock'],
    masses,
  );
  return [
    head,
    stagesTable(stages),
    `What leaves where\n${balance}`,
    ...line.stages.flatMap((stage) => levelsPage(stage, number)),
  ].join('\n\n');
}

/** A line with a share of nothing is fed nothing, and draws nothing. */
function fedTo({ feed, electricityPerFeed }: LineBalance, number: (value: number, decimals: number) => string): string {
  return feed === 0
    ? 'nothing is fed to it: its share of the stock is 0 %'
    : `${number(feed, 4)} bdt fed per t of product; ${number(electricityPerFeed, 1)} kWh per bdt fed`;
}

function levelsPage(
  stage: LineBalance['stages'][number],
  number: (value: number, decimals: number) => string,
): readonly string[] {
  if (stage.levels.length === 0) return [];
  const rows = stage.levels.map((level) => [
    `stage ${String(level.number)}${level.forward && level.number > 1 ? ', forward' : ''}`,
    number(level.fibreRejected * 100, 2),
    number(level.volumeRejected * 100, 2),
    number(level.acceptConsistency * 100, 2),
    number(level.rejectConsistency * 100, 2),
    ...level.groups.map((group) => number(group.feed, 4)),
  ]);
  const groups = stage.levels[0]?.groups.map((group) => `feed: ${group.label}`) ?? [];
  return [
    `Inside ${stage.label}, gross feed per unit fed to the cascade\n${figuresTable(['', 'fibre rejected, %', 'volume rejected, %', 'accepts, % dry', 'rejects, % dry', ...groups], rows)}`,
  ];
}

function stagesTable(rows: readonly (readonly string[])[]): string {
  const heads = ['stage', 'enters', 'leaves', 'kWh/t', 'GJ/t', 'to'];
  const words = ['stage', 'to'];
  return textTable(
    heads.map((head) => ({ head, holds: words.includes(head) ? 'words' : 'figures' })),
    rows,
  );
}
