import { randomBytes } from 'node:crypto';
import { writeSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { Closing } from '../../../electron/closing.ts';
import { diskMeans, openDataFolder } from '../../../electron/data/data-folder.ts';
import { LeftDrafts } from '../../../electron/drafts/left-drafts.ts';
import { WindowDraft } from '../../../electron/drafts/window-draft.ts';
import { CaseFile } from '../../../electron/files/case-file.ts';
import { PreferencesInForce } from '../../../electron/shell/preferences-in-force.ts';
import { windowVerbs } from '../../../electron/window-verbs.ts';
import { DraftKeeper } from '../../../renderer/session/draft-keeper.ts';
import { Dice } from '../../support/dice.ts';
import { numberedCase, numberOf } from './numbered-case.ts';

const window = 1;

/** The part of the program that keeps work, put together as main does it, without a window. */
function startProgram(folder: string) {
  const path = join(folder, 'mill.tonne');
  const data = openDataFolder(join(folder, 'data'));
  const file = new CaseFile(
    { toOpen: () => Promise.resolve(path), toSave: () => Promise.resolve(path) },
    diskMeans,
    path,
  );
  const draft = new WindowDraft(data.drafts, () => randomBytes(8).toString('hex'));
  const closing = new Closing({
    ask: () => Promise.resolve('stay'),
    requestSave: () => undefined,
    destroy: () => Promise.resolve(),
    now: () => performance.now(),
  });
  const showTitle = (): void => undefined;
  const verbs = windowVerbs(
    { id: window, file, draft, closing, showTitle, takeGiven: () => null },
    {
      left: new LeftDrafts(data.drafts, diskMeans.files, () => [draft.id]),
      preferences: new PreferencesInForce(data.preferences, () => undefined),
      log: data.log,
      numberLocale: () => 'en-GB',
      versions: [],
      noteRecent: () => undefined,
    },
  );
  return { verbs, data };
}

/** Says something to the judge; written before this returns, so that no kill can take it back. */
function say(line: string): void {
  writeSync(1, `${line}\n`);
}

/**
 * Works until it is killed: edits every few milliseconds, as nobody can, and saves often, through the verbs that a screen has. It
 * begins as the screen does: with the file, then with work that was left.
 */
export async function live(folder: string, seed: number): Promise<void> {
  const dice = new Dice(seed);
  const { verbs, data } = startProgram(folder);
  await data.drafts.clear();
  const opened = await verbs.startingCase();
  if (opened?.kind !== 'read') throw new Error(`The file could not be opened: ${JSON.stringify(opened)}`);
  let text = opened.text;
  for (const left of await verbs.leftDrafts()) {
    const isNewer = (numberOf(left.text) ?? -1) > (numberOf(text) ?? -1);
    if (!isNewer) await verbs.forgetDraft(left.id);
    else if ((await verbs.takeDraft(left.id)).kind === 'taken') text = left.text;
  }
  const keeper = new DraftKeeper(
    (kept, title) => verbs.keepDraft(kept, title),
    (sentence) => say(`failed ${sentence}`),
  );
  let edit = numberOf(text) ?? 0;
  say('ready');
  for (;;) {
    edit += 1;
    text = numberedCase(edit, dice.whole(0, 3000));
    say(`edit ${String(edit)} ${String(Date.now())}`);
    keeper.note(text, 'Mill');
    if (dice.chance(0.1)) {
      say(`saving ${String(edit)}`);
      const outcome = await verbs.saveCase(text, 'mill');
      say(outcome.kind === 'saved' ? `saved ${String(edit)}` : `failed ${JSON.stringify(outcome)}`);
      if (outcome.kind === 'saved') keeper.note(null, 'Mill');
    }
    await wait(dice.whole(0, 40));
  }
}
