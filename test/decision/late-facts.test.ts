import { randomUUID } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { RulePack } from '../../shared/law/rule-pack.js';
import type { PersonActor } from '../../src/server/accounts/accounts.api.js';
import { createApp } from '../../src/server/create-app.js';
import { Decisions, type DecisionsReopened } from '../../src/server/decision/decision.api.js';
import { DecisionDesk } from '../../src/server/decision/decision-desk.js';
import { Determinations } from '../../src/server/determination/determination.api.js';
import { Clock } from '../../src/server/platform/clock.js';
import { IncidentsService, SectionsService } from '../../src/server/record/record.api.js';
import { type Browser, DAY, describeHouse, HOUR, type Person } from '../accounts/house.js';
import { configOf, openApp } from '../support/app.js';
import { ENGINES } from '../support/databases.js';
import { IncidentCase, operatorOf, peopleWith, quietSections, told } from './incident-case.js';

const FEDERAL = 'us/accident-report';
const TEXAS = 'us-tx/accident-report';
const NOTICE = 'us/death-or-disappearance-notice';
const NOTHING_DUE = { kind: 'no-report' };

const later = (at: string, ms: number): number => Date.parse(at) + ms;

describeHouse('facts that are learned late', (house) => {
  let person: Person;
  let manager: Browser;
  const told_: DecisionsReopened[] = [];
  beforeAll(async () => {
    person = await house().person('manager');
    manager = await house().signedIn(person);
    house()
      .app.get(Decisions)
      .onReopened(async (event) => {
        await Promise.resolve(told_.push(event));
      });
  });

  /** Lets time pass, after which the session is over and the manager signs in again. */
  const letPass = async (ms: number): Promise<void> => {
    house().letPass(ms);
    await house().signedIn(person, manager);
  };

  /** A grounding on which it was signed that nothing is due, and what people were told of it since. */
  const decided = async () => {
    const at = house().now();
    const one = await IncidentCase.quietGrounding(manager, at);
    await one.signAll(NOTHING_DUE);
    const events = (): DecisionsReopened[] => told_.filter(({ incidentId }) => incidentId === one.id);
    expect(events()).toEqual([]);
    return { one, at, events };
  };
  const reopenedDuties = ([event]: DecisionsReopened[]) => event?.reopenings.map(({ duty }) => duty);

  it('stitches a week later reopen what was signed: the limit had passed before we knew', async () => {
    const { one, at, events } = await decided();
    await letPass(7 * DAY);
    const hurt = operatorOf('PWC-7', {
      outcome: told('injured'),
      care: told('beyond-first-aid'),
      treatments: told(['sutures-staples-or-glue']),
    });
    await one.write('people', peopleWith([hurt]));
    expect(events()).toHaveLength(1);
    expect(reopenedDuties(events())).toEqual([FEDERAL, TEXAS]);
    const duty = await one.duty(FEDERAL);
    expect(duty).toMatchObject({ outcome: 'required', state: 'overdue', decision: null });
    // 33 CFR 173.55(b)(2): within 48 hours of the occurrence.
    expect(Date.parse(duty.dueAt ?? '')).toBe(later(at, 48 * HOUR));
    expect(duty.proposal).toMatchObject({ code: 'LIMIT_PASSED_BEFORE_KNOWN', kind: 'report' });
    expect(duty.reopenings.map(({ changes }) => changes.map(({ what }) => what))).toEqual([
      ['outcome', 'deadline'],
    ]);
    expect(await one.duty(NOTICE)).toMatchObject({ state: 'decided', reopenings: [] });
  });

  it('an estimate that reaches the amount reopens it, with ten days from the occurrence', async () => {
    const { one, at, events } = await decided();
    await letPass(3 * DAY);
    const line = { id: 'd1', of: told('vessel'), craft: 'PWC-7', owner: 'business', amount: told(2000) };
    await one.write('damage', { assessment: told('complete'), lines: [line] });
    expect(events()).toHaveLength(1);
    const duty = await one.duty(FEDERAL);
    expect(duty).toMatchObject({ outcome: 'required', state: 'open', proposal: { code: 'REPORT' } });
    // 33 CFR 173.55(a)(3) and (b)(3): $2,000 or more, within 10 days.
    expect(Date.parse(duty.dueAt ?? '')).toBeGreaterThanOrEqual(later(at, 10 * DAY - HOUR));
    expect(Date.parse(duty.dueAt ?? '')).toBeLessThanOrEqual(later(at, 10 * DAY));
  });

  it('a death after a day moves the clock of what was filed, which is to be supplemented', async () => {
    const at = house().now();
    const one = await IncidentCase.quietGrounding(manager, at);
    const rider = { id: 'rider', craft: 'PWC-7', role: told('passenger') };
    const people = (outcome: object) => peopleWith([operatorOf('PWC-7'), { ...rider, ...outcome }]);
    await one.write('people', people({ outcome: told('injured'), care: told('beyond-first-aid') }));
    await one.sign(FEDERAL, { kind: 'report' }).then((answer) => expect(answer.status).toBe(201));
    await one
      .post('filings', {
        form: 'report',
        at: house().now(),
        way: 'online',
        to: 'The boating accident desk',
        jurisdiction: 'us-tx',
        filedBy: 'owner',
        filer: 'Max',
        satisfies: [
          { duty: FEDERAL, vessel: 'PWC-7' },
          { duty: TEXAS, vessel: 'PWC-7' },
        ],
      })
      .expect(201);
    await one.sign(NOTICE, NOTHING_DUE);
    expect((await one.duty(FEDERAL)).state).toBe('filed');
    await letPass(30 * HOUR);
    const died = new Date(later(at, 26 * HOUR)).toISOString();
    await one.write(
      'people',
      people({ outcome: told('died'), care: told('beyond-first-aid'), diedAt: told(died) }),
    );
    const events = told_.filter(({ incidentId }) => incidentId === one.id);
    expect(events).toHaveLength(1);
    // 33 CFR 173.53(a): a death calls for a notice without delay, which nobody gave.
    const notice = await one.duty(NOTICE);
    expect(notice).toMatchObject({ outcome: 'required', immediate: true, decision: null });
    expect(events[0]?.reopenings.map(({ duty }) => duty)).toContain(NOTICE);
    expect(Date.parse(notice.dueAt ?? '')).toBe(later(at, 26 * HOUR));
  });

  it('a report that was filed is supplemented when what it rests on moves', async () => {
    const { one, events } = await decided();
    const line = (amount: number) => ({
      assessment: told('complete'),
      lines: [{ id: 'd1', of: told('vessel'), craft: 'PWC-7', owner: 'business', amount: told(amount) }],
    });
    await one.write('damage', line(2500));
    await one.sign(FEDERAL, { kind: 'report' });
    const filing = {
      form: 'report',
      at: house().now(),
      way: 'mail',
      to: 'The boating accident desk',
      jurisdiction: 'us-tx',
      filedBy: 'owner',
      filer: 'Max',
      satisfies: [{ duty: FEDERAL, vessel: 'PWC-7' }],
    };
    await one.post('filings', filing).expect(201);
    await one.write('damage', line(900));
    expect(events()).toHaveLength(2);
    expect(await one.duty(FEDERAL)).toMatchObject({
      outcome: 'not-required',
      state: 'supplement-due',
      proposal: { code: 'SUPPLEMENT' },
    });
    await one
      .post('filings', { ...filing, at: house().now(), remark: 'Supplement: lower estimate.' })
      .expect(201);
    expect(await one.duty(FEDERAL)).toMatchObject({ state: 'filed', proposal: null, reopenings: [] });
  });

  it('the renter who says that she filed, and is able to, reopens it and becomes the one who reports', async () => {
    const at = house().now();
    const one = await IncidentCase.quietGrounding(manager, at);
    const hurt = operatorOf('PWC-7', { outcome: told('injured'), care: told('beyond-first-aid') });
    await one.write('people', peopleWith([hurt], { operatorAbleToReport: told('no') }));
    await one.signAll({ kind: 'report' });
    expect((await one.duty(FEDERAL)).reporter.who).toBe('owner');
    const notice = {
      vessel: 'PWC-7',
      at: house().now(),
      told: 'yes',
      toldBy: 'Max',
      way: 'by phone',
      saysFiled: 'yes',
    };
    const events = () => told_.filter(({ incidentId }) => incidentId === one.id);
    await one.post('operator-notices', notice).expect(201);
    expect(events()).toHaveLength(1);
    expect(reopenedDuties(events())).toEqual([FEDERAL, TEXAS]);
    await one.post('operator-notices', { ...notice, words: 'She says it again.' }).expect(201);
    expect(events()).toHaveLength(1);
    await one.write('people', peopleWith([hurt]));
    expect(events()).toHaveLength(2);
    const duty = await one.duty(FEDERAL);
    // 33 CFR 173.55(c): the owner reports only where the operator cannot.
    expect(duty).toMatchObject({ state: 'open', reporter: { who: 'operator' }, decision: null });
    expect(duty.operator).toMatchObject({ code: 'CONFIRM_FILING' });
    expect(duty.reopenings.flatMap(({ changes }) => changes.map(({ what }) => what))).toEqual([
      'operator-says',
      'reporter',
    ]);
    const retried = await one.post('operator-notices', { ...notice, saysFiled: 'no' }).expect(201);
    expect(retried.body).toMatchObject({ saysFiled: 'no' });
    expect((await one.duty(FEDERAL)).operator).toMatchObject({ code: 'OWNER_REPORTS' });
  });

  it('words that bear on no duty reopen nothing', async () => {
    const { one, events } = await decided();
    await one.write('account', {
      casualtyTypes: told(['grounding', 'fall-in-vessel']),
      involvesVesselOrEquipment: told('yes'),
      oilSheen: told('no'),
    });
    expect(events()).toEqual([]);
    expect((await one.duties()).items.every(({ state }) => state === 'decided')).toBe(true);
  });
});

