import * as v from 'valibot';
import { given, id, inputId, name, reference, text, textLike } from './schema-text.ts';
import { investmentPlan } from './investment-schema.ts';
import { wasteCodes } from './waste-codes.ts';
import { trustEntries } from './trust-schema.ts';
import { lotsSchema } from './lots-schema.ts';
import { whatIfEntries } from './what-if-schema.ts';

/** The version this program writes. Older ones are migrated; newer ones are refused untouched. */
export const formatVersion = 1;

const currency = textLike(/^[A-Z]{3}$/, 'a currency code of three capital letters');
const nature = v.picklist(['market', 'technical', 'policy']);

const material = v.strictObject({
  id,
  label: name,
  like: v.optional(reference),
  origin: v.picklist(['virgin', 'pre-consumer', 'post-consumer', 'own broke']),
  transport: v.optional(v.picklist(['road', 'rail', 'sea', 'barge'])),
  price: v.strictObject({
    basis: v.picklist(['as received', 'air-dry', 'bone-dry']),
    kind: v.picklist(['list', 'net', 'contract', 'index']),
    currency: v.optional(currency),
    ton: v.optional(v.picklist(['short', 'long'])),
  }),
  settlement: v.picklist(['as weighed', 'dry basis', 'point for point']),
});

const destination = v.strictObject({
  id,
  label: name,
  owned: v.optional(v.boolean()),
  kind: v.picklist(['landfill', 'incineration', 'own boiler', 'spreading', 'sale', 'gate-fee plant']),
});

const stage = v.strictObject({
  id,
  like: reference,
  label: v.optional(name),
  levels: v.optional(v.picklist([1, 2, 3, 4, 5], 'a whole number from 1 to 5')),
  forward: v.optional(v.array(v.picklist([2, 3, 4, 5], 'a whole number from 2 to 5'))),
  law: v.optional(v.picklist(['quotient', 'plug flow'])),
  rejectRateBy: v.optional(v.picklist(['mass', 'volume'])),
  heat: v.optional(v.picklist(['given', 'computed'])),
  steam: v.optional(v.picklist(['indirect', 'direct'])),
  filtrate: v.optional(v.picklist(['clarifier', 'dilution', 'effluent'])),
  power: v.optional(v.picklist(['gross', 'net and no-load'])),
});

const line = v.strictObject({
  id,
  label: name,
  recipe: v.pipe(v.array(v.strictObject({ material: id })), v.minLength(1, 'at least one grade')),
  stages: v.pipe(v.array(stage), v.minLength(1, 'at least one stage'), v.maxLength(60)),
});

const route = v.strictObject({
  id,
  label: name,
  machine: v.optional(reference),
  lines: v.pipe(v.array(line), v.minLength(1, 'at least one line'), v.maxLength(40)),
  balance: id,
  service: v.optional(v.picklist(['as given', 'from strength'])),
  additives: v.array(
    v.strictObject({
      id,
      label: name,
      place: v.picklist(['wet end', 'surface']),
      kind: v.picklist(['mineral', 'organic']),
    }),
  ),
  machineChemicals: v.array(reference),
  water: v.picklist(['fresh water given', 'effluent given']),
  heat: v.picklist(['own boiler', 'bought heat']),
  capital: v.picklist(['annual charge', 'none']),
  charges: v.array(
    v.strictObject({
      id,
      label: name,
      behaviour: v.picklist(['per tonne', 'per hour', 'per year']),
      avoidable: v.boolean(),
      nature,
    }),
  ),
});

/** The whole file. Key order here is the order in which a file is written. */
export const caseSchema = v.strictObject({
  format: v.literal('tonne'),
  version: v.literal(formatVersion),
  title: name,
  note: text(4000),
  currency,
  priceYear: textLike(/^\d{4}$/, 'a year of four digits'),
  product: v.strictObject({ name, machine: reference }),
  materials: v.pipe(v.array(material), v.minLength(1, 'at least one material'), v.maxLength(200)),
  chemicals: v.array(v.strictObject({ id, label: name, endsIn: v.optional(reference) })),
  destinations: v.pipe(v.array(destination), v.minLength(1, 'at least one destination'), v.maxLength(60)),
  residues: v.optional(
    v.array(v.strictObject({ stream: reference, landfillTax: v.picklist(['standard', 'lower', 'exempt']) })),
  ),
  wasteCodes: v.optional(wasteCodes),
  carbonPrice: v.optional(
    v.strictObject({
      ownLandfill: v.optional(v.boolean()),
      power: v.optional(v.boolean()),
      surplus: v.optional(v.boolean()),
      view: v.optional(v.picklist(['cash', 'opportunity'])),
    }),
  ),
  basis: v.optional(
    v.strictObject({
      fuel: v.optional(reference),
      grid: v.optional(reference),
      gwp: v.optional(v.picklist(['AR4', 'AR5', 'AR6'])),
      climate: v.optional(reference),
    }),
  ),
  routes: v.pipe(v.array(route), v.minLength(2, 'at least two routes'), v.maxLength(20)),
  compare: v.strictObject({ base: id, with: id }),
  investment: v.optional(investmentPlan),
  ...whatIfEntries,
  ...trustEntries,
  lots: v.optional(lotsSchema),
  inputs: v.record(inputId, given),
});

export type CaseFile = v.InferOutput<typeof caseSchema>;
