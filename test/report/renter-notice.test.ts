import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import type { PersonRecord } from '../../shared/record/people-section.js';
import { composeNotice, type NoticeDuty, type NoticeMatter } from '../../shared/report/compose-notice.js';
import { judgeNotice } from '../../shared/report/judge-notice.js';
import { listReports } from '../../shared/report/list-reports.js';
import type { NoticeLanguage, NoticeWords, RenterNotice } from '../../shared/report/renter-notice.js';
import { drawNotice } from '../../src/server/report/notice/draw-notice.js';
import { readOut, readPdf } from './read-pdf.js';
import { RICH, saw } from './report-matters.js';

const FOLDER = join(import.meta.dirname, '..', '..', 'forms', 'notice');
const readJson = (name: string): unknown => JSON.parse(readFileSync(join(FOLDER, name), 'utf8'));
const { languages } = readJson('renter-notice.json') as { languages: NoticeWords[] };

const DUTIES: NoticeMatter['duties'] = [
  {
    jurisdiction: 'us',
    outcome: 'required',
    dueAt: '2026-06-15T11:20:00-05:00',
    dueAtIfRequired: null,
    authority: 'Texas Parks and Wildlife Department',
  },
  {
    jurisdiction: 'us-ok',
    outcome: 'undetermined',
    dueAt: null,
    dueAtIfRequired: '2026-06-23T11:20:00-05:00',
    authority: null,
  },
  { jurisdiction: 'us-tx', outcome: 'not-required', dueAt: null, dueAtIfRequired: null, authority: null },
];

/** As the federal rule pack tells it (33 CFR 173.59). */
const LONGEST =
  'The reporting authority where the vessel’s number was issued (without a number: where the vessel is mainly used), or, ' +
  'for an accident outside that state, the authority where it happened (33 CFR 173.59)';

const MATTER: NoticeMatter = {
  recipient: 'operator',
  name: 'Zofia Łódźka',
  vessel: 'PWC 7',
  reference: '2026-0042',
  occurredAt: '2026-06-13T16:20:00Z',
  timeZone: 'America/Chicago',
  duties: DUTIES,
};

function notice(language: NoticeLanguage, more: Partial<NoticeMatter> = {}): RenterNotice {
  const words = languages.find((one) => one.language === language);
  if (words === undefined) throw new Error(`There are no words in ${language}.`);
  return composeNotice(words, { ...MATTER, ...more });
}
const wordsOf = ({ title, to, about, urgent, duties, parts }: RenterNotice): string =>
  [
    title,
    to,
    about,
    urgent,
    ...duties.map((duty) => Object.values(duty).join(' ')),
    ...parts.map(({ text }) => text),
  ].join(' ');

describe('the words of the notice', () => {
  it('keep to their schema', () => {
    const validate = new Ajv2020({ strict: false }).compile(readJson('renter-notice.schema.json') as object);
    expect(validate(readJson('renter-notice.json')), JSON.stringify(validate.errors)).toBe(true);
  });

  it.each<[NoticeLanguage, RegExp[]]>([
    [
      'en',
      [
        /must be reported/, // duty
        /To Zofia Łódźka \(operator of PWC 7\)/,
        /Saturday 13 June 2026, 11:20 \(11:20 a\.m\.\) CDT/,
        /Federal rule: report required By Monday 15 June 2026, 11:20 \(11:20 a\.m\.\) CDT Send it to: Texas Parks and Wildlife Department\./,
        /Oklahoma: a report may be required If required, by Tuesday 23 June 2026, 11:20 \(11:20 a\.m\.\) CDT Ask the state agency/,
        /accident report form of that agency/, // form
        /state where the vessel has its number, or of the state where it happened \(33 CFR 173\.59\)/, // where
        /not your lawyer/,
        /own words.*written none of it/,
        /call 911/,
      ],
    ],
    [
      'es',
      [
        /debe notificarse/,
        /Para Zofia Łódźka \(al mando de PWC 7\)/,
        /sábado 13 de junio de 2026, 11:20 \(11:20 a\. m\.\) CDT/,
        /Norma federal: el informe es obligatorio A más tardar el lunes 15 de junio de 2026, 11:20 \(11:20 a\. m\.\) CDT/,
        /Oklahoma: el informe puede ser obligatorio/,
        /formulario de informe de accidentes/,
        /33 CFR 173\.59/,
        /no su abogado/,
        /sus propias palabras/,
        /llame al 911/,
      ],
    ],
  ])('tell duty, form, deadline, where, and that we are no lawyer: %s', (language, told) => {
    const words = wordsOf(notice(language));
    for (const one of told) expect(words).toMatch(one);
    expect(words).not.toMatch(/[{}]/);
    expect(words).not.toContain('Texas:');
  });

  it.each<[NoticeLanguage, RegExp]>([
    ['en', /To the parent or guardian of Zofia Łódźka.*The duty is that of Zofia Łódźka/],
    ['es', /Para el padre, la madre o el tutor de Zofia Łódźka.*La obligación es de Zofia Łódźka/],
  ])('have a version for a guardian: %s', (language, told) => {
    const words = wordsOf(notice(language, { recipient: 'guardian' }));
    expect(words).toMatch(told);
    expect(words).not.toMatch(/The duty is yours|es suya/);
  });

  it('do not say "must" where nothing is known to be required', () => {
    const open = DUTIES.filter(({ outcome }) => outcome !== 'required');
    expect(notice('en', { duties: open }).title).toBe('This accident may have to be reported');
  });

  it('take a name for a name, whatever is in it', () => {
    expect(notice('en', { name: '{vessel}' }).to).toBe('To {vessel} (operator of PWC 7)');
    expect(notice('en', { name: null }).to).toBe('To the person who drove (operator of PWC 7)');
  });

  it.each<NoticeLanguage>(['en', 'es'])('fit on one tagged page in their language: %s', async (language) => {
    const sheet = notice(language, {
      recipient: 'guardian',
      duties: [...DUTIES, { ...DUTIES[0], authority: LONGEST } as NoticeDuty],
    });
    const read = await readPdf(
      await buffer(drawNotice(sheet, { reference: '2026-0042', asOf: '2026-06-14T15:20:00Z' })),
    );
    expect(read.pages).toBe(1);
    expect(read.language).toBe(`${language}-US`);
    const words = read.tags.map(readOut).join(' ');
    expect(words).toContain(sheet.to);
    for (const { text } of sheet.parts) expect(words).toContain(text);
    expect(words.indexOf(sheet.to)).toBeLessThan(words.indexOf(sheet.parts[0]?.text ?? ''));
    expect([...read.fonts.values()].every(Boolean)).toBe(true);
  });
});

