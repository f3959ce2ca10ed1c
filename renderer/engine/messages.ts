import type { BasisChoices, Edit, Explanation, Footprint, LineBalance, NewCase, Spread } from '../../src/index.ts';
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
}

export interface FootprintAnswer {
  readonly footprint: Footprint;
  readonly choices: BasisChoices;
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
}

export type QuestionName = keyof Questions;

/** The ticket comes back on the answer, so that each finds the question it belongs to. */
export type Asked = {
  [Name in QuestionName]: { readonly ticket: number; readonly name: Name; readonly question: Questions[Name] };
}[QuestionName];

export type Answered =
  | { readonly ticket: number; readonly answer: Answers[QuestionName] }
  | { readonly ticket: number; readonly fault: string };
