import { describe, expect } from 'vitest';
import { type Angle, area, force, type GaugePressure, gauge, length, type Ratio } from '../../src/quantity/index.js';
import {
  aimedTension,
  assuredTension,
  bandedLength,
  highestPressure,
  linePressureOfTension,
  padHalfAngle,
  padSize,
} from '../../src/seal/index.js';
import { pushOnEnd } from './pipe-balance.js';
import { padForceSummed, tensionMarched } from './seal.js';
import { meets, rootOf, secondRoute } from './second-route.js';

/** The seal by search and by strips. */

/** Every tension that one torque may give, each way about its nominal value. */
const tensions = (nominal: number, scatter: number): number[] =>
  Array.from({ length: 201 }, (_, i) => nominal * (1 + (scatter * (i - 100)) / 100));

describe('a tension that scatters', () => {
  secondRoute(
    'seal/aimed-tension',
    'mathematics',
    'the nominal tension from which on none that it may give is too low',
    () => {
      for (const [needed, scatter] of [
        [4200, 0.25],
        [900, 0.1],
      ] as const) {
        const nominal = rootOf((T) => Math.min(...tensions(T, scatter)) - needed, 0, 1e5);
        meets(aimedTension({ neededTension: force.N(needed), scatter: scatter as Ratio }), nominal);
      }
    },
  );

  secondRoute(
    'seal/assured-tension',
    'mathematics',
    'the lowest that a nominal tension may give when none that it may give is too high',
    () => {
      for (const [limit, scatter] of [
        [6000, 0.25],
        [1500, 0.3],
      ] as const) {
        const nominal = rootOf((T) => Math.max(...tensions(T, scatter)) - limit, 0, 1e5);
        const found = assuredTension({ tensionLimit: force.N(limit), scatter: scatter as Ratio });
        meets(found, Math.min(...tensions(nominal, scatter)));
      }
    },
  );

  secondRoute(
    'seal/line-pressure-of-tension',
    'physics',
    'friction lost in small arcs, and the pressure of the band summed over the pad',
    () => {
      for (const [friction, bands, factor, angle] of [
        [0.2, 1, 1.5, Math.PI],
        [0.35, 2, 2, Math.PI / 2],
      ] as const) {
        const [halfAngle, D, pad] = [0.32, 0.1683, 0.054];
        const { end } = tensionMarched(3000, friction, angle);
        const press = bands * padForceSummed(end, halfAngle, D, 0.02);
        const found = linePressureOfTension({
          fastenerTension: force.N(3000),
          halfAngle: halfAngle as Angle,
          padArea: area.m2(pushOnEnd(pad)),
          factor,
          friction,
          angle: angle as Angle,
          bands,
        });
        meets(found, press / factor / pushOnEnd(pad), 1e-7);
      }
    },
  );
});

describe('what lies on the pipe', () => {
  secondRoute('seal/banded-length', 'arithmetic', 'strips of pipe that a band lies on', () => {
    for (const [bands, width] of [
      [3, 19],
      [1, 32],
    ] as const) {
      let strips = 0;
      for (let x = 0.05; x < 200; x += 0.1) {
        const band = Math.floor(x / width);
        if (band < bands) strips++;
      }
      meets(length.inMm(bandedLength({ bands, bandWidth: length.mm(width) })), strips / 10);
    }
  });

  secondRoute('seal/pad-half-angle', 'mathematics', 'chords laid along the pipe as far as half the pad reaches', () => {
    for (const [pad, D] of [
      [54, 168.3],
      [90, 60.3],
    ] as const) {
      // Each chord turns by what its own length asks for, and the angle is read from where the last one ends.
      const chords = 20_000;
      const step = pad / 2 / chords;
      let [x, y] = [0, D / 2];
      for (let i = 0; i < chords; i++) {
        const r = Math.hypot(x, y);
        [x, y] = [x + (step * y) / r, y - (step * x) / r];
        // Back on to the pipe.
        const scale = D / 2 / Math.hypot(x, y);
        [x, y] = [x * scale, y * scale];
      }
      meets(padHalfAngle({ padDiameter: length.mm(pad), outsideDiameter: length.mm(D) }), Math.atan2(x, y), 1e-7);
    }
  });

  secondRoute(
    'seal/pad-size',
    'mathematics',
    'the disc whose rings cover a multiple of those of the hole, or reach beyond it',
    () => {
      for (const [hole, multiple, multipleOf, margin] of [
        [6, 4, 'area', 2],
        [6, 3, 'diameter', 10],
        [25, 9, 'not stated', 15],
        [2, 2.25, 'area', 20],
      ] as const) {
        const byArea = rootOf((d) => pushOnEnd(d, 200) - multiple * pushOnEnd(hole, 200), 0, 1e4);
        let byDiameter = 0;
        for (let part = 0; part < 100 * multiple; part++) byDiameter += hole / 100;
        const byMargin = margin + hole + margin;
        const found = padSize({
          holeDiameter: length.mm(hole),
          multiple,
          multipleOf,
          margin: length.mm(margin),
        });
        meets(length.inMm(found.byArea), byArea);
        meets(length.inMm(found.byDiameter), byDiameter);
        meets(length.inMm(found.byMargin), byMargin);
        const [largest] = [multipleOf === 'area' ? byArea : byDiameter, byMargin].sort((a, b) => b - a);
        meets(length.inMm(found.diameter), largest ?? 0);
        const byName = { area: byArea, diameter: byDiameter, margin: byMargin };
        meets(byName[found.governing], largest ?? 0);
      }
    },
  );
});

secondRoute(
  'seal/highest-pressure',
  'arithmetic',
  'the pressure raised step by step until a limit stands against it',
  () => {
    const names = ['site', 'strap', 'fastener', 'sheet', 'pipe'] as const;
    for (const limits of [
      [1000, 820, 910, 2400, 3100],
      [700, 820, 910, 2400, 3100],
      [1000, 820, 640, 2400, 3100],
      [1000, 820, 910, 333, 3100],
      [1000, 820, 910, 2400, 120],
    ] as const) {
      let kPa = 0;
      while (limits.every((limit) => kPa < limit)) kPa++;
      const [site, strap, fastener, sheet, pipe] = limits.map((limit) => gauge.kPa(limit)) as [
        GaugePressure,
        GaugePressure,
        GaugePressure,
        GaugePressure,
        GaugePressure,
      ];
      const found = highestPressure({
        siteLimit: site,
        strapLimit: strap,
        fastenerLimit: fastener,
        sheetLimit: sheet,
        pipeLimit: pipe,
      });
      meets(gauge.inKPa(found.pressure), kPa);
      expect(found.governing).toBe(names[(limits as readonly number[]).indexOf(kPa)]);
    }
  },
);
