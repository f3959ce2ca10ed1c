import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { LineResult } from './line.ts';
import type { Plant } from './plant.ts';
import { limitIdOf, qualityIdOf } from './quality-ids.ts';
import type { Sheet } from './sheet.ts';

/**
 * Brightness of a blend by Kubelka and Munk: K/S = (1 - R)^2 / (2 R) mixes by mass of fresh dry stock, and R = 1 + K/S - sqrt((K/S)^2 + 2 K/S)
 * comes back from it (Kubelka and Munk, Zeitschrift fuer technische Physik 12, 1931, 593-601, from memory). All stocks are taken to scatter
 * alike; broke, fillers and coating are left out. It is there where any line has a brightness, or a limit asks for one.
 */
export function brightnessOf(sheet: Sheet, { route, lines }: Plant): void {
  const isAsked = sheet.isGiven(limitIdOf(route.id, 'brightness'));
  if (!isAsked && !lines.some((line) => sheet.isGiven(idOf(line)))) return;
  const where = route.label;
  const absorption = sheet.define(
    `${route.id}.quality.absorption`,
    'Absorption over scattering of the blend, K/S',
    '1',
    total(
      lines.map((line) => sheet.graph.later(`${line.id}.share`, '1').times(absorptionOf(sheet, route.label, line))),
      '1',
    ),
    { where, note: 'K/S of each line times its share of the dry fresh stock.' },
  );
  const root = absorption
    .times(absorption)
    .plus(absorption.times(constant('2')))
    .toThePower(constant('0.5'));
  sheet.define(
    qualityIdOf(route.id, 'brightness'),
    'Brightness of the stock',
    '1',
    absorption.plus(constant('1')).minus(root),
    {
      where,
      note: 'By Kubelka and Munk from the mixed K/S; all stocks are taken to scatter alike, and broke, fillers and coating are left out.',
      shownIn: '%',
    },
  );
}

function absorptionOf(sheet: Sheet, route: string, line: LineResult): Quantity {
  const where = `${route}, ${line.label}`;
  const brightness = sheet.input({
    id: idOf(line),
    label: 'Brightness of its stock',
    where,
    unit: '1',
    entry: '%',
    allowed: { above: '0', most: '100' },
  });
  const dark = brightness.complement();
  const quotient = dark.times(dark).dividedBy(brightness.times(constant('2')));
  return sheet.define(`${line.id}.absorption`, 'Absorption over scattering of its stock, K/S', '1', quotient, {
    where,
    note: 'What is not reflected, squared, over twice what is.',
  });
}

const idOf = (line: LineResult): string => `${line.id}.brightness`;
