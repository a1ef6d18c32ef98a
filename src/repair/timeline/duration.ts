import type { Time } from '../../quantity/index.js';

/** A time, or why nobody knows it. */
export type Duration =
  | { readonly known: true; readonly time: Time }
  | { readonly known: false; readonly because: string };

/** Materials that cure on the pipe, by their use. */
export type CureUse = 'putty' | 'filler' | 'laminate';
