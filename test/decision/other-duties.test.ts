import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Determination } from '../../shared/determination/determination.js';
import type { DutyView } from '../../src/server/decision/decision.api.js';
import { type Browser, create, describeHouse } from '../accounts/house.js';
import { craftOf, IncidentCase, operatorOf, peopleWith, quietSections, told } from './incident-case.js';

const AT = '2026-06-13T11:20:00-05:00';
const ADMITTED = '2026-06-13T13:05:00-05:00';

interface CallList {
  lines: { name: string; phone: string | null; about: string[] }[];
}
interface Task {
  template: string;
  title: string;
  escalates: boolean;
}

/** An attendant admitted to hospital and a sheen, after our PWC met another craft. */
const sections = (): Record<string, object> => ({
  ...quietSections(AT),
  craft: { craft: [craftOf('PWC-7'), craftOf('other', { ours: false, use: told('recreational') })] },
  people: peopleWith([
    operatorOf('PWC-7', { employee: told('no') }),
    operatorOf('other', { id: 'them', employee: told('no') }),
    operatorOf('PWC-7', {
      id: 'attendant',
      role: told('passenger'),
      employee: told('yes'),
      outcome: told('injured'),
      care: told('beyond-first-aid'),
      inpatient: told('yes'),
      admittedAt: told(ADMITTED),
    }),
  ]),
  account: {
    casualtyTypes: told(['collision-with-recreational-vessel']),
    involvesVesselOrEquipment: told('yes'),
    oilSheen: told('yes'),
  },
});

describeHouse('duties on other matters, over HTTP', (house) => {
  let manager: Browser;
  let one: IncidentCase;
  let duties: DutyView[];
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    one = await IncidentCase.open(manager);
    for (const [section, document] of Object.entries(sections())) await one.write(section, document);
    duties = (await one.duties()).items;
  });
  const duty = (id: string): DutyView => {
    const found = duties.find((view) => view.duty === id);
    if (found === undefined) throw new Error(`No ${id} among ${duties.map((view) => view.duty).join(', ')}`);
    return found;
  };
  const file = (details: object) =>
    create(manager, `/api/incidents/${one.id}/filings`, {
      at: new Date(Date.parse(AT) + 3_600_000).toISOString(),
      way: 'phone',
      filedBy: 'owner',
      filer: 'Max Reyes',
      ...details,
    });

  it('stand among the reports to decide on, and what no paper answers does not', () => {
    expect(duty('us/workplace-injury-report')).toMatchObject({ vessel: null, form: 'report' });
    expect(duty('us/workplace-injury-report').reporter.who).toBe('employer');
    expect(duty('us/oil-discharge-notice')).toMatchObject({
      vessel: 'PWC-7',
      form: 'notice',
      immediate: true,
    });
    expect(duties.map(({ duty: id }) => id)).not.toContain('us/assistance-duty');
    expect(duty('us/workplace-injury-report').operator).toBeNull();
  });

  it('put the numbers that the law names on the list of whom to call, and never a name or an injury', async () => {
    const { lines } = (await manager.get(`/api/incidents/${one.id}/call-list`).expect(200)).body as CallList;
    expect(lines.slice(0, 3).map(({ name, phone, about }) => ({ name, phone, about }))).toEqual([
      { name: 'Emergency services', phone: '911', about: [] },
      { name: 'National Response Center', phone: '800-424-8802', about: ['Give: oil discharge notice'] },
      {
        name: 'Occupational Safety and Health Administration',
        phone: '1-800-321-6742',
        about: ['Give: workplace injury report'],
      },
    ]);
    expect(JSON.stringify(lines)).not.toContain('attendant');
  });

  it('plan work that goes from person to person by telephone, and the follow-up of an employer', async () => {
    const { items } = (await manager.get(`/api/incidents/${one.id}/tasks`).expect(200)).body as {
      items: Task[];
    };
    const titled = (words: string) => items.filter(({ title }) => title.includes(words));
    expect(titled('Oil discharge notice')).toMatchObject([{ template: 'notice', escalates: true }]);
    expect(titled('File: Workplace injury report')).toMatchObject([{ template: 'file', escalates: true }]);
    expect(titled('Assistance duty')).toMatchObject([{ template: 'conduct', escalates: true }]);
    expect(items.map(({ template }) => template)).toEqual(
      expect.arrayContaining(['carrier-told', 'injury-log']),
    );
  });

  it('are not answered by a paper that a state took', async () => {
    const key = { duty: 'us/workplace-injury-report', vessel: null };
    const refused = await file({
      form: 'report',
      to: 'Texas Parks and Wildlife',
      jurisdiction: 'us-tx',
      satisfies: [key],
    }).expect(409);
    expect(JSON.stringify(refused.body)).toContain('OSHA');
    await file({ form: 'report', to: 'OSHA area office', jurisdiction: 'us', satisfies: [key] }).expect(201);
    duties = (await one.duties()).items;
    expect(duty('us/workplace-injury-report').state).toBe('filed');
  });

  describe('and the answer whether it is reportable at all', () => {
    const answer = (by: Browser, body: object, key: string = randomUUID()) =>
      by.post(`/api/incidents/${one.id}/scope-answers`).set('Idempotency-Key', key).send(body);
    const determination = async (): Promise<Determination> =>
      (
        (await manager.get(`/api/incidents/${one.id}/determination`).expect(200)).body as {
          determination: Determination;
        }
      ).determination;
    const ANSWER = {
      aid: 'theft',
      jurisdictions: ['us'],
      answer: 'not-reportable',
      reason: 'Asked the administrator on the telephone.',
    };

    it('is for those who decide, needs a reason, and answers a question that some law asks', async () => {
      await answer(await house().signedIn('staff'), ANSWER).expect(403);
      await answer(manager, { ...ANSWER, reason: ' ' }).expect(422);
      await answer(manager, { ...ANSWER, aid: 'no-such-question' }).expect(422);
    });

    it('is signed with name and time, determines anew, and is not doubled when it is sent again', async () => {
      const before = (await determination()).duties.find(({ id }) => id === 'us/accident-report');
      expect(before?.outcome).toBe('required');
      const key = randomUUID();
      const first = (await answer(manager, ANSWER, key).expect(201)).body as { id: string; by: string };
      const again = (await answer(manager, ANSWER, key).expect(201)).body as { id: string };
      expect(again.id).toBe(first.id);
      const after = await determination();
      const report = after.duties.find(({ id }) => id === 'us/accident-report');
      expect(report?.outcome).toBe('not-required');
      expect(report?.reasons.find(({ trigger }) => trigger === 'applies/answer-theft')?.text).toContain(
        first.by,
      );
      expect(after.aids?.find(({ id }) => id === 'theft')?.answers).toHaveLength(1);
      expect(after.duties.find(({ id }) => id === 'us-tx/accident-report')?.outcome).toBe('required');
    });
  });
});
