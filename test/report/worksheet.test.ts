import { describe, expect, it } from 'vitest';
import { fillReport } from '../../shared/report/fill-report.js';
import { buffer } from 'node:stream/consumers';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import { drawWorksheet } from '../../src/server/report/worksheet/draw-worksheet.js';
import type { Sheet } from '../../src/server/report/worksheet/sheet.js';
import { EMPTY, FLEET, FORM, matterOf, RICH, saw } from './report-matters.js';
import { readOut, readPdf, tagsCalled } from './read-pdf.js';

const DUE: Sheet['duties'] = [
  {
    duty: 'us/accident-report',
    jurisdiction: 'us',
    outcome: 'required',
    dueAt: '2026-06-15T11:20:00-05:00',
    dueAtIfRequired: null,
    authority: 'Texas Parks and Wildlife Department',
    state: 'open',
    reporter: { who: 'operator', text: 'The operator; the owner if the operator cannot.' },
  },
];

function sheetOf(record: IncidentRecord, more: Partial<Sheet> = {}): Sheet {
  return {
    reference: '2026-0042',
    report: fillReport(FORM, matterOf(record, 'c1.owner', { fleet: FLEET })),
    duties: DUE,
    timeZone: 'America/Chicago',
    asOf: '2026-06-14T15:20:00Z',
    printedBy: 'Mia Torres',
    doubts: FORM.doubts,
    ...more,
  };
}

const print = (sheet: Sheet): Promise<Buffer> => buffer(drawWorksheet(sheet));
const rich = await readPdf(await print(sheetOf(RICH)));
const words = rich.tags.map(readOut).join(' ');

describe('the worksheet, read back by another library', () => {
  it('says what it is, in which language, and that it is tagged', () => {
    expect(rich.title).toBe('Accident report worksheet 2026-0042, PWC 7, report of the owner');
    expect(rich.language).toBe('en-US');
    expect(rich.isTagged).toBe(true);
  });

  it('has the 26 items of 33 CFR 173.57(b) in their order, each in exactly one state', () => {
    expect(tagsCalled('H3', rich.tags).map(({ text }) => text)).toEqual(
      FORM.items.map(({ number }) => String(number)),
    );
    const states = tagsCalled('Sect', rich.tags)
      .flatMap((item) => tagsCalled('P', [item]))
      .map(({ text }) => text)
      .filter((text) => ['Answered', 'Not known', 'Missing'].includes(text));
    expect(states).toHaveLength(26);
    const { answered, unknown, missing } = sheetOf(RICH).report.counts;
    const count = (word: string): number => states.filter((state) => state === word).length;
    expect([count('Answered'), count('Not known'), count('Missing')]).toEqual([answered, unknown, missing]);
  });

  it('reads each row as what is asked, then what is recorded, then how it is known', () => {
    const rows = tagsCalled('TR', rich.tags).map((row) =>
      row.kids.map(({ role, text }) => `${role} ${text}`),
    );
    expect(rows).toContainEqual(['TH Wind', 'TD 20 mph', 'TD read off the gauge at the dock']);
    expect(rows.every(([first]) => first?.startsWith('TH ') === true)).toBe(true);
  });

  it('holds every line of the report as text', () => {
    const report = sheetOf(RICH).report;
    const lines = report.items.flatMap((item) => item.lines);
    // A line may break within what has no blanks, such as a time zone.
    const [all = '', ...texts] = [words, ...lines.map(({ text }) => text)].map((one) =>
      one.replaceAll(/\s+/g, ''),
    );
    const lacking = texts.filter((text) => !all.includes(text));
    expect(lacking).toEqual([]);
  });

  it.each(['Zofia Łódźka', 'Nguyễn Thị Ánh', 'Ωμέγα', 'Иван Ещё', 'Señora Ñandú', 'Őze Žižek'])(
    'prints the name %s',
    async (name) => {
      const people = {
        assessment: saw('complete' as const),
        people: [{ id: 'p1', name, outcome: saw('injured' as const) }],
      };
      const { tags } = await readPdf(
        await print(sheetOf({ ...RICH, sections: { ...RICH.sections, people } })),
      );
      expect(tags.map(readOut).join(' ')).toContain(name);
    },
  );

  it('tells a letter that it cannot print by its number, and says so', async () => {
    const people = { people: [{ id: 'p1', name: '張偉', outcome: saw('injured' as const) }] };
    const { tags } = await readPdf(await print(sheetOf({ ...RICH, sections: { ...RICH.sections, people } })));
    const told = tags.map(readOut).join(' ');
    expect(told).toContain('[U+5F35][U+5049]');
    expect(told).toContain('copy the name from the record');
    expect(words).not.toContain('copy the name from the record');
  });

  it('embeds all of its fonts', () => {
    expect(rich.fonts.size).toBeGreaterThan(0);
    for (const [name, embedded] of rich.fonts) {
      expect(name).toMatch(/DejaVu/);
      expect(embedded, name).toBe(true);
    }
  });

  it('tells as of when, who printed it, the clock, and the cautions', () => {
    expect(words).toContain('As of Sun 14 June 2026 10:20 CDT. Printed by Mia Torres.');
    expect(words).toContain('By Mon 15 June 2026 11:20');
    expect(words).toContain('emergency services first');
    expect(words).toContain('Not legal advice');
    expect(words).toContain('Date and signature');
    expect(words).toContain('From memory: check the form');
  });

  it('numbers its pages, and keeps heads and feet out of what is read', () => {
    rich.texts.forEach((text, page) => expect(text).toContain(`Page ${page + 1} of ${rich.pages}`));
    expect(words).not.toContain('Page 1 of');
    expect(rich.untagged).toContain('How it is known');
    expect(rich.untagged).not.toContain('Zofia');
  });

  it('is the same for the same sheet, and another for another moment', async () => {
    const again = await print(sheetOf(RICH));
    expect(again.equals(await print(sheetOf(RICH)))).toBe(true);
    expect(again.equals(await print(sheetOf(RICH, { asOf: '2026-06-14T15:21:00Z' })))).toBe(false);
  });

  it('runs a long account over the pages, all of it and in order', async () => {
    const sentences = Array.from({ length: 300 }, (_, n) => `Sentence ${n + 1} of a long account.`);
    const account = { ...RICH.sections.account, whatHappened: saw(sentences.join(' ')) };
    const long = await readPdf(await print(sheetOf({ ...RICH, sections: { ...RICH.sections, account } })));
    const told = long.tags.map(readOut).join(' ');
    expect(told).toContain(sentences.join(' '));
    expect(long.pages).toBeGreaterThan(rich.pages);
    expect(long.untagged).toContain('20 …');
  });

  it('lists everything as missing for an empty record, and says that no duty known is no sign of none', async () => {
    const empty = await readPdf(
      await print(sheetOf(EMPTY, { duties: [], report: fillReport(FORM, matterOf(EMPTY)) })),
    );
    const told = empty.tags.map(readOut).join(' ');
    expect(tagsCalled('H3', empty.tags)).toHaveLength(26);
    expect(told).toContain('That is no sign that none is due.');
    expect(told.match(/Missing\. /g)?.length).toBeGreaterThan(25);
  });
});
