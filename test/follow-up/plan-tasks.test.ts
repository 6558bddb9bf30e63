import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Duty } from '../../shared/determination/determination.js';
import type { OwedReport } from '../../shared/decision/owed-report.js';
import { planTasks } from '../../shared/follow-up/plan-tasks.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import { loadRulePacks } from '../../src/server/law/law.api.js';
import { arbitraryRecord } from '../record/arbitrary-record.js';
import {
  DEAD,
  OPENED,
  onTheWater,
  planOn,
  recordOf,
  saw,
  STITCHED,
  TEMPLATES,
  UNHURT,
  writtenDemand,
  ZONE,
} from './situations.js';

let packs: RulePack[];
beforeAll(async () => {
  packs = await loadRulePacks();
});

const keys = (record: Parameters<typeof planOn>[0]): string[] => planOn(record, packs).map(({ key }) => key);
const templates = (record: Parameters<typeof planOn>[0]): string[] => [
  ...new Set(planOn(record, packs).map(({ template }) => template)),
];

describe('what is done after an incident', () => {
  it('comes in the order of the work', () => {
    const everything = onTheWater([STITCHED, { ...DEAD, id: 'p2' }], {
      contacts: { contacts: [{ ...writtenDemand('2026-07-03T10:00:00-05:00'), promised: 'the agreement' }] },
      people: { assessment: saw('complete'), people: [STITCHED, { ...DEAD, id: 'p2' }] },
    });
    expect(templates(everything)).toEqual([
      'headcount',
      'notice',
      'craft-kept',
      'records-frozen',
      'rental-record',
      'hold-acknowledged',
      'photographs',
      'statements',
      'insurer-told',
      'counsel-told',
      'family',
      'sister-craft',
      'file',
      'confirm',
      'clearance',
      'first-claim',
      'claims-clock',
      'promise',
    ]);
  });

  it('begins at one touch with what nobody has ruled out', () => {
    const bare = recordOf({ call: { said: 'help, PWC 7', craftNamed: ['PWC 7'] } });
    expect(keys(bare)).toEqual(expect.arrayContaining(['headcount', 'craft-kept:pwc-7', 'renter-told']));
    expect(templates(bare)).toContain('open-duty');
    const [first] = planOn(bare, packs);
    expect(first).toMatchObject({ key: 'headcount', dueAt: OPENED, escalates: true, order: 0 });
  });

  it('names the same craft alike when the section on craft takes it over from the call', () => {
    expect(keys(onTheWater([UNHURT]))).toContain('craft-kept:pwc-7');
  });

  it('plans one task for a craft that nobody knows yet, and none for the craft of others', () => {
    expect(keys(recordOf({ call: { said: 'help' } }))).toContain('craft-kept');
    const theirs = recordOf({ craft: { craft: [{ id: 'c9', ours: false, name: 'Bass boat' }] } });
    expect(keys(theirs).filter((key) => key.startsWith('craft-kept') || key === 'sister-craft')).toEqual([]);
  });

  it.each([
    ['nobody is hurt', [UNHURT], false],
    ['somebody needed stitches', [STITCHED], true],
    ['somebody died', [DEAD], true],
  ])('calls counsel only when it is serious: %s', (_, people, isCalled) => {
    expect(keys(onTheWater(people)).includes('counsel-told')).toBe(isCalled);
  });

  it('sends no notice to a bereaved family, and names one person for it', () => {
    const after = keys(onTheWater([DEAD]));
    expect(after).toContain('family');
    expect(after).not.toContain('renter-told');
    expect(keys(onTheWater([STITCHED]))).toContain('renter-told');
  });

  it('takes no statements where an authority asked us not to interview', () => {
    const asked = onTheWater([UNHURT], {
      authorities: { officers: [{ id: 'o1', askedNotToInterview: saw('yes') }] },
    });
    expect(keys(asked)).not.toContain('statements');
  });

  it('files a report for each of our craft and gives a notice once', () => {
    const two = onTheWater([DEAD], {
      craft: {
        craft: [
          { id: 'c1', ours: true, name: 'PWC 7', use: saw('rental') },
          { id: 'c2', ours: true, name: 'PWC 3', use: saw('rental') },
        ],
      },
    });
    const planned = keys(two);
    expect(planned).toEqual(
      expect.arrayContaining([
        'file:us/accident-report:c1',
        'file:us/accident-report:c2',
        'confirm:us/accident-report:c2',
      ]),
    );
    expect(planned.filter((key) => key === 'notice:us/death-or-disappearance-notice')).toHaveLength(1);
  });

  it.each([
    ['yes', true],
    ['unknown', true],
    ['no', false],
  ] as const)('logs a writing as the first claim while it is "%s" that it is one', (answer, isPlanned) => {
    const record = onTheWater([UNHURT], {
      contacts: { contacts: [writtenDemand('2026-07-03T10:00:00-05:00', answer)] },
    });
    expect(keys(record).includes('first-claim')).toBe(isPlanned);
  });

  it('asks whether it is a claim when a lawyer is heard of', () => {
    const record = onTheWater([UNHURT], {
      contacts: { contacts: [{ id: 'k1', party: 'lawyer', direction: 'in' }] },
    });
    expect(keys(record)).toContain('first-claim');
  });
});

