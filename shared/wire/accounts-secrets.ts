/** NIST SP 800-63B-4, section 3.1.1.2 (2025): at least 15 characters where the password is all that is asked for. */
export const SHORTEST_PASSWORD = 15;

/** Long enough for any sentence; a limit at all, as hashing a longer one would cost everybody else. */
export const LONGEST_PASSWORD = 256;

/** Fewer different characters than this are a repetition and no password. */
const FEWEST_CHARACTERS = 6;

export interface PasswordOf {
  readonly name: string;
  readonly signInName: string;
}

/**
 * What is wrong with a new password; null when nothing is. No rule asks for digits or signs: length is what counts
 * (NIST SP 800-63B-4, section 3.1.1.2, which forbids such rules and asks to refuse what others would guess first).
 * @example newPasswordFault('low tide, red buoy', { name: 'Ana Ruiz', signInName: 'ana' }) // null
 * @example newPasswordFault('short', { name: 'Ana Ruiz', signInName: 'ana' })
 * // 'Must have at least 15 characters: four words in a row are easy to keep in mind.'
 */
export function newPasswordFault(password: string, { name, signInName }: PasswordOf): string | null {
  const plain = plainly(password);
  if ([...plain].length < SHORTEST_PASSWORD) {
    return `Must have at least ${SHORTEST_PASSWORD} characters: four words in a row are easy to keep in mind.`;
  }
  if (password.length > LONGEST_PASSWORD) return `Must have at most ${LONGEST_PASSWORD} characters.`;
  if (new Set(plain).size < FEWEST_CHARACTERS) return 'Must not be the same few characters again and again.';
  // What is left without the person's own names has to be a password by itself.
  const rest = [name, signInName].reduce((left, own) => left.replaceAll(plainly(own), ''), plain);
  if ([...rest].length < SHORTEST_PASSWORD / 2) return 'Must not be made of your own name.';
  return null;
}

function plainly(text: string): string {
  return text.normalize('NFKC').toLowerCase();
}

/**
 * What is wrong with a PIN; null when nothing is. It only confirms, on an enrolled device, who made an entry, and a few
 * wrong ones close it for a while; so four digits do, but not those that anyone would try first.
 * @example pinFault('4071') // null
 * @example pinFault('1234') // 'Must not be a run or one digit again and again.'
 */
export function pinFault(pin: unknown): string | null {
  if (typeof pin !== 'string' || !/^\d{4,8}$/.test(pin)) return 'Must be 4 to 8 digits, as text.';
  const steps = new Set([...pin].slice(1).map((digit, place) => Number(digit) - Number(pin[place])));
  const [step] = steps;
  return steps.size === 1 && [-1, 0, 1].includes(step ?? 0)
    ? 'Must not be a run or one digit again and again.'
    : null;
}
