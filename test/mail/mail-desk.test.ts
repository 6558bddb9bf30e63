import { readdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { beforeAll, expect, it } from 'vitest';
import { MailRows } from '../../src/server/platform/database/mail-rows.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { MailQueue } from '../../src/server/platform/mail/mail-queue.js';
import { MailRounds } from '../../src/server/platform/mail/mail-rounds.js';
import { type Browser, describeHouse, type Person } from '../accounts/house.js';
import { REOPENED } from './mail-house.js';

interface Mail {
  readonly id: string;
  readonly version: number;
  readonly state: string;
  readonly words: string | null;
  readonly decisions: object[];
}

const NO_ADDRESS = '12 Shore Road';
const WHY = { reason: 'Ana says that nothing has come.' };

describeHouse('mail at the desk of administrators', (house) => {
  let person: Person;
  let administrator: Browser;
  beforeAll(async () => {
    person = await house().person('administrator');
    administrator = await house().signedIn(person);
  });

  let count = 0;
  const queue = async (to: string): Promise<string> => {
    count += 1;
    await house()
      .app.get(MailQueue)
      .enqueue({ to, message: REOPENED, key: `${count}`, incidentId: 'i-1' });
    await house().app.get(MailRounds).settled();
    const { items } = (await administrator.get('/api/mail?limit=1').expect(200)).body as { items: Mail[] };
    return items[0]?.id ?? '';
  };
  const list = async (query = ''): Promise<{ items: Mail[]; next: string | null }> =>
    (await administrator.get(`/api/mail${query}`).expect(200)).body as { items: Mail[]; next: string | null };
  const find = async (id: string): Promise<Mail> => {
    const mail = (await list()).items.find((one) => one.id === id);
    if (mail === undefined) throw new Error(`No mail ${id}`);
    return mail;
  };
  const decide = (decision: string, id: string, version: number, body: object = WHY) =>
    administrator.post(`/api/mail/${id}/${decision}`).set('If-Match', `"${version}"`).send(body);
  /** As a server leaves a mail that dies before it answers. */
  const leaveUncertain = async (id: string): Promise<void> => {
    const [rows, unitOfWork] = [house().app.get(MailRows), house().app.get(UnitOfWork)];
    await unitOfWork.run(async () => {
      const mail = await rows.find(id);
      if (mail !== null) await rows.change(mail, { state: 'uncertain' });
    });
  };

  it('is sent by itself once it is queued, into the folder of the service', async () => {
    const id = await queue('ana@rental.example');
    const mail = await find(id);
    expect(mail).toMatchObject({ state: 'sent', tries: 1, purpose: 'decision-reopened', incidentId: 'i-1' });
    const file = (mail.words ?? '').replace('Written to ', '');
    expect(await readdir(dirname(file))).toContain(`${id}@rental.example.eml`);
  });

  it('is listed by state, newest first, in pages', async () => {
    const failed = [await queue(NO_ADDRESS), await queue(NO_ADDRESS), await queue(NO_ADDRESS)];
    const first = await list('?state=failed&limit=2');
    expect(first.items.map(({ id }) => id)).toEqual([failed[2], failed[1]]);
    const second = await list(`?state=failed&limit=2&after=${first.next}`);
    expect([second.items.map(({ id }) => id), second.next]).toEqual([[failed[0]], null]);
    expect((await list('?state=sending')).items).toEqual([]);
    const wrong = await administrator.get('/api/mail?state=lost&sort=to').expect(422);
    const { errors } = wrong.body as { errors: { pointer: string }[] };
    expect(errors.map(({ pointer }) => pointer).sort()).toEqual(['/sort', '/state']);
  });

  it('is sent again when a person says so, once', async () => {
    const id = await queue('ana@rental.example');
    await leaveUncertain(id);
    const { version } = await find(id);
    const answers = await Promise.all([decide('resend', id, version), decide('resend', id, version)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    await house().app.get(MailRounds).settled();
    expect(await find(id)).toMatchObject({
      state: 'sent',
      tries: 1,
      decisions: [
        { ...WHY, decision: 'resend', stateBefore: 'uncertain', person: person.name, accountId: person.id },
      ],
    });
  });

  it('is never sent again once a person found that it had arrived', async () => {
    const id = await queue('ana@rental.example');
    await leaveUncertain(id);
    const { version } = await find(id);
    const answer = await decide('delivered', id, version, { reason: 'She has it.' }).expect(200);
    expect(answer.body).toMatchObject({ state: 'delivered', version: version + 1 });
    expect(answer.headers['etag']).toBe(`"${version + 1}"`);
    await decide('resend', id, version + 1).expect(409);
    expect(await find(id)).toMatchObject({ state: 'delivered', decisions: [{ reason: 'She has it.' }] });
  });

  it.each(['resend', 'delivered'])('of which one knows that it was sent takes no %s', async (decision) => {
    const id = await queue('ana@rental.example');
    const { version } = await find(id);
    await decide(decision, id, version).expect(409);
    expect(await find(id)).toMatchObject({ state: 'sent', version, decisions: [] });
  });

  it('that failed was not delivered, and without a mail address is not sent again', async () => {
    const id = await queue(NO_ADDRESS);
    await decide('delivered', id, 1).expect(409);
    await decide('resend', id, 1).expect(409);
    expect(await find(id)).toMatchObject({ state: 'failed', version: 1, decisions: [] });
  });

  it('that a server refused is sent again once somebody has seen to that', async () => {
    const id = await queue('ana@rental.example');
    await house().plainSql(`UPDATE mail SET state = 'failed', tries = 30 WHERE id = '${id}'`);
    await decide('resend', id, (await find(id)).version).expect(200);
    await house().app.get(MailRounds).settled();
    expect(await find(id)).toMatchObject({ state: 'sent', tries: 1 });
  });

  it('asks for a reason, for the version and for a mail that is there', async () => {
    const id = await queue(NO_ADDRESS);
    const { errors } = (await decide('resend', id, 1, { reason: ' ', why: 1 }).expect(422)).body as {
      errors: { pointer: string }[];
    };
    expect(errors.map(({ pointer }) => pointer).sort()).toEqual(['/reason', '/why']);
    await administrator.post(`/api/mail/${id}/resend`).send(WHY).expect(428);
    const stale = await decide('resend', id, 7).expect(412);
    expect(stale.body).toMatchObject({ current: { id, version: 1, state: 'failed' } });
    await decide('resend', '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10', 1).expect(404);
  });

  it('is answered as the OpenAPI document says', async () => {
    const document = (await house().browser().get('/api/openapi.json')).body as {
      components: { schemas: Record<string, { examples?: unknown[] }> };
    };
    const ajv = new Ajv2020({ strict: false });
    addFormats.default(ajv);
    ajv.addSchema({ ...document, $id: 'http://desk/' });
    const is = (schema: string, value: unknown): void => {
      const validate = ajv.compile({ $ref: `http://desk/#/components/schemas/${schema}` });
      expect([schema, validate(value), validate.errors]).toEqual([schema, true, null]);
    };
    const id = await queue('ana@rental.example');
    await leaveUncertain(id);
    is('Mail', (await decide('delivered', id, (await find(id)).version)).body);
    is('MailPage', await list());
    for (const name of ['Mail', 'MailDecision']) is(name, document.components.schemas[name]?.examples?.[0]);
  });
});
