import type { Closing } from './closing.ts';
import type { LeftDrafts } from './drafts/left-drafts.ts';
import type { WindowDraft } from './drafts/window-draft.ts';
import type { CaseFile } from './files/case-file.ts';
import type { FileOutcome, SaveOutcome, TakenDraft, Version } from './host.ts';
import type { Verbs } from './ipc.ts';
import type { Log } from './shell/log.ts';
import type { PreferencesInForce } from './shell/preferences-in-force.ts';

/** What all windows of the program share. */
export interface Shared {
  readonly left: LeftDrafts;
  readonly preferences: PreferencesInForce;
  readonly log: Log;
  readonly numberLocale: () => string;
  readonly versions: readonly Version[];
  noteRecent(path: string): void;
}

/** What the verbs of one window work on. */
export interface OneWindow {
  /** Tells this window from the others. */
  readonly id: number;
  readonly file: CaseFile;
  readonly draft: WindowDraft;
  readonly closing: Closing;
  showTitle(title: string, edited: boolean): void;
  /** The case that the person chose outside the screen, once; null when there is none. */
  takeGiven(): string | null;
}

const caseName = /\.(?:tonne|bak)$/iu;

/** What the machine does for one window when its screen asks. */
export function windowVerbs({ id, file, draft, closing, ...window }: OneWindow, shared: Shared): Verbs {
  const { left, preferences, log } = shared;

  async function reading<Outcome extends FileOutcome | null>(read: Promise<Outcome>): Promise<Outcome> {
    const outcome = await read;
    if (outcome?.kind === 'failed') log.note('open refused');
    if (outcome?.kind !== 'read') return outcome;
    log.note('opened');
    if (file.path !== null) shared.noteRecent(file.path);
    return outcome;
  }

  function saving(save: () => Promise<SaveOutcome>): Promise<SaveOutcome> {
    return closing.afterSave(async () => {
      const kept = draft.asked;
      const outcome = await save();
      if (outcome.kind === 'failed') log.note('save refused');
      if (outcome.kind === 'changed') log.note('changed by another program');
      if (outcome.kind !== 'saved') return outcome;
      log.note('saved');
      await draft.saved(kept);
      if (file.path !== null) shared.noteRecent(file.path);
      return outcome;
    });
  }

  async function takeDraft(draftId: string): Promise<TakenDraft> {
    const found = await left.find(draftId, id);
    if (found === null) {
      return { kind: 'failed', sentence: 'The draft is no longer there. Another window may have taken it up.' };
    }
    const goesOn = found.base !== null && (await file.adopt(found.base.path, found.base.digest));
    if (!goesOn) file.leave();
    // The case that was open here before is left behind by the person's own word.
    await draft.keep(null);
    draft.adopt(draftId);
    log.note('draft taken up');
    return { kind: 'taken', name: goesOn ? file.name : null };
  }

  return {
    numberLocale: () => Promise.resolve(shared.numberLocale()),
    startingCase: () => reading(file.readStarting()),
    openCase: () => reading(file.open()),
    openGiven: () => {
      const path = window.takeGiven();
      return path === null ? Promise.resolve({ kind: 'cancelled' }) : reading(file.read(path));
    },
    openPath: (path) =>
      caseName.test(path) ? reading(file.read(path)) : Promise.resolve({ kind: 'failed', sentence: notACase }),
    reloadCase: () => reading(file.reload()),
    saveCase: (text, name) => saving(() => file.save(text, name)),
    saveCaseOver: (text, name) => saving(() => file.saveOver(text, name)),
    saveCaseAs: (text, name) => saving(() => file.saveAs(text, name)),
    saveWorkbook: (bytes, name) => file.saveWorkbook(bytes, name),
    setEdited: (edited, title) => {
      closing.setEdited(edited);
      window.showTitle(title, edited);
      return Promise.resolve();
    },
    keepDraft: async (text, title) => {
      const outcome = await draft.keep(text === null ? null : { at: Date.now(), title, base: file.base, text });
      if (outcome.kind === 'failed') log.note('draft not kept');
      return outcome;
    },
    leftDrafts: () => left.offerTo(id),
    takeDraft,
    forgetDraft: (draftId) => left.forget(draftId, id),
    preferences: () => Promise.resolve(preferences.now),
    setPreferences: (wanted) => preferences.set(wanted),
    versions: () => Promise.resolve(shared.versions),
  };
}

const notACase =
  'What was dropped is not a case of this program, whose names end in .tonne. Nothing was opened or changed. Drop a .tonne file.';
