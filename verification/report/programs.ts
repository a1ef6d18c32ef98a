import type { Source } from '../../src/formula/index.js';

/** Programs that are run against the library. No formula stands on them, so they are no sources of it. */
export const programs: Readonly<Record<string, Omit<Source, 'reached'>>> = {
  'program-fluids': {
    author: 'Bell, Caleb',
    title:
      'fluids: fluid dynamics component of Chemical Engineering Design Library (Debian package python3-fluids 1.0.22-2)',
    year: 2022,
    note: 'Run for the frozen table of pipe sizes.',
  },
  'program-mathjs': {
    author: 'de Jong, Jos',
    title: 'mathjs 15.2.0: expressions with units and at 64 digits',
    year: 2026,
    note: 'Runs with the tests; the year is that of reading.',
  },
  'program-decimal': {
    author: 'McLaughlin, Michael',
    title: 'decimal.js 10.6.0: arithmetic of any precision',
    year: 2026,
    note: 'Runs with the tests; the year is that of reading.',
  },
};
