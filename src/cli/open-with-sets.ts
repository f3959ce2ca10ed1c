import { type OpenCase, changeInput, openCase, problemSentence } from '../index.ts';
import { cautionsOf } from '../study/warnings.ts';
import { cautionSentence } from '../wording/caution-sentence.ts';
import { Refusal, WrongUse, readText } from './console.ts';

/** Opens a case file and gives inputs the figures of the `--set` options, in order. Problems are told all together. */
export function openWithSets(file: string, sets: readonly string[]): OpenCase {
  const opened = openCase(readText(file));
  if (!opened.ok) throw new Refusal(opened.problems.map(problemSentence));
  const sentences: string[] = [];
  let open = opened.value;
  for (const set of sets) {
    const cut = set.indexOf('=');
    if (cut < 1) throw new WrongUse(`--set takes ID=VALUE, such as price.electricity=0.12; "${set}" has no "=".`);
    const changed = changeInput(open, set.slice(0, cut).trim(), set.slice(cut + 1), { source: 'Given with --set' });
    if (changed.ok) open = changed.value;
    else sentences.push(...changed.problems.map(problemSentence));
  }
  if (sentences.length > 0) throw new Refusal(sentences);
  return open;
}

/** Results that rest on figures nobody gave, or that cannot be worked out, are not printed. */
export function wholly(open: OpenCase): OpenCase {
  const failures = cautionsOf(open).filter((caution) => caution.kind === 'cannot be worked out');
  const sentences = [...open.gaps.map(problemSentence), ...failures.map(cautionSentence)];
  if (sentences.length > 0) throw new Refusal(sentences);
  return open;
}
