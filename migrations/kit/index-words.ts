import type { QueryRunner } from 'typeorm';

/** Signs between words, beside white space. PostgreSQL would else take `a/b`, `a@b` and `-7` for one word each. */
const SIGNS = '!"#$%&\'()*+,-./:;<=>?@[\\]^_`{|}~´¨¡¿§°·«»‘’“”–—…';

export interface Indexed {
  table: string;
  /** The primary key. */
  key: readonly string[];
  /** Holds lower-case text without accents. */
  column: string;
}

/**
 * Makes the words of a column searchable, kept up to date by the database itself; platform/database/with-words.ts asks.
 * Words are taken as they are written: no language's endings or stop words, as `Will` and `May` are names here.
 */
export async function indexWords(runner: QueryRunner, indexed: Indexed): Promise<void> {
  const statements =
    runner.connection.options.type === 'postgres' ? postgresIndex(indexed) : sqliteIndex(indexed);
  for (const statement of statements) await runner.query(statement);
}

function postgresIndex({ table, column }: Indexed): string[] {
  const signs = `'${SIGNS.replaceAll("'", "''")}'`;
  return [
    `CREATE FUNCTION "${table}_words"(words text) RETURNS tsvector LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
      $$ SELECT to_tsvector('simple', translate(words, ${signs}, repeat(' ', ${SIGNS.length}))) $$`,
    `CREATE INDEX "ix_${table}_${column}_words" ON "${table}" USING gin ("${table}_words"("${column}"))`,
  ];
}

/**
 * The numbers of rows that SQLite gives by itself may change when the file is packed (VACUUM), as when it is copied for
 * safe keeping; so the index counts with numbers of its own.
 */
function sqliteIndex({ table, key, column }: Indexed): string[] {
  const search = `${table}_search`;
  const columns = key.map((name) => `"${name}"`).join(', ');
  const of = (row: string): string => key.map((name) => `${row}."${name}"`).join(', ');
  const seq = (row: string): string => `(SELECT seq FROM "${search}" WHERE (${columns}) = (${of(row)}))`;
  const add = `INSERT INTO "${search}_fts"(rowid, words) VALUES (${seq('new')}, new."${column}");`;
  const remove = `INSERT INTO "${search}_fts"("${search}_fts", rowid, words) VALUES ('delete', ${seq('old')}, old."${column}");`;
  return [
    `CREATE TABLE "${search}" (seq integer PRIMARY KEY, ${columns}, UNIQUE (${columns}))`,
    `CREATE VIEW "${search}_text" AS SELECT s.seq AS seq, t."${column}" AS words FROM "${search}" s
      JOIN "${table}" t ON (${of('t')}) = (${of('s')})`,
    `CREATE VIRTUAL TABLE "${search}_fts" USING fts5(words, content='${search}_text', content_rowid='seq',
      tokenize='unicode61 remove_diacritics 0')`,
    // What is withdrawn from the record leaves the index at once, not when it is next tidied up.
    `INSERT INTO "${search}_fts"("${search}_fts", rank) VALUES ('secure-delete', 1)`,
    `CREATE TRIGGER "${search}_insert" AFTER INSERT ON "${table}" BEGIN
      INSERT INTO "${search}"(${columns}) VALUES (${of('new')}); ${add} END`,
    `CREATE TRIGGER "${search}_update" AFTER UPDATE OF "${column}" ON "${table}" BEGIN ${remove} ${add} END`,
    `CREATE TRIGGER "${search}_delete" AFTER DELETE ON "${table}" BEGIN
      ${remove} DELETE FROM "${search}" WHERE seq = ${seq('old')}; END`,
    `INSERT INTO "${search}"(${columns}) SELECT ${columns} FROM "${table}"`,
    `INSERT INTO "${search}_fts"("${search}_fts") VALUES ('rebuild')`,
  ];
}
