import type { Destination } from '../case/case.ts';
import { type Quantity, total } from '../kernel/expression/quantity.ts';
import { type Flow, scaleFlow } from './components.ts';
import type { DestinationTerms } from './destinations.ts';

/** One residue stream of a route, per tonne of product. */
export interface Residue {
  readonly stream: string;
  readonly label: string;
  readonly composition: Flow;
  readonly dryness: Quantity;
  readonly dry: Quantity;
  /** Mass as hauled, wet-t/t. */
  readonly wet: Quantity;
  readonly parts: readonly ResiduePart[];
  /** Haulage and gate fees, money per tonne of product. */
  readonly cost: Quantity;
  readonly tax: Quantity;
  /** Press polymer, kg/t. */
  readonly polymer: Quantity;
}

/** What of a stream goes to one destination. */
export interface ResiduePart {
  readonly destination: Destination;
  readonly terms: DestinationTerms;
  readonly share: Quantity;
  readonly wet: Quantity;
}

/** What of a stream is burned in the own boiler; null where nothing is. */
export function burnedFlow(residue: Residue): Flow | null {
  const burned = residue.parts.filter((part) => part.destination.kind === 'own boiler');
  if (burned.length === 0) return null;
  const share = total(
    burned.map((part) => part.share),
    '1',
  );
  return scaleFlow(residue.composition, share);
}
