import { EngineDesk } from '../../../renderer/engine/engine-desk.ts';
import type { Facing } from '../../../renderer/screens/waste/route-names.ts';
import type { Spread } from '../../../src/index.ts';
import { demonstration, demonstrationSpread } from '../open-demonstration.ts';

/** The two routes of the demonstration, as the engine's desk hands them over. */
export function demonstrationFacing(): Facing {
  const desk = new EngineDesk();
  desk.answer('open', { text: demonstration });
  const { routes, difference } = desk.answer('footprint', {}).footprint;
  const [base, other] = [difference.base, difference.with].map((id) => routes.find((route) => route.id === id));
  if (base === undefined || other === undefined) throw new Error('The demonstration compares no two routes.');
  return { base, with: other };
}

export function demonstrationInputs(): Spread['inputs'] {
  return demonstrationSpread().inputs;
}
