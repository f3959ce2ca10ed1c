import { expect, test } from 'vitest';
import { philox } from '../../../src/kernel/random/philox.ts';

// Source: known answers for philox4x32 with 10 rounds, file tests/kat_vectors of Random123 by D. E. Shaw Research, release 1.14.0, as
// quoted in several public test suites. The third counter and key are the first digits of pi.
const answers = [
  ['00000000 00000000 00000000 00000000', '00000000 00000000', '6627e8d5 e169c58d bc57ac4c 9b00dbd8'],
  ['ffffffff ffffffff ffffffff ffffffff', 'ffffffff ffffffff', '408f276d 41c83b0e a20bc7c6 6d5451fd'],
  ['243f6a88 85a308d3 13198a2e 03707344', 'a4093822 299f31d0', 'd16cfe09 94fdcceb 5001e420 24126ea1'],
] as const;

test.each(answers)('the counter %s with the key %s gives %s', (counter, key, answer) => {
  const [c0, c1, c2, c3] = words(counter);
  const [k0, k1] = words(key);
  const out = new Uint32Array(4);

  philox(c0!, c1!, c2!, c3!, k0!, k1!, out);

  expect([...out].map((word) => word.toString(16).padStart(8, '0')).join(' ')).toBe(answer);
});

function words(text: string): number[] {
  return text.split(' ').map((word) => Number.parseInt(word, 16));
}
