import type { ObjectLiteral, SelectQueryBuilder } from 'typeorm';

export interface WordsOf {
  /** The table whose words migrations/kit/index-words.ts has made searchable, and its column. */
  table: string;
  column: string;
  /** The column of that table that is compared with `id`. */
  owner: string;
  /** What the query calls the id of what it looks for, such as `incident.id`. */
  id: string;
}

/** More words than anybody searches for. */
const MOST_WORDS = 12;

/**
 * Keeps what has each of the words of a phrase somewhere among its words, or one that begins with it. Any text may be
 * a phrase; one without a letter or digit in it finds nothing.
 */
export function withWords<T extends ObjectLiteral>(
  query: SelectQueryBuilder<T>,
  { table, column, owner, id }: WordsOf,
  phrase: string,
): SelectQueryBuilder<T> {
  const words = wordsOf(phrase).slice(0, MOST_WORDS);
  if (words.length === 0) return query.andWhere('1 = 0');
  const isPostgres = query.connection.options.type === 'postgres';
  words.forEach((word, place) => {
    const name = `${table}_word_${place}`;
    const found = isPostgres
      ? `SELECT w."${owner}" FROM "${table}" w WHERE "${table}_words"(w."${column}") @@ CAST(:${name} AS tsquery)`
      : `SELECT w."${owner}" FROM "${table}_search_fts" f JOIN "${table}_search" w ON w.seq = f.rowid
         WHERE "${table}_search_fts" MATCH :${name}`;
    query.andWhere(`${id} IN (${found})`, { [name]: isPostgres ? `'${word}':*` : `"${word}"*` });
  });
  return query;
}

/** `wordsOf("AT&T, O'Hare-x")` is `['at', 't', 'o', 'hare', 'x']`: nothing in a word means anything to an engine. */
export function wordsOf(phrase: string): string[] {
  return phrase
    .normalize('NFKD')
    .replaceAll(/\p{M}+/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}