describe.each(ENGINES)('a corrected pack (%s)', (engine) => {
  it('reopens what was signed under the text before, once', async () => {
    const { app, database, close } = await openApp(engine);
    const folder = mkdtempSync(join(tmpdir(), 'desk-packs-'));
    try {
      const { id } = await app.get(IncidentsService).open({}, randomUUID(), MANAGER);
      for (const [name, document] of Object.entries(scratchedHull(app.get(Clock).now()))) {
        await app.get(SectionsService).write(id, name, { document }, '"0"', MANAGER);
      }
      for (const { duty } of await app.get(Decisions).dutiesOf(id)) {
        const { sequence } = (await app.get(Determinations).current(id)) ?? { sequence: 0 };
        const signing = { kind: 'no-report', determination: sequence, duty, vessel: 'PWC-7' };
        await app.get(DecisionDesk).sign(id, signing, randomUUID(), MANAGER);
      }
      cpSync('forms/law', folder, { recursive: true });
      correctAmount(join(folder, 'tx.json'), 500);
      for (let start = 0; start < 2; start += 1) {
        const again = await createApp({ ...configOf(database, folder), rulePacksDir: folder });
        const duties = await again.get(Decisions).dutiesOf(id);
        await again.close();
        const texas = duties.find(({ duty }) => duty === TEXAS);
        expect(texas).toMatchObject({ outcome: 'required', decision: null });
        expect(texas?.dueAt).not.toBeNull();
        expect(texas?.reopenings.map(({ changes }) => changes.map(({ what }) => what))).toEqual([
          ['outcome', 'deadline', 'law'],
        ]);
        expect(duties.find(({ duty }) => duty === FEDERAL)).toMatchObject({
          state: 'decided',
          reopenings: [],
        });
      }
    } finally {
      await close();
      rmSync(folder, { recursive: true, force: true });
    }
  });
});

const MANAGER: PersonActor = {
  kind: 'person',
  accountId: 'account-max',
  personName: 'Max',
  role: 'manager',
  sessionId: 'session',
};

/** A quiet grounding with damage below every amount in force. */
function scratchedHull(at: string): Record<string, object> {
  const line = { id: 'd1', of: told('vessel'), craft: 'PWC-7', owner: 'business', amount: told(600) };
  return { ...quietSections(at), damage: { assessment: told('complete'), lines: [line] } };
}

/** Puts another amount first, as a person would who read the law again. */
function correctAmount(file: string, amountUsd: number): void {
  const pack = JSON.parse(readFileSync(file, 'utf8')) as RulePack;
  for (const trigger of pack.report?.triggers ?? []) {
    for (const reading of trigger.readings ?? []) reading.amountUsd = amountUsd;
  }
  writeFileSync(file, JSON.stringify(pack));
}
