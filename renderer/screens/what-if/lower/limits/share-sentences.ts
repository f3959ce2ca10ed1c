import type { LargestShare, LimitReading, Spread } from '../../../../../src/index.ts';
import { formatNumber } from '../../../../../src/wording/number-format.ts';

/** How far the recovered share of a route can go. */
export interface ShareSentence {
  readonly route: string;
  readonly sentence: string;
  /** Whether some limit is broken whatever the share, or at the share of today. */
  readonly isBroken: boolean;
}

/** One sentence for each route: those that face each other, then any other that can move its share. */
export function shareSentences(
  shares: readonly LargestShare[],
  readings: readonly LimitReading[],
  spread: Spread,
  locale: string,
): readonly ShareSentence[] {
  const facing = [spread.base, spread.with];
  const others = shares.filter(({ route }) => !facing.some(({ id }) => id === route)).map(({ route }) => route);
  return [...facing.map(({ id }) => id), ...others].map((route) => {
    const head = facing.find(({ id }) => id === route);
    const label = head?.label ?? readings.find((each) => each.route === route)?.routeLabel ?? route;
    const share = shares.find((each) => each.route === route);
    const isWatched = readings.some((each) => each.route === route);
    if (share !== undefined) return { route, ...sentenceOf(share, label, isWatched, locale) };
    const sentence =
      head?.kind === 'virgin'
        ? `${label} has no recovered line to take more.`
        : `${label} has no virgin line to give way.`;
    return { route, sentence, isBroken: false };
  });
}

function sentenceOf(
  { now, largest, binding }: LargestShare,
  label: string,
  isWatched: boolean,
  locale: string,
): Omit<ShareSentence, 'route'> {
  const begin = `Recovered share of ${label}: ${percent(now, locale)} now`;
  const names = listed(binding.map((limit) => limit.label));
  if (!isWatched) return { sentence: `${begin}; no limit is set for it.`, isBroken: false };
  if (largest === null) {
    const verb = binding.length === 1 ? 'is' : 'are';
    return { sentence: `${begin}; no share keeps all limits: ${names} ${verb} broken even at best.`, isBroken: true };
  }
  const isBeyond = now > largest + least;
  if (binding.length === 0) return { sentence: `${begin}; all limits are kept up to 100\u00a0%.`, isBroken: false };
  const verb = binding.length === 1 ? 'binds' : 'bind';
  const most = isBeyond ? 'but at most' : 'at most';
  return {
    sentence: `${begin}, ${most} ${percent(largest, locale)} within all limits; ${names} ${verb}.`,
    isBroken: isBeyond,
  };
}

// Shares closer together than this are the same share.
const least = 1e-6;

/** To a tenth of a per cent, rounded down: what is said to be kept must be. */
function percent(share: number, locale: string): string {
  const tenths = Math.floor(Number((share * 1000).toPrecision(9)));
  return `${formatNumber(tenths / 10, { locale })}\u00a0%`;
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
}
