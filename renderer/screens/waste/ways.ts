import type { StreamMass } from '../../../src/index.ts';
import { lowerFirst } from '../../numbers/letter-case.ts';

const wordOf: Readonly<Record<string, string>> = {
  landfill: 'landfill',
  incineration: 'burned',
  'own boiler': 'boiler',
  spreading: 'spread',
  sale: 'sold',
  'gate-fee plant': 'plant',
};

type Part = StreamMass['parts'][number];

/** Where a stream goes, in the words there is room for: "boiler 60, burned outside 40"; shares in per cent. */
export function ways({ parts }: StreamMass): string {
  const used = parts.filter(({ share }) => share > 0);
  const words = used.map((part) => wordFor(part, used));
  if (used.length < 2) return words.join('');
  return used.map(({ share }, place) => `${words[place] ?? ''} ${String(Math.round(share * 100))}`).join(', ');
}

/** Two landfills are told apart by their own names. */
function wordFor(part: Part, used: readonly Part[]): string {
  const isAlone = used.filter(({ kind }) => kind === part.kind).length === 1;
  return isAlone ? (wordOf[part.kind] ?? lowerFirst(part.label)) : lowerFirst(part.label);
}
