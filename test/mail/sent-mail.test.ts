import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, expect, it } from 'vitest';
import { FolderCarrier } from '../../src/server/platform/mail/folder-carrier.js';
import type { MailCarrier } from '../../src/server/platform/mail/mail-carrier.js';
import type { SentMailLine } from '../../src/server/platform/mail/sent-mail.js';
import { describeEngines } from '../support/databases.js';
import { carrierTo, FROM, MailHouse, MAILS } from './mail-house.js';
import { PostOffice } from './post-office.js';

const office = await PostOffice.open();
const folder = await mkdtemp(join(tmpdir(), 'desk-sent-'));
afterAll(async () => {
  await office.close();
  await rm(folder, { recursive: true });
});

describeEngines('who wants to know that mail was taken', MAILS, (desk) => {
  beforeEach(() => desk.plainSql('DELETE FROM mail'));
  const round = async (carrier: MailCarrier): Promise<{ told: SentMailLine[]; house: MailHouse }> => {
    const house = new MailHouse(desk.unitOfWork, carrier);
    const told: SentMailLine[] = [];
    house.sent.listen(() => Promise.reject(new Error('This listener fails.')));
    house.sent.listen((mail) => {
      told.push(mail);
      return Promise.resolve();
    });
    await house.enqueue('a');
    await house.round();
    return { told, house };
  };

  it('is told what the server answered, and a listener that fails keeps neither mail nor others back', async () => {
    const { told, house } = await round(carrierTo(office.port));
    expect(told).toMatchObject([{ causeKey: 'a', toAddress: 'ana@rental.example', at: house.clock.now() }]);
    expect(told[0]?.words).toContain('Taken as number 17');
    expect(await house.states()).toEqual(['sent']);
    expect(house.reported).toEqual(['Error: This listener fails.']);
  });

  it('is told nothing of a file in a folder, which nobody outside has', async () => {
    const { told, house } = await round(new FolderCarrier(folder, FROM));
    expect(await house.states()).toEqual(['sent']);
    expect([told, house.reported]).toEqual([[], []]);
  });
});
