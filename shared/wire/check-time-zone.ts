/**
 * Three-letter names that some engines take from the ICU library and IANA does not know; `BST` would be
 * Dhaka there. Refusing them keeps server, phone and command line at one verdict.
 */
const ENGINE_NAMES = new Set(
  'ACT AET AGT ART AST BET BST CAT CNT CST CTT EAT ECT IET IST JST MIT NET NST PLT PNT PRT PST SST VST'.split(
    ' ',
  ),
);

/** Zones already found good, in lower case, so that the set stays as small as the zone database. */
const known = new Set<string>();

/**
 * Whether a name is a zone of the IANA database. Offsets are not names.
 * @example isTimeZone('America/Chicago') // true
 * @example isTimeZone('+05:00') // false
 * @example isTimeZone('America/Nowhere') // false
 */
export function isTimeZone(name: string): boolean {
  const key = name.toLowerCase();
  if (known.has(key)) return true;
  if (!/^[a-z][\w+/-]*$/.test(key) || key.startsWith('systemv/') || ENGINE_NAMES.has(name.toUpperCase())) {
    return false;
  }
  if (!engineKnows(name)) return false;
  known.add(key);
  return true;
}

function engineKnows(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en-US', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch (refusal) {
    // RangeError is how the language says "no such zone".
    if (refusal instanceof RangeError) return false;
    throw refusal;
  }
}
