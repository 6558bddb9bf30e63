/** Longer words are not slips of a known one, and the comparison grows with the length. */
const LONGEST = 60;

/**
 * The known word nearest to a mistyped one; null when none is near.
 * @example suggestWord('Fall_Overboard', ['capsizing', 'fall-overboard']) // 'fall-overboard'
 * @example suggestWord('weather', ['place', 'people']) // null
 */
export function suggestWord(typed: string, words: readonly string[]): string | null {
  if (typed.length > LONGEST) return null;
  const plain = simplify(typed);
  let best: string | null = null;
  let bestDistance = Math.floor(plain.length / 3) + 1;
  for (const word of words) {
    // The distance is at least the difference in length, so most words need no comparison.
    if (Math.abs(plain.length - word.length) >= bestDistance) continue;
    const distance = editDistance(plain, simplify(word));
    if (distance < bestDistance) [best, bestDistance] = [word, distance];
  }
  return best;
}

function simplify(word: string): string {
  return word.toLowerCase().replaceAll(/[\s_-]+/g, '-');
}

/** Fewest insertions, deletions and replacements of one letter that turn one word into the other. */
function editDistance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const replaced = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
