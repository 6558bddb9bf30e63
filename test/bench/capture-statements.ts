import sqlite3 from 'sqlite3';

export interface Statement {
  readonly sql: string;
  readonly parameters: readonly unknown[];
}

type Call = (this: sqlite3.Database, sql: string, ...rest: unknown[]) => sqlite3.Database;

/** The statements that a piece of work sends to SQLite, in their order, whichever library sends them. */
export async function captureStatements(work: () => Promise<unknown>): Promise<Statement[]> {
  const statements: Statement[] = [];
  const prototype = sqlite3.Database.prototype as unknown as Record<'run' | 'all', Call>;
  const { run, all } = prototype;
  const watched = (call: Call): Call =>
    function (sql, ...rest) {
      const [parameters] = rest;
      statements.push({ sql, parameters: Array.isArray(parameters) ? [...(parameters as unknown[])] : [] });
      return call.call(this, sql, ...rest);
    };
  Object.assign(prototype, { run: watched(run), all: watched(all) });
  try {
    await work();
  } finally {
    Object.assign(prototype, { run, all });
  }
  return statements;
}
