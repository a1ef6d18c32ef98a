import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compile } from './compiler.js';

/** What the compiler refuses, in which words, and what it lets through. */

const library =
  "import * as q from '../../src/quantity/index.js';\nimport { hoopStress } from '../../src/pipe/stress/hoop-stress.js';\nvoid hoopStress; void q;\n";

function compileAll<Name extends string>(
  snippets: Readonly<Record<Name, string>>,
  header = library,
): Record<Name, string[]> {
  const texts = Object.entries<string>(snippets).map(([name, text]) => [name, header + text]);
  return compile(Object.fromEntries(texts) as Record<Name, string>);
}

describe('the five commonest mistakes', () => {
  const pipe = 'outsideDiameter: q.length.mm(219.1), wallThickness: q.length.mm(8.18)';
  const mistakes: Readonly<Record<string, readonly [snippet: string, firstLine: string]>> = {
    'an absolute pressure where the gauge reading belongs': [
      `hoopStress({ pressure: q.absolute.bar(10), ${pipe} });`,
      "Type 'AbsolutePressure' is not assignable to type 'GaugePressure'.",
    ],
    'a bare number': [
      'hoopStress({ pressure: q.gauge.bar(10), outsideDiameter: 219.1, wallThickness: q.length.mm(8.18) });',
      "Type 'number' is not assignable to type 'Length'.",
    ],
    'a temperature where a difference belongs': [
      'const rise: q.TemperatureDifference = q.temperature.degC(40); void rise;',
      "Type 'Temperature' is not assignable to type 'TemperatureDifference'.",
    ],
    'a stress where a modulus belongs': [
      'const steel: q.Modulus = q.stress.MPa(207000); void steel;',
      "Type 'Stress' is not assignable to type 'Modulus'.",
    ],
    'a quantity that is converted twice': [
      'q.length.mm(q.length.inch(8));',
      "Argument of type 'Length' is not assignable to parameter of type 'PlainNumber'.",
    ],
  };
  const errors = compileAll(Object.fromEntries(Object.entries(mistakes).map(([name, [snippet]]) => [name, snippet])));

  it.each(Object.entries(mistakes))('%s is named in the first line', (name, [, firstLine]) => {
    expect(errors[name]).toEqual([firstLine]);
  });
});

describe('what does not compile', () => {
  const notAssignable = (source: string, target: string): string =>
    `Type '${source}' is not assignable to type '${target}'.`;
  const notParameter = (source: string, target: string): string =>
    `Argument of type '${source}' is not assignable to parameter of type '${target}'.`;
  const forbidden: Readonly<Record<string, string>> = {
    'const x: q.AbsolutePressure = q.gauge.bar(1);': notAssignable('GaugePressure', 'AbsolutePressure'),
    'const x: q.GaugePressure = q.stress.MPa(1);': notAssignable('Stress', 'GaugePressure'),
    'const x: q.Stress = q.gauge.MPa(1);': notAssignable('GaugePressure', 'Stress'),
    'const x: q.Stress = q.modulus.GPa(1);': notAssignable('Modulus', 'Stress'),
    'const x: q.Temperature = q.temperatureDifference.kelvin(5);': notAssignable(
      'TemperatureDifference',
      'Temperature',
    ),
    'const x: q.Temperature = q.temperature.degC(20) + q.temperatureDifference.kelvin(5);': notAssignable(
      'number',
      'Temperature',
    ),
    'const x: q.TemperatureDifference = q.temperature.degC(20) - q.temperature.degC(5);': notAssignable(
      'number',
      'TemperatureDifference',
    ),
    'const x: q.Strain = q.ratio.percent(1);': notAssignable('Ratio', 'Strain'),
    'const x: q.Ratio = q.strain.percent(1);': notAssignable('Strain', 'Ratio'),
    'const x: q.Ratio = q.angle.deg(30);': notAssignable('Angle', 'Ratio'),
    'const x: q.Angle = q.ratio.fraction(1);': notAssignable('Ratio', 'Angle'),
    'const x: q.Length = 5;': notAssignable('number', 'Length'),
    'const x: q.Length = q.length.mm(5) * 2;': notAssignable('number', 'Length'),
    "const x: q.Length = '5 mm';": notAssignable('string', 'Length'),
    'const x: q.Length = q.area.mm2(5);': notAssignable('Area', 'Length'),
    'const x: q.CorrosionRate = q.speed.mPerS(1);': notAssignable('Speed', 'CorrosionRate'),
    'const x: q.Energy = q.moment.Nm(1);': notAssignable('Moment', 'Energy'),
    'const x: q.Length | undefined = q.time.s(5);': notAssignable('Time', 'Length | undefined'),
    'q.length.inMm(q.gauge.bar(1));': notParameter('GaugePressure', 'Length'),
    'q.toAbsolute(q.absolute.bar(2), q.absolute.bar(1));': notParameter('AbsolutePressure', 'GaugePressure'),
    'q.shift(q.temperature.degC(20), q.temperature.degC(5));': notParameter('Temperature', 'TemperatureDifference'),
    'q.difference(q.temperature.degC(20), q.temperatureDifference.kelvin(5));': notParameter(
      'TemperatureDifference',
      'Temperature',
    ),
    'q.gauge.psi(q.gauge.bar(1));': notParameter('GaugePressure', 'PlainNumber'),
    'q.toAbsolute(q.gauge.bar(1));': 'Expected 2 arguments, but got 1.',
  };
  const used = (snippet: string): string => (snippet.startsWith('const x') ? `${snippet} void x;` : snippet);
  const errors = compileAll(Object.fromEntries(Object.keys(forbidden).map((snippet) => [snippet, used(snippet)])));

  it.each(Object.entries(forbidden))('%s', (snippet, firstLine) => {
    expect(errors[snippet]).toEqual([firstLine]);
  });
});

