import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { afterEach, expect, it } from 'vitest';
import { describeEngines } from '../support/databases.js';
import { carrierTo, HOUR, MailHouse, MAILS } from './mail-house.js';
import { DyingOffice, type Ending, PostOffice } from './post-office.js';

const RUN = join(import.meta.dirname, '..', 'support', 'run-typescript.mjs');

/** Starting the other process takes seconds on a busy machine. */
const PATIENCE_MS = 90_000;

const TO = ['a', 'b', 'c'].map((name) => `${name}@rental.example`);

describeEngines('a service killed with mail on its way', MAILS, (desk) => {
  const open: { close(): Promise<void> }[] = [];
  afterEach(async () => {
    await Promise.all(open.splice(0).map((office) => office.close()));
    await desk.plainSql('DELETE FROM mail');
  });

  /** Runs the service against an office that keeps it waiting, and kills it when the office says so. */
  const kill = async (
    ending: Ending,
    when: (office: DyingOffice) => Promise<unknown>,
  ): Promise<DyingOffice> => {
    const office = await DyingOffice.open(ending);
    open.push(office);
    const command = [RUN, '/test/mail/mail-process.ts', JSON.stringify(desk.target), `${office.port}`];
    const service = spawn(process.execPath, command, { stdio: ['ignore', 'pipe', 'inherit'] });
    const closed = once(service, 'close');
    await once(createInterface(service.stdout), 'line');
    await when(office);
    service.kill('SIGKILL');
    expect(await closed).toEqual([null, 'SIGKILL']);
    return office;
  };

  /** The service started again, an hour later, at a server that works. */
  const restart = async (): Promise<{ house: MailHouse; office: PostOffice }> => {
    const office = await PostOffice.open();
    open.push(office);
    const house = new MailHouse(desk.unitOfWork, carrierTo(office.port));
    house.clock.letPass(HOUR);
    await house.round();
    return { house, office };
  };

  it(
    'sends once what had been queued',
    async () => {
      await kill({ at: 'greeting', how: 'is silent' }, (office) => office.hasCaller());
      const { house, office } = await restart();
      // Of the one that was being tried nobody can tell any more; the others go out.
      expect(await house.states()).toEqual(['uncertain', 'sent', 'sent']);
      expect(office.taken.map(({ to }) => to[0])).toEqual(TO.slice(1));
      await house.round();
      expect(office.taken).toHaveLength(2);
    },
    PATIENCE_MS,
  );

  it(
    'leaves to a person what may have been delivered',
    async () => {
      const dying = await kill({ at: 'message', how: 'is silent' }, (office) => office.hasMessage());
      expect(dying.wholeMessages).toBe(1);
      const { house, office } = await restart();
      expect(await house.states()).toEqual(['uncertain', 'sent', 'sent']);
      expect(office.taken.map(({ to }) => to[0])).toEqual(TO.slice(1));
    },
    PATIENCE_MS,
  );
});
