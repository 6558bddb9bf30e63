import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { buffer } from 'node:stream/consumers';
import { applyProfile } from '../../shared/hand-over/apply-profile.js';
import type { Recipient } from '../../shared/hand-over/hand-over-profile.js';
import { listWithheld } from '../../shared/hand-over/list-withheld.js';
import { MANIFEST_FORMAT } from '../../shared/hand-over/packet.js';
import { NO_CHOICES } from '../../shared/hand-over/sender-choices.js';
import { listRecordFields } from '../../shared/wire/list-record-fields.js';
import { readHandOverForms } from '../../src/server/hand-over/hand-over.api.js';
import { drawPaper } from '../../src/server/hand-over/paper/draw-paper.js';
import type { PaperMatter } from '../../src/server/hand-over/paper/paper-matter.js';
import { type Browser, describeHouse } from '../accounts/house.js';
import { upload } from '../evidence/evidence-desk.js';
import { write } from '../follow-up/desk.js';
import { readOut, readPdf, type ReadPdf, tagsCalled } from '../report/read-pdf.js';
import { fullRecord, markOf } from './full-record.js';
import { archiveOf, draftFor, makePacket, PLANTED, plantedIncident, privilegedNote } from './packet-desk.js';
import { readZip } from './read-zip.js';

const FORMS = readHandOverForms();
const PHOTO = readFileSync('fixtures/evidence/photo-with-position.jpg');
/** Members of a sketch that are drawn, and told in the sentences below it. */
const DRAWN = /^scene:\/(marks|lines)\/\*\/(?!label)/;
const bare = (text: string): string => text.replaceAll(/\s+/g, '');
/** As paper tells it: days in words, by the calendar of the language's own library. */
const onPaperAs = (text: string): string =>
  /^\d{4}-\d\d-\d\d$/.test(text)
    ? bare(new Date(text).toLocaleDateString('en-GB', { dateStyle: 'long', timeZone: 'UTC' }))
    : bare(text);

/** A record that says something in every field, as it leaves under a profile, with nothing beside it. */
function fullMatter(recipient: Recipient, more: object = {}): PaperMatter {
  const profile = FORMS.profiles.find((one) => one.recipient === recipient);
  if (profile === undefined) throw new Error(`no profile ${recipient}`);
  const whole = fullRecord();
  const record = { ...whole, sections: { ...whole.sections, ...more } };
  const { sections, fields } = applyProfile(record, FORMS.classify, profile, NO_CHOICES);
  const withheld = listWithheld(fields, [], [], FORMS.kinds);
  return {
    about: {
      format: MANIFEST_FORMAT,
      packet: '7a2f0c9e-51de-4b0b-9a3e-0d6a9d1c2e11',
      reference: '2026-0042',
      recipient: { kind: recipient, name: 'Somebody' },
      purpose: 'To be read back',
      madeAt: '2026-07-01T12:00:00Z',
      madeBy: 'Mia Torres',
      head: { size: 3, root: 'ab'.repeat(32) },
    },
    plan: {
      record: {
        format: 'incident-desk/packet-record/1',
        reference: '2026-0042',
        asOf: '2026-07-01T12:00:00Z',
        recipient,
        timeZone: 'America/Chicago',
        cautions: ['Emergency services first.'],
        sections,
        attachments: {},
      },
      withheld,
      fields,
      files: [],
      others: [],
    },
    profile,
    evidence: [],
    pictures: new Map(),
    timeZone: 'America/Chicago',
  };
}

