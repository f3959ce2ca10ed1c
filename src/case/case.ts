import type { Actual } from './actuals.ts';
import type { GivenInput } from './given-input.ts';
import type { InvestmentPlan } from './investment-plan.ts';
import type { GivenWasteCode } from './waste-codes.ts';
import type { SameProduct } from './same-product.ts';
import type { Lots } from './lots.ts';
import type { PriceBasis, Settlement } from './price-basis.ts';
import type { WhatIf } from './what-if.ts';

export type { GivenInput } from './given-input.ts';
export type { PriceBasis, Settlement } from './price-basis.ts';

/**
 * A case as it is kept: the structure (which routes, lines and stages there are) and the figures that a person gave. Everything else
 * is a default of the program. Figures are digits as text, so that nothing is lost between typing and reckoning.
 */
export interface Case extends WhatIf {
  readonly title: string;
  readonly note: string;
  /** ISO 4217 code; all money of the case is in it. */
  readonly currency: string;
  /** The year whose prices are used; every result names it. */
  readonly priceYear: string;
  readonly product: { readonly name: string; readonly machine: string };
  readonly materials: readonly Material[];
  /** Chemicals of the user's own beside those of the program's list, and the residue stream in which the dry mass of one ends. */
  readonly chemicals: readonly { readonly id: string; readonly label: string; readonly endsIn?: string }[];
  readonly destinations: readonly Destination[];
  /** Streams whose landfill tax is not the standard one. */
  readonly residues?: readonly { readonly stream: string; readonly landfillTax: LandfillTax }[];
  /** Waste codes that are others than the usual ones. */
  readonly wasteCodes?: readonly GivenWasteCode[];
  /** What the price of carbon is paid on beside fuel and burned residues; nothing else where it is left out. */
  readonly carbonPrice?: CarbonPriceScheme;
  /** What the footprint rests on; where it is left out, natural gas, the European grid, AR5 and a wet temperate landfill. */
  readonly basis?: FootprintBasis;
  readonly routes: readonly Route[];
  /** Ids of the two routes that face each other; differences are `with` less `base`. */
  readonly compare: { readonly base: string; readonly with: string };
  /** A plan to change from the one to the other; while there is one, capital stands in it and not in the statement. */
  readonly investment?: InvestmentPlan;
  /** What was answered to the question whether two routes make the same product. */
  readonly sameProduct?: readonly SameProduct[];
  /** Measured figures beside computed ones. */
  readonly actuals?: readonly Actual[];
  /** What suppliers offer for one of the lines. */
  readonly lots?: Lots;
  readonly inputs: Readonly<Record<string, GivenInput>>;
}

export interface CarbonPriceScheme {
  readonly ownLandfill?: boolean;
  readonly power?: boolean;
  /** Free allocation beyond what is needed is sold at the price. */
  readonly surplus?: boolean;
  /** Cash, unless it is said: only what is emitted above the free allocation costs. Opportunity: all of it does, and the allocation is an income. */
  readonly view?: 'cash' | 'opportunity';
}

export interface FootprintBasis {
  /** Fuel of the own boiler, by the program's list. */
  readonly fuel?: string;
  /** Region of the electricity grid: a country by its ISO 3166 alpha-3 code, or a region of the data set. */
  readonly grid?: string;
  /** Assessment report whose global warming potentials are used. */
  readonly gwp?: 'AR4' | 'AR5' | 'AR6';
  /** Climate of the landfills, which sets how fast methane forms. */
  readonly climate?: string;
}

/** Something that is bought to be made into stock. */
export interface Material {
  readonly id: string;
  readonly label: string;
  /** The grade of the program's list whose composition, moisture and price are the defaults; none for a grade of the user's own. */
  readonly like?: string;
  readonly origin: Origin;
  /** How it comes to the mill, for the carbon of its freight; by road where nothing is said. */
  readonly transport?: 'road' | 'rail' | 'sea' | 'barge';
  readonly price: PriceTerms;
  readonly settlement: Settlement;
}

