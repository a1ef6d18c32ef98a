import { type Hazard, shownIn } from '../hazard.js';

const file = 'verification/hazards/shown/seal.test.ts';
const leak = shownIn(`${file}: a live leak`);
const seal = shownIn(`${file}: a seal`);

/** The hands at a live leak, and what they put on it. */
export const leakSeal: readonly Hazard[] = [
  {
    could: 'A hand holds the pad down while the putty closes round the leak.',
    would: 'The pressure would come under all of the pad and throw it off.',
    guards: ['seal/seal.ts: warnCrew Once the putty closes, the line lifts the pad with {0}, more tha'],
    tests: leak('whose pad lifts harder than hands hold it'),
  },
  {
    could: 'A leak of gas, of hot or of hazardous contents is sealed by hand.',
    would: 'It would burn, poison or scald whoever holds the putty.',
    guards: [
      'seal/by-hand.ts: refuse the contents are gas, or part of them is',
      "seal/by-hand.ts: refuse the contents are a hazard (<hazards.join(', ')>)",
      'seal/by-hand.ts: refuse the steel is too hot to work at a jet of its contents',
      'seal/by-hand.ts: notCovered by === undefined ? { text } : { text, found: by.found, limit: by',
    ],
    tests: leak('of gas, sealed by hand', 'of a hazard, sealed by hand', 'of hot water, sealed by hand'),
  },
  {
    could: 'The jet of a leak is too strong for a hand.',
    would: 'It would throw the pad back into the face behind it, or cut.',
    guards: [
      'seal/by-hand.ts: refuse the pressure in the line is too high for it',
      'seal/by-hand.ts: refuse the jet pushes too hard',
    ],
    tests: leak('under too much pressure for a hand', 'whose jet pushes too hard for a hand'),
  },
  {
    could: 'The wrap is laid on a leak that nothing holds, or on an emptied hole that fills again.',
    would: 'Laminate does not bond in the wet; contents would come out on the people at the hole.',
    guards: [
      'seal/seal.ts: need seal',
      'seal/seal.ts: warnCrew Nothing seals the leak: the line has to be empty, dry, isolated',
    ],
    tests: [...leak('that nothing holds'), ...seal('that is left out on an empty line')],
  },
  {
    could: 'The line is at more pressure than strap, fastener, sheet, thinned pipe or site allow.',
    would: 'The seal would let go under the hands that tighten it.',
    guards: ['seal/seal.ts: reasons the leak may not be sealed at this line pressure (limited by the'],
    tests: leak('under a pressure that its seal may not hold'),
  },
  {
    could: 'The band is tightened on a wall that is not there.',
    would: 'It would press the thinned pipe in, and the hole would grow.',
    guards: ['seal/seal.ts: need defect.remainingWall'],
    tests: seal('that presses on no wall'),
  },
  {
    could: 'The bands come off before the wrap while the line is under pressure.',
    would: 'Putty alone would hold the leak, and nothing is designed for that.',
    guards: [
      'laminate/footprint.ts: warnCrew From the hour that the bands come off',
      'laminate/footprint.ts: reasons the bands come off while the line pushes',
      "laminate/footprint.ts: if atWork.state === 'static head'",
      'laminate/footprint.ts: if forceOnPad <= mostOnPutty.value',
    ],
    tests: leak(
      'whose bands come off before the wrap',
      'whose bands come off under a pump',
      'whose bands come off against more than two hands hold',
    ),
  },
  {
    could: 'The sheet is smaller than the pad.',
    would: 'The putty would squeeze out beside it.',
    guards: ['seal/pad.ts: reasons the sheet is smaller than the pad'],
    tests: leak('under a sheet that does not cover its pad'),
  },
  {
    could: 'The pad hardly reaches beyond the hole.',
    would: 'It would close nothing: the leak would blow it out in the face of who tightens the band.',
    guards: ['seal/pad.ts: reasons the pad of the leak seal lies on too little steel beside the hol'],
    tests: seal('with a pad that lies on no steel'),
  },
  {
    could: 'A factor of the seal leaves next to nothing.',
    would: 'A small slip in what was measured, and band, sheet or pipe would fail.',
    guards: ['seal/factors.ts: warnCrew number'],
    tests: seal(
      'whose band may tear',
      'whose band may let go',
      'whose sheet may bend into the hole',
      'that may press the thinned pipe in',
    ),
  },
  {
    could: 'Pad, sheet or bands are unlike those that the trade uses, or the pipe is too small for a band.',
    would:
      'The pad would squeeze out, the sheet would bend or not follow the pipe, bands beside the pad would hold nothing.',
    guards: [
      'seal/pad.ts: warnCrew The pad is smaller than the trade makes it: {0} times the size o',
      'seal/pad.ts: warnCrew The pipe is smaller than banded seals are used on ({0}).',
      'seal/pad.ts: warnCrew The bands are wider than the pad of {0}: what lies beside it hol',
      'seal/clamp.ts: warnCrew The backing sheet is thinner or thicker than the trade uses ({0}',
    ],
    tests: seal(
      'with a pad smaller than usual',
      'on a pipe smaller than bands are used on',
      'with bands that lie beside its pad',
      'with a sheet of no usual thickness',
    ),
  },
];
