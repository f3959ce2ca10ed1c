import { afterEach, describe, expect, it } from 'vitest';
import { Turns } from '../../../renderer/engine/trials/turns.ts';

const turns = new Turns();
afterEach(() => turns.end());

describe('looking up from a long stretch of work', () => {
  it('lets both of two that look up at the same time go on', async () => {
    const went: string[] = [];

    await Promise.all([turns.lookUp().then(() => went.push('older')), turns.lookUp().then(() => went.push('newer'))]);

    expect(went).toEqual(['older', 'newer']);
  });
});
