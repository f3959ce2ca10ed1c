import { beforeEach, describe, expect, it } from 'vitest';
import type { LeftDraft } from '../../../electron/host.ts';
import { CaseOnFile } from '../../../renderer/session/case-on-file.svelte.ts';
import { CaseSession } from '../../../renderer/session/case-session.svelte.ts';
import { FakeHost } from '../fake-host.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

let host: FakeHost;
let session: CaseSession;
let file: CaseOnFile;

beforeEach(() => {
  host = new FakeHost();
  session = new CaseSession(new EngineInThread());
  file = new CaseOnFile(host.asHost(), session, demonstration);
});

const edit = () => session.change('material.mixed.price', '137.50');

describe('work that was left unsaved', () => {
  const draft: LeftDraft = {
    id: '0123456789abcdef',
    title: 'Mill',
    name: 'mill.tonne',
    at: 0,
    text: demonstration,
    file: 'same',
    fileText: '{}',
  };

  it('is open as edited, and is saved to its file where that goes on', async () => {
    host.taking = { kind: 'taken', name: 'mill.tonne' };
    await file.start();

    expect(await file.openDraft(draft)).toBe(true);
    expect(file.isEdited).toBe(true);
    expect(file.name).toBe('mill.tonne');

    await file.save();
    expect(host.disk.get('mill.tonne')).toBe(session.text);
    expect(file.isEdited).toBe(false);
  });

  it('asks for a place where its file is another by now', async () => {
    host.disk.set('mill.tonne', 'theirs');
    host.taking = { kind: 'taken', name: null };
    host.nextPlace = 'mine.tonne';
    await file.start();
    await file.openDraft({ ...draft, file: 'newer' });
    expect(file.isEdited).toBe(true);

    await file.save();

    expect(host.disk.get('mill.tonne')).toBe('theirs');
    expect(host.disk.get('mine.tonne')).toBe(session.text);
  });

  it('that cannot be read is neither taken nor thrown away, and the open case stays', async () => {
    await file.start();
    const before = session.text;

    expect(await file.openDraft({ ...draft, text: '{}' })).toBe(false);

    expect(file.notice?.safe).toBe('It was not thrown away.');
    expect(host.taken).toEqual([]);
    expect(session.text).toBe(before);
  });

  it('that is gone by then is open all the same, and said to be a new case', async () => {
    host.taking = { kind: 'failed', sentence: 'It is gone.' };
    await file.start();

    await file.openDraft(draft);

    expect(file.name).toBeNull();
    expect(file.isEdited).toBe(true);
    expect(file.notice?.sentences).toEqual(['It is gone.']);
  });
});

describe('a file that another program changed', () => {
  beforeEach(async () => {
    host.starting = { kind: 'read', name: 'mill.tonne', text: demonstration };
    await file.start();
    await edit();
    host.disk.set('mill.tonne', 'theirs');
    host.isForeign = true;
  });

  it('is left alone by a save, which asks what shall become of it', async () => {
    expect(await file.save()).toBe(false);

    expect(file.foreignChange).toBe('met by a save');
    expect(host.disk.get('mill.tonne')).toBe('theirs');
    expect(file.isEdited).toBe(true);
  });

  it('is replaced only by the person’s word', async () => {
    await file.save();

    expect(await file.saveOver()).toBe(true);

    expect(file.foreignChange).toBeNull();
    expect(host.disk.get('mill.tonne')).toBe(session.text);
  });

  it('is left behind when the work is saved elsewhere', async () => {
    await file.save();
    host.nextPlace = 'mine.tonne';

    expect(await file.saveAs()).toBe(true);

    expect(file.foreignChange).toBeNull();
    expect(host.disk.get('mill.tonne')).toBe('theirs');
  });

  it('can be read again, which gives the edits up', async () => {
    host.nextFile = { kind: 'read', name: 'mill.tonne', text: demonstration };
    file.seeForeignChange();
    expect(file.foreignChange).toBe('seen');

    await file.readFileAgain();

    expect(file.isEdited).toBe(false);
    expect(file.foreignChange).toBeNull();
  });

  it('is of no concern to a case that has left that file', async () => {
    await file.openDemonstration();
    await file.leaveWithoutSaving();

    file.seeForeignChange();

    expect(file.foreignChange).toBeNull();
  });
});

