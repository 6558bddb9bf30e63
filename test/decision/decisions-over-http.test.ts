import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { craftOf, IncidentCase, operatorOf, peopleWith, told } from './incident-case.js';

const FEDERAL = 'us/accident-report';
const TEXAS = 'us-tx/accident-report';
const OKLAHOMA = 'us-ok/accident-report';
const STITCHED = { outcome: told('injured'), care: told('beyond-first-aid') };
const HOUR = 3_600_000;

const codesOf = ({ body }: { body: unknown }): string[] =>
  (body as { errors: { code: string }[] }).errors.map(({ code }) => code);

describeHouse('what is signed and filed', (house) => {
  let manager: Browser;
  let staff: Browser;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    staff = await house().signedIn('staff');
  });

  const hurt = async (): Promise<IncidentCase> => {
    const one = await IncidentCase.quietGrounding(manager, house().now());
    await one.write('people', peopleWith([operatorOf('PWC-7', STITCHED)]));
    return one;
  };
  const inHours = (hours: number): string => new Date(Date.parse(house().now()) + hours * HOUR).toISOString();

  describe('on a report that is required', () => {
    it('is never "no report due" without a reason and named counsel', async () => {
      const one = await hurt();
      const bare = await one.sign(TEXAS, { kind: 'no-report' });
      expect(bare.status).toBe(409);
      expect(codesOf(bare).sort()).toEqual(['COUNSEL_MISSING', 'REASON_MISSING']);
      const reasoned = { kind: 'no-report', reason: 'Not the owner of that craft.', counsel: 'J. Vance' };
      expect((await one.sign(TEXAS, reasoned)).status).toBe(201);
    });

    // 33 CFR 173.55(a)(2) and (b)(2): within 48 hours where somebody needs more than first aid.
    it('waits until a time before its clock for named questions, and no longer', async () => {
      const one = await hurt();
      const wait = (hours: number, questions: string[]) =>
        one.sign(FEDERAL, { kind: 'wait', until: inHours(hours), questions });
      expect(codesOf(await wait(49, ['Was it a sprain?']))).toEqual(['WAIT_PAST_CLOCK']);
      const asked = await wait(20, []);
      expect([asked.status, codesOf(asked)]).toEqual([409, ['WAIT_NAMES_NO_QUESTION']]);
      expect((await wait(20, ['Was it a sprain?'])).status).toBe(201);
      expect(await one.duty(FEDERAL)).toMatchObject({ state: 'waiting' });
    });

    it('is signed once by a retry, on the determination that stands, and by no member of staff', async () => {
      const one = await hurt();
      const { determination } = await one.duties();
      const body = { kind: 'report', determination, duty: FEDERAL, vessel: 'PWC-7' };
      const key = randomUUID();
      const answers = [await one.post('decisions', body, key), await one.post('decisions', body, key)];
      expect(answers.map(({ status }) => status)).toEqual([201, 201]);
      expect(answers[1]?.body).toEqual(answers[0]?.body);
      expect((await one.decisions()).items.filter(({ duty }) => duty === FEDERAL)).toHaveLength(1);
      const stale = await one.post('decisions', { ...body, determination: determination - 1 });
      expect(stale.status).toBe(409);
      expect((await one.post('decisions', body, randomUUID(), staff)).status).toBe(403);
    });
  });

  // The rule of Oklahoma was read in a secondary source, not in the law.
  it('is not signed away on law that nobody here has read before a call to the agency or counsel', async () => {
    const one = await IncidentCase.quietGrounding(manager, house().now());
    await one.write('time-and-place', {
      occurred: told({ at: house().now(), precision: 'to-the-minute' }),
      states: told(['OK']),
      federalWaters: told('yes'),
    });
    const duty = await one.duty(OKLAHOMA);
    expect(duty.outcome).toBe('not-required');
    const refused = await one.sign(OKLAHOMA, { kind: 'no-report' });
    expect([refused.status, codesOf(refused)]).toEqual([409, ['CALL_FIRST']]);
    const call = {
      at: house().now(),
      with: 'agency',
      who: 'Officer Reyes, lake patrol',
      said: 'A grounding without damage or injury is not reported.',
      duties: [OKLAHOMA],
    };
    expect((await one.post('legal-calls', call, randomUUID(), staff)).status).toBe(403);
    expect((await one.post('legal-calls', call)).status).toBe(201);
    expect((await one.sign(OKLAHOMA, { kind: 'no-report' })).status).toBe(201);
    // A later signature takes the place of an earlier one, which stays.
    expect((await one.sign(OKLAHOMA, { kind: 'report' })).status).toBe(201);
    const signed = (await one.decisions()).items.filter((item) => item.duty === OKLAHOMA);
    expect(signed.map(({ kind }) => kind)).toEqual(['no-report', 'report']);
  });

  it('is never "no report due" while it cannot be told', async () => {
    const one = await IncidentCase.quietGrounding(manager, house().now());
    const unclear = operatorOf('PWC-7', { outcome: told('injured'), care: told('unknown') });
    await one.write('people', peopleWith([unclear]));
    const reasoned = { kind: 'no-report', reason: 'Looks fine.', counsel: 'J. Vance' };
    const answer = await one.sign(FEDERAL, reasoned);
    expect([answer.status, codesOf(answer)]).toEqual([409, ['NO_REPORT_UNDETERMINED']]);
  });

  it('has two operators and two reports where two of our craft collide', async () => {
    const one = await IncidentCase.quietGrounding(manager, house().now());
    await one.write('craft', { craft: [craftOf('PWC-7'), craftOf('PWC-8')] });
    await one.write('people', peopleWith([operatorOf('PWC-7', STITCHED), operatorOf('PWC-8')]));
    const { items } = await one.duties();
    const vessels = items.filter(({ duty }) => duty === FEDERAL).map(({ vessel }) => vessel);
    expect(vessels.sort()).toEqual(['PWC-7', 'PWC-8']);
  });

  // 33 CFR 173.59: the report goes to the state, and answers the federal rule.
  it('is answered by one filing, and is to be supplemented when somebody dies after it', async () => {
    const one = await hurt();
    const satisfies = [FEDERAL, TEXAS].map((duty) => ({ duty, vessel: 'PWC-7' }));
    const filing = {
      form: 'report',
      at: house().now(),
      way: 'online',
      to: 'Texas Parks and Wildlife Department',
      jurisdiction: 'us-tx',
      filedBy: 'owner',
      filer: 'Ana Ruiz',
      confirmation: 'B-20991',
      satisfies,
    };
    for (const duty of [FEDERAL, TEXAS]) expect((await one.sign(duty, { kind: 'report' })).status).toBe(201);
    expect((await one.post('filings', filing, randomUUID(), staff)).status).toBe(403);
    expect((await one.post('filings', filing)).status).toBe(201);
    for (const duty of [FEDERAL, TEXAS]) expect(await one.duty(duty)).toMatchObject({ state: 'filed' });
    const dead = operatorOf('PWC-7', { outcome: told('died'), diedAt: told(house().now()) });
    await one.write('people', peopleWith([dead]));
    expect((await one.duty(FEDERAL)).state).toBe('supplement-due');
  });

  it('shows what the operator was told to those who work here, and to no counsel of another incident', async () => {
    const one = await hurt();
    const notice = { vessel: 'PWC-7', at: house().now(), told: 'yes', toldBy: 'Sam', way: 'in person' };
    const path = `/api/incidents/${one.id}/operator-notices`;
    await create(staff, path, { ...notice, saysFiled: 'unknown' }).expect(201);
    const counsel = await house().signedIn('counsel');
    await counsel.get(path).expect(404);
    const { body } = (await manager.get(path).expect(200)) as { body: { items: object[] } };
    expect(body.items).toMatchObject([{ told: 'yes', toldBy: 'Sam', saysFiled: 'unknown' }]);
  });
});
