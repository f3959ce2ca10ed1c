/** How a number is to be shown. `decimals` fixes them; `significant` limits the digits; `sign` writes a plus on differences. */
export interface NumberForm {
  readonly locale: string;
  readonly decimals?: number;
  readonly significant?: number;
  readonly sign?: boolean;
}

/** As many decimals as the locale's own formatting can write. */
const mostDecimals = 20;

const formats = new Map<string, Intl.NumberFormat>();

/** A number as people of a region write it, with a true minus, and none on what rounds to nothing. Digits given as text keep all their digits. */
export function formatNumber(value: number | string, form: NumberForm): string {
  if (value === '' || (typeof value === 'number' && !Number.isFinite(value))) return 'not yet';
  const beyond = form.decimals === undefined && form.significant === undefined ? digitsBeyond(value) : '';
  const text =
    beyond === ''
      ? formatFor(form).format(value as number)
      : formatFor({ ...form, decimals: mostDecimals }).format(String(value).slice(0, -beyond.length) as never) + beyond;
  return text.replace(/-/gu, '\u2212');
}

function digitsBeyond(value: number | string): string {
  return typeof value === 'string' ? (/\.(\d*)$/u.exec(value)?.[1] ?? '').slice(mostDecimals) : '';
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
        : { maximumFractionDigits: mostDecimals };
  const format = new Intl.NumberFormat(locale, {
    ...digits,
    // Figures are typed in these digits, so they are shown in them.
    numberingSystem: 'latn',
    signDisplay: sign === true ? 'exceptZero' : 'negative',
  });
  formats.set(key, format);
  return format;
}