describe('a case and its file', () => {
  it('is known to be read-only, until it is saved elsewhere', async () => {
    host.starting = { kind: 'read', name: 'locked.tonne', text: demonstration, isReadOnly: true };
    await file.start();
    expect(file.isReadOnly).toBe(true);

    await file.saveAs();

    expect(file.isReadOnly).toBe(false);
  });

  it.each(['openGiven', 'openDropped'] as const)('asks about unsaved edits before %s', async (verb) => {
    host.nextFile = { kind: 'read', name: 'other.tonne', text: demonstration };
    await file.start();
    await edit();
    await file[verb](new File([], 'other.tonne'));
    expect(file.asksBeforeLeaving).toBe(true);

    await file.leaveWithoutSaving();

    expect(file.name).toBe('other.tonne');
  });

  it('starts with the demonstration where no case was named', async () => {
    await file.start();

    expect(session.spread).not.toBeNull();
    expect(file.name).toBeNull();
    expect(file.isEdited).toBe(false);
  });

  it('starts with the case that was named', async () => {
    host.starting = { kind: 'read', name: 'mill.tonne', text: demonstration };
    await file.start();

    expect(file.name).toBe('mill.tonne');
  });

  it('starts with the demonstration and says why where the named case cannot be read', async () => {
    host.starting = { kind: 'read', name: 'mill.tonne', text: '{}' };
    await file.start();

    expect(session.spread).not.toBeNull();
    expect(file.notice?.title).toContain('mill.tonne');
  });

  it('is edited until it is saved, and not edited when all is taken back', async () => {
    await file.start();
    await edit();
    expect(file.isEdited).toBe(true);

    await session.undo();
    expect(file.isEdited).toBe(false);

    await session.redo();
    await file.save();
    expect(file.isEdited).toBe(false);
    expect(host.disk.get('mill.tonne')).toBe(session.text);
  });

  it('stays edited and says why when saving fails', async () => {
    await file.start();
    await edit();
    host.failure = 'The disk is full.';

    expect(await file.save()).toBe(false);

    expect(file.isEdited).toBe(true);
    expect(file.notice?.sentences).toEqual(['The disk is full.']);
  });

  it('never saves over a file that was refused', async () => {
    host.disk.set('broken.tonne', '{}');
    host.nextFile = { kind: 'read', name: 'broken.tonne', text: '{}' };
    await file.start();
    await file.open();

    await file.save();

    expect(host.disk.get('broken.tonne')).toBe('{}');
    expect(file.name).toBe('mill.tonne');
  });

  it('never saves the demonstration over the file that was open before', async () => {
    host.disk.set('own.tonne', 'as it was');
    host.nextFile = { kind: 'read', name: 'own.tonne', text: demonstration };
    await file.start();
    await file.open();
    await file.openDemonstration();

    await file.save();

    expect(host.disk.get('own.tonne')).toBe('as it was');
  });

  it('asks before edits are left behind, and keeps them when one stays', async () => {
    host.nextFile = { kind: 'read', name: 'other.tonne', text: demonstration };
    await file.start();
    await edit();

    await file.open();
    expect(file.asksBeforeLeaving).toBe(true);

    file.stay();
    expect(file.asksBeforeLeaving).toBe(false);
    expect(file.isEdited).toBe(true);
  });

  it('leaves edits behind when that is what one wants', async () => {
    host.nextFile = { kind: 'read', name: 'other.tonne', text: demonstration };
    await file.start();
    await edit();
    await file.open();

    await file.leaveWithoutSaving();

    expect(file.name).toBe('other.tonne');
    expect(file.isEdited).toBe(false);
  });

  it('saves edits before leaving, and does not leave when saving fails', async () => {
    host.nextFile = { kind: 'read', name: 'other.tonne', text: demonstration };
    await file.start();
    await edit();
    await file.open();
    host.failure = 'The disk is full.';

    await file.leaveAfterSaving();

    expect(file.name).toBeNull();
    expect(file.isEdited).toBe(true);
  });
});
