import { EventEmitter } from 'node:events';
import { describe, expect, it } from 'vitest';
import { endWithReader } from '../../src/cli/end-with-reader.ts';
import { numberLocale } from '../../src/cli/number-locale.ts';
import { demonstrationFile, tonne } from './terminal.ts';

describe('the number format of the terminal', () => {
  it.each([
    [{ LANG: 'de_AT.UTF-8' }, 'de-AT'],
    [{ LANG: 'de_DE@euro' }, 'de-DE'],
    [{ LANG: 'fr_CH' }, 'fr-CH'],
    [{ LC_NUMERIC: 'de_CH.UTF-8', LANG: 'en_US.UTF-8' }, 'de-CH'],
    [{ LC_ALL: 'sv_SE.UTF-8', LC_NUMERIC: 'de_CH.UTF-8', LANG: 'en_US.UTF-8' }, 'sv-SE'],
    [{ LC_ALL: '', LC_NUMERIC: '', LANG: 'fi_FI.UTF-8' }, 'fi-FI'],
    [{ LC_ALL: 'C', LANG: 'de_DE.UTF-8' }, 'en'],
    [{ LANG: 'C.UTF-8' }, 'en'],
    [{ LANG: 'POSIX' }, 'en'],
    [{ LANG: '../../etc' }, 'en'],
    [{}, 'en'],
  ])('of %j is %s', (environment, locale) => {
    expect(numberLocale(environment)).toBe(locale);
  });

  it('is that in which figures are printed', async () => {
    expect((await tonne(['compare', demonstrationFile], 'de-AT')).out).toContain('\u221260,36');
    expect((await tonne(['compare', demonstrationFile], 'en')).out).toContain('\u221260.36');
  });
});

describe('a reader who has seen enough', () => {
  it('ends the program without a complaint', () => {
    const output = new EventEmitter();
    let ended = 0;
    endWithReader(output, () => (ended += 1));
    output.emit('error', Object.assign(new Error('write EPIPE'), { code: 'EPIPE' }));

    expect(ended).toBe(1);
  });

  it('is not taken for any other fault', () => {
    const output = new EventEmitter();
    endWithReader(output, () => undefined);

    expect(() => output.emit('error', Object.assign(new Error('disk'), { code: 'EIO' }))).toThrow('disk');
  });
});
