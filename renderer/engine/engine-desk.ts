import {
  basisChoices,
  caseText,
  changeInput,
  changeLot,
  changeScenario,
  editStructure,
  explain,
  footprint,
  largestShare,
  limitReadings,
  lotsView,
  lineBalance,
  monthResults,
  machineEffectOf,
  npvId,
  openCase,
  openLot,
  planResults,
  priceEcho,
  problemSentence,
  qualityResults,
  reconcile,
  restoreDefault,
  scenarioTable,
  sensitivity,
  spreadOf,
  startCase,
  startPlan,
  ties,
  usualMonthInputs,
  uncertainty,
  whatIfTable,
  workbookPlan,
  type OpenCase,
  type WorkbookPlan,
} from '../../src/index.ts';
import { choices } from './choices.ts';
import type {
  Answers,
  CaseAnswer,
  MonthsAnswer,
  MachineAnswer,
  PlanAnswer,
  QuestionName,
  Questions,
  SwingsAnswer,
  SwingsQuestion,
} from './messages.ts';
import { routeOutlines } from './route-outline.ts';

// Enough for a long way back; each holds a compiled case of some hundred kilobytes.
const mostKept = 60;

type Opened = ReturnType<typeof openCase>;

/** Holds the open case on the worker's side and answers what the screen asks about it. */
export class EngineDesk {
  readonly #today: () => string | null;
  #open: OpenCase | null = null;
  /** Cases of this sitting by their text: undo and redo come back to them without building them again. */
  readonly #kept = new Map<string, OpenCase>();

  readonly #answers: { readonly [Name in QuestionName]: (question: Questions[Name]) => Answers[Name] } = {
    open: ({ text }) => {
      const kept = this.#kept.get(text);
      return this.#take(kept === undefined ? openCase(text) : { ok: true, value: kept });
    },
    change: ({ id, typed, source }) =>
      this.#take(changeInput(this.#current(), id, typed, source === undefined ? {} : { status: 'read', source })),
    restore: ({ id }) => this.#take(restoreDefault(this.#current(), id)),
    explain: ({ ids }) => ids.map((id) => explain(this.#current(), id)),
    structure: ({ edit }) => this.#take(editStructure(this.#current(), edit)),
    line: ({ route, line }) => ({
      routes: routeOutlines(this.#current()),
      balance: lineBalance(this.#current(), route, line),
      quality: qualityResults(this.#current()),
    }),
    footprint: () => ({ footprint: footprint(this.#current()), choices: basisChoices() }),
    choices: () => choices(),
    start: (wanted) => this.#take(startCase(wanted)),
    swings: (question) => swingsAnswer(this.#current(), question),
    rests: ({ result }) => sensitivity(this.#current(), result).rests,
    table: ({ result, across, down, ...size }) => whatIfTable(this.#current(), result, across, down, size),
    months: ({ result }) => monthsAnswer(this.#current(), result),
    scenarios: () => ({
      table: scenarioTable(this.#current()),
      limits: limitReadings(this.#current()),
      shares: this.#current().content.routes.flatMap(({ id }) => largestShare(this.#current(), id) ?? []),
    }),
    plan: () => planAnswer(this.#current()),
    reconcile: () => reconcile(this.#current()),
    echo: ({ id, typed }) => priceEcho(this.#current(), id, typed),
    machine: () => machineAnswer(this.#current()),
    workbook: () => workbookOf(this.#current(), this.#today()),
    startPlan: () => this.#take(startPlan(this.#current())),
    lots: ({ today, draft }) => lotsView(this.#current(), today, draft),
    changeLot: ({ lot, field, typed }) => this.#take(changeLot(this.#current(), lot, field, typed)),
    explainLot: ({ lot, ids }) => this.#explainLot(lot, ids),
    changeScenario: ({ scenario, input, typed }) => this.#take(changeScenario(this.#current(), scenario, input, typed)),
  };

  /** Ages of prices are told by the day that `today` says; nothing is said of them where it says none. */
  constructor(today: () => string | null = () => null) {
    this.#today = today;
  }

  answer<Name extends QuestionName>(name: Name, question: Questions[Name]): Answers[Name] {
    return this.#answers[name](question);
  }

  /** A refused case or figure leaves the one in force as it is. */
  #take(outcome: Opened): CaseAnswer {
    if (!outcome.ok) return { kind: 'refused', sentences: outcome.problems.map(problemSentence) };
    this.#open = outcome.value;
    const text = caseText(outcome.value);
    this.#keep(text, outcome.value);
    return { kind: 'case', state: { text, spread: spreadOf(outcome.value, this.#today()) } };
  }

  #explainLot(id: string, ids: readonly string[]): Answers['explainLot'] {
    const lot = this.#current().content.lots?.offers.find((each) => each.id === id);
    const opened = lot === undefined ? null : openLot(this.#current(), lot);
    return ids.map((each) => (opened?.ok === true ? explain(opened.value, each) : null));
  }

  #keep(text: string, open: OpenCase): void {
    this.#kept.delete(text);
    this.#kept.set(text, open);
    const [oldest] = this.#kept.keys();
    if (this.#kept.size > mostKept && oldest !== undefined) this.#kept.delete(oldest);
  }

  #current(): OpenCase {
    if (this.#open === null) throw new Error('A figure was asked for before a case was open.');
    return this.#open;
  }
}

function monthsAnswer(open: OpenCase, result: string): MonthsAnswer {
  const { months } = open.content;
  const results = months === undefined ? null : monthResults(open, result, months);
  return { results, kept: months ?? null, usual: usualMonthInputs(open) };
}

/** Trials for a workbook: enough for its percentiles, and drawn in a fraction of a second. */
const workbookTrials = 1000;

function workbookOf(open: OpenCase, today: string | null): WorkbookPlan {
  const { totalId } = open.model.difference;
  const isFound = Number.isFinite(open.values.number(totalId));
  const trials = isFound ? uncertainty(open, totalId, { trials: workbookTrials }) : null;
  return workbookPlan(open, { today, trials, pictures: [] });
}

function planAnswer(open: OpenCase): PlanAnswer | null {
  const results = planResults(open);
  return results === null ? null : { results, swings: sensitivity(open, npvId).judged };
}

function machineAnswer(open: OpenCase): MachineAnswer {
  const { totalId, withId } = open.model.difference;
  return { effect: machineEffectOf(open), turns: ties(open, totalId, [`${withId}.machine.speed`])[0] ?? null };
}

/** Ties are asked of the inputs that move the result most over their usual ranges, however the swings themselves are taken. */
function swingsAnswer(open: OpenCase, { result, method, share, ties: count }: SwingsQuestion): SwingsAnswer {
  const found = sensitivity(open, result, method, share);
  const { judged } = method === 'usual range' ? found : sensitivity(open, result);
  const largest = judged.slice(0, count).map(({ id }) => id);
  return { sensitivity: found, ties: ties(open, result, largest) };
}