describe('when a task is due', () => {
  const dueOf = (key: string): string | null | undefined =>
    planOn(onTheWater([STITCHED]), packs).find((task) => task.key === key)?.dueAt;

  it.each([
    // 33 CFR 173.55(b)(2): 48 hours from the occurrence, 13 June 11:20 in Chicago.
    ['file:us/accident-report:c1', '2026-06-15T16:20:00.000Z'],
    ['confirm:us/accident-report:c1', '2026-06-17T16:20:00.000Z'],
    ['insurer-told', '2026-06-14T04:59:00.000Z'],
    ['craft-kept:pwc-7', '2026-06-13T18:40:00.000Z'],
    // 46 U.S.C. 30106: three years, and 60 days before it at the same wall-clock time.
    ['claims-clock:maritime-tort', '2029-04-14T16:20:00.000Z'],
  ])('%s: %s', (key, due) => {
    expect(dueOf(key)).toBe(due);
  });

  it.each<[string, string | null, boolean]>([
    ['at once', OPENED, true],
    ['8 hours after we learned of it', '2026-06-14T00:40:00.000Z', true],
    ['a minute later than that', '2026-06-14T00:41:00.000Z', false],
    ['before we learned of it', '2026-06-10T00:00:00.000Z', true],
    ['at a time that nobody has read', null, true],
  ])('a report due %s escalates or not', (_, dueAt, escalates) => {
    const duty: Duty = { ...REQUIRED, dueAt };
    const report: OwedReport = { duty, reporter: { vessel: null, who: 'employer', text: '' }, law: null };
    const planned = planTasks(
      { record: recordOf({}), reports: [report], reopened: [], clocks: [], zone: ZONE },
      TEMPLATES,
    );
    expect(planned.find(({ template }) => template === 'file')).toMatchObject({ dueAt, escalates });
    expect(planned.find(({ template }) => template === 'confirm')?.escalates).toBe(false);
  });
});

describe('a notice', () => {
  it('escalates when it is due at once, and not while it is only open', () => {
    const notice = planOn(onTheWater([DEAD]), packs).filter(({ template }) => template === 'notice');
    expect(notice.map(({ escalates }) => escalates)).toContain(true);
    const open = planOn(recordOf({}), packs).filter(({ template }) => template === 'open-duty');
    expect(new Set(open.map(({ escalates }) => escalates))).toEqual(new Set([false]));
  });
});

const REQUIRED: Duty = {
  id: 'us/workplace-report',
  jurisdiction: 'us',
  kind: 'workplace-report',
  outcome: 'required',
  reasons: [],
  questions: [],
  immediate: false,
  dueAt: null,
  dueAtIfRequired: null,
  dueBasis: null,
  authority: null,
  reporters: [],
  citations: ['29 CFR 1904.39(a)(1)'],
  packBasis: 'read-primary',
};

describe('a report that was filed and is not as it was', () => {
  it('rests on what changed, for that craft alone', () => {
    const reporter = { vessel: 'c1', who: 'operator', text: '' } as const;
    const report: OwedReport = { duty: REQUIRED, reporter, law: null };
    const sister: OwedReport = { ...report, reporter: { ...reporter, vessel: 'c2' } };
    const reopened = [{ duty: REQUIRED.id, vessel: 'c1', changes: ['It is due sooner.'] }];
    const planned = planTasks(
      { record: recordOf({}), reports: [report, sister], reopened, clocks: [], zone: ZONE },
      TEMPLATES,
    );
    const files = planned.filter(({ template }) => template === 'file');
    expect(files.map(({ restsOn }) => restsOn)).toEqual([['It is due sooner.'], []]);
  });
});

describe('a promise', () => {
  const dueOf = (promisedBy: object): string | null | undefined =>
    planOn(
      onTheWater([UNHURT], {
        contacts: {
          contacts: [
            {
              id: 'k1',
              party: 'insurer',
              at: { at: '2026-06-14T10:00:00-05:00', how: 'entered' },
              promised: 'photographs of the hull',
              ...promisedBy,
            },
          ],
        },
      }),
      packs,
    ).find(({ key }) => key === 'promise:k1')?.dueAt;

  it('is due when it was promised for, or within a day where nobody said when', () => {
    expect(dueOf({ promisedBy: '2026-06-20T12:00:00-05:00' })).toBe('2026-06-20T17:00:00.000Z');
    expect(dueOf({})).toBe('2026-06-15T15:00:00.000Z');
  });
});

describe('any record', () => {
  it('plans each task once, with a source, an owner and what to write down, and no braces left', () => {
    fc.assert(
      fc.property(arbitraryRecord, (record) => {
        const planned = planTasks({ record, reports: [], reopened: [], clocks: [], zone: ZONE }, TEMPLATES);
        expect(new Set(planned.map(({ key }) => key)).size).toBe(planned.length);
        const orders = planned.map(({ order }) => order);
        expect(orders).toEqual([...orders].sort((a, b) => a - b));
        expect(
          planned.filter(
            ({ title, source, evidence }) => /[{}]/.test(title) || source === '' || evidence === '',
          ),
        ).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('never drops the tasks on craft and records', () => {
    fc.assert(
      fc.property(arbitraryRecord, (record) => {
        const planned = planTasks({ record, reports: [], reopened: [], clocks: [], zone: ZONE }, TEMPLATES);
        const found = planned.map(({ template }) => template);
        expect(found).toEqual(expect.arrayContaining(['records-frozen', 'insurer-told']));
      }),
      { numRuns: 100 },
    );
  });
});
