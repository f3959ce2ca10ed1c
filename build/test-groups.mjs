import { bundles } from './bundles.mjs';

/**
 * The groups of tests, in the order they run. A group that needs a program of the system names how to find and how to add it.
 * @typedef {{ title: string, programs: readonly string[], debianPackage: string, variable: string }} Need
 * @typedef {{ name: string, folder: string, need?: Need, bundles: readonly import('./bundles.mjs').Bundle[] }} Group
 * @type {readonly Group[]}
 */
export const testGroups = [
  { name: 'unit', folder: 'test', bundles: [] },
  {
    name: 'desktop',
    folder: 'test/desktop',
    need: {
      title: 'Chromium',
      programs: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'],
      debianPackage: 'chromium',
      // The tests take the browser's path from this variable.
      variable: 'CHROMIUM',
    },
    bundles: [bundles.cli, bundles.electron, bundles.renderer],
  },
  {
    name: 'office',
    folder: 'test/office',
    need: {
      title: 'LibreOffice Calc',
      programs: ['soffice', 'libreoffice'],
      debianPackage: 'libreoffice-calc-nogui',
      variable: 'SOFFICE',
    },
    bundles: [],
  },
];
