/**
 * A unit is a product of powers of symbols. Every symbol is a base of its own: kWh and GJ, or bone-dry and air-dry tonnes, never turn
 * into one another by themselves. Whoever wants that multiplies by a declared constant, whose unit says what it does ("GJ/kWh").
 */
export interface Unit {
  /** Canonical text: equal units have equal texts. */
  readonly text: string;
  readonly exponents: ReadonlyMap<string, number>;
}

const known = new Map<string, Unit>();

/**
 * Reads "EUR/kWh", "kg/bdt", "EUR*a/t" or "1"; each "/" puts the one symbol after it below the line. Throws on malformed text, and on
 * powers of three digits: no quantity has them, and reckoning with one would take for ever.
 */
export function parseUnit(text: string): Unit {
  const cached = known.get(text);
  if (cached !== undefined) return cached;
  const exponents = new Map<string, number>();
  const pattern = /([*/]?)\s*([\p{L}%][\p{L}\d%-]*|1)(?:\^(-?\d{1,2}))?\s*/uy;
  if (text.trim() === '') throw new Error('Not a unit: ""');
  while (pattern.lastIndex < text.length) {
    const isFirst = pattern.lastIndex === 0;
    const match = pattern.exec(text);
    if (match === null || match[1] === (isFirst ? '*' : '')) throw new Error(`Not a unit: "${text}"`);
    const symbol = match[2] ?? '';
    const power = Number(match[3] ?? '1') * (match[1] === '/' ? -1 : 1);
    if (symbol !== '1') exponents.set(symbol, (exponents.get(symbol) ?? 0) + power);
  }
  const unit = unitOf(exponents);
  known.set(text, unit);
  return unit;
}

export function unitOf(exponents: ReadonlyMap<string, number>): Unit {
  const above: string[] = [];
  const below: string[] = [];
  for (const symbol of [...exponents.keys()].sort()) {
    const power = exponents.get(symbol) ?? 0;
    if (power > 0) above.push(power === 1 ? symbol : `${symbol}^${String(power)}`);
    if (power < 0) below.push(power === -1 ? symbol : `${symbol}^${String(-power)}`);
  }
  const text = [above.length > 0 ? above.join('*') : '1', ...below].join('/');
  const cached = known.get(text);
  if (cached !== undefined) return cached;
  const unit = { text, exponents: new Map([...exponents].filter(([, power]) => power !== 0)) };
  known.set(text, unit);
  return unit;
}

export const dimensionless = unitOf(new Map());

export function multiplyUnits(left: Unit, right: Unit): Unit {
  return combine(left, right, 1);
}

export function divideUnits(left: Unit, right: Unit): Unit {
  return combine(left, right, -1);
}

function combine(left: Unit, right: Unit, sign: 1 | -1): Unit {
  if (right === dimensionless) return left;
  const exponents = new Map(left.exponents);
  for (const [symbol, power] of right.exponents) exponents.set(symbol, (exponents.get(symbol) ?? 0) + sign * power);
  return unitOf(exponents);
}
