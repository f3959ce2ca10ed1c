import type { InputDeclaration } from '../kernel/graph/input-declaration.ts';
import { inForce } from '../kernel/graph/input-declaration.ts';
import { factOf } from '../paper/footprint/carbon-inputs.ts';
import { holdsDate } from '../study/trust/freshness.ts';
import type { InputView } from './spread.ts';

/** An input as it is shown and listed. */
export function inputView(input: InputDeclaration): InputView {
  const { usual, given } = input;
  const provenance = given?.provenance ?? usual.provenance;
  const boundary = usual.provenance.details?.['boundary'];
  return {
    id: input.id,
    label: input.label,
    where: input.where ?? '',
    value: inForce(input) ?? '',
    unit: input.entryUnit,
    low: usual.low,
    high: usual.high,
    allowed: input.allowed,
    status: provenance.status,
    source: provenance.source,
    note: provenance.note ?? '',
    touched: given !== null,
    usual: given === null ? null : usual.value,
    ...(given !== null && holdsDate(input) ? { date: factOf(input, 'date') } : {}),
    ...(boundary === undefined ? {} : { boundary, ...factsOf(input) }),
  };
}

/** What is known of the factor in force; what is not known is left out. */
function factsOf(input: InputDeclaration): Pick<InputView, 'year' | 'allocation' | 'gwp'> {
  const facts = (['year', 'allocation', 'gwp'] as const).map((fact) => [fact, factOf(input, fact)] as const);
  return Object.fromEntries(facts.filter(([, known]) => known !== ''));
}
