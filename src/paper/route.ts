import { type Quantity, constant, total } from '../kernel/expression/quantity.ts';
import type { Statement } from './accounts.ts';
import { additiveUses } from './additives.ts';
import { lostPower } from './back-pressure.ts';
import { writeBoughtPower } from './bought-power.ts';
import { carbonLines } from './carbon.ts';
import { certificateLine } from './certificates.ts';
import { chemicalUses, dosesOf, mineralsInto } from './chemicals.ts';
import { effluentOf } from './effluent.ts';
import { electricityUse } from './electricity.ts';
import { energyByUse } from './energy-uses.ts';
import { fibreLines } from './fibre-cost.ts';
import { fixedLines } from './fixed-cost.ts';
import type { HeatSupply } from './heat-supply.ts';
import { type ReportedCause, footprintOf } from './footprint/footprint.ts';
import { residueChoices } from './footprint/residue-choice.ts';
import { wasteSums } from './footprint/waste-sums.ts';
import { measuredSums } from './measured-sums.ts';
import { heatUse } from './heat.ts';
import { loopConcentration } from './loop-concentration.ts';
import { machineEffect } from './machine-effect/machine-effect.ts';
import { ownMillEnergy, ownMillLines } from './own-pulp-mill.ts';
import { tiedUpLines } from './money-tied-up.ts';
import type { Plant } from './plant.ts';
import type { Prices } from './prices.ts';
import { qualityOf } from './quality.ts';
import type { Residue } from './residue.ts';
import { residuePower } from './residue-power.ts';
import { residuesOf } from './residues.ts';
import type { Sheet } from './sheet.ts';
import { type LineSpec, writeStatement } from './statement-writer.ts';
import { waterBalance } from './water.ts';
import { waterLines } from './water-cost.ts';

/** A route worked out: its statement, and what else is reported about it. */
export interface RouteModel {
  readonly plant: Plant;
  readonly statement: Statement;
  readonly residues: readonly Residue[];
  /** Where greenhouse gases come from. */
  readonly causes: readonly ReportedCause[];
}

/** Everything about one tonne by one route, from what the lines and the machine need to the whole cost. */
export function routeModel(sheet: Sheet, plant: Plant, supply: HeatSupply, prices: Prices): RouteModel {
  const { route } = plant;
  const electricity = electricityUse(sheet, plant);
  const heat = heatUse(sheet, plant);
  const additives = additiveUses(sheet, plant);
  const effluent = effluentOf(sheet, plant, additives);
  qualityOf(sheet, plant);
  const doses = dosesOf(sheet, plant);
  const residues = residuesOf(sheet, plant, effluent, heat.total, mineralsInto(sheet, doses));
  const ownMill = ownMillEnergy(sheet, plant, heat.total.minus(residues.heat));
  const heatMade = heat.total.minus(residues.heat).minus(ownMill.heat);
  const pressing = residuePower(sheet, plant, residues.streams);
  const lost = lostPower(sheet, plant, { residues: residues.heat, ownMill: ownMill.heat });
  const polymer = total(
    residues.streams.map((each) => each.polymer),
    'kg/t',
  );
  const chemicals = chemicalUses(sheet, plant, doses, polymer);
  const water = waterBalance(sheet, plant, chemicals, residues);
  loopConcentration(sheet, plant, water, effluent);
  const kgPerTonne = constant('1000', 'kg/bdt');
  const power = (key: string, label: string, use: Quantity): LineSpec => ({
    account: 'electricity',
    key,
    label,
    amount: use.times(prices.electricity),
    driverId: `${route.id}.electricity.${key}`,
    note: 'Electricity used times its price.',
  });
  const warmth = (key: string, label: string, use: Quantity): LineSpec => ({
    account: 'heat',
    key,
    label,
    amount: use.times(supply.price),
    driverId: `${route.id}.heat.${key}`,
    note: 'Heat used times its price.',
  });
  const lines: LineSpec[] = [
    ...fibreLines(sheet, plant),
    power('preparation', 'Preparing stock', electricity.preparation),
    power('refining', 'Refining', electricity.refining),
    power('machine', 'Paper machine', electricity.machine),
    ...(pressing === null ? [] : [power('residues', 'Rejects and sludge', pressing)]),
    ...(lost === null ? [] : [power('backPressure', 'Back-pressure power', lost)]),
    warmth('stock', 'Heating stock', heat.stock),
    warmth('dryers', 'Dryers', heat.dryers),
    warmth('other', 'Other heat', heat.other),
    ...chemicals.map((use): LineSpec => ({
      account: 'chemicals',
      key: use.id,
      label: use.label,
      amount: use.amount.times(use.price),
      driverId: use.priceInput,
    })),
    ...additives.map((use): LineSpec => ({
      account: 'additives',
      key: use.id,
      label: use.label,
      amount: use.amount.times(kgPerTonne).times(use.price),
      driverId: `additive.${use.id}.price`,
    })),
    ...waterLines(sheet, plant, water, effluent, prices),
    ...residues.streams.map((each): LineSpec => ({
      account: 'residues',
      key: each.stream,
      label: each.label,
      amount: each.cost,
      driverId: `${route.id}.residue.${each.stream}.wet`,
      note: 'Wet tonnes times haulage and gate fee of where they go.',
    })),
    {
      account: 'residues',
      key: 'landfillTax',
      label: 'Landfill tax',
      amount: total(
        residues.streams.map((each) => each.tax),
        `${sheet.case.currency}/t`,
      ),
      nature: 'policy',
      note: 'Wet tonnes to landfill times the tax.',
    },
    {
      account: 'credits',
      key: 'sales',
      label: 'Residues sold',
      amount: constant('0', residues.sales.unit).minus(residues.sales),
      note: 'What is sold, as a credit.',
    },
    {
      account: 'credits',
      key: 'energy',
      label: 'Heat from residues',
      amount: constant('0', residues.sales.unit).minus(residues.heat.times(supply.price)),
      driverId: `${route.id}.heat.fromResidues`,
      note: 'Useful heat times the price of the heat it replaces, as a credit.',
    },
    ...ownMillLines(plant, ownMill, { heat: supply.price, electricity: prices.electricity }),
    ...certificateLine(sheet, plant),
    ...carbonLines(sheet, plant, supply, heatMade, residues),
    ...fixedLines(sheet, plant),
    ...tiedUpLines(sheet, plant),
  ];
  const { preparation, refining, machine } = electricity;
  const occasional = [pressing, lost].filter((each) => each !== null);
  const treatment = sheet.graph.later(`${route.id}.electricity.effluent`, 'kWh/t');
  sheet.define(
    `${route.id}.electricity.total`,
    'Electricity needed',
    'kWh/t',
    total([preparation, refining, machine, treatment, ...occasional], 'kWh/t'),
    {
      where: route.label,
      note:
        occasional.length === 0
          ? 'Preparation, refining, machine and effluent treatment.'
          : 'Preparation, refining, machine, effluent treatment, and what else the case has.',
    },
  );
  writeBoughtPower(sheet, plant, ownMill);
  const causes = footprintOf(sheet, plant, { heatMade, residues, chemicals, additives });
  energyByUse(sheet, plant);
  wasteSums(sheet, plant, residues.streams);
  measuredSums(sheet, plant, residues.streams);
  residueChoices(sheet, plant, residues.streams, { heat: supply.price, electricity: prices.electricity });
  return {
    plant,
    causes,
    statement: writeStatement(sheet, plant, [...lines, ...machineEffect(sheet, plant, lines)]),
    residues: residues.streams,
  };
}
