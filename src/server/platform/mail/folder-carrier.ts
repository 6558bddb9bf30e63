import { mkdir, open, rename } from 'node:fs/promises';
import { join } from 'node:path';
import type { Sender } from '../mail-config.js';
import { composeLetter } from './compose-letter.js';
import { type Letter, type MailCarrier, type Outcome, wordsOf } from './mail-carrier.js';

/**
 * Writes mail as `.eml` files that any mail program opens. The file is named by its Message-ID and is there whole or not
 * at all, on the disk before it counts as sent: a try that is repeated writes the same file again.
 */
export class FolderCarrier implements MailCarrier {
  readonly kind = 'folder';

  constructor(
    private readonly folder: string,
    private readonly from: Sender,
  ) {}

  async carry(letter: Letter): Promise<Outcome> {
    try {
      const file = join(this.folder, `${letter.messageId}.eml`);
      await this.write(file, await composeLetter(letter, this.from));
      return { kind: 'sent', words: `Written to ${file}` };
    } catch (error) {
      return { kind: 'unreachable', words: wordsOf(error) };
    }
  }

  private async write(file: string, message: Buffer): Promise<void> {
    await mkdir(this.folder, { recursive: true, mode: 0o700 });
    const unfinished = `${file}.part`;
    const handle = await open(unfinished, 'w', 0o600);
    try {
      await handle.writeFile(message);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(unfinished, file);
    // The name is in the folder, and the folder has to reach the disk too.
    const folder = await open(this.folder, 'r');
    try {
      await folder.sync();
    } finally {
      await folder.close();
    }
  }
}
