/**
 * Reads TIME_STAMP_URL, the authority that stamps heads of the log (RFC 3161). Plain HTTP will do: the answer is signed,
 * and the question is a hash.
 * @param faults gets a sentence where it cannot be used
 */
export function readTimeStampUrl(
  environment: Record<string, string | undefined>,
  faults: string[],
): string | null {
  const text = environment['TIME_STAMP_URL']?.trim();
  if (!text) return null;
  const url = URL.canParse(text) ? new URL(text) : undefined;
  const isWeb = url?.protocol === 'https:' || url?.protocol === 'http:';
  if (isWeb && url?.username === '' && url.password === '') return url.href;
  // It is not repeated: it may hold a password.
  faults.push('TIME_STAMP_URL cannot be read: give https://HOST/PATH, without a name or password in it.');
  return null;
}
