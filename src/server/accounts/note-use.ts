import { Logger } from '@nestjs/common';
import { DatabaseError } from '../platform/database/database-errors.js';

/** That something is in use is written down no more often than this. */
const NOTE_AFTER_MS = 5 * 60_000;

const log = new Logger('accounts');

/**
 * Writes down that a session or a device is in use, when it has not been for a while. Whoever only wants to go on,
 * perhaps to call for help, is not kept from it because others are writing.
 */
export async function noteUse(
  lastUsedAt: string | null,
  now: string,
  write: () => Promise<void>,
): Promise<void> {
  if (lastUsedAt !== null && Date.parse(now) - Date.parse(lastUsedAt) < NOTE_AFTER_MS) return;
  try {
    await write();
  } catch (error) {
    if (!(error instanceof DatabaseError)) throw error;
    log.warn(`The last use was not written down: ${error.code}`);
  }
}
