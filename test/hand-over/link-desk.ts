import { expect } from 'vitest';
import type { Browser } from '../accounts/house.js';
import type { PostOffice } from '../mail/post-office.js';

export interface Link {
  id: string;
  state: string;
  passcode: string;
  triesLeft: number;
  collectedAt: string | null;
  collections: { what: string }[];
}

/** What a mail says, without the encoding that long lines and accents need (RFC 2045, 6.7). */
export const plainOf = (text: string): string =>
  Buffer.from(
    text
      .replaceAll(/=\r\n/g, '')
      .replaceAll(/=([0-9A-F]{2})/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16))),
    'latin1',
  ).toString('utf8');

/** The mails that an office took for one address, the latest last. */
export const mailsTo = (office: PostOffice, address: string) =>
  office.taken.filter(({ to }) => to.includes(address));

/** Waits for one mail more than there were, and gives what it says and the address in the API that its link leads to. */
export async function nextMail(
  office: PostOffice,
  address: string,
  before: number,
): Promise<{ mail: string; at: string }> {
  await expect.poll(() => mailsTo(office, address).length).toBe(before + 1);
  const mail = plainOf(mailsTo(office, address).at(-1)?.text ?? '');
  const token = /https:\/\/desk\.rental\.example\/collect\/([\w-]{43})/.exec(mail)?.[1] ?? '';
  return { mail, at: `/api/collections/${token}` };
}

/** Downloads an archive as bytes. */
export const download = (browser: Browser, at: string) =>
  browser
    .get(at)
    .buffer(true)
    .parse((from, done) => {
      const parts: Buffer[] = [];
      from.on('data', (part: Buffer) => parts.push(part));
      from.on('end', () => done(null, Buffer.concat(parts)));
    });
