/**
 * A name as lists are sorted by it and as two names count for the same: without regard to letter case and blanks, and
 * numbers by their value, so that PWC 7 comes before PWC 10 and is PWC 07.
 */
export function nameKey(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .trim()
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/\d+/g, (digits) => digits.replace(/^0+(?=\d)/, '').padStart(8, '0'));
}
