import { randomUUID } from 'node:crypto';
import type { Recipient } from '../../shared/hand-over/hand-over-profile.js';
import { type Browser, create } from '../accounts/house.js';
import { bodyOf, openIncident, write } from '../follow-up/desk.js';

const told = (value: unknown) => ({ value, known: 'told', by: 'Ann Lee' });

/** Words that stand in one field each, so that whoever finds one knows what leaked. */
export const PLANTED = {
  medical: 'tourniquet-and-sutures-xq',
  birthDate: '1987-03-14',
  pattern: '=HYPERLINK("http://x")',
  privileged: 'counsel fears the governor was off xq',
  child: 'Tamsin Quillfeather',
  statement: 'I did not see the buoy xq',
};

/** An incident in which everything is written down that must not reach everybody. */
export async function plantedIncident(manager: Browser, now: string): Promise<string> {
  const { id } = await openIncident(manager, now);
  await write(manager, id, 'people', {
    people: [
      {
        id: 'p1',
        name: 'Ann Lee',
        phone: '903-555-0117',
        birthDate: told(PLANTED.birthDate),
        age: told(39),
        outcome: told('injured'),
        care: told('beyond-first-aid'),
        hospital: told(PLANTED.medical),
      },
      {
        id: 'p2',
        name: PLANTED.child,
        age: told(9),
        minor: { guardian: 'Ann Lee' },
        outcome: told('unhurt'),
      },
    ],
  });
  await write(manager, id, 'account', { whatHappened: told(`${PLANTED.child} fell off the tube.`) });
  await write(manager, id, 'rental', { agreement: PLANTED.pattern, renterPerson: 'p1' });
  await write(manager, id, 'statements', {
    statements: [{ id: 's1', person: 'p1', name: 'Ann Lee', words: PLANTED.statement }],
  });
  return id;
}

export async function privilegedNote(
  manager: Browser,
  incident: string,
  counselAccount: string,
): Promise<void> {
  const asked = { counsel: 'Rosa Díaz', counselAccount, requestedOn: '2026-06-14' };
  const path = `/api/incidents/${incident}/counsel-requests`;
  const { id } = bodyOf<{ id: string }>(await create(manager, path, asked).expect(201));
  await create(manager, `${path}/${id}/entries`, { words: PLANTED.privileged }).expect(201);
}

export const draftFor = (recipient: Recipient, more: object = {}): object => ({
  recipient,
  name: 'Red River Marine Insurance',
  purpose: 'The claim of 13 June',
  ...more,
});

export interface Packet {
  id: string;
  number: string;
  head: { size: number; root: string };
  privileged: boolean;
  overrides: { what: string; reason: string }[];
  cautions: { what: string; read: boolean }[];
  looks: { by: { person: string } }[];
  deliveries: { to: string }[];
}

export async function makePacket(
  browser: Browser,
  incident: string,
  draft: object,
  key: string = randomUUID(),
): Promise<Packet> {
  return bodyOf<Packet>(await create(browser, `/api/incidents/${incident}/packets`, draft, key).expect(201));
}

export async function archiveOf(browser: Browser, incident: string, { id }: Packet): Promise<Buffer> {
  const answer = await browser
    .get(`/api/incidents/${incident}/packets/${id}/archive`)
    .buffer(true)
    .parse((from, done) => {
      const parts: Buffer[] = [];
      from.on('data', (part: Buffer) => parts.push(part));
      from.on('end', () => done(null, Buffer.concat(parts)));
    })
    .expect(200);
  return answer.body as Buffer;
}
