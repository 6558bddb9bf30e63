import { mkdirSync, readFileSync } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { LogHead } from '../../../shared/proof/merkle-log.js';

/**
 * The heads of the log, one a line, in a file apart from the database: whoever takes the last amendments out of the
 * database leaves a head here that it no longer has. Each line is on the disk before its amendment is acknowledged.
 */
export class HeadsFile {
  private waiting: string[] = [];
  private flushing: Promise<void> = Promise.resolve();
  private handle: FileHandle | undefined;

  constructor(private readonly file: string) {}

  /** Those that come while the disk is busy go there together. */
  append(head: LogHead): Promise<void> {
    this.waiting.push(`${JSON.stringify(head)}\n`);
    this.flushing = this.flushing.catch(() => undefined).then(() => this.flush());
    return this.flushing;
  }

  async close(): Promise<void> {
    await this.flushing.catch(() => undefined);
    await this.handle?.close();
    this.handle = undefined;
  }

  private async flush(): Promise<void> {
    if (this.waiting.length === 0) return;
    const lines = this.waiting.join('');
    this.waiting = [];
    if (this.handle === undefined) {
      mkdirSync(dirname(this.file), { recursive: true, mode: 0o700 });
      this.handle = await open(this.file, 'a', 0o600);
    }
    await this.handle.appendFile(lines);
    await this.handle.datasync();
  }
}

export interface KeptHeads {
  readonly heads: LogHead[];
  /** Numbers of the lines that are no heads. */
  readonly unreadable: number[];
}

/** Reads the file; a last line that was cut off in the middle, as by a failing power, is no fault. */
export function readHeads(file: string): KeptHeads {
  const lines = textOf(file).split('\n');
  const heads: LogHead[] = [];
  const unreadable: number[] = [];
  for (const [index, line] of lines.slice(0, -1).entries()) {
    const head = headOf(line);
    if (head === undefined) unreadable.push(index + 1);
    else heads.push(head);
  }
  return { heads, unreadable };
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return '';
    throw error;
  }
}

function headOf(line: string): LogHead | undefined {
  try {
    const { size, root } = JSON.parse(line) as Partial<LogHead>;
    return typeof size === 'number' && typeof root === 'string' ? { size, root } : undefined;
  } catch (error) {
    if (error instanceof SyntaxError || error instanceof TypeError) return undefined;
    throw error;
  }
}
