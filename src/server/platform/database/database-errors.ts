import { QueryFailedError } from 'typeorm';

/** What a database can answer instead of doing what it was asked, the same on both engines. */
export type DatabaseErrorCode =
  /** A value that must be the only one of its kind is there already; `constraint` names the rule. */
  | 'DATABASE.UNIQUE'
  /** The row refers to one that is not there, or others still refer to it. */
  | 'DATABASE.REFERENCE'
  /** A value outside its list or range; `constraint` names the rule. */
  | 'DATABASE.CHECK'
  | 'DATABASE.NOT_NULL'
  /** Others were writing for longer than one waits. Nothing was changed: it may be tried again. */
  | 'DATABASE.BUSY'
  /** Two units of work changed the same things; tried again already, and lost each time. */
  | 'DATABASE.CONFLICT'
  /** The database does not answer. Whether a commit that was under way took place is not known. */
  | 'DATABASE.CONNECTION'
  /** A write outside a unit of work. */
  | 'DATABASE.READ_ONLY'
  /** A statement of a unit of work that has already ended. */
  | 'DATABASE.UNIT_ENDED'
  | 'DATABASE.FAILED';

/**
 * The only error that leaves the database. It carries neither the statement nor its parameters nor the driver's
 * error, as these hold what people told in confidence and would end in a log.
 */
export class DatabaseError extends Error {
  constructor(
    readonly code: DatabaseErrorCode,
    message: string,
    /** Name of the violated constraint: of every unique and check rule on both engines. */
    readonly constraint?: string,
  ) {
    super(message);
  }
}

/** Finds the name of the unique rule over these columns; SQLite tells the columns alone. */
export type UniqueNamed = (table: string, columns: readonly string[]) => string | undefined;

interface DriverError {
  code?: string;
  constraint?: string;
  message?: string;
}

/** SQLSTATE of PostgreSQL (its manual, appendix "Error codes") by prefix, the longer ones first. */
const BY_STATE: [prefix: string, code: DatabaseErrorCode][] = [
  ['23505', 'DATABASE.UNIQUE'],
  ['23503', 'DATABASE.REFERENCE'],
  ['23001', 'DATABASE.REFERENCE'],
  ['23514', 'DATABASE.CHECK'],
  ['23502', 'DATABASE.NOT_NULL'],
  ['25006', 'DATABASE.READ_ONLY'],
  ['40001', 'DATABASE.CONFLICT'],
  ['40P01', 'DATABASE.CONFLICT'],
  ['55P03', 'DATABASE.BUSY'],
  ['53300', 'DATABASE.BUSY'],
  ['57P', 'DATABASE.CONNECTION'],
  ['08', 'DATABASE.CONNECTION'],
];

/** SQLite's own sentences: its extended codes do not reach us, and only the sentence tells the rules apart. */
const BY_SENTENCE: [sentence: RegExp, code: DatabaseErrorCode][] = [
  [/UNIQUE constraint failed: (?<what>.*)$/, 'DATABASE.UNIQUE'],
  [/FOREIGN KEY constraint failed/, 'DATABASE.REFERENCE'],
  [/CHECK constraint failed: (?<what>.*)$/, 'DATABASE.CHECK'],
  [/NOT NULL constraint failed/, 'DATABASE.NOT_NULL'],
  [/^SQLITE_READONLY/, 'DATABASE.READ_ONLY'],
  [/^SQLITE_(BUSY|LOCKED)/, 'DATABASE.BUSY'],
  [/^SQLITE_(CANTOPEN|MISUSE: Database is closed)/, 'DATABASE.CONNECTION'],
];

const UNREACHABLE =
  /^(ECONNREFUSED|ECONNRESET|EPIPE|ENOTFOUND|EAI_AGAIN|ETIMEDOUT|EHOSTUNREACH|ENETUNREACH|ENOENT|EACCES)$/;
const CONNECTION_ENDED =
  /Connection terminated|connection timeout|timeout exceeded when trying to connect|not queryable/i;

const MESSAGES: Record<Exclude<DatabaseErrorCode, 'DATABASE.FAILED'>, string> = {
  'DATABASE.UNIQUE': 'There is already one like it',
  'DATABASE.REFERENCE': 'It refers to something that is not there, or something still refers to it',
  'DATABASE.CHECK': 'A value is outside what is allowed',
  'DATABASE.NOT_NULL': 'A value that must be given is missing',
  'DATABASE.BUSY': 'The database was busy for longer than one waits; nothing was changed',
  'DATABASE.CONFLICT': 'Others changed the same things each time it was tried; nothing was changed',
  'DATABASE.CONNECTION': 'The database does not answer',
  'DATABASE.READ_ONLY': 'A write outside a unit of work: wrap it in UnitOfWork.run',
  'DATABASE.UNIT_ENDED': 'The unit of work has already ended',
};

/** A failure of ours by its code, in the words of the table above. */
export function databaseError(code: keyof typeof MESSAGES, constraint?: string): DatabaseError {
  const rule = constraint === undefined ? '' : ` (${constraint})`;
  return new DatabaseError(code, `${MESSAGES[code]}${rule}.`, constraint);
}

/** Any failure of a statement as one of ours; what is not the driver's passes through as it is. */
export function mapDriverError(error: unknown, uniqueNamed: UniqueNamed): unknown {
  if (error instanceof DatabaseError) return error;
  const ofStatement = error instanceof QueryFailedError;
  const driver: DriverError = (ofStatement ? error.driverError : error) as DriverError;
  const state = /^[0-9A-Z]{5}$/.test(driver.code ?? '') ? driver.code : undefined;
  if (state !== undefined) return ofState(state, driver);
  const message = driver.message ?? '';
  if (UNREACHABLE.test(driver.code ?? '') || CONNECTION_ENDED.test(message)) {
    return databaseError('DATABASE.CONNECTION');
  }
  for (const [sentence, code] of BY_SENTENCE) {
    const match = sentence.exec(message);
    if (match && code !== 'DATABASE.FAILED')
      return databaseError(code, ruleOf(match.groups?.['what'], uniqueNamed));
  }
  return ofStatement ? new DatabaseError('DATABASE.FAILED', message) : error;
}

function ofState(state: string, driver: DriverError): DatabaseError {
  const code = BY_STATE.find(([prefix]) => state.startsWith(prefix))?.[1] ?? 'DATABASE.FAILED';
  if (code !== 'DATABASE.FAILED') {
    return databaseError(code, code === 'DATABASE.REFERENCE' ? undefined : driver.constraint);
  }
  // Class 22, "data exception", quotes the value that was refused.
  const text = state.startsWith('22') ? 'The database refused a value' : (driver.message ?? '');
  return new DatabaseError(code, `${text} (SQLSTATE ${state}).`);
}

/** `account.email, account.kind` names columns, `ck_account_kind` or `index 'ix_name'` a rule. */
function ruleOf(what: string | undefined, uniqueNamed: UniqueNamed): string | undefined {
  if (what === undefined) return undefined;
  const columns = what.split(', ').map((path) => path.split('.'));
  const table = columns[0]?.length === 2 ? columns[0][0] : undefined;
  if (table === undefined) return what.replace(/^index '(.*)'$/, '$1');
  return uniqueNamed(
    table,
    columns.map(([, column]) => column ?? ''),
  );
}

/** Whether the same work may succeed when it is done again: nothing of it was kept. */
export function isConflict(error: unknown): boolean {
  return error instanceof DatabaseError && error.code === 'DATABASE.CONFLICT';
}
