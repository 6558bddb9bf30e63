/**
 * RFC 6901 pointer from its reference tokens.
 * @example jsonPointer(['damage', 0, 'a/b']) // '/damage/0/a~1b'
 */
export function jsonPointer(tokens: readonly (string | number)[]): string {
  return tokens.map((token) => `/${String(token).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}