export type Origin = 'virgin' | 'pre-consumer' | 'post-consumer' | 'own broke';
/** What a price is per, what it stands for, and in which money. */
export interface PriceTerms {
  readonly basis: PriceBasis;
  readonly kind: PriceKind;
  /** Where it is not the currency of the case. */
  readonly currency?: string;
  /** Short tons of 2,000 pounds or long tons of 2,240; metric where nothing is said. */
  readonly ton?: 'short' | 'long';
}
export type PriceKind = 'list' | 'net' | 'contract' | 'index';

/** Somewhere that residues go. */
export interface Destination {
  readonly id: string;
  readonly label: string;
  readonly kind: DestinationKind;
  /** A landfill of the mill's own: its methane is the mill's, not that of others. */
  readonly owned?: boolean;
}
export type LandfillTax = 'standard' | 'lower' | 'exempt';
export type DestinationKind = 'landfill' | 'incineration' | 'own boiler' | 'spreading' | 'sale' | 'gate-fee plant';

export interface Route {
  readonly id: string;
  readonly label: string;
  /** Overrides the machine of the product for this route's defaults. */
  readonly machine?: string;
  readonly lines: readonly Line[];
  /** The line whose share is what the others leave. */
  readonly balance: string;
  /** Tonnes for the same service: as somebody gives them where nothing is said, or what the strength of the furnish asks for. */
  readonly service?: 'as given' | 'from strength';
  readonly additives: readonly Additive[];
  readonly machineChemicals: readonly string[];
  /** Which of the two is given; the other closes the water balance. */
  readonly water: 'fresh water given' | 'effluent given';
  readonly heat: 'own boiler' | 'bought heat';
  readonly capital: 'annual charge' | 'none';
  readonly charges: readonly Charge[];
}

/** A preparation line: what is fed to it, and the stages it passes in order. */
export interface Line {
  readonly id: string;
  readonly label: string;
  readonly recipe: readonly { readonly material: string }[];
  readonly stages: readonly Stage[];
}

export interface Stage {
  readonly id: string;
  /** The stage of the program's list whose figures are the defaults. */
  readonly like: string;
  readonly label?: string;
  /** Cascades only: how many single stages, 1 to 5. */
  readonly levels?: number;
  /** Cascades only: later stages (2 to 5) whose accepts go forward to product instead of back one stage. */
  readonly forward?: readonly number[];
  /** Cascades only: whether components part by a separation quotient or by a plug-flow exponent. */
  readonly law?: 'quotient' | 'plug flow';
  /** Plug flow only: whether the reject rate given is that of the fibre mass or of the volume. */
  readonly rejectRateBy?: 'mass' | 'volume';
  /** Where stock is heated: a figure per tonne, or worked out from consistency and temperatures. */
  readonly heat?: 'given' | 'computed';
  /** Where heat is worked out: steam that heats through a wall, or is blown into the stock and condenses there. */
  readonly steam?: 'indirect' | 'direct';
  /** Washers and thickeners only: where the filtrate goes. */
  readonly filtrate?: 'clarifier' | 'dilution' | 'effluent';
  /** Refiners only: whether the electricity given is the whole draw, or net refining energy with the no-load power apart. */
  readonly power?: 'gross' | 'net and no-load';
}

export interface Additive {
  readonly id: string;
  readonly label: string;
  readonly place: 'wet end' | 'surface';
  readonly kind: 'mineral' | 'organic';
}

/** A cost or credit of the user's own. */
export interface Charge {
  readonly id: string;
  readonly label: string;
  readonly behaviour: Behaviour;
  readonly avoidable: boolean;
  readonly nature: Nature;
}
/** What a cost follows: the tonnes made, the hours run, or the calendar. */
export type Behaviour = 'per tonne' | 'per hour' | 'per year';
export type Nature = 'market' | 'technical' | 'policy';
