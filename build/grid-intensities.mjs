// Writes src/paper/defaults/grid-intensities.json from the package of grid intensities, so that the program itself carries the figures and
// opens no connection. Run it after a new version of the package, and set the years below anew.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
// @ts-expect-error -- the package carries no types
import { averageIntensity, marginalIntensity } from '@tgwf/co2';
import { format } from 'prettier';
import { twoLetterCodes } from './lib/country-codes.mjs';
import { projectRoot } from './lib/project-root.mjs';

/** @typedef {{ name: string, value: string, year: string }} Row */
/** @typedef {{ package: string, attribution: string, licence: string, average: Record<string, Row>, marginal: Record<string, Row> }} Table */

const target = 'src/paper/defaults/grid-intensities.json';

// The package names no year for its averages. These were seen with their year in the public repository of the package; no value of this
// version is newer than 2024.
const knownYears = new Map([
  ...'GBR DEU FRA SWE FIN POL ITA ESP NLD AUT USA CAN BRA CHN IND JPN EU WORLD'
    .split(' ')
    .map((key) => /** @type {[string, string]} */ ([key, '2024'])),
  ['IDN', '2023'],
]);

// Keys that are neither a code nor a name to show.
const oddNames = new Map([
  ['EU', 'European Union'],
  ['MEMO:  EU 27', 'European Union of 27'],
  ['CHANNEL ISLANDS (U.K)', 'Channel Islands'],
]);
const initials = new Set(['ASEAN', 'OECD', 'G7', 'G20']);

const countryNames = new Intl.DisplayNames(['en'], { type: 'region', fallback: 'none' });

/** @returns {Table} */
export function gridIntensities() {
  const { version } = JSON.parse(readFileSync(`${projectRoot}/node_modules/@tgwf/co2/package.json`, 'utf8'));
  return {
    package: `@tgwf/co2 ${version}`,
    attribution:
      'Average: Ember, yearly electricity data, by way of CO2.js of the Green Web Foundation. The package does not say which year a value ' +
      'is of: the year is given where it is known and left empty elsewhere; none is newer than 2024. Marginal: operating margin of the ' +
      'default grid factors 2021, version 3.1, of the international financial institutions (UNFCCC), published by the Green Web ' +
      'Foundation. Turned from g to kg CO2e per kWh, otherwise unchanged.',
    licence: 'CC BY-SA 4.0 (this table, and whatever is made from it)',
    average: rowsOf(averageIntensity.data, (key) => knownYears.get(key) ?? ''),
    marginal: rowsOf(marginalIntensity.data, () => String(marginalIntensity.year)),
  };
}

/**
 * @param {Record<string, unknown>} data grams per kWh, as numbers or as text
 * @param {(key: string) => string} yearOf
 */
function rowsOf(data, yearOf) {
  const keys = Object.keys(data).sort();
  return Object.fromEntries(
    keys.map((key) => [key, { name: nameOf(key), value: inKilograms(key, data[key]), year: yearOf(key) }]),
  );
}

/** @param {string} key */
function nameOf(key) {
  const code = twoLetterCodes.get(key);
  const name = code === undefined ? (oddNames.get(key) ?? inTitleCase(key)) : countryNames.of(code);
  if (name === undefined) throw new Error(`No name for ${key}`);
  return name;
}

/** "LATIN AMERICA AND CARIBBEAN" as "Latin America and Caribbean". @param {string} key */
function inTitleCase(key) {
  if (initials.has(key)) return key;
  return key
    .toLowerCase()
    .replace(/\p{L}+/gu, (word) => (word === 'and' ? word : word.charAt(0).toUpperCase() + word.slice(1)));
}

/**
 * Moves the point by three places in the digits, since 215.79 / 1000 in binary would not end.
 * @param {string} key
 * @param {unknown} grams
 */
function inKilograms(key, grams) {
  const match = /^(\d+)(?:\.(\d+))?$/.exec(String(grams));
  if (match === null) throw new Error(`Not a plain number for ${key}: ${String(grams)}`);
  const whole = (match[1] ?? '').padStart(4, '0');
  const digits = `${whole.slice(0, -3)}.${whole.slice(-3)}${match[2] ?? ''}`;
  return digits.replace(/^0+(?=\d)/, '').replace(/\.?0+$/, '');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(`${projectRoot}/${target}`, await format(JSON.stringify(gridIntensities()), { parser: 'json' }));
  console.log(`Wrote ${target}.`);
}
