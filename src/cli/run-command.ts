import { RulePackError } from '../server/law/law.api.js';

/**
 * Runs a command and ends with its status. A rule pack that cannot be used is the reader's to mend: its faults are
 * said without a stack, and the status is 1. Anything else is a fault of the program and is shown in full.
 */
export async function runCommand(command: () => number | Promise<number>): Promise<void> {
  try {
    process.exitCode = await command();
  } catch (error) {
    if (!(error instanceof RulePackError)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}
