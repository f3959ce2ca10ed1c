import { beforeEach, describe, expect, it } from 'vitest';
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

describe('a case and its file', () => {
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
