import * as v from 'valibot';
import { reference, textLike } from './schema-text.ts';

/** The code under which a residue stream is handed over, where it is another than usual: "03 03 10", with "*" where it is hazardous. */
export interface GivenWasteCode {
  readonly stream: string;
  readonly code: string;
}

const code = textLike(
  /^\d{2} \d{2} \d{2}\*?$/,
  'six digits such as "03 03 10", with * behind where the waste is hazardous',
);

export const wasteCodes = v.pipe(v.array(v.strictObject({ stream: reference, code })), v.maxLength(60));
