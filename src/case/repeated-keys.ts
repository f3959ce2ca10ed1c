import { stringEnd } from './measure-text.ts';
import type { Problem } from './problem.ts';

/** A group or list that the scan is inside of. Lists have no keys; their places are counted instead. */
interface Level {
  readonly keys: Set<string> | null;
  here: string;
  place: number;
  awaitsKey: boolean;
}

/**
 * Keys that stand twice in one group of a text that is valid JSON. A parser keeps the last of them in silence, so that a price said
 * twice, as after a bad merge of two versions, would be chosen by chance.
 */
export function findRepeatedKeys(text: string): Problem[] {
  const problems: Problem[] = [];
  const levels: Level[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const level = levels.at(-1);
    switch (text[at]) {
      case '"': {
        const end = stringEnd(text, at);
        if (level?.awaitsKey === true) note(level, JSON.parse(text.slice(at, end + 1)) as string, levels, problems);
        at = end;
        break;
      }
      case '{':
        levels.push({ keys: new Set(), here: '', place: 0, awaitsKey: true });
        break;
      case '[':
        levels.push({ keys: null, here: '0', place: 0, awaitsKey: false });
        break;
      case '}':
      case ']':
        levels.pop();
        break;
      case ',':
        if (level !== undefined) next(level);
        break;
      default:
    }
  }
  return problems;
}

function note(level: Level, key: string, levels: readonly Level[], problems: Problem[]): void {
  level.awaitsKey = false;
  level.here = key;
  const path = levels.slice(0, -1).map(({ here }) => here);
  if (level.keys?.has(key) === true) problems.push({ kind: 'said twice', path: path.join('.'), given: key });
  level.keys?.add(key);
}

function next(level: Level): void {
  level.place += 1;
  if (level.keys === null) level.here = String(level.place);
  else level.awaitsKey = true;
}
