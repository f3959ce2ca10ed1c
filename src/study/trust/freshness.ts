import { isLonger, monthsBetween, partsOf } from '../../case/day.ts';
import { type InputDeclaration, inForce } from '../../kernel/graph/input-declaration.ts';
import { besideInventory, factOf, isCarbonFactor } from '../../paper/footprint/carbon-inputs.ts';
import { timeless } from '../claim-cautions.ts';
import type { OpenCase } from '../open-case.ts';

/** What grows old at its own pace. */
export type DatedKind =
  | 'pulp'
  | 'recovered paper'
  | 'power'
  | 'fuel and heat'
  | 'carbon price'
  | 'exchange rate'
  | 'tax or fee'
  | 'emission factor';

/** "amber": look it up again; "red": nothing should rest on it; "ahead": dated after today. */
export type Freshness = 'in date' | 'amber' | 'red' | 'ahead' | 'no date';

/** A price or factor in force, and how old it is. */
export interface DatedInput {
  readonly id: string;
  readonly label: string;
  readonly where: string;
  readonly kind: DatedKind;
  /** A day; for an emission factor its year; "" where nobody has said. */
  readonly date: string;
  /** Whole months to today; null where one of the days is not known. */
  readonly months: number | null;
  readonly freshness: Freshness;
}

/** Months after which a price is looked at again, in a case and in a lot that is being bought, and after which it is out of date. */
export const amberAfter = { case: 6, lot: 3 } as const;
const redAfter = 12;
/** Years after which an emission factor is looked at again. All three: common practice, no source. */
export const factorYears = 3;

/** Every price, tax, fee, rate and carbon factor in force, with its date. Ages need to know the day: null where nobody tells. */
export function datedInputs({ content, model }: OpenCase, today: string | null): readonly DatedInput[] {
  const used = new Set(
    content.routes.flatMap(({ lines }) => lines.flatMap(({ recipe }) => recipe.map((each) => each.material))),
  );
  const origins = new Map(content.materials.filter(({ id }) => used.has(id)).map(({ id, origin }) => [id, origin]));
  return model.graph.inputs.flatMap((input): readonly DatedInput[] => {
    const kind = kindOf(input, origins);
    if (kind === null || Number(inForce(input) ?? 0) === 0) return [];
    const date = factOf(input, kind === 'emission factor' ? 'year' : 'date');
    const months = date === '' || today === null || kind === 'emission factor' ? null : monthsBetween(date, today);
    const { id, label, where = '' } = input;
    return [{ id, label, where, kind, date, months, freshness: freshnessOf(kind, date, today) }];
  });
}

/** How fresh a figure of a kind is. In a lot that is being bought, prices age faster. */
export function freshnessOf(
  kind: DatedKind,
  date: string,
  today: string | null,
  place: keyof typeof amberAfter = 'case',
): Freshness {
  if (date === '') return 'no date';
  if (today === null) return 'in date';
  const [year] = partsOf(today);
  if (kind === 'emission factor') return year - Number(date) > factorYears ? 'amber' : 'in date';
  if (date > today) return 'ahead';
  if (kind === 'tax or fee') return partsOf(date)[0] < year ? 'amber' : 'in date';
  if (isLonger(date, today, redAfter)) return 'red';
  return isLonger(date, today, amberAfter[place]) ? 'amber' : 'in date';
}

const ofId: readonly (readonly [RegExp, DatedKind])[] = [
  [/^price\.electricity$/u, 'power'],
  [/^price\.(fuel|heat)$/u, 'fuel and heat'],
  [/^price\.carbon$/u, 'carbon price'],
  [/^rate\.[A-Z]{3}$/u, 'exchange rate'],
  [/^(destination|residue)\.[^.]+\.(gateFee|tax|taxLower)(\.[^.]+)?$/u, 'tax or fee'],
];

const materialPrice = /^material\.([^.]+)\.price$/u;

/** Whether a given figure of this input is asked for its day. */
export function holdsDate({ id }: InputDeclaration): boolean {
  return materialPrice.test(id) || ofId.some(([pattern]) => pattern.test(id));
}

function kindOf(input: InputDeclaration, origins: ReadonlyMap<string, string>): DatedKind | null {
  if (isCarbonFactor(input)) {
    const boundary = input.usual.provenance.details?.['boundary'] ?? '';
    return besideInventory.has(input.id) || timeless.has(boundary) ? null : 'emission factor';
  }
  const [, material = ''] = materialPrice.exec(input.id) ?? [];
  const origin = origins.get(material);
  if (origin !== undefined) return origin === 'virgin' ? 'pulp' : 'recovered paper';
  return ofId.find(([pattern]) => pattern.test(input.id))?.[1] ?? null;
}