describe('the paper of a packet, of a record that says something in every field', () => {
  it.each(['insurer', 'counsel', 'agency', 'renter', 'other-party', 'in-house'] as const)(
    'holds for %s every value that leaves, and none that stays',
    async (recipient) => {
      const matter = fullMatter(recipient);
      const { texts } = await readPdf(await buffer(await drawPaper(matter)));
      const [onPaper, inJson] = [bare(texts.join(' ')), bare(JSON.stringify(matter.plan.record.sections))];
      const marks = listRecordFields()
        // What our fleet calls a craft inside, and the marks of lists, tell a stranger nothing.
        .filter((field) => !/\/(id|fleetCraft)$/.test(field))
        // What is drawn is figures and closed words, which no mark can stand in for: held below.
        .filter((field) => !DRAWN.test(field))
        .map((field) => [field, bare(markOf(field))] as const);
      const leaving = marks.filter(([, mark]) => inJson.includes(mark)).map(([field]) => field);
      // An agency gets by the profile what was filed, and a renter what is their own: of this record nothing.
      const some = ['insurer', 'counsel', 'in-house'].includes(recipient);
      expect(leaving.length > 100).toBe(some);
      const found = marks.filter(([, mark]) => onPaper.includes(onPaperAs(mark))).map(([field]) => field);
      expect(found).toEqual(leaving);
    },
    30_000,
  );

  it.each([
    ['insurer', true],
    ['renter', false],
  ] as const)('draws the sketch of the scene for %s, and tells the same: %s', async (recipient, leaves) => {
    const scene = {
      metresAcross: { value: 200, known: 'told' },
      marks: [
        { id: 'm1', kind: 'our-craft', craft: 'i1', across: 0, up: 30, heading: 180, movement: 'under-way' },
        { id: 'm2', kind: 'buoy', label: 'No-wake buoy', across: 50, up: 0 },
      ],
      lines: [{ id: 'l1', kind: 'dock', label: 'B dock', points: [[-50, -80], [0, -80]] }], // prettier-ignore
    };
    const { texts } = await readPdf(await buffer(await drawPaper(fullMatter(recipient, { scene }))));
    const words = bare(texts.join(' '));
    for (const sentence of [
      '(our craft): 30 m N of the middle, heading S (180°), under way.',
      'No-wake buoy (buoy): 50 m E of the middle.',
      'B dock (dock): from 94 m SSW of the middle to 80 m S of the middle.',
      'The sheet is 200 m (656 ft) wide.',
    ])
      expect(words.includes(bare(sentence))).toBe(leaves);
    // On the drawing, and in the sentence.
    expect(words.split(bare('No-wake buoy')).length - 1).toBe(leaves ? 2 : 0);
  });

  it('says again on a page whose lines go on there, as pages are taken out and passed on', async () => {
    const { texts } = await readPdf(await buffer(await drawPaper(fullMatter('counsel'))));
    const continued = texts.flatMap((text) => /(Person 1: .+?), continued/.exec(text)?.[1] ?? []);
    expect(continued.length).toBeGreaterThan(0);
    expect(texts.join(' ')).toContain(continued[0] ?? 'no name');
  }, 30_000);

  it('is the same bytes each time', async () => {
    const draw = async (): Promise<Buffer> => buffer(await drawPaper(fullMatter('insurer')));
    expect((await draw()).equals(await draw())).toBe(true);
  }, 30_000);
});

