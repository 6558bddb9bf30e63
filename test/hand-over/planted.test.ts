import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Recipient } from '../../shared/hand-over/hand-over-profile.js';
import { create, House } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';
import { archiveOf, draftFor, makePacket } from './packet-desk.js';
import { CARD, type PlantedDesk, plantedDesk } from './planted-desk.js';
import { CHILD, FIGURES } from './planted-record.js';
import { FORMS, profileOf } from './profiles.js';
import { markNamed, type Readable, readWhole } from './search-planted.js';

describe('the search for what was planted', () => {
  const mark = markNamed(2731);
  const inside = `before ${mark}, after`;
  const utf16be = Buffer.from(inside, 'utf16le').swap16();
  it.each([
    ['plain text', Buffer.from(inside)],
    ['capitals', Buffer.from(inside.toUpperCase())],
    ['UTF-16, little end first', Buffer.from(inside, 'utf16le')],
    ['UTF-16, big end first', utf16be],
    ['UTF-16 at an odd place', Buffer.concat([Buffer.from('x'), utf16be])],
    ['base64', Buffer.from(Buffer.from(inside).toString('base64'))],
    ['base64 within other text', Buffer.from(`"data:,${Buffer.from(`x${inside}`).toString('base64')}"`)],
    ['hexadecimal', Buffer.from(Buffer.from(inside).toString('hex'))],
    ['percent encoding', Buffer.from(inside.replaceAll(/./g, (one) => `%${one.charCodeAt(0).toString(16)}`))],
    [
      'escapes of JSON',
      Buffer.from(inside.replaceAll(/./g, (one) => `\\u00${one.charCodeAt(0).toString(16)}`)),
    ],
    ['entities of XML', Buffer.from(inside.replaceAll(/./g, (one) => `&#${one.charCodeAt(0)};`))],
    ['spaced letters', Buffer.from([...inside].join(' - '))],
  ])('finds it in %s', async (_, bytes) => {
    expect([...(await readWhole(bytes)).marks]).toEqual([mark]);
  });
});

