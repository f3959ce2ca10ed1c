import type {
  BasisChoices,
  BreakEven,
  Edit,
  Explanation,
  Footprint,
  LargestShare,
  LimitReading,
  LotField,
  Lots,
  LotsView,
  LineBalance,
  MonthResults,
  MachineEffect,
  NewCase,
  PlanResults,
  PriceMonths,
  QualityRow,
  PriceEcho,
  RangeMethod,
  ReconciledGroup,
  ScenarioTable,
  Sensitivity,
  Spread,
  Swing,
  WhatIfTable,
  WorkbookPlan,
} from '../../src/index.ts';
import type { Choices } from './choices.ts';
import type { RouteOutline } from './route-outline.ts';

/** What the screen may ask of the engine, by name. */
export interface Questions {
  readonly open: { readonly text: string };
  /** `source` says where the figure was read; a carbon factor is refused without one. */
  readonly change: { readonly id: string; readonly typed: string; readonly source?: string | undefined };
  readonly restore: { readonly id: string };
  readonly explain: { readonly ids: readonly string[] };
  /** A change of what is there: stages, lines, grades, routes. */
  readonly structure: { readonly edit: Edit };
  /** The routes of the case, and the balance of one line. */
  readonly line: { readonly route: string; readonly line: string };
  /** Waste, energy and carbon of every route, and what a footprint can rest on. */
  readonly footprint: Record<string, never>;
  /** What the program's own lists offer. */
  readonly choices: Record<string, never>;
  /** A case from the program's own lists. */
  readonly start: NewCase;
  /** What each input does to a result alone, and where it turns. */
  readonly swings: SwingsQuestion;
  /** How much of a result is measured, sourced, rule of thumb. */
  readonly rests: { readonly result: string };
  /** A result over two inputs. */
  readonly table: TableQuestion;
  /** A result in each of the mill's own months. */
  readonly months: { readonly result: string };
  /** Scenarios side by side, and every limit in every route. */
  readonly scenarios: Record<string, never>;
  /** What the investment plan comes to. */
  readonly plan: Record<string, never>;
  /** Measured figures beside computed ones. */
  readonly reconcile: Record<string, never>;
  /** What a price would mean if it were put in force. */
  readonly echo: { readonly id: string; readonly typed: string };
  /** What the furnish does to the machine. */
  readonly machine: Record<string, never>;
  /** The case as a workbook, with trials of the difference. */
  readonly workbook: Record<string, never>;
  /** Begins an investment plan. */
  readonly startPlan: Record<string, never>;
  /** Suppliers' lots on a day, as the case has them or as they are being typed. */
  readonly lots: { readonly today: string; readonly draft: Lots | null };
  /** A figure or readings of a lot, as typed. */
  readonly changeLot: { readonly lot: string; readonly field: LotField; readonly typed: string };
  /** Workings of figures as they would be with a lot in its line. */
  readonly explainLot: { readonly lot: string; readonly ids: readonly string[] };
  /** Another figure in one scenario; null takes it away. */
  readonly changeScenario: { readonly scenario: string; readonly input: string; readonly typed: string | null };
}

export interface SwingsQuestion {
  readonly result: string;
  readonly method: RangeMethod;
  readonly share: number;
  /** How many of the largest swings are asked where they turn the result. */
  readonly ties: number;
}

export interface TableQuestion {
  readonly result: string;
  readonly across: string;
  readonly down: string;
  readonly columns: number;
  readonly rows: number;
}

/** A case as the screen holds it: its canonical text, and what is worked out from it. */
export interface CaseState {
  readonly text: string;
  readonly spread: Spread;
}

export type CaseAnswer =
  | { readonly kind: 'case'; readonly state: CaseState }
  | { readonly kind: 'refused'; readonly sentences: readonly string[] };

export interface LineAnswer {
  readonly routes: readonly RouteOutline[];
  readonly balance: LineBalance | null;
  readonly quality: readonly QualityRow[];
}

export interface FootprintAnswer {
  readonly footprint: Footprint;
  readonly choices: BasisChoices;
}

export interface SwingsAnswer {
  readonly sensitivity: Sensitivity;
  readonly ties: readonly BreakEven[];
}

export type RestsAnswer = Sensitivity['rests'];

export interface MonthsAnswer {
  /** Null where the case holds no months. */
  readonly results: MonthResults | null;
  readonly kept: PriceMonths | null;
  /** The two prices that months of this case are usually of; null where it buys only one of the two. */
  readonly usual: Pick<PriceMonths, 'pulp' | 'recovered'> | null;
}

export interface ScenariosAnswer {
  readonly table: ScenarioTable;
  readonly limits: readonly LimitReading[];
  /** How far the recovered share of each route can go within its limits; routes where nothing can give way are left out. */
  readonly shares: readonly LargestShare[];
}

export interface PlanAnswer {
  readonly results: PlanResults;
  /** What the inputs do to the net present value, largest swing first. */
  readonly swings: readonly Swing[];
}

export interface MachineAnswer {
  readonly effect: MachineEffect;
  /** Where the answer turns as the speed of the second route moves; null where it does not move it. */
  readonly turns: BreakEven | null;
}

export interface Answers {
  readonly open: CaseAnswer;
  readonly change: CaseAnswer;
  readonly restore: CaseAnswer;
  readonly explain: readonly (Explanation | null)[];
  readonly structure: CaseAnswer;
  readonly line: LineAnswer;
  readonly footprint: FootprintAnswer;
  readonly choices: Choices;
  readonly start: CaseAnswer;
  readonly swings: SwingsAnswer;
  readonly rests: RestsAnswer;
  /** Null where one of the inputs cannot be spread out. */
  readonly table: WhatIfTable | null;
  readonly months: MonthsAnswer;
  readonly scenarios: ScenariosAnswer;
  /** Null where the case has no plan. */
  readonly plan: PlanAnswer | null;
  readonly reconcile: readonly ReconciledGroup[];
  readonly echo: PriceEcho | null;
  readonly machine: MachineAnswer;
  readonly workbook: WorkbookPlan;
  readonly startPlan: CaseAnswer;
  readonly changeScenario: CaseAnswer;
  /** Null where no line is fed recovered paper. */
  readonly lots: LotsView | null;
  readonly changeLot: CaseAnswer;
  readonly explainLot: readonly (Explanation | null)[];
}

export type QuestionName = keyof Questions;

/** The ticket comes back on the answer, so that each finds the question it belongs to. */
export type Asked = {
  [Name in QuestionName]: { readonly ticket: number; readonly name: Name; readonly question: Questions[Name] };
}[QuestionName];

export type Answered =
  | { readonly ticket: number; readonly answer: Answers[QuestionName] }
  | { readonly ticket: number; readonly fault: string };
