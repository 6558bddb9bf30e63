import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import { ITEM_STATES } from '../../shared/report/filled-report.js';
import { fillReport } from '../../shared/report/fill-report.js';
import { listReports } from '../../shared/report/list-reports.js';
import { drawWorksheet } from '../../src/server/report/worksheet/draw-worksheet.js';
import { EMPTY, FORM, matterOf } from './report-matters.js';
import { readOut, readPdf, tagsCalled } from './read-pdf.js';

interface Step {
  send: string;
  to: string;
  body?: { document?: object };
}

const DEMO = join(
  import.meta.dirname,
  '..',
  '..',
  'fixtures',
  'demo',
  'incidents',
  '01-two-craft-collide.json',
);
const LAST_DAY = Date.UTC(2026, 6, 4);

/** The record of the richest incident of the demonstration, as its sections stand at the end. */
function readDemo(): IncidentRecord {
  const text = readFileSync(DEMO, 'utf8').replaceAll(
    /\{(\d+) days? ago, (\d\d:\d\d)\}/g,
    (_, days: string, time: string) =>
      `${new Date(LAST_DAY - Number(days) * 86_400_000).toISOString().slice(0, 10)}T${time}:00-05:00`,
  );
  const { steps } = JSON.parse(text) as { steps: Step[] };
  const sections = steps.flatMap(({ send, to, body }) => {
    const name = /\/sections\/([a-z-]+)$/.exec(to)?.[1];
    return send === 'PUT' && name !== undefined && body?.document !== undefined
      ? [[name, body.document]]
      : [];
  });
  return { ...EMPTY, sections: Object.fromEntries(sections) as IncidentRecord['sections'] };
}

const record = readDemo();

describe('the worksheet of the richest incident of the demonstration', () => {
  it.each(listReports(record).map(({ id }) => id))(
    'has every item filled, marked unknown on purpose or listed missing, as text: %s',
    async (id) => {
      const report = fillReport(FORM, matterOf(record, id));
      expect(report.items.map((item) => item.id)).toEqual(FORM.items.map(({ number }) => String(number)));
      for (const { state } of report.items) expect(ITEM_STATES).toContain(state);
      expect(report.counts.answered).toBeGreaterThan(report.counts.missing);
      const { tags } = await readPdf(
        await buffer(
          drawWorksheet({
            reference: '2026-0001',
            report,
            duties: [],
            timeZone: 'America/Chicago',
            asOf: '2026-07-04T15:20:00Z',
            printedBy: 'Mia Torres',
            doubts: FORM.doubts,
          }),
        ),
      );
      expect(
        tagsCalled('H3', tags)
          .slice(0, 26)
          .map(({ text }) => text),
      ).toEqual(report.items.map((item) => item.id));
      const [words = '', ...lines] = [
        tags.map(readOut).join(' '),
        ...report.items.flatMap((item) => item.lines.map(({ text }) => text)),
      ].map((text) => text.replaceAll(/\s+/g, ''));
      expect(lines.filter((line) => !words.includes(line))).toEqual([]);
    },
  );
});
