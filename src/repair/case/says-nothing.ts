/** The whole text, in small letters and without punctuation; letters that stand alone are read as one word. */
const NOTHING: readonly string[] = [
  ...[
    'none',
    'no',
    'non',
    'nil',
    'null',
    'na',
    'nothing',
    'nobody',
    'noone',
    'no one',
    'anyone',
    'somebody',
    'someone',
  ],
  ...[
    'unknown',
    'undefined',
    'undecided',
    'unclear',
    'unsure',
    'open',
    'missing',
    'absent',
    'later',
    'todo',
    'to do',
    'tb',
  ],
  ...['yes', 'y', 'ok', 'okay', 'done', 'available', 'exists', 'see above', 'see below', 'as above', 'ditto', 'same'],
  ...['me', 'us', 'text', 'test', 'kein', 'keine', 'keiner', 'nein', 'nichts', 'niemand', 'unbekannt', 'offen', 'ja'],
  ...['aucun', 'aucune', 'rien', 'inconnu', 'ninguno', 'ninguna', 'nada', 'nadie', 'desconocido', 'nessuno', 'nessuna'],
  ...['verbal', 'oral', 'by mouth', 'word of mouth', 'notapplicable', 'notavailable', 'notneeded', 'notrequired'],
  ...['nottested', 'notknown', 'n0ne', 'we', 'i', 'they', 'it', 'has', 'have it', 'as usual', 'as always'],
  ...[
    'mystery',
    'illegible',
    'unreadable',
    'unmarked',
    'worn off',
    'lost',
    'label lost',
    'no label',
    'by phone',
    'phone',
  ],
  ...[
    'unsigned',
    'refused',
    'refuses',
    'skipped',
    'waived',
    'declined',
    'a guess',
    'experience',
    'obvious',
    'common sense',
  ],
];

/** How a text begins that goes on to say that there is nothing. `No. 17` is a number. */
const BEGINNINGS: readonly RegExp[] = [
  /^(?:(?:we|i|they|you|it|there|this|that|is|are|was|were|has|have|had|got|do|does|did|can|the|site|still) )*(?:no|not|none|nobody|never|without|lacks?|lacking|keine?|ohne|aucune?|sin) (?!\S*\d)/u,
  /^(?:(?:we|i|they|you|it|there|site) )*(?:dont|doesnt|didnt|isnt|arent|havent|hasnt|cannot|cant) /u,
  /^(?:unknown|missing|dunno|ask|waiting|awaits?|guess\w*|assum\w*|presum\w*|probably|perhaps|maybe|likely|possibly|supposedly) /u,
];

/** What makes any text one about something that is not there yet. */
const UNFINISHED =
  /(?<!\p{L})(?:tb[acd]|pending|awaiting|drafts?|unapproved|pendiente|ausstehend|(?:to|will|shall) (?:follow|come)|not (?:yet|tested|known|approved|done)|to be (?:checked|measured|verified|confirmed|decided|defined|determined|advised|agreed|announced|approved|done|issued|made|named|provided|stated|supplied|tested|written))(?!\p{L})/u;

/** Whether a text that should name something names nothing, or is not there. */
export function saysNothing(text: string | undefined): boolean {
  if (text === undefined) return true;
  const said = plainly(text);
  if (NOTHING.includes(said) || UNFINISHED.test(said)) return true;
  if (BEGINNINGS.some((beginning) => beginning.test(`${said} `))) return true;
  // Nothing, a letter, or one letter or nought again and again.
  return /^(?:[\p{Script=Latin}\p{Script=Cyrillic}\p{Script=Greek}0]?)$|^([\p{L}0])\1+$/u.test(said);
}

/** What makes a procedure one that is spoken, that nobody has written yet, or that is no longer in force. */
const UNWRITTEN =
  /^(?:verbal|oral|spoken|(?:by )?(?:tele)?phone|call|radio|(?:see|ask) (?:the |your )?(?:foreman|supervisor|boss|operator|engineer|manager|shift|superintendent)|ok|okay|yes|to be|\d+ be)(?!\p{L})|(?<!\p{L})(?:withdrawn|expired|superseded|cancell?ed|void|obsolete|rejected|(?:not|un) ?(?:yet|issued|approved|released|valid|signed)|no longer)(?!\p{L})|(?<!\p{L})(?:will|shall|coming|soon|tomorrow|next (?:day|week|month|shift|year)|(?<!or )later|being (?:written|prepared|revised)|expected|wip|in (?:preparation|progress|writing|review|the making|vorbereitung|arbeit)|under (?:preparation|review|revision)|folgt)(?!\p{L})/u;

/** A number of a document is no single figure. */
const NUMBER = /\p{N}\P{L}*\p{N}|\p{L}\P{L}*\p{N}|\p{N}\P{L}*\p{L}/u;

/** Whether a text names a document that is there: by its number, and with nothing in it of a day to come or of the spoken word. */
export function namesDocument(text: string): boolean {
  if (saysNothing(text)) return false;
  const said = plainly(text);
  return NUMBER.test(said) && !UNWRITTEN.test(said);
}

/** Cyrillic and Greek capitals that look like Latin ones, each under the one it looks like. */
const LOOKALIKE = 'АВЕКМНОРСТУХІЈΑΒΕΖΗΙΚΜΝΟΡΤΥΧ';
const LATIN = 'ABEKMHOPCTYXIJABEZHIKMNOPTYX';

/** The words of a text: small letters and figures with one space between, whatever they were written with. */
function plainly(text: string): string {
  const capitals = text
    .normalize('NFKC')
    .replace(/(?<!\p{L})[Nn][/.\\][Aa](?!\p{L})/u, 'none')
    .replaceAll(/[\p{Cf}'’]/gu, '')
    .toUpperCase();
  const latin = capitals.replaceAll(/[\p{Script=Cyrillic}\p{Script=Greek}]/gu, (letter) => {
    return LATIN.charAt(LOOKALIKE.indexOf(letter)) || letter;
  });
  const words = latin
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{M}\p{N}]+/gu, ' ')
    .trim();
  return words.replaceAll(/(?<![\p{L}\p{N}])(\p{L}) (?=\p{L}(?![\p{L}\p{N}]))/gu, '$1');
}

/** The first word that mixes letters of two alphabets, by which one word passes for another; none where none does. */
export function mixedWord(text: string): string | undefined {
  const words = text
    .normalize('NFC')
    .replaceAll(/\p{Cf}/gu, '')
    .match(/[\p{L}\p{M}]+/gu);
  return words?.find((word) => /\p{Script=Latin}/u.test(word) && FOREIGN.test(word) && !UNIT.test(word));
}

const FOREIGN = /[\p{Script=Cyrillic}\p{Script=Greek}]/u;
const UNIT = /^μ[gmlSs]$/u;