const CRAFT: IncidentRecord['sections'] = {
  craft: {
    craft: [
      { id: 'c1', ours: true, name: 'PWC 7', use: saw('rental') },
      { id: 'c2', ours: true, name: 'PWC 9', use: saw('staff-operated') },
    ],
  },
};

function withPeople(people: PersonRecord[], assessment: 'complete' | 'partial' = 'complete'): IncidentRecord {
  const section = { assessment: saw(assessment), everyoneAccountedFor: saw('yes' as const), people };
  return { ...RICH, sections: { ...RICH.sections, ...CRAFT, people: section } };
}

const DRIVER: PersonRecord = {
  id: 'p1',
  name: 'Zofia',
  role: saw('operator'),
  craft: 'c1',
  outcome: saw('unhurt'),
};

function judge(record: IncidentRecord, id = 'c1.operator', duties = DUTIES) {
  const head = listReports(record).find((one) => one.id === id);
  if (head === undefined) throw new Error(`There is no report ${id}.`);
  return judgeNotice(record, head, duties);
}

describe('whether a notice is given', () => {
  it.each<[string, IncidentRecord, string, typeof DUTIES, string]>([
    [
      'the operator died',
      withPeople([{ ...DRIVER, outcome: saw('died') }]),
      'c1.operator',
      DUTIES,
      'BEREAVED',
    ],
    [
      'somebody they may be related to died',
      withPeople([DRIVER, { id: 'p2', outcome: saw('died') }]),
      'c1.operator',
      DUTIES,
      'BEREAVED',
    ],
    [
      'somebody is missing',
      withPeople([DRIVER, { id: 'p2', craft: 'c2', outcome: saw('missing') }]),
      'c1.operator',
      DUTIES,
      'BEREAVED',
    ],
    [
      'somebody is not back',
      withPeople([DRIVER, { id: 'p2', outcome: saw('not-back') }]),
      'c1.operator',
      DUTIES,
      'NOT_RULED_OUT',
    ],
    [
      'nobody said what became of one',
      withPeople([DRIVER, { id: 'p2' }]),
      'c1.operator',
      DUTIES,
      'NOT_RULED_OUT',
    ],
    ['the list of people may grow', withPeople([DRIVER], 'partial'), 'c1.operator', DUTIES, 'NOT_RULED_OUT'],
    ['nothing is listed', { ...RICH, sections: CRAFT }, 'c1.operator', DUTIES, 'NOT_RULED_OUT'],
    ['our own crew drove', RICH, 'c2.operator', DUTIES, 'NO_CUSTOMER'],
    ['it is the owner’s report', RICH, 'c1.owner', DUTIES, 'NO_CUSTOMER'],
    ['no craft is named', { ...RICH, sections: {} }, '_.operator', DUTIES, 'NO_CRAFT'],
    ['no report of theirs is due', withPeople([DRIVER]), 'c1.operator', DUTIES.slice(2), 'NOTHING_DUE'],
  ])('refuses with a code: %s', (_, record, id, duties, code) => {
    expect(judge(record, id, duties)).toMatchObject({ ok: false, code });
  });

  it.each<[string, Partial<PersonRecord>, 'operator' | 'guardian']>([
    ['of age', { birthDate: saw('1994-02-03') }, 'operator'],
    ['of age on the day', { birthDate: saw('2008-06-13') }, 'operator'],
    ['a day under age', { birthDate: saw('2008-06-14') }, 'guardian'],
    ['seventeen', { age: saw(17) }, 'guardian'],
    ['eighteen', { age: saw(18) }, 'operator'],
    ['with a guardian recorded', { minor: { guardian: 'Eva Łódźka' } }, 'guardian'],
  ])('is for the operator, or for the guardian of one under age: %s', (_, person, recipient) => {
    expect(judge(withPeople([{ ...DRIVER, ...person }]))).toMatchObject({
      ok: true,
      recipient,
      name: 'Zofia',
    });
  });

  it('says what to mind where age or driver is not recorded', () => {
    const unknown = judge(withPeople([DRIVER]));
    expect(unknown.ok && unknown.minds.join(' ')).toMatch(/how old/);
    const nobody = judge(withPeople([{ id: 'p2', outcome: saw('unhurt') }]));
    expect(nobody).toMatchObject({ ok: true, name: null });
    expect(nobody.ok && nobody.minds.join(' ')).toMatch(/who drove/);
  });
});
