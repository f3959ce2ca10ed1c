import { type Quantity, constant, total } from '../../kernel/expression/quantity.ts';
import { carbonFactor } from '../carbon-factors.ts';
import { type Flow, fibrous, massOf } from '../components.ts';
import { type Deposit, methaneOfDeposit, methaneWithin } from '../landfill-decay.ts';
import type { Plant } from '../plant.ts';
import type { Residue } from '../residue.ts';
import type { Sheet } from '../sheet.ts';
import { basisOf } from './basis.ts';
import { factorInput, withDetails } from './factor-input.ts';

/** Methane of what one route sends to landfill, kg CO2 equivalent per tonne of product, over all time. */
export interface LandfillMethane {
  readonly own: Quantity;
  readonly others: Quantity;
  readonly factorIds: readonly string[];
}

const factorIds = ['gwp', 'docf', 'mcf', 'f', 'ox', 'recovered', 'k', 'docFibre', 'docDissolved'].map(
  (name) => `landfill.${name}`,
);

/** Methane of what of some streams is landfilled, the mill's own landfill or another's, over all time. */
export function methaneOf(sheet: Sheet, streams: readonly Residue[]): Quantity {
  const laid = streams.flatMap((stream) =>
    stream.parts
      .filter(({ destination }) => destination.kind === 'landfill')
      .map((part) => degradableCarbon(sheet, stream.composition).times(part.share)),
  );
  return methaneOfCarbon(sheet, total(laid, 'tC/t'));
}

/** kg CO2 equivalent per tonne of product of so much degradable carbon in a landfill, tC/t, over all time. */
export function methaneOfCarbon(sheet: Sheet, carbon: Quantity): Quantity {
  return methaneOfDeposit({ ...decayOf(sheet), mass: constant('1'), carbon }).times(warmingOf(sheet));
}

/** Waste sent to others reports its methane of all time; the first year, 20 and 100 years stand beside it. */
export function landfillMethane(sheet: Sheet, plant: Plant, streams: readonly Residue[]): LandfillMethane {
  const { route } = plant;
  const decay = decayOf(sheet);
  const warming = warmingOf(sheet);
  const deposit = (owned: boolean | null): Deposit => {
    const laid = streams.flatMap((stream) =>
      stream.parts
        .filter(
          ({ destination }) =>
            destination.kind === 'landfill' && (owned === null || (destination.owned === true) === owned),
        )
        .map((part) => degradableCarbon(sheet, stream.composition).times(part.share)),
    );
    return { ...decay, mass: constant('1'), carbon: total(laid, 'tC/t') };
  };
  const define = (name: string, label: string, methane: Quantity, note: string): Quantity =>
    sheet.define(`${route.id}.landfill.${name}`, label, 'kgCO2e/t', methane.times(warming), {
      where: route.label,
      note,
    });
  const all = deposit(null);
  define(
    'methane',
    'Landfill methane, all time',
    methaneOfDeposit(all),
    'What is landfilled for one tonne, until nothing is left to decay.',
  );
  for (const years of ['1', '20', '100']) {
    const label = years === '1' ? 'Landfill methane, first year' : `Landfill methane, ${years} years`;
    define(`methane.${years}`, label, methaneWithin(all, constant(years, 'a')), 'What of all time is let out by then.');
  }
  return {
    own: methaneOfDeposit(deposit(true)).times(warming),
    others: methaneOfDeposit(deposit(false)).times(warming),
    factorIds,
  };
}

function decayOf(sheet: Sheet): Omit<Deposit, 'mass' | 'carbon'> {
  const { climate } = basisOf(sheet.case.basis);
  const share = (name: string, label: string): Quantity =>
    sheet.input({
      id: `landfill.${name}`,
      label,
      unit: '1',
      figure: withDetails(carbonFactor(`landfill.${name}`)),
      allowed: { least: '0', most: '1' },
    });
  const rate = withDetails(carbonFactor(`landfill.k.${climate}`));
  return {
    decomposes: share('docf', 'Degradable carbon that decomposes'),
    withoutAir: share('mcf', 'Methane correction factor'),
    methaneShare: share('f', 'Methane in landfill gas'),
    recovered: share('recovered', 'Landfill gas recovered'),
    oxidised: share('ox', 'Methane oxidised in the cover'),
    rate: sheet.input({
      id: 'landfill.k',
      label: 'Rate of decay',
      unit: '1/a',
      figure: rate,
      allowed: { above: '0', most: '1' },
    }),
  };
}

function warmingOf(sheet: Sheet): Quantity {
  const { gwp } = basisOf(sheet.case.basis);
  const label = `Global warming potential of methane, ${gwp}, 100 years`;
  return factorInput(sheet, 'landfill.gwp', label, carbonFactor(`gwp.${gwp.toLowerCase()}.methane`));
}

/** tC per tonne of product: fibre, fines and wet-strength paper, and dissolved matter; nothing else decays to methane. */
export function degradableCarbon(sheet: Sheet, composition: Flow): Quantity {
  const input = (id: string, label: string, key: string): Quantity => factorInput(sheet, id, label, carbonFactor(key));
  const inFibre = input('landfill.docFibre', 'Degradable carbon of fibre, dry', 'landfill.doc-fibre');
  const inSolution = input(
    'landfill.docDissolved',
    'Degradable carbon of dissolved matter, dry',
    'landfill.doc-dissolved',
  );
  return massOf(composition, fibrous).times(inFibre).plus(composition.dissolved.times(inSolution));
}
