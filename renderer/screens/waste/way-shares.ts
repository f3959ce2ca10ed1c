import type { InputView, Spread, StreamMass } from '../../../src/index.ts';
import { lowerFirst } from '../../numbers/letter-case.ts';
import type { Facing } from './route-names.ts';

/** What of a stream goes to one destination: typed, or what the others leave. Shares in per cent. */
export interface WayShare {
  readonly destination: string;
  readonly label: string;
  readonly input: InputView | null;
  readonly share: number;
}

export function streamOf(facing: Facing, stream: string): StreamMass | null {
  const find = (streams: readonly StreamMass[]) => streams.find((each) => each.stream === stream);
  return find(facing.with.streams) ?? find(facing.base.streams) ?? null;
}

/** The stream that is open where nobody has chosen one: the largest. */
export function largestStream(facing: Facing): string {
  const streams = [...facing.with.streams, ...facing.base.streams];
  return streams.reduce((largest, each) => (each.wet > largest.wet ? each : largest), streams[0] ?? nothing).stream;
}
const nothing = { stream: '', wet: 0 };

/**
 * The shares of a stream over all destinations of the case, its usual one first. Ash cannot be burned again. A share that nobody has
 * given is nothing, and exists as soon as it is typed.
 */
export function wayShares(facing: Facing, stream: StreamMass, inputs: Spread['inputs']): readonly WayShare[] {
  const [main] = stream.parts;
  if (main === undefined) return [];
  const open = facing.with.waste.destinations.filter(
    ({ destination, kind }) => destination !== main.destination && (stream.stream !== 'ash' || kind !== 'own boiler'),
  );
  const others = open.map(({ destination, label }): WayShare => {
    const id = `residue.${stream.stream}.to.${destination}`;
    const input = inputs[id] ?? blank(id, `${stream.label}: share to ${lowerFirst(label)}`);
    return { destination, label, input, share: Number(input.value) };
  });
  const taken = others.reduce((sum, { share }) => sum + share, 0);
  const rest: WayShare = {
    destination: main.destination,
    label: main.label,
    input: null,
    share: Math.max(0, Number((100 - taken).toPrecision(12))),
  };
  return [rest, ...others];
}

/** What the shares add up to, in per cent: more than 100 where more is given away than there is. */
export function sumOfShares(shares: readonly WayShare[]): number {
  return Number(shares.reduce((sum, { share }) => sum + share, 0).toPrecision(12));
}

function blank(id: string, label: string): InputView {
  return {
    id,
    label,
    where: '',
    value: '0',
    unit: '%',
    low: null,
    high: null,
    allowed: { least: '0', most: '100' },
    status: 'none',
    source: 'Nothing goes there yet',
    note: '',
    touched: false,
    usual: null,
  };
}
