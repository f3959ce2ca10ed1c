/** A decimal number as it is written: `digits` with the point `places` from the right. Nothing is lost to binary fractions. */
export interface ExactNumber {
  readonly digits: bigint;
  readonly places: number;
}

// A quotient that does not end is cut here, far beyond what any price is written with.
const quotientPlaces = 20;

export function exactNumber(plain: string): ExactNumber {
  const [whole = '0', fraction = ''] = plain.split('.');
  return { digits: BigInt(whole + fraction), places: fraction.length };
}

export function plainDigits({ digits, places }: ExactNumber): string {
  const sign = digits < 0n ? '-' : '';
  const text = (digits < 0n ? -digits : digits).toString().padStart(places + 1, '0');
  const whole = text.slice(0, text.length - places);
  const fraction = text.slice(text.length - places);
  return fraction === '' ? sign + whole : `${sign}${whole}.${fraction}`;
}

export function add(left: ExactNumber, right: ExactNumber): ExactNumber {
  const places = Math.max(left.places, right.places);
  return { digits: scaled(left, places) + scaled(right, places), places };
}

export function subtract(left: ExactNumber, right: ExactNumber): ExactNumber {
  return add(left, { ...right, digits: -right.digits });
}

export function multiply(left: ExactNumber, right: ExactNumber): ExactNumber {
  return { digits: left.digits * right.digits, places: left.places + right.places };
}

/** Null where the divisor is zero. */
export function divide(left: ExactNumber, right: ExactNumber): ExactNumber | null {
  if (right.digits === 0n) return null;
  const shift = 10n ** BigInt(right.places + quotientPlaces);
  const digits = (left.digits * shift) / (right.digits * 10n ** BigInt(left.places));
  return withoutZeros({ digits, places: quotientPlaces });
}

function scaled({ digits, places }: ExactNumber, to: number): bigint {
  return to >= places ? digits * 10n ** BigInt(to - places) : digits / 10n ** BigInt(places - to);
}

function withoutZeros({ digits, places }: ExactNumber): ExactNumber {
  return places > 0 && digits % 10n === 0n
    ? withoutZeros({ digits: digits / 10n, places: places - 1 })
    : { digits, places };
}
