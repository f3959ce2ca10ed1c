import { beforeEach, describe, expect, it } from 'vitest';
import type { SaveOutcome } from '../../../electron/host.ts';
import { CaseSession } from '../../../renderer/session/case-session.svelte.ts';
import { WorkbookOnFile, type WriteBook } from '../../../renderer/session/workbook-on-file.svelte.ts';
import type { WorkbookPlan } from '../../../src/index.ts';
import { demonstration, EngineInThread } from '../open-demonstration.ts';

let session: CaseSession;
let said: string[];
let told: (readonly [string, string])[];
let plans: WorkbookPlan[];
let outcome: SaveOutcome;
let asked: (readonly [number, string])[];

const write: WriteBook = (plan) => {
  plans.push(plan);
  return Promise.resolve(new Uint8Array([80, 75]));
};

function workbook(writes: WriteBook = write): WorkbookOnFile {
  const host = {
    saveWorkbook: (bytes: Uint8Array, name: string) => {
      asked.push([bytes.length, name]);
      return Promise.resolve(outcome);
    },
  };
  return new WorkbookOnFile(
    host,
    session,
    (...notice) => told.push(notice),
    (text) => said.push(text),
    writes,
  );
}

beforeEach(async () => {
  session = new CaseSession(new EngineInThread());
  [said, told, plans, asked] = [[], [], [], []];
  outcome = { kind: 'saved', name: 'mill.xlsx' };
  await session.open(demonstration);
});

describe('a workbook that is saved from the window', () => {
  it('holds the case as it is on the screen, and says where it went', async () => {
    await session.change('price.electricity', '0.2');
    await workbook().save('mill');
    const inputs = plans[0]?.sheets.find(({ name }) => name === 'Inputs');
    const row = inputs?.rows.find(
      (cells) => cells.at(-1)?.kind === 'text' && JSON.stringify(cells.at(-1)).includes('"price.electricity"'),
    );

    expect(row?.[2]).toMatchObject({ kind: 'entry', value: 0.2 });
    expect(asked).toEqual([[2, 'mill']]);
    expect(said).toEqual(['Workbook saved as mill.xlsx']);
  });

  it('tells in the words of the machine why it was not saved', async () => {
    outcome = { kind: 'failed', sentence: 'The workbook could not be saved to “mill.xlsx”: the disk is full.' };
    const book = workbook();
    await book.save('mill');

    expect(told).toEqual([['The workbook was not saved', outcome.sentence]]);
    expect(said).toEqual([]);
  });

  it('says nothing when the person gives no place', async () => {
    outcome = { kind: 'cancelled' };
    const book = workbook();
    await book.save('mill');

    expect([told, said]).toEqual([[], []]);
  });

  it('is made once, however often it is asked for meanwhile', async () => {
    const book = workbook();
    await Promise.all([book.save('mill'), book.save('mill')]);

    expect(plans).toHaveLength(1);
    expect(book.isBeingMade).toBe(false);
  });

  it('that the program fails to write is told as a fault of the program', async () => {
    const book = workbook(() => Promise.reject(new Error('torn')));
    await book.save('mill');

    expect(session.fault).toContain('torn');
    expect(book.isBeingMade).toBe(false);
  });
});