// Whether the database is one or the other makes no difference to what leaves: one is enough.
describe('what was planted everywhere', () => {
  const mail = mkdtempSync(join(tmpdir(), 'planted-'));
  let house: House;
  let desk: PlantedDesk;
  beforeAll(async () => {
    const from = { name: 'Incident desk', address: 'desk@rental.example' };
    house = await House.open('sqlite', { mail: { kind: 'folder', folder: mail, from } });
    desk = await plantedDesk(house);
  }, 60_000);
  afterAll(async () => {
    await house.close();
    rmSync(mail, { recursive: true });
  });

  const packed = async (recipient: Recipient, more: object = {}): Promise<Readable> => {
    const strangers = desk.pictures.map((id) => ({ id, regions: [] }));
    const packet = await makePacket(desk.manager, desk.incident, draftFor(recipient, { strangers, ...more }));
    return readWhole(
      await archiveOf(recipient === 'counsel' ? desk.counsel : desk.manager, desk.incident, packet),
    );
  };
  const figuresIn = (read: Readable): string[] =>
    Object.entries({ ...FIGURES, card: CARD, author: desk.staff.name }).flatMap(([name, figure]) =>
      read.holds(figure) ? [name] : [],
    );

  it('is found, every bit of it, in what counsel receives', async () => {
    const read = await packed('counsel');
    expect(desk.plants.placesOf(read.marks)).toEqual(desk.plants.all);
    expect(desk.plants.all.length).toBeGreaterThan(450);
    expect(figuresIn(read)).toEqual(['born', 'licence', 'phone', 'card', 'author']);
  }, 30_000);

  it.each([
    ['insurer', ['born', 'phone', 'card', 'author']],
    ['agency', []],
    ['renter', []],
    ['other-party', []],
    ['in-house', ['author']],
  ] as const)(
    'reaches %s where its profile says so and nowhere else; of figures %j',
    async (recipient, figures) => {
      const read = await packed(recipient);
      const leaving = desk.plants.all.filter((place) => leaves(place, recipient));
      expect(desk.plants.placesOf(read.marks)).toEqual(leaving);
      expect(figuresIn(read)).toEqual(figures);
    },
    30_000,
  );

  it.each(['renter', 'other-party'] as const)(
    'reaches %s, who is a person of the record, as far as it is their own',
    async (recipient) => {
      const read = await packed(recipient, { person: 'i1' });
      const leaving = desk.plants.all.filter((place) => leaves(place, recipient, isOwn(place)));
      expect(desk.plants.placesOf(read.marks)).toEqual(leaving);
      expect(leaving).toContain('statements:/statements/*/words');
      expect(figuresIn(read)).toEqual([]);
    },
    30_000,
  );

  it('reaches an agency that asked for everything but for what is the business’s own and of children', async () => {
    const kinds = Object.entries(profileOf('agency').decisions).filter(
      ([, one]) => one.does === 'stays' && one.choice === true,
    );
    const choices = kinds.map(([what], place) => ({ id: `c${place}`, what, does: 'goes' }));
    const places = desk.plants.placesOf((await packed('agency', { choices })).marks);
    const asked = new Set(kinds.map(([kind]) => kind));
    const leaving = desk.plants.all.filter((place) => leaves(place, 'agency', false, asked));
    expect(places).toEqual(leaving);
    for (const never of ['privileged/words', 'decision/reason', 'task/why', 'hold/reason', CHILD])
      expect(places).not.toContain(never);
  }, 30_000);

  it('reaches an insurer on the first notice as far as in a packet', async () => {
    const path = `/api/incidents/${desk.incident}/first-notices`;
    const { id } = bodyOf<{ id: string }>(
      await create(desk.manager, path, {
        policy: desk.policy,
        ...{ seenAt: 'South dock', callName: 'Mia Torres', callNumber: '903-555-0102' },
      }).expect(201),
    );
    const read = await readWhole(await bytesOf(`${path}/${id}/paper`));
    const places = desk.plants.placesOf(read.marks);
    expect(places).toContain('account:/whatHappened');
    expect(places.filter((place) => !leaves(place, 'insurer'))).toEqual([]);
    expect(figuresIn(read)).toEqual([]);
  });

  it('reaches nobody by the mail of a link, nor before the packet is taken out', async () => {
    const packet = await makePacket(desk.manager, desk.incident, draftFor('insurer'));
    const path = `/api/incidents/${desk.incident}/packets/${packet.id}/links`;
    const to = { to: 'Kim Ortega', address: 'claims@insurer.example' };
    const { passcode } = bodyOf<{ passcode: string }>(await create(desk.manager, path, to).expect(201));
    const mails = (): string[] =>
      readdirSync(mail)
        .map((name) => readFileSync(join(mail, name), 'utf8'))
        .filter((text) => text.includes('claims@insurer.example'));
    await expect.poll(() => mails().length).toBe(1);
    const [text = ''] = mails();
    const plain = text.replaceAll(/=\r?\n/g, '');
    const token = /\/collect\/([\w-]{43})/.exec(plain)?.[1] ?? '';
    const page = await house.browser().post(`/api/collections/${token}`).send({ passcode }).expect(200);
    for (const written of [text, plain, page.text]) {
      const read = await readWhole(Buffer.from(written));
      expect([desk.plants.placesOf(read.marks), figuresIn(read)]).toEqual([[], []]);
    }
  });

  it('does not reach whoever renews the policy, with figures of a period', async () => {
    const year = desk.reference.slice(0, 4);
    const period = `from=${year}-01-01&until=${year}-12-31`;
    for (const paper of ['workbook', 'paper']) {
      const read = await readWhole(await bytesOf(`/api/incident-history/${paper}?${period}`));
      // A business names its own craft to whoever insures them.
      expect([desk.plants.placesOf(read.marks), figuresIn(read)]).toEqual([['craft:/craft/*/name'], []]);
    }
  });

  async function bytesOf(path: string): Promise<Buffer> {
    const answer = await desk.manager
      .get(path)
      .buffer(true)
      .parse((from, done) => {
        const parts: Buffer[] = [];
        from.on('data', (part: Buffer) => parts.push(part));
        from.on('end', () => done(null, Buffer.concat(parts)));
      })
      .expect(200);
    return answer.body as Buffer;
  }
});

const KIND_OF = new Map(
  FORMS.kinds.kinds.flatMap(({ kind, fields }) => fields.map((field) => [field, kind])),
);

/** Whether what stands at a place leaves, by the profiles and by nothing that the service computes. */
function leaves(
  place: string,
  recipient: Recipient,
  own = false,
  asked: ReadonlySet<string> = new Set(),
): boolean {
  const { decisions, minors } = profileOf(recipient);
  const goes = (kind: string): boolean => {
    const decision = decisions[kind];
    return asked.has(kind) || (decision?.does === 'goes' && (decision.own !== true || own));
  };
  if (place === CHILD) return minors === 'named' && goes('name');
  const isRecord = place.includes(':/');
  if (!isRecord) {
    const kinds = place.split('/')[0]?.split('>') ?? [];
    return kinds.every((kind) => {
      if (kind === 'metadata') return decisions[kinds[0] ?? '']?.does !== 'masked';
      return goes(kind) || (kind === 'photo' && decisions[kind]?.does === 'masked');
    });
  }
  const [field = '', by] = place.split('#');
  const known = [...KIND_OF.keys()].filter((one) => field === one || field.startsWith(`${one}/`));
  const kind = KIND_OF.get(known.at(-1) ?? '') ?? 'nothing';
  if (!goes(kind)) return false;
  if (by === undefined) return true;
  return asked.has('name') || (decisions['name']?.does === 'goes' && decisions['name'].own !== true);
}

/** What belongs to the person `i1`: their own lines, their statement, their rental, and the notice they were given. */
function isOwn(place: string): boolean {
  return /^(people:\/people\/\*\/(?!minor)|statements:|rental:|check-in:|notice\/|statement-original>)/.test(
    place,
  );
}
