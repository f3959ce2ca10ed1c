/** How a number is to be shown. `decimals` fixes them; `significant` limits the digits; `sign` writes a plus on differences. */
export interface NumberForm {
  readonly locale: string;
  readonly decimals?: number;
  readonly significant?: number;
  readonly sign?: boolean;
}

const formats = new Map<string, Intl.NumberFormat>();

/** A number as people of a region write it, with a true minus. Digits given as text keep all their digits. */
export function formatNumber(value: number | string, form: NumberForm): string {
  if (value === '' || (typeof value === 'number' && !Number.isFinite(value))) return 'not yet';
  const text = formatFor(form).format(value as number);
  return text.replace(/-/gu, '\u2212').replace(/^\u2212(?=[0.,\u00a0\u202f']*$)/u, '');
}

function formatFor({ locale, decimals, significant, sign }: NumberForm): Intl.NumberFormat {
  const key = [locale, decimals, significant, sign].join('|');
  const known = formats.get(key);
  if (known !== undefined) return known;
  const digits =
    decimals !== undefined
      ? { minimumFractionDigits: decimals, maximumFractionDigits: decimals }
      : significant !== undefined
        ? { maximumSignificantDigits: significant }
        : { maximumFractionDigits: 20 };
  const format = new Intl.NumberFormat(locale, {
    ...digits,
    ...(sign === true ? { signDisplay: 'exceptZero' as const } : {}),
  });
  formats.set(key, format);
  return format;
}
