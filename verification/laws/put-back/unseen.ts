import type { Unseen } from './fault.js';

/** Faults that no law over whole cases can express. */
export const unseen: readonly Unseen[] = [
  {
    did: 'nothing checked at the end of a design that no criterion resists less than the design pressure',
    because:
      'the check alone changes no design that is right: it is taken out with each fault of thickness that it would catch',
    shownBy: 'tests/faults/saved-plies.test.ts',
  },
  {
    did: 'straight lines between the rows of the water table called a tight line a leak',
    because:
      'the verdict on a fall is a formula that the caller asks on the day with his own readings; a design holds no readings of a test, only what it is filled with',
    shownBy: 'tests/faults/test-water.test.ts',
  },
  {
    did: 'the DNV formula took k = 10, and a formula by its id ignored options that it does not know',
    because: 'both are doors of single formulas; a case can state neither',
    shownBy: 'tests/faults/slips.test.ts',
  },
  {
    did: '60 bar in class 1 was told that a higher class is needed, not which',
    because: 'verdict and numbers are the same with either text',
    shownBy: 'tests/faults/hazards.test.ts',
  },
  {
    did: "the evidence of the hole's plate modulus did not say how far it is off",
    because: 'it is a word in the declaration of a formula, and changes no number',
    shownBy: 'tests/registry',
  },
  {
    did: 'a US sheet held degrees Celsius, one method had two names',
    because: 'texts: no number of a design changes',
    shownBy: 'tests/report',
  },
  {
    did: 'a hole was not covered at a low pressure and designed at a higher one',
    because:
      'the law is there (more pressure; a jet above 200 N) and no case among the first 6,000 draws meets the fault: open, the draws have to reach it',
    shownBy: 'tests/faults/leak-footprint.test.ts',
  },
  {
    did: 'a jet of any push was met by hand',
    because:
      'the law is there (more pressure; a jet above 200 N) and no case among the first 6,000 draws meets the fault: open, the draws have to reach it',
    shownBy: 'tests/faults/questions.test.ts',
  },
  {
    did: 'sharing checked no strain round the pipe',
    because:
      'the law is there (every criterion holds by itself) and no case among the first 6,000 draws of today meets the fault, as one of earlier draws did: open, the draws have to reach it',
    shownBy: 'tests/faults/sharing.test.ts',
  },
];
