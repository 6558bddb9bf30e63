/** `us`, `us-tx`: a code of a pack as the duties of a determination name it. */
export function jurisdictionId(code: string): string {
  return code === 'US' ? 'us' : `us-${code.toLowerCase()}`;
}