describeHouse('the paper in a packet', (house) => {
  let manager: Browser;
  let counsel: Browser;
  let incident: string;
  let photo: string;
  beforeAll(async () => {
    manager = await house().signedIn('manager');
    const lawyer = await house().person('counsel');
    incident = await plantedIncident(manager, house().now());
    await write(manager, incident, 'damage', {
      lines: [
        { id: 'd1', what: 'Hull', amount: { value: 1500.1, known: 'told' } },
        { id: 'd2', what: 'Seat', material: { value: 150.2, known: 'told' } },
        { id: 'd3', what: 'Engine', amount: { value: 'unknown', known: 'told' } },
      ],
    });
    await privilegedNote(manager, incident, lawyer.id);
    counsel = await house().signedIn(lawyer);
    const about = { caption: `${PLANTED.child} at the dock`, people: [] };
    photo = (await upload(manager, incident, PHOTO, { name: 'a.jpg', about })).id;
  });

  const packed = async (
    recipient: Recipient,
    more: object = {},
  ): Promise<{ pdf: ReadPdf; bytes: Buffer }> => {
    const packet = await makePacket(manager, incident, draftFor(recipient, more));
    const files = await readZip(
      await archiveOf(recipient === 'counsel' ? counsel : manager, incident, packet),
    );
    const bytes = files.get('record.pdf') ?? Buffer.of();
    return { pdf: await readPdf(bytes), bytes };
  };
  const wordsOf = ({ texts }: ReadPdf): string => bare(texts.join(' '));

  it('shows counsel every planted word, so that what is searched for elsewhere can be found', async () => {
    const { pdf } = await packed('counsel');
    const { medical, birthDate, pattern, privileged, child, statement } = PLANTED;
    for (const planted of [medical, birthDate, pattern, privileged, child, statement])
      expect(wordsOf(pdf)).toContain(onPaperAs(planted));
    expect(wordsOf(pdf)).toContain(bare('Draft, ask counsel. Not signed, not sworn'));
  });

  // By the profiles, as for the other parts of a packet.
  it.each([
    ['insurer', ['medical', 'privileged']],
    ['agency', ['medical', 'birthDate', 'privileged', 'child', 'statement']],
    ['renter', ['medical', 'birthDate', 'privileged', 'child', 'statement']],
    ['other-party', ['medical', 'birthDate', 'privileged', 'child', 'statement']],
    ['in-house', ['medical', 'birthDate', 'privileged', 'child']],
  ] as [Recipient, (keyof typeof PLANTED)[]][])('for %s keeps back %j', async (recipient, kept) => {
    const { pdf, bytes } = await packed(recipient, { strangers: [{ id: photo, regions: [] }] });
    for (const what of ['medical', 'birthDate', 'privileged', 'child', 'statement'] as const) {
      expect([what, wordsOf(pdf).includes(onPaperAs(PLANTED[what]))]).toEqual([what, !kept.includes(what)]);
      if (kept.includes(what)) expect(wordsOf(pdf)).not.toContain(bare(PLANTED[what]));
    }
    expect(wordsOf(pdf)).not.toContain('Draft,askcounsel');
    // The camera wrote where it was; the pictures on paper say nothing of it.
    expect(PHOTO.includes('Exif')).toBe(true);
    expect(bytes.includes('Exif')).toBe(false);
  });

  it('is tagged, in order, with fonts of its own, and every page says which it is of how many', async () => {
    const { pdf } = await packed('insurer', { strangers: [{ id: photo, regions: [] }] });
    expect([pdf.isTagged, pdf.language, pdf.title?.startsWith('File of incident')]).toEqual([
      true,
      'en-US',
      true,
    ]);
    expect([...pdf.fonts.values()].every(Boolean)).toBe(true);
    const prefix = pdf.labels[0]?.replace(/1$/, '') ?? '';
    expect(prefix).toMatch(/^\d{4}-\d{4}-[0-9A-F]{8}-$/);
    pdf.texts.forEach((text, place) => {
      expect(pdf.labels[place]).toBe(`${prefix}${place + 1}`);
      expect(text).toContain(`${prefix}${place + 1} page ${place + 1} of ${pdf.pages}`);
    });
    expect(tagsCalled('H1', pdf.tags).map(({ text }) => text)).toEqual([prefix.slice(0, 9)]);
    // The contents name each part and the page on which it begins.
    const listed = tagsCalled('TOCI', pdf.tags).map((line) => line.kids.map(({ text }) => text));
    expect(listed.length).toBeGreaterThan(10);
    for (const [title = '', page = ''] of listed) expect(pdf.texts[Number(page) - 1]).toContain(title);
    expect(pdf.outline).toEqual(['Cover', 'Contents', ...listed.map(([title]) => title)]);
    const headings = tagsCalled('H2', pdf.tags).map(({ text }) => text);
    expect(headings.filter((title) => listed.some(([one]) => one === title))).toEqual(
      listed.map(([title]) => title),
    );
    expect(tagsCalled('Caption', pdf.tags).map(({ text }) => text)).toEqual([`${PLANTED.child} at the dock`]);
    expect(tagsCalled('Figure', pdf.tags).length).toBeGreaterThan(0);
    // Whoever stands in the file is found in its index, with the page.
    const index = pdf.tags.slice(pdf.tags.findIndex(({ text }) => text === 'Index of people and craft'));
    const [row] = tagsCalled('TR', index).filter((one) => readOut(one).startsWith(PLANTED.child));
    const [page = ''] = /\d+/.exec(row?.kids[1]?.text ?? '') ?? [];
    expect(pdf.texts[Number(page) - 1]).toContain(PLANTED.child);
  });

  it('adds damage up to the cent, and counts what nobody knows beside it', async () => {
    const { pdf } = await packed('insurer');
    const rows = tagsCalled('TR', pdf.tags).map((row) => row.kids.map(({ text }) => text));
    expect(rows.find(([first]) => first === 'Total of 3 lines')?.at(-1)).toBe('$1,650.30, and 1 not known');
  });

  it('keeps from an insurer even with whom others talked, and who speaks for whom', async () => {
    const talk = { id: 'k1', party: 'lawyer', name: 'Quarry and Finch', speaksFor: 'Ann Lee, by letter xq' };
    await write(manager, incident, 'contacts', { contacts: [talk] });
    const texts = [(await packed('counsel')).pdf, (await packed('insurer')).pdf].map(wordsOf);
    for (const words of ['QuarryandFinch', 'AnnLee,byletterxq'])
      expect(texts.map((text) => text.includes(words))).toEqual([true, false]);
  });

  it('says of what stays its kind and why, and not what it was', async () => {
    const { pdf } = await packed('insurer');
    expect(wordsOf(pdf)).toContain(bare('Details of treatment are health information'));
    expect(wordsOf(pdf)).toContain(bare('Nobody has looked yet whether strangers can be seen in it.'));
  });
});
