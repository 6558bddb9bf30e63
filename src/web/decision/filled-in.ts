/**
 * Texts as they are sent: without the space around them, and without those that were left empty.
 * @example filledIn({ way: ' by phone ', words: '' }) // { way: 'by phone' }
 */
export function filledIn(texts: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(texts)
      .map(([name, text]) => [name, text.trim()] as const)
      .filter(([, text]) => text !== ''),
  );
}
