import { type Quantity, constant } from '../../kernel/expression/quantity.ts';
import type { StageEntry } from '../catalogue.ts';
import { plainFigure } from '../figure.ts';
import type { Sheet } from '../sheet.ts';
import { exponentOf } from './plug-flow-exponent.ts';
import { plugFlowRemoval, volumeRejectRate } from './screening-laws.ts';
import type { StagePlace } from './stage-place.ts';

/** One single stage of a cascade. */
export interface Level {
  /** Share of the fibre fed to it that it rejects. */
  readonly rejectRate: Quantity;
  /** Share of the volume fed to it that it rejects. */
  readonly volumeRejectRate: Quantity;
}

const betweenNoneAndAll = { above: '0', below: '100' } as const;

/**
 * The single stages of a cascade. They are alike unless a later one has figures of its own. A reject thicker than pure solids, or more
 * water rejected than fed, is refused: the figures would contradict one another.
 */
export function levelsOf(sheet: Sheet, place: StagePlace, entry: StageEntry): readonly Level[] {
  const count = place.stage.levels ?? Number(entry.cascade?.stages.value ?? '1');
  const common = figuresOf(sheet, place, entry);
  return Array.from({ length: count }, (_, k) => levelOf(sheet, place, common, k + 1));
}

interface Figures {
  readonly rate: Quantity;
  readonly thickening: Quantity;
  readonly consistency: Quantity;
}

function figuresOf(sheet: Sheet, place: StagePlace, entry: StageEntry): Figures {
  const input = (
    name: string,
    label: string,
    figure: NonNullable<StageEntry['cascade']>['rejectRate'],
    allowed: object,
  ): Quantity => sheet.input({ id: `${place.id}.${name}`, label, where: place.where, unit: '1', figure, allowed });
  const byVolume = place.stage.law === 'plug flow' && place.stage.rejectRateBy === 'volume';
  const defaults = entry.cascade;
  return {
    rate: input(
      'rejectRate',
      byVolume ? 'Reject rate by volume, each stage' : 'Reject rate of fibre, each stage',
      defaults?.rejectRate ?? plainFigure('20', '10', '30', '%'),
      betweenNoneAndAll,
    ),
    thickening:
      place.stage.law === 'plug flow'
        ? constant('1')
        : input('thickening', 'Reject thickening factor', defaults?.thickening ?? plainFigure('1.5', '1', '3', '1'), {
            above: '0',
          }),
    consistency: input('consistency', 'Feed consistency', entry.consistency, betweenNoneAndAll),
  };
}

function levelOf(sheet: Sheet, place: StagePlace, common: Figures, k: number): Level {
  const id = `${place.id}.level.${String(k)}`;
  const where = `${place.where}, stage ${String(k)}`;
  const own = (name: string, label: string, otherwise: Quantity, entry: '%' | '1', allowed: object): Quantity => {
    const spec = { id: `${id}.${name}`, label, where, unit: '1', entry, allowed };
    return sheet.has(spec) ? sheet.input(spec) : otherwise;
  };
  const given = own('rejectRate', 'Reject rate', common.rate, '%', betweenNoneAndAll);
  const thickening = own('thickening', 'Reject thickening factor', common.thickening, '1', { above: '0' });
  const consistency = own('consistency', 'Feed consistency', common.consistency, '%', betweenNoneAndAll);
  const rates = ratesOf(sheet, place, given, thickening);
  const define = (name: string, label: string, quantity: Quantity, note: string) =>
    sheet.define(`${id}.${name}`, label, '1', quantity, { where, note, shownIn: '%' });
  const rejectRate = define(
    'fibreRejected',
    'Fibre rejected',
    rates.rejectRate,
    'Share of the fibre fed to this stage.',
  );
  const byVolume = define(
    'volumeRejected',
    'Volume rejected',
    rates.volumeRejectRate.within({ below: '1' }),
    'Share of the volume fed to this stage.',
  );
  const thicker = rejectRate.dividedBy(byVolume);
  define(
    'rejectConsistency',
    'Reject consistency',
    thicker.times(consistency).within({ most: '1' }),
    'Feed consistency times the reject thickening.',
  );
  define(
    'acceptConsistency',
    'Accept consistency',
    consistency.times(rejectRate.complement()).dividedBy(byVolume.complement()),
    'What fibre and volume the reject leaves.',
  );
  return { rejectRate, volumeRejectRate: byVolume };
}

/** Both reject ratios from the one that is given: by the thickening factor, or by the fibre's plug-flow exponent. */
function ratesOf(sheet: Sheet, place: StagePlace, given: Quantity, thickening: Quantity): Level {
  if (place.stage.law !== 'plug flow') return { rejectRate: given, volumeRejectRate: given.dividedBy(thickening) };
  const exponent = exponentOf(sheet, place, 'fibre');
  if (place.stage.rejectRateBy === 'volume')
    return { rejectRate: plugFlowRemoval(given, exponent), volumeRejectRate: given };
  return { rejectRate: given, volumeRejectRate: volumeRejectRate(given, exponent) };
}