describe('what compiles', () => {
  const allowed = {
    'the right call':
      'const x: q.Stress = hoopStress({ pressure: q.gauge.psi(800), outsideDiameter: q.length.inch(24), wallThickness: q.length.inch(0.25) }); void x;',
    'a reader for every caller':
      'const x: number = q.length.inMm(q.length.inch(1)) + q.temperature.inDegC(q.temperature.degF(86)); void x;',
    'a number that the program computed':
      'const n: number = Math.random(); void q.length.mm(n * 2); void [1, 2].map((v) => q.length.mm(v));',
    'a quantity as a number': 'const x: number = q.length.mm(5); void x;',
    // The holes that docs/quantities.md states: the compiler sees numbers.
    'a sum of unlike kinds, the stated hole': 'const x: number = q.length.mm(5) + q.gauge.bar(1); void x;',
    'a comparison of unlike kinds, the stated hole': 'void (q.length.mm(5) < q.gauge.bar(1));',
    'a cast, the stated hole': 'void (5 as q.Length);',
  };
  const errors = compileAll(allowed);

  it.each(Object.keys(allowed))('%s', (name) => {
    expect(errors[name as keyof typeof allowed]).toEqual([]);
  });
});

describe('the packed types', () => {
  const dist = new URL('../../dist/', import.meta.url);
  const header =
    "import * as esm from '../../dist/index.js';\nimport * as cjs from '../../dist/index.cjs';\nimport { hoopStress } from '../../dist/pipe.js';\nvoid esm; void cjs; void hoopStress;\n";

  it('are there', () => {
    const missing = ['index.d.ts', 'index.d.cts'].filter((file) => !existsSync(new URL(file, dist)));
    expect(missing, 'run npm run build').toEqual([]);
    expect(
      readFileSync(new URL('quantity/quantity.d.ts', dist), 'utf8').includes('PlainNumber'),
      'dist is older than src/quantity: run npm run build',
    ).toBe(true);
  });

  it('of the ESM and the CJS door are one and the same quantity', () => {
    const errors = compileAll(
      {
        'cjs to esm': 'const x: esm.Length = cjs.length.mm(5); void x;',
        'esm to cjs': 'const x: cjs.GaugePressure = esm.gauge.bar(5); void x;',
        'esm call':
          'void hoopStress({ pressure: cjs.gauge.bar(1), outsideDiameter: cjs.length.mm(9), wallThickness: esm.length.mm(1) });',
        'still two kinds': 'const x: esm.GaugePressure = cjs.absolute.bar(5); void x;',
      },
      header,
    );
    expect(errors).toEqual({
      'cjs to esm': [],
      'esm to cjs': [],
      'esm call': [],
      'still two kinds': ["Type 'AbsolutePressure' is not assignable to type 'GaugePressure'."],
    });
  });
});
