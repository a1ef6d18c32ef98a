import { describe } from 'vitest';
import { type CaseFile, emptyLeak, quietLoss, withPaths } from '../../../tests/faults/cases.js';
import { show } from './judged.js';

/** Waits, and what they rest on. */

const steady: CaseFile = withPaths(quietLoss, { 'site.history': undefined, 'site.forecast': undefined });
const day = (temperature: string) => [{ duration: '200 h', temperature }];

const hours = (airTemperature: string) => [
  { duration: '200 h', pipeTemperature: '18 degC', airTemperature, relativeHumidity: '50 %' },
];

describe('a cure', () => {
  show('on steel that is too cold for it', {
    from: steady,
    with: { 'site.pipeTemperature': '9 degC' },
    verdict: 'not repairable',
    limit: 283.15,
  });
  show('outside what the maker tested, at one temperature', {
    from: steady,
    with: { 'site.pipeTemperature': '41 degC' },
    verdict: 'designed',
    says: /cure of glass/,
    step: 'cure',
  });
  show('outside what the maker tested, at some hour', {
    // Filler gels at that heat before it is mixed.
    from: withPaths(emptyLeak, { filler: 'none', 'site.history': day('20 degC'), 'site.forecast': undefined }),
    with: { 'site.history': day('42 degC') },
    verdict: 'designed',
    says: /cure of glass/,
    step: 'cure',
  });
  show('over hours that are too cold to count', {
    from: withPaths(emptyLeak, {
      'site.history': day('20 degC'),
      'site.forecast': undefined,
      'laminate.transitionCuredAt': '8 degC',
    }),
    with: {
      'site.history': [
        { duration: '20 h', temperature: '20 degC' },
        { duration: '10 h', temperature: '9 degC' },
        ...day('20 degC'),
      ],
    },
    verdict: 'designed',
    says: /too cold for glass/,
    step: 'cure',
  });
  show('on steel that is heated above its forecast', {
    from: emptyLeak,
    with: { 'site.history': day('30 degC'), 'laminate.transitionCuredAt': '28 degC' },
    verdict: 'designed',
    says: /heated above its forecast/,
    step: 'filler-wait',
  });
  show('in air that is colder than steel that nobody foresees', {
    from: withPaths(steady, { 'site.pipeTemperature': '20 degC', 'site.airTemperature': '20 degC' }),
    with: { 'site.airTemperature': '19 degC' },
    verdict: 'designed',
    says: /the air is colder/,
    step: 'cure',
  });
  show('on a history far above the air', {
    from: withPaths(steady, { 'site.history': day('18 degC'), 'site.airTemperature': '10 degC' }),
    with: { 'site.airTemperature': '2 degC' },
    verdict: 'designed',
    says: /count on steel of .* in air of/,
    step: 'cure',
  });
  show('on a forecast far above its own air', {
    from: withPaths(steady, { 'site.forecast': hours('10 degC') }),
    with: { 'site.forecast': hours('2 degC') },
    verdict: 'designed',
    says: /count on steel of .* in air of/,
    step: 'cure',
  });
  show('that no forecast reaches', {
    from: withPaths(emptyLeak, { 'site.history': day('20 degC'), 'site.forecast': undefined }),
    with: { 'site.history': [{ duration: '20 h', temperature: '20 degC' }] },
    verdict: 'needs input',
    asks: 'site.history',
  });
});

describe('a working time', () => {
  show('outside what the maker tested', {
    from: steady,
    with: { 'site.pipeTemperature': '41 degC' },
    verdict: 'designed',
    says: /working time of glass/,
    step: 'wrap',
  });
});
