/** A law that is known not to hold somewhere: where, and why it stays so for now. Each is counted, never hidden. */
export interface OpenException {
  readonly law: string;
  /** What comes out better. */
  readonly what: RegExp;
  readonly open: string;
}

export const openExceptions: readonly OpenException[] = [
  {
    law: 'a softer laminate',
    what: /^(?:overlap|length|return): /u,
    open: 'the bond has to pass E_a eps t of the laminate into the pipe. Where t does not rise as fast as E_a falls (whole plies, the least plies, the line of a leak), a softer laminate pulls less on the bond, and its overlap is shorter, and by that its tape and the hours; its thickness is not',
  },
  {
    law: 'a softer laminate',
    what: /^(?:plies|laid thickness): /u,
    open: 'a joint of sheet in bands reaches as far as the bond of one ply, E_a eps t/tau: in a softer laminate fewer joints lie in one reach, and fewer plies are added for those that end there; the thickness that the criteria ask for is not less',
  },
  {
    law: 'a softer laminate',
    what: /^verdict: (?:not repairable|not covered) to designed$/u,
    open: 'follows from the two above: a stiff laminate needs so many plies for its joints that it is no thin one, or so long an overlap that a weld lies under it; a softer one does not',
  },
  {
    law: 'a weaker bond in shear',
    what: /^return: /u,
    open: 'the joints of the bands lie on other places, and the cut sheet is some millimetres shorter though the repair is longer: parts of a second of laying',
  },
];
