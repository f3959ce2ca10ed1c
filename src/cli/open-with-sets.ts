import { type OpenCase, type Outcome, changeInput, openCase, problemSentence } from '../index.ts';
import { isCarbonFactor } from '../paper/footprint/carbon-inputs.ts';
import { cautionsOf } from '../study/warnings.ts';
import { cautionSentence } from '../wording/caution-sentence.ts';
import { Refusal, WrongUse, readText } from './console.ts';
import { typedDay } from './today.ts';

/** Figures given on the command line, and where all of them come from. */
export interface SetOptions {
  readonly set: readonly string[];
  readonly source?: string;
  /** The day the figures of --set are of. */
  readonly dated?: string;
}

/** Opens a case file and gives inputs the figures of the `--set` options, in order. Problems are told all together. */
export function openWithSets(file: string, { set: sets, source, dated }: SetOptions): OpenCase {
  const told = { ...(dated === undefined ? {} : { date: typedDay('--dated', dated) }) };
  const opened = openCase(readText(file));
  if (!opened.ok) throw new Refusal(opened.problems.map(problemSentence));
  const sentences: string[] = [];
  let open = opened.value;
  for (const set of sets) {
    const cut = set.indexOf('=');
    if (cut < 1) throw new WrongUse(`--set takes ID=VALUE, such as price.electricity=0.12; "${set}" has no "=".`);
    const changed = given(open, set.slice(0, cut).trim(), set.slice(cut + 1), source, told);
    if (changed.ok) open = changed.value;
    else sentences.push(...changed.problems.map(problemSentence));
  }
  if (sentences.length > 0) throw new Refusal(sentences);
  return open;
}

/** That a figure came with --set says where it was typed, not where it was found: for a carbon factor that is no source. */
function given(
  open: OpenCase,
  id: string,
  typed: string,
  source: string | undefined,
  told: { readonly date?: string },
): Outcome<OpenCase> {
  const changed = changeInput(open, id, typed, { source: source ?? 'Given with --set', ...told });
  if (!changed.ok || source !== undefined) return changed;
  const input = changed.value.model.graph.inputs.find((each) => each.id === id);
  if (input === undefined || !isCarbonFactor(input)) return changed;
  return { ok: false, problems: [{ kind: 'no source', id, label: input.label }] };
}

/** Results that rest on figures nobody gave, or that cannot be worked out, are not printed. */
export function wholly(open: OpenCase): OpenCase {
  const failures = cautionsOf(open).filter((caution) => caution.kind === 'cannot be worked out');
  const sentences = [...open.gaps.map(problemSentence), ...failures.map(cautionSentence)];
  if (sentences.length > 0) throw new Refusal(sentences);
  return open;
}
