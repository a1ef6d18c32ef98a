import { describe, expect, it } from 'vitest';
import { createRecorder, decide, heading, step } from '../../src/formula/index.js';

const double = ({ x }: { readonly x: number }): number => 2 * x;

describe('a recorder', () => {
  it('keeps calls, decisions and headings in the order in which they came', () => {
    const recorder = createRecorder();
    heading(recorder, 'Pipe as found');
    const input = { x: 3 };
    expect(step(recorder, 'test/double', double, input)).toBe(6);
    decide(recorder, 'take 6', 'it is the larger one');
    expect(step(recorder, 'test/double', double, { x: 4 }, 'for comparison')).toBe(8);
    expect(recorder.entries).toEqual([
      { sort: 'heading', title: 'Pipe as found' },
      { sort: 'step', formula: 'test/double', input: { x: 3 }, result: 6 },
      { sort: 'decision', what: { text: 'take 6' }, because: { text: 'it is the larger one' } },
      { sort: 'step', formula: 'test/double', input: { x: 4 }, result: 8, purpose: 'for comparison' },
    ]);
  });

  it('is not needed: without one a step is the bare call', () => {
    expect(step(undefined, 'test/double', double, { x: 3 })).toBe(6);
    expect(() => decide(undefined, 'a', 'b')).not.toThrow();
    expect(() => heading(undefined, 'a')).not.toThrow();
  });

  it('does not record a call that was refused', () => {
    const recorder = createRecorder();
    const refusing = (): number => {
      throw new RangeError('no');
    };
    expect(() => step(recorder, 'test/refusing', refusing, {})).toThrow(RangeError);
    expect(recorder.entries).toEqual([]);
  });
});
