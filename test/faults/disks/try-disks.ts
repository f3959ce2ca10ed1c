import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { diskMeans } from '../../../electron/data/data-folder.ts';
import { DraftFolder } from '../../../electron/drafts/draft-folder.ts';
import { WindowDraft } from '../../../electron/drafts/window-draft.ts';
import { CaseFile } from '../../../electron/files/case-file.ts';
import type { FileSystem } from '../../../electron/files/file-system.ts';
import { diskWhereNewFiles, systemError, diskExcept } from '../../electron/failing-file-system.ts';
import { numberedCase } from '../kills/numbered-case.ts';
import { smallDisk } from './small-disk.ts';

interface Tried {
  /** Which faults were met on a real drive, and which only on a stand-in for one. */
  readonly onRealDrive: string[];
  readonly onStandIn: string[];
  readonly failures: string[];
}

const old = numberedCase(1, 0);
const fresh = numberedCase(2, 2000);

/** Full, read-only and refusing drives. */
export async function tryDisks(): Promise<Tried> {
  const tried: Tried = { onRealDrive: [], onStandIn: [], failures: [] };
  await tryFullDisk(tried);
  await tryReadOnlyDisk(tried);
  await inFolder((folder) =>
    meet(tried, 'rename refused', 'stand-in', folder, refusingRename(folder), 'protected or another program'),
  );
  return tried;
}

async function tryFullDisk(tried: Tried): Promise<void> {
  const disk = smallDisk(120);
  if (disk === null) {
    await inFolder((folder) =>
      meet(tried, 'full disk', 'stand-in', folder, diskWhereNewFiles('writeFile', 'ENOSPC'), 'the disk is full'),
    );
    return;
  }
  try {
    await writeFile(join(disk.folder, 'mill.tonne'), old);
    const drafts = new DraftFolder(join(disk.folder, 'drafts'), diskMeans);
    const draft = new WindowDraft(drafts, () => '0000000000000001');
    const kept = { at: 0, title: 'Mill', base: null };
    await draft.keep({ ...kept, text: 'kept before' });
    await writeFile(join(disk.folder, 'filler'), new Uint8Array(1_000_000)).catch(() => undefined);
    await meet(tried, 'full disk', 'real', disk.folder, diskMeans.files, 'the disk is full');
    const late = await draft.keep({ ...kept, text: fresh });
    const whole = (await drafts.readAll()).map(({ text }) => text);
    if (late.kind !== 'failed') tried.failures.push('full disk: a draft that cannot be kept is not told about.');
    if (whole.join() !== 'kept before') tried.failures.push('full disk: the draft before is not whole.');
    await rm(join(disk.folder, 'filler'));
    const file = fileAt(disk.folder, diskMeans.files);
    await file.readStarting();
    if ((await file.save(fresh, 'mill')).kind !== 'saved')
      tried.failures.push('full disk: no save once there is room.');
  } finally {
    disk.remove();
  }
}

async function tryReadOnlyDisk(tried: Tried): Promise<void> {
  const disk = smallDisk(400);
  if (disk === null) {
    const createNew: FileSystem['createNew'] = () => Promise.reject(systemError('EROFS'));
    await inFolder((folder) =>
      meet(tried, 'read-only drive', 'stand-in', folder, diskExcept({ createNew }), 'can only be read'),
    );
    return;
  }
  try {
    await writeFile(join(disk.folder, 'mill.tonne'), old);
    disk.makeReadOnly();
    await meet(tried, 'read-only drive', 'real', disk.folder, diskMeans.files, 'can only be read');
  } finally {
    disk.remove();
  }
}

function refusingRename(folder: string): FileSystem {
  return diskExcept({
    rename: (from, to) =>
      to === join(folder, 'mill.tonne') ? Promise.reject(systemError('EPERM')) : diskMeans.files.rename(from, to),
  });
}

function fileAt(folder: string, files: FileSystem): CaseFile {
  const path = join(folder, 'mill.tonne');
  const ask = { toOpen: () => Promise.resolve(path), toSave: () => Promise.resolve(path) };
  return new CaseFile(ask, { ...diskMeans, files, wait: () => Promise.resolve() }, path);
}

async function inFolder(work: (folder: string) => Promise<void>): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'disks-'));
  await writeFile(join(folder, 'mill.tonne'), old);
  await work(folder);
  await rm(folder, { recursive: true });
}

/** Saves where that cannot go: the old file must stay whole, the refusal must say why, and a copy it speaks of must be there. */
async function meet(
  tried: Tried,
  name: string,
  drive: 'real' | 'stand-in',
  folder: string,
  files: FileSystem,
  because: string,
): Promise<void> {
  (drive === 'real' ? tried.onRealDrive : tried.onStandIn).push(name);
  const file = fileAt(folder, files);
  await file.readStarting();
  // Over the file itself and without the question for another place, as when a drive turns bad after a case was opened.
  const outcome = await file.saveOver(fresh, 'mill');
  const fail = (sentence: string): void => void tried.failures.push(`${name}: ${sentence}`);
  if (outcome.kind !== 'failed') {
    fail(`the save says “${outcome.kind}”.`);
    return;
  }
  if (!outcome.sentence.includes(because)) fail(`the reason is not told: ${outcome.sentence}`);
  if ((await readFile(join(folder, 'mill.tonne'), 'utf8')) !== old) fail('the old file is not whole.');
  const kept = /kept beside it as “([^”]+)”/u.exec(outcome.sentence)?.[1];
  if (kept !== undefined && (await readFile(join(folder, kept), 'utf8')) !== fresh) fail('the copy is not whole.');
  const cases = (await readdir(folder)).filter((each) => each.endsWith('.tonne') && each !== kept);
  if (cases.join() !== 'mill.tonne') fail(`there is half a case: ${cases.join(', ')}`);
}
